import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/errors/index.js';
import { handbookPipeLength, type HandbookLengthInput } from '../../src/operation/index.js';
import {
  btuPerHour,
  celsius,
  fahrenheit,
  pipeFeet,
  pipeHourFootFahrenheitPerBtu,
  pipeMetreKelvinPerWatt,
  type Power,
  ratio,
  runFraction,
  type Shape,
  tons,
  trenchFeet,
  watts,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const inputShape: Shape<HandbookLengthInput> = {
  mode: ['heating', 'cooling'],
  capacity: 'power',
  cop: 'ratio',
  pipeResistance: 'pipe resistance',
  groundResistance: 'pipe resistance',
  runFraction: 'run fraction',
  groundTemperature: 'temperature',
  convention: ['mean fluid', 'entering fluid'],
  fluidTemperature: 'temperature',
  pipePerTrench: 'ratio',
};
const example: HandbookLengthInput = {
  mode: 'heating',
  capacity: tons(3),
  cop: ratio(3.3),
  pipeResistance: pipeMetreKelvinPerWatt(0.1),
  groundResistance: pipeMetreKelvinPerWatt(0.82),
  runFraction: runFraction(0.55),
  groundTemperature: celsius(7.2),
  convention: 'mean fluid',
  fluidTemperature: celsius(-1.1),
  pipePerTrench: ratio(2),
};

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const arbitraryInput: fc.Arbitrary<HandbookLengthInput> = fc
  .record({
    heating: fc.boolean(),
    capacity: between(500, 1e5),
    cop: between(1.5, 8),
    pipe: between(0, 0.5),
    soil: between(0.1, 5),
    run: between(0.01, 1),
    ground: between(-2, 25),
    margin: between(0.5, 25),
    perTrench: between(1, 12),
  })
  .map(({ heating, capacity, cop, pipe, soil, run, ground, margin, perTrench }) => ({
    mode: heating ? 'heating' : 'cooling',
    capacity: watts(capacity),
    cop: ratio(cop),
    pipeResistance: pipeMetreKelvinPerWatt(pipe),
    groundResistance: pipeMetreKelvinPerWatt(soil),
    runFraction: runFraction(run),
    groundTemperature: celsius(ground),
    convention: 'mean fluid',
    fluidTemperature: celsius(heating ? ground - margin : ground + margin),
    pipePerTrench: ratio(perTrench),
  }));
const lengthOf = (input: HandbookLengthInput): number => handbookPipeLength(input).pipe;

describe('handbookPipeLength', () => {
  it('is proportional to the capacity', () => {
    fc.assert(
      fc.property(arbitraryInput, between(0.1, 10), (input, factor) => {
        const scaled = lengthOf({ ...input, capacity: (factor * input.capacity) as Power });
        expect(scaled / (factor * lengthOf(input))).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is inverse to the margin between ground and fluid', () => {
    fc.assert(
      fc.property(arbitraryInput, between(1.01, 2), (input, factor) => {
        const before = handbookPipeLength(input);
        const sign = input.mode === 'heating' ? -1 : 1;
        const wider = handbookPipeLength({ ...input, fluidTemperature: celsius(input.groundTemperature + sign * factor * before.margin) });
        expect((wider.pipe * factor) / before.pipe).toBeCloseTo(1, 9);
        expect(wider.pipe).toBeLessThan(before.pipe);
      }),
    );
  });

  it('rises with each resistance and with the run fraction', () => {
    fc.assert(
      fc.property(arbitraryInput, between(1.01, 2), (input, factor) => {
        const length = lengthOf(input);
        expect(lengthOf({ ...input, pipeResistance: pipeMetreKelvinPerWatt(input.pipeResistance + 0.01) })).toBeGreaterThan(length);
        expect(lengthOf({ ...input, groundResistance: pipeMetreKelvinPerWatt(factor * input.groundResistance) })).toBeGreaterThan(length);
        const more = Math.min(1, factor * input.runFraction);
        expect(lengthOf({ ...input, runFraction: runFraction(more) })).toBeGreaterThanOrEqual(length);
      }),
    );
  });

  it('closes its own balance: the margin drives exactly the ground heat through the resistance', () => {
    fc.assert(
      fc.property(arbitraryInput, (input) => {
        const { pipe, trench, groundHeat, margin, resistance, heatPerPipeLength, heatPerTrenchLength, pipePerGroundHeat, pipePerCapacity } =
          handbookPipeLength(input);
        expect((pipe * margin) / resistance / groundHeat).toBeCloseTo(1, 12);
        expect((heatPerPipeLength * pipe) / groundHeat).toBeCloseTo(1, 12);
        expect((heatPerTrenchLength * trench) / groundHeat).toBeCloseTo(1, 12);
        expect((pipePerGroundHeat * groundHeat) / (pipePerCapacity * input.capacity)).toBeCloseTo(1, 12);
        const electricity = input.capacity / input.cop;
        expect(groundHeat).toBeCloseTo(input.mode === 'heating' ? input.capacity - electricity : input.capacity + electricity, 6);
      }),
    );
  });

  it('gives the same from inputs in US units', () => {
    const us = handbookPipeLength({
      ...example,
      capacity: btuPerHour(36_000),
      pipeResistance: pipeHourFootFahrenheitPerBtu(0.173),
      groundResistance: pipeHourFootFahrenheitPerBtu(1.42),
      groundTemperature: fahrenheit(45),
      fluidTemperature: fahrenheit(30),
    });
    // 36 000 Btu/h · 2.3/3.3 · (0.173 + 1.42 · 0.55) h.ft.°F/Btu / 15 °F, by hand.
    expect(pipeFeet.of(us.pipe)).toBeCloseTo(((36_000 * 2.3) / 3.3) * ((0.173 + 1.42 * 0.55) / 15), 6);
    expect(trenchFeet.of(us.trench)).toBeCloseTo(pipeFeet.of(us.pipe) / 2, 9);
  });

  it('comes out longer with the entering fluid in the formula, by the share of half the range in the margin', () => {
    const mean = handbookPipeLength(example);
    const entering = handbookPipeLength({ ...example, convention: 'entering fluid', fluidTemperature: celsius(-1.1 + 1.5) });
    expect([mean.convention, entering.convention]).toEqual(['mean fluid', 'entering fluid']);
    expect(entering.pipe / mean.pipe).toBeCloseTo(8.3 / (8.3 - 1.5), 12);
  });

  it.each([
    ['heating', 7.2, 7.2],
    ['heating', 7.2, 9],
    ['cooling', 18, 18],
    ['cooling', 18, 10],
  ] as const)('has no answer in %s with ground at %s and fluid at %s °C', (mode, ground, fluid) => {
    const attempt = (): unknown => handbookPipeLength({ ...example, mode, groundTemperature: celsius(ground), fluidTemperature: celsius(fluid) });
    expect(attempt).toThrow(InputError);
    expect(attempt).toThrow(expect.objectContaining({ code: 'unreachable', argument: 'fluidTemperature' }));
    expect(attempt).toThrow(/heat flows only from warm to cold/u);
  });

  it('refuses a heating COP of 1 or less: such a unit takes nothing from the ground', () => {
    expect(() => handbookPipeLength({ ...example, cop: ratio(1) })).toThrow(expect.objectContaining({ code: 'out-of-range', argument: 'cop' }));
  });

  it('refuses bad input by name', () => {
    refuses(handbookPipeLength, inputShape, example, {
      more: [{ ...example, mode: 'cooling', fluidTemperature: celsius(30) }],
    });
  });
});
