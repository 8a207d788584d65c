import { describe, expect, it } from 'vitest';
import { deviation } from '../support/published.js';
import { publishedChecks } from './all.js';

describe.each(publishedChecks.map((check) => ({ check, name: `${check.id} ${check.quantity} [${check.unit}], ${check.source}` })))(
  '$name',
  ({ check }) => {
    it('has values, a source and a reason for its tolerance', () => {
      expect(check.values.length).toBeGreaterThan(0);
      expect(check.source).not.toBe('');
      expect(check.tolerance.reason).not.toBe('');
    });

    it('reproduces every value', () => {
      const off = check.values
        .map((value) => ({ label: value.label, expected: value.expected, ...deviation(value, value.tolerance ?? check.tolerance) }))
        .filter(({ share }) => !(share <= 1));
      expect(off).toEqual([]);
    });
  },
);
