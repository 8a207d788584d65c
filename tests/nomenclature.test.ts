import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ambiguousNames, isNumber, nomenclaturePage } from '../scripts/nomenclature.js';
import { publicFields, type Use } from '../scripts/public-fields.js';
import { BREAKDOWNS, SHARED_NAMES } from '../scripts/shared-names.data.js';

const uses = publicFields();
const use = (name: string, kind: string, owner = 'Pit'): Use => ({ name, kind, owner, room: 'soil', form: 'one', meaning: 'x' });

describe('names', () => {
  it('of quantities mean one kind each', () => {
    expect(ambiguousNames(uses)).toEqual([]);
  }, 60_000);

  it('are read off the interfaces with their kinds', () => {
    const of = (owner: string, name: string): Partial<Use> | undefined => uses.find((each) => each.owner === owner && each.name === name);
    expect(of('AnnualWave', 'mean')).toMatchObject({ kind: 'temperature', room: 'states', form: 'one' });
    expect(of('FluidChoice', 'fluid')).toMatchObject({ kind: 'choice', room: 'fluid' });
    expect(of('ColdestFluid', 'belowEntering')).toMatchObject({ kind: 'temperature difference' });
    expect(of('FluidFacts.uncertainty', 'uncertainty.density')).toMatchObject({ kind: 'fraction' });
    expect(of('SuperposedRiseInput', 'heat')).toMatchObject({ kind: 'heat per pipe length', form: 'list' });
    expect(of('Band', 'estimate')).toMatchObject({ kind: 'any kind' });
    expect(new Set(uses.map(({ room }) => room)).size).toBeGreaterThan(8);
  });

  it('of quantities and counts are explained', () => {
    const numbers = uses.filter(({ kind }) => isNumber(kind) || kind === 'whole number');
    const last = (name: string): string => name.split('.').at(-1) ?? '';
    const explained = new Set(numbers.filter(({ meaning }) => meaning !== '').flatMap(({ name }) => [name, last(name)]));
    expect(numbers.length).toBeGreaterThan(100);
    expect(
      numbers.filter(({ name }) => !explained.has(name) && !explained.has(last(name))).map(({ room, owner, name }) => `${room} ${owner} ${name}`),
    ).toEqual([]);
  });

  it('of fields are explained one by one, but for the key that tells the members of a union apart', () => {
    const keys = ['from', 'basis', 'type', 'by', 'mode'];
    const bare = uses.filter(({ name, meaning }) => meaning === '' && !keys.includes(name.split('.').at(-1) ?? ''));
    expect(bare.map(({ room, owner, name }) => `${room} ${owner} ${name}`)).toEqual([]);
  });

  it('are not excused without need', () => {
    const kinds = (name: string): ReadonlySet<string> => new Set(uses.filter((each) => each.name === name).map(({ kind }) => kind));
    expect(Object.keys(SHARED_NAMES).filter((name) => kinds(name).size < 2 && !kinds(name).has('any kind'))).toEqual([]);
    expect(Object.keys(BREAKDOWNS).filter((owner) => !uses.some((each) => each.owner === owner))).toEqual([]);
  });

  it('stand on the page as the interfaces have them', () => {
    const page = readFileSync(new URL('../docs/nomenclature.md', import.meta.url), 'utf8');
    expect(page, 'run: node scripts/run.mjs scripts/write-nomenclature.ts').toBe(nomenclaturePage(uses));
  });
});

describe('ambiguous names', () => {
  it('are found where a quantity shares its name', () => {
    expect(ambiguousNames([use('depth', 'length'), use('depth', 'length', 'Trench')])).toEqual([]);
    expect(ambiguousNames([use('depth', 'length'), use('depth', 'diameter', 'Trench')])).toEqual([
      'depth: length in soil Pit; diameter in soil Trench',
    ]);
    expect(ambiguousNames([use('depth', 'length'), use('depth', 'parts', 'Trench')])).toHaveLength(1);
    expect(ambiguousNames([use('label', 'text'), use('label', 'choice', 'Trench')])).toEqual([]);
    expect(ambiguousNames([use('value', 'length'), use('value', 'diameter', 'Trench')])).toEqual([]);
  });
});
