import { demand, demandChoice, demandObject, InputError } from '../errors/index.js';
import type { Diameter, Ratio } from '../units/index.js';
import type { Grading } from './unified-soil.js';

/** Coefficients of uniformity and curvature. */
export interface Coefficients {
  readonly uniformity: Ratio;
  readonly curvature: Ratio;
}

/** Shares by which the curve of a grading can be held to the fractions [kg/kg]. */
export interface SizeFractions {
  readonly gravel: number;
  readonly fines: number;
}

/** Sieves that part gravel from sand and sand from fines [m]. */
const GRAVEL_SIEVE = 0.00475;
const FINES_SIEVE = 0.000075;

/** Fractions are reported to a whole per cent, sizes read off a drawn curve [kg/kg]. */
const READING = 0.01;

/** Rounding of coefficients that are given with two or three digits [1]. */
const ROUNDING = 1.01;

/** The coefficients of a grading; refuses one that no set of grains can have, or not with these fractions. */
export function coefficientsOf(grading: Grading, fractions: SizeFractions): Coefficients {
  demandObject('grading', grading);
  demandChoice('grading.from', grading.from, ['curve', 'coefficients']);
  return grading.from === 'curve' ? fromCurve(grading, fractions) : asGiven(grading);
}

function asGiven({ uniformity, curvature }: Coefficients): Coefficients {
  demand('grading.uniformity', 'ratio', uniformity, { atLeast: 1, atMost: 1e5 });
  const lowest = 1 / (uniformity * ROUNDING);
  demand('grading.curvature', 'ratio', curvature, { atLeast: lowest, atMost: uniformity * ROUNDING }, 'd30 would lie outside d10 to d60');
  return { uniformity, curvature };
}

function fromCurve(curve: { readonly d10: Diameter; readonly d30: Diameter; readonly d60: Diameter }, fractions: SizeFractions): Coefficients {
  const sizes = [
    ['d10', 0.1],
    ['d30', 0.3],
    ['d60', 0.6],
  ] as const;
  for (const [name, share] of sizes) {
    demand(`grading.${name}`, 'diameter', curve[name], { above: 0, atMost: 0.075 });
    demandPassing(name, curve[name], share, fractions);
  }
  const { d10, d30, d60 } = curve;
  if (d30 < d10) refuseSize('d30', d30, 'at least d10');
  if (d60 < d30) refuseSize('d60', d60, 'at least d30');
  return { uniformity: d60 / d10, curvature: (d30 * d30) / (d10 * d60) } as Coefficients;
}

/** A size that more pass than the fractions let through its sieve, or fewer, belongs to another soil. */
function demandPassing(name: string, size: Diameter, share: number, { gravel, fines }: SizeFractions): void {
  const passing = [
    [FINES_SIEVE, fines],
    [GRAVEL_SIEVE, 1 - gravel],
  ] as const;
  for (const [sieve, passes] of passing) {
    if (passes < share - READING && size < sieve) refuseSize(name, size, `at least ${String(sieve)} m, which ${percent(passes)} pass`);
    if (passes > share + READING && size > sieve) refuseSize(name, size, `at most ${String(sieve)} m, which ${percent(passes)} pass`);
  }
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

function refuseSize(name: string, value: Diameter, allowed: string): never {
  const hint = 'the sizes do not belong to these fractions, or are interchanged';
  throw new InputError({ code: 'impossible', argument: `grading.${name}`, value: { kind: 'diameter', value }, allowed, hint });
}
