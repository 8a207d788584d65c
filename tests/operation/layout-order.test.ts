import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  exponentialResponse,
  exponentialRingResponse,
  flatOverlappedCoil,
  type Layout,
  onePipe,
  pipeGround,
  ringResponse,
  uprightOverlappedCoil,
} from '../../src/ground/index.js';
import { type GroundTerms, sizeLoop } from '../../src/operation/index.js';
import {
  celsius,
  dayOfYear,
  days,
  diameterMillimetres,
  kelvinDifference,
  metres,
  pipeMetreKelvinPerWatt,
  wattsPerKelvin,
} from '../../src/units/index.js';
import { layoutOf, soilOf } from '../ground/support.js';

const pipe = { outsideDiameter: diameterMillimetres(25) };
const soils = fc.record({
  conductivity: fc.double({ min: 0.6, max: 2.4, noNaN: true }),
  diffusivity: fc.double({ min: 3e-7, max: 1e-6, noNaN: true }),
});
type Drawn = { readonly conductivity: number; readonly diffusivity: number };
const soilAs = ({ conductivity, diffusivity }: Drawn): ReturnType<typeof soilOf> => soilOf(conductivity, diffusivity);

/** Pipe that keeps −3 °C in a winter of daily steps, over ground that is the same for all. */
const winter = Array.from({ length: 365 }, (_, day) => Math.cos((2 * Math.PI * (day - 20)) / 365));
const needed = (response: GroundTerms): number =>
  sizeLoop({
    step: days(1),
    duty: { from: 'ground', loads: winter.map((cold) => 5000 * Math.max(0, cold)) },
    ground: winter.map((cold) => 9 - 5 * cold),
    response,
    resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
    heatCapacityRate: wattsPerKelvin(2000),
    limits: { lowestEntering: celsius(-3) },
  }).exactLength;
/** A length is found to 0.04 %. */
const FOUND = 1.0005;

describe('the order of layouts has its reasons', () => {
  it('the same pipe in fewer trenches never needs less of it', () => {
    const drawn = fc.record({
      soil: soils,
      depths: fc.constantFrom([1.5], [1.2, 1.8], [0.9, 1.3, 1.7]),
      trenches: fc.integer({ min: 1, max: 3 }),
      spacing: fc.double({ min: 0.2, max: 1, noNaN: true }),
      trenchSpacing: fc.double({ min: 2, max: 6, noNaN: true }),
    });
    fc.assert(
      fc.property(drawn, ({ soil, depths, trenches, spacing, trenchSpacing }) => {
        const laid = (across: readonly number[], count: number): Layout =>
          layoutOf(
            across.flatMap((x) => depths.map((depth) => [x, depth] as const)),
            count,
            trenchSpacing,
          );
        // Trench spacing as it is, pipe by pipe from the left no distance of the pairs is greater than that of the same pipes apart.
        const apart = exponentialResponse({ layout: laid([0], 2 * trenches), pipe, soil: soilAs(soil) });
        const together = exponentialResponse({ layout: laid([-spacing / 2, spacing / 2], trenches), pipe, soil: soilAs(soil) });
        expect(needed(together) * FOUND).toBeGreaterThanOrEqual(needed(apart));
      }),
      { numRuns: 25 },
    );
  });

  it('a tighter coil takes more pipe and less trench', () => {
    const drawn = fc.record({
      soil: soils,
      upright: fc.boolean(),
      ringDiameter: fc.double({ min: 0.6, max: 1.2, noNaN: true }),
      pitch: fc.double({ min: 0.2, max: 1, noNaN: true }),
      // Rings that just touch lie along one another and cost up to 2 % of trench: over less than half the pitch that hides what pitch does.
      wider: fc.double({ min: 1.5, max: 3, noNaN: true }),
      trenches: fc.integer({ min: 1, max: 3 }),
    });
    fc.assert(
      fc.property(drawn, ({ soil, upright, ringDiameter, pitch, wider, trenches }) => {
        const [tight, wide] = [pitch, pitch * wider].map((each) => {
          const coil = { ringDiameter: metres(ringDiameter), pitch: metres(each), depth: metres(1.8), trenchSpacing: metres(4), trenches };
          const input = { layout: upright ? uprightOverlappedCoil(coil) : flatOverlappedCoil(coil), pipe, soil: soilAs(soil) };
          const length = needed(exponentialRingResponse(input));
          return { length, trench: length / ringResponse(input).countedPipePerTrench };
        });
        expect((tight?.length ?? 0) * FOUND).toBeGreaterThan(wide?.length ?? Infinity);
        expect(tight?.trench).toBeLessThan((wide?.trench ?? 0) * FOUND);
      }),
      { numRuns: 12 },
    );
  });

  it('deeper ground is warmer at its coldest and cooler at its warmest, later', () => {
    const drawn = fc.record({
      soil: soils,
      depth: fc.double({ min: 0.5, max: 2.5, noNaN: true }),
      deeper: fc.double({ min: 0.05, max: 1, noNaN: true }),
      amplitude: fc.double({ min: 2, max: 18, noNaN: true }),
    });
    fc.assert(
      fc.property(drawn, ({ soil, depth, deeper, amplitude }) => {
        const at = (each: number): ReturnType<typeof pipeGround>['loop'] =>
          pipeGround({
            layout: onePipe({ depth: metres(each), trenches: 1, trenchSpacing: metres(4) }),
            pipe,
            soil: soilAs(soil),
            wave: { of: 'ground surface', mean: celsius(9), amplitude: kelvinDifference(amplitude), coldestDay: dayOfYear(30), period: days(365) },
          }).loop;
        const [shallow, deep] = [at(depth), at(depth + deeper)];
        expect(deep.mean).toBe(shallow.mean);
        expect(deep.amplitude).toBeLessThan(shallow.amplitude);
        // Half a year at the most: the wave of 2.5 m is a quarter late in the slowest soil.
        expect(deep.coldestDay).toBeGreaterThan(shallow.coldestDay);
      }),
    );
  });
});
