import { readdirSync, readFileSync } from 'node:fs';
import { Linter } from 'eslint';
import tseslint from 'typescript-eslint';
import { describe, expect, it } from 'vitest';
import { FLOORS, floors } from '../../eslint-rules/floors.mjs';

/** What the rule says about a line of code in a file of the library. */
function verdict(filename: string, code: string): readonly (string | undefined)[] {
  const linter = new Linter({ configType: 'flat' });
  const config = {
    files: ['**/*.ts'],
    languageOptions: { parser: tseslint.parser },
    plugins: { loamloop: { rules: { floors } } },
    rules: { 'loamloop/floors': 'error' },
  } as Linter.Config;
  return linter.verify(code, config, { filename }).map(({ messageId, message }) => messageId ?? message);
}

describe('floors', () => {
  it.each([
    ['upward', 'src/pipe/wall.ts', `import { sizeLoop } from '../operation/index.js';`],
    ['sideways', 'src/pipe/wall.ts', `import { dryBasis } from '../soil/index.js';`],
    ['sideways, a type', 'src/pipe/wall.ts', `import type { Moisture } from '../soil/index.js';`],
    ['sideways, an inline type', 'src/pipe/wall.ts', `let a: import('../soil/index.js').Soil;`],
    ['sideways, passed on', 'src/pipe/index.ts', `export { dryBasis } from '../soil/index.js';`],
    ['sideways, all of it', 'src/pipe/index.ts', `export * from '../soil/index.js';`],
    ['sideways, later', 'src/pipe/wall.ts', `const soil = import('../soil/index.js');`],
    ['sideways on the top floor', 'src/report/show.ts', `import type { Study } from '../study/index.js';`],
    ['upward to the root', 'src/report/show.ts', `import { planLoop } from '../index.js';`],
    ['upward on the first floor', 'src/units/quantity.ts', `import { demand } from '../errors/index.js';`],
    ['upward from a nested file', 'src/pipe/series/iron.ts', `import { sizeLoop } from '../../operation/index.js';`],
  ])('refuses %s', (what, file, code) => {
    expect(verdict(file, code)).toEqual([what.startsWith('upward') ? 'upward' : 'sideways']);
  });

  it.each([
    ['door', 'src/pipe/wall.ts', `import { demand } from '../errors/demand.js';`],
    ['foreign', 'src/pipe/wall.ts', `import * as z from 'zod';`],
    ['foreign', 'src/plan/solve.ts', `import type { Decimal } from 'decimal.js';`],
    ['foreign', 'src/document/read.ts', `import { readFileSync } from 'node:fs';`],
    ['foreign', 'src/climate/read.ts', `import { readFileSync } from 'fs';`],
    ['unknown', 'src/attic/box.ts', `export {};\nimport type { Length } from '../units/index.js';`],
    ['unknown', 'src/pipe/wall.ts', `import { x } from '../../tests/support/page.js';`],
  ])('refuses as %s: %s', (messageId, file, code) => {
    expect(verdict(file, code)).toEqual([messageId]);
  });

  it.each([
    [
      'src/pipe/wall.ts',
      `import type { Length } from '../units/index.js';\nimport { demand } from '../errors/index.js';\nimport { wall } from './flow.js';`,
    ],
    ['src/ground/response.ts', `import { exponentialIntegral } from '../numerics/exponential-integral.js';`],
    ['src/errors/demand.ts', `import type { TaggedQuantity } from '../units/quantity.js';`],
    ['src/document/fold.ts', `import * as z from 'zod';\nimport { Decimal } from 'decimal.js';`],
    ['src/report/text/pipe.ts', `import type { PipeFindingValues } from '../../findings/pipe.js';`],
    ['src/index.ts', `export { worksheet } from './report/index.js';`],
    ['tests/pipe/wall.test.ts', `import { wall } from '../../src/pipe/wall.js';\nimport { expect } from 'vitest';`],
  ])('lets %s import from below', (file, code) => {
    expect(verdict(file, code)).toEqual([]);
  });

  it('gives every room of the library a floor', () => {
    const rooms = readdirSync(new URL('../../src/', import.meta.url), { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(rooms.map(({ name }) => name).filter((name) => !Object.hasOwn(FLOORS, name))).toEqual([]);
  });

  it('stands as DEVELOPERS.md shows it', () => {
    const page = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
    const shown = [...page.matchAll(/^\| (\d) +\| (.*?)\|$/gmu)].flatMap(([, floor, cell = '']) =>
      [...cell.replaceAll(/zod|decimal\.js/gu, '').matchAll(/`([a-z-]+)(?:\.ts)?`/gu)].map(([, room = '']) => [room, Number(floor)] as const),
    );
    expect(Object.fromEntries(shown)).toEqual(Object.fromEntries(Object.entries(FLOORS).map(([room, floor]) => [room, Math.floor(floor)])));
  });
});
