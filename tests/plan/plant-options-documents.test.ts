import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inputDocument, planDocument } from '../../src/document/index.js';
import { type LoopInput, planLoop } from '../../src/plan/index.js';
import { planLoop as planOfDocument } from '../../src/plan-loop-document.js';
import { celsius, electricWatts, fraction, type Flow, litresPerDay, type Temperature } from '../../src/units/index.js';
import { notFinite } from '../support/finite.js';
import { PLANTS } from '../bad-input/plan-plants.js';
import { DEMO, HOT_POINTS, HOT_WATER, withCurve } from './water-unit.js';

const { supplyTemperature: _, ...drawn } = HOT_WATER;

describe('a document with all options', () => {
  it.each(PLANTS.map((job, index) => [index, job] as const))('%i is the same loop in either unit system', (_index, job) => {
    const plans = (['metric', 'us'] as const).map((units) => {
      const document = inputDocument().write({ ...job, format: 'loamloop-input-1' }, units);
      return planDocument().read(planOfDocument(document, { units }));
    });
    const [{ units: metric, ...one } = { units: '' }, { units: us, ...other } = { units: '' }] = plans;
    expect([metric, us]).toEqual(['metric', 'us']);
    expect(other).toEqual(one);
    expect(one).toHaveProperty('season.hotWater.groundEnergy');
  });
});

describe('hot water is refused', () => {
  const refusal =
    (job: LoopInput): (() => unknown) =>
    () =>
      planLoop(job);

  it('of a unit of which is not known how it makes it', () => {
    expect(refusal({ ...DEMO, hotWater: drawn })).toThrow(
      /^hotWater\.points: nothing is not allowed; allowed: the rating points .*supply temperature/u,
    );
    expect(refusal({ ...DEMO, hotWater: HOT_WATER })).toThrow(/^hotWater\.points: nothing/u);
    expect(refusal({ ...withCurve(45), hotWater: drawn })).toThrow(/^hotWater\.supplyTemperature: nothing/u);
  });

  it('at two conditions', () => {
    expect(refusal({ ...withCurve(45), hotWater: { ...HOT_WATER, points: HOT_POINTS } })).toThrow(
      /^hotWater\.supplyTemperature: 55 .*none beside rating points/u,
    );
  });

  it('hotter than the unit makes it, or cooler than it is drawn', () => {
    const at = (supply: number): (() => unknown) => refusal({ ...withCurve(45), hotWater: { ...HOT_WATER, supplyTemperature: celsius(supply) } });
    expect(at(49)).toThrow(/^hotWater\.supplyTemperature: 49 .*at least 50/u);
    expect(at(58)).toThrow(/^hotWater\.supplyTemperature: /u);
    const { heatPump } = withCurve(45);
    const limited = { ...withCurve(45), heatPump: { ...heatPump, highestSupply: celsius(55) } };
    expect(refusal({ ...limited, hotWater: { ...HOT_WATER, supplyTemperature: celsius(56) } })).toThrow(
      /^hotWater\.supplyTemperature: 56 .*at most 55/u,
    );
  });

  it('by points that do not reach the limit of the unit', () => {
    expect(refusal({ ...DEMO, hotWater: { ...drawn, points: HOT_POINTS.slice(1) } })).toThrow(/^heatPump\.lowestEntering: .*for hot water/u);
  });
});

describe('options of the year', () => {
  it('out of their range are refused at their place', () => {
    const of =
      (seasonOptions: NonNullable<LoopInput['seasonOptions']>): (() => unknown) =>
      () =>
        planLoop({ ...DEMO, seasonOptions });
    expect(of({ auxiliaryEfficiency: fraction(1.2) })).toThrow(/^seasonOptions\.auxiliaryEfficiency/u);
    expect(of({ loadSidePower: electricWatts(-1) })).toThrow(/^seasonOptions\.loadSidePower/u);
  });
});

describe('any plant', () => {
  const plant = fc.record({
    power: fc.double({ min: 0, max: 400, noNaN: true }),
    draw: fc.double({ min: 10, max: 500, noNaN: true }),
    supply: fc.double({ min: 36, max: 55, noNaN: true }),
  });
  const jobOf = (supply: number, power: number, dailyDraw: Flow, hot: Temperature = celsius(55)): LoopInput => ({
    ...withCurve(supply),
    field: { ...DEMO.field, mostTrenches: 30 },
    pump: { power: electricWatts(power) },
    hotWater: { ...HOT_WATER, draw: { by: 'household', dailyDraw }, supplyTemperature: hot },
  });

  it('balances heat, is finite, and takes no less from the ground for more hot water', () => {
    fc.assert(
      fc.property(plant, ({ power, draw, supply }) => {
        const [less, more] = [draw, draw + 50].map((each) => planLoop(jobOf(supply, power, litresPerDay(each))));
        if (less === undefined || more === undefined) throw new Error('two plans');
        expect(notFinite(more)).toBeUndefined();
        const { heating, hotWater } = more.season;
        for (const service of [heating, hotWater]) {
          const { metEnergy = NaN, groundEnergy = NaN, unitElectricity = NaN, circulatorElectricity = NaN } = service ?? {};
          expect((groundEnergy + unitElectricity + circulatorElectricity) / metEnergy).toBeCloseTo(1, 9);
        }
        expect(hotWater?.groundEnergy).toBeGreaterThan(less.season.hotWater?.groundEnergy ?? Infinity);
        if (more.loop.circuits.circuits === less.loop.circuits.circuits) {
          expect(more.byHours.exactLength).toBeGreaterThan(less.byHours.exactLength * (1 - 1e-6));
        }
      }),
      { numRuns: 5 },
    );
  });
});
