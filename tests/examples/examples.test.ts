import { execFileSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const root = new URL('../../', import.meta.url);
const examples = readdirSync(new URL('examples/', root)).filter((name) => name.endsWith('.ts'));

/** What an example prints when a reader runs it. */
const printed = (name: string, ...options: readonly string[]): string =>
  execFileSync(process.execPath, ['scripts/run.mjs', `examples/${name}`, ...options], { cwd: root, encoding: 'utf8' });

describe('examples', () => {
  it('are there', () => {
    expect(examples).toEqual(expect.arrayContaining(['antifreeze-and-pump.ts', 'demo.ts']));
  });

  it.each(examples)(
    '%s runs and prints figures and no holes',
    (name) => {
      const text = printed(name);
      expect(text).toMatch(/\d/u);
      expect(text).not.toMatch(/\bNaN\b|\bundefined\b|Infinity|\[object /u);
    },
    30_000,
  );

  it('the demo speaks either unit system', () => {
    expect(printed('demo.ts')).toMatch(/\d m\b/u);
    expect(printed('demo.ts', '--units', 'us')).toMatch(/\d ft\b/u);
  }, 30_000);
});
