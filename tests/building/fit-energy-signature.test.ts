import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  energySignatureShape,
  fitEnergySignature,
  type MeterPeriod,
  type SignatureFitInput,
  signatureFitInputShape,
} from '../../src/building/index.js';
import { celsius, days, fraction, joules, kelvinDays, kelvinDifference, kilowatts, ratio, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { normalNoise } from '../support/noise.js';
import { billsOf, byMonth, fitOf, house, stationHours, withHours } from './bills.js';

const months = byMonth(stationHours('Chicago'));
const exact = billsOf(house, months);
const scattered = billsOf(house, months, 0.05, normalNoise(3));
const fit = fitEnergySignature(fitOf(scattered));
const codes = (input: SignatureFitInput): readonly string[] => fitEnergySignature(input).findings.map(({ code }) => code);
const near = (found: number, expected: number, share = 1e-6): void => {
  expect(Math.abs(found / expected - 1)).toBeLessThan(share);
};

describe('fitEnergySignature', () => {
  it('gives back the house of bills without scatter', () => {
    for (const station of ['Chicago', 'Bologna'] as const) {
      const { slope, balancePoint, baseLoad, fitted } = fitEnergySignature(fitOf(billsOf(house, byMonth(stationHours(station)))));
      near(slope.estimate, house.slope);
      near(balancePoint.estimate, house.balancePoint);
      near(baseLoad.estimate, house.baseLoad);
      for (const { residualEnergy, usefulEnergy } of fitted) expect(Math.abs(residualEnergy)).toBeLessThan(1e-6 * usefulEnergy);
    }
  });

  it('finds no worse a line than a search of every balance point by its own normal equations', () => {
    // Degree days counted hour by hour for each base, and the two equations for base load and slope solved by Cramer's rule.
    const total = months.flat().length;
    const rows = scattered.map(({ delivered }, index) => ({
      load: (0.9 * delivered) / ((months[index]?.length ?? 0) * 3600),
      weight: (months[index]?.length ?? 0) / total,
      hours: months[index] ?? [],
    }));
    const lineOf = (base: number): readonly [squares: number, slope: number, baseLoad: number] => {
      const points = rows.map((row) => ({ ...row, x: row.hours.reduce((sum, t) => sum + Math.max(0, base - t), 0) / row.hours.length }));
      const s = (of: (p: (typeof points)[number]) => number): number => points.reduce((sum, p) => sum + p.weight * of(p), 0);
      const [sx, sy, sxx, sxy] = [s((p) => p.x), s((p) => p.load), s((p) => p.x ** 2), s((p) => p.x * p.load)];
      const slope = (sxy - sx * sy) / (sxx - sx * sx);
      const baseLoad = (sy * sxx - sx * sxy) / (sxx - sx * sx);
      return [s((p) => (p.load - baseLoad - slope * p.x) ** 2), slope, baseLoad];
    };
    const bases = Array.from({ length: 201 }, (_, index) => 10 + index * 0.05);
    const best = bases.reduce((least, base) => (lineOf(base)[0] < lineOf(least)[0] ? base : least));
    expect(Math.abs(fit.balancePoint.estimate - best)).toBeLessThan(0.05);
    const [squares, slope, baseLoad] = lineOf(fit.balancePoint.estimate);
    expect(squares).toBeLessThanOrEqual(lineOf(best)[0]);
    near(fit.slope.estimate, slope, 1e-9);
    near(fit.baseLoad.estimate, baseLoad, 1e-9);
    // The profile: the sum of squares at either end of the band is Smin (1 + t²/ν), with Student's t of nine degrees of freedom and 90 % from a table.
    for (const end of [fit.balancePoint.low, fit.balancePoint.high]) near(lineOf(end)[0] / squares, 1 + 1.833113 ** 2 / 9, 1e-5);
  });

  it('has the standard errors of the linear model about the best line', () => {
    // Residuals shifted along each parameter by finite differences of the fitted line; the covariance by Gauss-Jordan's inverse.
    const { slope, baseLoad, balancePoint, degreesOfFreedom, fitted } = fit;
    const model = (b: number, k: number, base: number): readonly number[] =>
      months.map((hours) => b + (k * hours.reduce((sum, t) => sum + Math.max(0, base - t), 0)) / hours.length);
    const at = [baseLoad.estimate, slope.estimate, balancePoint.estimate] as const;
    const columns = [1e-3, 1e-3, 1e-6].map((step, which) => {
      const moved = at.map((each, i) => each + (i === which ? step : 0));
      const [from, to] = [model(...at), model(moved[0] ?? 0, moved[1] ?? 0, moved[2] ?? 0)];
      return to.map((each, i) => (each - (from[i] ?? 0)) / step);
    });
    const weights = fitted.map(({ time }) => time / 31_536_000);
    const normal = columns.map((a) => columns.map((b) => a.reduce((sum, each, i) => sum + (weights[i] ?? 0) * each * (b[i] ?? 0), 0)));
    const squares = fitted.reduce((sum, { residualEnergy, time }, i) => sum + (weights[i] ?? 0) * (residualEnergy / time) ** 2, 0);
    const variance = inverse(normal).map((row, i) => (row[i] ?? 0) * (squares / degreesOfFreedom));
    near(fit.baseLoadError, Math.sqrt(variance[0] ?? 0), 1e-3);
    near(fit.slopeError * slope.estimate, Math.sqrt(variance[1] ?? 0), 1e-3);
    near(fit.balancePointError, Math.sqrt(variance[2] ?? 0), 1e-3);
  });

  it('scales with the energy, shifts with the weather, and takes the useful heat as a factor', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 50, noNaN: true }), fc.double({ min: -4, max: 4, noNaN: true }), (factor, shift) => {
        const scaled = fitEnergySignature(fitOf(scattered.map((period) => ({ ...period, delivered: joules(factor * period.delivered) }))));
        near(scaled.slope.estimate, factor * fit.slope.estimate, 1e-6);
        near(scaled.baseLoad.high, factor * fit.baseLoad.high, 1e-5);
        near(scaled.balancePoint.estimate, fit.balancePoint.estimate, 1e-6);
        const warmer = scattered.map((period, i) => ({ ...period, weather: withHours((months[i] ?? []).map((t) => celsius(t + shift))) }));
        const shifted = fitEnergySignature(fitOf(warmer));
        near(shifted.slope.estimate, fit.slope.estimate, 1e-4);
        expect(shifted.balancePoint.estimate - fit.balancePoint.estimate).toBeCloseTo(shift, 3);
        near(fitEnergySignature(fitOf(scattered, 0.45)).designLoad.estimate, fit.designLoad.estimate / 2, 1e-6);
      }),
      { numRuns: 10 },
    );
  });

  it('puts an estimated period together with the next that was read, whatever the estimate was', () => {
    const stolen = joules(4e9);
    const estimated = exact.map((period, i): MeterPeriod => {
      if (i === 2) return { ...period, delivered: joules(period.delivered + stolen), reading: 'estimated' };
      return i === 3 ? { ...period, delivered: joules(period.delivered - stolen) } : { ...period, reading: 'read' };
    });
    const { slope, balancePoint, fitted } = fitEnergySignature(fitOf(estimated));
    near(slope.estimate, house.slope);
    near(balancePoint.estimate, house.balancePoint);
    expect(fitted.map(({ merged }) => merged)).toEqual([1, 1, 2, 1, 1, 1, 1, 1, 1, 1, 1]);
    const open = exact.map((period, i): MeterPeriod => (i > 9 ? { ...period, delivered: joules(0), reading: 'estimated' } : period));
    const left = fitEnergySignature(fitOf(open));
    near(left.slope.estimate, house.slope);
    expect(left.findings).toMatchObject([{ code: 'readings-left-out', values: { leftOut: 2 } }]);
  });

  it('fits from degree days on several bases as from hours, and holds the balance point to a single one', () => {
    const onBases = (bases: readonly number[]): readonly MeterPeriod[] =>
      exact.map(({ delivered }, i) => {
        const hours = months[i] ?? [];
        const of = (base: number): number => hours.reduce((sum, t) => sum + Math.max(0, base - t) / 24, 0);
        return {
          delivered,
          weather: {
            from: 'degree days',
            time: days(hours.length / 24),
            onBases: bases.map((base) => ({ base: celsius(base), degreeDays: kelvinDays(of(base)) })),
          },
        };
      });
    near(fitEnergySignature(fitOf(onBases([10, 14, 15, 15.5, 16, 17, 20]))).slope.estimate, house.slope, 1e-4);
    const { balancePoint, slope, findings } = fitEnergySignature(fitOf(onBases([15.5])));
    expect(balancePoint).toMatchObject({ low: 15.5, estimate: 15.5, high: 15.5 });
    near(slope.estimate, house.slope, 1e-9);
    expect(findings).toMatchObject([{ code: 'line-partly-held', values: { baseLoadHeld: false, balancePointHeld: true } }]);
  });

  it('from the mean and hourly spread of each month is within 4 % of the slope and half a kelvin', () => {
    const periods = exact.map(({ delivered }, i): MeterPeriod => {
      const hours = months[i] ?? [];
      const mean = hours.reduce((sum, t) => sum + t, 0) / hours.length;
      const spread = Math.sqrt(hours.reduce((sum, t) => sum + (t - mean) ** 2, 0) / hours.length);
      const weather = {
        from: 'mean and spread',
        time: days(hours.length / 24),
        meanOutdoor: celsius(mean),
        spread: kelvinDifference(spread),
      } as const;
      return { delivered, weather };
    });
    const { slope, balancePoint } = fitEnergySignature(fitOf(periods));
    near(slope.estimate, house.slope, 0.04);
    expect(Math.abs(balancePoint.estimate - house.balancePoint)).toBeLessThan(0.5);
  });

  it('gives a line that other calculations take, unless the house would be warm without heat', () => {
    const { signature, slope, loadAtDesign } = fit;
    expect(Object.keys(signature ?? {}).sort()).toEqual(Object.keys(energySignatureShape).sort());
    expect(signature?.loadAtDesign).toBeCloseTo(loadAtDesign.estimate, 6);
    expect(signature?.slope).toBe(slope.estimate);
    expect(fitEnergySignature({ ...fitOf(scattered), indoor: celsius(14) })).not.toHaveProperty('signature');
  });

  it('says what to look at', () => {
    const known = fitOf(scattered);
    expect(codes(known)).toEqual([]);
    expect(codes({ ...known, designLoad: kilowatts(10) })).toEqual([]);
    expect(codes({ ...known, designLoad: kilowatts(15) })).toEqual(['heat-loss-disagrees']);
    expect(codes({ ...known, designLoad: kilowatts(7) })).toEqual(['heat-loss-disagrees']);
    expect(codes({ ...known, usefulHeat: { from: 'assumed', heater: 'condensing boiler' } })).toEqual(['useful-heat-assumed']);
    expect(codes({ ...known, baseLoad: watts(400), balancePoint: celsius(15.5) })).toEqual(['line-partly-held']);
    expect(codes({ ...fitOf(billsOf(house, months, 0.35, normalNoise(12))), balancePoint: celsius(15.5) })).toContain('bills-fit-poorly');
    expect(codes(fitOf(exact.map((period) => ({ ...period, delivered: joules(Math.max(0, period.delivered - 3e9)) }))))).toContain(
      'base-load-below-nothing',
    );
    expect(codes(fitOf(billsOf({ ...house, balancePoint: 9 }, months)))).toEqual(['balance-point-unusual']);
  });

  it('is the wider for a useful heat that is not known well', () => {
    const wide = fitEnergySignature({
      ...fitOf(scattered),
      usefulHeat: { from: 'stated', usefulRatio: ratio(0.9), usefulRatioError: fraction(0.1) },
    });
    expect(wide.slope.high - wide.slope.low).toBeGreaterThan(1.5 * (fit.slope.high - fit.slope.low));
    expect(wide.balancePoint).toEqual(fit.balancePoint);
  });

  it('refuses readings that do not tell the line', () => {
    const said =
      (periods: readonly MeterPeriod[], input: Partial<SignatureFitInput> = {}) =>
      () =>
        fitEnergySignature({ ...fitOf(periods), ...input });
    expect(said(scattered.slice(0, 4))).toThrow('at least 5 that end with a reading');
    expect(said(Array.from({ length: 12 }, () => exact[0] as MeterPeriod))).toThrow('periods of different weather');
    const winter = months.flat().slice(0, 59 * 24);
    const weeks = Array.from({ length: 8 }, (_, week) => winter.slice(168 * week, 168 * week + 168));
    expect(said(billsOf(house, weeks))).toThrow('cold periods and mild ones');
    expect(said(exact.map((period, i) => ({ ...period, delivered: joules(30e9 - (exact[i]?.delivered ?? 0)) })))).toThrow(
      'more heat in colder periods',
    );
    expect(said(billsOf(house, months, 0.9, normalNoise(5)))).toThrow('readings that bound the balance point');
    expect(said(exact, { designOutdoor: celsius(16), indoor: celsius(20) })).toThrow('colder weather than the design outdoor temperature');
  });

  it('refuses bad input by name', () => {
    const short = (period: MeterPeriod, i: number): MeterPeriod => ({
      ...period,
      weather: withHours((months[i] ?? []).filter((_, hour) => hour % 90 === 0)),
      reading: 'read',
    });
    const full: SignatureFitInput = {
      ...fitOf(scattered.map(short)),
      designLoad: kilowatts(10),
      baseLoad: watts(400),
      balancePoint: celsius(15.5),
      coverage: fraction(0.8),
    };
    const told: SignatureFitInput = {
      ...fitOf(
        [-5, 0, 4, 9, 14, 20, 22].map((mean) => ({
          delivered: joules(1e9 + 6e8 * Math.max(0, 16 - mean)),
          weather: { from: 'mean and spread', time: days(30), meanOutdoor: celsius(mean), spread: kelvinDifference(4) },
        })),
      ),
      usefulHeat: { from: 'assumed', heater: 'oil boiler' },
    };
    const counted: SignatureFitInput = {
      ...told,
      periods: [600, 450, 300, 120, 30, 0].map((degreeDays) => ({
        delivered: joules(1e9 + 2e7 * degreeDays),
        weather: { from: 'degree days', time: days(30), onBases: [{ base: celsius(16), degreeDays: kelvinDays(degreeDays) }] },
      })),
    };
    refuses(fitEnergySignature, signatureFitInputShape, full, { more: [told, counted] });
  });
});

/** Inverse of a small matrix by Gauss and Jordan. */
function inverse(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const rows = matrix.map((row, i) => [...row, ...matrix.map((_, j) => Number(i === j))]);
  for (const [i, row] of rows.entries()) {
    const pivot = row[i] ?? 0;
    row.forEach((each, j) => (row[j] = each / pivot));
    for (const [k, other] of rows.entries()) {
      if (k === i) continue;
      const factor = other[i] ?? 0;
      other.forEach((each, j) => (other[j] = each - factor * (row[j] ?? 0)));
    }
  }
  return rows.map((row) => row.slice(matrix.length));
}
