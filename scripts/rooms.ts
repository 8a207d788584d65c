// What the package opens to the outside: one subpath per room under src with an index.ts, and the root. `numerics` stays private.
import { existsSync, readdirSync, readFileSync } from 'node:fs';

const PRIVATE: readonly string[] = ['numerics'];
export const project = new URL('../', import.meta.url);
const source = new URL('src/', project);

/** Names of the public rooms in alphabetical order, the root first under the name `index`. */
export function publicRooms(): readonly string[] {
  const folders = readdirSync(source, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !PRIVATE.includes(entry.name) && existsSync(new URL(`${entry.name}/index.ts`, source)))
    .map(({ name }) => name)
    .sort();
  return existsSync(new URL('index.ts', source)) ? ['index', ...folders] : folders;
}

/** The file under src that a public room is entered by. */
export const entryFile = (room: string): string => (room === 'index' ? 'src/index.ts' : `src/${room}/index.ts`);

/** The key under `exports` that a public room is imported by. */
export const subpath = (room: string): string => (room === 'index' ? '.' : `./${room}`);

export interface Target {
  readonly types: string;
  readonly default: string;
}
export interface Entry {
  readonly import: Target;
  readonly require: Target;
}
export interface PackageEntries {
  readonly main?: string;
  readonly module?: string;
  readonly types?: string;
  readonly exports: Readonly<Record<string, Entry | string>>;
  readonly typesVersions: { readonly '*': Readonly<Record<string, readonly string[]>> };
}

/** The fields of package.json that follow from the rooms. */
export function packageEntries(rooms: readonly string[] = publicRooms()): PackageEntries {
  const entry = (room: string): Entry => ({
    import: { types: `./dist/${room}.d.ts`, default: `./dist/${room}.js` },
    require: { types: `./dist/${room}.d.cts`, default: `./dist/${room}.cjs` },
  });
  const folders = rooms.filter((room) => room !== 'index');
  return {
    ...(rooms.includes('index') ? { main: './dist/index.cjs', module: './dist/index.js', types: './dist/index.d.cts' } : {}),
    exports: { ...Object.fromEntries(rooms.map((room) => [subpath(room), entry(room)])), './package.json': './package.json' },
    // For tools that resolve by folders and know no `exports`.
    typesVersions: { '*': Object.fromEntries(folders.map((room) => [room, [`./dist/${room}.d.cts`]])) },
  };
}

/** package.json as it is committed. */
export const readPackage = (): Partial<PackageEntries> & Readonly<Record<string, unknown>> =>
  JSON.parse(readFileSync(new URL('package.json', project), 'utf8')) as Partial<PackageEntries> & Record<string, unknown>;
