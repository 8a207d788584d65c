import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fineEarth, stonySoilShape, wholeSoil, type StonySoil } from '../../src/soil/index.js';
import { dryBasisFraction, dryBasisPercent, kilogramsPerCubicMetre, massFraction, wetBasisPercent } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const soil = fc
  .record({
    density: fc.double({ min: 1000, max: 1900, noNaN: true }),
    filled: fc.double({ min: 0, max: 1, noNaN: true }),
    share: fc.double({ min: 0, max: 0.6, noNaN: true }),
    stone: fc.double({ min: 2300, max: 2750, noNaN: true }),
    onStones: fc.double({ min: 0, max: 0.1, noNaN: true }),
  })
  .map(({ density, filled, share, stone, onStones }) => ({
    dryDensity: kilogramsPerCubicMetre(density),
    moisture: { basis: 'dry', value: dryBasisFraction(filled * (1000 / density - 1000 / 2650)) } as const,
    stoneShare: massFraction(share),
    stoneDensity: kilogramsPerCubicMetre(stone),
    stoneMoisture: dryBasisFraction(onStones),
  }));

describe('stones in a soil', () => {
  it('put in add their mass, volume and water to those of the fine earth', () => {
    fc.assert(
      fc.property(soil, (given) => {
        // A cubic metre of fine earth, and as many stones as the share asks for.
        const fine = given.dryDensity;
        const stones = (fine * given.stoneShare) / (1 - given.stoneShare);
        const volume = 1 + stones / given.stoneDensity;
        const whole = wholeSoil(given);
        expect(whole.dryDensity).toBeCloseTo((fine + stones) / volume, 8);
        expect(whole.moisture).toBeCloseTo((fine * given.moisture.value + stones * given.stoneMoisture) / (fine + stones), 12);
        expect(whole.stoneVolume).toBeCloseTo(stones / given.stoneDensity / volume, 12);
      }),
    );
  });

  it('taken out leave what they were put into', () => {
    fc.assert(
      fc.property(soil, (given) => {
        const { dryDensity, moisture } = wholeSoil(given);
        const fine = fineEarth({ ...given, dryDensity, moisture: { basis: 'dry', value: dryBasisFraction(moisture) } });
        expect(fine.dryDensity).toBeCloseTo(given.dryDensity, 7);
        expect(fine.moisture).toBeCloseTo(given.moisture.value, 9);
      }),
    );
  });

  it('follow the published form of the correction, which is written otherwise (ASTM D4718, recalled)', () => {
    // Percentages, unit weights and a specific gravity: D = 100 D_F G γ / (D_F P_C + G γ P_F), W = w_F P_F + w_C P_C.
    const [fine, gravity, coarse] = [17, 2.6, 35];
    const expected = (100 * fine * gravity * 9.81) / (fine * coarse + gravity * 9.81 * (100 - coarse));
    const whole = wholeSoil({
      dryDensity: kilogramsPerCubicMetre((fine / 9.81) * 1000),
      moisture: { basis: 'dry', value: dryBasisPercent(14) },
      stoneShare: massFraction(coarse / 100),
      stoneDensity: kilogramsPerCubicMetre(1000 * gravity),
      stoneMoisture: dryBasisPercent(2),
    });
    expect((whole.dryDensity * 9.81) / 1000).toBeCloseTo(expected, 9);
    expect(whole.moisture).toBeCloseTo(0.14 * 0.65 + 0.02 * 0.35, 12);
  });

  it('refuse bad input, and to be more than the whole', () => {
    const example: StonySoil = {
      dryDensity: kilogramsPerCubicMetre(1900),
      moisture: { basis: 'dry', value: dryBasisPercent(10) },
      stoneShare: massFraction(0.3),
      stoneDensity: kilogramsPerCubicMetre(2700),
      stoneMoisture: dryBasisPercent(2),
    };
    for (const correct of [fineEarth, wholeSoil]) {
      refuses<StonySoil>(correct, stonySoilShape, example, { more: [{ ...example, moisture: { basis: 'wet', value: wetBasisPercent(9) } }] });
    }
    expect(() => fineEarth({ ...example, dryDensity: kilogramsPerCubicMetre(2200), stoneShare: massFraction(0.2) })).toThrow('the moist one');
    expect(() => fineEarth({ ...example, moisture: { basis: 'dry', value: dryBasisPercent(0.3) } })).toThrow('drier than was said');
    expect(() => fineEarth({ ...example, stoneShare: massFraction(30) })).toThrow('per cent given as a share');
  });
});
