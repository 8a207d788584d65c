/** A document with one thing wrong in it. */
export interface DocumentFault {
  /** Where the fault is, with dots between the levels. */
  readonly path: string;
  /** What is wrong there. */
  readonly fault: string;
  readonly document: unknown;
  /** Whether a plan may come of it all the same, and if not whether another place may be named. */
  readonly mayPass: 'no' | 'yes' | 'any place';
}

type Fault = readonly [fault: string, value: unknown, mayPass?: DocumentFault['mayPass']];

/** A place whose key is left out may be optional; if it is not, its parent may be named. */
const COMMON: readonly Fault[] = [
  ['absent', undefined, 'any place'],
  ['null', null],
  ['an object', {}],
  ['an empty list', []],
];

/** Parts that may be empty, because all that is in them may be left out. */
const ALL_OPTIONAL: ReadonlySet<string> = new Set(['peakTimes', 'designWinter', 'designSummer']);

/** A quantity: number, space, unit. */
const QUANTITY = /^(-?[\d.]+) (\S+)$/;

/** Every document that differs from a valid one in one place. */
export function corruptionsOfDocument(document: unknown): readonly DocumentFault[] {
  return placesOf(document, []).flatMap(({ steps, value }) =>
    faultsAt(value, steps).map(([fault, wrong, mayPass = 'no']) => ({
      path: steps.join('.'),
      fault,
      document: set(document, steps, wrong),
      mayPass,
    })),
  );
}

function faultsAt(value: unknown, steps: readonly string[]): readonly Fault[] {
  if (typeof value === 'object') {
    const faults = COMMON.filter(([fault]) => !(fault === 'an object' && ALL_OPTIONAL.has(steps.join('.'))));
    return [...faults, ['a text in its place', 'x']];
  }
  if (typeof value === 'number') {
    const numbers: readonly Fault[] = [NaN, Infinity, -Infinity, -1, 0.5, '5'].map((wrong) => [`the number ${String(wrong)}`, wrong]);
    return [...COMMON, ...numbers, ['the number 1e308', 1e308, 'any place']];
  }
  const [, number, unit] = QUANTITY.exec(String(value)) ?? [];
  if (number === undefined || unit === undefined) return [...COMMON, ...textFaults(steps)];
  return [
    ...COMMON,
    ['a bare number', Number(number)],
    ['a number as text', number],
    ['a wrong unit', `${number} furlong`],
    ['a unit of another kind', `${number} ${unit === 'kg' || unit === 'g' ? 'm' : 'kg'}`],
    ['NaN', `NaN ${unit}`],
    ['Infinity', `Infinity ${unit}`],
    ['-Infinity', `-Infinity ${unit}`],
    ['an overflow', `1e999 ${unit}`],
    ['-1e308', `-1e308 ${unit}`, 'any place'],
    ['1e308', `1e308 ${unit}`, 'any place'],
    ['1e30', `1e30 ${unit}`, 'any place'],
    ['1e-300', `1e-300 ${unit}`, 'any place'],
    ['nothing', `0 ${unit}`, 'any place'],
    ['a value without unit', { value: Number(number) }],
    ['NaN as an object', { value: NaN, unit }],
  ];
}

/** A name or label may be any text; anything else is a choice. */
function textFaults(steps: readonly string[]): readonly Fault[] {
  const last = steps.at(-1);
  if (last === 'name' || last === 'label') return [['a number', 5]];
  return [
    ['a number', 5],
    ['an unknown choice', 'none of these'],
    ['the name of a method', 'constructor'],
  ];
}

interface Place {
  readonly steps: readonly string[];
  readonly value: unknown;
}

function placesOf(value: unknown, steps: readonly string[]): readonly Place[] {
  const below = typeof value === 'object' && value !== null ? Object.entries(value) : [];
  const here = steps.length === 0 ? [] : [{ steps, value }];
  return [...here, ...below.flatMap(([key, part]) => placesOf(part, [...steps, key]))];
}

/** A copy of a document with another value at one place; `undefined` takes the key away. */
export function set(whole: unknown, [step = '', ...rest]: readonly string[], value: unknown): unknown {
  const next = rest.length === 0 ? value : set(Reflect.get(Object(whole), step), rest, value);
  if (Array.isArray(whole)) {
    return whole.flatMap((each: unknown, index) => (String(index) !== step ? [each] : next === undefined ? [] : [next]));
  }
  return Object.fromEntries(Object.entries({ ...Object(whole), [step]: next }).filter(([, each]) => each !== undefined));
}
