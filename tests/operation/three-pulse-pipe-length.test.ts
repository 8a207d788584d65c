import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handbookPipeLength, type RiseAfter, threePulsePipeLength, type ThreePulseInput } from '../../src/operation/index.js';
import { celsius, days, hours, pipeMetreKelvinPerWatt, type Power, ratio, runFraction, type Shape, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { lineSourceRise } from '../support/line-source.js';
import { loadFixture } from '../support/fixture.js';
import { MONTH, sectionPipes, YEAR } from '../support/sections.js';

const fromLines = lineSourceRise(sectionPipes('2-pipe over-under 1.2192/1.8288'), 0.0167, 1.5, 6e-7);
const riseAfter: RiseAfter = (time) => pipeMetreKelvinPerWatt(fromLines(time));

type Plain = Omit<ThreePulseInput, 'riseAfter'>;
const inputShape: Shape<Plain> = {
  mode: ['heating', 'cooling'],
  seasonHeat: 'power',
  monthHeat: 'power',
  peakHeat: 'power',
  seasonTime: 'time',
  monthTime: 'time',
  peakTime: 'time',
  pipeResistance: 'pipe resistance',
  groundTemperature: 'temperature',
  fluidTemperature: 'temperature',
  pipePerTrench: 'ratio',
};
const example: Plain = {
  mode: 'heating',
  seasonHeat: watts(900),
  monthHeat: watts(3200),
  peakHeat: watts(7000),
  seasonTime: days(150),
  monthTime: days(30),
  peakTime: hours(4),
  pipeResistance: pipeMetreKelvinPerWatt(0.1),
  groundTemperature: celsius(7),
  fluidTemperature: celsius(0),
  pipePerTrench: ratio(2),
};
const run = (input: Plain): ReturnType<typeof threePulsePipeLength> => threePulsePipeLength({ ...input, riseAfter });

describe('threePulsePipeLength', () => {
  it('reproduces LS-22 from line sources written apart from the library', () => {
    for (const row of loadFixture('loop-oracle-three-pulse').rows) {
      const lines = lineSourceRise(sectionPipes(row.text('section')), row.number('ro'), row.number('k'), row.number('alpha'));
      const { pipe } = threePulsePipeLength({
        ...example,
        seasonHeat: watts(row.number('q_annual_mean_W')),
        monthHeat: watts(row.number('q_month_mean_W')),
        peakHeat: watts(row.number('q_peak_W')),
        seasonTime: days((10 * YEAR) / 86_400),
        monthTime: days(MONTH / 86_400),
        peakTime: hours(row.number('peak_hours')),
        riseAfter: (time) => pipeMetreKelvinPerWatt(lines(time)),
        pipeResistance: pipeMetreKelvinPerWatt(row.number('Rp')),
        groundTemperature: celsius(row.number('T_ground_design_C')),
        fluidTemperature: celsius(row.number('T_mean_fluid_C')),
      });
      expect(pipe / row.number('pipe_length_m')).toBeCloseTo(1, 9);
    }
  });

  it('gives the handbook length at full run fraction when the full load never ends', () => {
    const full = watts(6000);
    const pulses = run({ ...example, seasonHeat: full, monthHeat: full, peakHeat: full });
    const total = fromLines(example.seasonTime + example.monthTime + example.peakTime);
    const handbook = handbookPipeLength({
      mode: 'heating',
      capacity: watts(9000),
      cop: ratio(3),
      pipeResistance: example.pipeResistance,
      groundResistance: pipeMetreKelvinPerWatt(total),
      runFraction: runFraction(1),
      groundTemperature: example.groundTemperature,
      convention: 'mean fluid',
      fluidTemperature: example.fluidTemperature,
      pipePerTrench: example.pipePerTrench,
    });
    expect(pulses.pipe / handbook.pipe).toBeCloseTo(1, 12);
  });

  it('is proportional to the three heats together, and what is spent adds up to the margin', () => {
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        share,
        share,
        fc.double({ min: 500, max: 2e4, noNaN: true }),
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        (season, month, peak, factor) => {
          const heats = { seasonHeat: watts(season * peak), monthHeat: watts(month * peak), peakHeat: watts(peak) };
          const once = run({ ...example, ...heats });
          const scaled = run({
            ...example,
            seasonHeat: (factor * heats.seasonHeat) as Power,
            monthHeat: (factor * heats.monthHeat) as Power,
            peakHeat: (factor * heats.peakHeat) as Power,
          });
          expect(scaled.pipe / once.pipe / factor).toBeCloseTo(1, 9);
          const { spent, margin } = once;
          expect(spent.season + spent.month + spent.peak + spent.pipe).toBeCloseTo(margin, 9);
        },
      ),
    );
  });

  it('rises with each heat, with the pipe resistance and with the length of the full load', () => {
    const { pipe } = run(example);
    expect(run({ ...example, seasonHeat: watts(1000) }).pipe).toBeGreaterThan(pipe);
    expect(run({ ...example, monthHeat: watts(3300) }).pipe).toBeGreaterThan(pipe);
    expect(run({ ...example, peakHeat: watts(7100) }).pipe).toBeGreaterThan(pipe);
    expect(run({ ...example, pipeResistance: pipeMetreKelvinPerWatt(0.2) }).pipe).toBeGreaterThan(pipe);
    expect(run({ ...example, peakTime: hours(72) }).pipe).toBeGreaterThan(pipe);
  });

  it('is the same in cooling with every temperature mirrored', () => {
    const cooling = run({ ...example, mode: 'cooling', groundTemperature: celsius(20), fluidTemperature: celsius(27) });
    expect(cooling.pipe).toBeCloseTo(run(example).pipe, 9);
  });

  it('is shorter after a season in which the ground gained heat', () => {
    expect(run({ ...example, seasonHeat: watts(-900) }).pipe).toBeLessThan(run({ ...example, seasonHeat: watts(0) }).pipe);
  });

  it('refuses what physics does not allow', () => {
    expect(() => run({ ...example, monthHeat: watts(7001) })).toThrow(/a mean cannot exceed the full load/u);
    expect(() => run({ ...example, seasonHeat: watts(-1e8), seasonTime: days(365) })).toThrow(expect.objectContaining({ code: 'impossible' }));
    expect(() => run({ ...example, fluidTemperature: celsius(7) })).toThrow(expect.objectContaining({ code: 'unreachable' }));
    const falling: RiseAfter = (time) => pipeMetreKelvinPerWatt(1e4 / time);
    expect(() => threePulsePipeLength({ ...example, riseAfter: falling })).toThrow(/only grows/u);
    const broken: RiseAfter = () => pipeMetreKelvinPerWatt(Number.NaN);
    expect(() => threePulsePipeLength({ ...example, riseAfter: broken })).toThrow(
      expect.objectContaining({ code: 'not-finite', argument: 'riseAfter' }),
    );
  });

  it('refuses bad input by name', () => {
    refuses(run, inputShape, example, { more: [{ ...example, mode: 'cooling', fluidTemperature: celsius(15) }] });
  });
});
