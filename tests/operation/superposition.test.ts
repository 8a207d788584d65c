import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { superposedRise, type RiseAfter } from '../../src/operation/index.js';
import { hours, pipeMetreKelvinPerWatt, seconds, wattsPerPipeMetre } from '../../src/units/index.js';
import { loadFixture } from '../support/fixture.js';
import { lineSourceRise } from '../support/line-source.js';
import { MONTH, sectionPipes } from '../support/sections.js';

const lines = lineSourceRise(sectionPipes('2-pipe over-under 1.2192/1.8288'), 0.0167, 1.5, 6e-7);
const riseAfter: RiseAfter = (time) => pipeMetreKelvinPerWatt(lines(time));
const course = (heat: readonly number[]): readonly number[] =>
  superposedRise({ heat: heat.map((each) => wattsPerPipeMetre(each)), step: seconds(MONTH), riseAfter });
const someHeat = fc.array(fc.double({ min: -30, max: 30, noNaN: true }), { minLength: 1, maxLength: 40 });

describe('superposedRise', () => {
  it('reproduces LS-21 from line sources written apart from the library', () => {
    const { rows } = loadFixture('loop-oracle-superposition');
    const year = rows.slice(0, 12).map((row) => -row.number('q_extracted_W_per_m_pipe'));
    const changes = course(Array.from({ length: 20 }, () => year).flat());
    for (const row of rows) {
      const expected = row.number('wall_change_at_month_end_K(negative=colder)');
      expect((changes[(row.number('year') - 1) * 12 + row.number('month') - 1] ?? Number.NaN) / expected).toBeCloseTo(1, 9);
    }
  });

  it('agrees with heats convolved with increments of the response, the other way to sum', () => {
    fc.assert(
      fc.property(someHeat, (heat) => {
        const rise = (steps: number): number => (steps === 0 ? 0 : lines(steps * MONTH));
        const other = heat.map((_, end) => heat.slice(0, end + 1).reduce((sum, each, at) => sum + each * (rise(end - at + 1) - rise(end - at)), 0));
        course(heat).forEach((change, index) => {
          expect(change).toBeCloseTo(other[index] ?? Number.NaN, 10);
        });
      }),
      { numRuns: 40 },
    );
  });

  it('is linear, gives the response itself for a lasting heat, and waits for a heat that waits', () => {
    fc.assert(
      fc.property(someHeat, fc.double({ min: -3, max: 3, noNaN: true }), (heat, factor) => {
        const once = course(heat);
        course(heat.map((each) => factor * each)).forEach((change, index) => {
          expect(change).toBeCloseTo(factor * (once[index] ?? Number.NaN), 9);
        });
        const [first, ...later] = course([0, ...heat]);
        expect(first).toBe(0);
        later.forEach((change, index) => {
          expect(change).toBeCloseTo(once[index] ?? Number.NaN, 12);
        });
      }),
      { numRuns: 40 },
    );
    course(Array.from({ length: 24 }, () => 1)).forEach((change, index) => {
      expect(change).toBe(lines((index + 1) * MONTH));
    });
  });

  it('refuses bad input by name', () => {
    const heat = [wattsPerPipeMetre(-10)];
    expect(() => superposedRise({ heat: [], step: hours(1), riseAfter })).toThrow(expect.objectContaining({ code: 'too-few', argument: 'heat' }));
    expect(() => superposedRise({ heat: [wattsPerPipeMetre(Number.NaN)], step: hours(1), riseAfter })).toThrow(
      expect.objectContaining({ code: 'not-finite', argument: 'heat.0' }),
    );
    expect(() => superposedRise({ heat, step: hours(0), riseAfter })).toThrow(expect.objectContaining({ argument: 'step' }));
    expect(() => superposedRise({ heat, step: hours(Infinity), riseAfter })).toThrow(expect.objectContaining({ argument: 'step' }));
    expect(() => superposedRise({ heat, step: hours(1), riseAfter: () => pipeMetreKelvinPerWatt(-1) })).toThrow(
      expect.objectContaining({ argument: 'riseAfter' }),
    );
  });
});
