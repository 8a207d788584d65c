// A room imports from lower floors only, never sideways, not even types. DEVELOPERS.md shows the floors; this table is what lint holds.
import { posix, relative } from 'node:path';

/** Floor 1 has steps of its own: `units` and `errors` stand under the rest of it. */
export const FLOORS = {
  units: 1,
  numerics: 1,
  errors: 1.1,
  references: 1.2,
  states: 1.3,
  findings: 1.4,
  safety: 1.4,
  soil: 2,
  climate: 2,
  fluid: 2,
  pipe: 2,
  ground: 2,
  building: 3,
  'heat-pump': 3,
  operation: 4,
  circuit: 4,
  site: 4,
  plan: 5,
  cost: 5,
  commissioning: 5,
  document: 6,
  study: 7,
  report: 7,
  index: 7.1,
};

/** Packages that one room alone may import. */
const PACKAGES = { zod: 'document', 'decimal.js': 'document' };

/** Rooms that follow another one file by file and so open its files: each finding has its text. */
const PAIRS = { report: 'findings' };

/** `src/pipe/wall.ts` → `pipe`; `src/index.ts` → `index`; undefined outside src. */
function roomOf(path) {
  const [, inside] = /^src\/(.+)$/u.exec(path) ?? [];
  if (inside === undefined) return undefined;
  return inside.includes('/') ? inside.slice(0, inside.indexOf('/')) : 'index';
}

/** Why a file may not import a specifier, or undefined when it may. */
function refusal(file, specifier) {
  const room = roomOf(file);
  if (room === undefined) return undefined;
  if (!Object.hasOwn(FLOORS, room)) return { messageId: 'unknown', data: { room } };
  if (!specifier.startsWith('.')) {
    const name = /^(?:@[^/]+\/)?[^/]+/u.exec(specifier)?.[0] ?? specifier;
    return PACKAGES[name] === room ? undefined : { messageId: 'foreign', data: { specifier, room } };
  }
  const target = posix.join(posix.dirname(file), specifier);
  const other = roomOf(target);
  if (other === room) return undefined;
  if (other === undefined || !Object.hasOwn(FLOORS, other)) return { messageId: 'unknown', data: { room: other ?? specifier } };
  if (FLOORS[other] >= FLOORS[room]) {
    return { messageId: FLOORS[other] === FLOORS[room] ? 'sideways' : 'upward', data: { room, other } };
  }
  // A private room and the steps of floor 1 have no door that everything would have to pass.
  const door = other === 'numerics' || PAIRS[room] === other || FLOORS[room] < 2 || target === `src/${other}/index.js`;
  return door ? undefined : { messageId: 'door', data: { other } };
}

/** @type {import('eslint').Rule.RuleModule} */
export const floors = {
  meta: {
    type: 'problem',
    docs: { description: 'rooms import from lower floors only' },
    schema: [],
    messages: {
      upward: 'Room {{room}} must not import from {{other}}, which stands on a higher floor.',
      sideways: 'Room {{room}} must not import from {{other}} on its own floor; what both need lives on a lower one.',
      door: "Import {{other}} through its index.js ('../{{other}}/index.js').",
      foreign: "Room {{room}} must not import '{{specifier}}'; only document imports zod and decimal.js, and nothing imports a Node built-in.",
      unknown: 'Room {{room}} has no floor in eslint-rules/floors.mjs.',
    },
  },
  create(context) {
    const file = relative(context.cwd, context.filename).replaceAll('\\', '/');
    const check = (source) => {
      if (typeof source?.value !== 'string') return;
      const found = refusal(file, source.value);
      if (found) context.report({ node: source, ...found });
    };
    return {
      ImportDeclaration: ({ source }) => check(source),
      ExportNamedDeclaration: ({ source }) => check(source),
      ExportAllDeclaration: ({ source }) => check(source),
      ImportExpression: ({ source }) => check(source),
      TSImportType: ({ source }) => check(source),
      TSImportEqualsDeclaration: ({ moduleReference }) => check(moduleReference.expression),
    };
  },
};
