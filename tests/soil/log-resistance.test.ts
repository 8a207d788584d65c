import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  effectiveConductivity,
  layersAboutPipesShape,
  logResistanceConductivity,
  resistanceShare,
  type DistanceFromPipe,
  type LayersAboutPipes,
} from '../../src/soil/index.js';
import { diameterMillimetres, metres, type Shape } from '../../src/units/index.js';
import { log, RULE_LEFT_OUT, ruleOff } from '../published/soil-layers.checks.js';
import { refuses } from '../support/bad-input.js';
import { arbitraryLog, arbitraryPipes, conductivities, FOUR, pipes } from './logs.js';

const ONE = pipes([0, 1.5]);

describe('logResistanceConductivity', () => {
  it('gives equal layers back without a word', () => {
    const even = logResistanceConductivity({ layers: log([1.3, 0.7], [1.3, 1.5], [1.3, 3]), pipes: FOUR });
    expect(even.conductivity).toBeCloseTo(1.3, 12);
    expect(even.worstError).toBe(0);
    expect(even.findings).toEqual([]);
  });

  it('is no further from the sum over the layers than it says, and lies between its layers', () => {
    fc.assert(
      fc.property(arbitraryLog, arbitraryPipes, (layers, at) => {
        const { conductivity, worstError, findings } = logResistanceConductivity({ layers, pipes: at });
        const exact = effectiveConductivity({ layers, pipes: at }).thermal.conductivity;
        expect(Math.abs(conductivity / exact - 1)).toBeLessThanOrEqual(worstError + 1e-9);
        expect(conductivity).toBeGreaterThanOrEqual(Math.min(...conductivities(layers)) * (1 - 1e-9));
        expect(conductivity).toBeLessThanOrEqual(Math.max(...conductivities(layers)) * (1 + 1e-9));
        expect(findings.map(({ level }) => level)).toEqual(worstError === 0 ? [] : [worstError > 0.05 ? 'warning' : 'note']);
      }),
      { numRuns: 2400 },
    );
  });

  it('does not notice interfaces deeper than twice the depth, nor a cut through a layer', () => {
    const of = (...layers: readonly (readonly [number, number])[]): number =>
      logResistanceConductivity({ layers: log(...layers), pipes: ONE }).conductivity;
    expect(of([0.9, 1.2], [1.9, 3.01], [0.3, 5])).toBeCloseTo(of([0.9, 1.2], [1.9, 5]), 12);
    expect(of([0.9, 0.4], [0.9, 1.2], [1.9, 1.9], [1.9, 5])).toBeCloseTo(of([0.9, 1.2], [1.9, 5]), 12);
  });

  it('takes both sides of an interface that the pipe lies on, and layers thinner than the pipe, as they come', () => {
    const on = logResistanceConductivity({ layers: log([0.9, 1.5], [1.9, 4]), pipes: ONE }).conductivity;
    expect(on).toBeCloseTo(1.4, 9);
    expect(Number.isFinite(logResistanceConductivity({ layers: log([0.9, 1.49], [1.2, 1.5], [1.9, 4]), pipes: ONE }).conductivity)).toBe(true);
  });

  it('is nearer for two pipes about an interface than its source states', () => {
    expect(ruleOff(RULE_LEFT_OUT.id)).toBeCloseTo(RULE_LEFT_OUT.off, 3);
    expect(Math.abs(ruleOff(RULE_LEFT_OUT.id))).toBeLessThan(Math.abs(RULE_LEFT_OUT.stated));
  });

  it('refuses bad input by name', () => {
    const example: LayersAboutPipes = { layers: log([0.9, 1.2], [1.9, 3]), pipes: FOUR, outsideDiameter: diameterMillimetres(32) };
    const [first, ...rest] = example.layers;
    const named = first === undefined ? [] : [{ ...first, ground: 'made ground' as const }, ...rest];
    refuses(logResistanceConductivity, layersAboutPipesShape, example, { more: [{ ...example, layers: named }] });
  });
});

describe('resistanceShare', () => {
  const pipe = { depth: metres(1.2), outsideDiameter: diameterMillimetres(32) };

  it('goes from nothing at the wall to all at the mirror image', () => {
    expect(resistanceShare({ ...pipe, distance: metres(0.016) })).toBe(0);
    expect(resistanceShare({ ...pipe, distance: metres(2.4) })).toBe(1);
    expect(resistanceShare({ ...pipe, distance: metres(0.3) })).toBeGreaterThan(resistanceShare({ ...pipe, distance: metres(0.2) }));
  });

  it('refuses bad input by name', () => {
    const shape: Shape<DistanceFromPipe> = { depth: 'length', outsideDiameter: 'diameter', distance: 'length' };
    refuses(resistanceShare, shape, { ...pipe, distance: metres(0.3) });
  });
});
