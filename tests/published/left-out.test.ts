import { describe, expect, it } from 'vitest';
import { publishedChecks } from './all.js';
import { UNMET_LEFT_OUT, unmetDisagreement, URBANA_LEFT_OUT, urbanaDisagreement } from './building-climate.checks.js';
import { FREEZING_LEFT_OUT, freezingDisagreement } from './fluid.checks.js';

const labelsOf = (id: string): readonly string[] =>
  publishedChecks.filter((check) => check.id === id).flatMap(({ values }) => values.map(({ label }) => label));

/** What does not reproduce is left out of the checks by name; here is by how much it does not. */
describe('values left out of the outside checks', () => {
  it.each((['heating', 'cooling'] as const).flatMap((mode) => [...URBANA_LEFT_OUT[mode]].map(([month, off]) => ({ mode, month, off }))))(
    'degree days after Erbs, $mode, month $month, are $off °F·d too many: few days lie beyond the base, and fewer than the form says',
    ({ mode, month, off }) => {
      const found = urbanaDisagreement(mode, month);
      expect(found.off).toBeCloseTo(off, 1);
      expect(found.off).toBeGreaterThan(found.tolerated);
      expect(labelsOf(`LD-Urbana ${mode}`)).not.toContain(`month ${String(month)}`);
    },
  );

  it.each([...FREEZING_LEFT_OUT])('freezing point of %s: the fit lies %d K off', (id, off) => {
    expect(Math.abs(freezingDisagreement(id) - off)).toBeLessThan(0.0051);
    expect(Math.abs(off)).toBeGreaterThan(0.5);
  });

  it('unmet heat of a February with a long cold end: 29 % too little', () => {
    expect(unmetDisagreement(UNMET_LEFT_OUT.month)).toBeCloseTo(UNMET_LEFT_OUT.off, 3);
    expect(Math.abs(UNMET_LEFT_OUT.off)).toBeGreaterThan(0.25);
    expect(labelsOf('LD-weather auxiliary')).not.toContain(UNMET_LEFT_OUT.month);
  });
});

describe('checks that a constant could pass', () => {
  it.each(['LD-weather auxiliary', 'LD-L19', 'FL-handbook t_freeze'])('%s: no one number lies within the tolerance of every value', (id) => {
    const [check] = publishedChecks.filter((each) => each.id === id);
    const ranges = (check?.values ?? []).map(({ expected, tolerance = check?.tolerance }) => {
      const allowed = Math.max(tolerance?.absolute ?? 0, (tolerance?.relative ?? 0) * Math.abs(expected));
      return [expected - allowed, expected + allowed] as const;
    });
    expect(Math.max(...ranges.map(([low]) => low))).toBeGreaterThan(Math.min(...ranges.map(([, high]) => high)));
  });
});
