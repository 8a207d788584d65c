// Holds the entries of package.json to the rooms under src: node scripts/run.mjs scripts/entries.ts checks them, with --write it rewrites them.
import { writeFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { packageEntries, project, publicRooms, readPackage, subpath } from './rooms.js';

const FIELDS = ['main', 'module', 'types', 'exports', 'typesVersions'] as const;
const found = readPackage();
const due = packageEntries();
const wrong = FIELDS.filter((field) => !isDeepStrictEqual(found[field], due[field]));

if (process.argv.includes('--write')) {
  const rest = Object.entries(found).filter(([key]) => !FIELDS.some((field) => field === key));
  const placed = rest.flatMap(([key, value]) => (key === 'files' ? [...Object.entries(due), [key, value] as const] : [[key, value] as const]));
  writeFileSync(new URL('package.json', project), `${JSON.stringify(Object.fromEntries(placed), null, 2)}\n`);
  console.log(`package.json: ${String(publicRooms().length)} entries`);
} else if (wrong.length > 0) {
  const listed = Object.keys(found.exports ?? {}).filter((path) => path !== './package.json');
  const rooms = publicRooms().map(subpath);
  const without = (all: readonly string[], others: readonly string[]) => all.filter((path) => !others.includes(path)).join(' ') || 'none';
  console.error(`package.json does not follow the rooms under src (${wrong.join(', ')}); npm run entries writes them`);
  console.error(`  not in package.json: ${without(rooms, listed)}\n  not under src: ${without(listed, rooms)}`);
  process.exitCode = 1;
} else {
  console.log(`package.json names the ${String(publicRooms().length)} entries that src has`);
}
