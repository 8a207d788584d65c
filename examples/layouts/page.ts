// The whole comparison as a page.
import { noticesFor } from 'loamloop/safety';
import { show, type UnitSystem } from 'loamloop/report';
import { COIL, type Compared, compared } from './compared.js';
import { DEEP, kinds } from './every-layout.js';
import { limits, name } from './house.js';
import { inShort, reasons } from './reasons.js';
import { costTable, reasonTable } from './tables.js';

/** Every layout, least pipe first. */
export const compareLayouts = (): readonly Compared[] => kinds.map(compared).sort((a, b) => a.needed - b.needed);

/** Words to a line. */
function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.map((line, index) => (index === 0 ? `  - ${line}` : `    ${line}`));
}

export function comparisonPage(rows: readonly Compared[], system: UnitSystem): readonly string[] {
  const write = show(system);
  const list = (texts: readonly string[]): readonly string[] => texts.flatMap((text) => wrapped(text, 120));
  return [
    `One house on every layout: ${name}`,
    `Sized to ${write('temperature', limits.lowestEntering ?? 0)} entering the unit, without ice, when the fill has settled; then laid in whole coils of ${write(
      'pipe length',
      COIL,
    )}. Trenches are dug to`,
    `${write('length', DEEP)}, so what differs is what lies in them. Temperatures are the coldest that enters the unit; what whole coils leave to spare shows as warmth.`,
    '',
    ...costTable(rows, system),
    '',
    ...list(inShort(rows, system)),
    '',
    'Why: the ground at its coldest without the loop; the fall of the wall in a season beside that of one pipe alone, and below a sealed surface; what settled',
    `fill adds [${system === 'us' ? 'h·ft·°F/Btu' : 'm·K/W'}]; then resistance and ground beside the first row, both together, and what the hours gave`,
    ...reasonTable(rows, system),
    '',
    ...list(reasons(rows, system)),
    '',
    'What is approximate',
    ...list([
      'A coil counts as one without end for its response, and as straight pipes, as many as metres of it lie in a metre of trench, for its fill and the ground around it.',
      'Ice around a coil counts as far as half the mean distance of its pipe in the band of its rings, where the ice of neighbouring rings meets. Over and under the band more of it grows: the reserve is larger than shown.',
      'Film in a coil is that of a straight pipe; the bend would better it. All pipes of a layout give off the same heat. Fill is that of one trench, rows of a collector 20 abreast; it changes nothing of the ground without a loop.',
      'Earth is that between upright walls, and of a collector the whole plot; sloped walls take two to three times as much.',
    ]),
    '',
    'Before anybody digs',
    ...list(noticesFor(['digging', 'trench-deeper-than-protection-depth']).map(({ text }) => text)),
    '',
  ];
}
