import { describe, expect, it } from 'vitest';
import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import { type LoopInput, type LoopPlan, planLoop } from '../../src/plan/index.js';
import { planPage } from '../../src/report/index.js';
import { kelvinDifference } from '../../src/units/index.js';

const demo: LoopInput = inputDocument().read(demoDocument);
const plan = (change: Partial<LoopInput> = {}): LoopPlan => planLoop({ ...demo, ...change });
const usual = plan();
const tenth = plan({ designWinter: {} });
const codes = ({ findings }: LoopPlan): readonly string[] => findings.map(({ code }) => code);

describe('a winter to design for', () => {
  it('comes once in ten where nothing is said, and asks for more pipe the rarer it is', () => {
    const thirtieth = plan({ designWinter: { returnPeriod: 30 } });
    expect(tenth.designWinter?.returnPeriod).toBe(10);
    expect(tenth.byHours.exactLength).toBeGreaterThan(1.1 * usual.byHours.exactLength);
    expect(thirtieth.byHours.exactLength).toBeGreaterThan(tenth.byHours.exactLength);
  });

  it('asks for as much by the closed form, an independent way, to 5 %', () => {
    expect(Math.abs(tenth.byHours.exactLength / (tenth.heating?.needed.monthly.pipe ?? Number.NaN) - 1)).toBeLessThan(0.05);
  });

  it('is cold in the house and in the ground, and leaves the summer as it is', () => {
    expect(tenth.byHours.heating.energy).toBeGreaterThan(usual.byHours.heating.energy);
    expect(tenth.byHours.weather.coldestOutdoor).toBeLessThan(usual.byHours.weather.coldestOutdoor);
    expect(tenth.ground.pipes.lowest).toBeLessThan(usual.ground.pipes.lowest - 0.5);
    expect(tenth.ground.pipes.highest).toBeCloseTo(usual.ground.pipes.highest, 12);
    expect(tenth.byHours.cooling.energy / usual.byHours.cooling.energy).toBeCloseTo(1, 3);
  });

  it('costs less where winters hardly differ, and nothing where they do not', () => {
    const steady = plan({ designWinter: { seasonDeviation: kelvinDifference(0.5) } });
    expect(steady.byHours.exactLength).toBeLessThan(tenth.byHours.exactLength);
    expect(steady.byHours.exactLength).toBeGreaterThanOrEqual(usual.byHours.exactLength);
  });

  it('takes the place of the warning that none was used', () => {
    expect(codes(usual)).toContain('no-cold-winter-used');
    expect(codes(tenth)).not.toContain('no-cold-winter-used');
    expect(planPage(tenth, 'metric')).toMatch(/Winter designed for +one in 10/u);
  });

  it('is refused by its place', () => {
    expect(() => plan({ designWinter: { returnPeriod: 1 } })).toThrow(expect.objectContaining({ argument: 'designWinter.returnPeriod' }));
    expect(() => plan({ designWinter: { seasonDeviation: kelvinDifference(9) } })).toThrow(
      expect.objectContaining({ argument: 'designWinter.seasonDeviation' }),
    );
  });
});

describe('a summer to design for', () => {
  it('is hot in the house and in the ground, and leaves the winter as it is', () => {
    const hot = plan({ designSummer: {} });
    expect(hot.ground.pipes.highest).toBeGreaterThan(usual.ground.pipes.highest + 0.2);
    expect(hot.ground.pipes.lowest).toBeCloseTo(usual.ground.pipes.lowest, 12);
    expect(hot.cooling?.needed.monthly.pipe).toBeGreaterThan(usual.cooling?.needed.monthly.pipe ?? Number.NaN);
    expect(codes(hot)).toContain('no-cold-winter-used');
  });
});
