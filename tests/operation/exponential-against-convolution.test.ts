import { describe, expect, it } from 'vitest';
import {
  exponentialResponse,
  fourPipe,
  groundResponse,
  type GroundResponseInput,
  type Layout,
  onePipe,
  twoPipeStacked,
} from '../../src/ground/index.js';
import { diameterMillimetres, feet, hours, seconds, wattsPerPipeMetre } from '../../src/units/index.js';
import { superposedRise } from '../../src/operation/index.js';
import { soilOf } from '../ground/support.js';
import { convolve, exactRises } from './support/convolution.js';

const DAY = 24;
const YEAR = 365 * DAY;
const HOURS = 20 * YEAR;

/** Heat taken from the ground hour by hour [W/m], negative; given in summer; none around the change of seasons: year, weather of 11 days, day. */
const heat = Float64Array.from({ length: HOURS }, (_, hour) => {
  const wave = (amplitude: number, period: number, peak: number): number => amplitude * Math.cos((2 * Math.PI * (hour - peak)) / period);
  const demand = wave(15, YEAR, 25 * DAY) + wave(4, 11 * DAY, 3 * DAY) + wave(6, DAY, 6);
  if (demand > 2) return -demand;
  return demand < -8 ? -demand - 8 : 0;
});

const trenches = (count: number): { trenches: number; trenchSpacing: ReturnType<typeof feet> } => ({ trenches: count, trenchSpacing: feet(10) });
const layouts: readonly (readonly [name: string, layout: Layout])[] = [1, 4].flatMap((count) => [
  [`one pipe in ${String(count)}`, onePipe({ depth: feet(6), ...trenches(count) })] as const,
  [`two pipes stacked in ${String(count)}`, twoPipeStacked({ upperDepth: feet(4), lowerDepth: feet(6), ...trenches(count) })] as const,
  [`four pipes in ${String(count)}`, fourPipe({ upperDepth: feet(4), lowerDepth: feet(6), spacing: feet(2), ...trenches(count) })] as const,
]);

const buried = (layout: Layout): GroundResponseInput => ({
  layout,
  pipe: { outsideDiameter: diameterMillimetres(33.4) },
  soil: soilOf(1.5, 6e-7),
});

describe('the wall by a sum of exponentials', () => {
  it.each(layouts)('of %s is within 0.003 K of the full convolution, hour by hour over twenty years', (_, layout) => {
    const { terms } = exponentialResponse(buried(layout));
    const exact = convolve(heat, exactRises(groundResponse(buried(layout)), hours(1), HOURS));
    const decays = terms.map(({ timeConstant }) => Math.exp(-3600 / timeConstant));
    const states = terms.map(() => 0);
    let [worst, coldest] = [0, 0];
    for (let hour = 0; hour < HOURS; hour += 1) {
      let wall = 0;
      for (let k = 0; k < states.length; k += 1) {
        const decay = decays[k] ?? Number.NaN;
        const state = (states[k] ?? Number.NaN) * decay + (terms[k]?.rise ?? Number.NaN) * (1 - decay) * (heat[hour] ?? Number.NaN);
        states[k] = state;
        wall += state;
      }
      worst = Math.max(worst, Math.abs(wall - (exact[hour] ?? Number.NaN)));
      coldest = Math.min(coldest, wall);
    }
    // What is compared must have moved: winters take the walls 10 K and more below the undisturbed ground.
    expect(coldest).toBeLessThan(-10);
    expect(worst).toBeLessThan(0.003);
  });

  it('is driven by a load that peaks at 25 W/m and gives some heat back in summer', () => {
    expect(heat.reduce((least, each) => Math.min(least, each), 0)).toBeCloseTo(-25, 0);
    expect(heat.reduce((most, each) => Math.max(most, each), 0)).toBeGreaterThan(5);
  });

  it('is compared with a convolution that is the superposition of steps of the library itself', () => {
    const response = groundResponse(buried(twoPipeStacked({ upperDepth: feet(4), lowerDepth: feet(6), ...trenches(4) })));
    const part = heat.subarray(0, 3000);
    const superposed = superposedRise({ heat: Array.from(part, (each) => wattsPerPipeMetre(each)), step: hours(1), riseAfter: response.riseAfter });
    const convolved = convolve(part, exactRises(response, seconds(3600), part.length));
    superposed.forEach((change, hour) => {
      expect(convolved[hour]).toBeCloseTo(change, 6);
    });
  });
});
