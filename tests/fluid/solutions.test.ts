import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  antifreezeForProtection,
  ETHANOL,
  FLUID_NAMES,
  fluidConditionShape,
  fluidFindings,
  fluidProperties,
  fluidPropertyBands,
  fluidSituations,
  freezingPoint,
  fluidChoiceShape,
  massFractionForFreezingPoint,
  massFromVolumeFraction,
  METHANOL,
  volumeFromMassFraction,
  warmestFreezingPoint,
  type Fluid,
  type FluidChoice,
  type FluidCondition,
} from '../../src/fluid/index.js';
import { reynoldsNumber, pressureGradient } from '../../src/pipe/index.js';
import { describeFinding } from '../../src/report/index.js';
import { noticesFor } from '../../src/safety/index.js';
import { celsius, diameterMillimetres, litresPerMinute, massFraction, massPercent, volumeFraction } from '../../src/units/index.js';
import { freezingDisagreement, FREEZING_LEFT_OUT, frozenByFit, recordOf, SOLUTIONS } from '../published/fluid.checks.js';
import { refuses } from '../support/bad-input.js';
import { loadFixture } from '../support/fixture.js';
import { ALL_FLUIDS, choiceOf, conditionOf, inwardOf, LIQUIDS, SALTS } from './all-fluids.js';

describe('the nine solutions', () => {
  it('are positive and finite from the freezing point to the end of their fits', () => {
    fc.assert(
      fc.property(conditionOf(ALL_FLUIDS), (of) => {
        const { density, viscosity, specificHeat, conductivity } = fluidProperties(of);
        expect(density).toBeGreaterThan(800);
        expect(density).toBeLessThan(1500);
        expect(viscosity).toBeGreaterThan(2e-4);
        expect(viscosity).toBeLessThan(30);
        expect(specificHeat).toBeGreaterThan(2190);
        expect(specificHeat).toBeLessThan(4500);
        expect(conductivity).toBeGreaterThan(0.15);
        expect(conductivity).toBeLessThan(0.7);
      }),
    );
  });

  it('thin out as they warm up to 40 °C', () => {
    fc.assert(
      fc.property(
        choiceOf(SOLUTIONS),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (choice, one, other) => {
          const freezes = freezingPoint(choice);
          const [cold, warm] = [Math.min(one, other), Math.max(one, other)].map((up) => Math.max(freezes, freezes + up * (40 - freezes)));
          fc.pre((warm ?? 0) - (cold ?? 0) > 1e-6);
          const at = (t = 0): number => fluidProperties({ ...choice, temperature: celsius(Math.min(t, 40)) }).viscosity;
          expect(at(warm)).toBeLessThan(at(cold));
        },
      ),
    );
  });

  it('freeze lower the more there is of the antifreeze, and find the share back', () => {
    fc.assert(
      fc.property(inwardOf(SOLUTIONS), (choice) => {
        const target = freezingPoint(choice);
        const found = massFractionForFreezingPoint({ fluid: choice.fluid, freezingPoint: target });
        expect(found).toBeCloseTo(choice.massFraction, 9);
        expect(freezingPoint({ ...choice, massFraction: found })).toBeLessThanOrEqual(target);
        const more = massFraction(Math.min(choice.massFraction + 0.01, choice.fluid.highestMassFraction));
        if (more > choice.massFraction) expect(freezingPoint({ ...choice, massFraction: more })).toBeLessThan(target);
      }),
    );
  });

  it('go from mass to volume and back', () => {
    fc.assert(
      fc.property(choiceOf(LIQUIDS), (choice) => {
        const byVolume = volumeFromMassFraction(choice);
        expect(massFromVolumeFraction({ fluid: choice.fluid, volumeFraction: byVolume })).toBeCloseTo(choice.massFraction, 11);
      }),
    );
  });

  it('meet water as the antifreeze goes to nothing, as closely as each fit is stated to', () => {
    // Density, viscosity, specific heat, conductivity in per cent, from 1 to 40 °C.
    const stated: Readonly<Record<string, readonly [number, number, number, number]>> = {
      'ethylene-glycol': [0.09, 0.7, 0.2, 0.9],
      'propylene-glycol': [0.04, 1.2, 0.1, 0.9],
      ethanol: [0.02, 1.5, 0.5, 0.9],
      methanol: [0.02, 0.2, 0.5, 0.8],
      glycerol: [0.08, 1.2, 0.6, 0.9],
      'potassium-carbonate': [0.05, 0.2, 0.1, 0.8],
      'potassium-formate': [0.02, 0.3, 0.05, 0.9],
      'potassium-acetate': [0.12, 0.7, 0.1, 0.9],
      'calcium-chloride': [0.11, 0.5, 0.1, 0.9],
    };
    for (const fluid of SOLUTIONS) {
      for (const t of [1, 5, 10, 20, 30, 40]) {
        const at = { massFraction: massFraction(0), temperature: celsius(t) };
        const [solution, water] = [fluidProperties({ ...at, fluid }), fluidProperties({ ...at, fluid: 'water' })];
        (['density', 'viscosity', 'specificHeat', 'conductivity'] as const).forEach((property, index) => {
          const off = 100 * Math.abs(solution[property] / water[property] - 1);
          // Stated to one or two digits.
          expect(off, `${fluid.name} ${property} ${String(t)}`).toBeLessThan((stated[fluid.name]?.[index] ?? 0) + (index === 0 ? 0.005 : 0.05));
        });
      }
    }
  });

  it('hold more heat per kilogram than water does, dilute alcohols alone', () => {
    const at = { massFraction: massPercent(15), temperature: celsius(0) };
    const water = fluidProperties({ fluid: 'water', massFraction: massFraction(0), temperature: celsius(0) }).specificHeat;
    expect(fluidProperties({ ...at, fluid: ETHANOL }).specificHeat).toBeCloseTo(4410, -1);
    const above = SOLUTIONS.filter((fluid) => fluidProperties({ fluid, massFraction: massPercent(8), temperature: celsius(0) }).specificHeat > water);
    expect(above.map(({ name }) => name)).toEqual(['ethanol', 'methanol']);
  });

  it('refuse to be counted by volume where they are salts', () => {
    for (const fluid of SALTS) {
      expect(() => volumeFromMassFraction({ fluid, massFraction: massPercent(10) })).toThrow('dosed by mass');
      expect(() => massFromVolumeFraction({ fluid, volumeFraction: volumeFraction(0.1) })).toThrow('dosed by mass');
      expect(() => antifreezeForProtection({ fluid, protectTo: celsius(-5) })).toThrow('dosed by mass');
    }
  });

  it('freeze above the coldest liquid of a handbook for two mixtures, whose rows are refused and not extrapolated', () => {
    const frozen = loadFixture('fluids-handbook').rows.filter(frozenByFit);
    const mixtures = frozen.map((row) => [row.text('source'), row.text('fluid'), row.text('mass_fraction'), row.text('t_C')].join(' '));
    expect([...new Set(mixtures)].sort()).toEqual(['VDI methanol 0.1000 -7.5', 'VDI methanol 0.2000 -16.5']);
  });
});

describe('warmestFreezingPoint', () => {
  const rows = loadFixture('fluids-handbook').rows.filter((row) => row.text('property') === 't_freeze');

  it.each(rows.map((row) => [row.text('source'), row.text('fluid'), row.number('mass_fraction'), row] as const))(
    'is not below %s for %s of %d',
    (_source, _fluid, x, row) => {
      const warmest = warmestFreezingPoint({ fluid: recordOf(row), massFraction: massFraction(x) });
      expect(warmest).toBeGreaterThan(row.number('value') - 0.15);
    },
  );

  it('never lies below the fit, falls with the mass fraction, and lies at most 1.2 K above it up to 40 %', () => {
    fc.assert(
      fc.property(choiceOf(SOLUTIONS), (choice) => {
        const above = warmestFreezingPoint(choice) - freezingPoint(choice);
        expect(above).toBeGreaterThanOrEqual(0);
        if (choice.massFraction <= 0.36) expect(above).toBeLessThan(1.2);
        const more = massFraction(Math.min(choice.massFraction + 0.001, choice.fluid.highestMassFraction));
        if (more > choice.massFraction) expect(warmestFreezingPoint({ ...choice, massFraction: more })).toBeLessThan(warmestFreezingPoint(choice));
      }),
    );
  });

  it('has reason to be: the fit freezes colder than a handbook by more than it is said to for ethanol, glycerol and both glycols', () => {
    const colder = [...FREEZING_LEFT_OUT.keys()].filter((id) => freezingDisagreement(id) < 0);
    expect(new Set(colder.map((id) => id.split(' ')[1]))).toEqual(new Set(['ethylene-glycol', 'ethanol', 'propylene-glycol', 'glycerol']));
  });

  it('is told of where the fit alone reaches the temperature, and by how much it does not', () => {
    const [short] = antifreezeForProtection({ fluid: ETHANOL, protectTo: celsius(-14.6) }).findings;
    expect(short).toMatchObject({ code: 'protection-short-by-a-source', level: 'warning', values: { protectTo: -14.6 } });
    expect(short && describeFinding(short, 'metric')).toContain('by the warmest it freezes at −14.1 °C, 0.5 K above');
  });

  it('needs no antifreeze from 0 °C on, though a fit may freeze water a little above', () => {
    for (const fluid of LIQUIDS) {
      for (const t of [0, 0.005, 4]) expect(antifreezeForProtection({ fluid, protectTo: celsius(t) }).neededVolumeFraction).toBe(0);
      expect(Math.abs(freezingPoint({ fluid, massFraction: massFraction(0) }))).toBeLessThan(0.05);
    }
  });

  it('asks for more antifreeze by the warmest source, never for less, and says so', () => {
    fc.assert(
      fc.property(fc.constantFrom(...LIQUIDS), fc.double({ min: -25, max: 3, noNaN: true }), (fluid, t) => {
        const [fit, warmest] = (['fit', 'warmest source'] as const).map((freezingRule) =>
          antifreezeForProtection({ fluid, protectTo: celsius(t), freezingRule }),
        );
        expect(warmest?.volumeFraction).toBeGreaterThanOrEqual(fit?.volumeFraction ?? NaN);
        expect(fit?.volumeFraction).toBeGreaterThanOrEqual(fluid.inhibitorFloor);
        expect(warmest?.findings).toEqual([]);
        if (t >= 0) {
          expect([fit?.neededVolumeFraction, warmest?.neededVolumeFraction]).toEqual([0, 0]);
          return;
        }
        expect(warmest?.warmestFreezingPoint).toBeLessThanOrEqual(t);
        expect(fit?.freezingPoint).toBeLessThanOrEqual(t);
        expect(fit?.findings.length).toBe((fit?.warmestFreezingPoint ?? NaN) > t + 1e-9 ? 1 : 0);
      }),
    );
  });

  it('refuses bad input', () => {
    refuses<FluidChoice>(warmestFreezingPoint, fluidChoiceShape, { fluid: 'propylene-glycol', massFraction: massPercent(25) });
  });
});

describe('fluidPropertyBands', () => {
  it('holds the fluid as computed, and the viscosity ± 15 % in the cold and ± 5 % in the warm, never wider as it warms', () => {
    const band = (t: number): number => {
      const { viscosity } = fluidPropertyBands({ fluid: METHANOL, massFraction: massPercent(25), temperature: celsius(t) });
      return (viscosity.high - viscosity.low) / viscosity.estimate / 2;
    };
    expect([-10, 0, 5, 12.5, 20, 40].map((t) => Number(band(t).toFixed(9)))).toEqual([0.15, 0.15, 0.15, 0.1, 0.05, 0.05]);
    fc.assert(
      fc.property(conditionOf(ALL_FLUIDS), (of) => {
        const bands = fluidPropertyBands(of);
        expect(bands.expected).toEqual(fluidProperties(of));
        expect(bands.thinnest.viscosity).toBe(bands.viscosity.low);
        expect(bands.thickest).toEqual({ ...bands.expected, viscosity: bands.viscosity.high });
        for (const { low, estimate, high } of [bands.density, bands.viscosity, bands.specificHeat, bands.conductivity, bands.freezingPoint]) {
          expect(low).toBeLessThanOrEqual(estimate);
          expect(estimate).toBeLessThanOrEqual(high);
        }
      }),
    );
  });

  it('lets regime and pressure drop be computed at both ends', () => {
    const { thinnest, thickest } = fluidPropertyBands({ fluid: ETHANOL, massFraction: massPercent(20), temperature: celsius(-2) });
    const of = { pipe: { insideDiameter: diameterMillimetres(26.2) }, flow: litresPerMinute(18) };
    expect(reynoldsNumber({ ...of, fluid: thinnest }) / reynoldsNumber({ ...of, fluid: thickest })).toBeCloseTo(1.15 / 0.85, 9);
    expect(pressureGradient({ ...of, fluid: thickest })).not.toBe(pressureGradient({ ...of, fluid: thinnest }));
  });

  it('refuses bad input', () => {
    refuses<FluidCondition>(fluidPropertyBands, fluidConditionShape, {
      fluid: 'propylene-glycol',
      massFraction: massPercent(25),
      temperature: celsius(0),
    });
  });
});

describe('what a fluid may do', () => {
  it('is marked: three for houses, two for the local code, five for the unit maker', () => {
    const by = (use: string): readonly string[] => ALL_FLUIDS.filter((record) => record.use === use).map(({ name }) => name);
    expect(by('house')).toEqual(['water', 'propylene-glycol', 'ethanol']);
    expect(by('check local code')).toEqual(['ethylene-glycol', 'methanol']);
    expect(by('written consent')).toEqual(['glycerol', 'potassium-carbonate', 'potassium-formate', 'potassium-acetate', 'calcium-chloride']);
  });

  it('raises a finding where permission is needed', () => {
    for (const fluid of ALL_FLUIDS) {
      const x = massPercent(fluid.name === 'water' ? 0 : 28);
      const codes = fluidFindings({ fluid, massFraction: x, temperature: celsius(10) }).map(({ code }) => code);
      expect(codes, fluid.name).toEqual(fluid.use === 'house' ? [] : ['antifreeze-needs-permission']);
    }
  });

  it('calls for the notices that it needs', () => {
    expect(fluidSituations('water')).toEqual([]);
    for (const fluid of SOLUTIONS) {
      const codes = noticesFor(fluidSituations(fluid)).map(({ code }) => code);
      expect(codes).toContain('antifreeze-label');
      expect(codes.includes('ethylene-glycol')).toBe(fluid.name === 'ethylene-glycol');
      expect(codes.includes('alcohol-drums')).toBe(['ethanol', 'methanol'].includes(fluid.name));
      expect(codes.includes('salt-solution')).toBe(fluid.pureDensity === 0);
    }
    refuses<{ readonly fluid: Fluid }>(({ fluid }) => fluidSituations(fluid), { fluid: FLUID_NAMES }, { fluid: 'water' });
  });
});
