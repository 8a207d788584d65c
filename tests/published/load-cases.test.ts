import { describe, expect, it } from 'vitest';
import { loadCases } from '../support/load-cases.js';
import { publishedChecks } from './all.js';

describe('the worked cases of loads, heat pumps, energy and cost', () => {
  // One check may hold all parts of a case, and say behind its id how it comes to them.
  const ids = new Set(publishedChecks.map(({ id }) => id.split(' ')[0]));

  it('are 118', () => {
    expect(loadCases.length).toBe(118);
  });

  it.each(loadCases)('%s stands among the outside checks', (id) => {
    expect(ids.has(`LD-${id}`) || ids.has(`LD-${id.split('-')[0] ?? ''}`)).toBe(true);
  });
});
