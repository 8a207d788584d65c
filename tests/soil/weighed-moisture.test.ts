import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dryBasis, weighedMoisture, weighedSampleShape, wetBasis, type WeighedSample } from '../../src/soil/index.js';
import { diameterMillimetres, grams, kilograms } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { measuredCores } from './cores.js';
import { scatterOf } from './scatter.js';

const full: WeighedSample = {
  moistMass: grams(512.4),
  dryMass: grams(431.7),
  tareMass: grams(102.3),
  dried: 'oven',
  balanceError: grams(0.5),
  largestParticle: diameterMillimetres(8),
};
const codes = (sample: WeighedSample): readonly string[] => weighedMoisture(sample).findings.map(({ code }) => code);
const arbitraryWeighing = fc.record({
  solids: fc.double({ min: 0.02, max: 5, noNaN: true }),
  water: fc.double({ min: 0, max: 2, noNaN: true }),
  tare: fc.double({ min: 0, max: 1, noNaN: true }),
});

describe('weighedMoisture', () => {
  it('gives both bases of one moisture, and masses that add up', () => {
    fc.assert(
      fc.property(arbitraryWeighing, fc.constantFrom('oven', 'air'), ({ solids, water, tare }, dried) => {
        const found = weighedMoisture({
          moistMass: kilograms(tare + solids * (1 + water)),
          dryMass: kilograms(tare + solids),
          tareMass: kilograms(tare),
          dried,
        });
        expect(wetBasis({ basis: 'dry', value: found.dryBasis })).toBe(found.wetBasis);
        expect(dryBasis({ basis: 'wet', value: found.wetBasis })).toBeCloseTo(found.dryBasis, 9);
        expect(found.waterMass + found.solidsMass).toBeCloseTo(solids * (1 + water), 9);
        expect(found.waterMass / found.solidsMass).toBeCloseTo(found.dryBasis, 9);
      }),
    );
  });

  it.each([
    ['without a container', 240, 200, 0],
    ['in a light tin', 512.4, 431.7, 102.3],
    ['wet, in a heavy dish', 900, 600, 400],
  ] as const)('has the error of a Monte Carlo over the balance, %s', (_, moist, dry, tare) => {
    const { moistureError } = weighedMoisture({ moistMass: grams(moist), dryMass: grams(dry), tareMass: grams(tare), balanceError: grams(1) });
    // A balance that is set to zero with nothing on it has no container to err about.
    const spread = scatterOf((normal) => {
      const [m, d, t] = [moist + normal(), dry + normal(), tare === 0 ? 0 : tare + normal()];
      return (m - d) / (d - t);
    });
    // 20 000 draws tell a standard deviation to 0.5 %; three times that, and what the first order leaves out of a 1 % error.
    expect(spread / moistureError).toBeGreaterThan(0.98);
    expect(spread / moistureError).toBeLessThan(1.02);
  });

  it('errs less with more soil and a better balance', () => {
    fc.assert(
      fc.property(arbitraryWeighing, fc.double({ min: 1.01, max: 10, noNaN: true }), ({ solids, water, tare }, more) => {
        const error = (amount: number, balance: number): number =>
          weighedMoisture({
            moistMass: kilograms(tare + amount * (1 + water)),
            dryMass: kilograms(tare + amount),
            tareMass: kilograms(tare),
            balanceError: kilograms(balance),
          }).moistureError;
        expect(error(solids * more, 0.001)).toBeLessThan(error(solids, 0.001));
        expect(error(solids, 0.001)).toBeLessThan(error(solids, 0.001 * more));
      }),
    );
  });

  it('adds what air-dry soil still holds, as the cores dried at 40 °C do', () => {
    const held = measuredCores.filter((row) => row.text('state') === 'od40').map((row) => row.number('water_dry_basis_pct') / 100);
    const mean = held.reduce((sum, each) => sum + each, 0) / held.length;
    const { dryBasis: none, moistureError } = weighedMoisture({
      moistMass: kilograms(1),
      dryMass: kilograms(1),
      dried: 'air',
      balanceError: grams(0.01),
    });
    expect(held).toHaveLength(27);
    expect(none).toBeCloseTo(mean, 4);
    expect(moistureError).toBeCloseTo(Math.sqrt(held.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (held.length - 1)), 4);
    expect(codes({ ...full, dried: 'air' })).toEqual(['dried-in-air']);
    expect(weighedMoisture({ ...full, dried: 'air' }).dryBasis).toBeGreaterThan(weighedMoisture(full).dryBasis + 0.01);
  });

  it('says when lumps left in a room are no dry soil: two days left 3 to 19 % in the cores', () => {
    const held = measuredCores.filter((row) => row.text('state') === 'airdry2d').map((row) => row.number('water_dry_basis_pct'));
    expect([held.length, Math.min(...held), Math.max(...held)]).toEqual([22, 3.34, 18.88]);
  });

  it('remarks a sample too small for the balance or for its stones', () => {
    expect(codes(full)).toEqual([]);
    const pinch: WeighedSample = { moistMass: grams(24), dryMass: grams(20) };
    expect(codes(pinch)).toEqual(['moisture-weighed-poorly']);
    expect(weighedMoisture(pinch).moistureError).toBeCloseTo(0.078, 3);
    expect(codes({ ...full, largestParticle: diameterMillimetres(30) })).toEqual(['sample-small-for-its-grains']);
  });

  it('refuses bad input', () => {
    refuses<WeighedSample>(weighedMoisture, weighedSampleShape, full, { more: [{ ...full, dried: 'air' }] });
    expect(() => weighedMoisture({ ...full, largestParticle: diameterMillimetres(200) })).toThrow('take stones above 75 mm out');
  });
});
