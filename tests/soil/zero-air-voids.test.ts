import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fullestDensity, saturatedMoisture, soilPhases, type PackedSolids, type WetSolids } from '../../src/soil/index.js';
import { moistureShape } from '../../src/states/index.js';
import { dryBasisFraction, dryBasisPercent, kilogramsPerCubicMetre, wetBasisPercent } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const grains = fc.double({ min: 1400, max: 3500, noNaN: true });

describe('the line of zero air voids', () => {
  it('reads back what it was read for, either way, and has no air', () => {
    fc.assert(
      fc.property(grains, fc.double({ min: 0.05, max: 0.79, noNaN: true }), (particle, solids) => {
        const particleDensity = kilogramsPerCubicMetre(particle);
        const dryDensity = kilogramsPerCubicMetre(particle * solids);
        const moisture = { basis: 'dry', value: saturatedMoisture({ dryDensity, particleDensity }) } as const;
        expect(fullestDensity({ moisture, particleDensity })).toBeCloseTo(dryDensity, 8);
        const phases = soilPhases({ dryDensity, particleDensity, moisture });
        expect(phases.airContent).toBeCloseTo(0, 12);
        expect(phases.saturation).toBeCloseTo(1, 12);
        expect(phases.saturatedMoisture).toBe(moisture.value);
      }),
    );
  });

  it('falls with water, and is the grains’ own density without', () => {
    const at = (percent: number): number => fullestDensity({ moisture: { basis: 'dry', value: dryBasisPercent(percent) } });
    expect(at(0)).toBe(2650);
    expect(at(10)).toBeGreaterThan(at(11));
  });

  it('refuses bad input, and soil as dense as its grains', () => {
    const particleDensity = kilogramsPerCubicMetre(2700);
    const example: PackedSolids = { dryDensity: kilogramsPerCubicMetre(1600), particleDensity };
    refuses<PackedSolids>(saturatedMoisture, { dryDensity: 'density', particleDensity: { optional: 'density' } }, example);
    refuses<WetSolids>(
      fullestDensity,
      { moisture: moistureShape, particleDensity: { optional: 'density' } },
      { moisture: { basis: 'dry', value: dryBasisFraction(0.2) }, particleDensity },
      { more: [{ moisture: { basis: 'wet', value: wetBasisPercent(20) } }] },
    );
    expect(() => saturatedMoisture({ dryDensity: kilogramsPerCubicMetre(2700), particleDensity })).toThrow('is the volume right');
  });
});
