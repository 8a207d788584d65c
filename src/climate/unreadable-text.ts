import { refusal } from './weather-file-error.js';

/** As far as a text is looked at for characters of no text; a wrongly decoded one has them from the start. */
const LOOKED_AT = 1000;

/** Refuses what is the text of no file at all, and says what it looks like. */
export function demandReadableText(text: string): void {
  const start = text.slice(0, LOOKED_AT);
  const reason = reasonOf(start, text);
  if (reason === undefined) return;
  const [value, hint] = reason;
  throw refusal({ line: 1 }, { code: 'impossible', value, allowed: 'the text of an EPW or TMY3 file', hint });
}

function reasonOf(start: string, text: string): readonly [value: string, hint: string] | undefined {
  if (text.trim() === '') return ['an empty text', 'the file is empty, or was not read to its end'];
  if (/^(?:PK\u0003\u0004|\u001F[\u008B\uFFFD])/u.test(start)) return ['a packed file', 'unpack the archive first and read the text file in it'];
  if (start.includes('\u0000') || start.startsWith('\u00FF\u00FE') || start.startsWith('\u00FE\u00FF') || start.startsWith('\uFFFD\uFFFD')) {
    return ['a text with bytes of another encoding', 'the file is no text, or was decoded wrongly: decode it as UTF-16 where it was saved so'];
  }
  return undefined;
}
