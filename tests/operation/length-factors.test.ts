import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handbookPipeLength, hardestHourShape, lengthFactors, type LengthFactorsInput } from '../../src/operation/index.js';
import {
  celsius,
  kelvinDifference,
  kilowatts,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  ratio,
  runFraction,
  type Shape,
  watts,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const shape: Shape<LengthFactorsInput> = {
  mode: ['heating', 'cooling'],
  pipeLength: 'pipe length',
  hour: hardestHourShape,
  handbook: {
    pipe: 'pipe length',
    groundHeat: 'power',
    resistance: 'pipe resistance',
    reducedGroundResistance: 'pipe resistance',
    margin: 'temperature difference',
  },
};
const example: LengthFactorsInput = {
  mode: 'heating',
  pipeLength: pipeMetres(500),
  hour: { runningHeat: kilowatts(5), undisturbed: celsius(5), wallTemperature: celsius(-2), meanFluid: celsius(-4) },
  handbook: {
    pipe: pipeMetres(450),
    groundHeat: kilowatts(5),
    resistance: pipeMetreKelvinPerWatt(0.9),
    reducedGroundResistance: pipeMetreKelvinPerWatt(0.7),
    margin: kelvinDifference(10),
  },
};

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('lengthFactors', () => {
  it('multiply to the ratio of the simulated to the handbook length, in heating and in cooling', () => {
    fc.assert(
      fc.property(
        fc.record({
          cools: fc.boolean(),
          capacity: between(2000, 20_000),
          cop: between(2, 6),
          film: between(0.05, 0.3),
          ground: between(0.3, 1.5),
          run: between(0.05, 1),
          margin: between(3, 15),
          length: between(100, 2000),
          wall: between(1, 10),
          fluid: between(0.2, 4),
          heat: between(1000, 20_000),
        }),
        ({ cools, capacity, cop, film, ground, run, margin, length, wall, fluid, heat }) => {
          const mode = cools ? 'cooling' : 'heating';
          const side = cools ? 1 : -1;
          const handbook = handbookPipeLength({
            mode,
            capacity: watts(capacity),
            cop: ratio(cop),
            pipeResistance: pipeMetreKelvinPerWatt(film),
            groundResistance: pipeMetreKelvinPerWatt(ground),
            runFraction: runFraction(run),
            groundTemperature: celsius(8),
            convention: 'mean fluid',
            fluidTemperature: celsius(8 + side * margin),
            pipePerTrench: ratio(2),
          });
          const hour = {
            runningHeat: watts(heat),
            undisturbed: celsius(9),
            wallTemperature: celsius(9 + side * wall),
            meanFluid: celsius(9 + side * (wall + fluid)),
          };
          const factors = lengthFactors({ mode, pipeLength: pipeMetres(length), hour, handbook });
          const { heatFactor, marginFactor, filmFactor, groundFactor, ratioToHandbook } = factors;
          // The simulated length is what its own hour says: heat · (film + ground)/margin.
          const own = (heat * (factors.seenPipeResistance + factors.seenGroundResistance)) / (wall + fluid);
          expect(own / length).toBeCloseTo(1, 9);
          expect((heatFactor * marginFactor * filmFactor * groundFactor) / ratioToHandbook).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('are all 1 for the hour the handbook equation thinks of', () => {
    const hour = { runningHeat: watts(5000), undisturbed: celsius(6), wallTemperature: celsius(-1), meanFluid: celsius(-3) };
    const handbook = {
      pipe: pipeMetres(500),
      groundHeat: watts(5000),
      resistance: pipeMetreKelvinPerWatt(0.9),
      reducedGroundResistance: pipeMetreKelvinPerWatt(0.7),
      margin: kelvinDifference(9),
    };
    const { heatFactor, marginFactor, filmFactor, groundFactor, ratioToHandbook } = lengthFactors({ ...example, hour, handbook });
    [heatFactor, marginFactor, filmFactor, groundFactor, ratioToHandbook].forEach((factor) => expect(factor).toBeCloseTo(1, 12));
  });

  it('refuse bad input by name, and a wall or a fluid on the wrong side', () => {
    const hot = { ...example.hour, wallTemperature: celsius(12), meanFluid: celsius(14) };
    refuses(lengthFactors, shape, example, { more: [{ ...example, mode: 'cooling', hour: hot }] });
    expect(() => lengthFactors({ ...example, hour: hot })).toThrow(expect.objectContaining({ argument: 'hour.wallTemperature' }));
  });
});
