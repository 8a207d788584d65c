import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/errors/index.js';
import {
  ETHANOL,
  FLUID_NAMES,
  fluidConditionShape,
  fluidFacts,
  fluidProperties,
  freezingPoint,
  PROPYLENE_GLYCOL,
  type Fluid,
  type FluidCondition,
  type FluidRecord,
} from '../../src/fluid/index.js';
import { celsius, massFraction, massPercent } from '../../src/units/index.js';
import { LIBRARY_MILLI } from '../published/fluid.checks.js';
import { refuses } from '../support/bad-input.js';
import { loadFixture } from '../support/fixture.js';

const condition = (fluid: Fluid, percent: number, t: number): FluidCondition => ({
  fluid,
  massFraction: massPercent(percent),
  temperature: celsius(t),
});

/** Any fluid at any concentration and temperature that can be computed. */
const anyCondition: fc.Arbitrary<FluidCondition> = fc
  .tuple(fc.constantFrom(...FLUID_NAMES), fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([fluid, along, up]) => {
    const { highestMassFraction, highestTemperature } = fluidFacts(fluid);
    const share = massFraction(along * highestMassFraction);
    const freezes = freezingPoint({ fluid, massFraction: share });
    const temperature = celsius(Math.max(freezes, Math.min(freezes + up * (highestTemperature - freezes), highestTemperature)));
    return { fluid, massFraction: share, temperature };
  });

describe('fluidProperties', () => {
  it('is positive and finite from the freezing point to the end of the fits', () => {
    fc.assert(
      fc.property(anyCondition, (of) => {
        const { density, viscosity, specificHeat, conductivity, ...rest } = fluidProperties(of);
        expect(density).toBeGreaterThan(900);
        expect(density).toBeLessThan(1100);
        expect(viscosity).toBeGreaterThan(2e-4);
        expect(viscosity).toBeLessThan(10);
        expect(specificHeat).toBeGreaterThan(2500);
        expect(specificHeat).toBeLessThan(4300);
        expect(conductivity).toBeGreaterThan(0.2);
        expect(conductivity).toBeLessThan(0.7);
        expect(rest).toEqual({
          massFraction: of.massFraction,
          temperature: of.temperature,
          freezingPoint: freezingPoint({ fluid: of.fluid, massFraction: of.massFraction }),
        });
      }),
    );
  });

  it('lets viscosity fall with temperature', () => {
    fc.assert(
      fc.property(anyCondition, anyCondition, (one, other) => {
        const [cold, warm] = [Math.min(one.temperature, other.temperature), Math.max(one.temperature, other.temperature)];
        fc.pre(warm - cold > 1e-6 && freezingPoint(one) <= cold && warm <= fluidFacts(one.fluid).highestTemperature);
        const at = (t: number): number => fluidProperties({ ...one, temperature: celsius(t) }).viscosity;
        expect(at(warm)).toBeLessThan(at(cold));
      }),
    );
  });

  it('makes more glycol more viscous, a poorer conductor and a smaller store of heat', () => {
    for (let percent = 10; percent < 60; percent += 1) {
      const t = Math.max(0, freezingPoint({ fluid: 'propylene-glycol', massFraction: massPercent(percent) }));
      const [less, more] = [percent, percent + 1].map((each) => fluidProperties(condition('propylene-glycol', each, t)));
      expect(more?.viscosity).toBeGreaterThan(less?.viscosity ?? Infinity);
      expect(more?.conductivity).toBeLessThan(less?.conductivity ?? 0);
      expect(more?.specificHeat).toBeLessThan(less?.specificHeat ?? 0);
    }
  });

  it('meets water as the glycol goes to nothing, as closely as the fits do', () => {
    for (const t of [1, 5, 10, 20, 40]) {
      const water = fluidProperties(condition('water', 0, t));
      const solution = fluidProperties(condition('propylene-glycol', 0, t));
      expect(Math.abs(solution.density / water.density - 1)).toBeLessThan(0.0005);
      expect(Math.abs(solution.viscosity / water.viscosity - 1)).toBeLessThan(0.0125);
      expect(Math.abs(solution.specificHeat / water.specificHeat - 1)).toBeLessThan(0.0015);
      expect(Math.abs(solution.conductivity / water.conductivity - 1)).toBeLessThan(0.0095);
    }
  });

  it('is densest as water near 4 °C', () => {
    const density = (t: number): number => fluidProperties(condition('water', 0, t)).density;
    expect(density(3.98)).toBeGreaterThan(density(3.5));
    expect(density(3.98)).toBeGreaterThan(density(4.5));
    expect(density(3.98)).toBeCloseTo(999.975, 2);
  });

  it('differs from the viscosities of the library that carries the fits by its rounded logarithm of 1000, and by nothing else', () => {
    const rows = loadFixture('fluids-library').rows.filter((row) => row.text('fluid') === 'propylene-glycol');
    const ratios = rows.map((row) => {
      const of = condition('propylene-glycol', row.number('mass_fraction') * 100, row.number('t_C'));
      return row.number('viscosity_Pa_s') / fluidProperties(of).viscosity - 1;
    });
    expect(ratios.length).toBeGreaterThan(40);
    expect(1000 * LIBRARY_MILLI - 1).toBeCloseTo(2.79e-7, 9);
    for (const off of ratios) expect(off).toBeCloseTo(1000 * LIBRARY_MILLI - 1, 12);
  });

  it('divides by IAPWS water where the table of specific gravity at 60 °F divides by water 6e-6 denser', () => {
    const t = (60 - 32) / 1.8;
    const rows = loadFixture('fluids-freeze').rows.filter((row) => row.text('fluid') === 'propylene-glycol');
    const off = rows.map((row) => {
      const glycol = fluidProperties(condition('propylene-glycol', row.number('mass_percent'), t)).density;
      return glycol / fluidProperties(condition('water', 0, t)).density / row.number('SG_15.6_15.6') - 1;
    });
    expect(Math.max(...off)).toBeLessThan(1.1e-5);
    expect(off.reduce((sum, each) => sum + each, 0) / off.length).toBeCloseTo(6e-6, 6);
  });

  it('names the freezing point when asked for ice', () => {
    expect(() => fluidProperties(condition('propylene-glycol', 25, -9.9))).toThrow('mass fraction of 0.250 freezes at -9.8 degC');
    expect(() => fluidProperties(condition('water', 0, -0.1))).toThrow('freezes at 0.0 degC');
  });

  it('refuses antifreeze in water and concentrations beyond the fits', () => {
    expect(() => fluidProperties(condition('water', 20, 10))).toThrow('water holds no antifreeze');
    expect(() => fluidProperties(condition('propylene-glycol', 61, 10))).toThrow('massFraction: 0.61 (mass fraction)');
  });

  it('takes a record in the place of a name, and gives the same', () => {
    const byName = condition('propylene-glycol', 25, 0);
    expect(fluidProperties({ ...byName, fluid: PROPYLENE_GLYCOL })).toEqual(fluidProperties(byName));
  });

  it('refuses a record with a part missing or no number, so that nothing comes back NaN', () => {
    const at = { massFraction: massPercent(20), temperature: celsius(0) };
    for (const key of Object.keys(ETHANOL)) {
      const broken = Object.fromEntries(Object.entries(ETHANOL).filter(([each]) => each !== key)) as unknown as FluidRecord;
      expect(() => fluidProperties({ ...at, fluid: broken }), key).toThrow('a record of this library');
    }
    for (const fluid of [{ ...ETHANOL, density: [[NaN]] }, { ...ETHANOL, density: [] }, { ...ETHANOL, pureDensity: Infinity }, {}, []]) {
      expect(() => fluidProperties({ ...at, fluid: fluid as FluidRecord })).toThrow(InputError);
    }
    expect(() => fluidProperties({ ...at, fluid: null as unknown as FluidRecord })).toThrow('fluid: nothing is not allowed');
  });

  it('refuses bad input', () => {
    refuses<FluidCondition>(fluidProperties, fluidConditionShape, condition('propylene-glycol', 25, 0));
  });
});
