import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rootZone, type RootZoneInput } from '../../src/operation/index.js';
import { celsius, metres, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { layoutOf, soilOf } from '../ground/support.js';

const year = Array.from({ length: 365 }, (_, day) => Math.cos((2 * Math.PI * (day - 20)) / 365));
const collector = layoutOf([[0, 1.2]], 61, 0.6);
const base: RootZoneInput = {
  layout: collector,
  soil: soilOf(1.5, 6e-7),
  dailyHeats: year.map((each) => 12 * Math.max(0, each)),
  rootGround: year.map((each) => 10 - 8 * each),
  rootDepth: metres(0.2),
};
const steady = (layout = collector): RootZoneInput => ({
  ...base,
  layout,
  surface: { type: 'film', coefficient: wattsPerSquareMetreKelvin(15) },
  dailyHeats: year.map(() => 12),
});

describe('roots over a loop', () => {
  it('are 4 K colder over 20 W/m² that comes through a film of 15 W/(m²·K) and 0.2 m of soil, 1.3 + 2.7 K', () => {
    // Lines in a field 144 m wide; round its edges comes 1 − 2/π · atan(72/1.2), 1 %.
    const { largestCooling } = rootZone(steady(layoutOf([[0, 1.2]], 241, 0.6)));
    expect(largestCooling / (20 / 15 + (20 * 0.2) / 1.5)).toBeGreaterThan(0.98);
    expect(largestCooling / 4).toBeLessThan(1.001);
  });

  it('come late by as much as they are colder, over the slope of spring', () => {
    const { springDelay, springWithout, springWith, coldestWith, coldestWithout } = rootZone({
      ...base,
      rootGround: year.map((each) => 10 - 8 * each),
    });
    expect(springDelay).toBeGreaterThan(0);
    expect((springDelay ?? 0) / 86_400).toBeCloseTo((springWith ?? 0) - (springWithout ?? 0), 6);
    expect(coldestWith).toBeLessThan(coldestWithout);
    // A shift alone: cold roots by d reach a temperature later by d over the slope.
    const shifted = rootZone({ ...base, dailyHeats: year.map(() => 5) });
    const day = shifted.springWithout ?? Number.NaN;
    const slope = ((8 * 2 * Math.PI) / 365) * Math.sin((2 * Math.PI * (day - 2 - 20)) / 365);
    expect((shifted.springDelay ?? 0) / 86_400 / (shifted.largestCooling / slope)).toBeGreaterThan(0.85);
    expect((shifted.springDelay ?? 0) / 86_400 / (shifted.largestCooling / slope)).toBeLessThan(1.15);
  });

  it('are cooled in proportion to heat, not at all by none, and less by deeper pipes', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 3, noNaN: true }), fc.double({ min: 1, max: 2.5, noNaN: true }), (times, depth) => {
        const one = rootZone({ ...base, layout: layoutOf([[0, depth]], 3, 1) });
        const more = rootZone({ ...base, layout: layoutOf([[0, depth]], 3, 1), dailyHeats: year.map((each) => 12 * times * Math.max(0, each)) });
        expect(more.largestCooling / one.largestCooling).toBeCloseTo(times, 9);
        expect(rootZone({ ...base, layout: layoutOf([[0, depth + 0.3]], 3, 1) }).largestCooling).toBeLessThan(one.largestCooling);
      }),
      { numRuns: 15 },
    );
    const none = rootZone({ ...base, dailyHeats: new Float64Array(365) });
    expect(none).toMatchObject({ largestCooling: 0, springDelay: 0 });
  });

  it('have no spring where they are never cold', () => {
    const { springWithout, springDelay } = rootZone({ ...base, rootGround: year.map((each) => 20 - each) });
    expect(springWithout).toBeUndefined();
    expect(springDelay).toBeUndefined();
  });

  it('refuses what cannot be', () => {
    const wrong =
      (more: Partial<RootZoneInput>): (() => unknown) =>
      () =>
        rootZone({ ...base, ...more });
    expect(wrong({ rootDepth: metres(1.2) })).toThrow('shallowest pipe');
    expect(wrong({ rootDepth: metres(Number.NaN) })).toThrow('rootDepth');
    expect(wrong({ dailyHeats: [1, 2] })).toThrow('dailyHeats');
    expect(wrong({ rootGround: year.map(() => Number.NaN) })).toThrow('rootGround.0');
    expect(wrong({ growthTemperature: celsius(40) })).toThrow('growthTemperature');
    expect(wrong({ layout: { ...collector, pipes: [] } })).toThrow('layout.pipes');
    expect(wrong({ surface: { type: 'film', coefficient: wattsPerSquareMetreKelvin(0) } })).toThrow('coefficient');
  });
});
