/** A mistake somebody may have made, and the input as it would be without it. */
export interface Slip<T> {
  /** The mistake, as the end of a refusal puts it. */
  readonly cause: string;
  /** The input with the mistake undone. */
  readonly undone: T;
}

/** Causes told at once; more would be a list of everything that can go wrong. */
const TOLD = 2;

/** The mistakes that would explain impossible numbers, likeliest first: those without which the input is plausible. */
export function likelyCauses<T>(slips: readonly Slip<T>[], plausible: (input: T) => boolean): string | undefined {
  const causes = [...new Set(slips.filter(({ undone }) => plausible(undone)).map(({ cause }) => cause))].slice(0, TOLD);
  return causes.length === 0 ? undefined : causes.join(', or ');
}

/** The plain slips of a unit: how many times too large the number then is. */
export const MASS_SLIPS: readonly (readonly [cause: string, tooLargeBy: number])[] = [
  ['in grams, given as kilograms', 1e3],
  ['in kilograms, given as grams', 1e-3],
];

/** Slips of a volume. */
export const VOLUME_SLIPS: readonly (readonly [cause: string, tooLargeBy: number])[] = [
  ['in cubic centimetres, given as cubic metres', 1e6],
  ['in cubic centimetres, given as litres', 1e3],
  ['in litres, given as cubic centimetres', 1e-3],
  ['in cubic metres, given as cubic centimetres', 1e-6],
];

/** Slips of a small length. */
export const LENGTH_SLIPS: readonly (readonly [cause: string, tooLargeBy: number])[] = [
  ['in millimetres, given as centimetres', 10],
  ['in centimetres, given as millimetres', 0.1],
  ['in inches, given as centimetres', 0.3937],
  ['in millimetres, given as metres', 1e3],
  ['in centimetres, given as metres', 100],
];

/** Slips of a density. */
const DENSITY_SLIPS: readonly (readonly [cause: string, tooLargeBy: number])[] = [
  ['it may be in g/cm3 or t/m3, given as kg/m3', 1e-3],
  ['it may be in lb/ft3, given as kg/m3', 0.062428],
  ['it may be in kg/m3, given as g/cm3', 1e3],
];

/** Dry densities that mineral soil usually has [kg/m3]; source `common practice`. */
export const USUAL_DENSITY = { low: 800, high: 2300 };

/** Whether a dry density is one that mineral soil usually has. */
export const usualDensity = (density: number): boolean => density >= USUAL_DENSITY.low && density <= USUAL_DENSITY.high;

/** The slip of a unit that would make a density usual, if one does. */
export function densityHint(density: number): string | undefined {
  return likelyCauses(
    DENSITY_SLIPS.map(([cause, tooLargeBy]) => ({ cause, undone: density / tooLargeBy })),
    usualDensity,
  );
}

/** The slips of a unit in one field of an input. */
export function unitSlips<T>(field: string, value: number, slips: typeof MASS_SLIPS, having: (value: number) => T): readonly Slip<T>[] {
  return slips.map(([unit, tooLargeBy]) => ({ cause: `${field} may be ${unit}`, undone: having(value / tooLargeBy) }));
}
