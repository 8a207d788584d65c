import { describe, expect, it } from 'vitest';
import { planLoop } from '../../src/plan/index.js';
import { planPage, type UnitSystem } from '../../src/report/index.js';
import { electricWatts } from '../../src/units/index.js';
import { DEMO, HOT_WATER, withCurve } from '../plan/water-unit.js';

const pump = { power: electricWatts(120) };
const sectionOf = (job: Parameters<typeof planLoop>[0], system: UnitSystem = 'metric'): string =>
  (planPage(planLoop(job), system).split('What the year takes')[1] ?? '').split('Why this much pipe')[0]?.replaceAll(/\s+/g, ' ') ?? '';

describe('what the year takes', () => {
  it('stops at the unit where no circulator is given, and says so', () => {
    const text = sectionOf(DEMO);
    expect(text).toContain('of the unit alone (H1)');
    expect(text).not.toContain('(H2)');
    expect(text).toContain('No circulator was given');
    expect(text).not.toContain('Hot water');
  });

  it('names each boundary that is known, and what is in none', () => {
    const some = sectionOf({ ...DEMO, pump });
    for (const boundary of ['H1', 'H2', 'H3', 'C1', 'C2']) expect(some).toContain(`(${boundary})`);
    expect(some).not.toContain('(H4)');
    expect(some).toContain('was not given; no figure holds them');
    const all = sectionOf({ ...DEMO, pump, seasonOptions: { loadSidePower: electricWatts(60) } }, 'us');
    expect(all).toContain('(H4)');
    expect(all).not.toContain('not given');
  });

  it('has hot water beside heating, and always what installed plants reach', () => {
    const text = sectionOf({ ...withCurve(45), pump, hotWater: HOT_WATER });
    expect(text).toMatch(/Hot water 3 ?6\d\d kWh of heat/u);
    expect(text).toContain('80 to 90 %');
  });
});
