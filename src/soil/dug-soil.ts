import type { Finding } from '../findings/index.js';
import { moistureShape, type Moisture } from '../states/index.js';
import type { Density, DryBasisMoisture, Fraction, Mass, Ratio, Shape, Volume } from '../units/index.js';
import type { MeasuredDensity } from './sample.js';

/** Soil taken out of a place of which the volume is measured. */
export interface DugSoil {
  /** Moist soil with its container, up to 1000 kg [kg]. */
  readonly moistMass: Mass;
  /** The empty container; 0 when left out [kg]. */
  readonly tareMass?: Mass;
  /** Water content of the soil with its basis, from a part of it dried in the oven. */
  readonly moisture: Moisture;
  /** Standard error of the water content, above 0 to 1; 0.01 when left out [kg/kg]. */
  readonly moistureError?: DryBasisMoisture;
  /** Standard error of one reading of the balance, above 0 to 10 kg; 1 g when left out [kg]. */
  readonly balanceError?: Mass;
  /** Density of the grains, 1000 to 5000; 2650 when left out [kg/m3]. */
  readonly particleDensity?: Density;
}

/** Shape of {@link DugSoil}. */
export const dugSoilShape: Shape<DugSoil> = {
  moistMass: 'mass',
  tareMass: { optional: 'mass' },
  moisture: moistureShape,
  moistureError: { optional: 'moisture on dry basis' },
  balanceError: { optional: 'mass' },
  particleDensity: { optional: 'density' },
};

/** The ways to measure the density of soil as it lies. */
export type InPlaceMethod = 'core' | 'sand cone' | 'clod' | 'water replacement';

/** Density of soil as it lay, from weighings and a volume. Does as the density of a sample. */
export interface InPlaceDensity<From extends InPlaceMethod = InPlaceMethod> extends MeasuredDensity<From> {
  /** Mass of dry soil per volume [kg/m3]. */
  readonly dryDensity: Density;
  /** Standard error of the dry density as a share: readings, and 2 % for cutting and crumbling [1]. */
  readonly standardError: Fraction;
  /** Standard error of the dry density as a share by the readings alone [1]. */
  readonly readingError: Fraction;
  /** Mass of solids and water per volume of soil [kg/m3]. */
  readonly moistDensity: Density;
  /** Volume the soil took up where it lay [m3]. */
  readonly volume: Volume;
  /** Moist soil without its container [kg]. */
  readonly soilMass: Mass;
  /** Volume of water in the volume of pores; at most 1.05, and over 1 only by error of measurement or swelling [1]. */
  readonly saturation: Ratio;
}

/** {@link InPlaceDensity} with findings. */
export interface InPlaceDensityResult<From extends InPlaceMethod = InPlaceMethod> extends InPlaceDensity<From> {
  /** What is possible but doubtful about the density. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link InPlaceDensity}. */
export const inPlaceDensityShape: Shape<InPlaceDensity> = {
  from: ['core', 'sand cone', 'clod', 'water replacement'],
  dryDensity: 'density',
  standardError: 'fraction',
  readingError: 'fraction',
  moistDensity: 'density',
  volume: 'volume',
  soilMass: 'mass',
  saturation: 'ratio',
};
