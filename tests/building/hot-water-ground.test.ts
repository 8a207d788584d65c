import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  equivalentFullLoadHours,
  heatFraction,
  heatFractionInputShape,
  hotWaterGroundHeat,
  hotWaterGroundInputShape,
  monthlyLoads,
  runFractions,
  unitFullLoadHours,
  unitFullLoadInputShape,
  type HotWaterGroundInput,
} from '../../src/building/index.js';
import { days, hours, joules, kilowattHours, kilowatts, ratio, seconds, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { continental, evenSpread, heating } from './houses.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const twelve = (min: number, max: number): fc.Arbitrary<readonly number[]> => fc.array(between(min, max), { minLength: 12, maxLength: 12 });
const WINTER = [3, 2.6, 2, 1, 0.2, 0, 0, 0, 0.2, 1, 2, 2.8];
const ground = (water: number, others: readonly number[] = WINTER): ReturnType<typeof hotWaterGroundHeat> =>
  hotWaterGroundHeat({
    monthlyHotWater: others.map(() => kilowattHours(water)),
    hotWaterCops: others.map(() => ratio(2.5)),
    otherGroundHeats: others.map((heat) => kilowatts(heat)),
  });

describe('hotWaterGroundHeat', () => {
  it('is heat less electricity in every month and over the year', () => {
    fc.assert(
      fc.property(twelve(0, 1000), twelve(1, 8), twelve(-5000, 5000), (heats, cops, others) => {
        const { months, fromGround, electricEnergy, restShare } = hotWaterGroundHeat({
          monthlyHotWater: heats.map((heat) => kilowattHours(heat)),
          hotWaterCops: cops.map((cop) => ratio(cop)),
          otherGroundHeats: others.map((power) => watts(power)),
        });
        months.forEach((month, index) => {
          const heat = kilowattHours(Number(heats[index]));
          expect(Math.abs(month.fromGround + month.electricEnergy - heat)).toBeLessThanOrEqual(1e-12 * heat);
          expect(Math.abs(month.fromGround - heat * (1 - 1 / Number(cops[index])))).toBeLessThanOrEqual(1e-12 * heat);
          expect(month.meanHeat).toBe(month.hotWaterHeat + Number(others[index]));
        });
        const all = kilowattHours(heats.reduce((sum, heat) => sum + heat, 0));
        expect(Math.abs(fromGround + electricEnergy - all)).toBeLessThanOrEqual(1e-12 * all);
        expect(restShare).toBeGreaterThanOrEqual(0);
        expect(restShare).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('goes on in summer, and says so where it leaves the ground no rest', () => {
    const codes = (water: number, others?: readonly number[]): readonly string[] =>
      ground(water, others).findings.map(({ code, level }) => `${code} ${level}`);
    expect(ground(300).months[6]?.hotWaterHeat).toBeCloseTo((300_000 * 0.6) / 744, 9);
    expect(codes(300)).toEqual([]);
    expect(codes(500)).toEqual(['ground-without-rest note']);
    expect(codes(1500)).toEqual(['ground-without-rest warning']);
    // Cooling gives back more than hot water takes.
    expect(codes(500, [3, 2.6, 2, 1, 0.2, -1, -2, -1, 0.2, 1, 2, 2.8])).toEqual([]);
    expect(ground(500, [3, 2.6, 2, 1, 0.2, -1, -2, -1, 0.2, 1, 2, 2.8])).toMatchObject({ restMonth: 7, restShare: 0 });
    // A house that is heated all year is not what hot water does.
    expect(
      codes(
        100,
        WINTER.map(() => 2),
      ),
    ).toEqual([]);
  });

  it('says nothing of rest where the other heat is not known', () => {
    const { findings, restShare } = hotWaterGroundHeat({
      monthlyHotWater: WINTER.map(() => kilowattHours(500)),
      hotWaterCops: WINTER.map(() => ratio(2)),
    });
    expect([findings, restShare > 0.9]).toEqual([[], true]);
  });

  it('refuses bad input by name', () => {
    refuses<HotWaterGroundInput>(hotWaterGroundHeat, hotWaterGroundInputShape, {
      monthlyHotWater: WINTER.map(() => kilowattHours(300)),
      hotWaterCops: WINTER.map(() => ratio(2.5)),
      otherGroundHeats: WINTER.map((heat) => kilowatts(heat)),
    });
  });
});

describe('heatFraction', () => {
  it('is the run fraction of a unit of one speed', () => {
    const loads = monthlyLoads({ signature: heating, meanOutdoor: continental, spread: evenSpread(6) });
    const full = 9000 * (1 - 1 / 3.5);
    for (const { runFraction, runTime } of runFractions({ loads, capacity: kilowatts(9) }).months) {
      const time = runFraction === 0 ? days(31) : seconds(runTime / runFraction);
      expect(heatFraction({ energy: joules(full * runTime), time, fullGroundHeat: watts(full) })).toBeCloseTo(runFraction, 12);
    }
  });

  it('parts from it where a unit runs at half speed', () => {
    // 3 kW of 6 kW from the ground in 90 % of the month: by time 0.9, by energy 0.45.
    const energy = kilowattHours(0.9 * 720 * 3);
    expect(heatFraction({ energy, time: days(30), fullGroundHeat: kilowatts(6) })).toBeCloseTo(0.45, 12);
  });

  it('lies within 0 and 1 and is in proportion to the heat', () => {
    fc.assert(
      fc.property(between(0, 1), between(1, 1e8), between(0.001, 1e9), (share, time, full) => {
        const of = (part: number): number => heatFraction({ energy: joules(part * time * full), time: seconds(time), fullGroundHeat: watts(full) });
        expect(of(share)).toBeLessThanOrEqual(1);
        expect(Math.abs(of(share) - share)).toBeLessThanOrEqual(1e-12);
      }),
    );
  });

  it('refuses more heat than there is time for, and bad input by name', () => {
    const month = { energy: kilowattHours(1000), time: days(30), fullGroundHeat: kilowatts(6) };
    expect(() => heatFraction({ ...month, energy: kilowattHours(4321) })).toThrow('energy');
    expect(heatFraction({ ...month, energy: kilowattHours(4320) })).toBe(1);
    refuses(heatFraction, heatFractionInputShape, month);
  });
});

describe('unitFullLoadHours', () => {
  const year = {
    spaceEnergy: kilowattHours(16_000),
    ratedSpaceCapacity: kilowatts(8),
    hotWaterEnergy: kilowattHours(3500),
    ratedHotWaterCapacity: kilowatts(7),
  };

  it('adds the hours of both, and is that of the house without hot water', () => {
    expect(hours.of(unitFullLoadHours(year).fullLoadHours)).toBeCloseTo(2000 + 500, 9);
    const dry = unitFullLoadHours({ ...year, hotWaterEnergy: joules(0) });
    expect(dry.fullLoadHours).toBe(equivalentFullLoadHours({ energy: year.spaceEnergy, designLoad: year.ratedSpaceCapacity }));
  });

  it('refuses bad input by name', () => {
    refuses(unitFullLoadHours, unitFullLoadInputShape, year);
  });
});
