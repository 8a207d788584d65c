import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clodDensity,
  coatedClodShape,
  coreDensity,
  coreSampleShape,
  sandConeDensity,
  sandConeTestShape,
  soilPhases,
  waterFilledHoleShape,
  waterReplacementDensity,
  type CoatedClod,
  type CoreSample,
  type InPlaceDensityResult,
  type SandConeTest,
  type WaterFilledHole,
} from '../../src/soil/index.js';
import {
  centimetres,
  diameterInches,
  diameterMillimetres,
  dryBasisFraction,
  dryBasisPercent,
  feet,
  fraction,
  grams,
  kilograms,
  kilogramsPerCubicMetre,
  litres,
  millimetres,
  pounds,
  wetBasisPercent,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { scatterOf } from './scatter.js';

const dug = {
  tareMass: grams(50),
  moisture: { basis: 'dry', value: dryBasisPercent(19) },
  moistureError: dryBasisPercent(1),
  balanceError: grams(1),
  particleDensity: kilogramsPerCubicMetre(2680),
} as const;
const core: CoreSample = {
  ...dug,
  moistMass: grams(50 + 375),
  coreDiameter: diameterMillimetres(50),
  coreLength: centimetres(10),
  rulerError: millimetres(0.5),
};
const cone: SandConeTest = {
  ...dug,
  moistMass: grams(50 + 3200),
  sandBefore: kilograms(6.5),
  sandAfter: kilograms(2.7),
  coneSand: kilograms(1.5),
  sandDensity: kilogramsPerCubicMetre(1400),
  sandDensityError: fraction(0.01),
};
const clod: CoatedClod = {
  ...dug,
  moistMass: grams(50 + 300),
  coatedMass: grams(325),
  coatedMassInWater: grams(140),
  coatingDensity: kilogramsPerCubicMetre(910),
  waterDensity: kilogramsPerCubicMetre(999),
};
const hole: WaterFilledHole = {
  ...dug,
  moistMass: grams(50 + 19_000),
  waterVolume: litres(10.6),
  levelVolume: litres(0.6),
  volumeError: litres(0.15),
};
const wet = { basis: 'wet', value: wetBasisPercent(16) } as const;

describe('density in place', () => {
  it.each<[string, InPlaceDensityResult, (normal: () => number) => number]>([
    [
      'a core',
      coreDensity(core),
      (normal) => (425 + normal() - (50 + normal())) / (1.19 + 0.01 * normal()) / ((5 + 0.05 * normal()) ** 2 * (10 + 0.05 * normal())),
    ],
    [
      'a hole filled with sand',
      sandConeDensity(cone),
      (normal) => {
        const sand = 6500 - 2700 - 1500 + normal() - normal() - normal();
        return ((3250 + normal() - (50 + normal())) / (1.19 + 0.01 * normal()) / sand) * (1.4 + 0.014 * normal());
      },
    ],
    [
      'a clod in wax',
      clodDensity(clod),
      (normal) => {
        const soil = 350 + normal() - (50 + normal());
        const coated = 325 + normal();
        // The densities of coating and water are known to 2 and 0.2 %.
        const volume = (coated - 140 - normal()) / (0.999 * (1 + 0.002 * normal())) - (coated - soil) / (0.91 * (1 + 0.02 * normal()));
        return soil / (1.19 + 0.01 * normal()) / volume;
      },
    ],
    [
      'a hole filled with water',
      waterReplacementDensity(hole),
      (normal) => (19_050 + normal() - (50 + normal())) / (1.19 + 0.01 * normal()) / (10.6 + 0.15 * normal() - (0.6 + 0.15 * normal())),
    ],
  ])('of %s has the error of a Monte Carlo over all readings', (_, { readingError, standardError }, draw) => {
    const ratio = scatterOf((normal) => Math.log(draw(normal))) / readingError;
    // 20 000 draws tell a standard deviation to 0.5 %.
    expect(ratio).toBeGreaterThan(0.98);
    expect(ratio).toBeLessThan(1.02);
    expect(standardError).toBeCloseTo(Math.hypot(readingError, 0.02), 12);
  });

  it('is that of the phases, with water and solids in the moist mass', () => {
    for (const found of [coreDensity(core), sandConeDensity(cone), clodDensity(clod), waterReplacementDensity(hole)]) {
      const { dryDensity, moistDensity, saturation, volume, soilMass } = found;
      expect(moistDensity).toBeCloseTo(soilMass / volume, 8);
      expect(dryDensity * 1.19).toBeCloseTo(moistDensity, 8);
      const { moisture, particleDensity } = dug;
      expect(saturation).toBe(soilPhases({ dryDensity, moisture, particleDensity }).saturation);
    }
  });

  it('does not care for units, nor for what is twice as much of both mass and volume', () => {
    const plain = coreDensity(core).dryDensity;
    const imperial = coreDensity({
      ...core,
      moistMass: pounds(pounds.of(core.moistMass)),
      coreDiameter: diameterInches(diameterInches.of(core.coreDiameter)),
      coreLength: feet(feet.of(core.coreLength)),
    });
    expect(imperial.dryDensity).toBeCloseTo(plain, 8);
    expect(coreDensity({ ...core, moistMass: grams(50 + 750), coreLength: centimetres(20) }).dryDensity).toBeCloseTo(plain, 8);
  });

  it('does not depend on the sand in the jar nor on the thickness of a coat that was weighed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true }), (sand, coat) => {
        const more = { sandBefore: kilograms(6.5 + sand), sandAfter: kilograms(2.7 + sand) };
        expect(sandConeDensity({ ...cone, ...more }).dryDensity).toBeCloseTo(sandConeDensity(cone).dryDensity, 6);
        // A gram of wax displaces 999/910 g of water.
        const waxed = { coatedMass: grams(325 + coat), coatedMassInWater: grams(140 + coat * (1 - 999 / 910)) };
        expect(clodDensity({ ...clod, ...waxed }).dryDensity).toBeCloseTo(clodDensity(clod).dryDensity, 6);
      }),
    );
  });

  it('is never known worse by better instruments', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1, noNaN: true }), fc.double({ min: 0.01, max: 1, noNaN: true }), (balance, ruler) => {
        const finer = coreDensity({ ...core, balanceError: grams(balance), rulerError: millimetres(0.5 * ruler) });
        expect(finer.readingError).toBeLessThanOrEqual(coreDensity(core).readingError * (1 + 1e-6));
        expect(finer.standardError).toBeGreaterThan(0.02);
      }),
    );
  });

  it('takes moisture on the wet basis, and no container as none', () => {
    const moisture = { basis: 'wet', value: wetBasisPercent(100 * (0.19 / 1.19)) } as const;
    expect(coreDensity({ ...core, moisture }).dryDensity).toBeCloseTo(coreDensity(core).dryDensity, 8);
    const { tareMass: _, ...bare } = core;
    expect(coreDensity({ ...bare, moistMass: grams(375) }).dryDensity).toBeCloseTo(coreDensity(core).dryDensity, 8);
  });

  it('does not give the moist density that one published test prints, 2.48 t/m³: its own sand, cone and soil make 2.44, and its dry density agrees', () => {
    const printed = sandConeDensity({
      moistMass: grams(15_632.42),
      moisture: { basis: 'dry', value: dryBasisPercent(4.5) },
      sandBefore: grams(16_000),
      sandAfter: grams(4286),
      coneSand: grams(2274 * 1.349),
      sandDensity: kilogramsPerCubicMetre(1349),
    });
    expect(printed.moistDensity).toBeCloseTo(2439, 0);
    expect(printed.dryDensity / 2330).toBeCloseTo(1, 2);
  });

  it('refuses bad input', () => {
    refuses<CoreSample>(coreDensity, coreSampleShape, core, { more: [{ ...core, moisture: wet }] });
    refuses<SandConeTest>(sandConeDensity, sandConeTestShape, cone, { more: [{ ...cone, moisture: wet }] });
    refuses<CoatedClod>(clodDensity, coatedClodShape, clod, { more: [{ ...clod, moisture: wet }] });
    refuses<WaterFilledHole>(waterReplacementDensity, waterFilledHoleShape, hole, { more: [{ ...hole, moisture: wet }] });
  });

  it('refuses a soil denser than any, however heavy its grains, by a name the caller knows', () => {
    const dense = { ...core, moistMass: grams(50 + 620), moisture: { basis: 'dry', value: dryBasisPercent(2) } } as const;
    expect(() => coreDensity({ ...dense, particleDensity: kilogramsPerCubicMetre(5000) })).toThrow(/^moistMass: .* 20 to 2800 kg\/m3/u);
  });

  it('refuses errors that leave nothing of the density', () => {
    expect(() => coreDensity({ ...core, balanceError: grams(400) })).toThrow('measure a larger sample');
    expect(() => sandConeDensity({ ...cone, balanceError: kilograms(9) })).toThrow('balanceError');
    expect(() => coreDensity({ ...core, moisture: { basis: 'dry', value: dryBasisFraction(0.1) }, moistureError: dryBasisFraction(0.9) })).toThrow(
      'balanceError',
    );
  });
});
