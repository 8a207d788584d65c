import { describe, expect, it } from 'vitest';
import { inputDocument, planDocument } from '../../src/document/index.js';

import { type LoopInput, type LoopPlan, planLoop } from '../../src/plan/index.js';
import { planLoop as planOfDocument } from '../../src/plan-loop-document.js';
import { celsius, fraction, dryBasisPercent, metres, type Temperature } from '../../src/units/index.js';
import { DEMO } from './water-unit.js';

const trenchFill = { width: metres(0.6) };
const plain = planLoop(DEMO);
const filled = planLoop({ ...DEMO, trenchFill });
const iced = planLoop({ ...DEMO, followIce: {} });
const codes = ({ findings }: LoopPlan): readonly string[] => findings.map(({ code }) => code);
const coldest = (year: { readonly coldestEntering?: { readonly temperature: Temperature } } | undefined): number =>
  year?.coldestEntering?.temperature ?? Number.NaN;
const settlingOf = ({ settling }: LoopPlan): NonNullable<LoopPlan['settling']> => {
  if (settling === undefined) throw new Error('no settling');
  return settling;
};
const iceOf = ({ iceAround }: LoopPlan): NonNullable<LoopPlan['iceAround']> => {
  if (iceAround === undefined) throw new Error('no ice');
  return iceAround;
};
/** The demo in sand of a moisture, which keeps next to nothing of it liquid. */
const inSand = (percent: number): LoopInput => ({
  ...DEMO,
  soil: {
    layers: DEMO.soil.layers.map((layer) =>
      layer.sample.from === 'sample'
        ? {
            ...layer,
            sample: {
              ...layer.sample,
              moisture: { basis: 'dry', value: dryBasisPercent(percent) } as const,
              texture: { from: 'laboratory', class: 'sand' } as const,
            },
          }
        : layer,
    ),
  },
});

describe('fill and ice', () => {
  it('change nothing of the loop found, and leave nothing behind where they are not asked for', () => {
    expect(plain).not.toHaveProperty('settling');
    expect(plain).not.toHaveProperty('iceAround');
    expect(codes(plain)).toContain('trench-fill-not-modelled');
    for (const plan of [filled, iced]) {
      const { settling: _s, iceAround: _i, findings: _f, assumptions: _a, sources: _r, ...rest } = plan;
      const { findings: _pf, assumptions: _pa, sources: _pr, ...same } = plain;
      expect(rest).toEqual(same);
    }
    const both = planLoop({ ...DEMO, trenchFill, followIce: {} });
    expect(both.settling).toEqual(filled.settling);
    expect(both.iceAround).toEqual(iced.iceAround);
  });

  it('are in the document of the plan, and back', () => {
    const document = planOfDocument(inputDocument().write({ ...DEMO, trenchFill, followIce: {}, format: 'loamloop-input-1' }, 'us'), { units: 'us' });
    const read = planDocument().read(document);
    expect(read.settling).toEqual(filled.settling);
    expect(read.iceAround).toEqual(iced.iceAround);
  });
});

describe('the fill of the trenches', () => {
  it('is the soil at the pipes at a part of its density, loose in the first year, settled in the year that repeats', () => {
    const { firstWinter, settled, followedLength, trenchDepth } = settlingOf(filled);
    const native = filled.soil.layers.at(-1)?.properties;
    expect(firstWinter.dryDensity / (native?.phases?.dryDensity ?? Number.NaN)).toBeCloseTo(0.85, 9);
    expect(settled.dryDensity / (native?.phases?.dryDensity ?? Number.NaN)).toBeCloseTo(0.95, 9);
    expect(firstWinter.conductivity).toBeLessThan(settled.conductivity);
    expect(settled.conductivity).toBeLessThan(native?.thermal.conductivity ?? Number.NaN);
    expect(firstWinter.addedResistance).toBeGreaterThan(settled.addedResistance);
    expect(followedLength).toBe(filled.byHours.followedLength);
    expect(trenchDepth).toBeGreaterThan(2);
    expect([firstWinter.fluidOfYear.year, settled.fluidOfYear.year]).toEqual([1, filled.byHours.lastYear.year]);
    expect([firstWinter.binding?.year, settled.binding?.year]).toEqual(['first', 'last']);
  });

  it('makes the winter colder and the loop longer, the looser the more', () => {
    const { firstWinter, settled } = settlingOf(filled);
    expect(coldest(firstWinter.fluidOfYear)).toBeLessThan(coldest(plain.byHours.yearOne) - 0.5);
    expect(coldest(settled.fluidOfYear)).toBeLessThan(coldest(plain.byHours.lastYear) - 0.1);
    expect(firstWinter.exactLength).toBeGreaterThan(settled.exactLength ?? Number.NaN);
    expect(settled.exactLength).toBeGreaterThan(plain.byHours.exactLength);
    expect(codes(filled)).toContain('short-in-fill');
    expect(codes(filled)).not.toContain('trench-fill-not-modelled');
    expect(filled.assumptions.map(({ code }) => code)).not.toContain('fill-density-share');
  });

  it('as dense as the soil beside it is native soil', () => {
    const { firstWinter, settled } = settlingOf(
      planLoop({ ...DEMO, trenchFill: { ...trenchFill, firstWinterShare: fraction(1), settledShare: fraction(1) } }),
    );
    // Layers above the one at the pipes differ from it, and the trench is filled with that.
    expect(Math.abs(firstWinter.addedResistance)).toBeLessThan(0.02);
    expect(firstWinter.addedResistance).toBe(settled.addedResistance);
    const [layer] = DEMO.soil.layers.slice(-1);
    if (layer === undefined) throw new Error('no layer');
    const one = { ...DEMO, soil: { layers: [{ ...layer, top: metres(0) }] } };
    const even = planLoop({ ...one, trenchFill: { ...trenchFill, firstWinterShare: fraction(1), settledShare: fraction(1) } });
    const { firstWinter: first, settled: last } = settlingOf(even);
    expect(first.addedResistance).toBeCloseTo(0, 9);
    expect(coldest(first.fluidOfYear)).toBeCloseTo(coldest(even.byHours.yearOne), 6);
    expect(coldest(last.fluidOfYear)).toBeCloseTo(coldest(even.byHours.lastYear), 6);
    expect((last.exactLength ?? Number.NaN) / even.byHours.exactLength).toBeCloseTo(1, 3);
    expect(codes(even)).not.toContain('short-in-fill');
  });

  it('is followed with more pipe where the loop that fits is far too short', () => {
    const tight = planLoop({ ...DEMO, field: { ...DEMO.field, mostTrenches: 1 }, trenchFill });
    expect(settlingOf(tight).followedLength).toBeGreaterThanOrEqual(tight.byHours.followedLength);
    expect(codes(tight)).toContain('field-too-small');
    expect(codes(tight)).toContain('short-in-fill');
  });

  it('is refused where the trench does not hold its pipes, meets the next, settles to looser, or nobody knows its soil', () => {
    const refused = (change: Partial<LoopInput>) => (): unknown => planLoop({ ...DEMO, trenchFill, ...change });
    expect(refused({ trenchFill: { width: metres(0.01) } })).toThrow(/^trenchFill\.width/u);
    expect(refused({ trenchFill: { width: metres(19) } })).toThrow(/^trenchFill\.width: .*trench to trench/u);
    expect(refused({ trenchFill: { ...trenchFill, firstWinterShare: fraction(0.9), settledShare: fraction(0.8) } })).toThrow(
      /^trenchFill\.settledShare/u,
    );
    const dense = { ...trenchFill, settledShare: fraction(1.2) };
    expect(refused({ trenchFill: dense })).toThrow(/^trenchFill\.settledShare: .*dryDensity that follows/u);
    const word = DEMO.soil.layers.map((layer) => ({ ...layer, sample: { from: 'handbook', material: 'clay', state: 'natural' } as const }));
    expect(refused({ soil: { layers: word } })).toThrow(/^trenchFill: .*word/u);
    expect(() => planLoop({ ...DEMO, soil: { layers: word }, followIce: {} })).toThrow(/^followIce: .*word/u);
  });
});

describe('ice around the pipes', () => {
  it('is warmer than without, which is the loop as it was found, and thaws', () => {
    const { withoutIce, withIce, iceYear, credited, roots, heave } = iceOf(iced);
    expect(withoutIce).toEqual(plain.byHours.lastYear);
    expect(coldest(withIce)).toBeGreaterThan(coldest(withoutIce) + 0.3);
    expect(credited).toBe(true);
    expect(iceYear.thawDay).toBeGreaterThan(iceYear.mostIceDay ?? Number.NaN);
    expect(iceYear.months).toHaveLength(12);
    expect(heave.heaveClass).not.toBe('none');
    expect(heave).not.toHaveProperty('structureClearance');
    expect(roots?.largestCooling).toBeGreaterThan(0.1);
    expect(roots?.coldestWith).toBeLessThan(roots?.coldestWithout ?? Number.NaN);
  });

  it('counts for nothing in dry soil, and is told so', () => {
    const dry = planLoop({ ...inSand(4), followIce: {} });
    expect(iceOf(dry).credited).toBe(false);
    expect(coldest(iceOf(dry).withIce)).toBe(coldest(iceOf(dry).withoutIce));
    expect(codes(dry)).toContain('ice-not-credited');
  });

  it('is none where the unit never lets the ground freeze', () => {
    const { heatPump } = DEMO;
    const warm = planLoop({
      ...DEMO,
      heatPump: { ...heatPump, lowestEntering: celsius(4) },
      field: { ...DEMO.field, mostTrenches: 20 },
      followIce: {},
    });
    expect(iceOf(warm).iceYear.frozenRadius).toBe(0);
    expect(iceOf(warm).withIce).toEqual(iceOf(warm).withoutIce);
    expect(iceOf(warm).heave.heaveClass).toBe('none');
  });

  it('comes near a structure, and nearer to deeper roots', () => {
    const near = planLoop({ ...DEMO, followIce: { structureDistance: metres(0.4), rootDepth: metres(0.5) } });
    expect(codes(near)).toContain('ice-near-structure');
    expect(iceOf(near).heave.structureClearance).toBeLessThan(0.4);
    expect(iceOf(near).roots?.largestCooling).toBeGreaterThan(iceOf(iced).roots?.largestCooling ?? Number.NaN);
  });

  it('is refused for roots at the pipes and distances that cannot be', () => {
    const refused = (followIce: NonNullable<LoopInput['followIce']>) => (): unknown => planLoop({ ...DEMO, followIce });
    expect(refused({ rootDepth: metres(1.99) })).toThrow(/^followIce\.rootDepth: .*roots at the pipes/u);
    expect(refused({ structureDistance: metres(-1) })).toThrow(/^followIce\.structureDistance/u);
  });
});
