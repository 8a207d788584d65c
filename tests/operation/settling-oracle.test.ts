import { describe, expect, it } from 'vitest';
import { customLayout, exponentialResponse } from '../../src/ground/index.js';
import { followSettling } from '../../src/operation/index.js';
import { effectiveConductivity, layeredResponse, type LayeredGround } from '../../src/soil/index.js';
import { dayOfYear, diameterMillimetres, hours, metres, pipeMetreKelvinPerWatt, pipeMetres, wattsPerKelvin } from '../../src/units/index.js';
import { log, thermal } from '../published/soil-layers.checks.js';
import { convolve, exactRises } from './support/convolution.js';

/** Two pipes side by side in a trench 0.6 m wide, loosened and settled soil in it. */
const pipes = [-0.2, 0.2].map((x) => ({ x: metres(x), depth: metres(1.5) }));
const outsideDiameter = diameterMillimetres(33.4);
const filledWith = (conductivity: number, heatCapacity: number): LayeredGround => ({
  layers: log([1.8, 3]),
  pipes,
  outsideDiameter,
  fill: { width: metres(0.6), depth: metres(1.65), thermal: thermal(conductivity, heatCapacity) },
});
const [loose, dense] = [filledWith(1, 1.6), filledWith(1.45, 1.85)];

const HOURS = 8760;
/** Heat taken per metre of pipe through a heating season from September on, with weather of eleven days and days [W/m]. */
const heats = Float64Array.from({ length: HOURS }, (_, hour) => {
  const wave = (amplitude: number, period: number, peak: number): number => amplitude * Math.cos((2 * Math.PI * (hour - peak)) / period);
  return Math.max(0, wave(9, HOURS, 130 * 24) + wave(3, 264, 72) + wave(3, 24, 6) + 1);
});

describe('a fill in series with the pipe wall', () => {
  const native = effectiveConductivity(loose);
  const { firstWinter, settled } = followSettling({
    step: hours(1),
    duty: { from: 'ground', loads: heats.map((heat) => 400 * heat) },
    ground: new Float64Array(HOURS),
    response: exponentialResponse({
      layout: customLayout({ pipes, trenches: 1, trenchSpacing: metres(10) }),
      pipe: { outsideDiameter },
      soil: native.native,
    }),
    pipeLength: pipeMetres(400),
    resistanceAt: () => pipeMetreKelvinPerWatt(0),
    heatCapacityRate: wattsPerKelvin(1e9),
    firstWinterResistance: native.addedResistance,
    settledResistance: effectiveConductivity(dense).addedResistance,
    start: dayOfYear(1),
    years: 1,
    withCourse: true,
  });

  it.each(['loose', 'settled'] as const)('%s follows the response of the filled trench, convolved hour by hour', (state) => {
    const { simulation } = state === 'loose' ? firstWinter : settled;
    const ground = state === 'loose' ? loose : dense;
    const exact = convolve(heats, exactRises(layeredResponse(ground), hours(1), HOURS));
    const fluids = simulation.yearOne.course?.enteringFluids ?? new Float64Array();
    const errors = [...fluids].map((fluid, hour) => (Number.isFinite(fluid) ? -fluid - (exact[hour] ?? Number.NaN) : 0));
    const deepest = Math.max(...exact);
    expect(deepest).toBeGreaterThan(7);
    // Heat that changes within a day crosses the fill as if it held none; in the coldest hour both parts add up, and the part of weeks is known to 3 %.
    expect(Math.max(...errors.map(Math.abs))).toBeLessThan(0.04 * deepest);
    const coldest = -(simulation.yearOne.coldestEntering?.temperature ?? Number.NaN);
    expect(Math.abs(coldest / deepest - 1)).toBeLessThan(0.03);
  });

  it('is colder by what the looseness adds to the heat', () => {
    const [one, other] = [firstWinter, settled].map(({ simulation }) => simulation.yearOne.coldestEntering?.temperature ?? Number.NaN);
    expect((other ?? 0) - (one ?? 0)).toBeGreaterThan(1);
  });
});
