// Runs a TypeScript file of this repository with nothing but the bundler that is already here: node scripts/run.mjs file.ts [arguments]
import { mkdtempSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const [file, ...rest] = process.argv.slice(2);
const folder = mkdtempSync(join(import.meta.dirname, '../node_modules/.cache-run-'));
const outfile = join(folder, 'main.mjs');
try {
  // Fixtures are found relative to the source file, so each module keeps its own address in the bundle.
  await build({
    entryPoints: [file],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    sourcemap: 'inline',
    logLevel: 'error',
    plugins: [
      {
        // Examples import the library by its name, as their reader will, and run from its sources without a build.
        name: 'library-by-name',
        setup(own) {
          const source = resolve(import.meta.dirname, '../src');
          own.onResolve({ filter: /^loamloop(\/|$)/ }, ({ path }) => ({ path: `${source}${path.slice('loamloop'.length)}/index.ts` }));
        },
      },
      {
        name: 'own-address',
        setup(own) {
          own.onLoad({ filter: /\.ts$/ }, async ({ path }) => {
            const { readFile } = await import('node:fs/promises');
            const text = await readFile(path, 'utf8');
            return { contents: text.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)), loader: 'ts' };
          });
        },
      },
    ],
  });
  process.argv = [process.argv[0], resolve(file), ...rest];
  await import(pathToFileURL(outfile).href);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
