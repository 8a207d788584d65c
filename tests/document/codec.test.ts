import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codecOf } from '../../src/document/codec.js';
import { readQuantity, writeQuantity } from '../../src/document/exact.js';
import { jsonSchemaOf } from '../../src/document/json-schema.js';
import { InputError } from '../../src/errors/index.js';
import { type Band, bandShape, type Moisture, moistureShape } from '../../src/states/index.js';
import { type Kind, KINDS, type Length, type Quantity, type Shape } from '../../src/units/index.js';
import { arbitraryOf, arbitraryQuantity } from '../support/arbitrary.js';

const kinds = Object.keys(KINDS) as Kind[];

interface Sample {
  readonly name: string;
  readonly depth: Length;
  readonly count: number;
  readonly dry: boolean;
  readonly goal: 'heating' | 'cooling';
  readonly remark?: string;
  readonly below?: Length;
  readonly moisture: Moisture;
  readonly layers: readonly { readonly top: Length; readonly conductivity: Band<'conductivity'> }[];
}
const sampleShape: Shape<Sample> = {
  name: 'text',
  depth: 'length',
  count: 'count',
  dry: 'flag',
  goal: ['heating', 'cooling'],
  remark: { optional: 'text' },
  below: { optional: 'length' },
  moisture: moistureShape,
  layers: { list: { top: 'length', conductivity: bandShape('conductivity') } },
};
const sample = {
  name: 'pit 1',
  depth: '6 ft',
  count: 2,
  dry: false,
  goal: 'heating',
  moisture: { basis: 'dry', value: '18 %' },
  layers: [{ top: { value: 1, unit: 'ft' }, conductivity: { low: '1 W/(m.K)', estimate: '1.2 W/(m·K)', high: '1.5 W/(m*K)', coverage: '80 %' } }],
};

describe('round trip, bit for bit', () => {
  const every = Object.fromEntries(kinds.map((kind) => [kind, kind]));
  it.each(['metric', 'us'] as const)('1000 documents that hold every kind, in %s units', { timeout: 60_000 }, (system) => {
    const codec = codecOf<Record<Kind, Quantity<Kind>>>(every as never);
    fc.assert(
      fc.property(arbitraryOf(every), (value) => {
        const back = codec.read(JSON.parse(JSON.stringify(codec.write(value as never, system))));
        for (const kind of kinds) expect(Object.is(back[kind], (value as Record<Kind, number>)[kind])).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it.each(['metric', 'us'] as const)('objects, lists, unions and optional fields, in %s units', (system) => {
    const codec = codecOf(sampleShape);
    fc.assert(
      fc.property(arbitraryOf(sampleShape), (value) => {
        expect(codec.read(codec.write(value as Sample, system))).toEqual(value);
      }),
    );
  });

  it('negative zero and the smallest doubles come back too', () => {
    for (const kind of kinds) {
      for (const x of [0, -0, 5e-324, -5e-324, 1e-300]) {
        for (const system of ['metric', 'us'] as const) expect(Object.is(readQuantity(kind, writeQuantity(kind, x, system)), x)).toBe(true);
      }
    }
  });
});

describe('the shortest text', () => {
  it.each([
    ['length', 182.88, '600 ft', '182.88 m'],
    ['temperature', -1.1, '30.02 degF', '-1.1 degC'],
    ['temperature difference', 10, '18 degF', '10 K'],
    ['power', 3516.8528420666667, '12000 Btu/h', '3516.8528420666667 W'],
    ['fraction', 0.25, '25 %', '25 %'],
    ['ratio', 3.5, '3.5', '3.5'],
    ['pressure', 6894.757293168362, '1 psi', '6.894757293168362 kPa'],
  ] as const)('%s %d', (kind, value, us, metric) => {
    expect(writeQuantity(kind, value, 'us')).toBe(us);
    expect(writeQuantity(kind, value, 'metric')).toBe(metric);
  });

  it('no shorter decimal of the same unit reads back the same', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds).chain((kind) => fc.tuple(fc.constant(kind), arbitraryQuantity(kind))),
        ([kind, x]) => {
          const [digits = '', unit = ''] = writeQuantity(kind, x, 'us').split(' ');
          const significant = digits.replace(/e.*$/u, '').replace(/[-.]/gu, '').replace(/^0+/u, '').replace(/0+$/u, '').length;
          // Below 1e-290 a double itself carries fewer than 15 digits, and the search starts at 15.
          if (Math.abs(x) < 1e-290 || significant < 2 || significant > 17) return;
          const shorter = Number(digits).toPrecision(significant - 1);
          expect(readQuantity(kind, kind === 'ratio' ? shorter : `${shorter} ${unit}`)).not.toBe(x);
        },
      ),
    );
  });
});

describe('constructors against the codec', () => {
  const ulp = (x: number): number => Math.max(Number.MIN_VALUE, 2 ** (Math.floor(Math.log2(Math.abs(x) || Number.MIN_VALUE)) - 52));
  it('agree to 1 ulp of the larger term', async () => {
    const units = await import('../../src/units/index.js');
    fc.assert(
      fc.property(
        fc
          .constantFrom(...kinds)
          .chain((kind) =>
            fc.tuple(fc.constant(kind), fc.constantFrom(...Object.keys(KINDS[kind].units)), fc.double({ min: 1e-6, max: 1e9, noNaN: true })),
          ),
        ([kind, name, x]) => {
          const [numerator = '', denominator = '', added = '0'] = units.factor(kind, name) ?? [];
          const larger = (Math.max(Math.abs(x), Math.abs(Number(added))) * Number(numerator)) / Number(denominator);
          const exact = readQuantity(kind, kind === 'ratio' ? String(x) : `${String(x)} ${name}`);
          expect(Math.abs(units.quantity(kind, x, name as never) - Number(exact))).toBeLessThanOrEqual(2 * ulp(larger));
        },
      ),
    );
  });
});

describe('what is refused', () => {
  const codec = codecOf(sampleShape);
  const refused = (document: unknown): InputError => {
    try {
      codec.read(document);
    } catch (error) {
      if (error instanceof InputError) return error;
      throw error;
    }
    throw new Error('nothing was refused');
  };

  it('reads the sample', () => {
    expect(codec.read(sample)).toMatchObject({ depth: 1.8288, layers: [{ top: 0.3048 }] });
  });

  it.each([
    ['600', 'wrong-type'],
    ['ft', 'wrong-type'],
    ['1,000 ft', 'wrong-type'],
    ['600 furlong', 'unknown-unit'],
    ['NaN m', 'wrong-type'],
    ['Infinity m', 'wrong-type'],
    ['1e999 m', 'not-finite'],
    ['0x10 ft', 'wrong-type'],
    ['600 constructor', 'unknown-unit'],
    ['600 __proto__', 'unknown-unit'],
    ['6 degC', 'unknown-unit'],
    [600, 'wrong-type'],
    [null, 'wrong-type'],
    [Number.NaN, 'wrong-type'],
    [{ value: Number.NaN, unit: 'ft' }, 'wrong-type'],
    [{ value: 'abc', unit: 'ft' }, 'wrong-type'],
    [{ value: 6, unit: 'furlong' }, 'unknown-unit'],
    [{ value: 6, unit: '' }, 'unknown-unit'],
    [{ value: '6 m', unit: ' ' }, 'unknown-unit'],
    [{ value: '6 m', unit: 'm' }, 'wrong-type'],
    [{ value: 6 }, 'wrong-type'],
    [undefined, 'missing'],
  ])('a depth of %j', (depth, code) => {
    const error = refused({ ...sample, depth });
    expect(error.code).toBe(code);
    expect(error.pointer).toBe('/depth');
    expect(error.allowed).toContain('m, km, cm, mm, ft, in, yd');
  });

  it.each([
    [{ ...sample, surplus: 1 }, '/surplus', 'surplus'],
    [{ ...sample, goal: 'both' }, '/goal', 'unknown-choice'],
    [{ ...sample, count: 1.5 }, '/count', 'wrong-type'],
    [{ ...sample, layers: {} }, '/layers', 'wrong-type'],
    [{ ...sample, moisture: { basis: 'damp', value: '1 %' } }, '/moisture/basis', 'unknown-choice'],
    [{ ...sample, moisture: { basis: 'dry', value: '1 %', extra: 1 } }, '/moisture/extra', 'surplus'],
    [{ ...sample, layers: [...sample.layers, { top: '1 ft' }] }, '/layers/1/conductivity', 'missing'],
    [{ ...sample, depth: { value: 6, unit: 'ft', per: 'h' } }, '/depth/per', 'surplus'],
    [{ ...sample, moisture: { basis: { toString: 1 }, value: '1 %' } }, '/moisture/basis', 'wrong-type'],
    [{ ...sample, moisture: { basis: { toString: 1 }, value: '1 %', extra: 1 } }, '/moisture/basis', 'wrong-type'],
    [[], '', 'wrong-type'],
    [null, '', 'wrong-type'],
    ['{}', '', 'wrong-type'],
  ])('a faulty document %#', (document, pointer, code) => {
    expect(refused(document)).toMatchObject({ pointer, code });
  });

  it.each(['depth', 'count', 'goal'])('a %s that JSON has no form for', (field) => {
    for (const value of [12n, Symbol('m'), () => 6]) {
      expect(refused({ ...sample, [field]: value })).toMatchObject({ pointer: `/${field}`, code: 'wrong-type', value: expect.any(String) as string });
    }
  });

  it('a part that contains itself', () => {
    const circle: Record<string, unknown> = { ...sample };
    circle.self = circle;
    expect(refused(circle)).toMatchObject({ pointer: '/self', code: 'surplus', value: 'an object that JSON cannot hold' });
    expect(refused({ ...sample, layers: circle })).toMatchObject({ pointer: '/layers', code: 'wrong-type' });
    expect(refused({ ...sample, goal: [12n] })).toMatchObject({ pointer: '/goal', value: 'an object that JSON cannot hold' });
  });

  it('names the two keys of a value with its unit', () => {
    expect(refused({ ...sample, depth: { value: 6, unit: 'ft', per: 'h' } }).allowed).toBe('no such field here; known: value, unit');
  });

  it('shows no more of a value than a person reads', () => {
    for (const depth of ['9'.repeat(100_000), Array.from({ length: 60 }, () => sample), { value: 'x'.repeat(500), unit: 'ft' }]) {
      const { value, message } = refused({ ...sample, depth });
      expect(value).toMatch(/^.{79}…$/u);
      expect(message.length).toBeLessThan(250);
    }
    const late = new InputError({ code: 'too-many', argument: 'layers', value: { kind: 'count', value: 60 }, allowed: '1 to 50 entries' });
    expect(codec.explain(late, { ...sample, layers: Array.from({ length: 60 }, () => sample.layers[0]) }).message.length).toBeLessThan(200);
  });

  it('tells another version of a format from another format', () => {
    const versioned = codecOf<{ readonly format: 'loamloop-pit-1'; readonly goal: 'series-1' }>({ format: ['loamloop-pit-1'], goal: ['series-1'] });
    const code = (document: unknown): unknown => {
      try {
        return versioned.read(document);
      } catch (error) {
        return error instanceof InputError ? `${error.pointer} ${error.code}` : error;
      }
    };
    expect(code({ format: 'loamloop-pit-2', goal: 'series-1', newer: true })).toBe('/format unknown-version');
    expect(code({ format: 'loamloop-pit-', goal: 'series-1' })).toBe('/format unknown-choice');
    expect(code({ format: 'recipe-2', goal: 'series-1' })).toBe('/format unknown-choice');
    expect(code({ format: 'loamloop-pit-1', goal: 'series-2' })).toBe('/goal unknown-choice');
  });

  it('gives the limit in the unit of the limit, whatever the field is measured in', () => {
    const error = codec.explain(
      new InputError({
        code: 'out-of-range',
        argument: 'depth',
        value: { kind: 'moisture on dry basis', value: 629.21234567 },
        allowed: 'at most 20',
      }),
      sample,
    );
    expect(error.message).toBe('depth: 6 ft is not allowed; allowed: at most 20 (this makes 629.212; limits in kg/kg)');
  });

  it('keeps the value as it was written when a computation refuses it later', () => {
    const error = codec.explain(
      new InputError({ code: 'out-of-range', argument: 'depth', value: { kind: 'length', value: 1.8288 }, allowed: 'at most 1' }),
      sample,
    );
    expect(error.message).toBe('depth: 6 ft is not allowed; allowed: at most 1 (limits in m)');
  });
});

describe('what is read', () => {
  it.each([
    ['temperature', '−5 degC', -5],
    ['temperature', '−5 °C', -5],
    ['length', '1e−2 m', 0.01],
    ['length', ' 75 m\n', 75],
    ['conductivity', '1 W/(m·K)', 1],
    ['ratio', '−3.5', -3.5],
  ] as const)('a %s written %j', (kind, text, value) => {
    expect(readQuantity(kind, text)).toBe(value);
  });

  it.each([
    [{ value: -5, unit: '°C' }, -5],
    [{ value: '−5', unit: '°C' }, -5],
    [{ value: ' 23', unit: '°F ' }, -5],
  ])('a temperature as %j', (temperature, value) => {
    expect(codecOf<{ readonly t: Quantity<'temperature'> }>({ t: 'temperature' }).read({ t: temperature })).toEqual({ t: value });
  });
});

describe('the JSON Schema against the reader', () => {
  interface QuantityPart {
    readonly anyOf: readonly [
      { readonly pattern: string },
      {
        readonly properties: {
          readonly value: { readonly anyOf: readonly [unknown, { readonly pattern: string }] };
          readonly unit: { readonly pattern: string };
        };
      },
    ];
  }
  const accepts = (kind: Kind, given: string | { readonly value: string; readonly unit: string }): boolean => {
    const part = (jsonSchemaOf({ x: kind }) as unknown as { readonly properties: { readonly x: QuantityPart } }).properties.x;
    const [text, { properties: pair }] = part.anyOf;
    const matches = ({ pattern }: { readonly pattern: string }, tried: string): boolean => new RegExp(pattern, 'u').test(tried);
    return typeof given === 'string' ? matches(text, given) : matches(pair.value.anyOf[1], given.value) && matches(pair.unit, given.unit);
  };
  const reads = (kind: Kind, given: unknown): boolean => {
    try {
      codecOf<{ readonly x: Length }>({ x: kind } as never).read({ x: given });
      return true;
    } catch {
      return false;
    }
  };

  it('both take every kind in every unit', () => {
    for (const kind of kinds) {
      for (const unit of Object.keys(KINDS[kind].units)) {
        for (const number of ['7', '-7.5', '+.5', '−7.', '1e-300', '1E+30', '1e199', '2.5e−3']) {
          for (const given of [`${number} ${unit}`, ` ${number} ${unit} `, { value: number, unit }, { value: ` ${number}`, unit: `${unit}\t` }]) {
            expect([kind, given, accepts(kind, given), reads(kind, given)]).toEqual([kind, given, true, true]);
          }
        }
      }
    }
  });

  it.each([
    '75 furlong',
    '75 m2',
    '75',
    'm',
    '',
    ' ',
    '75  m',
    '1e400 m',
    `${'9'.repeat(400)} m`,
    'abc m',
    '7 5 m',
    '75 m m',
    '75 (m)',
    '0x1 m',
    'NaN m',
    '1_0 m',
  ])('both refuse a length %j', (text) => {
    expect([accepts('length', text), reads('length', text)]).toEqual([false, false]);
  });

  it.each([
    { value: 'abc', unit: 'm' },
    { value: '75', unit: 'furlong' },
    { value: '75 m', unit: '' },
    { value: '75 ', unit: 'm' },
    { value: '75', unit: ' m' },
    { value: '1e400', unit: 'm' },
  ])('both refuse %j', (pair) => {
    expect([accepts('length', pair), reads('length', pair)]).toEqual([false, false]);
  });

  it('both take the other spellings of a unit, and no others', () => {
    for (const text of ['1 W/(m*K)', '1 W/(m·K)', '1 Btu·in/(h·ft²·°F)', '1 kcal/(h.m.K)']) {
      expect([text, accepts('conductivity', text), reads('conductivity', text)]).toEqual([text, true, true]);
    }
    for (const text of ['1 W/(mxK)', '1 W/mK', '1 W/(m.K', '1 Btu in/(h.ft2.degF)']) {
      expect([text, accepts('conductivity', text), reads('conductivity', text)]).toEqual([text, false, false]);
    }
  });

  it('agrees on what is written', () => {
    fc.assert(
      fc.property(
        fc
          .constantFrom(...kinds)
          .chain((kind) => fc.tuple(fc.constant(kind), arbitraryQuantity(kind), fc.constantFrom('metric' as const, 'us' as const))),
        ([kind, value, system]) => {
          expect(accepts(kind, writeQuantity(kind, value, system))).toBe(Math.abs(value) < 1e190);
        },
      ),
    );
  });

  it('says what it leaves to the reader', () => {
    expect(jsonSchemaOf({ x: 'length' })).toMatchObject({ description: expect.stringContaining('ranges') as string });
  });
});

describe('what a document can be asked', () => {
  const codec = codecOf(sampleShape);
  it.each([
    ['/depth', 'length'],
    ['/layers/0/conductivity/low', 'conductivity'],
    ['/moisture/value', 'moisture on dry basis'],
    ['/below', 'length'],
    ['/name', undefined],
    ['/nowhere', undefined],
  ])('the kind at %s', (pointer, kind) => {
    expect(codec.kindAt(pointer, sample)).toBe(kind);
  });

  it('the JSON Schema names every field and refuses others', () => {
    expect(codec.jsonSchema()).toMatchObject({
      type: 'object',
      additionalProperties: false,
      required: ['name', 'depth', 'count', 'dry', 'goal', 'moisture', 'layers'],
    });
  });
});

describe('a temperature written in °F', () => {
  it('keeps its few digits where the sum with 459.67 or 32 nearly cancels', () => {
    for (let hundredths = -5000; hundredths <= 15_000; hundredths += 7) {
      const text = `${String(hundredths / 100)} degF`;
      const value = readQuantity('temperature', text);
      expect(typeof value === 'number' && writeQuantity('temperature', value, 'us')).toBe(text);
    }
  });
});
