import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fluidTemperatures, type FluidTemperaturesInput } from '../../src/operation/index.js';
import { celsius, joulesPerKilogramKelvin, kilogramsPerCubicMetre, litresPerSecond, type Shape, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const inputShape: Shape<FluidTemperaturesInput> = {
  mode: ['heating', 'cooling'],
  entering: 'temperature',
  groundHeat: 'power',
  flow: 'flow',
  fluid: { density: 'density', specificHeat: 'specific heat' },
};
const example: FluidTemperaturesInput = {
  mode: 'heating',
  entering: celsius(0),
  groundHeat: watts(7353),
  flow: litresPerSecond(0.57),
  fluid: { density: kilogramsPerCubicMetre(1025), specificHeat: joulesPerKilogramKelvin(3850) },
};
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('fluidTemperatures', () => {
  it('carries exactly the heat, halves the range at twice the flow, and mirrors heating in cooling', () => {
    fc.assert(
      fc.property(between(100, 2e4), between(0.1, 3), (heat, flow) => {
        const input = { ...example, groundHeat: watts(heat), flow: litresPerSecond(flow) };
        const heating = fluidTemperatures(input);
        const { entering, mean, leaving, range, heatCapacityRate } = heating;
        expect((range * heatCapacityRate) / heat).toBeCloseTo(1, 12);
        expect(entering - leaving).toBeCloseTo(range, 12);
        expect((entering + leaving) / 2).toBeCloseTo(mean, 12);
        expect(fluidTemperatures({ ...input, flow: litresPerSecond(2 * flow) }).range * 2).toBeCloseTo(range, 9);
        expect(fluidTemperatures({ ...input, mode: 'cooling' }).leaving).toBeCloseTo(-leaving, 12);
      }),
    );
  });

  it('refuses a trickle that could not carry the heat', () => {
    expect(() => fluidTemperatures({ ...example, flow: litresPerSecond(0.02) })).toThrow(
      expect.objectContaining({ code: 'impossible', argument: 'flow' }),
    );
  });

  it('refuses bad input by name', () => {
    refuses(fluidTemperatures, inputShape, example, { more: [{ ...example, mode: 'cooling' }] });
  });
});
