import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codecOf } from '../../src/document/codec.js';
import * as states from '../../src/states/index.js';
import { bandShape } from '../../src/states/index.js';
import { type Kind, KINDS, type ShapeNode } from '../../src/units/index.js';
import { arbitraryOf } from '../support/arbitrary.js';

const { MONTH_DAYS: _, ...named } = states;
const shapes = Object.entries(named).flatMap(([name, value]): [string, ShapeNode][] =>
  name.endsWith('Shape') && typeof value === 'object' ? [[name, value]] : [],
);
const kinds = Object.keys(KINDS) as Kind[];

describe('shapes of states', () => {
  it('are all here', () => {
    expect(shapes.map(([name]) => name)).toEqual(
      expect.arrayContaining(['moistureShape', 'soilThermalShape', 'annualWaveShape', 'fluidStateShape', 'pipeSectionShape']),
    );
  });

  it.each(shapes)('%s brings back what goes into a document, in both unit systems', (_, shape) => {
    const codec = codecOf<unknown>(shape);
    fc.assert(
      fc.property(arbitraryOf(shape), fc.constantFrom('metric' as const, 'us' as const), (value, system) => {
        expect(codec.read(codec.write(value, system))).toEqual(value);
      }),
      { numRuns: 20 },
    );
  });

  it.each(kinds)('a band of %s has limits of the same kind', (kind) => {
    expect(bandShape(kind)).toEqual({ low: kind, estimate: kind, high: kind, coverage: 'fraction' });
  });
});
