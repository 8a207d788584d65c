import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { desuperheaterYear, desuperheaterYearInputShape, type DesuperheaterMonthInput, type DesuperheaterYear } from '../../src/heat-pump/index.js';
import { days, electricKilowatts, electricWatts, fraction, kilowattHours, kilowatts, percent, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const point = fc
  .record({ capacity: between(1000, 12_000), part: between(0.15, 0.9) })
  .map(({ capacity, part }) => ({ capacity: watts(capacity), power: electricWatts(capacity * part) }));
const wants = (most: number): fc.Arbitrary<number> => fc.oneof(fc.constant(0), between(1e-3, most));
const house = (most: number): fc.Arbitrary<DesuperheaterMonthInput['heating']> =>
  fc.record({ point, energy: wants(most) }).map(({ point: unit, energy }) => ({ ...unit, energy: kilowattHours(energy) }));
const month: fc.Arbitrary<DesuperheaterMonthInput> = fc
  .record({
    heating: house(9000),
    cooling: fc.option(house(5000), { nil: undefined }),
    water: wants(1500),
    hotWaterDuty: fc.option(point, { nil: undefined }),
  })
  .map(({ heating, cooling, water, hotWaterDuty }) => ({
    time: days(30),
    heating,
    hotWaterEnergy: kilowattHours(water),
    ...(cooling === undefined ? {} : { cooling }),
    ...(hotWaterDuty === undefined ? {} : { hotWaterDuty }),
  }));
const years = fc.array(month, { minLength: 12, maxLength: 12 });

const duty = { capacity: kilowatts(10), power: electricKilowatts(2.5) };
const even = (heat: number, water: number, extra: Partial<DesuperheaterMonthInput> = {}): DesuperheaterYear =>
  desuperheaterYear({
    desuperheaterShare: percent(10),
    months: Array.from({ length: 12 }, () => ({
      time: days(30),
      heating: { ...duty, energy: kilowattHours(heat) },
      hotWaterEnergy: kilowattHours(water),
      ...extra,
    })),
  });

describe('desuperheaterYear', () => {
  it('accounts for every joule of hot water, house, ground and meter', () => {
    fc.assert(
      fc.property(years, between(0, 0.5), (months, share) => {
        const year = desuperheaterYear({ desuperheaterShare: fraction(share), months });
        year.months.forEach((made, index) => {
          const asked = months[index];
          if (asked === undefined) throw new Error('no month');
          const { heating, cooling, hotWaterEnergy, time } = asked;
          const size = 1e-12 * (heating.energy + (cooling?.energy ?? 0) + hotWaterEnergy + 1);
          const parts = made.byHeating + made.byCooling + made.byOwnRun + made.byResistance;
          expect(Math.abs(parts - hotWaterEnergy)).toBeLessThanOrEqual(size);
          const given = made.fromGround + made.electricEnergy + made.cooledEnergy;
          const got = made.heatedEnergy + made.byHeating + made.byCooling + made.byOwnRun + made.toGround;
          expect(Math.abs(given - got)).toBeLessThanOrEqual(1e-12 * (given + got));
          const wanted = heating.energy + (cooling?.energy ?? 0);
          expect(Math.abs(made.heatedEnergy + made.cooledEnergy + made.unmetEnergy - wanted)).toBeLessThanOrEqual(size);
          expect(made.runTime).toBeLessThanOrEqual(time * (1 + 1e-12));
          expect(Math.min(...Object.values(made))).toBeGreaterThanOrEqual(-1e-12 * (given + 1));
          // A run of the desuperheater never takes more than its share of what the condenser gives off.
          expect(made.byHeating).toBeLessThanOrEqual(share * (made.heatedEnergy + made.byHeating) + size);
          expect(made.byCooling).toBeLessThanOrEqual(share * (made.toGround + made.byCooling) + size);
        });
        expect(year.hotWaterShare).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('adds to ground, electricity and auxiliary heat of the winter exactly what it takes', () => {
    fc.assert(
      fc.property(years, between(0, 0.5), (months, share) => {
        const { year } = desuperheaterYear({ desuperheaterShare: fraction(share), months });
        const extra = year.extraFromGround + year.extraElectricEnergy + year.extraUnmetEnergy;
        expect(Math.abs(extra - year.byHeating)).toBeLessThanOrEqual(1e-11 * (year.heatedEnergy + year.byHeating));
      }),
    );
  });

  it('makes no less with a larger share', () => {
    fc.assert(
      fc.property(years, between(0, 0.4), between(0, 0.1), (months, share, more) => {
        const made = (part: number): number => {
          const { year } = desuperheaterYear({ desuperheaterShare: fraction(part), months });
          return year.byHeating + year.byCooling;
        };
        expect(made(share + more)).toBeGreaterThanOrEqual(made(share) * (1 - 1e-12));
      }),
    );
  });

  it('without a share leaves the unit as it was, and says nothing', () => {
    const cooling = { ...duty, energy: kilowattHours(1000) };
    const { year, findings, hotWaterShare } = desuperheaterYear({
      desuperheaterShare: fraction(0),
      months: Array.from({ length: 12 }, () => ({
        time: days(30),
        heating: { ...duty, energy: kilowattHours(2000) },
        cooling,
        hotWaterEnergy: kilowattHours(300),
      })),
    });
    expect(kilowattHours.of(year.fromGround)).toBeCloseTo(12 * 1500, 6);
    expect(kilowattHours.of(year.toGround)).toBeCloseTo(12 * 1250, 6);
    expect(kilowattHours.of(year.byResistance)).toBeCloseTo(3600, 6);
    expect([findings, hotWaterShare]).toEqual([[], 0]);
  });

  it('costs ground and electricity in winter, auxiliary heat where the unit never stops, and spares the ground in summer', () => {
    const winter = even(1800, 500).year;
    expect(kilowattHours.of(winter.byHeating)).toBeCloseTo(12 * 200, 6);
    expect(kilowattHours.of(winter.extraFromGround)).toBeCloseTo(12 * 150, 6);
    expect(kilowattHours.of(winter.extraUnmetEnergy)).toBe(0);
    const hard = even(7200, 500).year;
    expect(kilowattHours.of(hard.extraUnmetEnergy)).toBeCloseTo(12 * 500, 6);
    expect(hard.extraFromGround).toBe(0);
    const summer = even(0, 500, { cooling: { ...duty, energy: kilowattHours(800) } }).year;
    expect(kilowattHours.of(summer.byCooling)).toBeCloseTo(12 * 100, 6);
    expect(kilowattHours.of(summer.toGround)).toBeCloseTo(12 * 900, 6);
    expect(summer.byHeating).toBe(0);
  });

  it('names the cost of the winter, and none where only summer makes it', () => {
    expect(even(1800, 500).findings.map(({ code }) => code)).toEqual(['desuperheater-not-free']);
    expect(even(0, 500, { cooling: { ...duty, energy: kilowattHours(800) } }).findings).toEqual([]);
  });

  it('lets the unit make the rest in the time that is left, and resistance what is beyond', () => {
    const hotWaterDuty = { capacity: kilowatts(8), power: electricKilowatts(3) };
    const { byOwnRun, byResistance } = even(1800, 500, { hotWaterDuty }).year;
    expect([kilowattHours.of(byOwnRun) / 12, byResistance]).toEqual([expect.closeTo(300, 9), 0]);
    expect(kilowattHours.of(even(7200, 5000, { hotWaterDuty }).year.byOwnRun)).toBe(0);
  });

  it('refuses bad input by name', () => {
    const asked: DesuperheaterMonthInput = {
      time: days(30),
      heating: { ...duty, energy: kilowattHours(1800) },
      cooling: { ...duty, energy: kilowattHours(100) },
      hotWaterEnergy: kilowattHours(300),
      hotWaterDuty: duty,
    };
    const months = Array.from({ length: 12 }, () => asked);
    refuses(desuperheaterYear, desuperheaterYearInputShape, { desuperheaterShare: percent(10), months });
  });
});
