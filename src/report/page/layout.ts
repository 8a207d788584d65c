import type { Kind } from '../../units/index.js';

/** Writes a quantity for a person. */
export type Write = (kind: Kind, value: number) => string;

const WIDTH = 96;
const LABEL = 26;

/** Breaks a text into lines; every line starts with the indent. A word wider than a line is cut. */
export function wrap(text: string, indent: string): string {
  const lines: string[] = [];
  let line = indent;
  const longest = new RegExp(`.{1,${String(WIDTH - indent.length)}}`, 'gsu');
  for (const word of text.split(' ').flatMap((each) => each.match(longest) ?? [each])) {
    if (line.trim() !== '' && line.length + word.length > WIDTH) {
      lines.push(line.trimEnd());
      line = indent;
    }
    line += `${word} `;
  }
  return [...lines, line.trimEnd()].join('\n');
}

/** A line of label and text; a long text goes on below itself. */
export function entry(label: string, text: string): string {
  const hanging = ' '.repeat(LABEL + 2);
  return `  ${label.padEnd(LABEL)}${wrap(text, hanging).slice(hanging.length)}`;
}

/** A text of its own with a mark before it. */
export function paragraph(text: string): string {
  return `  - ${wrap(text, '    ').slice(4)}`;
}

/** A heading with what belongs under it. */
export function section(title: string, body: readonly string[]): string {
  return [title, '-'.repeat(title.length), ...(body.length === 0 ? ['  none'] : body)].join('\n');
}

/** A number of things, in the singular or the plural. */
export function count(number: number, singular: string): string {
  return `${String(number)} ${singular}${number === 1 ? '' : singular.endsWith('ch') ? 'es' : 's'}`;
}

/** How long a time is in whole days, which read the same in either unit system; its sign is the caller's to word. */
export function days(seconds: number): string {
  return count(Math.abs(Math.round(seconds / 86_400)), 'day');
}
