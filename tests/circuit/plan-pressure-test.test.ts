import { describe, expect, it } from 'vitest';
import { planPressureTest, pressureTestToPlanShape, TEST_RULES, type PressureTestToPlan } from '../../src/circuit/index.js';
import { describeFinding } from '../../src/report/index.js';
import { noticesFor } from '../../src/safety/index.js';
import { bars, hours, litres, minutes, psi } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const test: PressureTestToPlan = { rule: 'expansion and hold', workingPressure: psi(60), rating: psi(160), loopVolume: litres(230) };

describe('planPressureTest', () => {
  it('holds the figures of each rule', () => {
    const { phases, testPressure } = planPressureTest(test);
    expect(psi.of(testPressure)).toBeCloseTo(90, 9);
    expect(
      phases.map(({ phase, duration, pressure, makeUp, allowedFall }) => [
        phase,
        hours.of(duration),
        Math.round(psi.of(pressure)),
        makeUp,
        allowedFall,
      ]),
    ).toEqual([
      ['expansion', 4, 90, true, undefined],
      ['hold', 1, 80, false, 0.05],
    ]);
    const named = (rule: PressureTestToPlan['rule']): readonly number[] => {
      const plan = planPressureTest({ ...test, rule });
      return [Math.round(psi.of(plan.testPressure)), ...plan.phases.map(({ duration }) => minutes.of(duration))];
    };
    expect(named('model code')).toEqual([100, 30]);
    expect(named('federal specification')).toEqual([188, 120]);
    expect(named('state specification')).toEqual([100, 30]);
    expect(named('homes standard')).toEqual([90, 30]);
    expect(new Set(Object.values(TEST_RULES).map(({ source }) => source)).size).toBe(5);
  });

  it('stops a pressure over 1.5 ratings, and notes a rule that leaves no time to creep', () => {
    expect(planPressureTest({ ...test, rule: 'federal specification', rating: psi(110) }).findings.map(({ code }) => code)).toEqual([
      'test-pressure-over-rating',
      'test-without-expansion',
    ]);
    const levels = (rating: number): readonly unknown[] =>
      planPressureTest({ ...test, rating: psi(rating) }).findings.map(({ code, level }) => [code, level]);
    // 90 psi: at the rating, above it, at 1.5 times and beyond.
    expect([90, 89, 60, 59].map(levels)).toEqual([
      [],
      [['test-pressure-within-ceiling', 'warning']],
      [['test-pressure-within-ceiling', 'warning']],
      [['test-pressure-over-rating', 'stop']],
    ]);
  });

  it('says of a test between the rating and the ceiling what the notice says', () => {
    const { findings, situations } = planPressureTest({ ...test, workingPressure: bars(10), rating: bars(11) });
    expect(findings.map((finding) => describeFinding(finding, 'metric'))).toEqual([
      expect.stringMatching(/1500\.0 kPa.*1100\.0 kPa.*1\.5 times the rating, 1650\.0 kPa/u),
    ]);
    expect(noticesFor(situations).map(({ text }) => text)).toContainEqual(expect.stringContaining('never more than 1.5 times the rating'));
  });

  it('stores thousands of times the energy in air, in proportion to the volume, and calls for the notice', () => {
    const [one, two] = [100, 200].map((volume) => planPressureTest({ ...test, rule: 'model code', loopVolume: litres(volume) }));
    expect((two?.airEnergy ?? 0) / (one?.airEnergy ?? 1)).toBeCloseTo(2, 12);
    expect((two?.waterEnergy ?? 0) / (one?.waterEnergy ?? 1)).toBeCloseTo(2, 12);
    expect((one?.airEnergy ?? 0) / (one?.waterEnergy ?? 1)).toBeGreaterThan(5000);
    expect(noticesFor(one?.situations ?? []).map(({ code }) => code)).toContain('pressure-test');
  });

  it('refuses bad input by name', () => {
    expect(() => planPressureTest({ ...test, workingPressure: psi(5) })).toThrow(expect.objectContaining({ argument: 'workingPressure' }));
    refuses(planPressureTest, pressureTestToPlanShape, test);
  });
});
