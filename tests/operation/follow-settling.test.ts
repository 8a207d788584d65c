import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { followSettling, type Settling, type SettlingInput, simulate, sizeLoop } from '../../src/operation/index.js';
import { celsius, dayOfYear, pipeMetreKelvinPerWatt, type PipeResistance, pipeMetres } from '../../src/units/index.js';
import { describeFinding } from '../../src/report/index.js';
import { between, knownFilm } from './support/levels.js';
import { house } from './support/plant.js';

const start = dayOfYear(245);
const base = { ...house, resistanceAt: knownFilm, start };
const limits = { lowestEntering: celsius(-3), highestEntering: celsius(30) };
const settling = (loose: number, settled: number, more: Partial<SettlingInput> = {}): Settling =>
  followSettling({ ...base, firstWinterResistance: pipeMetreKelvinPerWatt(loose), settledResistance: pipeMetreKelvinPerWatt(settled), ...more });
const coldest = ({ firstWinter, settled }: Settling): readonly [number, number] => [
  firstWinter.simulation.yearOne.coldestEntering?.temperature ?? Number.NaN,
  settled.simulation.lastYear.coldestEntering?.temperature ?? Number.NaN,
];
const behind = (added: number) => (mean: Parameters<typeof knownFilm>[0]) => (knownFilm(mean) + added) as PipeResistance;

describe('a loop whose fill settles', () => {
  it('is the plain loop where the fill adds nothing', () => {
    const { firstWinter, settled, findings } = settling(0, 0, { limits });
    expect(firstWinter.simulation).toEqual(simulate({ ...base, years: 1 }));
    expect(settled.simulation).toEqual(simulate(base));
    expect(settled.exactLength).toBe(sizeLoop({ ...base, limits, guess: base.pipeLength }).exactLength);
    expect(findings).toEqual(simulate(base).findings);
  });

  it('is a loop with as much more of wall', () => {
    const { firstWinter, settled } = settling(0.14, 0.05);
    expect(firstWinter.simulation).toEqual(simulate({ ...base, resistanceAt: behind(0.14), years: 1 }));
    expect(settled.simulation).toEqual(simulate({ ...base, resistanceAt: behind(0.05) }));
    expect(settled.simulation.repeats).toBe(true);
    expect(firstWinter).not.toHaveProperty('exactLength');
  });

  it('asks for the length that either state keeps its limits with', () => {
    const { firstWinter, settled } = settling(0.14, 0.05, { limits });
    expect(firstWinter.exactLength).toBe(sizeLoop({ ...base, limits, resistanceAt: behind(0.14), years: 1, guess: base.pipeLength }).exactLength);
    expect(settled.exactLength).toBeLessThan(firstWinter.exactLength ?? Number.NaN);
    expect(firstWinter.binding?.reached).toBe(coldest(settling(0.14, 0.05))[0]);
  });

  it('says that the first winter misses a limit that the settled loop keeps, and only then', () => {
    const [loose, settled] = coldest(settling(0.2, 0.03));
    expect(loose).toBeLessThan(settled - 0.5);
    const at = (lowest: number): Settling => settling(0.2, 0.03, { limits: { lowestEntering: celsius(lowest) } });
    const { findings, firstWinter } = at((loose + settled) / 2);
    const [finding] = findings;
    expect(finding).toMatchObject({
      code: 'first-winter-beyond-limit',
      level: 'warning',
      values: { limit: 'lowestEntering', reached: loose, limitMargin: firstWinter.binding?.limitMargin, day: firstWinter.binding?.day },
    });
    expect(finding && describeFinding(finding, 'metric')).toContain('lowest entering fluid temperature');
    expect(at(loose - 0.2).findings).toEqual([]);
    expect(at(settled + 0.2).findings).toEqual([]);
  });

  it('knows no limit of a loop that never works', () => {
    const { firstWinter, settled } = settling(0.2, 0.1, { limits, duty: { from: 'ground', loads: new Float64Array(8760) } });
    expect(Object.keys(firstWinter)).toEqual(['simulation']);
    expect(Object.keys(settled)).toEqual(['simulation']);
  });

  it('follows as many settled years as asked for', () => {
    const { firstWinter, settled } = settling(0.2, 0.1, { years: 3, withCourse: true });
    expect(firstWinter.simulation.lastYear.year).toBe(1);
    expect(settled.simulation.lastYear.year).toBe(3);
    expect(settled.simulation.lastYear.course?.walls).toHaveLength(8760);
  });

  it('is never warmer in heating nor cooler in cooling for a looser fill, nor shorter', () => {
    fc.assert(
      fc.property(between(-0.05, 0.3), between(0, 0.3), (less, more) => {
        const { firstWinter, settled } = settling(less + more, less, { years: 1, limits });
        const [loose, dense] = [firstWinter, settled].map(({ simulation: { yearOne } }) => yearOne);
        expect(loose?.coldestEntering?.temperature).toBeLessThanOrEqual((dense?.coldestEntering?.temperature ?? Number.NaN) + 1e-9);
        expect(loose?.warmestEntering?.temperature).toBeGreaterThanOrEqual((dense?.warmestEntering?.temperature ?? Number.NaN) - 1e-9);
        expect(firstWinter.exactLength).toBeGreaterThanOrEqual((1 - 4e-4) * (settled.exactLength ?? Number.NaN));
      }),
      { numRuns: 10 },
    );
  });

  it('refuses resistances that cannot be, and a fill that takes off more than there is', () => {
    for (const bad of [Number.NaN, Infinity, -101, 101]) {
      expect(() => settling(bad, 0)).toThrow(/^firstWinterResistance/u);
      expect(() => settling(0, bad)).toThrow(/^settledResistance/u);
    }
    expect(() => settling(0, -1)).toThrow(/^resistanceAt/u);
    expect(() => settling(0, 0, { limits: {} })).toThrow(/^limits/u);
    expect(() => settling(0, 0, { pipeLength: pipeMetres(-1) })).toThrow(/^pipeLength/u);
    expect(() => settling(0, 0, { limits: { lowestEntering: celsius(15) } })).toThrow(/^limits\.lowestEntering/u);
  });
});
