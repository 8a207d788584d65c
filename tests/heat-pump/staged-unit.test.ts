import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cyclingFactor,
  en14825PartLoadFactor,
  partLoadFactor,
  type PerformanceMap,
  performanceMap,
  type StagedState,
  type StagedUnit,
  stagedUnit,
} from '../../src/heat-pump/index.js';
import { celsius, type Fraction, fraction, kilowatts, type Power, ratio, type Temperature, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { anyStaged, between, flat } from './levels.js';
import { inventedCooling, inventedHeating } from './units.js';

const heating = performanceMap({ mode: 'heating', points: inventedHeating });
const twoStage = stagedUnit({ levels: [flat(6, 3.9), flat(9, 3.5)], between: 'stages' });
const inRange = ({ usable }: StagedUnit, share: number): Temperature =>
  celsius(Math.min(usable.highest, usable.lowest + share * (usable.highest - usable.lowest)));
const topAt = ({ levels }: StagedUnit, entering: Temperature): number => levels.at(-1)?.model.continuedAt(entering, entering).capacity ?? Number.NaN;

interface Asked {
  readonly enteringFluid: Temperature;
  readonly load: Power;
  readonly supplyTemperature?: Temperature;
}

describe('stagedUnit', () => {
  it('keeps heat = ground + electricity at any load, fills with auxiliary heat exactly, and its fractions lie from 0 to 1', () => {
    fc.assert(
      fc.property(anyStaged, between(0, 1), between(0, 1.5), (unit, place, share) => {
        const entering = inRange(unit, place);
        const load = watts(share * topAt(unit, entering));
        const state = unit.at(entering, load);
        const { metLoad, unmetLoad, groundHeat, power, cyclingPower, runFraction, heatFraction, levelShare } = state;
        const used = power - cyclingPower;
        expect(Math.abs(metLoad - groundHeat + (unit.mode === 'heating' ? -used : used))).toBeLessThanOrEqual(1e-12 * (load + power));
        expect(metLoad + unmetLoad).toBe(load);
        expect(Math.abs(unmetLoad - Math.max(0, load - topAt(unit, entering)))).toBeLessThanOrEqual(1e-12 * load);
        for (const each of [runFraction, heatFraction, levelShare]) {
          expect(each).toBeGreaterThanOrEqual(0);
          expect(each).toBeLessThanOrEqual(1 + 1e-12);
        }
        expect(cyclingPower).toBeGreaterThanOrEqual(0);
        expect(Object.values(state).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  it('has no jump where a level begins, in electricity, ground heat or fractions', () => {
    const numbers = ({ metLoad, power, groundHeat, runFraction, heatFraction }: StagedState): readonly number[] => [
      metLoad,
      power,
      groundHeat,
      runFraction,
      heatFraction,
    ];
    fc.assert(
      fc.property(anyStaged, between(0, 1), (unit, place) => {
        const entering = inRange(unit, place);
        for (const { model } of unit.levels) {
          const { capacity } = model.continuedAt(entering, entering);
          const [before, after] = [1 - 1e-9, 1 + 1e-9].map((near) => numbers(unit.at(entering, watts(near * capacity))));
          before?.forEach((each, k) => {
            expect(Math.abs(each / (after?.[k] ?? Number.NaN) - 1)).toBeLessThan(1e-6);
          });
        }
      }),
    );
  });

  it('of one level is the map, running the share of the time that meets the load', () => {
    const unit = stagedUnit({ levels: [heating], between: 'stages' });
    fc.assert(
      fc.property(between(-7, 27), between(0, 1), (place, share) => {
        const { capacity, power, groundHeat, cop } = heating.at(celsius(place));
        const state = unit.at(celsius(place), watts(share * capacity));
        expect(state.runFraction).toBeCloseTo(share, 12);
        expect(state.heatFraction).toBeCloseTo(share, 12);
        expect(state.power / (power || 1)).toBeCloseTo(share, 12);
        expect(state.groundHeat / groundHeat).toBeCloseTo(share, 12);
        expect(state.runningHeat).toBe(groundHeat);
        if (share > 1e-6) expect((state.cop ?? Number.NaN) / cop).toBeCloseTo(1, 9);
      }),
    );
  });

  it('loses by cycling below the lowest level only, as much as the factor says, in longer runs', () => {
    const cyclingLoss = (loadRatio: Fraction): ReturnType<typeof ratio> => partLoadFactor({ loadRatio, degradation: fraction(0.25) }).factor;
    const lossy = stagedUnit({ levels: [flat(6, 3.9), flat(9, 3.5)], between: 'stages', cyclingLoss });
    const [bare, lost] = [twoStage, lossy].map((unit) => unit.at(celsius(0), kilowatts(1.5)));
    if (bare === undefined || lost === undefined) throw new Error('two states');
    expect(lost.power / bare.power).toBeCloseTo(1 / 0.8125, 12);
    expect(lost.runFraction).toBeCloseTo(0.25 / 0.8125, 12);
    expect(lost.groundHeat).toBe(bare.groundHeat);
    expect(lost.power - lost.cyclingPower).toBeCloseTo(bare.power, 9);
    expect(lossy.at(celsius(0), kilowatts(7))).toEqual(twoStage.at(celsius(0), kilowatts(7)));
  });

  it('takes the EN form of the loss, whose share of full input may reach the share wanted', () => {
    const cyclingLoss = (loadRatio: Fraction): ReturnType<typeof ratio> => en14825PartLoadFactor({ loadRatio, loadShare: fraction(0.9) });
    const unit = stagedUnit({ levels: [flat(6, 4)], between: 'stages', cyclingLoss });
    expect(unit.at(celsius(0), kilowatts(1.5)).power / 1500).toBeCloseTo(0.9 * 0.25 + 0.1, 12);
    expect(unit.at(celsius(0), watts(0))).toMatchObject({ power: 0, runFraction: 0, groundHeat: 0 });
  });

  it('says without a load no COP, and runs not', () => {
    expect(twoStage.at(celsius(0), watts(0))).toEqual({
      enteringFluid: 0,
      load: 0,
      metLoad: 0,
      unmetLoad: 0,
      levelInUse: 0,
      levelShare: 1,
      runFraction: 0,
      heatFraction: 0,
      power: 0,
      cyclingPower: 0,
      groundHeat: 0,
      runningHeat: 6000 - 6000 / 3.9,
    });
  });

  it('answers where all levels do, and tells of odd and of longer ones', () => {
    const narrow = performanceMap({ mode: 'heating', points: inventedHeating.filter(({ enteringFluid }) => enteringFluid < 12) });
    const double = (map: PerformanceMap): PerformanceMap =>
      performanceMap({
        mode: 'heating',
        points: map.points.map(({ enteringFluid, capacity, cop }) => ({ enteringFluid, capacity: (2 * capacity) as Power, cop })),
      });
    const unit = stagedUnit({ levels: [narrow, double(heating)], between: 'speeds' });
    expect(unit.rated).toEqual({ lowest: -5, highest: 10 });
    expect(unit.findings).toMatchObject([{ code: 'level-ranges-differ', values: { levelInUse: 1, highest: 10 } }]);
    expect(() => unit.at(celsius(13), kilowatts(3))).toThrow('enteringFluid');
    expect(twoStage.findings).toEqual([]);
    expect(stagedUnit({ levels: [flat(6, 3.5), flat(9, 3.9)], between: 'stages' }).findings).toMatchObject([
      { code: 'level-cop-odd', values: { levelInUse: 1, cop: 3.9, lowerCop: 3.5 } },
    ]);
  });

  it('refuses levels that are none', () => {
    const cooling = performanceMap({ mode: 'cooling', points: inventedCooling });
    const apart = performanceMap({
      mode: 'heating',
      points: inventedHeating.map((point) => ({ ...point, enteringFluid: celsius(point.enteringFluid / 2 + 45) })),
    });
    const of = (...levels: readonly PerformanceMap[]): StagedUnit => stagedUnit({ levels, between: 'stages' });
    expect(() => of()).toThrow(expect.objectContaining({ argument: 'levels' }));
    expect(() => of(heating, heating)).toThrow(expect.objectContaining({ code: 'impossible', argument: 'levels.1.model.capacity' }));
    expect(() => of(flat(9, 4), flat(6, 4))).toThrow('6000');
    expect(() => of(flat(2, 4), cooling)).toThrow(expect.objectContaining({ argument: 'levels.1.mode' }));
    expect(() => of(flat(2, 4), apart)).toThrow(expect.objectContaining({ argument: 'levels.1.rated' }));
    // Lower at its cold end alone.
    const crossing = performanceMap({
      mode: 'heating',
      points: [-5, 25].map((place) => ({ enteringFluid: celsius(place), capacity: kilowatts(5.9 + 0.1 * (place + 4)), cop: ratio(4) })),
    });
    expect(() => of(flat(6, 4), crossing)).toThrow('levels.1.model.capacity');
  });

  it('refuses bad input by name', () => {
    refuses<Asked>(
      ({ enteringFluid, load, supplyTemperature }) => twoStage.at(enteringFluid, load, supplyTemperature),
      { enteringFluid: 'temperature', load: 'power', supplyTemperature: { optional: 'temperature' } },
      { enteringFluid: celsius(2), load: kilowatts(7), supplyTemperature: celsius(40) },
    );
    const bad = (input: object): unknown => stagedUnit({ levels: [heating], between: 'stages', ...input });
    for (const [name, value] of [
      ['between', 'none'],
      ['between', 5],
      ['levels', 5],
      ['levels', [5]],
      ['levels', [{ ...heating, mode: 'both' }]],
      ['levels', [{ ...heating, continuedAt: 5 }]],
      ['cyclingLoss', 0.25],
    ] as const)
      expect(() => bad({ [name]: value }), name).toThrow(name);
  });
});

describe('cyclingFactor', () => {
  it('refuses bad input and what no function of a loss returns', () => {
    refuses(({ share }: { readonly share: Fraction }) => cyclingFactor({}, share), { share: 'fraction' }, { share: fraction(0.5) });
    for (const value of [Number.NaN, 0.4, 1.01, -1, Infinity]) {
      expect(() => cyclingFactor({ cyclingLoss: () => ratio(value) }, fraction(0.5))).toThrow('cyclingLoss');
    }
  });
});
