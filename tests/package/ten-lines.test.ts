import { describe, expect, it } from 'vitest';
import { tenLines } from '../../scripts/ten-lines.js';

const page = [
  '# Title',
  '```ts',
  'other();',
  '```',
  '<!-- ten-lines -->',
  '```ts',
  'a();',
  'b();',
  '```',
  '',
  'prints',
  '<!-- ten-lines-output -->',
  '```text',
  '1',
  '2',
  '```',
  '',
];

describe('the short example of a page', () => {
  it('is the block under its marker, with the output under the other', () => {
    expect(tenLines(page.join('\n'))).toEqual({ code: 'a();\nb();\n', output: '1\n2' });
  });

  it.each(['<!-- ten-lines -->', '<!-- ten-lines-output -->'])('is missed when %s is', (marker) => {
    expect(() => tenLines(page.filter((line) => line !== marker).join('\n'))).toThrow(marker);
  });

  it('is missed when it is empty', () => {
    expect(() => tenLines(page.filter((line) => !/^[ab]\(\)/u.test(line)).join('\n'))).toThrow('<!-- ten-lines -->');
  });
});
