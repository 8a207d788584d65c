import type { Finding } from '../findings/index.js';
import type { Conductivity, Ratio, Shape } from '../units/index.js';
import type { Pores } from './pores.js';

/** A conductivity between those of the dry and of the saturated soil, with what it is made of. */
export interface InterpolatedConductivity {
  /** Thermal conductivity [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Conductivity of the solids [W/(m.K)]. */
  readonly solid: Conductivity;
  /** Conductivity of the soil without water [W/(m.K)]. */
  readonly dry: Conductivity;
  /** Conductivity with all pores full of water or ice [W/(m.K)]. */
  readonly saturated: Conductivity;
  /** How far the soil has come from dry to saturated, 0 to 1 [1]. */
  readonly kerstenNumber: Ratio;
}

/** {@link InterpolatedConductivity} with findings. */
export interface InterpolatedConductivityResult extends InterpolatedConductivity {
  /** What is outside the range of the model. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link InterpolatedConductivity}. */
export const interpolatedConductivityShape: Shape<InterpolatedConductivity> = {
  conductivity: 'conductivity',
  solid: 'conductivity',
  dry: 'conductivity',
  saturated: 'conductivity',
  kerstenNumber: 'ratio',
};

/** Conductivities of soil, of the solids in it and of soil without water, as a model has them. */
interface Ends {
  readonly solid: number;
  readonly dry: number;
  readonly saturated: number;
}

/** The result of a model that goes from dry to saturated by a Kersten number. */
export function interpolated(
  { solid, dry, saturated }: Ends,
  kerstenNumber: number,
  findings: readonly Finding[] = [],
): InterpolatedConductivityResult {
  return { conductivity: dry + (saturated - dry) * kerstenNumber, solid, dry, saturated, kerstenNumber, findings } as InterpolatedConductivityResult;
}

/** What fills the pores, as a model has it; without ice the model has no frozen form. */
interface Filling {
  readonly water: number;
  readonly ice?: number;
}

/** Conductivity with full pores: geometric mean by volume of solids, ice and liquid water. */
export function saturatedConductivity(solid: number, { porosity, liquid }: Pores, { water, ice = water }: Filling): number {
  return solid ** (1 - porosity) * ice ** (porosity - liquid) * water ** liquid;
}
