import { demand } from '../errors/index.js';
import type { Conductivity, Fraction, VolumeFraction } from '../units/index.js';

/** Conductivity of quartz [W/(m.K)]. */
const QUARTZ = 7.7;

/** Other minerals: 2.0 beside much quartz, 3.0 where there is a fifth of it or less [W/(m.K)]. */
const MINERALS = { quartzRich: 2.0, quartzPoor: 3.0 };
const QUARTZ_RICH = 0.2;

/** Organic solids [W/(m.K)]. */
export const ORGANIC = 0.25;

/**
 * Conductivity of the solids: geometric mean of quartz, other minerals and organic matter by volume (`johansen1975`, `landModelSoils`).
 *
 * The step of the other minerals at a quartz fraction of 0.2 is the author's; it drops the solids by 28 % just above.
 */
export function solidConductivity(quartzFraction: number, organicShare = 0): number {
  const others = quartzFraction > QUARTZ_RICH ? MINERALS.quartzRich : MINERALS.quartzPoor;
  return (QUARTZ ** quartzFraction * others ** (1 - quartzFraction)) ** (1 - organicShare) * ORGANIC ** organicShare;
}

/** What the solids of a soil are. */
export interface SoilSolids {
  /** Volume of quartz in the volume of mineral solids, 0 to 1 [1]. */
  readonly quartzFraction: Fraction;
  /** Volume of organic matter in the volume of solids, 0 to 1; 0 when left out [m3/m3]. */
  readonly organicShare?: VolumeFraction;
}

/**
 * Thermal conductivity of the solids of a soil, mineral and organic mixed.
 *
 * Geometric mean by volume of quartz (7.7), other minerals (2.0, or 3.0 where quartz is a fifth or less) and organic matter (0.25). At a
 * quartz fraction of 0.2 it steps from 3.62 down to 2.62: the author's, kept so that published values come out; sources disagree which side
 * 0.2 itself is on, here that of the poorer. Quartz of de Vries would be 8.8.
 *
 * @param solids - quartz in the minerals [1], organic matter in the solids [m3/m3]
 * @returns conductivity [W/(m.K)]
 * @throws InputError when a share is impossible
 * @remarks
 * ks = (7.7^q · ko^(1−q))^(1−o) · 0.25^o. Source: `johansen1975`, organic matter as in `landModelSoils`. Checked against cases computed
 * independently.
 *
 * Invariant: more organic matter never conducts better.
 * @example
 * ```ts @import.meta.vitest
 * const { fraction, volumeFraction } = await import('../units/index.js');
 * expect(solidsConductivity({ quartzFraction: fraction(0.6) })).toBeCloseTo(4.491, 3);
 * expect(solidsConductivity({ quartzFraction: fraction(0.6), organicShare: volumeFraction(0.2) })).toBeCloseTo(2.52, 3);
 * ```
 */
export function solidsConductivity({ quartzFraction, organicShare = 0 as VolumeFraction }: SoilSolids): Conductivity {
  demand('quartzFraction', 'fraction', quartzFraction, { atLeast: 0, atMost: 1 });
  demand('organicShare', 'volume fraction', organicShare, { atLeast: 0, atMost: 1 });
  return solidConductivity(quartzFraction, organicShare) as Conductivity;
}
