import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ETHANOL,
  expectedHydrometer,
  FLUID_NAMES,
  fluidConditionShape,
  freezingPoint,
  fromHydrometer,
  fromRefractometer,
  GLYCEROL,
  hydrometerSampleShape,
  METHANOL,
  refractiveIndex,
  type FluidCondition,
  type HydrometerRead,
  type HydrometerSample,
  type RefractometerRead,
} from '../../src/fluid/index.js';
import { celsius, massPercent, ratio, type Shape } from '../../src/units/index.js';
import { frozenByFit, recordOf, SOLUTIONS } from '../published/fluid.checks.js';
import { refuses } from '../support/bad-input.js';
import { loadFixture } from '../support/fixture.js';
import { inwardOf, LIQUIDS } from './all-fluids.js';

const GLYCOL = 'propylene-glycol';
const indoors = fc.double({ min: 1, max: 40, noNaN: true });

describe('hydrometer', () => {
  it('is read back to the concentration it was asked with, at any temperature and calibration', () => {
    fc.assert(
      fc.property(inwardOf(SOLUTIONS), indoors, fc.double({ min: 0, max: 30, noNaN: true }), (choice, t, calibration) => {
        const at = { temperature: celsius(t), calibratedAt: celsius(calibration) };
        const { density, specificGravity } = expectedHydrometer({ ...choice, ...at });
        expect(density / specificGravity).toBeLessThan(1000);
        const { massFraction, volumeFraction, freezingPoint: freezing } = fromHydrometer({ fluid: choice.fluid, ...at, specificGravity });
        expect(massFraction.estimate).toBeCloseTo(choice.massFraction, 6);
        expect(massFraction.low).toBeLessThanOrEqual(massFraction.estimate);
        expect(massFraction.high).toBeGreaterThanOrEqual(massFraction.estimate);
        expect(freezing.low).toBeLessThanOrEqual(freezing.estimate);
        expect(freezing.high).toBeGreaterThanOrEqual(freezing.estimate);
        expect(volumeFraction === undefined).toBe(choice.fluid.pureDensity === 0);
      }),
    );
  });

  it('means about one per cent of propylene glycol by volume for each 0.001, as practice has it', () => {
    const read = { fluid: GLYCOL, temperature: celsius(20), gravityError: ratio(0) } as const;
    const at = (specificGravity: number): number =>
      fromHydrometer({ ...read, specificGravity: ratio(specificGravity) }).volumeFraction?.estimate ?? NaN;
    expect(100 * (at(1.022) - at(1.021))).toBeCloseTo(1.1, 1);
  });

  it('vouches for less glycol if the product is inhibited, and for nothing when it may be water', () => {
    const read = { fluid: GLYCOL, temperature: celsius(20) } as const;
    const { massFraction, ifInhibited = NaN } = fromHydrometer({ ...read, specificGravity: ratio(1.0215) });
    expect(massFraction.estimate - ifInhibited).toBeCloseTo(0.055, 2);
    expect(fromHydrometer({ ...read, specificGravity: ratio(1.004) }).ifInhibited).toBe(0);
    expect(fromHydrometer({ ...read, fluid: ETHANOL, specificGravity: ratio(0.97) })).not.toHaveProperty('ifInhibited');
  });

  it('reads alcohols as a handbook has their density, to the 0.03 % stated in one digit', () => {
    const rows = loadFixture('fluids-handbook').rows.filter(
      (row) => row.text('fluid') === 'ethanol' && row.text('property') === 'density' && !frozenByFit(row),
    );
    expect(rows.length).toBeGreaterThan(8);
    for (const row of rows) {
      const massFraction = massPercent(100 * row.number('mass_fraction'));
      const { density } = expectedHydrometer({ fluid: recordOf(row), massFraction, temperature: celsius(row.number('t_C')) });
      expect(Math.abs(density / row.number('value') - 1)).toBeLessThan(0.00035);
    }
  });

  it('refuses a cold sample and a reading of no mixture', () => {
    const read = { fluid: METHANOL, temperature: celsius(20), specificGravity: ratio(0.97) };
    expect(() => fromHydrometer({ ...read, temperature: celsius(-3) })).toThrow('bring the sample indoors');
    expect(() => fromHydrometer({ ...read, specificGravity: ratio(1.02) })).toThrow('what methanol from none to the end of its fits reads');
  });

  it('refuses bad input', () => {
    const shape: Shape<HydrometerRead> = {
      fluid: FLUID_NAMES,
      temperature: 'temperature',
      specificGravity: 'ratio',
      calibratedAt: { optional: 'temperature' },
      gravityError: { optional: 'ratio' },
    };
    const at = { fluid: GLYCOL, temperature: celsius(15), calibratedAt: celsius(20) } as const;
    refuses<HydrometerRead>(fromHydrometer, shape, { ...at, specificGravity: ratio(1.02), gravityError: ratio(0.001) });
    refuses<HydrometerSample>(expectedHydrometer, hydrometerSampleShape, { ...at, massFraction: massPercent(25) });
  });
});

describe('refractometer', () => {
  it('is read back to the concentration it was asked with', () => {
    const readable = LIQUIDS.filter(({ name }) => name !== 'methanol');
    fc.assert(
      fc.property(inwardOf(readable), indoors, (choice, t) => {
        const temperature = celsius(t);
        const read = fromRefractometer({ fluid: choice.fluid, temperature, refractiveIndex: refractiveIndex({ ...choice, temperature }) });
        expect(read.massFraction.estimate).toBeCloseTo(choice.massFraction, 6);
        expect(read.freezingPoint.estimate).toBeCloseTo(freezingPoint(choice), 3);
      }),
    );
  });

  it('is good to about one per cent of glycol by mass', () => {
    const { massFraction } = fromRefractometer({ fluid: GLYCOL, temperature: celsius(20), refractiveIndex: ratio(1.3612) });
    expect(100 * (massFraction.high - massFraction.estimate)).toBeCloseTo(1.1, 1);
  });

  it('is no use for methanol, whose index rises by 0.003 for ten per cent and turns', () => {
    const index = (percent: number, t = 20): number =>
      refractiveIndex({ fluid: METHANOL, massFraction: massPercent(percent), temperature: celsius(t) });
    expect(index(20) - index(10)).toBeCloseTo(0.003, 3);
    expect(index(60, 40)).toBeLessThan(index(50, 40));
    expect(() => fromRefractometer({ fluid: METHANOL, temperature: celsius(20), refractiveIndex: ratio(1.339) })).toThrow('use a hydrometer');
  });

  it('knows no index of salts', () => {
    for (const fluid of SOLUTIONS.filter(({ pureDensity }) => pureDensity === 0)) {
      expect(() => refractiveIndex({ fluid, massFraction: massPercent(10), temperature: celsius(20) })).toThrow(
        `fluid: ${fluid.name} is not allowed`,
      );
    }
    expect(() => fromRefractometer({ fluid: GLYCEROL, temperature: celsius(20), refractiveIndex: ratio(1.5) })).toThrow('refractiveIndex');
  });

  it('refuses bad input', () => {
    const shape: Shape<RefractometerRead> = {
      fluid: FLUID_NAMES,
      temperature: 'temperature',
      refractiveIndex: 'ratio',
      indexError: { optional: 'ratio' },
    };
    const at = { fluid: GLYCOL, temperature: celsius(20) } as const;
    refuses<RefractometerRead>(fromRefractometer, shape, { ...at, refractiveIndex: ratio(1.36), indexError: ratio(0.0003) });
    refuses<FluidCondition>(refractiveIndex, fluidConditionShape, { ...at, massFraction: massPercent(25) });
  });
});
