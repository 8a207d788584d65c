import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  exponentialPair,
  groundResponse,
  type GroundSurface,
  type Layout,
  outAndBack,
  outAndBackInputShape,
  type OutAndBackInput,
} from '../../src/ground/index.js';
import { days, diameterMetres, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { e1 } from '../support/line-source.js';
import { layoutOf, soilOf } from './support.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const [K, ALPHA] = [1.5, 6e-7];
const inputOf = (layout: Layout, more: Partial<OutAndBackInput> = {}): OutAndBackInput => ({
  layout,
  pipe: { outsideDiameter: diameterMetres(0.032) },
  soil: soilOf(K, ALPHA),
  ...more,
});
const surfaces: readonly GroundSurface[] = [
  { type: 'isothermal' },
  { type: 'film', coefficient: wattsPerSquareMetreKelvin(10) },
  { type: 'adiabatic' },
];
const places = fc.tuple(between(0.8, 2), between(0.1, 1), between(0, 1), between(10, 3650), fc.constantFrom(...surfaces));

describe('a way out and a way back in one trench', () => {
  it('refuse every impossible field by its name', () => {
    const two = layoutOf(
      [
        [0, 1.2],
        [0, 1.8],
      ],
      3,
      3,
    );
    const more = surfaces.map((surface) => inputOf(two, { surface, selfTerm: 'cylinder', time: days(90) }));
    refuses(outAndBack, outAndBackInputShape, inputOf(two, { surface: { type: 'isothermal' }, selfTerm: 'line', time: days(9) }), { more });
  });

  it('refuse one pipe, three, and a steady state below a sealed surface', () => {
    const three = [0, 0.3, 0.6].map((x): [number, number] => [x, 1.5]);
    for (const pipes of [three, three.slice(0, 1)]) expect(() => outAndBack(inputOf(layoutOf(pipes)))).toThrow(/layout\.pipes.*out and back/u);
    const sealed = inputOf(layoutOf(three.slice(0, 2)), { surface: { type: 'adiabatic' } });
    expect(() => outAndBack(sealed)).toThrow(expect.objectContaining({ code: 'missing', argument: 'time' }));
  });

  it('act on one another as exponential integrals say (8.3 of the chapter takes them so), within the response of both', () => {
    fc.assert(
      fc.property(places, ([depth, apart, down, since, surface]) => {
        const time = days(since);
        const pipes: [number, number][] = [
          [0, depth],
          [apart, depth + down],
        ];
        const [one, exchanged] = [pipes, pipes.toReversed()].map((each) => outAndBack(inputOf(layoutOf(each), { surface, time })));
        const added = surface.type === 'film' ? K / 10 : 0;
        const [square, image] = [apart ** 2 + down ** 2, apart ** 2 + (2 * depth + down + 2 * added) ** 2];
        const line = (distance: number): number => e1(distance / (4 * ALPHA * time));
        const mutual = (line(square) + (surface.type === 'adiabatic' ? 1 : -1) * line(image)) / (4 * Math.PI * K);
        expect(one?.mutualResistance).toBeCloseTo(mutual, 9);
        expect(exchanged?.mutualResistance).toBeCloseTo(mutual, 9);
        expect(exchanged?.groundResistance).toBeCloseTo(one?.groundResistance ?? 0, 9);
        const both = groundResponse(inputOf(layoutOf(pipes), { surface })).riseAfter(time);
        expect(one?.groundResistance).toBeCloseTo(both, 12);
      }),
    );
  });

  it('are how a pair answers together, and half of what it answers apart less, in many trenches', () => {
    fc.assert(
      fc.property(places, fc.integer({ min: 1, max: 6 }), ([depth, apart, , since, surface], trenches) => {
        const layout = layoutOf(
          [
            [0, depth],
            [apart, depth],
          ],
          trenches,
          3,
        );
        const { groundResistance, mutualResistance } = outAndBack(inputOf(layout, { surface, time: days(since) }));
        const pair = exponentialPair(inputOf(layout, { surface }));
        const [together, across] = [pair.together.riseAfter(days(since)), pair.apart.riseAfter(days(since))];
        expect(groundResistance / together).toBeCloseTo(1, 3);
        expect(Math.abs(mutualResistance - (together - across) / 2)).toBeLessThan(3e-4 * together);
      }),
      { numRuns: 20 },
    );
  });

  it('come to rest: what they are after very long', () => {
    const layout = layoutOf(
      [
        [0, 1.2],
        [0, 1.8],
      ],
      4,
      3,
    );
    const [steady, late] = [outAndBack(inputOf(layout)), outAndBack(inputOf(layout, { time: days(1e7) }))];
    expect(late.groundResistance).toBeCloseTo(steady.groundResistance, 5);
    expect(late.mutualResistance).toBeCloseTo(steady.mutualResistance, 5);
  });
});
