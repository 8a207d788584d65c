import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loosenedFill, soilThermalProperties, type LoosenedFill, type RefilledSoil } from '../../src/soil/index.js';
import type { SoilThermal } from '../../src/states/index.js';
import { fraction, kilogramsPerCubicMetre, wattsPerMetreKelvin, type Density, type Fraction, type Shape } from '../../src/units/index.js';
import { thermal } from '../published/soil-layers.checks.js';
import { refuses } from '../support/bad-input.js';
import { everyNumberFinite } from '../support/finite.js';
import { arbitrarySoil, sampled } from './arbitrary.js';

const linear = (dryDensity: Density): SoilThermal => thermal(dryDensity / 1000);
const NATIVE = kilogramsPerCubicMetre(1600);

describe('loosenedFill', () => {
  it('has the shares of the native density that are custom, and says so', () => {
    const { firstWinter, settled, findings, sources } = loosenedFill({ nativeDensity: NATIVE, thermalAt: linear });
    const shares = ({ dryDensity: { low, estimate, high } }: LoosenedFill['settled']): readonly number[] =>
      [low, estimate, high].map((each) => Math.round((1000 * each) / NATIVE) / 1000);
    expect(shares(firstWinter)).toEqual([0.8, 0.85, 0.9]);
    expect(shares(settled)).toEqual([0.9, 0.95, 1]);
    expect(firstWinter.conductivity.low).toBeCloseTo(1.28, 9);
    expect(settled.conductivity.high).toBeCloseTo(1.6, 9);
    expect(findings).toEqual([
      { code: 'fill-density-assumed', level: 'note', values: { firstWinterShare: 0.85, settledShare: 0.95 }, source: 'common practice' },
    ]);
    expect(sources).toEqual(['common practice']);
  });

  it('gives the native soil back at its own density', () => {
    const whole = loosenedFill({ nativeDensity: NATIVE, thermalAt: linear, firstWinterShare: fraction(1), settledShare: fraction(1) });
    expect(whole.firstWinter.thermal).toEqual(linear(NATIVE));
    expect(whole.settled).toEqual(whole.firstWinter);
  });

  it('is poorer loosened than settled, with the models of this room, whatever the soil', () => {
    fc.assert(
      fc.property(arbitrarySoil, (soil) => {
        const thermalAt = (dryDensity: Density): SoilThermal => soilThermalProperties(sampled({ ...soil, dryDensity })).thermal;
        fc.pre(soil.saturation > 0.1);
        // Shares short of the native density, at which pores may be full already.
        const fill = loosenedFill({ nativeDensity: kilogramsPerCubicMetre(soil.dryDensity), thermalAt, settledShare: fraction(0.95) });
        expect(everyNumberFinite(fill)).toBe(true);
        expect(fill.firstWinter.thermal.conductivity).toBeLessThanOrEqual(fill.settled.thermal.conductivity);
        const { low, estimate, high } = fill.firstWinter.conductivity;
        expect(low <= estimate && estimate <= high).toBe(true);
      }),
      { numRuns: 50 },
    );
  });

  it('refuses bad input by name, and what the function gives', () => {
    interface Shares {
      readonly nativeDensity: Density;
      readonly firstWinterShare?: Fraction;
      readonly settledShare?: Fraction;
    }
    const shape: Shape<Shares> = { nativeDensity: 'density', firstWinterShare: { optional: 'fraction' }, settledShare: { optional: 'fraction' } };
    const example: Shares = { nativeDensity: NATIVE, firstWinterShare: fraction(0.8), settledShare: fraction(0.9) };
    refuses((soil) => loosenedFill({ ...soil, thermalAt: linear }), shape, example);
    expect(() => loosenedFill({ ...example, settledShare: fraction(0.7), thermalAt: linear })).toThrow('does not grow looser');
    const broken: RefilledSoil = { ...example, thermalAt: (density) => ({ ...linear(density), conductivity: wattsPerMetreKelvin(-1) }) };
    expect(() => loosenedFill(broken)).toThrow('thermalAt.result.conductivity');
    expect(() => Reflect.apply(loosenedFill, undefined, [example])).toThrow('thermalAt');
  });
});
