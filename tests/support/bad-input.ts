import { expect } from 'vitest';
import { formOf } from '../../src/document/form.js';
import { InputError } from '../../src/errors/index.js';
import type { Shape, ShapeNode } from '../../src/units/index.js';
import { notFinite } from './finite.js';

/** An input with one thing wrong in it. */
export interface Corruption {
  /** Where the fault is, with dots between the levels. */
  readonly path: string;
  /** What is wrong there. */
  readonly fault: string;
  /** The whole input with the fault in it. */
  readonly input: unknown;
  /** Whether it is impossible, or a finite number so absurd that it may also be computed, as long as nothing overflows. */
  readonly kind: 'impossible' | 'absurd';
}

/** What a place of an input may be replaced with; `ABSENT` takes its key away. */
const ABSENT: unique symbol = Symbol('absent');
type Fault = readonly [fault: string, value: unknown, kind?: Corruption['kind']];

const GONE: Fault = ['absent', ABSENT];
const NULL: Fault = ['null', null];
const NUMBERS: readonly Fault[] = [
  ['NaN', NaN],
  ['Infinity', Infinity],
  ['-Infinity', -Infinity],
  ['1e308', 1e308, 'absurd'],
  ['-1e308', -1e308, 'absurd'],
];

/** Every input that differs from a valid example in one impossible or absurd place. */
export function corruptions(shape: ShapeNode, example: unknown): readonly Corruption[] {
  return walk(shape, example, '', false).map(({ path, fault: [fault, value, kind = 'impossible'] }) => ({
    path,
    fault,
    input: replaced(example, path.split('.'), value),
    kind,
  }));
}

interface Spot {
  readonly path: string;
  readonly fault: Fault;
}

function walk(node: ShapeNode, value: unknown, path: string, optional: boolean): readonly Spot[] {
  const form = formOf(node);
  if (form.form === 'optional') return value === undefined ? [] : walk(form.of, value, path, true);
  if (value === undefined || value === null) throw new Error(`the example lacks ${path}`);
  const here = (...faults: readonly Fault[]): readonly Spot[] => [...(optional ? [] : [GONE]), NULL, ...faults].map((fault) => ({ path, fault }));
  const whole = (...faults: readonly Fault[]): readonly Spot[] => (path === '' ? [] : here(...faults));
  const below = (key: string, part: ShapeNode): readonly Spot[] =>
    walk(part, Reflect.get(Object(value), key), path === '' ? key : `${path}.${key}`, false);
  const fields = (parts: Readonly<Record<string, ShapeNode>>): readonly Spot[] => Object.entries(parts).flatMap(([key, part]) => below(key, part));
  switch (form.form) {
    case 'quantity':
      return here(...NUMBERS, ['a text', String(value)]);
    case 'count':
      return here(...NUMBERS, ['a text', String(value)], ['a broken number', Number(value) + 0.5]);
    case 'flag':
      return here(['a text', 'false']);
    case 'text':
      return here(['a number', 5]);
    case 'choice':
      return here(['an unknown choice', 'none of these'], ['a number', 5]);
    case 'list':
      if (!Array.isArray(value) || value.length === 0) throw new Error(`the example has nothing in the list ${path}`);
      return [
        ...whole(['empty', []], ['no list', 5]),
        ...value.flatMap((_, index) => below(String(index), form.of).filter(({ fault }) => fault !== GONE)),
      ];
    case 'union': {
      const member: unknown = Reflect.get(Object(value), form.by);
      const by = path === '' ? form.by : `${path}.${form.by}`;
      const faults: readonly Fault[] = [GONE, NULL, ['an unknown choice', 'none of these']];
      return [...whole(['no object', 5]), ...faults.map((fault) => ({ path: by, fault })), ...fields(form.members[String(member)] ?? {})];
    }
    case 'object':
      return [...whole(['no object', 5]), ...fields(form.fields)];
  }
}

function replaced(whole: unknown, [step = '', ...rest]: readonly string[], value: unknown): unknown {
  if (step === '') return value;
  const next = rest.length === 0 ? value : replaced(Reflect.get(Object(whole), step), rest, value);
  if (Array.isArray(whole)) return whole.map((each: unknown, index) => (String(index) === step ? next : each));
  return Object.fromEntries(Object.entries({ ...Object(whole), [step]: next }).filter(([, each]) => each !== ABSENT));
}

/** What is known to differ from the rule. */
export interface Exceptions<T> {
  /** Further valid examples, so that every optional field and every member of every union is in one of them. */
  readonly more?: readonly NoInfer<T>[];
  /** Fields that the function does not look at, each with the reason; all it returns must be finite all the same. */
  readonly unused?: Readonly<Record<string, string>>;
}

/** Asserts that a function answers a valid input with finite numbers and refuses every corruption of it by name. */
export function refuses<T>(run: (input: T) => unknown, shape: NoInfer<Shape<T>>, example: T, exceptions: Exceptions<T> = {}): void {
  expect(faultsOf(run, shape, example, exceptions)).toEqual([]);
}

/** What {@link refuses} finds wrong, one line each. */
export function faultsOf<T>(
  run: (input: T) => unknown,
  shape: NoInfer<Shape<T>>,
  example: T,
  { more = [], unused = {} }: Exceptions<T> = {},
): readonly string[] {
  // A shape is a node whatever it is the shape of; the compiler cannot see that of an open T.
  const node = shape as ShapeNode;
  const examples = [example, ...more];
  const seen = new Set<string>();
  const untested = placesOf(node).filter((place) => !examples.some((each) => holds(each, place)));
  const faults = examples.flatMap((each, index) => {
    const off = notFinite(run(each));
    if (off !== undefined) return [`example ${String(index)} gives ${off}`];
    return corruptions(node, each).flatMap(({ path, fault, input, kind }) => {
      const outcome = outcomeOf(run, input, path, kind);
      const ignored = outcome === ACCEPTED && unused[path] !== undefined;
      if (ignored) seen.add(path);
      return outcome === undefined || ignored ? [] : [`${path} ${fault}: ${outcome}`];
    });
  });
  const stale = Object.keys(unused).filter((path) => !seen.has(path));
  return [
    ...faults,
    ...untested.map((place) => `no example has ${place}`),
    ...stale.map((path) => `${path} is said to be unused, but every fault in it is refused`),
  ];
}

const ACCEPTED = 'accepted';

/** What is wrong with how a function meets a corrupted input; nothing when it refuses it as it should. */
function outcomeOf<T>(run: (input: T) => unknown, input: unknown, path: string, kind: Corruption['kind']): string | undefined {
  let result: unknown;
  try {
    // The corrupted input is what a caller without a type checker may pass.
    result = run(input as T);
  } catch (error) {
    if (!(error instanceof InputError)) return `throws ${String(error)}`;
    if (kind === 'absurd') return undefined;
    const { argument } = error;
    const named = argument !== '' && (path === argument || path.startsWith(`${argument}.`) || argument.startsWith(`${path}.`));
    return named ? undefined : `refused in the name of ${JSON.stringify(argument)}`;
  }
  const off = notFinite(result);
  if (off !== undefined) return `gives ${off}`;
  return kind === 'absurd' ? undefined : ACCEPTED;
}

/** Every optional field and every member of a union, which an example must hold to be tested. */
function placesOf(node: ShapeNode, path = ''): readonly string[] {
  const form = formOf(node);
  const at = (key: string): string => (path === '' ? key : `${path}.${key}`);
  const fields = (parts: Readonly<Record<string, ShapeNode>>): readonly string[] =>
    Object.entries(parts).flatMap(([key, part]) => placesOf(part, at(key)));
  switch (form.form) {
    case 'optional':
      return [path, ...placesOf(form.of, path)];
    case 'list':
      return placesOf(form.of, at('*'));
    case 'object':
      return fields(form.fields);
    case 'union':
      // A quantity that carries its kind has a member for each kind; one stands for all.
      return node === 'tagged' ? [] : Object.entries(form.members).flatMap(([name, parts]) => [`${at(form.by)}=${name}`, ...fields(parts)]);
    default:
      return [];
  }
}

function holds(value: unknown, place: string): boolean {
  const [path = '', member] = place.split('=');
  const values = path
    .split('.')
    .reduce<readonly unknown[]>(
      (found, step) =>
        found.flatMap((each): readonly unknown[] => (step === '*' ? (Array.isArray(each) ? each : []) : [Reflect.get(Object(each), step)])),
      [value],
    );
  return values.some((each) => (member === undefined ? each !== undefined : each === member));
}
