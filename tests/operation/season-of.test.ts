import { describe, expect, it } from 'vitest';
import type { SeasonalPerformance } from '../../src/heat-pump/index.js';
import { seasonOf, type SeasonOptions, seasonOptionsShape, simulate, type SimulatedYear } from '../../src/operation/index.js';
import { electricKilowattHours, electricWatts, fraction, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { heating as unit, house, loads } from './support/plant.js';

const options: SeasonOptions = { loadSidePower: electricWatts(80), auxiliaryEfficiency: fraction(0.98), gridEfficiency: fraction(0.455) };
/** A house that its unit does not quite carry, with a loop pump. */
const { lastYear } = simulate({
  ...house,
  duty: {
    from: 'building',
    loads: loads.map((load) => (load > 0 ? 1.15 * load : load)),
    heating: unit,
    ...('cooling' in house.duty ? { cooling: house.duty.cooling } : {}),
  },
  pump: { powerAt: () => electricWatts(120) },
});
const season = seasonOf(lastYear, options);
const factor = ({ boundaries }: SeasonalPerformance, name: string): number | undefined =>
  boundaries.find(({ boundary }) => boundary === name)?.performanceFactor;

describe('the season of a simulated year', () => {
  it('has the factors of its ledgers, with auxiliary and load side on top', () => {
    const { heating, cooling } = lastYear;
    expect(heating.unmetEnergy).toBeGreaterThan(0);
    expect(factor(season.heating, 'H1')).toBe(heating.metEnergy / heating.unitElectricity);
    expect(factor(season.heating, 'H2')).toBeCloseTo(heating.performanceFactor ?? 0, 12);
    expect(factor(season.cooling, 'C2')).toBeCloseTo(cooling.performanceFactor ?? 0, 12);
    const used = heating.unitElectricity + heating.circulatorElectricity + heating.unmetEnergy / 0.98;
    expect(factor(season.heating, 'H3')).toBeCloseTo(heating.energy / used, 12);
    expect(factor(season.heating, 'H4')).toBeCloseTo(heating.energy / (used + 80 * heating.runTime), 12);
    expect(factor(season.cooling, 'C4')).toBeCloseTo(
      cooling.metEnergy / (cooling.unitElectricity + cooling.circulatorElectricity + 80 * cooling.runTime),
      12,
    );
    expect(season.heating.renewableFrom).toBeCloseTo(2.527, 3);
    expect(season.cooling).not.toHaveProperty('renewableFrom');
    expect(season.heating.findings.map(({ code }) => code)).toContain('installed-performance-lower');
  });

  it('falls from boundary to boundary in heating', () => {
    const factors = ['H1', 'H2', 'H3', 'H4'].map((name) => factor(season.heating, name) ?? 0);
    factors.forEach((each, index) => expect(each).toBeLessThan(factors[index - 1] ?? Infinity));
  });

  it('is the sum of its months, of which those without heat have no factor', () => {
    expect(season.months).toHaveLength(12);
    const sums = (mode: 'heating' | 'cooling', index: number, what: 'energy' | 'electricityWithin'): number =>
      (season.months ?? []).reduce((sum, month) => sum + (month[mode].boundaries[index]?.[what] ?? Number.NaN), 0);
    for (const mode of ['heating', 'cooling'] as const) {
      season[mode].boundaries.forEach((boundary, index) => {
        expect(sums(mode, index, 'energy') / boundary.energy).toBeCloseTo(1, 11);
        expect(sums(mode, index, 'electricityWithin') / boundary.electricityWithin).toBeCloseTo(1, 11);
      });
    }
    const [january] = season.months ?? [];
    expect(january && factor(january.cooling, 'C1')).toBeUndefined();
    (season.months ?? []).forEach(({ heating, cooling }) => {
      expect(factor(heating, 'H4') === undefined).toBe(heating.boundaries[3]?.energy === 0);
      expect(factor(cooling, 'C4') === undefined).toBe(cooling.boundaries[2]?.energy === 0);
    });
    expect(january?.heating).not.toHaveProperty('findings');
  });

  it('has no months where the year has none, and needs no options', () => {
    const { months: _, ...year } = lastYear;
    const bare = seasonOf(year);
    expect(bare).not.toHaveProperty('months');
    expect(factor(bare.heating, 'H4')).toBe(factor(bare.heating, 'H3'));
    const lossless = (lastYear.heating.unitElectricity + lastYear.heating.circulatorElectricity + lastYear.heating.unmetEnergy) / 3.6e6;
    expect(electricKilowattHours.of(bare.heating.boundaries[2]?.electricityWithin ?? electricKilowattHours(0))).toBeCloseTo(lossless, 9);
  });

  it('is all auxiliary, and says so, where there is no unit', () => {
    const { yearOne } = simulate({ ...house, duty: { from: 'building', loads: loads.map((load) => Math.max(0, load)) }, years: 1 });
    const { heating } = seasonOf(yearOne);
    expect(factor(heating, 'H1')).toBeUndefined();
    expect(factor(heating, 'H3')).toBe(1);
    expect(heating.findings.map(({ code }) => code)).toContain('performance-factor-unusual');
  });

  it('refuses a year driven by heat from the ground, which holds no electricity of a unit', () => {
    const { yearOne } = simulate({ ...house, duty: { from: 'ground', loads: loads.map((load) => 0.7 * Math.max(0, load)) }, years: 1 });
    expect(() => seasonOf(yearOne)).toThrow('year.heating.unitElectricity');
    expect(() => seasonOf(yearOne)).toThrow('heat from the ground');
  });

  it('refuses bad input by name', () => {
    refuses((each: SeasonOptions) => seasonOf(lastYear, each), seasonOptionsShape, options);
    // What a caller without a type checker may pass.
    expect(() => seasonOf(undefined as unknown as SimulatedYear)).toThrow('year: nothing');
    expect(() => seasonOf({ ...lastYear, heating: undefined as unknown as SimulatedYear['heating'] })).toThrow('year.heating');
    const broken = { ...lastYear.heating, unmetEnergy: watts(NaN) as number as SimulatedYear['heating']['unmetEnergy'] };
    expect(() => seasonOf({ ...lastYear, heating: broken })).toThrow('year.heating.unmetEnergy');
  });
});
