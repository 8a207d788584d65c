import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exponentialResponse, groundResponse, type ExponentialTerm, type GroundResponseInput } from '../../src/ground/index.js';
import { endOfRun, type EndOfRun, type EndOfRunInput, endOfRunInputShape } from '../../src/operation/index.js';
import { diameterMillimetres, pipeMetreKelvinPerWatt, ratio, runFraction, seconds, wattsPerPipeMetre } from '../../src/units/index.js';
import { layoutOf, soilOf } from '../ground/support.js';
import { refuses } from '../support/bad-input.js';

const buried: GroundResponseInput = {
  layout: layoutOf([[0, 1.8288]]),
  pipe: { outsideDiameter: diameterMillimetres(33.4) },
  soil: soilOf(1.5, 6e-7),
};
const { terms } = exponentialResponse(buried);
const of = (cycleMinutes: number, fraction: number, heat = 20, which = terms): EndOfRun =>
  endOfRun({ terms: which, runFraction: runFraction(fraction), cyclesPerHour: ratio(60 / cycleMinutes), heatPerPipeLength: wattsPerPipeMetre(heat) });

/** Runs and pauses in steps of a minute until the cycles repeat; the wall at the end of a run less its mean over the cycle [m.K/W]. */
function stepped(of: readonly ExponentialTerm[], cycleMinutes: number, runMinutes: number): number {
  const decays = of.map(({ timeConstant }) => Math.exp(-60 / timeConstant));
  const states = of.map(() => 0);
  const through = (each: (wallEnd: number, wallMean: number, running: boolean) => void): void => {
    for (let minute = 1; minute <= cycleMinutes; minute += 1) {
      const running = minute <= runMinutes;
      let [end, mean] = [0, 0];
      of.forEach(({ timeConstant, rise }, k) => {
        const target = running ? rise : 0;
        const before = states[k] ?? 0;
        const after = target + (before - target) * (decays[k] ?? 0);
        // The mean over the minute of an exponential on its way: target less what it came nearer, by time constant over time.
        mean += target + ((before - after) * timeConstant) / 60;
        end += after;
        states[k] = after;
      });
      each(end, mean, running);
    }
  };
  // A term keeps its decay of what it began with; from the change over one cycle follows where it repeats.
  through(() => undefined);
  const first = [...states];
  of.forEach(({ timeConstant }, k) => {
    states[k] = (first[k] ?? 0) / -Math.expm1((-60 * cycleMinutes) / timeConstant);
  });
  let [atEnd, sum] = [0, 0];
  through((end, mean, running) => {
    sum += mean;
    if (running) atEnd = end;
  });
  return atEnd - sum / cycleMinutes;
}

describe('endOfRun', () => {
  it('agrees with stepping through runs and pauses minute by minute', () => {
    for (const [cycle, run] of [
      [30, 15],
      [60, 30],
      [60, 48],
      [20, 3],
      [1440, 576],
    ] as const) {
      expect(20 * stepped(terms, cycle, run)).toBeCloseTo(of(cycle, run / cycle).changeBeyondMean, 8);
    }
  });

  it('agrees within 0.0002 K with steps of the cylinder source superposed over a month of cycles', () => {
    const { riseAfter } = groundResponse(buried);
    const after = (time: number): number => riseAfter(seconds(time));
    for (const [minutes, fraction] of [
      [30, 0.5],
      [60, 0.5],
      [60, 0.8],
      [1440, 0.4],
    ] as const) {
      const cycle = 60 * minutes;
      const cycles = Math.round((30 * 86_400) / cycle);
      let wall = 0;
      for (let back = 0; back < cycles; back += 1) wall += after((back + fraction) * cycle) - after(back * cycle);
      // Even heat that began as long ago stands for the mean; the middle of the last cycle comes half a pause after the end of the run less half a run.
      const beyond = wall - fraction * after((cycles - 0.5 + fraction / 2) * cycle);
      expect(Math.abs(20 * beyond - of(minutes, fraction).changeBeyondMean)).toBeLessThan(2e-4);
    }
  });

  it('comes to the figures of a prototype written before the library, one pipe with 20 W/m, to the digits they are given with', () => {
    expect(of(30, 0.5).changeBeyondMean).toBeCloseTo(0.91, 2);
    expect(of(60, 0.5).changeBeyondMean).toBeCloseTo(1.15, 2);
    expect(of(60, 0.8).changeBeyondMean).toBeCloseTo(0.52, 2);
    expect(of(1440, 0.4).changeBeyondMean).toBeCloseTo(3, 1);
  });

  it('is nothing for a unit that never stops or never runs, never negative, in proportion to the heat, and falls with more starts', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 2, max: 1440, noNaN: true }), (fraction, cycle) => {
        const { changeBeyondMean, riseBeyondMean, runTime, cycleTime } = of(cycle, fraction);
        expect(runTime).toBeCloseTo(fraction * cycleTime, 9);
        expect(changeBeyondMean).toBe(20 * riseBeyondMean);
        expect(of(cycle, fraction, -20).changeBeyondMean).toBe(-changeBeyondMean);
        expect(riseBeyondMean).toBeGreaterThan(-1e-15);
        expect(of(cycle / 2, fraction).riseBeyondMean).toBeLessThanOrEqual(riseBeyondMean + 1e-15);
      }),
    );
    expect(of(30, 0).changeBeyondMean).toBeCloseTo(0, 15);
    expect(of(30, 1).changeBeyondMean).toBeCloseTo(0, 15);
  });

  it('with hardly ever a start is a whole run less the mean', () => {
    const quick = [{ timeConstant: seconds(60), rise: pipeMetreKelvinPerWatt(0.1) }];
    expect(of(6000, 0.25, 1, quick).riseBeyondMean).toBeCloseTo(0.1 * (1 - 0.25), 12);
  });

  it('refuses bad input by name', () => {
    const example: EndOfRunInput = {
      terms: [
        { timeConstant: seconds(600), rise: pipeMetreKelvinPerWatt(0.1) },
        { timeConstant: seconds(1e6), rise: pipeMetreKelvinPerWatt(0.4) },
      ],
      runFraction: runFraction(0.5),
      cyclesPerHour: ratio(2),
      heatPerPipeLength: wattsPerPipeMetre(20),
    };
    refuses(endOfRun, endOfRunInputShape, example);
  });
});
