import { demand, InputError } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Shape, Volume } from '../units/index.js';
import { type DugSoil, dugSoilShape, type InPlaceDensityResult } from './dug-soil.js';
import { inPlaceDensity, readDug } from './in-place-density.js';
import { unitSlips, VOLUME_SLIPS } from './likely-cause.js';
import type { Take } from './propagated-error.js';

/** A hole lined with thin film and filled with water to the level it was cut from. */
export interface WaterFilledHole extends DugSoil {
  /** Water that fills the lined hole to its edge, 1e-5 to 1 [m3]. */
  readonly waterVolume: Volume;
  /** Water up to the same mark before the hole was dug, where a ring stood on rough ground; 0 when left out [m3]. */
  readonly levelVolume?: Volume;
  /** Standard error of each of the two volumes, above 0; 2 % of the water in the hole when left out [m3]. */
  readonly volumeError?: Volume;
}

/** Shape of {@link WaterFilledHole}. */
export const waterFilledHoleShape: Shape<WaterFilledHole> = /* @__PURE__ */ joinedShape(dugSoilShape, {
  waterVolume: 'volume',
  levelVolume: { optional: 'volume' },
  volumeError: { optional: 'volume' },
});

/** What a film that does not lie close in the corners costs, as a share of the water; source `common practice`. */
const FOLDS = 0.02;

/**
 * Dry density of the ground from a lined hole filled with water.
 *
 * For stony soil, in which a cylinder does not go and a hole must be large. Folds of the film make the volume come out small, and the density great.
 *
 * @param hole - weighing of the soil [kg], moisture, volumes of water [m3]
 * @returns densities [kg/m3], volume of the hole [m3], saturation and errors [1], with findings
 * @throws InputError when a reading is impossible, or all together are; the hint names the slip that would explain them
 * @remarks
 * ρd = m / (1 + w) / (water in the hole − water to the level). Source: `soilMechanicsTexts`. Checked by hand, the error against a Monte Carlo.
 * @example
 * ```ts @import.meta.vitest
 * const { dryBasisPercent, kilograms, litres } = await import('../units/index.js');
 * const hole = waterReplacementDensity({
 *   moistMass: kilograms(22),
 *   moisture: { basis: 'dry', value: dryBasisPercent(10) },
 *   waterVolume: litres(10),
 * });
 * expect(hole.dryDensity).toBeCloseTo(2000, 9);
 * ```
 */
export function waterReplacementDensity(hole: WaterFilledHole): InPlaceDensityResult<'water replacement'> {
  const { waterVolume, levelVolume = 0 as Volume, volumeError = (FOLDS * waterVolume) as Volume } = hole;
  const readings = readDug(hole);
  const hint = waterVolume > 1 ? 'it may be in litres or cubic centimetres, given as cubic metres' : undefined;
  demand('waterVolume', 'volume', waterVolume, { atLeast: 1e-5, atMost: 1 }, hint);
  demand('levelVolume', 'volume', levelVolume, { atLeast: 0, atMost: 1 });
  demand('volumeError', 'volume', volumeError, { above: 0, atMost: 1 });
  if (levelVolume >= waterVolume) {
    throw new InputError({
      code: 'impossible',
      argument: 'levelVolume',
      value: { kind: 'volume', value: levelVolume },
      allowed: `below the water in the hole, ${waterVolume.toPrecision(4)} m3`,
      hint: levelVolume > waterVolume ? 'the two volumes may be interchanged' : 'the same volume may have been given twice',
    });
  }
  const filled = { value: waterVolume, error: volumeError };
  const level = { value: levelVolume, error: levelVolume === 0 ? 0 : volumeError };
  const of = (take: Take): number => take(filled) - take(level);
  const slips = unitSlips('the volume', waterVolume - levelVolume, VOLUME_SLIPS, Number);
  return inPlaceDensity('water replacement', hole, readings, { of, readings: [filled, level], slips });
}
