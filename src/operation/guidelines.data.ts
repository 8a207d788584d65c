import type { ReferenceKey } from '../references/index.js';

/** Soils that the area guideline tells apart. */
export type GuidelineSoil = 'dry non-cohesive' | 'damp cohesive' | 'water-saturated sand or gravel';

/** Extraction per area by soil [W/m2] at the two numbers of full-load hours a year, with pipes so far apart [m]. */
export const AREA_EXTRACTION: {
  readonly hours: readonly [fewer: number, more: number];
  readonly pipeSpacing: number;
  readonly source: ReferenceKey;
  readonly soils: Readonly<Record<GuidelineSoil, Readonly<Record<'low' | 'typical' | 'high', readonly [atFewerHours: number, atMoreHours: number]>>>>;
} = {
  hours: [1800, 2400],
  pipeSpacing: 0.8,
  source: 'areaGuideline2001',
  soils: {
    'dry non-cohesive': { low: [10, 8], typical: [10, 8], high: [10, 8] },
    'damp cohesive': { low: [20, 16], typical: [25, 20], high: [30, 24] },
    'water-saturated sand or gravel': { low: [40, 32], typical: [40, 32], high: [40, 32] },
  },
};

/** Ways to lay pipe that rules of thumb tell apart; `straight` is any straight pipe. */
export type RuleLayout = 'straight' | 'one-pipe' | 'two-pipe' | 'four-pipe' | 'coil';

/** Usual pipe per ton of nominal capacity [ft/ton]. */
export const LENGTH_PER_TON: Readonly<Record<RuleLayout, { readonly low: number; readonly high: number; readonly source: ReferenceKey }>> = {
  straight: { low: 400, high: 600, source: 'straightLengthPerTon' },
  'one-pipe': { low: 350, high: 500, source: 'layoutLengthPerTon' },
  'two-pipe': { low: 420, high: 600, source: 'layoutLengthPerTon' },
  'four-pipe': { low: 500, high: 800, source: 'layoutLengthPerTon' },
  coil: { low: 500, high: 1000, source: 'coilLengthPerTon' },
};
