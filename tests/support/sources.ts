import { readdirSync, readFileSync } from 'node:fs';

const SRC = new URL('../../src/', import.meta.url);

/** The source files of the library below a folder, by their path from `src`, with their text. */
export function sourceFiles(below = ''): readonly { readonly path: string; readonly text: string }[] {
  return readdirSync(new URL(below, SRC), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${below}${name.replaceAll('\\', '/')}`)
    .sort()
    .map((path) => ({ path, text: readFileSync(new URL(path, SRC), 'utf8') }));
}

/** The folders of `src`, one for each room. */
export function rooms(): readonly string[] {
  return readdirSync(SRC, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();
}

/** What a source file exports at run time. */
export async function loadSource(path: string): Promise<Readonly<Record<string, unknown>>> {
  return (await import(new URL(path, SRC).href)) as Readonly<Record<string, unknown>>;
}
