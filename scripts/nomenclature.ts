import { type Kind, KINDS } from '../src/units/index.js';
import type { Use } from './public-fields.js';
import { BREAKDOWNS, SHARED_NAMES } from './shared-names.data.js';

/** Whether a kind is that of a quantity; what the compiler cannot tell apart is one number from another. */
export const isNumber = (kind: string): boolean => isKind(kind) || kind === 'any kind';
const isKind = (kind: string): kind is Kind => Object.hasOwn(KINDS, kind);

/** Names for a quantity that are used with anything else as well without being in {@link SHARED_NAMES}, with the places of each. */
export function ambiguousNames(uses: readonly Use[]): readonly string[] {
  return [...grouped(uses)].flatMap(([name, all]) => {
    const kinds = new Map<string, string[]>();
    for (const { kind, room, owner } of all) kinds.set(kind, [...(kinds.get(kind) ?? []), `${room} ${owner}`]);
    if (kinds.size < 2 || ![...kinds.keys()].some(isNumber) || Object.hasOwn(SHARED_NAMES, name)) return [];
    return [`${name}: ${[...kinds].map(([kind, places]) => `${kind} in ${places.join(', ')}`).join('; ')}`];
  });
}

function grouped(uses: readonly Use[]): ReadonlyMap<string, readonly Use[]> {
  const groups = new Map<string, Use[]>();
  for (const use of uses) groups.set(use.name, [...(groups.get(use.name) ?? []), use]);
  return new Map([...groups].sort(([a], [b]) => a.localeCompare(b, 'en')));
}

/** The page of names, in Markdown. */
export function nomenclaturePage(uses: readonly Use[]): string {
  const cell = (text: string): string => text.replaceAll('|', '\\|');
  const roomsOf = (all: readonly Use[]): string => [...new Set(all.map(({ room }) => room))].join(', ');
  // The unit stands in a column of its own.
  const meaning = (all: readonly Use[]): string =>
    cell((all.find((use) => use.meaning !== '')?.meaning ?? '').replace(/\s*\[[^\]]*\](?=[.;,:]|$)/gu, '').replace(/\.$/u, ''));
  const quantities: string[] = [];
  const others: string[] = [];
  for (const [name, all] of grouped(uses)) {
    const kinds = [...new Set(all.map(({ kind }) => kind))];
    const [kind = ''] = kinds;
    if (Object.hasOwn(SHARED_NAMES, name)) continue;
    if (kinds.length === 1 && isKind(kind)) {
      const { si, metric, us } = KINDS[kind];
      quantities.push(`| \`${name}\` | ${kind} | ${si} | ${metric} | ${us} | ${meaning(all)} | ${roomsOf(all)} |`);
    } else others.push(`| \`${name}\` | ${kinds.join(' / ')} | ${meaning(all)} | ${roomsOf(all)} |`);
  }
  const listed = (names: Readonly<Record<string, string>>): string[] => Object.entries(names).map(([name, why]) => `| \`${name}\` | ${why} |`);
  return [
    '# Names',
    '',
    'One name means one thing, in one unit, in every room of the library. This page is made from the public interfaces by',
    '`node scripts/run.mjs scripts/write-nomenclature.ts`; a test holds it to them.',
    '',
    '## Quantities',
    '',
    'A quantity is a plain number in the unit of the column "in code". Documents write it in the unit of the metric or the US column.',
    '',
    '| name | kind | in code | metric | US | meaning | rooms |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...quantities,
    '',
    '## Whole numbers, choices, texts and parts',
    '',
    '| name | what it is | meaning | rooms |',
    '| --- | --- | --- | --- |',
    ...others,
    '',
    '## Names that take the kind of what they stand in',
    '',
    '| name | why |',
    '| --- | --- |',
    ...listed(SHARED_NAMES),
    '',
    '## Interfaces that split a quantity up',
    '',
    'Their fields, like those of a part without a name of its own, are read with what they stand in: `spent.pipe`.',
    '',
    '| interface | what its fields are |',
    '| --- | --- |',
    ...listed(BREAKDOWNS),
    '',
  ].join('\n');
}
