import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  antifreezeComparisonShape,
  CALCIUM_CHLORIDE,
  compareAntifreezes,
  ETHANOL,
  fluidConditionShape,
  fluidHazards,
  fluidTransport,
  fluidWarmingShape,
  METHANOL,
  mixtureFlashPoint,
  protectionConventions,
  siteConstant,
  thermalExpansion,
  transportConditionShape,
  volumeChange,
  type ColdestFluid,
  type FluidCondition,
  type FluidRecord,
  type FluidWarming,
  type TransportCondition,
} from '../../src/fluid/index.js';
import { flowAtReynolds } from '../../src/pipe/index.js';
import { fluidProperties } from '../../src/fluid/index.js';
import { btuPerHour, celsius, diameterMillimetres, kelvinDifference, massFraction, massPercent, ratio, type Shape } from '../../src/units/index.js';
import { SOLUTIONS } from '../published/fluid.checks.js';
import { expansionOfTable, ROUNDED_TWICE } from '../published/fluid-mixtures.checks.js';
import { refuses } from '../support/bad-input.js';
import { choiceOf, conditionOf } from './all-fluids.js';

const GLYCOL = 'propylene-glycol';
const bore = { insideDiameter: diameterMillimetres(26.2) };
const expandable: readonly FluidRecord[] = SOLUTIONS.filter(({ name }) => name !== 'calcium-chloride');

describe('siteConstant', () => {
  it('is one number in every unit: 500 gpm and degF for water near room temperature', () => {
    const water = siteConstant({ fluid: 'water', massFraction: massFraction(0), temperature: celsius(20) });
    expect(Math.abs(water.btuPerGallonPerMinute - 500)).toBeLessThan(1);
    fc.assert(
      fc.property(conditionOf(SOLUTIONS), (of) => {
        const { heatCapacity, kilowattsPerLitrePerSecond, wattsPerLitrePerMinute, btuPerGallonPerMinute } = siteConstant(of);
        const { density, specificHeat } = fluidProperties(of);
        expect(heatCapacity).toBe(density * specificHeat);
        expect(wattsPerLitrePerMinute).toBeCloseTo((kilowattsPerLitrePerSecond * 1000) / 60, 9);
        // One gallon per minute, warmed by one degree Fahrenheit.
        const watts = (heatCapacity * (0.003785411784 / 60)) / 1.8;
        expect(btuPerGallonPerMinute / btuPerHour.of(watts as never)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('falls with glycol by its specific heat, although the fluid gets denser', () => {
    const at = (percent: number): FluidCondition => ({ fluid: GLYCOL, massFraction: massPercent(percent), temperature: celsius(5) });
    expect(siteConstant(at(30)).btuPerGallonPerMinute).toBeLessThan(siteConstant(at(20)).btuPerGallonPerMinute);
    expect(fluidProperties(at(30)).density).toBeGreaterThan(fluidProperties(at(20)).density);
  });

  it('refuses bad input', () => {
    refuses<FluidCondition>(siteConstant, fluidConditionShape, { fluid: GLYCOL, massFraction: massPercent(25), temperature: celsius(0) });
  });
});

describe('expansion', () => {
  it('integrates to the change of volume, which is nothing there and back', () => {
    fc.assert(
      fc.property(conditionOf(expandable, 38), fc.double({ min: 0.1, max: 2, noNaN: true }), ({ temperature, ...choice }, step) => {
        const warmer = celsius(temperature + step);
        const there = volumeChange({ ...choice, filledAt: temperature, temperature: warmer });
        const back = volumeChange({ ...choice, filledAt: warmer, temperature });
        expect((1 + there) * (1 + back)).toBeCloseTo(1, 12);
        const slopes = [0, 0.5, 1].map((along) => thermalExpansion({ ...choice, temperature: celsius(temperature + along * step) }));
        const [first = 0, middle = 0, last = 0] = slopes;
        expect(Math.log1p(there)).toBeCloseTo((step * (first + 4 * middle + last)) / 6, 9);
      }),
    );
  });

  it('is nothing for water near 4 °C, and negative below', () => {
    const water = (t: number): number => thermalExpansion({ fluid: 'water', massFraction: massFraction(0), temperature: celsius(t) });
    expect(Math.abs(water(3.98))).toBeLessThan(2e-7);
    expect(water(1)).toBeLessThan(0);
  });

  it('is refused for calcium chloride, whose fit bends the wrong way', () => {
    const of = { fluid: CALCIUM_CHLORIDE, massFraction: massPercent(14), temperature: celsius(5) };
    expect(() => thermalExpansion(of)).toThrow('wrong shape');
    expect(() => volumeChange({ ...of, filledAt: celsius(15) })).toThrow('wrong shape');
  });

  it.each([...ROUNDED_TWICE])('%s was rounded twice on its way to %d', (name, printed) => {
    const computed = expansionOfTable(name);
    const digits = name.includes(' to ') ? 2 : 1;
    const round = (value: number, places: number): number =>
      Number((Math.sign(value) * (Math.round(Math.abs(value) * 10 ** places + 1e-9) / 10 ** places)).toFixed(places));
    expect(round(computed, digits)).not.toBe(printed);
    expect(round(round(computed, digits + 1), digits)).toBe(printed);
  });

  it('refuses bad input', () => {
    const of = { fluid: GLYCOL, massFraction: massPercent(25), temperature: celsius(0) } as const;
    refuses<FluidCondition>(thermalExpansion, fluidConditionShape, of);
    refuses<FluidWarming>(volumeChange, fluidWarmingShape, { ...of, filledAt: celsius(15) });
  });
});

describe('fluidTransport', () => {
  it('costs nothing where the fluid is water', () => {
    for (const t of [0, 10, 40]) {
      const water = fluidTransport({ fluid: 'water', massFraction: massFraction(0), temperature: celsius(t), ...bore });
      for (const each of [water.flowRatio, water.filmRatio, water.pressureRatio, water.pumpPowerRatio]) expect(each).toBeCloseTo(1, 12);
    }
  });

  it('has the regimes begin where the pipe room has them', () => {
    fc.assert(
      fc.property(conditionOf(SOLUTIONS), (of) => {
        const { laminarBelow, turbulentFrom, pumpPowerRatio, pressureRatio, flowRatio } = fluidTransport({ ...of, ...bore });
        const flow = (reynolds: number): number => flowAtReynolds({ pipe: bore, fluid: fluidProperties(of), reynolds: ratio(reynolds) });
        expect(laminarBelow / flow(2300)).toBeCloseTo(1, 9);
        expect(turbulentFrom / flow(4000)).toBeCloseTo(1, 9);
        expect(pumpPowerRatio).toBeCloseTo(pressureRatio * flowRatio, 9);
      }),
    );
  });

  it('refuses bad input', () => {
    const of = { fluid: GLYCOL, massFraction: massPercent(25), temperature: celsius(0), ...bore, viscosityFactor: ratio(1.15) } as const;
    refuses<TransportCondition>(fluidTransport, transportConditionShape, of);
  });
});

describe('compareAntifreezes', () => {
  const at = { temperature: celsius(-2), ...bore };

  it('protects with every fluid, and ranks only those for houses', () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: -3, noNaN: true }), (t) => {
        const rows = compareAntifreezes({ fluids: SOLUTIONS, protectTo: celsius(t), ...at, temperature: celsius(-1) });
        expect(rows.map(({ fluid }) => fluid)).toEqual(SOLUTIONS.map(({ name }) => name));
        for (const row of rows) {
          expect(row.warmestFreezingPoint).toBeLessThanOrEqual(t);
          expect(row.rank === undefined).toBe(row.use !== 'house');
          expect(row.thinnest.turbulentFrom).toBeLessThan(row.expected.turbulentFrom);
          expect(row.thickest.pumpPowerRatio).toBeGreaterThan(row.expected.pumpPowerRatio);
        }
        expect(rows.flatMap(({ rank }) => rank ?? []).sort()).toEqual([1, 2]);
      }),
    );
  });

  it('ranks ethanol before propylene glycol by pump power, and shows that methanol, unranked, flows better than either', () => {
    const [glycol, ethanol, methanol] = compareAntifreezes({ fluids: [GLYCOL, ETHANOL, METHANOL], protectTo: celsius(-9.6), ...at });
    expect([glycol?.rank, ethanol?.rank, methanol?.rank]).toEqual([2, 1, undefined]);
    expect(methanol?.expected.turbulentFrom).toBeLessThan(ethanol?.expected.turbulentFrom ?? 0);
  });

  it('never goes below the floor of the inhibitors', () => {
    const [glycol] = compareAntifreezes({ fluids: [GLYCOL], protectTo: celsius(-4), ...at });
    expect(glycol?.volumeFraction).toBeCloseTo(0.25, 9);
    expect(glycol?.governedBy).toBe('inhibitor floor');
  });

  it('refuses a fluid by its place in the list, and ice', () => {
    expect(() => compareAntifreezes({ fluids: [GLYCOL, 'gin' as never], protectTo: celsius(-9), ...at })).toThrow('fluids.1.fluid: gin');
    expect(() => compareAntifreezes({ fluids: ['water'], protectTo: celsius(-9), ...at })).toThrow('water cannot protect below');
    expect(() => compareAntifreezes({ fluids: [ETHANOL], protectTo: celsius(-5), ...at, temperature: celsius(-12) })).toThrow('freezes at');
  });

  it('refuses bad input', () => {
    refuses<Parameters<typeof compareAntifreezes>[0] & { readonly fluids: readonly ('water' | 'propylene-glycol')[] }>(
      compareAntifreezes,
      antifreezeComparisonShape,
      { fluids: [GLYCOL], protectTo: celsius(-9), freezingRule: 'fit', ...at },
    );
  });
});

describe('protectionConventions', () => {
  it('has the colder of both margins as protectionTemperature does, and each margin below the leaving fluid', () => {
    const rows = protectionConventions({ lowestEntering: celsius(-1), lowestLeaving: celsius(-1.5), belowEntering: kelvinDifference(9) });
    expect(rows.map(({ protectTo }) => Number(protectTo.toFixed(6)))).toEqual([-7.055556, -10, -10, -15]);
    for (const { protectTo, belowLeaving } of rows) expect(belowLeaving).toBeCloseTo(-1.5 - protectTo, 12);
  });

  it('refuses bad input', () => {
    const shape: Shape<ColdestFluid> = {
      lowestEntering: 'temperature',
      lowestLeaving: 'temperature',
      belowEntering: { optional: 'temperature difference' },
      belowLeaving: { optional: 'temperature difference' },
    };
    const margins = { belowEntering: kelvinDifference(8), belowLeaving: kelvinDifference(5) };
    refuses<ColdestFluid>(protectionConventions, shape, { lowestEntering: celsius(-1), lowestLeaving: celsius(-4), ...margins });
  });
});

describe('fluidHazards', () => {
  it('has the oxygen that the formula burns to carbon dioxide and water', () => {
    // Atoms of carbon, hydrogen and oxygen, and the molar mass; salts keep their metal as bicarbonate, which takes one carbon with it.
    const formulas = {
      'propylene-glycol': [3, 8, 2, 76.094],
      'ethylene-glycol': [2, 6, 2, 62.068],
      ethanol: [2, 6, 1, 46.068],
      methanol: [1, 4, 1, 32.042],
      glycerol: [3, 8, 3, 92.094],
      'potassium-acetate': [2, 3, 2, 98.142],
      'potassium-formate': [1, 1, 2, 84.116],
    } as const;
    for (const record of SOLUTIONS) {
      if (!(record.name in formulas)) {
        expect(fluidHazards(record).oxygenDemand).toBe(0);
        continue;
      }
      const [c, h, o, molar] = formulas[record.name as keyof typeof formulas];
      // A salt's potassium stands for one hydrogen.
      const hydrogens = record.pureDensity === 0 ? h + 1 : h;
      expect(fluidHazards(record).oxygenDemand).toBeCloseTo((31.998 * (c + hydrogens / 4 - o / 2)) / molar, 2);
    }
  });

  it('calls neither food-grade glycol nor glycerol dangerous, and methanol poisonous by every way in', () => {
    const statements = (name: string): readonly string[] => fluidHazards(SOLUTIONS.find((each) => each.name === name) ?? METHANOL).hazardStatements;
    expect(statements(GLYCOL)).toEqual([]);
    expect(statements('glycerol')).toEqual([]);
    expect(statements('methanol')).toEqual(expect.arrayContaining(['H301', 'H311', 'H331']));
  });

  it('has a flash point for alcohols only, which never rises with the share', () => {
    fc.assert(
      fc.property(choiceOf([ETHANOL, METHANOL]), fc.double({ min: 0, max: 0.05, noNaN: true }), (choice, more) => {
        const [from, to] = choice.fluid.name === 'ethanol' ? [0.05, 0.5] : [0.1, 0.3];
        const x = Math.min(Math.max(choice.massFraction, from), to);
        const at = (share: number): number => mixtureFlashPoint({ fluid: choice.fluid, massFraction: massFraction(share) }).flashPoint;
        expect(at(Math.min(x + more, to))).toBeLessThanOrEqual(at(x) + 1e-9);
      }),
    );
    const of = (percent: number): ReturnType<typeof mixtureFlashPoint> => mixtureFlashPoint({ fluid: METHANOL, massFraction: massPercent(percent) });
    expect(of(10)).toEqual({ flashPoint: 55, flashPointError: 5, liquidClass: 'II' });
    expect(of(17.5).flashPoint).toBeCloseTo(43.5, 9);
    expect(of(30)).toEqual({ flashPoint: 34, flashPointError: 5, liquidClass: 'IC' });
    expect(() => of(5)).toThrow('the table of flash points ends there');
    for (const fluid of SOLUTIONS.filter(({ name }) => !name.endsWith('anol'))) {
      expect(() => mixtureFlashPoint({ fluid, massFraction: massPercent(20) })).toThrow('ethanol or methanol');
    }
    expect(() => fluidHazards('water')).toThrow('an antifreeze');
  });

  it('refuses bad input', () => {
    for (const fluid of ['beer', undefined, null, 5, {}]) {
      expect(() => fluidHazards(fluid as never)).toThrow('fluid');
    }
    refuses<{ readonly fluid: 'propylene-glycol' | 'water' }>(({ fluid }) => fluidHazards(fluid), { fluid: ['water', GLYCOL] }, { fluid: GLYCOL });
    refuses(
      ({ massFraction: share }) => mixtureFlashPoint({ fluid: ETHANOL, massFraction: share }),
      { massFraction: 'mass fraction' },
      { massFraction: massPercent(20) },
    );
  });
});
