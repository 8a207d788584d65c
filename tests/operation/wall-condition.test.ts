import { describe, expect, it } from 'vitest';
import { equalTemperatureMean } from '../../src/ground/equal-temperature-mean.js';
import { groundPipes } from '../../src/ground/ground-pipes.js';
import { equalTemperatureResponse, exponentialResponse, type GroundResponseInput, sixPipe, type WallCondition } from '../../src/ground/index.js';
import { simulate, type SimulationInput } from '../../src/operation/index.js';
import {
  diameterMillimetres,
  hours,
  metres,
  pipeMetreKelvinPerWatt,
  type PipeResistance,
  pipeMetres,
  seconds,
  wattsPerKelvin,
} from '../../src/units/index.js';
import { soilOf } from '../ground/support.js';
import { convolve, exactRises } from './support/convolution.js';

const HOURS = 8760;
const LENGTH = 900;
const buried: GroundResponseInput = {
  layout: sixPipe({
    upperDepth: metres(1.2),
    middleDepth: metres(1.5),
    lowerDepth: metres(1.8),
    spacing: metres(0.6),
    trenches: 3,
    trenchSpacing: metres(3),
  }),
  pipe: { outsideDiameter: diameterMillimetres(33.4) },
  soil: soilOf(1.5, 6e-7),
};
const cosine = (hour: number, period: number, peak: number): number => Math.cos((2 * Math.PI * (hour - peak)) / period);
const loads = Array.from({ length: HOURS }, (_, hour) => 6000 * cosine(hour, HOURS, 480) + 3000 * cosine(hour, 264, 72) + 2000 * cosine(hour, 24, 6));
const ground = Array.from({ length: HOURS }, (_, hour) => 10 - 4 * cosine(hour + 1, HOURS, 1000));
const loop = (response: SimulationInput['response']): SimulationInput => ({
  step: hours(1),
  duty: { from: 'ground', loads },
  ground,
  response,
  pipeLength: pipeMetres(LENGTH),
  resistanceAt: () => pipeMetreKelvinPerWatt(0.12),
  heatCapacityRate: wattsPerKelvin(2000),
  years: 3,
  withCourse: true,
});

describe('a simulation at a wall condition', () => {
  it('has at equal temperature the walls of the full convolution, hour by hour into the third year', () => {
    const { conventions, lastYear } = simulate(loop(equalTemperatureResponse(buried)));
    const { riseAfter } = equalTemperatureMean(groundPipes(buried));
    const { conductivity, diffusivity } = buried.soil;
    const exact = {
      riseAfter: (time: number): PipeResistance => pipeMetreKelvinPerWatt(riseAfter(diffusivity * time) / (4 * Math.PI * conductivity)),
    };
    const heat = Float64Array.from({ length: 3 * HOURS }, (_, hour) => -(loads[hour % HOURS] ?? Number.NaN) / LENGTH);
    const changes = convolve(heat, exactRises(exact, seconds(3600), heat.length));
    const [worst, coldest] = ground.reduce(
      ([off, least], undisturbed, hour) => {
        const change = changes[2 * HOURS + hour] ?? Number.NaN;
        return [Math.max(off, Math.abs((lastYear.course?.walls[hour] ?? Number.NaN) - undisturbed - change)), Math.min(least, change)];
      },
      [0, 0],
    );
    expect(worst).toBeLessThan(0.003);
    expect(coldest).toBeLessThan(-10);
    expect(conventions.wallCondition).toBe('equal temperature');
  });

  it('is another one than at equal flux, and says so', () => {
    const [equalFlux, equalTemperature] = [exponentialResponse(buried), equalTemperatureResponse(buried)].map((response) => simulate(loop(response)));
    expect(equalFlux?.conventions.wallCondition).toBe('equal flux');
    const warmer = (equalTemperature?.lastYear.coldestEntering?.temperature ?? 0) - (equalFlux?.lastYear.coldestEntering?.temperature ?? 0);
    expect(warmer).toBeGreaterThan(0.05);
    expect(warmer).toBeLessThan(0.5);
  });

  it('is at equal flux when the response does not say, and refused when it says what is none', () => {
    const { terms, steadyRise } = exponentialResponse(buried);
    expect(simulate(loop({ terms, steadyRise })).conventions.wallCondition).toBe('equal flux');
    const wallCondition = 'equal heat' as WallCondition;
    expect(() => simulate(loop({ terms, steadyRise, wallCondition }))).toThrow(/response\.wallCondition/u);
  });
});
