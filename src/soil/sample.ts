import type { Moisture } from '../states/index.js';
import type { Conductivity, Density, Fraction, HeatCapacity, MassFraction, Shape } from '../units/index.js';
import { HANDBOOK_MATERIALS, HANDBOOK_STATES, type HandbookMaterial, type HandbookState } from './handbook-words.js';
import { type Drying, dryingShape } from './moisture.js';
import { TEXTURE_CLASSES, type TextureClass } from './texture.js';

/** Water content of a sample: known with its basis, or from the weighings before and after drying. */
export type SampleMoisture = Moisture | ({ readonly basis: 'weighed' } & Drying);

/** A dry density and how it was come by. */
export interface GivenDensity<From extends string> {
  /** How it was come by. */
  readonly from: From;
  /** Mass of dry soil per volume [kg/m3]. */
  readonly dryDensity: Density;
}

/** A dry density measured on soil as it lies. */
export interface MeasuredDensity<From extends string> extends GivenDensity<From> {
  /** Standard error of the dry density as a share, 0.001 to 0.6; 3 % when left out [1]. */
  readonly standardError?: Fraction;
}

/**
 * Dry density of a sample: measured in place (a pushed core, a hole filled with sand or water, an intact clod in water), or on soil out of a
 * bag, bucket or auger, which says nothing about how it lay and is replaced by what is typical of the texture, as when nothing was measured.
 */
export type SampleDensity =
  | MeasuredDensity<'core'>
  | MeasuredDensity<'sand cone'>
  | MeasuredDensity<'clod'>
  | MeasuredDensity<'water replacement'>
  | GivenDensity<'disturbed'>
  | { readonly from: 'texture' };

/** Texture class of a sample and how it was found. */
export type SampleTexture =
  | {
      /** By sieve and sedimentation, or an equal laboratory method. */
      readonly from: 'laboratory';
      /** Class of the USDA triangle. */
      readonly class: TextureClass;
    }
  | {
      /** By hand in the field; right in about half to two thirds of cases (`textureByFeel2017`). */
      readonly from: 'feel';
      /** Class of the USDA triangle. */
      readonly class: TextureClass;
    };

/** A soil known by its moisture, density and texture. */
export interface SampledSoil {
  /** A sample was taken. */
  readonly from: 'sample';
  /** Water content. */
  readonly moisture: SampleMoisture;
  /** Dry density and how it was come by. */
  readonly density: SampleDensity;
  /** Texture and how it was found. */
  readonly texture: SampleTexture;
  /** Volume of quartz in the volume of the mineral solids; typical of the texture when left out [1]. */
  readonly quartzFraction?: Fraction;
  /** Density of the grains; 2650, less with organic matter, when left out [kg/m3]. */
  readonly particleDensity?: Density;
  /** Organic matter per dry soil; 0 when left out [kg/kg]. */
  readonly organicMatter?: MassFraction;
}

/** A soil whose conductivity was measured with a probe. */
export interface MeasuredSoil {
  /** A laboratory or a field probe measured it. */
  readonly from: 'laboratory';
  /** Thermal conductivity; of several readings the geometric mean, 0.01 to 10 [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Standard error of the conductivity for the ground at the pipes, as a share, 0.01 to 1; 15 % when left out [1]. */
  readonly standardError?: Fraction;
  /** Volumetric heat capacity, 1e5 to 1e7; assumed when left out [J/(m3.K)]. */
  readonly heatCapacity?: HeatCapacity;
}

/** A soil known only by a word. */
export interface HandbookSoil {
  /** Handbooks have values for the word. */
  readonly from: 'handbook';
  /** What it is. */
  readonly material: HandbookMaterial;
  /** How wet it is. */
  readonly state: HandbookState;
}

/** What is known of a soil: a sample, a measured conductivity, or a word. */
export type SoilSample = SampledSoil | MeasuredSoil | HandbookSoil;

const sampleMoistureShape: Shape<SampleMoisture> = {
  by: 'basis',
  oneOf: { dry: { value: 'moisture on dry basis' }, wet: { value: 'moisture on wet basis' }, weighed: dryingShape },
};

const given = { dryDensity: 'density' } as const;
const measured = { dryDensity: 'density', standardError: { optional: 'fraction' } } as const;

/** Shape of {@link SampleDensity}. */
export const sampleDensityShape: Shape<SampleDensity> = {
  by: 'from',
  oneOf: { core: measured, 'sand cone': measured, clod: measured, 'water replacement': measured, disturbed: given, texture: {} },
};

/** Shape of {@link MeasuredSoil} without its key. */
export const measuredFields: Shape<Omit<MeasuredSoil, 'from'>> = {
  conductivity: 'conductivity',
  standardError: { optional: 'fraction' },
  heatCapacity: { optional: 'heat capacity' },
};

/** Shape of {@link HandbookSoil} without its key. */
export const handbookFields: Shape<Omit<HandbookSoil, 'from'>> = { material: HANDBOOK_MATERIALS, state: HANDBOOK_STATES };

/** Shape of {@link SoilSample}. */
export const soilSampleShape: Shape<SoilSample> = {
  by: 'from',
  oneOf: {
    sample: {
      moisture: sampleMoistureShape,
      density: sampleDensityShape,
      texture: { by: 'from', oneOf: { laboratory: { class: TEXTURE_CLASSES }, feel: { class: TEXTURE_CLASSES } } },
      quartzFraction: { optional: 'fraction' },
      particleDensity: { optional: 'density' },
      organicMatter: { optional: 'mass fraction' },
    },
    laboratory: measuredFields,
    handbook: handbookFields,
  },
};
