import { describe, expect, it } from 'vitest';
import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import { type LoopInput, type LoopPlan, planLoop } from '../../src/plan/index.js';
import { celsius, metres, trenchMetres } from '../../src/units/index.js';

const demo: LoopInput = inputDocument().read(demoDocument);
const plan = planLoop(demo);
const { byHours, loop } = plan;
const short = (change: Partial<LoopInput['field']>): LoopPlan => planLoop({ ...demo, field: { ...demo.field, ...change } });

describe('the loop by the hour', () => {
  it('keeps its limits as it is laid, and the next smaller one does not', () => {
    expect(byHours.binding.limitMargin).toBeGreaterThanOrEqual(0);
    expect(loop.circuits.activePipe).toBeGreaterThanOrEqual(byHours.exactLength);
    expect(loop.needed.estimate).toBeCloseTo(byHours.exactLength, 9);
    expect(loop.nextSmaller?.enough).toBe(false);
    expect(byHours.smallerBinding?.limitMargin).toBeLessThan(0);
  });

  it('is coldest in February or March and warmest in July or August, later than the air', () => {
    const { coldestEntering, warmestEntering } = byHours.lastYear;
    expect(coldestEntering?.day).toBeGreaterThan(32);
    expect(coldestEntering?.day).toBeLessThan(91);
    expect(warmestEntering?.day).toBeGreaterThan(182);
    expect(warmestEntering?.day).toBeLessThan(244);
    expect(coldestEntering?.temperature).toBeGreaterThanOrEqual(demo.heatPump.lowestEntering);
    expect(byHours.yearOne.coldestEntering?.temperature).toBeGreaterThan(coldestEntering?.temperature ?? 0);
  });

  it('is within 5 % of the closed form with its spell, an independent way to the same length', () => {
    expect(Math.abs(byHours.exactLength / (plan.heating?.needed.monthly.pipe ?? Number.NaN) - 1)).toBeLessThan(0.05);
  });

  it.each(['low', 'high'] as const)('asks at the %s end of the soil’s band for what the band of the closed form says, to 2 %%', (end) => {
    const { conductivity, effective } = plan.soil;
    const sample = { from: 'laboratory', conductivity: conductivity[end], heatCapacity: effective.heatCapacity } as const;
    const known = planLoop({ ...demo, soil: { layers: [{ top: metres(0), bottom: metres(4), sample }] } });
    // Poor soil asks for the long end.
    const told = loop.needed[end === 'low' ? 'high' : 'low'];
    expect(Math.abs(known.byHours.exactLength / told - 1)).toBeLessThan(0.02);
  });

  it('balances energy, and its months add up to its year', () => {
    const { heating, cooling, months } = byHours;
    expect((heating.groundEnergy + heating.unitElectricity) / heating.metEnergy).toBeCloseTo(1, 9);
    expect((cooling.groundEnergy - cooling.unitElectricity) / cooling.metEnergy).toBeCloseTo(1, 9);
    expect(months).toHaveLength(12);
    expect(months.reduce((sum, month) => sum + month.heating.metEnergy, 0) / heating.metEnergy).toBeCloseTo(1, 9);
    // The same house by bins of the same spread, an independent sum.
    expect(Math.abs(heating.energy / ((plan.heating?.run.metEnergy ?? Number.NaN) + (plan.heating?.run.unmetEnergy ?? 0)) - 1)).toBeLessThan(0.03);
  });

  it('explains its length by the handbook’s: the factors multiply to the ratio', () => {
    const { factors } = byHours;
    if (factors === undefined) throw new Error('no factors');
    const product = factors.heatFactor * factors.marginFactor * factors.filmFactor * factors.groundFactor;
    expect(product / factors.ratioToHandbook).toBeCloseTo(1, 6);
    expect(factors.ratioToHandbook).toBeCloseTo(loop.circuits.activePipe / (plan.heating?.needed.handbookMeanFluid.pipe ?? Number.NaN), 9);
  });

  it('tells what other lengths would have brought', () => {
    expect(byHours.regret.map(({ lengthRatio }) => lengthRatio)).toEqual([0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3]);
    byHours.regret
      .slice(1)
      .forEach(({ limitMargin }, index) => expect(limitMargin).toBeGreaterThan(byHours.regret[index]?.limitMargin ?? Number.NaN));
    expect(byHours.regret[3]?.limitMargin).toBeCloseTo(byHours.binding.limitMargin, 3);
  });

  it('lays a spell of the design weather over a year that does not reach it', () => {
    const { building } = demo;
    const colder: LoopInput = { ...demo, building: { ...building, heating: { ...building.heating, designOutdoor: celsius(-24) } } };
    const { weather } = planLoop(colder).byHours;
    expect(weather.coldestOutdoor).toBeCloseTo(-24, 6);
    expect(weather.coldSpell?.reached).toBeCloseTo(-24, 6);
  });

  it('says what happens when the land is too small', () => {
    const few = short({ mostTrenches: 2 });
    expect(few.byHours.binding.limitMargin).toBeLessThan(0);
    expect(few.findings.some(({ code }) => code === 'field-too-small')).toBe(true);
    expect(few.byHours.exactLength).toBeGreaterThan(few.loop.circuits.activePipe);
    expect(short({ longestTrench: trenchMetres(60) }).byHours.binding.limitMargin).toBeGreaterThanOrEqual(0);
  });
});
