import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { effectiveConductivity, layerMeans, soilLayerShape, type SoilLayer } from '../../src/soil/index.js';
import { diameterMillimetres, wattsPerMetreKelvin, type Shape } from '../../src/units/index.js';
import { log, thermal } from '../published/soil-layers.checks.js';
import { refuses } from '../support/bad-input.js';
import { arbitraryLog, pipes } from './logs.js';

describe('layerMeans', () => {
  it('stand in their order', () => {
    fc.assert(
      fc.property(arbitraryLog, (layers) => {
        const { acrossLayers, geometricMean, alongLayers, aroundLine } = layerMeans(layers);
        expect(acrossLayers).toBeLessThanOrEqual(geometricMean * (1 + 1e-12));
        expect(geometricMean).toBeLessThanOrEqual(alongLayers * (1 + 1e-12));
        expect(aroundLine).toBeLessThanOrEqual(alongLayers * (1 + 1e-12));
        expect(acrossLayers).toBeLessThanOrEqual(aroundLine * (1 + 1e-12));
      }),
    );
  });

  it('of equal layers are that conductivity', () => {
    for (const mean of Object.values(layerMeans(log([1.3, 0.7], [1.3, 1.5])))) expect(mean).toBeCloseTo(1.3, 12);
  });

  it('about a line are what a pipe sees in twenty thin layers', () => {
    const layers = log(...Array.from({ length: 20 }, (_, index): readonly [number, number] => [index % 2 === 0 ? 0.8 : 1.6, (index + 1) * 0.1]));
    const { aroundLine } = layerMeans(layers);
    const seen = effectiveConductivity({
      // Below the log the mean goes on, as the layers would.
      layers: [...layers.slice(0, 19), { ...layers[19], thermal: thermal(aroundLine) } as SoilLayer],
      pipes: pipes([0, 1]),
      outsideDiameter: diameterMillimetres(100),
    });
    expect(Math.abs(seen.thermal.conductivity / aroundLine - 1)).toBeLessThan(0.03);
  });

  it('refuse bad input by name', () => {
    const shape: Shape<{ readonly layers: readonly SoilLayer[] }> = { layers: { list: soilLayerShape } };
    const rock: SoilLayer = { ...log([1, 1])[0], ground: 'rock' } as SoilLayer;
    refuses(({ layers }) => layerMeans(layers), shape, { layers: [rock] });
  });
});

describe('effectiveConductivity', () => {
  /** Steady resistance over an interface by mirror images about surface and interface. */
  const byImages = (k1: number, k2: number, depth: number, face: number, radius: number): number => {
    const reflected = (k1 - k2) / (k1 + k2);
    let sum = Math.log((2 * depth) / radius);
    for (let m = 1; m <= 20_000 && Math.abs(reflected) ** m > 1e-15; m += 1) sum += (-reflected) ** m * Math.log(1 - (depth / (m * face)) ** 2);
    return sum / (2 * Math.PI * k1);
  };

  it('finds two layers as mirror images do', () => {
    const k = fc.double({ min: 0.3, max: 3, noNaN: true });
    fc.assert(
      fc.property(k, k, fc.double({ min: 0.6, max: 2, noNaN: true }), fc.double({ min: 1.05, max: 3, noNaN: true }), (k1, k2, depth, further) => {
        const { steadyRise } = effectiveConductivity({
          layers: log([k1, depth * further], [k2, depth * further + 1]),
          pipes: pipes([0, depth]),
          outsideDiameter: diameterMillimetres(32),
        });
        expect(steadyRise / byImages(k1, k2, depth, depth * further, 0.016)).toBeCloseTo(1, 4);
      }),
      { numRuns: 200 },
    );
  });

  it('has the closed forms as its limits, an interface that conducts all or nothing', () => {
    const limit = (k2: number): number =>
      effectiveConductivity({
        layers: [
          { ...log([1, 2])[0], thermal: thermal(1) } as SoilLayer,
          {
            ...log([1, 2], [1, 3])[1],
            thermal: { ...thermal(1), conductivity: wattsPerMetreKelvin(k2), diffusivity: thermal(k2).diffusivity },
          } as SoilLayer,
        ],
        pipes: pipes([0, 1]),
        outsideDiameter: diameterMillimetres(40),
      }).steadyRise;
    expect(limit(100)).toBeCloseTo(Math.log(((2 * 2) / (Math.PI * 0.02)) * Math.sin(Math.PI / 2)) / (2 * Math.PI), 2);
    expect(limit(0.01)).toBeCloseTo(Math.log(((4 * 2) / (Math.PI * 0.02)) * Math.tan(Math.PI / 4)) / (2 * Math.PI), 2);
  });
});
