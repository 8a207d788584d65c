import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SuggestedLimits, suggestLimits, type SuggestLimitsInput, suggestLimitsInputShape } from '../../src/heat-pump/index.js';
import { celsius, kelvinDifference } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const heatingOnly: SuggestLimitsInput = {
  coldestGround: celsius(5),
  heatingDrop: kelvinDifference(3),
  unitLowestEntering: celsius(-5),
  unitLowestLeaving: celsius(-9),
  freezingPoint: celsius(-13),
};
const both: SuggestLimitsInput = { ...heatingOnly, cooling: { warmestGround: celsius(15), unitHighestEntering: celsius(43) } };
const codes = ({ findings }: SuggestedLimits): readonly string[] => findings.map(({ code }) => code).filter((code) => code !== 'limit-unconfirmed');
const limitOf = ({ limits }: SuggestedLimits, name: string): SuggestedLimits['limits'][number] => {
  const found = limits.find(({ limit }) => limit === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};

describe('suggestLimits', () => {
  it('names the reason that binds, and says that nobody has confirmed it', () => {
    const suggested = suggestLimits(both);
    expect(suggested.limits.map(({ limit, reason, confirmed }) => [limit, reason, confirmed])).toEqual([
      ['lowestEntering', 'practice of horizontal loops', false],
      ['lowestLeaving', 'freezing point of the fluid', false],
      ['highestEntering', 'distance from the ground', false],
    ]);
    expect(suggested.limits.map(({ temperature }) => Number(temperature.toFixed(2)))).toEqual([-3.89, -8, 32]);
    expect(suggested.findings.map(({ code }) => code)).toEqual(Array.from({ length: 3 }, () => 'limit-unconfirmed'));
    expect(limitOf(suggestLimits({ ...both, unitLowestEntering: celsius(-1) }), 'lowestEntering').reason).toBe('the unit allows no more');
    expect(limitOf(suggestLimits({ ...both, coldestGround: celsius(10) }), 'lowestEntering')).toMatchObject({
      reason: 'distance from the ground',
      temperature: -1,
    });
    const thin = suggestLimits({ ...both, freezingPoint: celsius(-8), heatingDrop: kelvinDifference(2) });
    expect(limitOf(thin, 'lowestEntering')).toMatchObject({ reason: 'freezing point of the fluid', temperature: 0 });
    const drop = suggestLimits({ ...both, heatingDrop: kelvinDifference(5) });
    expect(limitOf(drop, 'lowestEntering')).toMatchObject({ reason: 'the leaving fluid and the fall through the unit', temperature: -3 });
  });

  it('never goes beyond the unit, keeps the freezing point away, and lets the unit run to its limit', () => {
    const any = fc.record({
      ground: between(0, 20),
      fall: between(0.5, 6),
      unit: between(-12, 8),
      below: between(0.1, 8),
      freezing: between(-40, -0.6),
    });
    fc.assert(
      fc.property(any, between(0, 15), between(25, 60), ({ ground, fall, unit, below, freezing }, warmer, most) => {
        const suggested = suggestLimits({
          coldestGround: celsius(ground),
          heatingDrop: kelvinDifference(fall),
          unitLowestEntering: celsius(unit),
          unitLowestLeaving: celsius(unit - below),
          freezingPoint: celsius(freezing),
          cooling: { warmestGround: celsius(ground + warmer), unitHighestEntering: celsius(most) },
        });
        const [entering, leaving, highest] = ['lowestEntering', 'lowestLeaving', 'highestEntering'].map(
          (name) => limitOf(suggested, name).temperature,
        );
        expect(entering).toBeGreaterThanOrEqual(Math.max(unit, freezing + 8));
        expect(leaving).toBeGreaterThanOrEqual(Math.max(unit - below, freezing + 5));
        expect(highest).toBeLessThanOrEqual(most);
        expect(suggested.designLeaving).toBeGreaterThanOrEqual((leaving ?? NaN) - 1e-9);
        for (const { candidates, reason, temperature } of suggested.limits)
          expect(candidates.find((each) => each.reason === reason)?.temperature).toBe(temperature);
        expect(codes(suggested).filter((code) => code !== 'limit-near-ground' && code !== 'plain-water-possible')).toEqual([]);
      }),
    );
  });

  it('keeps what the user confirmed, with the suggestion beside it, and judges it', () => {
    const confirmed = { lowestEntering: celsius(-2), lowestLeaving: celsius(-6), highestEntering: celsius(32) };
    const good = suggestLimits({ ...both, confirmed });
    expect(good.findings).toEqual([]);
    expect(limitOf(good, 'lowestEntering')).toMatchObject({ confirmed: true, reason: 'given by the user', temperature: -2 });
    // Below −3 °C the fluid would leave colder than the stop just set.
    expect(limitOf(good, 'lowestEntering').suggestion).toBe(-3);
    expect(codes(suggestLimits({ ...both, confirmed: { ...confirmed, lowestEntering: celsius(-5.5), lowestLeaving: celsius(-9.5) } }))).toEqual([
      'limit-beyond-unit',
      'limit-beyond-unit',
      'limit-freezes',
      'limit-freezes',
    ]);
    expect(codes(suggestLimits({ ...both, confirmed: { ...confirmed, lowestLeaving: celsius(-4) } }))).toEqual(['unit-stops-before-limit']);
    expect(codes(suggestLimits({ ...both, confirmed: { ...confirmed, highestEntering: celsius(44) } }))).toEqual(['limit-beyond-unit']);
  });

  it('says when the loop would get absurdly long', () => {
    const confirmed = { lowestEntering: celsius(2.1), lowestLeaving: celsius(-6), highestEntering: celsius(19.9) };
    expect(codes(suggestLimits({ ...both, confirmed }))).toEqual(['limit-near-ground', 'limit-near-ground']);
    expect(codes(suggestLimits({ ...both, confirmed: { ...confirmed, lowestEntering: celsius(2), highestEntering: celsius(20) } }))).toEqual([]);
  });

  it('lets water do where the fluid leaves above 7 °C, and asks for that of water', () => {
    const warm = suggestLimits({
      ...heatingOnly,
      coldestGround: celsius(24),
      unitLowestEntering: celsius(12),
      freezingPoint: celsius(-20),
      unitLowestLeaving: celsius(5),
    });
    expect(warm.plainWater).toBe(true);
    expect(codes(warm)).toEqual(['plain-water-possible']);
    const water = suggestLimits({ ...heatingOnly, coldestGround: celsius(15), freezingPoint: celsius(0), unitLowestLeaving: celsius(-8) });
    expect(limitOf(water, 'lowestLeaving')).toMatchObject({ temperature: 7, reason: 'water without antifreeze' });
    expect(limitOf(water, 'lowestEntering').temperature).toBe(10);
    const short = suggestLimits({
      ...heatingOnly,
      coldestGround: celsius(15),
      freezingPoint: celsius(0),
      confirmed: { lowestLeaving: celsius(5), lowestEntering: celsius(8) },
    });
    expect(codes(short)).toEqual(['limit-freezes']);
  });

  it('refuses limits that cross', () => {
    expect(() => suggestLimits({ ...both, confirmed: { lowestLeaving: celsius(0), lowestEntering: celsius(-1) } })).toThrow(
      'confirmed.lowestLeaving',
    );
    expect(() => suggestLimits({ ...both, confirmed: { lowestEntering: celsius(35), highestEntering: celsius(30) } })).toThrow('confirmed.');
    // Water that must leave above 7 °C, of a unit that cools it by 15 K, beside ground that takes heat up to 22 °C.
    const water = { ...both, coldestGround: celsius(0), freezingPoint: celsius(0), heatingDrop: kelvinDifference(15) };
    expect(() => suggestLimits({ ...water, cooling: { warmestGround: celsius(5), unitHighestEntering: celsius(40) } })).toThrow('coldestGround');
    expect(() => suggestLimits({ ...heatingOnly, confirmed: { highestEntering: celsius(30) } })).toThrow('without cooling');
    expect(() => suggestLimits({ ...heatingOnly, unitLowestLeaving: celsius(-5) })).toThrow('unitLowestLeaving');
  });

  it('refuses bad input by name', () => {
    const confirmed = { lowestEntering: celsius(-2), lowestLeaving: celsius(-6), highestEntering: celsius(32) };
    const all: SuggestLimitsInput = { ...both, confirmed };
    refuses(suggestLimits, suggestLimitsInputShape, all);
  });
});
