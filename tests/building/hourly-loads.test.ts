import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type EnergySignature,
  energySignatureShape,
  equivalentFullLoadHours,
  erbsSpread,
  hourlyLoads,
  type HourlyLoadsInput,
  loadAt,
  monthlyLoads,
} from '../../src/building/index.js';
import { syntheticWeatherYear } from '../../src/climate/index.js';
import { celsius, hours, type Shape, type Temperature, type TemperatureDifference, type Time, wattsPerKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { continental, cooling, evenSpread, heating, maritime } from './houses.js';

const anyTemperatures = fc.array(
  fc.double({ min: -40, max: 45, noNaN: true }).map((outdoor) => celsius(outdoor)),
  { minLength: 1, maxLength: 200 },
);
const anyStep = fc.constantFrom(60, 3600, 86_400).map((seconds) => hours(seconds / 3600));
const sum = (row: Iterable<number>): number => [...row].reduce((total, each) => total + each, 0);
const step = hours(1);

describe('hourlyLoads', () => {
  it('is the load at each temperature, heating positive and cooling negative', () => {
    fc.assert(
      fc.property(anyTemperatures, anyStep, (temperatures, each) => {
        const { loads, step: same } = hourlyLoads({ heating, cooling, temperatures, step: each });
        expect(same).toBe(each);
        expect(loads).toHaveLength(temperatures.length);
        temperatures.forEach((outdoor, index) => {
          expect(loads[index]).toBeCloseTo(loadAt(heating, outdoor) - loadAt(cooling, outdoor), 9);
        });
      }),
    );
  });

  it('is slope times degree days, and the sum of its steps', () => {
    fc.assert(
      fc.property(anyTemperatures, anyStep, (temperatures, each) => {
        const { loads, ...modes } = hourlyLoads({ heating, cooling, temperatures, step: each });
        const degreeHours = (signature: EnergySignature): number => sum(temperatures.map((outdoor) => loadAt(signature, outdoor) / signature.slope));
        const sumOf = (sign: 1 | -1): number => sum(loads.filter((load) => sign * load > 0)) * sign;
        for (const [signature, sign] of [[heating, 1] as const, [cooling, -1] as const]) {
          const mode = modes[signature.mode];
          if (mode === undefined) throw new Error('both modes were asked for');
          const { energy, degreeDays, loadTime, peakLoad, peakStep, fullLoadHours } = mode;
          const tolerance = 1e-12 * (energy + 1);
          expect(Math.abs(energy - signature.slope * degreeDays * 86_400)).toBeLessThanOrEqual(tolerance);
          expect(Math.abs(energy - sumOf(sign) * each)).toBeLessThanOrEqual(tolerance);
          expect(degreeDays).toBeCloseTo((degreeHours(signature) * each) / 86_400, 9);
          expect(loadTime).toBe(loads.filter((load) => sign * load > 0).length * each);
          expect(peakLoad).toBeCloseTo(Math.max(0, ...loads.map((load) => sign * load)), 9);
          expect(sign * (loads[peakStep] ?? Number.NaN)).toBeCloseTo(
            temperatures.some((t) => loadAt(signature, t) > 0) ? peakLoad : Math.min(0, sign * (loads[0] ?? Number.NaN)),
            9,
          );
          expect(fullLoadHours).toBe(equivalentFullLoadHours({ energy, designLoad: signature.designLoad }));
        }
      }),
    );
  });

  it('sums to the same in any order, and reads a typed array as a list', () => {
    fc.assert(
      fc.property(anyTemperatures, (temperatures) => {
        const there = hourlyLoads({ heating, cooling, temperatures, step });
        const back = hourlyLoads({ heating, cooling, temperatures: Float64Array.from(temperatures).reverse(), step });
        expect([...back.loads].reverse()).toEqual([...there.loads]);
        expect(back.heating?.energy).toBeCloseTo(there.heating?.energy ?? Number.NaN, 3);
      }),
    );
  });

  it('of one mode leaves the other out', () => {
    const temperatures = [0, 30].map((outdoor) => celsius(outdoor));
    const winter = hourlyLoads({ heating, temperatures, step });
    const summer = hourlyLoads({ cooling, temperatures, step });
    expect(winter.cooling).toBeUndefined();
    expect(summer.heating).toBeUndefined();
    expect([winter.loads[1], summer.loads[0]]).toEqual([0, 0]);
    expect(Math.sign(winter.loads[0] ?? 0) - Math.sign(summer.loads[1] ?? 0)).toBe(2);
  });

  it('gives the first of equal peaks, and nothing where there is no load', () => {
    const temperatures = [5, -15, -15, 18, 33].map((outdoor) => celsius(outdoor));
    const both = hourlyLoads({ heating, cooling, temperatures, step });
    expect([both.heating?.peakStep, both.heating?.peakLoad, both.cooling?.peakStep, both.cooling?.peakLoad]).toEqual([1, 12_000, 4, 7000]);
    const mild = hourlyLoads({ heating, temperatures: [celsius(16), celsius(19)], step });
    expect(mild.heating).toEqual({ energy: 0, degreeDays: 0, loadTime: 0, peakLoad: 0, peakStep: 0, fullLoadHours: 0 });
  });
});

describe('hours of a synthetic year against the closed form of its months', () => {
  const ratios = (meanOutdoor: readonly Temperature[], spread: readonly TemperatureDifference[]): Record<'heating' | 'cooling', number> => {
    const { temperatures } = syntheticWeatherYear({ course: { from: 'monthly-air', monthlyMeans: meanOutdoor }, spread });
    const byHours = hourlyLoads({ heating, cooling, temperatures, step });
    const byMonths = (signature: EnergySignature): number => monthlyLoads({ signature, meanOutdoor, spread }).energy;
    return {
      heating: (byHours.heating?.energy ?? Number.NaN) / byMonths(heating),
      cooling: (byHours.cooling?.energy ?? Number.NaN) / byMonths(cooling),
    };
  };

  it.each([4, 6, 8])('with a spread of %i K agrees within 0.1 % in heating and 2 % in cooling, in a continental climate', (spread) => {
    const { heating: heat, cooling: cold } = ratios(continental, evenSpread(spread));
    expect(Math.abs(heat - 1)).toBeLessThan(0.001);
    expect(Math.abs(cold - 1)).toBeLessThan(0.02);
  });

  it('with the spread told from the means agrees within 0.1 % and 2 % too', () => {
    const { heating: heat, cooling: cold } = ratios(continental, erbsSpread(continental).withinMonth);
    expect(Math.abs(heat - 1)).toBeLessThan(0.001);
    expect(Math.abs(cold - 1)).toBeLessThan(0.02);
  });

  it('falls short by 5 to 20 % in cooling by a mild sea, where only the hottest hours ask for it: the ends of its distribution are short', () => {
    const { heating: heat, cooling: cold } = ratios(maritime, evenSpread(4));
    expect(Math.abs(heat - 1)).toBeLessThan(0.001);
    expect(1 - cold).toBeGreaterThan(0.05);
    expect(1 - cold).toBeLessThan(0.2);
  });
});

describe('bad input', () => {
  const temperatures = [-5, 10, 30].map((outdoor) => celsius(outdoor));

  it('is refused by name', () => {
    interface Listed extends HourlyLoadsInput {
      readonly heating?: EnergySignature;
      readonly cooling?: EnergySignature;
      readonly temperatures: readonly Temperature[];
      readonly step: Time;
    }
    const shape: Shape<Listed> = {
      heating: { optional: energySignatureShape },
      cooling: { optional: energySignatureShape },
      temperatures: { list: 'temperature' },
      step: 'time',
    };
    const places = ['heating', 'cooling'].flatMap((mode) =>
      ['form', 'designOutdoor', 'loadAtDesign', 'gainsTakenOff'].map((field) => `${mode}.${field}`),
    );
    const unused = Object.fromEntries(places.map((place) => [place, 'slope and balance point are the line']));
    refuses<Listed>(hourlyLoads, shape, { heating, cooling, temperatures, step }, { unused });
  });

  it('in a typed array is told with its place', () => {
    const faulty = Float64Array.from({ length: 8760 }, (_, hour) => (hour === 17 ? Number.NaN : 8));
    expect(() => hourlyLoads({ heating, temperatures: faulty, step })).toThrow('temperatures.17: NaN');
    expect(() => hourlyLoads({ heating, temperatures: faulty.fill(-Infinity), step })).toThrow('temperatures.0: -Infinity');
    expect(() => hourlyLoads({ heating, temperatures: faulty.fill(70), step })).toThrow('temperatures.0: 70');
    expect(() => hourlyLoads({ heating, temperatures: new Float64Array(0), step })).toThrow('temperatures: 0 (count)');
    expect(() => hourlyLoads({ heating, temperatures: new Float64Array(1_000_001), step })).toThrow('temperatures: 1000001 (count)');
  });

  it('that is impossible together is refused', () => {
    expect(() => hourlyLoads({ temperatures, step })).toThrow('heating');
    expect(() => hourlyLoads({ heating: cooling, temperatures, step })).toThrow('heating.mode');
    expect(() => hourlyLoads({ cooling: heating, temperatures, step })).toThrow('cooling.mode');
    const early = { ...cooling, balancePoint: celsius(15.9) };
    expect(() => hourlyLoads({ heating, cooling: early, temperatures, step })).toThrow('cooling.balancePoint');
    expect(hourlyLoads({ heating, cooling: { ...cooling, balancePoint: heating.balancePoint }, temperatures, step }).loads).toHaveLength(3);
  });

  it('as large as is accepted stays finite', () => {
    const largest = { ...heating, slope: wattsPerKelvin(1e9), balancePoint: celsius(65) };
    const year = hourlyLoads({ heating: largest, temperatures: new Float64Array(1_000_000).fill(-95), step: hours(24) });
    expect(year.heating?.energy).toBeLessThan(Infinity);
  });
});
