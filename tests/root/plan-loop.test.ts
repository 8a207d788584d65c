import { describe, expect, it } from 'vitest';
import { demoDocument, inputDocument, InputError, planDocument, planLoop, type UnitSystem } from '../../src/index.js';
import { loopInputShape, planLoop as planLoopInSi } from '../../src/plan/index.js';
import { english } from '../../src/report/index.js';
import { corruptionsOfDocument, type DocumentFault, set } from './document-faults.js';
import { corruptions } from '../support/bad-input.js';
import { notFinite } from '../support/finite.js';
import { DOCUMENTS } from './documents.js';

const SYSTEMS: readonly UnitSystem[] = ['metric', 'us'];
const reader = planDocument();

describe.each(SYSTEMS)('document in, document out, in %s units', (units) => {
  const written = planLoop(demoDocument, { units });
  const text = JSON.stringify(written);

  it('reads back bit for bit', () => {
    const plan = reader.read(JSON.parse(text));
    expect(JSON.stringify(reader.write(plan, units))).toBe(text);
    const { findings: _f, assumptions: _a, format, units: system, ...rest } = plan;
    const { format: _, ...input } = inputDocument().read(demoDocument);
    const { findings: __f, assumptions: __a, ...direct } = planLoopInSi(input);
    // Vitest compares numbers with Object.is here, so no digit may be lost on the way through the text.
    expect(rest).toEqual(direct);
    expect([format, system]).toEqual(['loamloop-plan-1', units]);
    expect(notFinite(plan)).toBeUndefined();
  });

  it('has codes and values alone, and in somebody’s words a message for every finding and assumption', () => {
    expect(text).not.toContain('"message"');
    const told = planLoop(demoDocument, { units, words: english });
    expect(JSON.stringify(told, (key, value: unknown) => (key === 'message' ? undefined : value))).toBe(text);
    const { findings, assumptions } = reader.read(told);
    expect(findings.length).toBeGreaterThan(0);
    expect(assumptions.length).toBeGreaterThan(0);
    for (const { code, message } of [...findings, ...assumptions]) {
      expect([code, message]).toEqual([code, expect.stringMatching(/^.{20,}\.$/s)]);
      expect(message).not.toMatch(/NaN|undefined|Infinity|\[object/);
    }
  });

  it('holds no NaN, null or undefined', () => {
    expect(text).not.toMatch(/NaN|Infinity|undefined|\bnull\b/);
  });

  it('carries its quantities with a unit', () => {
    const pattern = units === 'us' ? /^[\d.e-]+ ft$/ : /^[\d.e-]+ m$/;
    expect(Reflect.get(Object(Reflect.get(Object(written), 'loop')), 'trench')).toMatch(pattern);
  });

  it('plans the rewritten input to the same document', () => {
    const rewritten = inputDocument().write(inputDocument().read(demoDocument), units);
    expect(planLoop(rewritten, { units })).toEqual(written);
  });
});

describe('findings of the two systems', () => {
  it('are the same but for their texts', () => {
    const [metric, us] = SYSTEMS.map((units) => reader.read(planLoop(demoDocument, { units })));
    const bare = (plan: typeof metric): unknown => plan?.findings.map(({ message: _, ...finding }) => finding);
    expect(bare(us)).toEqual(bare(metric));
  });
});

describe('the JSON Schema of the input', () => {
  const schema = inputDocument().jsonSchema();
  const accepts = (document: unknown): boolean => matches(schema, document);

  it('accepts the demo and the demo rewritten in either system', () => {
    expect(accepts(demoDocument)).toBe(true);
    for (const system of SYSTEMS) expect(accepts(inputDocument().write(inputDocument().read(demoDocument), system))).toBe(true);
  });

  it('refuses what the reader refuses: a missing part, a bare number, a null, an unknown choice', () => {
    const faults = corruptionsOfDocument(demoDocument).filter(({ fault }) => ['a bare number', 'null', 'an unknown choice'].includes(fault));
    expect(faults.length).toBeGreaterThan(100);
    expect(faults.filter(({ document }) => accepts(document)).map(({ path, fault }) => `${path} ${fault}`)).toEqual([]);
    for (const key of Object.keys(demoDocument)) expect([key, accepts(set(demoDocument, [key], undefined))]).toEqual([key, false]);
  });
});

/** As much of JSON Schema as structure needs: type, properties, required, items, enum, const, anyOf, oneOf. */
function matches(schema: unknown, value: unknown): boolean {
  const at = (key: string): unknown => Reflect.get(Object(schema), key);
  const list = (key: string): readonly unknown[] => (Array.isArray(at(key)) ? (at(key) as unknown[]) : []);
  if (at('$ref') !== undefined) throw new Error('references are not resolved here');
  if (at('anyOf') !== undefined && !list('anyOf').some((each) => matches(each, value))) return false;
  if (at('oneOf') !== undefined && list('oneOf').filter((each) => matches(each, value)).length !== 1) return false;
  if (at('const') !== undefined && at('const') !== value) return false;
  if (at('enum') !== undefined && !list('enum').includes(value)) return false;
  switch (at('type')) {
    case 'object': {
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
      const parts = Object(at('properties'));
      const keys = Object.keys(value);
      if (!list('required').every((key) => Object.hasOwn(value, String(key)))) return false;
      if (at('additionalProperties') === false && !keys.every((key) => Object.hasOwn(parts, key))) return false;
      return keys.every((key) => !Object.hasOwn(parts, key) || matches(Reflect.get(parts, key), Reflect.get(value, key)));
    }
    case 'array':
      return Array.isArray(value) && value.every((each) => matches(at('items') ?? {}, each));
    case 'string':
      return typeof value === 'string';
    case 'integer':
      return Number.isInteger(value);
    case 'number':
      return typeof value === 'number';
    case 'boolean':
      return typeof value === 'boolean';
    default:
      return true;
  }
}

/** Whether the parent of a named place is there: a refusal points into what was given. */
function exists(job: unknown, argument: string): boolean {
  const parent = argument.split('.').slice(0, -1);
  return typeof parent.reduce<unknown>((part, step) => Reflect.get(Object(part), step), job) === 'object';
}

/**
 * Whether a refusal names the fault, or where that is impossible only beside another number of its part (a limit beside rating points, a balance
 * point beside a design temperature), that other number. Across parts there is one: no pipe brings the fluid to the unit's limit in this ground.
 */
function pointsAt({ argument, code }: InputError, path: string, job: unknown, mayNameAnother: boolean): boolean {
  if (argument === path || path.startsWith(`${argument}.`) || argument.startsWith(`${path}.`)) return true;
  if (!mayNameAnother || !exists(job, argument)) return false;
  const samePart = argument.split('.')[0] === path.split('.')[0];
  return samePart || (code === 'unreachable' && /^heatPump\.(lowest|highest)(Entering|Leaving)$/u.test(argument));
}

/** What is wrong with how the whole job meets a fault; nothing when it refuses it by its place or computes it finite. */
function metBadly({ path, document, mayPass }: DocumentFault): string | undefined {
  let plan: unknown;
  try {
    plan = planLoop(document, { units: 'metric' });
  } catch (error) {
    if (!(error instanceof InputError)) return `throws ${String(error).slice(0, 200)}`;
    const { argument } = error;
    if (/NaN|\[object/.test(error.message.replace(/: .*? is not allowed/s, ''))) return `says ${error.message}`;
    return pointsAt(error, path, document, mayPass === 'any place')
      ? undefined
      : `is refused in the name of ${JSON.stringify(argument)}: ${error.code}`;
  }
  const text = JSON.stringify(plan);
  if (/NaN|Infinity|undefined|\bnull\b/.test(text)) return 'gives a plan with NaN, Infinity or null';
  return mayPass === 'no' ? 'is accepted' : undefined;
}

describe.each(DOCUMENTS)('bad documents, $about', ({ document }) => {
  const faults = corruptionsOfDocument(document);
  const names = [...new Set(faults.map(({ fault }) => fault))];

  it('come from one that is planned, and are many', () => {
    expect(JSON.stringify(planLoop(document, { units: 'us' }))).not.toMatch(/NaN|Infinity|\bnull\b/);
    expect(faults.length).toBeGreaterThan(700);
  });

  it.each(names)('%s is refused by its place, or computed finite where it may be', (name) => {
    const bad = faults.flatMap((fault) => {
      const met = fault.fault === name ? metBadly(fault) : undefined;
      return met === undefined ? [] : [`${fault.path}: ${met}`];
    });
    expect(bad).toEqual([]);
  });
});

describe('bad calls', () => {
  it.each([undefined, null, 5, 'text', [], {}, NaN, true, () => 1, [demoDocument], new Date(0)])(
    '%s in place of a document is refused',
    (document) => {
      expect(() => planLoop(document, { units: 'metric' })).toThrow(InputError);
    },
  );

  it('a field nobody knows is refused by its name', () => {
    expect(() => planLoop({ ...demoDocument, colour: 'green' }, { units: 'us' })).toThrow(/^colour: green is not allowed/);
  });

  it('an unknown unit system is refused', () => {
    expect(() => planLoop(demoDocument, { units: 'imperial' as never })).toThrow(InputError);
  });
});

describe.each(DOCUMENTS)('bad input in SI, $about', ({ document }) => {
  const { format: _, ...job } = inputDocument().read(document);

  it('is refused by its place, or computed finite where it is absurd but possible', () => {
    const bad = corruptions({ ...loopInputShape }, job).flatMap(({ path, fault, input, kind }) => {
      try {
        const off = notFinite(planLoopInSi(input as never));
        return off !== undefined ? [`${path} ${fault}: gives ${off}`] : kind === 'impossible' ? [`${path} ${fault}: is accepted`] : [];
      } catch (error) {
        if (!(error instanceof InputError)) return [`${path} ${fault}: throws ${String(error).slice(0, 120)}`];
        const { argument } = error;
        return pointsAt(error, path, input, kind === 'absurd') ? [] : [`${path} ${fault}: in the name of ${argument}`];
      }
    });
    expect(bad).toEqual([]);
  });
});
