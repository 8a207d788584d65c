/** A place in a text that is read line by line, without cutting it into pieces. */
export interface TextCursor {
  readonly text: string;
  /** The line the cursor is on, from 1; 0 before the first. */
  line: number;
  /** Where that line begins. */
  from: number;
  /** Where it ends, without the line break. */
  to: number;
}

const COMMA = 44;
const SPACE = 32;
const ZERO = 48;
const MINUS = 45;
const PLUS = 43;
const POINT = -2;

/** Powers of ten that a double holds exactly, so that one division by them rounds once, as reading the whole text would. */
const POWERS: readonly number[] = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];
/** As many digits as every double tells apart. */
const MOST_DIGITS = 15;

/** Opens a text before its first line; a byte-order mark goes, in either spelling, and every way of ending a line becomes one. */
export function openText(given: string): TextCursor {
  const marked = given.replace(/^(?:\uFEFF|ï»¿)/u, '');
  return { text: marked.includes('\r') ? marked.replaceAll(/\r\n?/gu, '\n') : marked, line: 0, from: 0, to: -1 };
}

/** Goes to the next line; tells whether there is one. */
export function nextLine(cursor: TextCursor): boolean {
  if (cursor.to >= cursor.text.length) return false;
  cursor.from = cursor.to + 1;
  const end = cursor.text.indexOf('\n', cursor.from);
  cursor.to = end < 0 ? cursor.text.length : end;
  cursor.line += 1;
  return true;
}

/** Whether a stretch of text holds nothing but blanks and control characters. */
export function isBlank(text: string, from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (text.charCodeAt(at) > SPACE) return false;
  return true;
}

/** Finds where the cells of the cursor's line begin; the entry after the last is one past the comma that would follow. Gives their number, which may exceed the room. */
export function findCells({ text, from, to }: TextCursor, starts: Int32Array): number {
  let cells = 0;
  starts[0] = from;
  for (let at = from; at < to; at += 1) {
    if (text.charCodeAt(at) !== COMMA) continue;
    cells += 1;
    if (cells < starts.length) starts[cells] = at + 1;
  }
  cells += 1;
  if (cells < starts.length) starts[cells] = to + 1;
  return cells;
}

/** The number written between two places of a text, blanks around it left out; NaN for anything else, an empty cell included. */
export function numberBetween(text: string, from: number, to: number): number {
  let at = from;
  let end = to;
  while (at < end && text.charCodeAt(at) <= SPACE) at += 1;
  while (end > at && text.charCodeAt(end - 1) <= SPACE) end -= 1;
  const start = at;
  const sign = text.charCodeAt(at);
  if (sign === MINUS || sign === PLUS) at += 1;
  let number = 0;
  let digits = 0;
  let decimals = 0;
  let pointed = false;
  for (; at < end; at += 1) {
    const digit = text.charCodeAt(at) - ZERO;
    if (digit >= 0 && digit <= 9) {
      number = 10 * number + digit;
      digits += 1;
      if (pointed) decimals += 1;
    } else if (digit === POINT && !pointed) pointed = true;
    else return unusualNumber(text.slice(start, end));
  }
  if (digits === 0) return Number.NaN;
  if (digits > MOST_DIGITS) return unusualNumber(text.slice(start, end));
  number /= POWERS[decimals] ?? Number.NaN;
  // A zero has no sign here: some writers give −0.00.
  return sign === MINUS ? 0 - number : number;
}

/** A number with an exponent or very many digits; what leaves the range of doubles is no number. */
function unusualNumber(written: string): number {
  const number = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/iu.test(written) ? Number(written) : Number.NaN;
  return Number.isFinite(number) ? number + 0 : Number.NaN;
}

/** The cells of a line of the header: quoted ones may hold commas and doubled quotes; blanks around a cell go. */
export function headerCells(line: string): readonly string[] {
  const cells: string[] = [];
  let at = 0;
  while (at <= line.length) {
    const rest = line.length - line.slice(at).trimStart().length;
    const quoted = line.startsWith('"', rest) ? closingQuote(line, rest + 1) : undefined;
    const comma = line.indexOf(',', quoted ?? at);
    const end = comma < 0 ? line.length : comma;
    cells.push(
      quoted === undefined
        ? line.slice(at, end).trim()
        : line
            .slice(rest + 1, quoted)
            .replaceAll('""', '"')
            .trim(),
    );
    at = end + 1;
  }
  return cells;
}

/** Where the quote closes that opened just before; the end of the line if it never does. */
function closingQuote(line: string, from: number): number {
  let at = line.indexOf('"', from);
  while (at >= 0 && line.startsWith('"', at + 1)) at = line.indexOf('"', at + 2);
  return at < 0 ? line.length : at;
}
