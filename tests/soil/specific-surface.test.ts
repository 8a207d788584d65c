import { describe, expect, it } from 'vitest';
import { andersonTiceUnfrozenWater, soilFromEvidence, TEXTURE_CLASSES, type TextureClass, typicalSpecificSurface } from '../../src/soil/index.js';
import { dryBasisPercent } from '../../src/units/index.js';

describe('typicalSpecificSurface', () => {
  it('lies between sand and clay, and rises from sand to clay', () => {
    for (const texture of TEXTURE_CLASSES) {
      expect(typicalSpecificSurface(texture)).toBeGreaterThan(1);
      expect(typicalSpecificSurface(texture)).toBeLessThan(122);
    }
    const order: readonly TextureClass[] = ['sand', 'loamy sand', 'sandy loam', 'silt loam', 'clay loam', 'silty clay', 'clay'];
    const surfaces = order.map(typicalSpecificSurface);
    expect(surfaces).toEqual([...surfaces].sort((one, other) => one - other));
  });

  it('is what soil of evidence keeps its water liquid by', () => {
    for (const texture of TEXTURE_CLASSES) {
      const moisture = { basis: 'dry', value: dryBasisPercent(18) } as const;
      const { sample } = soilFromEvidence({
        from: 'sample',
        texture: { from: 'laboratory', class: texture },
        moisture,
        density: { from: 'texture' },
      });
      if (sample === undefined) throw new Error('no sample');
      const { temperature, unfrozenMoisture } = sample.frozenProperties;
      const specificSurface = typicalSpecificSurface(texture);
      expect(andersonTiceUnfrozenWater({ temperature, moisture, specificSurface }).unfrozenMoisture).toBeCloseTo(unfrozenMoisture, 6);
    }
  });

  it('refuses a class that is none', () => {
    expect(() => typicalSpecificSurface('mud' as TextureClass)).toThrow(/^texture/u);
  });
});
