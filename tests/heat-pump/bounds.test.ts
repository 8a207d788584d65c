import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkEmitters,
  conditionFindings,
  conditionMap,
  cyclingElectricity,
  extrapolationFindings,
  fitCarnotShare,
  performanceMap,
  ratingAtBoundary,
  speedMixing,
  stagedUnit,
} from '../../src/heat-pump/index.js';
import { celsius, electricWatts, fraction, kelvinDifference, kilowatts, ratio, watts } from '../../src/units/index.js';
import { anyLevels, between, flat } from './levels.js';

/** What a caller without types may hand over. */
const nothing = undefined as never;

describe('fractions', () => {
  it('of a unit of several levels stay within 0 and 1 to the last digit, at full output too', () => {
    fc.assert(
      fc.property(anyLevels, between(0, 1), fc.constantFrom(0.5, 0.999_999_999, 1, 1.000_000_001, 2), (levels, place, of) => {
        const unit = stagedUnit({ levels, between: 'stages', cyclingLoss: (share) => ratio(share * (1 - 5e-13)) });
        const entering = celsius(Math.min(unit.usable.highest, unit.usable.lowest + place * (unit.usable.highest - unit.usable.lowest)));
        for (const { model } of unit.levels) {
          const { capacity } = model.continuedAt(entering, entering);
          const { heatFraction, runFraction, levelShare } = unit.at(entering, watts(of * capacity));
          for (const each of [heatFraction, runFraction, levelShare]) expect(each >= 0 && each <= 1).toBe(true);
        }
      }),
    );
  });
});

describe('a COP beyond any unit', () => {
  const cycling = { capacity: kilowatts(8), power: electricWatts(2000), loadRatio: fraction(0.5) };
  it('is refused of a unit that cycles, as is a load of next to nothing', () => {
    expect(() => cyclingElectricity({ ...cycling, power: electricWatts(1e-300) })).toThrow('power: 1e-300');
    expect(() => cyclingElectricity({ ...cycling, loadRatio: fraction(1e-300) })).toThrow('loadRatio: 1e-300');
    expect(cyclingElectricity({ ...cycling, power: electricWatts(160), loadRatio: fraction(1e-9) }).cop).toBeGreaterThan(0);
  });

  it('is refused of a rating, and of what a boundary leaves of it', () => {
    const rated = { mode: 'heating', capacity: kilowatts(8), power: electricWatts(2000) } as const;
    expect(() => ratingAtBoundary({ ...rated, power: electricWatts(1e-320) })).toThrow('power');
    expect(() => ratingAtBoundary({ ...rated, sourcePumpRated: electricWatts(1999.999) })).toThrow('COP of 50 at most');
    expect(() => ratingAtBoundary({ mode: 'cooling', capacity: watts(100), power: electricWatts(50), loadPumpWanted: electricWatts(100) })).toThrow(
      'loadPumpWanted: 100',
    );
  });
});

describe('what a result is asked with', () => {
  it('is refused by name where it is absent', () => {
    const points = [-5, 5].flatMap((entering) =>
      [35, 55].map((supply) => ({
        enteringFluid: celsius(entering),
        capacity: kilowatts(8 + 0.2 * entering),
        cop: ratio(4 - 0.04 * (supply - 35)),
        supplyTemperature: celsius(supply),
      })),
    );
    const map = conditionMap({ mode: 'heating', points });
    expect(() => map.at(nothing)).toThrow('conditions: nothing');
    expect(() => map.slice(nothing)).toThrow('conditions: nothing');
    const shares = [35, 55].map((warm) => ({ cold: celsius(0), warm: celsius(warm), cop: ratio(0.5 * ((warm + 273.15) / warm)) }));
    const share = fitCarnotShare({ temperaturesOf: 'fluids', ratingOrigin: 'invented', points: shares });
    expect(() => share.copAt(nothing)).toThrow('between: nothing');
    expect(() => share.ratingPoints(nothing)).toThrow('wanted: nothing');
    expect(() => speedMixing(nothing, celsius(0))).toThrow('unit: nothing');
    expect(() => conditionFindings(nothing, { enteringFluid: celsius(0) })).toThrow('map: nothing');
    expect(() => extrapolationFindings(nothing, celsius(0))).toThrow('map: nothing');
    expect(() => extrapolationFindings(flat(8, 4), Number.NaN as never)).toThrow('enteringFluid: NaN');
  });

  it('is refused of an emitter check by the field of the unit', () => {
    const ratedWater = { supplyTemperature: celsius(75), returnTemperature: celsius(65), indoor: celsius(20) };
    const input = {
      emitters: { emitter: 'radiator', ratedOutput: kilowatts(16), ratedWater },
      load: kilowatts(8),
      indoor: celsius(20),
      waterSpread: kelvinDifference(7),
      availableSupply: celsius(55),
    } as const;
    const map = {
      ...performanceMap({ mode: 'heating', points: flat(8, 4).points.map(({ enteringFluid, capacity, cop }) => ({ enteringFluid, capacity, cop })) }),
    };
    expect(() => checkEmitters(input, {} as never)).toThrow('unit.map: nothing');
    expect(() => checkEmitters(input, { map, enteringFluid: Number.NaN } as never)).toThrow('unit.enteringFluid: NaN');
  });
});
