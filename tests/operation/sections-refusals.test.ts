import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/errors/index.js';
import {
  fluidLimitsShape,
  type FluidStore,
  fluidStoreShape,
  simulateSections,
  type SectionsInput,
  sizeSections,
  type SizeSectionsInput,
} from '../../src/operation/index.js';
import {
  celsius,
  diameterMillimetres,
  hours,
  joulesPerCubicMetreKelvin,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  type Shape,
  wattsPerKelvin,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const COUNT = 30;
const section = {
  pipeLength: pipeMetres(100),
  ground: new Array<number>(COUNT).fill(10),
  response: { terms: [{ timeConstant: hours(100), rise: pipeMetreKelvinPerWatt(0.5) }], steadyRise: pipeMetreKelvinPerWatt(0.5) },
  resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
};
const input = (own: object = {}, more: object = {}): SectionsInput => ({
  step: hours(1),
  duty: { from: 'ground', loads: new Array<number>(COUNT).fill(1000) },
  heatCapacityRate: wattsPerKelvin(1000),
  sections: [section, { ...section, ...own }],
  years: 1,
  ...more,
});
/** A section with a store, and what is no section as it is. */
const withStore = (own: unknown): unknown => (typeof own === 'object' && own !== null ? { ...section, ...own } : own);
const refused = (run: () => unknown): string | undefined => {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.argument;
    throw error;
  }
  return undefined;
};

describe('sections', () => {
  it('are refused by the name of what is wrong with them', () => {
    const heats = (groundHeats: unknown, years: unknown = 3): object => ({ earlierWork: { years, groundHeats } });
    const ground = section.ground;
    const cases: readonly (readonly [argument: string, own: object, more?: object])[] = [
      ['sections', {}, { sections: [] }],
      ['sections', {}, { sections: undefined }],
      ['sections.1', {}, { sections: [section, null] }],
      ['sections.1.pipeLength', { pipeLength: 0 }],
      ['sections.1.pipeLength', { pipeLength: Number.NaN }],
      ['sections.1.ground', { ground: ground.slice(1) }],
      ['sections.1.ground.3', { ground: ground.map((each, index) => (index === 3 ? Number.NaN : each)) }],
      ['sections.1.response.terms', { response: { terms: [] } }],
      ['sections.1.response.terms.0.rise', { response: { terms: [{ timeConstant: 5, rise: -1 }] } }],
      ['sections.1.resistanceAt', { resistanceAt: () => Number.NaN }],
      ['sections.1.earlierWork', { earlierWork: null }],
      ['sections.1.earlierWork.years', heats(ground, 0)],
      ['sections.1.earlierWork.years', heats(ground, 1.5)],
      ['sections.1.earlierWork.groundHeats', heats(ground.slice(2))],
      ['sections.1.earlierWork.groundHeats.0', heats(ground.map(() => Infinity))],
      ['sections.1.fluidStore', { fluidStore: null }],
      ['sectionFlows', {}, { sectionFlows: [1] }],
      ['sectionFlows', {}, { sectionFlows: () => [] }],
      ['sectionFlows.1', {}, { sectionFlows: [1, 0] }],
      ['sectionFlows.0', {}, { sectionFlows: () => [-0.1, 1] }],
      ['sectionFlows.0', {}, { sectionFlows: [Number.NaN, 1] }],
      ['heatCapacityRate', {}, { heatCapacityRate: 0 }],
      ['step', {}, { step: 1 }],
      ['duty.loads.0', {}, { duty: { from: 'ground', loads: [Number.NaN, ...ground.slice(1)] } }],
      ['years', { response: { terms: section.response.terms } }, { years: undefined }],
    ];
    const limits = { lowestEntering: celsius(-5) };
    for (const [argument, own, more] of cases) {
      expect(refused(() => simulateSections(input(own, more)))).toBe(argument);
      expect(refused(() => sizeSections({ ...input(own, more), limits }))).toBe(argument);
    }
    expect(refused(() => simulateSections(input()))).toBeUndefined();
    expect(refused(() => sizeSections({ ...input(), limits }))).toBeUndefined();
  });

  it('are not sized by bad limits, bounds of length or places', () => {
    type Asked = Pick<SizeSectionsInput, 'limits' | 'sizedSections' | 'shortest' | 'longest'>;
    const shape: Shape<Asked> = {
      limits: fluidLimitsShape,
      sizedSections: { optional: { list: 'count' } },
      shortest: { optional: 'pipe length' },
      longest: { optional: 'pipe length' },
    };
    const limits = { lowestEntering: celsius(-5), lowestLeaving: celsius(-8), highestEntering: celsius(35) };
    const asked: Asked = { limits, sizedSections: [1], shortest: pipeMetres(2), longest: pipeMetres(5000) };
    refuses((each) => sizeSections({ ...input(), ...each }), shape, asked);
  });

  it('far too short for their load are said to be so', () => {
    const loads = new Array<number>(COUNT).fill(1e6);
    expect(refused(() => simulateSections(input({}, { duty: { from: 'ground', loads } })))).toBe('pipeLength');
  });

  it('refuse a store that cannot be', () => {
    const store: FluidStore = {
      insideDiameter: diameterMillimetres(26),
      outsideDiameter: diameterMillimetres(32),
      heatCapacity: joulesPerCubicMetreKelvin(4e6),
      wallHeatCapacity: joulesPerCubicMetreKelvin(2e6),
    };
    const shape: Shape<{ sections: { fluidStore: FluidStore }[] }> = { sections: { list: { fluidStore: fluidStoreShape } } };
    refuses(
      ({ sections }) => simulateSections(input({}, { sections: Array.isArray(sections) ? sections.map(withStore) : sections })).sectionsOfLastYear,
      shape,
      { sections: [{ fluidStore: store }] },
    );
    expect(refused(() => simulateSections(input({ fluidStore: { ...store, outsideDiameter: diameterMillimetres(25) } })))).toBe(
      'sections.1.fluidStore.outsideDiameter',
    );
  });
});
