import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type GroundMonth, monthlyPipeLength, type MonthlyLengthInput, type RiseAfter, superposedRise } from '../../src/operation/index.js';
import { celsius, hours, pipeMetreKelvinPerWatt, type Power, ratio, seconds, type Shape, watts, wattsPerPipeMetre } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { lineSourceRise } from '../support/line-source.js';
import { MONTH, sectionPipes } from '../support/sections.js';

const lines = lineSourceRise(sectionPipes('2-pipe over-under 1.2192/1.8288'), 0.0167, 1.5, 6e-7);
const riseAfter: RiseAfter = (time) => pipeMetreKelvinPerWatt(lines(time));

type Plain = Omit<MonthlyLengthInput, 'riseAfter'>;
const inputShape: Shape<Plain> = {
  mode: ['heating', 'cooling'],
  months: { list: { meanHeat: 'power', peakHeat: 'power', runningHeat: { optional: 'power' }, groundTemperature: 'temperature' } },
  startMonth: 'count',
  years: 'count',
  peakTime: 'time',
  pipeResistance: 'pipe resistance',
  fluidTemperature: 'temperature',
  pipePerTrench: 'ratio',
};
const MEANS = [4200, 3700, 2900, 1600, 600, 100, 100, 100, 400, 1500, 2900, 3900];
const GROUND = [6, 5, 5, 6, 8, 10, 12, 14, 14, 12, 10, 8];
const months: readonly GroundMonth[] = MEANS.map((mean, index) => ({
  meanHeat: watts(mean),
  peakHeat: watts(7000),
  groundTemperature: celsius(GROUND[index] ?? Number.NaN),
}));
const pausing: readonly GroundMonth[] = months.map((month) => ({ ...month, runningHeat: watts(9000) }));
const example: Plain = {
  mode: 'heating',
  months,
  startMonth: 10,
  years: 5,
  peakTime: hours(48),
  pipeResistance: pipeMetreKelvinPerWatt(0.1),
  fluidTemperature: celsius(-1),
  pipePerTrench: ratio(2),
};
const run = (input: Plain): ReturnType<typeof monthlyPipeLength> => monthlyPipeLength({ ...input, riseAfter });

describe('monthlyPipeLength', () => {
  it('keeps the fluid at its limit in the binding month and beyond it in every other, walked through in hours', () => {
    const { pipe, bindingMonth, bindingYear } = run(example);
    // An independent walk: the months as equal steps per metre of pipe, the full load as a second course on top of its month.
    const course = Array.from({ length: 60 }, (_, index) => months[(index + 9) % 12]);
    const walls = superposedRise({
      heat: course.map((month) => wattsPerPipeMetre(-(month?.meanHeat ?? Number.NaN) / pipe)),
      step: seconds(MONTH),
      riseAfter,
    });
    const fluids = course.map((month, index) => {
      const { meanHeat = Number.NaN, peakHeat = Number.NaN, groundTemperature = Number.NaN } = month ?? {};
      const burst = (-(peakHeat - meanHeat) / pipe) * lines(48 * 3600);
      return groundTemperature + (walls[index] ?? Number.NaN) + burst - (peakHeat / pipe) * 0.1;
    });
    expect(Math.min(...fluids)).toBeCloseTo(-1, 9);
    const coldest = fluids.indexOf(Math.min(...fluids));
    expect([((coldest + 9) % 12) + 1, Math.floor(coldest / 12) + 1]).toEqual([bindingMonth, bindingYear]);
  });

  it('is proportional to the heats, and what is spent adds up to the margin', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (factor) => {
        const scaled = months.map(({ meanHeat, peakHeat, groundTemperature }) => ({
          meanHeat: (factor * meanHeat) as Power,
          peakHeat: (factor * peakHeat) as Power,
          groundTemperature,
        }));
        const length = run({ ...example, months: scaled });
        expect(length.pipe / run(example).pipe / factor).toBeCloseTo(1, 9);
        expect(length.spent.months + length.spent.peak + length.spent.pipe).toBeCloseTo(length.margin, 9);
      }),
      { numRuns: 20 },
    );
  });

  it('never gets shorter with more years, and tends to a repeating year', () => {
    const lengths = [1, 2, 5, 10, 20].map((years) => run({ ...example, years }).pipe);
    lengths.slice(1).forEach((length, index) => {
      expect(length).toBeGreaterThanOrEqual(lengths[index] ?? Infinity);
    });
    expect((lengths[4] ?? 0) / (lengths[3] ?? 0)).toBeLessThan(1.002);
    expect(run({ ...example, years: 1 }).firstYear).toBe(lengths[0]);
    expect(run({ ...example, years: 20 }).firstYear).toBeCloseTo(lengths[0] ?? Number.NaN, 9);
  });

  it('gives the plain resistance of the whole time for one lasting heat', () => {
    const steady = months.map(() => ({ meanHeat: watts(5000), peakHeat: watts(5000), groundTemperature: celsius(8) }));
    const { pipe, bindingMonth } = run({ ...example, months: steady, startMonth: 1, years: 3 });
    expect(pipe / ((5000 * (lines(36 * MONTH) + 0.1)) / 9)).toBeCloseTo(1, 12);
    expect(bindingMonth).toBe(12);
  });

  it('lets the first winter bind where summers give the ground more than winters take', () => {
    const summers = months.map((month, index) => (index >= 4 && index <= 8 ? { ...month, meanHeat: watts(-6000), peakHeat: watts(0) } : month));
    const { bindingYear, firstYear, pipe } = run({ ...example, months: summers });
    expect(bindingYear).toBe(1);
    expect(firstYear).toBe(pipe);
  });

  it('refuses loads that need no loop and limits that no length reaches', () => {
    const idle = months.map((month) => ({ ...month, meanHeat: watts(-100), peakHeat: watts(0) }));
    expect(() => run({ ...example, months: idle })).toThrow(expect.objectContaining({ code: 'impossible', argument: 'months' }));
    expect(() => run({ ...example, fluidTemperature: celsius(5) })).toThrow(expect.objectContaining({ code: 'unreachable' }));
    expect(() => run({ ...example, months: months.slice(1) })).toThrow(expect.objectContaining({ code: 'too-few', argument: 'months' }));
  });

  it('lets film and pipe wall see the running heat of a unit that pauses in the spell, and the ground its mean', () => {
    const [steady, paused] = [run(example), run({ ...example, months: pausing })];
    const margin = steady.margin;
    // Only the part of film and wall grows, by the ratio of the heats.
    const grown = (steady.pipe * margin + (9000 - 7000) * 0.1) / margin;
    expect(paused.pipe).toBeCloseTo(grown, 9);
    expect(paused.heatPerPipeLength).toBeCloseTo(9000 / paused.pipe, 12);
  });

  it('refuses bad input by name', () => {
    refuses(
      run,
      inputShape,
      { ...example, years: 2 },
      {
        more: [
          { ...example, months: pausing },
          { ...example, mode: 'cooling', fluidTemperature: celsius(30), years: 1 },
        ],
      },
    );
  });
});
