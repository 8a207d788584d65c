import { demand } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Diameter, Length, Shape } from '../units/index.js';
import { type DugSoil, dugSoilShape, type InPlaceDensityResult } from './dug-soil.js';
import { inPlaceDensity, readDug } from './in-place-density.js';
import { LENGTH_SLIPS, unitSlips, type Slip } from './likely-cause.js';
import type { Take } from './propagated-error.js';

/** A cylinder pushed or driven into the ground, trimmed and weighed. */
export interface CoreSample extends DugSoil {
  /** Inside diameter of the cutting edge, 1 cm to 1 m [m]. */
  readonly coreDiameter: Diameter;
  /** Length of the soil in the cylinder, 1 cm to 3 m; shorter than the cylinder was pushed means that it was pressed together [m]. */
  readonly coreLength: Length;
  /** Standard error of both lengths, above 0 to 5 cm; 0.5 mm when left out [m]. */
  readonly rulerError?: Length;
}

/** Shape of {@link CoreSample}. */
export const coreSampleShape: Shape<CoreSample> = /* @__PURE__ */ joinedShape(dugSoilShape, {
  coreDiameter: 'diameter',
  coreLength: 'length',
  rulerError: { optional: 'length' },
});

/**
 * Dry density of the ground from a cylinder of soil cut out of it.
 *
 * For soil that stands in a cylinder: clay, silt, moist fine sand. Stones and loose sand want a hole filled with sand or water.
 *
 * @param core - weighings [kg], moisture, diameter and length of the cylinder of soil [m]
 * @returns densities [kg/m3], volume [m3], saturation and errors [1], with findings
 * @throws InputError when a reading is impossible, or all together are; the hint names the slip that would explain them
 * @remarks
 * ρd = m / (1 + w) / (π d² L / 4). The error follows from those of all readings, to first order. Source: `soilMechanicsTexts`. Checked against
 * worked values, the error against a Monte Carlo.
 *
 * Invariants: the same in any unit; twice the length with twice the mass changes nothing.
 * @example
 * ```ts @import.meta.vitest
 * const { centimetres, diameterMillimetres, dryBasisPercent, grams } = await import('../units/index.js');
 * const core = coreDensity({
 *   moistMass: grams(375),
 *   moisture: { basis: 'dry', value: dryBasisPercent(19.4) },
 *   coreDiameter: diameterMillimetres(50),
 *   coreLength: centimetres(10),
 * });
 * expect(core.dryDensity).toBeCloseTo(1600, -1);
 * expect(core.standardError).toBeCloseTo(0.03, 2);
 * ```
 */
export function coreDensity(core: CoreSample): InPlaceDensityResult<'core'> {
  const { coreDiameter, coreLength, rulerError = 0.0005 as Length } = core;
  const readings = readDug(core);
  demand('coreDiameter', 'diameter', coreDiameter, { atLeast: 0.01, atMost: 1 }, lengthHint(coreDiameter));
  demand('coreLength', 'length', coreLength, { atLeast: 0.01, atMost: 3 }, lengthHint(coreLength));
  demand('rulerError', 'length', rulerError, { above: 0, atMost: 0.05 });
  const diameter = { value: coreDiameter, error: rulerError };
  const length = { value: coreLength, error: rulerError };
  const cylinder = (across: number, along: number): number => (Math.PI / 4) * across ** 2 * along;
  const of = (take: Take): number => cylinder(take(diameter), take(length));
  const mistaken: readonly Slip<readonly [across: number, along: number]>[] = [
    { cause: 'the diameter may be the radius', undone: [2 * coreDiameter, coreLength] },
    ...unitSlips('the diameter', coreDiameter, LENGTH_SLIPS, (across) => [across, coreLength] as const),
    ...unitSlips('the length', coreLength, LENGTH_SLIPS, (along) => [coreDiameter, along] as const),
    ...LENGTH_SLIPS.map(([unit, by]) => ({ cause: `both lengths may be ${unit}`, undone: [coreDiameter / by, coreLength / by] as const })),
  ];
  const slips = mistaken
    .filter(({ undone }) => undone.every((each) => each >= 0.01 && each <= 3))
    .map(({ cause, undone }) => ({ cause, undone: cylinder(...undone) }));
  return inPlaceDensity('core', core, readings, { of, readings: [diameter, length], slips });
}

/** The likely slip behind a length that no core has. */
function lengthHint(length: number): string | undefined {
  if (length > 3) return 'it may be in millimetres or centimetres, given as metres';
  return length > 0 && length < 0.01 ? 'it may be in centimetres, given as millimetres' : undefined;
}
