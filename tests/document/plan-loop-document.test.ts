import { describe, expect, it } from 'vitest';
import { demoDocument } from '../../src/demo.data.js';
import { InputError } from '../../src/errors/index.js';
import { planLoop } from '../../src/plan-loop-document.js';

/** The demo with one field of another value. */
const withField = (steps: readonly string[], value: unknown, whole: unknown = demoDocument): unknown => {
  const [step = '', ...rest] = steps;
  const next = rest.length === 0 ? value : withField(rest, value, Reflect.get(Object(whole), step));
  return Array.isArray(whole) ? whole.map((each: unknown, index) => (String(index) === step ? next : each)) : { ...Object(whole), [step]: next };
};

const refusal = (document: unknown, options: unknown = { units: 'metric' }): InputError => {
  try {
    planLoop(document, options as never);
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
};

describe('options of planLoop', () => {
  it.each([undefined, null, {}, 'us', 5, [], { units: null }])('%j are refused by the name of what is missing', (options) => {
    const call = Reflect.apply.bind(undefined, planLoop, undefined);
    expect(() => call(options === undefined ? [demoDocument] : [demoDocument, options])).toThrow(
      'units: nothing is not allowed; allowed: "metric", "us"',
    );
  });

  it('a refused word of the document is told the choices, each in marks', () => {
    expect(refusal(withField(['fluid'], 'tea')).allowed).toMatch(/^"water", "/u);
    expect(refusal(withField(['climate', 'from'], 'hearsay')).allowed).toContain('"monthly-air"');
  });

  it('another unit system is refused', () => {
    expect(refusal(demoDocument, { units: 'imperial' })).toMatchObject({ code: 'unknown-choice', pointer: '/units' });
  });
});

describe('documents of planLoop', () => {
  it('of a later version are told from those of another format', () => {
    expect(refusal({ ...demoDocument, format: 'loamloop-input-2', later: true })).toMatchObject({ code: 'unknown-version', pointer: '/format' });
    expect(refusal({ ...demoDocument, format: 'loamloop-plan-1' })).toMatchObject({ code: 'unknown-choice', pointer: '/format' });
  });

  it('that JSON cannot hold are refused at the place', () => {
    const field: Record<string, unknown> = { ...demoDocument.field };
    const circular = { ...demoDocument, field };
    field.self = circular;
    expect(refusal(circular)).toMatchObject({ code: 'surplus', pointer: '/field/self' });
    expect(refusal(withField(['field', 'mostTrenches'], 12n))).toMatchObject({ code: 'wrong-type', pointer: '/field/mostTrenches', value: '12' });
  });

  it('with a mass in another unit learn the limit in the unit of the limit', () => {
    const { message } = refusal(withField(['soil', 'layers', '1', 'sample', 'moisture', 'moistMass'], '438 lb'));
    expect(message).toMatch(/368 g is not allowed; .*moisture on dry basis at most 20 \(.*this makes 629\.\d+; limits in kg\/kg\)$/u);
  });

  it('with a power beyond the capacity learn a limit that can be read', () => {
    expect(refusal(withField(['heatPump', 'heating', '0', 'power'], '8 kW')).allowed).toBe(
      'a finite electric power at least 148 and at most 7047.62',
    );
  });

  it('with sixty layers, or a number of a hundred thousand digits, are answered in a line', () => {
    const layers = Array.from({ length: 60 }, (_, index) => ({
      ...demoDocument.soil.layers[0],
      top: `${String(index)} m`,
      bottom: `${String(index + 1)} m`,
    }));
    expect(refusal(withField(['soil', 'layers'], layers)).message.length).toBeLessThan(200);
    expect(refusal(withField(['field', 'longestTrench'], '9'.repeat(100_000))).message.length).toBeLessThan(250);
  });

  it('in the spelling of a printed page are read like those in plain spelling', () => {
    const lowest = (temperature: unknown): unknown => planLoop(withField(['heatPump', 'lowestEntering'], temperature), { units: 'metric' });
    const plain = lowest('-5 degC');
    for (const spelling of ['-5 °C', '−5 °C', '−5 degC', { value: -5, unit: '°C' }, { value: '−5', unit: 'degC' }])
      expect(lowest(spelling)).toEqual(plain);
  });
});
