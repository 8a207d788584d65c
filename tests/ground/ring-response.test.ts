import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  exponentialRingResponse,
  finiteTrenchResponse,
  flatOverlappedCoil,
  type GroundSurface,
  type OverlappedCoilSection,
  type RingLayout,
  ringResponse,
  type RingResponse,
  type RingResponseInput,
  ringTrench,
  uprightOverlappedCoil,
} from '../../src/ground/index.js';
import { days, diameterMetres, type Length, metres, seconds, trenchMetres, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { evenPair, type EvenRing } from '../support/even-rings.js';
import { layoutOf, responseOf, soilOf } from './support.js';

type Kind = 'flat' | 'upright';
interface Coil {
  readonly kind: Kind;
  readonly diameter: number;
  readonly pitch: number;
  readonly depth: number;
  readonly turns?: number;
  readonly trenches?: number;
  readonly spacing?: number;
  readonly back?: readonly [x: number, depth: number];
}
const RADIUS = 0.0134;
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const at = ([x, depth]: readonly [number, number]): { x: Length; depth: Length } => ({ x: metres(x), depth: metres(depth) });
const coilOf = ({ kind, diameter, pitch, depth, turns, trenches = 1, spacing = 4, back }: Coil): RingLayout => {
  const section: OverlappedCoilSection = {
    ringDiameter: metres(diameter),
    pitch: metres(pitch),
    depth: metres(depth),
    trenchSpacing: metres(spacing),
    ...(turns === undefined ? {} : { turns }),
    ...(back === undefined ? {} : { returnPipe: at(back) }),
  };
  return kind === 'flat' ? flatOverlappedCoil({ ...section, trenches }) : uprightOverlappedCoil({ ...section, trenches });
};
const inputOf = (layout: RingLayout, more: Partial<RingResponseInput> = {}): RingResponseInput => ({
  layout,
  pipe: { outsideDiameter: diameterMetres(2 * RADIUS) },
  soil: soilOf(1.2, 6e-7),
  ...more,
});
const rings = (coil: Coil, more: Partial<RingResponseInput> = {}): RingResponse => ringResponse(inputOf(coilOf(coil), more));
const FLAT: Coil = { kind: 'flat', diameter: 0.9144, pitch: 0.254, depth: 1.8288, turns: 10 };
const UPRIGHT: Coil = { kind: 'upright', diameter: 0.9144, pitch: 0.4318, depth: 1.3716, turns: 10 };
const film: GroundSurface = { type: 'film', coefficient: wattsPerSquareMetreKelvin(8) };
const TIMES = [60, 3600, 86400, 30 * 86400, 31557600, 10 * 31557600].map((time) => seconds(time));

const coils: fc.Arbitrary<Coil> = fc.record({
  kind: fc.constantFrom<Kind>('flat', 'upright'),
  diameter: between(0.5, 1.5),
  pitch: between(0.1, 2),
  depth: between(1, 2.5),
  turns: fc.integer({ min: 1, max: 80 }),
  trenches: fc.integer({ min: 1, max: 3 }),
  spacing: between(2, 5),
});
const holds = (property: (coil: Coil) => void, numRuns = 15): void => {
  fc.assert(
    fc.property(coils, (coil) => {
      property(coil);
    }),
    { numRuns },
  );
};

describe('the response of coils', () => {
  it.each<[string, Coil]>([
    ['two flat trenches', { ...FLAT, turns: 3, pitch: 0.7, trenches: 2, spacing: 1.2 }],
    ['two upright trenches', { ...UPRIGHT, turns: 3, trenches: 2, spacing: 0.5 }],
    ['an upright coil just below the surface', { ...UPRIGHT, turns: 2, depth: 0.6 }],
  ])('of %s comes to rest where even points over all pairs of rings say', (_name, coil) => {
    const { kind, diameter, pitch, depth, turns = 1, trenches = 1, spacing = 0 } = coil;
    const all = Array.from({ length: trenches * turns }, (_, index): EvenRing => {
      const trench = Math.floor(index / turns);
      return { centre: [(index % turns) * pitch, trench * spacing, depth], ringRadius: diameter / 2, upright: kind === 'upright' };
    });
    const far = (one: EvenRing, other: EvenRing): boolean =>
      Math.hypot(...one.centre.map((x, axis) => x - (other.centre[axis] ?? 0))) > 1.3 * diameter;
    const others = all.flatMap((wall) =>
      all.filter((source) => source !== wall).map((source) => evenPair(wall, source, RADIUS, false, far(wall, source) ? 60 : 500)),
    );
    const images = all.flatMap((wall) => all.map((source) => evenPair(wall, source, RADIUS, true, depth > 1 ? 60 : 150)));
    const sum = [...others, ...images.map((image) => -image)].reduce((a, b) => a + b, 0) / all.length;
    // A ring alone, far below ground, has no image to speak of.
    const alone = (rings({ ...coil, turns: 1, trenches: 1, depth: 49 }).steadyRise ?? 0) * 4 * Math.PI * 1.2 + (Math.PI * diameter) / 98;
    expect(((rings(coil).steadyRise ?? 0) * 4 * Math.PI * 1.2) / (alone + sum)).toBeCloseTo(1, 4);
  });

  it('grows with time, turns and trenches, and below a film and a sealed surface in this order', () => {
    holds((coil) => {
      const [plain, filmed, sealed] = [rings(coil), rings(coil, { surface: film }), rings(coil, { surface: { type: 'adiabatic' } })];
      const longer = rings({ ...coil, turns: (coil.turns ?? 1) + 1 });
      let before = 0;
      for (const time of TIMES) {
        const rise = plain.riseAfter(time);
        expect(rise).toBeGreaterThan(before);
        expect(filmed.riseAfter(time)).toBeGreaterThanOrEqual(rise * (1 - 1e-12));
        expect(sealed.riseAfter(time)).toBeGreaterThanOrEqual(filmed.riseAfter(time) * (1 - 1e-12));
        expect(longer.riseAfter(time)).toBeGreaterThanOrEqual(rise * (1 - 1e-4));
        expect(plain.riseAfter(time)).toBeGreaterThanOrEqual(rings({ ...coil, trenches: 1 }).riseAfter(time) * (1 - 1e-9));
        before = rise;
      }
      expect(plain.steadyRise ?? 0).toBeGreaterThan(before * (1 - 1e-6));
      expect(sealed.steadyRise).toBeUndefined();
      expect(plain.riseAfter(seconds(0))).toBe(0);
    });
  });

  it('is unchanged when lengths are scaled with the root of the diffusivity, and goes with 1/conductivity', () => {
    fc.assert(
      fc.property(coils, between(0.6, 1.6), (coil, c) => {
        fc.pre(coil.pitch * c > 0.05);
        const scaled = { ...coil, diameter: c * coil.diameter, pitch: c * coil.pitch, depth: c * coil.depth, spacing: c * (coil.spacing ?? 4) };
        const pipe = { outsideDiameter: diameterMetres(2 * RADIUS * c) };
        const [plain, bigger] = [rings(coil), rings(scaled, { pipe, soil: soilOf(1.2 * c, 6e-7 * c * c) })];
        for (const time of TIMES) expect((bigger.riseAfter(time) * c) / plain.riseAfter(time)).toBeCloseTo(1, 3);
        expect(((bigger.steadyRise ?? 0) * c) / (plain.steadyRise ?? 1)).toBeCloseTo(1, 6);
      }),
      { numRuns: 15 },
    );
  });

  it('of rings, and of trenches, far apart is that of one', () => {
    for (const coil of [FLAT, UPRIGHT]) {
      const one = rings({ ...coil, turns: 1 }).steadyRise ?? 0;
      const off = (pitch: number): number => (rings({ ...coil, turns: 5, pitch }).steadyRise ?? 0) / one - 1;
      expect(off(20)).toBeLessThan(5e-3);
      expect(off(20)).toBeLessThan(off(4) / 20);
      const trench = rings(coil).steadyRise ?? 0;
      const beside = (spacing: number): number => (rings({ ...coil, trenches: 4, spacing }).steadyRise ?? 0) / trench - 1;
      expect(beside(40)).toBeLessThan(2e-3);
      expect(beside(40)).toBeLessThan(beside(4) / 50);
    }
  });

  it('tends to that of a coil without end from below, past the rings that are counted one by one without a step', () => {
    for (const coil of [FLAT, UPRIGHT])
      for (const back of [undefined, [0.7, coil.depth] as const]) {
        const of = (turns?: number): number => {
          const { turns: _, ...rest } = coil;
          return rings({ ...rest, ...(turns === undefined ? {} : { turns }), ...(back === undefined ? {} : { back }) }).steadyRise ?? 0;
        };
        const endless = of();
        const lacking = [100, 1000, 10_000, 100_000].map((turns) => 1 - of(turns) / endless);
        for (const [index, lacks] of lacking.entries()) {
          expect(lacks).toBeGreaterThan(0);
          if (index > 0) expect(lacks).toBeLessThan((lacking[index - 1] ?? 0) / 5);
        }
        expect(lacking.at(-1)).toBeLessThan(1e-3);
        // What each further turn adds falls evenly where the sum gives way to an integral, at 48 rings.
        const added = [46, 47, 48, 49, 50].map((turns) => of(turns + 1) - of(turns));
        for (const [index, more] of added.entries()) if (index > 0) expect(more / (added[index - 1] ?? 0)).toBeCloseTo(0.96, 1);
      }
  });

  it('has a return in the mean of all pipe: far off, each by its share', () => {
    for (const coil of [FLAT, UPRIGHT]) {
      const long = { ...coil, turns: 200 };
      const without = rings(long);
      const share = 1 / (without.countedPipePerTrench + 1);
      const length = trenchMetres(200 * coil.pitch);
      const { soil, pipe } = inputOf(coilOf(coil));
      const line = finiteTrenchResponse({ layout: layoutOf([[0, 1.2]]), pipe, soil, trenchLength: length });
      for (const time of [days(1), days(365)]) {
        const apart = without.riseAfter(time) * (1 - share) + line.riseAfter(time) * share;
        expect(rings({ ...long, back: [45, 1.2] }).riseAfter(time) / apart).toBeCloseTo(1, 3);
        expect(rings({ ...long, back: [0.6, 1.2] }).riseAfter(time)).toBeGreaterThan(apart * (1 - 1e-4));
      }
      expect(rings({ ...long, back: [0.6, 1.2] }).countedPipe).toBeCloseTo(200 * (Math.PI * coil.diameter + coil.pitch), 6);
    }
  });

  it.each<[Kind, readonly [number, number]]>([
    ['flat', [0, 1.5]],
    ['flat', [0.6, 1.8]],
    ['upright', [0.1, 1.2]],
    ['upright', [0, 0.9]],
  ])('has a return beside %s rings at %s as the sum over its points says: 0.3 %% high at most for 20 turns', (kind, back) => {
    const [turns, diameter, pitch, depth] = [20, 0.9144, 0.3, kind === 'flat' ? 1.8 : 1.6];
    const coil: Coil = { kind, diameter, pitch, depth, turns };
    const [points, length] = [64, turns * pitch];
    let felt = 0;
    for (let ring = 0; ring < turns; ring += 1)
      for (let point = 0; point < points; point += 1) {
        const angle = (2 * Math.PI * (point + 0.5)) / points;
        const [along, side] = [(ring + 0.5) * pitch + (diameter / 2) * Math.cos(angle), (diameter / 2) * Math.sin(angle)];
        const [x, z] = kind === 'flat' ? [side, depth] : [0, depth + side];
        const lineFrom = (away: number): number => Math.asinh((length - along) / away) + Math.asinh(along / away);
        felt += (lineFrom(Math.hypot(x - back[0], z - back[1])) - lineFrom(Math.hypot(x - back[0], z + back[1]))) / (turns * points);
      }
    const { soil, pipe } = inputOf(coilOf(coil));
    const line = finiteTrenchResponse({ layout: layoutOf([[0, back[1]]]), pipe, soil, trenchLength: trenchMetres(length) }).steadyRise ?? 0;
    const without = rings(coil);
    const circles = without.countedPipePerTrench;
    const exact = (circles * ((without.steadyRise ?? 0) + (2 * felt) / (4 * Math.PI * 1.2)) + line) / (circles + 1);
    const off = (rings({ ...coil, back }).steadyRise ?? 0) / exact - 1;
    expect(off).toBeGreaterThan(0);
    expect(off).toBeLessThan(0.003);
  });

  it('is per metre of trench what it is per metre of pipe over the pipe in it', () => {
    const response = rings({ ...FLAT, trenches: 3 });
    expect(response.countedPipePerTrench).toBeCloseTo((Math.PI * 0.9144) / 0.254, 9);
    expect(response.trenchRiseAfter(days(9)) * response.countedPipePerTrench).toBeCloseTo(response.riseAfter(days(9)), 12);
    expect((response.steadyTrenchRise ?? 0) * response.countedPipePerTrench).toBeCloseTo(response.steadyRise ?? 0, 12);
    expect(response.countedPipe).toBeCloseTo(30 * Math.PI * 0.9144, 9);
    const { turns: _, ...endless } = FLAT;
    expect(rings(endless).countedPipe).toBeUndefined();
  });
});

describe('the response of a closed ring of trench', () => {
  const pipes = [at([-0.3, 1.5]), at([0.3, 1.5]), at([0, 1.1])];
  const ratio = (diameter: number, days_: number): number => {
    const response = ringResponse(inputOf(ringTrench({ ringDiameter: metres(diameter), pipes })));
    const straight = responseOf(layoutOf(pipes.map(({ x, depth }) => [x, depth])), { radius: RADIUS, conductivity: 1.2, diffusivity: 6e-7 });
    return response.riseAfter(days(days_)) / straight.riseAfter(days(days_)) - 1;
  };

  it('tends to that of a straight trench, from above once the far side is felt', () => {
    // The grid of distances and the points on it are good to some 1e-5.
    expect(Math.abs(ratio(1000, 3650))).toBeLessThan(1e-4);
    expect(ratio(12, 3650)).toBeGreaterThan(0.004);
    expect(ratio(12, 3650)).toBeLessThan(0.012);
    expect(ratio(30, 3650)).toBeLessThan(ratio(12, 3650) / 2);
    expect(Math.abs(ratio(12, 1))).toBeLessThan(1e-3);
  });

  it('of one pipe is that of one flat ring', () => {
    fc.assert(
      fc.property(between(1, 5), between(0.5, 3), (diameter, depth) => {
        const ring = ringResponse(inputOf(ringTrench({ ringDiameter: metres(diameter), pipes: [at([0, depth])] })));
        const coil = rings({ kind: 'flat', diameter, pitch: 1, depth, turns: 1 });
        for (const time of TIMES) expect(ring.riseAfter(time) / coil.riseAfter(time)).toBeCloseTo(1, 4);
        expect(ring.countedPipe).toBeCloseTo(coil.countedPipe ?? 0, 9);
      }),
      { numRuns: 20 },
    );
  });
});

describe('rings by exponentials', () => {
  it('follow the response within what the fit says, by positive parts that add up to the steady rise', () => {
    holds((coil) => {
      for (const surface of [film, { type: 'adiabatic' } as const, { type: 'isothermal' } as const]) {
        const input = inputOf(coilOf(coil), { surface });
        const [response, exact] = [exponentialRingResponse(input), ringResponse(input)];
        const { from, to, largestError } = response.fit;
        expect(largestError).toBeLessThan(4e-4);
        for (let i = 0; i <= 60; i += 1) {
          const time = seconds(Math.min(to, from * (to / from) ** (i / 60)));
          expect(Math.abs(response.riseAfter(time) / exact.riseAfter(time) - 1)).toBeLessThan(largestError * 1.1);
        }
        for (const { rise } of response.terms) expect(rise).toBeGreaterThan(0);
        const sum = response.terms.reduce((total, { rise }) => total + rise, 0);
        if (exact.steadyRise !== undefined) expect(sum / exact.steadyRise).toBeCloseTo(1, 8);
      }
    }, 10);
  });

  it('refuse a line as the pipe’s own heat', () => {
    expect(() => exponentialRingResponse(inputOf(coilOf(FLAT), { selfTerm: 'line' }))).toThrow(/selfTerm/u);
  });
});

describe('what is doubtful about rings', () => {
  const codes = (layout: RingLayout): readonly string[] => ringResponse(inputOf(layout)).findings.map(({ code }) => code);

  it('is nothing for one close coil', () => {
    expect(codes(coilOf(FLAT))).toEqual([]);
  });

  it('is pipe between rings drawn wide apart, trenches that warm each other, and lines that lie near', () => {
    expect(codes(coilOf({ ...FLAT, pitch: 1.4224 }))).toEqual(['pipe-between-rings-left-out']);
    expect(codes(coilOf({ ...FLAT, turns: 100, trenches: 3, spacing: 1.5 }))).toEqual(['trenches-warm-each-other']);
    expect(codes(coilOf({ ...UPRIGHT, depth: 0.5 }))).toEqual(['pipes-near-for-line-sources']);
    expect(codes(coilOf({ ...FLAT, back: [0, 1.73] }))).toEqual(['pipes-near-for-line-sources']);
    expect(codes(ringTrench({ ringDiameter: metres(9), pipes: [at([0, 1.5]), at([0.1, 1.5])] }))).toEqual(['pipes-near-for-line-sources']);
  });
});
