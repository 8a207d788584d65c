import { describe, expect, it } from 'vitest';
import { type LoopInput, type LoopPlan, planLoop, type ServiceSeason } from '../../src/plan/index.js';
import { electricKilowattHours, electricWatts, fraction, kilowattHours } from '../../src/units/index.js';
import { DEMO, HOT_POINTS, HOT_WATER, withCurve } from './water-unit.js';

const plain = planLoop(DEMO);
const circulated = planLoop({ ...DEMO, pump: { power: electricWatts(150) } });
const curve = planLoop(withCurve(45));
const codes = ({ findings }: LoopPlan): readonly string[] => findings.map(({ code }) => code);
const assumed = ({ assumptions }: LoopPlan): readonly string[] => assumptions.map(({ code }) => code);
const told = (service: ServiceSeason | undefined): readonly string[] =>
  service?.performance.boundaries.flatMap(({ boundary, performanceFactor }) => (performanceFactor === undefined ? [] : boundary)) ?? [];
/** Heat that reaches the house: from the ground, the unit's electricity, and what of the circulator's ends in the fluid. */
const balance = ({ season: { heating, hotWater } }: LoopPlan, share = 1): readonly number[] =>
  [heating, hotWater].flatMap((service) => {
    if (service === undefined) return [];
    const { metEnergy, groundEnergy, unitElectricity, circulatorElectricity = 0 } = service;
    return (groundEnergy + unitElectricity + share * circulatorElectricity) / metEnergy;
  });

describe('a circulator', () => {
  it('left out is said to be, and leaves the unit alone to be told of', () => {
    expect(assumed(plain)).toContain('circulator-power');
    expect(plain.season.heating).not.toHaveProperty('circulatorElectricity');
    expect(told(plain.season.heating)).toEqual(['H1']);
    expect(told(plain.season.cooling)).toEqual(['C1']);
    expect(codes(plain)).not.toContain('installed-performance-lower');
  });

  it('given is in the year by its power and the running time', () => {
    expect(assumed(circulated)).not.toContain('circulator-power');
    expect(circulated.season.heating?.circulatorElectricity).toBeCloseTo(150 * circulated.byHours.heating.runTime, -3);
    expect(told(circulated.season.heating)).toEqual(['H1', 'H2', 'H3']);
    expect(told(circulated.season.cooling)).toEqual(['C1', 'C2']);
    expect(codes(circulated)).toContain('installed-performance-lower');
  });

  it('warms the fluid: less pipe where heating governs, the less the more of its power ends there', () => {
    const outside = planLoop({ ...DEMO, pump: { power: electricWatts(150), heatShare: fraction(0) } });
    expect(circulated.byHours.exactLength).toBeLessThan(outside.byHours.exactLength);
    expect(outside.byHours.exactLength).toBeCloseTo(plain.byHours.exactLength, 6);
    expect(balance(outside, 0)[0]).toBeCloseTo(1, 9);
  });

  it('of no power is a loop without one', () => {
    const none = planLoop({ ...DEMO, pump: { power: electricWatts(0) } });
    expect(none.byHours.exactLength).toBeCloseTo(plain.byHours.exactLength, 6);
    expect(none.season.usedElectricity / plain.season.usedElectricity).toBeCloseTo(1, 9);
  });
});

describe('the year', () => {
  const full = planLoop({
    ...DEMO,
    pump: { power: electricWatts(150) },
    seasonOptions: { loadSidePower: electricWatts(80), auxiliaryEfficiency: fraction(0.95), gridEfficiency: fraction(0.4) },
  });

  it('has all boundaries where all is known, each counting more electricity than the one before', () => {
    const boundaries = full.season.heating?.performance.boundaries ?? [];
    expect(boundaries.map(({ boundary }) => boundary)).toEqual(['H1', 'H2', 'H3', 'H4']);
    const used = boundaries.map(({ electricityWithin }) => electricityWithin);
    expect(used).toEqual([...used].sort((a, b) => a - b));
    expect(full.season.heating?.performance.renewableFrom).toBeCloseTo(1.15 / 0.4, 12);
  });

  it('adds up: the fourth boundaries hold all electricity, and the plan’s is theirs', () => {
    const last = (service: ServiceSeason | undefined): number => service?.performance.boundaries.at(-1)?.electricityWithin ?? Number.NaN;
    expect((last(full.season.heating) + last(full.season.cooling)) / full.season.usedElectricity).toBeCloseTo(1, 12);
    expect(full.season.heating?.auxiliaryElectricity).toBeCloseTo(full.byHours.heating.unmetEnergy / 0.95, 3);
    expect(full.season.cooling).not.toHaveProperty('auxiliaryElectricity');
  });

  it('changes no loop by what is outside of it', () => {
    expect(full.byHours).toEqual(circulated.byHours);
  });

  it.each([
    ['the demo', plain],
    ['a circulator', circulated],
    ['a curve', curve],
  ])('of %s: heat = ground + electricity', (_, plan) => {
    for (const ratio of balance(plan)) expect(ratio).toBeCloseTo(1, 9);
  });
});

describe('hot water', () => {
  const jobs: readonly (readonly [string, LoopInput, LoopPlan])[] = [
    ['by points of its own', { ...DEMO, hotWater: withPoints() }, plain],
    ['at a supply temperature of the map', { ...withCurve(45), hotWater: HOT_WATER }, curve],
  ];
  it.each(jobs)('%s takes no less pipe, and its own electricity', (_, job, without) => {
    const plan = planLoop(job);
    expect(plan.byHours.exactLength).toBeGreaterThan(without.byHours.exactLength);
    expect(plan.heating?.needed.monthly.pipe).toBeGreaterThan(without.heating?.needed.monthly.pipe ?? Infinity);
    const { hotWater } = plan.season;
    // 180 L a day by 41 K and 60 W of loss: 8.56 kWh and 1.44 kWh.
    const { metEnergy = 0, unmetEnergy = 0 } = plan.byHours.hotWater ?? {};
    expect(Math.abs(kilowattHours.of(kilowattHoursOf(metEnergy + unmetEnergy)) / (365 * 10) - 1)).toBeLessThan(0.01);
    expect(told(hotWater)[0]).toBe('H1');
    expect(electricKilowattHours.of(hotWater?.unitElectricity ?? electricKilowattHours(0))).toBeGreaterThan(3650 / 3.5);
    for (const ratio of balance(plan)) expect(ratio).toBeCloseTo(1, 9);
    // At hotter water the unit does worse than on the radiators.
    const factor = (service: ServiceSeason | undefined): number => service?.performance.boundaries[0]?.performanceFactor ?? Number.NaN;
    expect(factor(hotWater)).toBeLessThan(factor(plan.season.heating));
    expect(plan.notices.map(({ situation }) => situation)).toContain('hot-water');
  });

  it('is in the closed form near to what the hours find', () => {
    const plan = planLoop({ ...DEMO, hotWater: withPoints() });
    expect(Math.abs(plan.byHours.exactLength / (plan.heating?.needed.monthly.pipe ?? Number.NaN) - 1)).toBeLessThan(0.05);
  });
});

function withPoints(): NonNullable<LoopInput['hotWater']> {
  const { supplyTemperature: _, ...hotWater } = HOT_WATER;
  return { ...hotWater, points: HOT_POINTS };
}

function kilowattHoursOf(joules: number): ReturnType<typeof kilowattHours> {
  return kilowattHours(joules / 3.6e6);
}
