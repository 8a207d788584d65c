import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';

const project = fileURLToPath(new URL('../../', import.meta.url));

/** The tables of fluids that stay in the bundle of some code. */
async function tablesIn(contents: string): Promise<readonly string[]> {
  const { metafile } = await build({
    stdin: { contents, resolveDir: project, loader: 'ts' },
    absWorkingDir: project,
    bundle: true,
    write: false,
    metafile: true,
    format: 'esm',
    logLevel: 'error',
  });
  const inputs = Object.values(metafile.outputs).flatMap(({ inputs: all }) => Object.entries(all));
  return inputs
    .flatMap(([file, { bytesInOutput }]) => (/^src\/fluid\/.*\.data\.ts$/u.test(file) && bytesInOutput > 0 ? [file.slice(10)] : []))
    .sort();
}

const NAMED = ['propylene-glycol.data.ts', 'water.data.ts'];

describe('a bundle', () => {
  it.each([
    ['the whole job', "export { planLoop } from './src/index.ts';"],
    ['properties by name', "export { fluidProperties } from './src/fluid/index.ts';"],
    ['a comparison', "export { compareAntifreezes } from './src/fluid/index.ts';"],
  ])('of %s carries the tables of the two fluids that go by name, and no other', async (_what, code) => {
    expect(await tablesIn(code)).toEqual(NAMED);
  });

  it('carries the table of a solution where its record is used', async () => {
    expect(await tablesIn("export { fluidProperties, ETHANOL } from './src/fluid/index.ts';")).toEqual(['ethanol.data.ts', ...NAMED]);
  });
});
