import { describe, expect, it } from 'vitest';
import { bindingLimit, type FluidLimits, simulateSections, sizeLoop, sizeSections, type SizeSectionsInput } from '../../src/operation/index.js';
import { celsius, pipeMetres, type PipeLength } from '../../src/units/index.js';
import { knownFilm } from './support/levels.js';
import { house } from './support/plant.js';
import { clay, onSections, sand } from './support/sections.js';

const limits: FluidLimits = { lowestEntering: celsius(-4), highestEntering: celsius(30) };
const input = (more: Partial<SizeSectionsInput> = {}): SizeSectionsInput => ({ ...onSections([clay(250), sand(180)]), limits, ...more });
const marginOf = (lengths: readonly number[]): number =>
  bindingLimit(simulateSections(onSections([clay(lengths[0] ?? 0), sand(lengths[1] ?? 0)])), limits)?.limitMargin ?? Number.NaN;

describe('sections are sized', () => {
  it('to the length that a loop has which is one of them', () => {
    const one = sizeSections({ ...input(), sections: [clay()] });
    const loop = sizeLoop({ ...house, resistanceAt: knownFilm, limits });
    // Either search ends with a bracket of 0.04 %.
    expect(one.exactLength / loop.exactLength).toBeCloseTo(1, 3);
    expect(one.binding.limit).toBe(loop.binding.limit);
  });

  it.each([
    ['all together', undefined],
    ['one beside another that stays', [1]],
  ])('to keep the limits and no more: %s', (_, sizedSections) => {
    const { exactLength, sectionLengths, binding, simulation } = sizeSections(input(sizedSections && { sizedSections }));
    expect(binding.limitMargin).toBeGreaterThanOrEqual(0);
    expect(binding.limitMargin).toBeLessThan(0.02);
    expect(simulation.sectionsOfLastYear.map(({ pipeLength }) => pipeLength)).toEqual(sectionLengths);
    const sized = sectionLengths.filter((_length, index) => sizedSections?.includes(index) ?? true);
    expect(sized.reduce((sum, length) => sum + length, 0)).toBeCloseTo(exactLength, 9);
    expect(marginOf(sectionLengths)).toBeGreaterThanOrEqual(-1e-3);
    expect(marginOf(sectionLengths.map((length, index) => ((sizedSections?.includes(index) ?? true) ? 0.999 * length : length)))).toBeLessThan(0);
    if (sizedSections === undefined) expect((sectionLengths[0] ?? 0) / (sectionLengths[1] ?? 0)).toBeCloseTo(250 / 180, 9);
    else expect(sectionLengths[0]).toBe(250);
  });

  it('with flows that a network gives for each length, asked for at no more than 1e6 m', () => {
    const asked: number[] = [];
    const sectionFlows = (lengths: readonly PipeLength[]): readonly number[] => {
      asked.push(...lengths);
      return lengths;
    };
    const { exactLength } = sizeSections(input({ sectionFlows }));
    expect(exactLength / sizeSections(input()).exactLength).toBeCloseTo(1, 3);
    expect(Math.max(...asked)).toBe(1e6);
  });

  it('not where the ground itself is beyond the limit, or the longest allowed is too short', () => {
    expect(() => sizeSections(input({ limits: { lowestEntering: celsius(6) } }))).toThrow(/limits\.lowestEntering/);
    expect(() => sizeSections(input({ longest: pipeMetres(100) }))).toThrow(/longest/);
  });

  it('and not for sections that are not there', () => {
    for (const [sizedSections, name] of [
      [[], 'sizedSections'],
      [[2], 'sizedSections.0'],
      [[1, 1], 'sizedSections'],
      [[0.5], 'sizedSections.0'],
      [[-1], 'sizedSections.0'],
    ] as const) {
      expect(() => sizeSections(input({ sizedSections }))).toThrow(name);
    }
    expect(() => sizeSections(input({ shortest: pipeMetres(-1) }))).toThrow(/shortest/);
    expect(() => sizeSections(input({ limits: {} }))).toThrow(/limits/);
  });
});
