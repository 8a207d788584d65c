import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dailyExtremeDegreeDays,
  dailyExtremeInputShape,
  degreeDayEnergy,
  degreeDayFuel,
  degreeDayFuelInputShape,
  heatingDayDegreeDays,
  heatingDayInputShape,
} from '../../src/building/index.js';
import { degreeDays } from '../../src/climate/index.js';
import { celsius, days, kelvinDays, ratio, wattsPerKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const anyOutdoor = fc.double({ min: -40, max: 34, noNaN: true });
const anyDay = fc
  .tuple(anyOutdoor, fc.double({ min: 0, max: 30, noNaN: true }))
  .map(([lowest, swing]) => ({ lowest: celsius(lowest), highest: celsius(lowest + swing) }));

describe('dailyExtremeDegreeDays', () => {
  it('keep heating less cooling, never count less by four cases, and rise with the base', () => {
    fc.assert(
      fc.property(anyDay, anyOutdoor, fc.double({ min: 0, max: 3, noNaN: true }), (day, at, more) => {
        const of = (rule: 'middle' | 'four cases', base: number) => dailyExtremeDegreeDays({ rule, ...day, base: celsius(base) });
        for (const rule of ['middle', 'four cases'] as const) {
          const { heating, cooling } = of(rule, at);
          expect(heating - cooling).toBeCloseTo(at - (day.lowest + day.highest) / 2, 9);
          expect(of(rule, at + more).heating).toBeGreaterThanOrEqual(heating - 1e-9);
        }
        expect(of('four cases', at).heating).toBeGreaterThanOrEqual(of('middle', at).heating - 1e-9);
      }),
    );
  });

  it('by four cases come near the integral of a day that swings as a sine', () => {
    const day = { lowest: celsius(8), highest: celsius(18) };
    for (const base of [9, 11, 13, 15, 17]) {
      const hours = Array.from({ length: 2400 }, (_, i) => 13 + 5 * Math.cos((2 * Math.PI * (i + 0.5)) / 2400));
      const integral = hours.reduce((sum, t) => sum + Math.max(0, base - t), 0) / 2400;
      const { heating } = dailyExtremeDegreeDays({ rule: 'four cases', ...day, base: celsius(base) });
      expect(Math.abs(heating - integral)).toBeLessThan(0.37);
    }
  });

  it('refuse bad input by name', () => {
    const day = { highest: celsius(18), lowest: celsius(9), base: celsius(15.5) };
    refuses(dailyExtremeDegreeDays, dailyExtremeInputShape, { rule: 'four cases', ...day }, { more: [{ rule: 'middle', ...day }] });
    expect(() => dailyExtremeDegreeDays({ rule: 'middle', ...day, lowest: celsius(19) })).toThrow('interchanged');
  });
});

describe('heatingDayDegreeDays', () => {
  it('are degree days below the limit and a constant for each heating day, plain ones with the limit indoors', () => {
    fc.assert(
      fc.property(fc.array(anyOutdoor, { minLength: 1, maxLength: 60 }), (means) => {
        const dailyMeans = means.map((mean) => celsius(mean));
        const counted = heatingDayDegreeDays({ dailyMeans, indoor: celsius(20), heatingLimit: celsius(12) });
        const below = degreeDays({ temperatures: dailyMeans, step: days(1), base: celsius(12) }).heating;
        expect(counted.degreeDays).toBeCloseTo(below + 8 * counted.heatingDays, 7);
        const plain = heatingDayDegreeDays({ dailyMeans, indoor: celsius(20), heatingLimit: celsius(20) }).degreeDays;
        expect(plain).toBeCloseTo(degreeDays({ temperatures: dailyMeans, step: days(1), base: celsius(20) }).heating, 7);
      }),
    );
  });

  it('refuse bad input by name', () => {
    refuses(heatingDayDegreeDays, heatingDayInputShape, { dailyMeans: [celsius(3), celsius(14)], indoor: celsius(20), heatingLimit: celsius(12) });
  });
});

describe('degreeDayFuel', () => {
  it('times what is useful of it is the heat', () => {
    const slope = wattsPerKelvin(180);
    expect(0.85 * degreeDayFuel({ slope, degreeDays: kelvinDays(2800), usefulRatio: ratio(0.85) })).toBeCloseTo(
      degreeDayEnergy(slope, kelvinDays(2800)),
      0,
    );
  });

  it('refuses bad input by name', () => {
    refuses(degreeDayFuel, degreeDayFuelInputShape, { slope: wattsPerKelvin(180), degreeDays: kelvinDays(2800), usefulRatio: ratio(0.85) });
  });
});
