import { describe, expect, it } from 'vitest';
import { COIL, type Compared, sizedWith } from '../../examples/layouts/compared.js';
import { type Kind, kinds, straight } from '../../examples/layouts/every-layout.js';
import { explained } from '../../examples/layouts/explained.js';
import { limits } from '../../examples/layouts/house.js';
import { compareLayouts, comparisonPage } from '../../examples/layouts/page.js';
import { concordance } from '../../examples/layouts/reasons.js';
import { onePipe } from '../../src/ground/index.js';
import { feet, metres, pipeMetreKelvinPerWatt } from '../../src/units/index.js';

const rows = compareLayouts();
const cases = rows.map((row) => [`${row.kind.name} ${String(row.kind.pitch ?? '')}`, row] as const);
const row = (name: string, pitch?: number): Compared => {
  const found = rows.find(({ kind }) => kind.name === name && kind.pitch === pitch);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};
const kind = (name: string): Kind => row(name).kind;
const lowest = limits.lowestEntering ?? Number.NaN;

describe('one house on every layout', () => {
  it('has every layout of the ground, least pipe first', () => {
    expect(rows).toHaveLength(kinds.length);
    expect(new Set(rows.map(({ kind: { name } }) => name)).size).toBe(11);
    expect(rows.map(({ needed }) => needed)).toEqual(rows.map(({ needed }) => needed).sort((a, b) => a - b));
  });

  it.each(cases)('lays the fewest whole coils that keep the limit: %s', (_, { kind: each, coils, needed, pipe, trench, trenches, makings }) => {
    expect(pipe).toBe(coils * COIL);
    expect(needed).toBeLessThanOrEqual(pipe);
    expect(sizedWith(each, coils - 1, makings.fill.settled).needed).toBeGreaterThan(pipe - COIL);
    expect(trench * each.perTrench.bought).toBeCloseTo(pipe, 6);
    expect(trench / trenches).toBeLessThanOrEqual(each.longestTrench + 1e-9);
  });

  it.each(cases)(
    'is never colder with ice than without, nor settled than in its first winter: %s',
    (_, { settled, firstWinter, needed, neededLoose, neededIced }) => {
      expect(settled.withoutIce).toBeGreaterThanOrEqual(lowest);
      for (const { withIce, withoutIce } of [settled, firstWinter]) expect(withIce).toBeGreaterThanOrEqual(withoutIce);
      expect(settled.withoutIce).toBeGreaterThanOrEqual(firstWinter.withoutIce);
      expect(settled.withIce).toBeGreaterThanOrEqual(firstWinter.withIce);
      expect(neededLoose).toBeGreaterThan(needed);
      expect(neededIced).toBeLessThan(needed);
    },
  );

  it.each(cases)('is explained by resistance over margin: %s', (_, each) => {
    const { together, hourByHour } = explained(each, row('one pipe'));
    // The form knows one month and one run fraction, where the hours have all of them: 4 % found.
    expect(Math.abs(together / hourByHour - 1)).toBeLessThan(0.05);
    const { byNeighbours, bySurface, fill } = each.makings;
    expect(byNeighbours).toBeGreaterThan(1);
    expect(bySurface).toBeGreaterThan(1);
    expect(fill.firstWinter).toBeGreaterThan(fill.settled);
    expect(fill.settled).toBeGreaterThan(0);
  });

  it('stands in the order of its neighbours, in nine pairs out of ten', () => {
    const { alike, pairs } = concordance(rows, ({ makings }) => makings.byNeighbours);
    expect(alike / pairs).toBeGreaterThan(0.9);
  });
});

describe('what moves the length', () => {
  it('is pipe put into fewer trenches: never less of it, and less trench', () => {
    for (const [apart, together] of [
      ['one pipe', 'two side by side'],
      ['two stacked', 'four pipes'],
      ['four pipes', 'six pipes'],
    ] as const) {
      expect(row(together).needed).toBeGreaterThan(row(apart).needed);
      expect(row(together).trench).toBeLessThan(row(apart).trench);
    }
  });

  it('is depth: the deeper, the warmer in winter and the less pipe', () => {
    const at = (depth: number): Kind =>
      straight('one pipe', (trenches) => onePipe({ depth: metres(depth), trenchSpacing: metres(4), trenches }), { width: 0.3 });
    const lengths = [0.9, 1.2, 1.5, 1.8].map((depth) => sizedWith(at(depth), 5, pipeMetreKelvinPerWatt(0)).needed);
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
    expect(new Set(lengths).size).toBe(4);
    expect(row('unequal trenches').makings.coldestGround).toBeLessThan(row('one pipe').makings.coldestGround);
  });

  it.each(['flat coil', 'upright coil'])('is the pitch of a coil: tighter takes more pipe and less trench, %s', (name) => {
    const [wide, tight] = [row(name, 0.6), row(name, 0.25)];
    expect(tight.needed).toBeGreaterThan(wide.needed);
    expect(tight.needed / tight.kind.perTrench.bought).toBeLessThan(wide.needed / wide.kind.perTrench.bought);
  });

  it('is what out and back do to one another', () => {
    expect(row('out and back').needed).toBeGreaterThan(row('two side by side').needed);
  });

  it('is fill that resists', () => {
    const four = kind('four pipes');
    const lengths = [0, 0.05, 0.1].map((added) => sizedWith(four, 6, pipeMetreKelvinPerWatt(added)).needed);
    expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
    expect(new Set(lengths).size).toBe(3);
  });
});

describe('the page', () => {
  const [metric, us] = [comparisonPage(rows, 'metric'), comparisonPage(rows, 'us')];
  /** First number behind the name of a layout in the first table. */
  const needs = (page: readonly string[], name: string): number => {
    const line = page.find((each) => each.startsWith(`  ${name} `)) ?? '';
    return Number(/\d+/u.exec(line.slice(name.length + 2))?.[0]);
  };

  it('says the same in both unit systems', () => {
    for (const name of ['one pipe', 'two stacked', 'six pipes', 'area collector']) {
      expect(needs(metric, name)).toBe(Math.round(row(name).needed));
      // Each is rounded to one.
      expect(Math.abs(feet.of(metres(row(name).needed)) - needs(us, name))).toBeLessThanOrEqual(0.5);
    }
    expect(us.join('\n')).not.toMatch(/\d (?:m|m²|°C|K)\b/u);
  });

  it('says that the house is invented, and warns of trenches', () => {
    expect(metric[0]).toContain('invented');
    expect(metric.join(' ')).toContain('Trench walls collapse without warning');
  });
});
