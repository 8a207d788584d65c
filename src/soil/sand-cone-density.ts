import { demand, InputError } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Density, Fraction, Mass, Shape } from '../units/index.js';
import { type DugSoil, dugSoilShape, type InPlaceDensityResult } from './dug-soil.js';
import { demandMass, inPlaceDensity, readDug } from './in-place-density.js';
import { densityHint, likelyCauses, MASS_SLIPS, unitSlips, type Slip } from './likely-cause.js';
import type { Take } from './propagated-error.js';

/** A hole dug in level ground and filled with dry sand out of a jar with a cone. */
export interface SandConeTest extends DugSoil {
  /** Jar, cone and sand before the hole is filled [kg]. */
  readonly sandBefore: Mass;
  /** Jar, cone and sand left over when the sand has stopped running [kg]. */
  readonly sandAfter: Mass;
  /** Sand that fills the cone and the plate over a flat surface, from a trial without a hole [kg]. */
  readonly coneSand: Mass;
  /** Density of the sand as it runs, from filling a vessel of known volume, 1000 to 2000 [kg/m3]. */
  readonly sandDensity: Density;
  /** Standard error of that density as a share, above 0 to 0.2; 1 % when left out [1]. */
  readonly sandDensityError?: Fraction;
}

/** Shape of {@link SandConeTest}. */
export const sandConeTestShape: Shape<SandConeTest> = /* @__PURE__ */ joinedShape(dugSoilShape, {
  sandBefore: 'mass',
  sandAfter: 'mass',
  coneSand: 'mass',
  sandDensity: 'density',
  sandDensityError: { optional: 'fraction' },
});

/**
 * Dry density of the ground from a hole filled with sand.
 *
 * For soil in which a hole stands by itself. No one works in a deep trench for it: cut the hole on a bench of firm ground.
 *
 * @param test - weighings of soil and sand [kg], moisture, density of the sand [kg/m3]
 * @returns densities [kg/m3], volume of the hole [m3], saturation and errors [1], with findings
 * @throws InputError when a reading is impossible, or all together are; the hint names the slip that would explain them
 * @remarks
 * V = (before − after − cone) / ρ of the sand; ρd = m / (1 + w) / V. Sources: `astmD1556`, `soilMechanicsTexts`. Checked against published worked
 * tests, the error against a Monte Carlo.
 *
 * Invariant: the sand in the jar at the start does not matter.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, kilograms, kilogramsPerCubicMetre } = await import('../units/index.js');
 * const hole = sandConeDensity({
 *   moistMass: kilograms(3.2),
 *   moisture: { basis: 'dry', value: dryBasisPercent(12) },
 *   sandBefore: kilograms(6.5),
 *   sandAfter: kilograms(2.7),
 *   coneSand: kilograms(1.5),
 *   sandDensity: kilogramsPerCubicMetre(1400),
 * });
 * expect(hole.volume).toBeCloseTo(2.3 / 1400, 9);
 * expect(hole.dryDensity).toBeCloseTo(1739, 0);
 * ```
 */
export function sandConeDensity(test: SandConeTest): InPlaceDensityResult<'sand cone'> {
  const { sandBefore, sandAfter, coneSand, sandDensity, sandDensityError = 0.01 as Fraction } = test;
  const readings = readDug(test);
  demandMass('sandBefore', sandBefore);
  demandMass('sandAfter', sandAfter);
  demandMass('coneSand', coneSand);
  demand('sandDensity', 'density', sandDensity, { atLeast: 1000, atMost: 2000 }, densityHint(sandDensity));
  demand('sandDensityError', 'fraction', sandDensityError, { above: 0, atMost: 0.2 });
  if (sandBefore - sandAfter <= coneSand) refuseSand(test);
  const weighed = (value: number): { value: number; error: number } => ({ value, error: readings.balanceError });
  const [before, after, cone] = [weighed(sandBefore), weighed(sandAfter), weighed(coneSand)];
  const density = { value: sandDensity, error: sandDensity * sandDensityError };
  const of = (take: Take): number => (take(before) - take(after) - take(cone)) / take(density);
  const filled = (sand: number): number => sand / sandDensity;
  const slips: readonly Slip<number>[] = [
    { cause: 'the sand of the cone may have been taken off already', undone: filled(sandBefore - sandAfter) },
    ...unitSlips('the sand in the cone', coneSand, MASS_SLIPS, (mass) => filled(sandBefore - sandAfter - mass)),
    ...MASS_SLIPS.map(([unit, by]) => ({
      cause: `all weighings of the sand may be ${unit}`,
      undone: filled((sandBefore - sandAfter - coneSand) / by),
    })),
  ];
  return inPlaceDensity('sand cone', test, readings, { of, readings: [before, after, cone, density], slips });
}

/** Refuses a test in which no sand ran into the hole; the hint tells which mistake would explain it. */
function refuseSand({ sandBefore, sandAfter, coneSand }: SandConeTest): never {
  const slips: readonly Slip<number>[] = [
    { cause: 'the jar before and after may be interchanged', undone: sandAfter - sandBefore - coneSand },
    ...unitSlips('the sand in the cone', coneSand, MASS_SLIPS, (mass) => sandBefore - sandAfter - mass),
    ...unitSlips('the jar after', sandAfter, MASS_SLIPS, (mass) => sandBefore - mass - coneSand),
  ];
  throw new InputError({
    code: 'impossible',
    argument: 'sandAfter',
    value: { kind: 'mass', value: sandAfter },
    allowed: `below ${(sandBefore - coneSand).toPrecision(4)} kg, what was there before less the sand in the cone`,
    hint: likelyCauses(slips, (intoHole) => intoHole > 0) ?? 'the jar may not have been full enough for the hole',
  });
}
