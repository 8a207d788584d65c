import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noticesFor } from '../../src/safety/index.js';
import {
  DRYING_RULES,
  fieldToSampleShape,
  leastSampleMass,
  PIT_NOTES,
  samplingPlan,
  SAMPLING_RULES,
  type FieldToSample,
} from '../../src/soil/index.js';
import { celsius, diameterMillimetres, feet, kilograms, metres, trenchMetres } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const field = (more: Partial<FieldToSample> = {}): FieldToSample => ({
  pipeDepths: [metres(1.2), metres(1.8)],
  trenches: 4,
  trenchLength: trenchMetres(60),
  ...more,
});
const depthsOf = (...pipes: readonly number[]): readonly (readonly [number, string, string])[] =>
  samplingPlan(field({ pipeDepths: pipes.map((depth) => metres(depth)) })).depths.map(({ depth, purpose, tool }) => [
    Number(depth.toFixed(3)),
    purpose,
    tool,
  ]);
const pipes = fc.array(fc.double({ min: 0.4, max: 5, noNaN: true }), { minLength: 1, maxLength: 6 });

describe('depths', () => {
  it('reach from the later fill to half a metre below the lowest pipe, every pipe among them', () => {
    expect(depthsOf(1.2, 1.8)).toEqual([
      [0.3, 'later fill', 'bucket or hand auger'],
      [0.75, 'heat path', 'bucket or hand auger'],
      [1.2, 'pipe', 'bucket or hand auger'],
      [1.5, 'heat path', 'bucket or hand auger'],
      [1.8, 'pipe', 'bucket or hand auger'],
      [2.3, 'below the pipes', 'bucket'],
    ]);
    expect(depthsOf(0.4).map(([depth]) => depth)).toEqual([0.4, 0.9]);
  });

  it('leave no gap of more than half a metre and no pipe without a sample', () => {
    fc.assert(
      fc.property(pipes, (given) => {
        const { depths, pitDepth } = samplingPlan(field({ pipeDepths: given.map((depth) => metres(depth)) }));
        const at = depths.map(({ depth }) => depth);
        expect(at[0]).toBeLessThanOrEqual(0.45);
        expect(pitDepth).toBeCloseTo(Math.max(...given) + 0.5, 12);
        expect(at.at(-1)).toBe(pitDepth);
        for (const [index, depth] of at.slice(1).entries()) {
          expect(depth).toBeGreaterThan(at[index] ?? Infinity);
          expect(depth - (at[index] ?? 0)).toBeLessThanOrEqual(0.5 + 0.15 + 1e-9);
        }
        for (const pipe of given) expect(Math.min(...at.map((depth) => Math.abs(depth - pipe)))).toBeLessThanOrEqual(0.15 + 1e-12);
      }),
    );
  });
});

describe('pits', () => {
  it('are three for a house, and enough for twelve samples', () => {
    const { pits, sampleCount } = samplingPlan(field());
    expect(pits).toHaveLength(3);
    expect(sampleCount).toBe(18);
    expect(samplingPlan(field({ pipeDepths: [metres(0.4)] })).pits).toHaveLength(6);
  });

  it('lie within the field, between the trenches and not on them, never fewer for more land', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99 }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 0.3, max: 20, noNaN: true }),
        (trenches, along, spacing) => {
          const given = field({ trenches, trenchLength: trenchMetres(along), trenchSpacing: metres(spacing) });
          const { pits, sampleCount, depths } = samplingPlan(given);
          expect(pits.length).toBeGreaterThanOrEqual(3);
          expect(sampleCount).toBeGreaterThanOrEqual(12);
          expect(sampleCount).toBe(pits.length * depths.length);
          expect(samplingPlan({ ...given, trenches: trenches + 1 }).pits.length).toBeGreaterThanOrEqual(pits.length);
          for (const { alongTrench, acrossField } of pits) {
            expect(alongTrench).toBeGreaterThan(0);
            expect(alongTrench).toBeLessThan(along);
            expect((acrossField / spacing) % 1).toBeCloseTo(0.5, 6);
            expect(acrossField).toBeLessThan(Math.max(trenches - 1, 1) * spacing);
          }
          expect(new Set(pits.map(({ alongTrench }) => alongTrench)).size).toBe(pits.length);
        },
      ),
    );
  });

  it('are spread across as well as along', () => {
    const { pits } = samplingPlan(field({ trenches: 4 }));
    expect(new Set(pits.map(({ acrossField }) => acrossField)).size).toBe(3);
  });
});

describe('the work', () => {
  it('asks for the masses of the table, and never for less than a kitchen balance needs', () => {
    expect(samplingPlan(field()).sampleMass).toBe(kilograms(0.3));
    const largestParticle = diameterMillimetres(30);
    expect(samplingPlan(field({ largestParticle })).sampleMass).toBe(leastSampleMass({ largestParticle }).leastMass);
    expect(samplingPlan(field({ largestParticle })).sampleMass).toBe(kilograms(1));
  });

  it('comes with the notices of pit, digging and oven, whose words warn of collapse and smoke', () => {
    const { situations } = samplingPlan(field());
    const notices = noticesFor(situations);
    const textOf = (code: string): string => notices.find((notice) => notice.code === code)?.text ?? '';
    expect(textOf('test-pit')).toMatch(/collapse/u);
    expect(textOf('test-pit')).toMatch(/Never climb into/u);
    expect(textOf('locate-utilities')).not.toBe('');
    expect(textOf('oven-drying')).toMatch(/ventilated/u);
    expect(textOf('oven-drying')).toMatch(/plastic/u);
    expect(textOf('oven-gently')).toMatch(/60 °C/u);
  });

  it('names all that is to be noted and minded', () => {
    const { notes, rules, drying } = samplingPlan(field());
    expect(notes).toEqual(PIT_NOTES);
    expect(rules).toEqual(SAMPLING_RULES);
    expect(rules[0]).toBe('stay out of the pit');
    expect(drying.rules).toEqual(DRYING_RULES);
    expect(drying.gentleTemperature).toBe(celsius(60));
  });

  it('refuses bad input by name', () => {
    refuses(samplingPlan, fieldToSampleShape, field({ trenchSpacing: feet(10), largestParticle: diameterMillimetres(10) }));
    expect(() => samplingPlan(field({ pipeDepths: [metres(12)] }))).toThrow('pipeDepths.0: 12 (length)');
  });
});
