import { readFileSync } from 'node:fs';
import { build } from 'esbuild';

/** A piece of code on a page and the output printed under it. */
export interface PageExample {
  readonly line: number;
  readonly code: string;
  readonly output: string;
}

/** The examples of a Markdown page: every block of `ts` with the block of `text` that follows it. */
export function examplesOf(markdown: string): readonly PageExample[] {
  return [...markdown.matchAll(/^```ts\n([\s\S]*?)^```\n\s*(?:^<!--.*-->\n\s*)?^```text\n([\s\S]*?)^```$/gmu)].map(
    ({ index, 1: code = '', 2: output = '' }) => ({
      line: markdown.slice(0, index).split('\n').length,
      code,
      output: output.trimEnd(),
    }),
  );
}

/** How many blocks of `ts` a page has; each must have its output under it. */
export function codeBlocks(markdown: string): number {
  return [...markdown.matchAll(/^```ts$/gmu)].length;
}

/** Runs code that imports the library by its name, against the sources, and returns what it prints. */
export async function printed(code: string): Promise<string> {
  const root = new URL('../../', import.meta.url).pathname;
  const result = await build({
    stdin: { contents: code, loader: 'ts', resolveDir: root },
    bundle: true,
    write: false,
    format: 'esm',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    logLevel: 'silent',
    plugins: [
      {
        name: 'library-by-name',
        setup: (own) => {
          own.onResolve({ filter: /^loamloop(\/|$)/ }, ({ path }) => ({ path: `${root}src${path.slice('loamloop'.length)}/index.ts` }));
        },
      },
    ],
  });
  const lines: string[] = [];
  const before = console.log;
  console.log = (...parts: unknown[]) => void lines.push(parts.map(String).join(' '));
  try {
    await import(`data:text/javascript;base64,${Buffer.from(result.outputFiles[0]?.text ?? '').toString('base64')}#${String(Math.random())}`);
  } finally {
    console.log = before;
  }
  return lines.join('\n').trimEnd();
}

/** The text of a file of the project. */
export function projectFile(path: string): string {
  return readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
}
