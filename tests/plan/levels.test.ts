import { describe, expect, it } from 'vitest';
import { type LoopInput, type LoopPlan, planLoop } from '../../src/plan/index.js';
import type { ElectricPower, Power } from '../../src/units/index.js';
import { DEMO, HOT_WATER, withCurve } from './water-unit.js';

/** A level of the unit with so much of its capacity and of its electricity. */
const level = ({ heatPump }: LoopInput, capacity: number, power: number): NonNullable<LoopInput['lowerLevels']>['levels'][number] => ({
  points: heatPump.heating.map((point) => ({
    ...point,
    capacity: (capacity * point.capacity) as Power,
    power: (power * (point.power ?? Number.NaN)) as ElectricPower,
  })),
});
const at = (job: LoopInput, levels: NonNullable<LoopInput['lowerLevels']>['levels'], between: 'stages' | 'speeds' = 'stages'): LoopPlan =>
  planLoop({ ...job, lowerLevels: { between, levels } });

const curve = withCurve(45);
const [plain, compensated] = [planLoop(DEMO), planLoop(curve)];
const jobs = [
  ['the demo', DEMO, plain],
  ['a heating curve', curve, compensated],
] as const;

describe.each(jobs)('a lower level of %s', (_name, job, one) => {
  const staged = at(job, [level(job, 0.5, 0.44)]);
  const { heating } = staged.season;

  it('with the better COP takes less electricity and more from the ground', () => {
    expect(heating?.unitElectricity).toBeLessThan(one.season.heating?.unitElectricity ?? 0);
    expect(heating?.groundEnergy).toBeGreaterThan(one.season.heating?.groundEnergy ?? Infinity);
    expect(staged.byHours.heating.runTime).toBeGreaterThan(one.byHours.heating.runTime);
    expect(((heating?.groundEnergy ?? NaN) + (heating?.unitElectricity ?? NaN)) / (heating?.metEnergy ?? NaN)).toBeCloseTo(1, 9);
  });

  it('leaves what is proposed in closed form to the highest', () => {
    expect(staged.heating?.unit).toEqual(one.heating?.unit);
  });

  it('of the same COP at every level is near the unit of one', () => {
    const like = at(job, [level(job, 0.5, 0.5)], 'speeds');
    expect(Math.abs((like.season.heating?.unitElectricity ?? NaN) / (one.season.heating?.unitElectricity ?? NaN) - 1)).toBeLessThan(0.03);
  });
});

describe('levels', () => {
  it('go with hot water, which is made at the highest', () => {
    const both = at({ ...curve, hotWater: HOT_WATER }, [level(curve, 0.5, 0.44)]);
    const { hotWater } = both.season;
    expect(((hotWater?.groundEnergy ?? NaN) + (hotWater?.unitElectricity ?? NaN)) / (hotWater?.metEnergy ?? NaN)).toBeCloseTo(1, 9);
  });

  it('that do not rise, or tell nothing of the water, are refused at their place', () => {
    expect(() => at(DEMO, [level(DEMO, 1.2, 1.1)])).toThrow(/^lowerLevels\.levels\.1\./u);
    expect(() => at(DEMO, [])).toThrow(/^lowerLevels\.levels: /u);
    expect(() => at(curve, [level(DEMO, 0.5, 0.5)])).toThrow(/^lowerLevels\.levels\.0\.points\.0\.supplyTemperature: nothing/u);
    const wild = level(DEMO, 0.5, 0.5).points.map((point, index) => (index === 0 ? { ...point, capacity: -1 as Power } : point));
    expect(() => at(DEMO, [{ points: wild }])).toThrow(/^lowerLevels\.levels\.0\.points\.0\.capacity/u);
  });
});
