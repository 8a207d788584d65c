import { demand, demandChoice, InputError } from '../errors/index.js';
import type { MassFraction } from '../units/index.js';
import { type Coefficients, coefficientsOf } from './grading.js';
import { type JudgedFines, judgeFines } from './plasticity.js';
import type { UnifiedGroup, UnifiedSoil, UnifiedSoilGroup } from './unified-soil.js';

/** Fines below which a coarse soil is clean, and above which they name it [kg/kg]. */
const CLEAN = 0.05;
const DIRTY = 0.12;

/** How far three fractions may miss their sum by rounding; shares stand on a boundary to a part per billion [kg/kg]. */
const ROUNDING = 0.01;
const SAME = 1e-9;

/**
 * Group of a soil in the Unified Soil Classification System from laboratory data.
 *
 * For all that passes 75 mm. Peat is told by eye. Fines between 5 and 12 % give a dual symbol, and so do silty clay fines.
 *
 * @param soil - fractions [kg/kg], grading where there are up to 12 % of fines, behaviour of the fines where there are 5 % and more
 * @returns the group with the coefficients and the A-line that decided it, and findings
 * @throws InputError when a number is impossible, fractions do not add up to 1 within 0.01, a grading cannot be or not with these fractions, or
 * what the group hangs on is missing
 * @remarks
 * Rules of ASTM D2487 (`astmD2487`). A-line: PI = 0.73 (LL − 20), flat at 4 below LL 25.5; U-line: PI = 0.9 (LL − 8), upright at LL 16; above it
 * data are doubted in a finding. A liquid limit below three quarters of itself after drying in the oven is organic.
 *
 * Invariants: more gravel than sand gives G, less S; a soil of half fines and more is never coarse.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, massPercent } = await import('../units/index.js');
 * const plasticity = { from: 'limits', liquidLimit: dryBasisPercent(35), plasticityIndex: dryBasisPercent(18) } as const;
 * const soil = { type: 'soil', gravel: massPercent(0), sand: massPercent(15), fines: massPercent(85), plasticity } as const;
 * expect(unifiedSoilGroup(soil).group).toBe('CL');
 * ```
 */
export function unifiedSoilGroup(soil: UnifiedSoil): UnifiedSoilGroup {
  demandChoice('type', soil?.type, ['peat', 'soil']);
  if (soil.type === 'peat') return { group: 'PT', organicFines: false, findings: [] };
  const { gravel, sand, fines, grading, plasticity } = soil;
  const shares = { gravel, sand, fines };
  for (const [argument, share] of Object.entries(shares)) demand(argument, 'mass fraction', share, { atLeast: 0, atMost: 1 });
  demandWhole(gravel + sand + fines);
  const coefficients = grading === undefined ? undefined : coefficientsOf(grading, shares);
  const judged = plasticity === undefined ? undefined : judgeFines(plasticity);
  const { aLine, organic = false, findings = [] } = judged ?? {};
  const group =
    fines >= 0.5 - SAME
      ? fineGroup(judged)
      : gravel > sand
        ? coarseGroup('G', fines, coefficients, judged)
        : coarseGroup('S', fines, coefficients, judged);
  return { group, ...coefficients, ...(aLine === undefined ? {} : { aLine }), organicFines: organic, findings };
}

function fineGroup(judged: JudgedFines | undefined): UnifiedGroup {
  if (judged === undefined) return refuseAbsent('plasticity', 'with half and more of fines their behaviour names the soil');
  if (!judged.organic) return judged.group;
  return judged.liquid ? 'OH' : 'OL';
}

type CoarseGroup<Main extends 'G' | 'S'> = `${Main}${'W' | 'P' | 'M' | 'C'}` | `${Main}C-${Main}M` | `${Main}${'W' | 'P'}-${Main}${'M' | 'C'}`;

/** Symbols of a coarse soil whose fines do not matter, matter beside its grading, or matter alone. */
function coarseGroup<Main extends 'G' | 'S'>(
  main: Main,
  fines: MassFraction,
  grading: Coefficients | undefined,
  judged: JudgedFines | undefined,
): CoarseGroup<Main> {
  if (fines > DIRTY + SAME) {
    if (judged === undefined) return refuseAbsent('plasticity', 'with more than 12 % of fines their behaviour names the soil');
    if (judged.group === 'CL-ML') return `${main}C-${main}M`;
    return `${main}${judged.letter}`;
  }
  if (grading === undefined) return refuseAbsent('grading', 'with up to 12 % of fines the grading names the soil');
  const spread = wellGraded(main, grading) ? 'W' : 'P';
  if (fines < CLEAN - SAME) return `${main}${spread}`;
  if (judged === undefined) return refuseAbsent('plasticity', 'with 5 to 12 % of fines their behaviour is part of the symbol');
  return `${main}${spread}-${main}${judged.letter}`;
}

function wellGraded(main: 'G' | 'S', { uniformity, curvature }: Coefficients): boolean {
  return uniformity >= (main === 'G' ? 4 : 6) && curvature >= 1 && curvature <= 3;
}

function demandWhole(sum: number): void {
  if (Math.abs(sum - 1) <= ROUNDING + SAME) return;
  const allowed = 'gravel, sand and fines together 1, to 0.01';
  throw new InputError({ code: 'impossible', argument: 'fines', value: { kind: 'mass fraction', value: sum }, allowed });
}

function refuseAbsent(argument: string, hint: string): never {
  throw new InputError({ code: 'missing', argument, value: undefined, allowed: 'what the laboratory found', hint });
}
