import { describe, expect, it } from 'vitest';
import { TEXTURE_CLASSES, typicalSoil, type TextureClass } from '../../src/soil/index.js';
import { TEXTURES } from '../../src/soil/texture.data.js';
import { refuses } from '../support/bad-input.js';
import { classOf, measuredCores } from './cores.js';

describe('typicalSoil', () => {
  it('has all twelve classes in list and table', () => {
    expect([...TEXTURE_CLASSES].sort()).toEqual(Object.keys(TEXTURES).sort());
    expect(TEXTURE_CLASSES).toHaveLength(12);
  });

  it('meets the density of the measured cores on the mean, to the 10 % it is said to scatter by', () => {
    const cores = [...new Map(measuredCores.map((row) => [row.text('core_id'), row])).values()];
    const logs = cores.map((row) => Math.log(row.number('dry_density_kg_m3') / typicalSoil(classOf(row)).dryDensity));
    const mean = logs.reduce((sum, each) => sum + each, 0) / logs.length;
    const scatter = Math.sqrt(logs.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (logs.length - 1));
    expect(cores).toHaveLength(37);
    expect(mean).toBeCloseTo(-0.007, 3);
    expect(scatter).toBeCloseTo(0.104, 3);
  });

  it('refuses an unknown class', () => {
    refuses<{ readonly texture: TextureClass }>(({ texture }) => typicalSoil(texture), { texture: TEXTURE_CLASSES }, { texture: 'loam' });
  });
});
