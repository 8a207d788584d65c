import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Finding, type FindingCode, findingShapes } from '../../src/findings/index.js';
import { describeFinding } from '../../src/report/index.js';
import { arbitraryOf } from '../support/arbitrary.js';
import { FOREIGN } from './foreign.js';

const codes = Object.keys(findingShapes) as FindingCode[];

describe.each(['metric', 'us'] as const)('findings in %s units', (system) => {
  it.each(codes)('%s is said in the units of its reader alone, as whole sentences', (code) => {
    fc.assert(
      fc.property(arbitraryOf(findingShapes[code]), (values) => {
        // Any values of the shape of the code make a finding; the compiler cannot pair them when the code is drawn from a list.
        const text = describeFinding({ code, level: 'note', values, source: 'common practice' } as Finding, system);
        expect(text.match(FOREIGN[system])).toBeNull();
        expect(text).not.toMatch(/NaN|undefined|Infinity|\[object|null/);
        expect(text).toMatch(/[.?)]$/);
      }),
      { numRuns: 15 },
    );
  });
});
