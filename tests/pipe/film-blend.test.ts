import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hausenNusseltNumber, nusseltBlend, nusseltNumber, type EntryState, type FilmState } from '../../src/pipe/index.js';
import { ratio, type Shape } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const state = (reynolds: number, prandtl: number): FilmState => ({ reynolds: ratio(reynolds), prandtl: ratio(prandtl) });

/** Mean Nusselt number over a length, wall of one temperature, by implicit steps along a pipe with a parabolic profile of velocity. */
function developed(graetz: number, rings: number, steps: number): number {
  const [width, along] = [1 / rings, 2 / graetz];
  const temperature: number[] = Array.from({ length: rings }, () => 1);
  // (1 − r²) ∂θ/∂x = (1/r) ∂(r ∂θ/∂r)/∂r, with x the length over radius · Re · Pr, which is 2/Gz at the end; steps grow with the root.
  let before = 0;
  for (let step = 1; step <= steps; step += 1) {
    const at = along * (step / steps) ** 2;
    const dx = at - before;
    before = at;
    const upper: number[] = [];
    const right: number[] = [];
    for (let ring = 0; ring < rings; ring += 1) {
      const radius = (ring + 0.5) * width;
      const outward = ring === rings - 1 ? 2 / width ** 2 : (radius + width / 2) / (radius * width ** 2);
      const inward = (radius - width / 2) / (radius * width ** 2);
      const stored = (1 - radius ** 2) / dx;
      const wallSide = ring === rings - 1 ? outward * ((radius + width / 2) / radius) : outward;
      const pivot = stored + wallSide + inward + inward * (upper[ring - 1] ?? 0);
      upper.push(-(ring === rings - 1 ? 0 : outward) / pivot);
      right.push((stored * (temperature[ring] ?? 0) + inward * (right[ring - 1] ?? 0)) / pivot);
    }
    for (let ring = rings - 1; ring >= 0; ring -= 1) temperature[ring] = (right[ring] ?? 0) - (upper[ring] ?? 0) * (temperature[ring + 1] ?? 0);
  }
  let mixed = 0;
  temperature.forEach((each, ring) => {
    const radius = (ring + 0.5) * width;
    mixed += 4 * each * (1 - radius ** 2) * radius * width;
  });
  return (graetz / 4) * Math.log(1 / mixed);
}

describe('nusseltBlend', () => {
  it('is the Nusselt number, between its limits, which meet outside transition', () => {
    fc.assert(
      fc.property(number(0, 1e5), number(1, 500), (reynolds, prandtl) => {
        const blend = nusseltBlend(state(reynolds, prandtl));
        const { nusselt, regime } = nusseltNumber(state(reynolds, prandtl));
        expect([blend.nusselt, blend.regime]).toEqual([nusselt, regime]);
        expect(blend.leastNusselt).toBeLessThanOrEqual(nusselt);
        expect(blend.greatestNusselt).toBeGreaterThanOrEqual(nusselt);
        if (regime !== 'transitional') expect(blend.greatestNusselt).toBe(blend.leastNusselt);
        expect(blend.turbulentShare).toBe({ laminar: 0, transitional: (reynolds - 2300) / 1700, turbulent: 1 }[regime]);
      }),
    );
  });

  it('refuses bad input', () => {
    const shape: Shape<FilmState> = { reynolds: 'ratio', prandtl: 'ratio' };
    refuses(nusseltBlend, shape, state(3000, 10));
    refuses(nusseltBlend, shape, state(1000, 10));
  });
});

describe('hausenNusseltNumber', () => {
  const at = (graetz: number): number => hausenNusseltNumber({ reynolds: ratio(1000), prandtl: ratio(10), lengthRatio: ratio(1e4 / graetz) });

  it('lies by the energy equation along the pipe', () => {
    const off = (graetz: number): number => at(graetz) / developed(graetz, 400, 1600) - 1;
    for (const graetz of [5, 10, 20, 50, 100]) expect(Math.abs(off(graetz))).toBeLessThan(0.02);
    expect(off(500)).toBeGreaterThan(0.02);
    expect(off(500)).toBeLessThan(0.09);
    // The series' first term beyond the entry: 3.657 + Gz/4 · ln(1/0.819).
    expect(developed(10, 400, 1600)).toBeCloseTo(3.657 + 2.5 * Math.log(1 / 0.819), 2);
  });

  it('falls with the length to 3.66, and is near it in a circuit', () => {
    fc.assert(
      fc.property(number(0.02, 1000), number(0.02, 1000), (a, b) => {
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
        expect(at(a)).toBeGreaterThan(3.66);
      }),
    );
    const circuit = hausenNusseltNumber({ reynolds: ratio(1500), prandtl: ratio(45), lengthRatio: ratio(152.4 / 0.0216) });
    expect(circuit).toBeCloseTo(4.2, 2);
  });

  it('refuses bad input and turbulent flow', () => {
    const shape: Shape<EntryState> = { reynolds: 'ratio', prandtl: 'ratio', lengthRatio: 'ratio' };
    refuses(hausenNusseltNumber, shape, { ...state(1000, 10), lengthRatio: ratio(500) });
    expect(() => hausenNusseltNumber({ ...state(3000, 10), lengthRatio: ratio(500) })).toThrow('laminar no longer');
  });
});
