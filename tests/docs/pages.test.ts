import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { publishedChecks } from '../published/all.js';
import type { PublishedCheck } from '../support/published.js';
import { codeBlocks, examplesOf, printed, projectFile } from '../support/page.js';

const pages = [
  'README.md',
  ...readdirSync(new URL('../../docs/', import.meta.url))
    .filter((name) => name.endsWith('.md'))
    .map((name) => `docs/${name}`),
];

describe.each(pages)('%s', (page) => {
  const markdown = projectFile(page);
  const examples = examplesOf(markdown);

  it('prints an output under every piece of code', () => {
    expect(examples).toHaveLength(codeBlocks(markdown));
  });

  it.each(examples)('prints what the code of line $line prints', async ({ code, output }) => {
    expect(await printed(code)).toBe(output);
  });
});

const valuesOf = (seen?: PublishedCheck['seen']): number =>
  publishedChecks.filter((check) => seen === undefined || check.seen === seen).reduce((sum, check) => sum + check.values.length, 0);

describe('the numbers of outside checks in the README', () => {
  it('are those of the list', () => {
    expect(projectFile('README.md')).toContain(`${String(publishedChecks.length)} checks with ${String(valuesOf())} values`);
  });

  it('say truthfully how many of them were seen in which way', () => {
    const seen = (['original', 'quoted', 'from memory', 'computed independently'] as const).map(valuesOf);
    const [original, quoted, recalled, computed] = seen.map(String);
    expect(seen.reduce((sum, each) => sum + each, 0)).toBe(valuesOf());
    expect(projectFile('README.md').replaceAll('\n', ' ')).toContain(
      `${original ?? ''} read in the original, ${quoted ?? ''} as quoted elsewhere, ${recalled ?? ''} from memory, and ${computed ?? ''} computed independently`,
    );
  });
});
