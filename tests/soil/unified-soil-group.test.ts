import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  UNIFIED_GROUPS,
  unifiedSoilGroup,
  unifiedSoilShape,
  type Fines,
  type FinesGroup,
  type Grading,
  type UnifiedGroup,
  type UnifiedSoil,
} from '../../src/soil/index.js';
import { diameterMillimetres, dryBasisFraction, dryBasisPercent, massFraction, massPercent, ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

type Soil = Extract<UnifiedSoil, { readonly type: 'soil' }>;

const share = fc.double({ min: 0, max: 1, noNaN: true });
const limits = (liquidLimit: number, plasticityIndex: number): Fines => ({
  from: 'limits',
  liquidLimit: dryBasisPercent(liquidLimit),
  plasticityIndex: dryBasisPercent(plasticityIndex),
});
const named = (group: FinesGroup): Fines => ({ from: 'group', group });
const graded = (uniformity: number, curvature: number): Grading => ({
  from: 'coefficients',
  uniformity: ratio(uniformity),
  curvature: ratio(curvature),
});
const curve = (d10: number, d30: number, d60: number): Grading => ({
  from: 'curve',
  d10: diameterMillimetres(d10),
  d30: diameterMillimetres(d30),
  d60: diameterMillimetres(d60),
});
const soil = (gravel: number, sand: number, fines: number, more: Pick<Soil, 'grading' | 'plasticity'> = {}): Soil => ({
  type: 'soil',
  gravel: massPercent(gravel),
  sand: massPercent(sand),
  fines: massPercent(fines),
  ...more,
});
const groupOf = (...given: Parameters<typeof soil>): UnifiedGroup => unifiedSoilGroup(soil(...given)).group;
const fine = (plasticity: Fines): UnifiedGroup => groupOf(0, 10, 90, { plasticity });

describe('unifiedSoilGroup', () => {
  it('reaches every group there is', () => {
    const coarse = (['G', 'S'] as const).flatMap((main) => {
      const [gravel, sand] = main === 'G' ? [1, 0] : [0, 1];
      const of = (fines: number, more: Pick<Soil, 'grading' | 'plasticity'>): UnifiedGroup =>
        groupOf(gravel * (100 - fines), sand * (100 - fines), fines, more);
      const spreads = [graded(8, 1.5), graded(2, 1)];
      return [
        ...spreads.map((grading) => of(2, { grading })),
        ...spreads.flatMap((grading) => (['ML', 'CH'] as const).map((group) => of(8, { grading, plasticity: named(group) }))),
        ...(['MH', 'CL', 'CL-ML'] as const).map((group) => of(30, { plasticity: named(group) })),
      ];
    });
    const dried = (liquidLimit: number): Fines => ({
      from: 'limits',
      liquidLimit: dryBasisPercent(liquidLimit),
      plasticityIndex: dryBasisPercent(15),
      ovenDriedLiquidLimit: dryBasisPercent(0.7 * liquidLimit),
    });
    const fines = [limits(30, 15), limits(30, 5), limits(22, 5), limits(60, 35), limits(60, 20), dried(45), dried(60)].map(fine);
    expect(new Set([...coarse, ...fines, unifiedSoilGroup({ type: 'peat' }).group])).toEqual(new Set(UNIFIED_GROUPS));
  });

  it('turns on the lines as the standard has it', () => {
    const poor = { grading: graded(2, 1) };
    const dual = { ...poor, plasticity: named('ML') };
    expect([groupOf(0, 95.1, 4.9, poor), groupOf(0, 95, 5, dual), groupOf(0, 88, 12, dual), groupOf(0, 87.9, 12.1, dual)]).toEqual([
      'SP',
      'SP-SM',
      'SP-SM',
      'SM',
    ]);
    expect([groupOf(0, 50.1, 49.9, dual), groupOf(0, 50, 50, dual)]).toEqual(['SM', 'ML']);
    expect([groupOf(48, 48, 4, poor), groupOf(48.1, 47.9, 4, poor)]).toEqual(['SP', 'GP']);
    const gravel = (cu: number, cc: number): UnifiedGroup => groupOf(96, 0, 4, { grading: graded(cu, cc) });
    expect([gravel(4, 1), gravel(3.9, 1), gravel(4, 3), gravel(4, 3.1), gravel(4, 0.9)]).toEqual(['GW', 'GP', 'GW', 'GP', 'GP']);
    const sand = (cu: number): UnifiedGroup => groupOf(0, 96, 4, { grading: graded(cu, 1) });
    expect([sand(6), sand(5.9)]).toEqual(['SW', 'SP']);
    // On the A-line: 0.73 (40 − 20) = 14.6; silty clay from 4 to 7; half water is liquid.
    expect([fine(limits(40, 14.6)), fine(limits(40, 14.5))]).toEqual(['CL', 'ML']);
    expect([fine(limits(24, 4)), fine(limits(24, 3.9)), fine(limits(24, 7)), fine(limits(24, 7.1))]).toEqual(['CL-ML', 'ML', 'CL-ML', 'CL']);
    expect([fine(limits(50, 21.9)), fine(limits(49.9, 21.9)), fine(limits(50, 21.8))]).toEqual(['CH', 'CL', 'MH']);
    expect(fine({ from: 'nonplastic' })).toBe('ML');
  });

  it('tells organic soil by its limit after drying, whatever its plasticity', () => {
    const organic = (liquidLimit: number, dried: number, plasticityIndex: number): UnifiedGroup =>
      fine({
        from: 'limits',
        liquidLimit: dryBasisPercent(liquidLimit),
        plasticityIndex: dryBasisPercent(plasticityIndex),
        ovenDriedLiquidLimit: dryBasisPercent(dried),
      });
    expect([5, 15, 30].map((index) => organic(45, 30, index))).toEqual(['OL', 'OL', 'OL']);
    expect([organic(60, 44.9, 20), organic(60, 45, 20)]).toEqual(['OH', 'MH']);
    const dried: Fines = { ...limits(40, 20), ovenDriedLiquidLimit: dryBasisPercent(20) } as Fines;
    expect(unifiedSoilGroup(soil(0, 80, 20, { plasticity: dried }))).toMatchObject({ group: 'SC', organicFines: true });
  });

  it('doubts a plasticity beyond the U-line, and none on it', () => {
    const codes = (liquidLimit: number, index: number): readonly string[] =>
      unifiedSoilGroup(soil(0, 10, 90, { plasticity: limits(liquidLimit, index) })).findings.map(({ code }) => code);
    // 0.9 (60 − 8) = 46.8; upright at 16, up to 7.
    expect([codes(60, 46.8), codes(60, 46.9), codes(16, 7), codes(16, 7.3), codes(15, 3)].map((found) => found.length)).toEqual([0, 1, 0, 1, 1]);
    expect(codes(60, 50)).toEqual(['plasticity-beyond-soils']);
  });

  it('reads the coefficients off a curve', () => {
    const found = unifiedSoilGroup(soil(0, 97, 3, { grading: curve(0.1, 0.4, 1) }));
    expect(found.uniformity).toBeCloseTo(10, 12);
    expect(found.curvature).toBeCloseTo(1.6, 12);
    expect(found.group).toBe('SW');
  });

  it('refuses gradings that no soil has', () => {
    const refused = (grading: Grading, fines = 3): string => {
      try {
        return unifiedSoilGroup(soil(40, 60 - fines, fines, { grading, plasticity: named('ML') })).group;
      } catch (error) {
        return String(error);
      }
    };
    expect(refused(curve(1, 0.5, 4))).toContain('grading.d30');
    expect(refused(curve(0.1, 3, 2))).toContain('grading.d60');
    expect(refused(curve(0.01, 0.5, 4))).toContain('grading.d10: 0.00001 (diameter) is not allowed; allowed: at least 0.000075 m, which 3.0 % pass');
    expect(refused(curve(0.1, 0.5, 4), 40)).toContain('allowed: at most 0.000075 m, which 40.0 % pass');
    expect(refused(curve(0.1, 6, 8))).toContain('grading.d30: 0.006 (diameter) is not allowed; allowed: at most 0.00475 m');
    expect(refused(graded(0.9, 1))).toContain('grading.uniformity');
    expect(refused(graded(5, 6))).toContain('d30 would lie outside');
    expect(refused(graded(5, 0.19))).toContain('d30 would lie outside');
  });

  it('asks for what the group hangs on', () => {
    expect(() => groupOf(0, 97, 3)).toThrow('grading: nothing');
    expect(() => groupOf(0, 92, 8, { grading: graded(8, 1) })).toThrow('plasticity: nothing');
    expect(() => groupOf(0, 70, 30)).toThrow('plasticity: nothing');
    expect(() => groupOf(0, 10, 90)).toThrow('plasticity: nothing');
    expect(() => groupOf(10, 10, 70, { plasticity: named('CL') })).toThrow('together 1');
    expect(() => fine(limits(30, 31))).toThrow('liquid limit less the plastic limit');
  });

  it('names gravel by G, sand by S, and half fines by neither', () => {
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.05, max: 1.5, noNaN: true }), share, (part, rest, liquidLimit, plastic) => {
        const fines = part;
        const gravel = (1 - part) * rest;
        const { group } = unifiedSoilGroup({
          type: 'soil',
          gravel: massFraction(gravel),
          sand: massFraction(1 - fines - gravel < 0 ? 0 : 1 - fines - gravel),
          fines: massFraction(fines),
          grading: graded(7, 2),
          plasticity: { from: 'limits', liquidLimit: dryBasisFraction(liquidLimit), plasticityIndex: dryBasisFraction(plastic * liquidLimit) },
        });
        if (Math.abs(fines - 0.5) > 1e-6 && Math.abs(rest - 0.5) > 1e-6)
          expect(group.startsWith(fines > 0.5 ? group : rest > 0.5 ? 'G' : 'S')).toBe(true);
        expect(/^[GS]/u.test(group)).toBe(fines < 0.5 - 1e-9);
      }),
    );
  });

  it('refuses bad input by name', () => {
    const dirty = soil(40, 52, 8, {
      grading: curve(0.09, 0.5, 4),
      plasticity: { ...limits(30, 15), ovenDriedLiquidLimit: dryBasisPercent(28) } as Fines,
    });
    const more = [
      soil(40, 52, 8, { grading: graded(8, 2), plasticity: named('CL') }),
      soil(40, 40, 20, { plasticity: { from: 'nonplastic' } }),
      { type: 'peat' } as const,
    ];
    refuses<UnifiedSoil>(unifiedSoilGroup, unifiedSoilShape, dirty, { more });
  });
});
