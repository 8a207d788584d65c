import { readdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { FLOORS } from '../../eslint-rules/floors.mjs';

const floors: ReadonlyMap<string, number> = new Map(Object.entries(FLOORS));
const project = fileURLToPath(new URL('../../', import.meta.url));

/** Finds the sources as files of no package, so that a module stays unless each of its statements can go. */
const withoutAnnotation: Plugin = {
  name: 'without the side-effect annotation',
  setup: (bundler) =>
    bundler.onResolve({ filter: /^\./ }, ({ path, importer, resolveDir }) => ({
      path: resolve(importer === '<stdin>' ? resolveDir : dirname(importer), path.replace(/\.js$/u, '.ts')),
      sideEffects: true,
    })),
};

/** The files of which a statement stays in the bundle of some code, and how many bytes of each. */
async function leftovers(code: string): Promise<readonly string[]> {
  const { metafile } = await build({
    stdin: { contents: code, resolveDir: project, loader: 'ts' },
    absWorkingDir: project,
    plugins: [withoutAnnotation],
    bundle: true,
    write: false,
    metafile: true,
    format: 'esm',
    target: 'es2022',
    logLevel: 'error',
  });
  const files = Object.values(metafile.outputs).flatMap(({ inputs }) => Object.entries(inputs));
  return files.filter(([, { bytesInOutput }]) => bytesInOutput > 0).map(([file, { bytesInOutput }]) => `${file}: ${String(bytesInOutput)} bytes`);
}

// The package holds the modules of a room in one file: what cannot be left out of it weighs on whoever imports a single function.
describe('a bundle of a room of which nothing is used', () => {
  const rooms = readdirSync(`${project}src`).filter((room) => (floors.get(room) ?? 6) < 6);

  it.each(rooms)('leaves nothing of %s', async (room) => {
    expect(await leftovers(`import './src/${room}/index.js';`)).toEqual([]);
  });

  it.each([
    ['arithmetic', 'const shares = [1 / 12];'],
    ['a spread', 'const given = {}; const more = { ...given };'],
    ['a member', "const given = { length: 'length' }; const kind = given.length;"],
    ['an unmarked call', "const band = (kind: string) => ({ low: kind }); const shape = { band: band('length') };"],
  ])('would leave %s', async (_, code) => {
    expect(await leftovers(code)).toEqual([expect.stringMatching(/^<stdin>: \d+ bytes$/u)]);
  });

  it('would name the file', async () => {
    const code = "import { bandShape } from './src/states/index.js'; const shape = bandShape('length');";
    expect(await leftovers(code)).toEqual([expect.stringContaining('src/states/shapes.ts: '), expect.stringContaining('<stdin>: ')]);
    expect(await leftovers(code.replace('bandShape(', '/* @__PURE__ */ bandShape('))).toEqual([]);
  });
});
