// Every file that the package's entries name is in the tarball, and every declaration declares something:
// node scripts/run.mjs scripts/declarations.ts <tarball>. A package without types passes the other checks of types.
import { execFileSync } from 'node:child_process';
import { packageEntries } from './rooms.js';

const [tarball = ''] = process.argv.slice(2);
const read = (...options: readonly string[]) => execFileSync('tar', [...options], { encoding: 'utf8', maxBuffer: 1e8 });
const packed = new Set(read('-tzf', tarball).split('\n'));
const { exports, typesVersions, main, module, types } = packageEntries();

const entries = Object.values(exports).flatMap((entry) =>
  typeof entry === 'string' ? [entry] : [entry.import.types, entry.import.default, entry.require.types, entry.require.default],
);
const named = [...entries, ...Object.values(typesVersions['*']).flat(), ...[main, module, types].flatMap((path) => path ?? [])];
const inside = [...new Set(named)].map((path) => path.replace('./', 'package/'));
const missing = inside.filter((path) => !packed.has(path));
const empty = inside.filter((path) => /\.d\.c?ts$/u.test(path) && packed.has(path) && !/\bexport\b/u.test(read('-xzOf', tarball, path)));
const surplus = [...packed].filter(
  (path) => !/^(?:package\/(?:dist\/[\w.-]+\.c?[jt]s|package\.json|README\.md|CHANGELOG\.md|LICENSE|NOTICE))?$/u.test(path),
);

for (const [what, paths] of Object.entries({ missing, empty, surplus })) if (paths.length > 0) console.error(`${what}: ${paths.join(' ')}`);
if (missing.length + empty.length + surplus.length > 0) process.exitCode = 1;
else console.log(`${String(inside.length)} files named, all there`);
