import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hotWaterDemand, hotWaterInputShape, MEDIUM_TAPPING_SHARES, type HotWaterInput } from '../../src/building/index.js';
import { celsius, dayOfYear, fraction, kelvinDifference, kilowattHours, litresPerDay, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { even, household } from './hot-water-house.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const shares = fc.array(between(0.01, 1), { minLength: 24, maxLength: 24 }).map((weights) => {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => fraction(weight / sum));
});
const households: fc.Arbitrary<HotWaterInput> = fc
  .record({
    draw: between(10, 2000),
    hot: between(36, 60),
    mean: between(6, 28),
    amplitude: between(0, 6),
    coldest: between(1, 366),
    loss: between(0, 500),
    hourShares: fc.option(shares, { nil: undefined }),
    away: fc.option(fc.tuple(fc.integer({ min: 1, max: 365 }), fc.integer({ min: 0, max: 40 })), { nil: undefined }),
  })
  .map(({ draw, hot, mean, amplitude, coldest, loss, hourShares, away }) => ({
    draw: { by: 'household', dailyDraw: litresPerDay(draw) },
    hotTemperature: celsius(hot),
    coldWater: { from: 'wave', mean: celsius(mean), amplitude: kelvinDifference(amplitude), coldestDay: dayOfYear(coldest) },
    tankLoss: watts(loss),
    circulationLoss: watts(loss / 3),
    ...(hourShares === undefined ? {} : { hourShares }),
    ...(away === undefined ? {} : { absences: [{ firstDay: dayOfYear(away[0]), lastDay: dayOfYear(Math.min(365, away[0] + away[1])) }] }),
  }));

describe('hotWaterDemand', () => {
  it('adds up: hours to months, months to the year, useful and lost to all', () => {
    fc.assert(
      fc.property(households, (input) => {
        const { loads, months, energy, usefulEnergy, lossEnergy, meanLoad, peakLoad } = hotWaterDemand(input);
        expect(loads).toHaveLength(8760);
        let first = 0;
        months.forEach((month, index) => {
          const count = 24 * Number(DAYS[index]);
          const hourly = loads.slice(first, first + count).reduce((sum, load) => sum + 3600 * load, 0);
          expect(Math.abs(hourly - month.energy)).toBeLessThanOrEqual(1e-12 * energy);
          expect(Math.abs(month.usefulEnergy + month.lossEnergy - month.energy)).toBeLessThanOrEqual(1e-12 * energy);
          first += count;
        });
        expect(Math.abs(usefulEnergy + lossEnergy - energy)).toBeLessThanOrEqual(1e-12 * energy);
        expect(Math.abs(loads.reduce((sum, load) => sum + 3600 * load, 0) - energy)).toBeLessThanOrEqual(1e-12 * energy);
        expect(meanLoad).toBeLessThanOrEqual(peakLoad * (1 + 1e-12));
        expect(loads.every((load) => load >= 0 && load <= peakLoad)).toBe(true);
      }),
      { numRuns: 25 },
    );
  });

  it('is in proportion to the draw, and falls with warmer cold water', () => {
    fc.assert(
      fc.property(between(10, 1000), between(0, 33), between(0.01, 1), (draw, cold, more) => {
        const of = (litres: number, temperature: number): number =>
          hotWaterDemand({ ...even(temperature), draw: { by: 'household', dailyDraw: litresPerDay(litres) } }).usefulEnergy;
        expect(Math.abs(of(2 * draw, cold) / of(draw, cold) - 2)).toBeLessThan(1e-12);
        expect(of(draw, cold + more)).toBeLessThan(of(draw, cold));
      }),
      { numRuns: 20 },
    );
  });

  it('of 200 L from 10 to 50 °C is 9.29 kWh a day; 9.31 with the specific heat of 10 °C throughout', () => {
    const { usefulEnergy } = hotWaterDemand(even(10));
    const day = kilowattHours.of(usefulEnergy) / 365;
    expect(day).toBeCloseTo(9.29, 2);
    // 200 L · 0.9998 kg/L · 4.19 kJ/(kg·K) · 40 K: water between 10 and 50 °C takes 4.18 on the mean.
    expect(Math.abs(day / ((200 * 0.9998 * 4.19 * 40) / 3600) - 1)).toBeLessThan(0.003);
  });

  it('of a wave is, over the year, that of its mean, but for the water’s own properties', () => {
    const wave = hotWaterDemand(household).usefulEnergy;
    expect(Math.abs(wave / hotWaterDemand(even(10)).usefulEnergy - 1)).toBeLessThan(2e-4);
  });

  it('counts what is drawn, and nothing on days away, while the losses go on', () => {
    const absences = [
      { firstDay: dayOfYear(1), lastDay: dayOfYear(31) },
      { firstDay: dayOfYear(20), lastDay: dayOfYear(32) },
    ];
    const { months, drawn, loads } = hotWaterDemand({ ...household, absences });
    expect(months[0]).toMatchObject({ drawn: 0, usefulEnergy: 0, lossEnergy: 75 * 31 * 86_400 });
    expect(drawn).toBeCloseTo(0.2 * (365 - 32), 9);
    expect([loads[0], loads[32 * 24 - 1]]).toEqual([75, 75]);
    expect(loads[32 * 24]).toBeGreaterThan(75);
  });

  it('comes at the hours that it is drawn in', () => {
    const { loads } = hotWaterDemand({ ...even(10), hourShares: MEDIUM_TAPPING_SHARES });
    const flat = hotWaterDemand(even(10)).loads;
    expect(loads[3]).toBe(75);
    expect(Number(loads[7]) - 75).toBeCloseTo(((Number(flat[7]) - 75) * 24 * 1.61) / 5.845, 6);
  });

  it('has a tapping profile whose 23 draws make a day', () => {
    expect(MEDIUM_TAPPING_SHARES).toHaveLength(24);
    expect(MEDIUM_TAPPING_SHARES.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    // 19 small draws of 0.105 kWh, two showers of 1.4, a meal of 0.315 and one of 0.735.
    expect(19 * 0.105 + 2 * 1.4 + 0.315 + 0.735).toBeCloseTo(5.845, 12);
  });
});

describe('findings of hot water', () => {
  const codes = (change: Partial<HotWaterInput>): readonly string[] =>
    hotWaterDemand({ ...household, ...change }).findings.map(({ code, level }) => `${code} ${level}`);

  it('tell of legionella and scalds, and of both between', () => {
    expect(codes({ storageTemperature: celsius(45) })).toEqual(['hot-water-stored-cool warning']);
    expect(codes({ storageTemperature: celsius(50) })).toEqual(['hot-water-stored-cool note']);
    expect(codes({ storageTemperature: celsius(55) })).toEqual(['hot-water-stored-cool note', 'hot-water-scalds warning']);
    expect(codes({ hotTemperature: celsius(60) })).toEqual(['hot-water-scalds warning']);
  });

  it('tell of water hotter than the unit makes it, and how much of its heat is', () => {
    const [, , above] = hotWaterDemand({ ...household, storageTemperature: celsius(58), highestSupply: celsius(50) }).findings;
    expect(above?.code).toBe('hot-water-above-supply');
    expect(above).toMatchObject({ values: { shareAbove: expect.closeTo(8 / 48, 6) } });
    expect(codes({ highestSupply: celsius(50) })).toEqual(['hot-water-stored-cool note']);
  });

  it('tell of a draw that people do not have', () => {
    const draw = (litres: number): HotWaterInput['draw'] => ({ by: 'persons', persons: 2, perPerson: litresPerDay(litres) });
    expect(codes({ draw: draw(150) })).toContain('hot-water-draw-unusual warning');
    expect(codes({ draw: draw(9) })).toContain('hot-water-draw-unusual warning');
    expect(codes({ draw: draw(40) })).not.toContain('hot-water-draw-unusual warning');
  });
});

describe('hot water that cannot be', () => {
  it('is refused by name', () => {
    const full: HotWaterInput = {
      ...household,
      hourShares: MEDIUM_TAPPING_SHARES.map((share) => fraction(share / 2 + 1 / 48)),
      absences: [{ firstDay: dayOfYear(200), lastDay: dayOfYear(214) }],
      storageTemperature: celsius(55),
      highestSupply: celsius(60),
    };
    refuses(hotWaterDemand, hotWaterInputShape, full, {
      more: [{ ...even(10), draw: { by: 'household', dailyDraw: litresPerDay(180) } }],
    });
  });

  it('together is refused too', () => {
    const hourShares = MEDIUM_TAPPING_SHARES.map((share) => fraction(share * 0.9));
    expect(() => hotWaterDemand({ ...household, hourShares })).toThrow('hourShares: 0.9');
    expect(() => hotWaterDemand({ ...household, absences: [{ firstDay: dayOfYear(20), lastDay: dayOfYear(19) }] })).toThrow('absences.0.lastDay');
    expect(() => hotWaterDemand({ ...household, absences: [{ firstDay: dayOfYear(20.5), lastDay: dayOfYear(30) }] })).toThrow('a whole day');
    const coldWater = { from: 'wave', mean: celsius(4), amplitude: kelvinDifference(5), coldestDay: dayOfYear(45) } as const;
    expect(() => hotWaterDemand({ ...household, coldWater })).toThrow('coldWater.amplitude: 5');
  });
});
