import { joinedShape } from '../states/index.js';
import type { Conductivity, Density, DryBasisMoisture, Fraction, HeatCapacity, MassFraction, Shape, Temperature } from '../units/index.js';
import { MOISTURE_WORDS, type MoistureWord } from './field-terms.data.js';
import { type JarTest, jarTestShape } from './jar-test.js';
import { dryingShape } from './moisture.js';
import {
  handbookFields,
  type HandbookSoil,
  measuredFields,
  type MeasuredSoil,
  type SampleDensity,
  sampleDensityShape,
  type SampleMoisture,
} from './sample.js';
import { FEEL_ANSWERS, type FeelAnswer } from './texture-by-feel.data.js';
import { TEXTURE_CLASSES, type TextureClass } from './texture.js';

/** Who judged a texture by hand, as the study tells people apart that says how often they were right (`textureByFeel2017`). */
export type FeelObserver = 'professional' | 'seasonal staff';

/** A class of the texture triangle that somebody named. */
export interface NamedTexture<From extends string> {
  /** How it was found. */
  readonly from: From;
  /** Class of the USDA triangle. */
  readonly class: TextureClass;
}

/** What is known of the texture, best first: sizes of grain or the class of a laboratory, a jar, the hand, nothing. */
export type TextureEvidence =
  | {
      /** By sieve and sedimentation, in numbers. */
      readonly from: 'fractions';
      /** Grains of 0.05 to 2 mm in the dry mass of fine earth, 0 to 1 [kg/kg]. */
      readonly sand: MassFraction;
      /** Grains below 0.002 mm in the dry mass of fine earth, 0 to 1, with the sand no more than 1 [kg/kg]. */
      readonly clay: MassFraction;
    }
  | NamedTexture<'laboratory'>
  | ({ readonly from: 'jar' } & JarTest)
  | (NamedTexture<'feel'> & {
      /** Who judged; seasonal staff when left out. */
      readonly observer?: FeelObserver;
    })
  | {
      /** By hand, question by question. */
      readonly from: 'feel path';
      /** Answers along the path of `nextFeelQuestion`, from the first to the end. */
      readonly answers: readonly FeelAnswer[];
      /** Who judged; seasonal staff when left out. */
      readonly observer?: FeelObserver;
    }
  | { readonly from: 'unknown' };

/** What is known of the water: a share with its basis, weighings, or a word. */
export type MoistureEvidence =
  | SampleMoisture
  | {
      /** By sight and touch. */
      readonly basis: 'word';
      /** Dusty, damp, or with free water. */
      readonly word: MoistureWord;
    };

/** A soil of which a sample was taken or looked at, each of its properties known in its own way. */
export interface SampleEvidence {
  /** Soil was taken or looked at. */
  readonly from: 'sample';
  /** Texture and how it was found. */
  readonly texture: TextureEvidence;
  /** Water and how it was found. */
  readonly moisture: MoistureEvidence;
  /** Standard error of the water content, weighed or given, 0.0001 to 1; 0.01 when left out [kg/kg]. */
  readonly moistureError?: DryBasisMoisture;
  /** How the soil looked that was weighed; tells more than the weight where the density is not measured. */
  readonly moistureWord?: MoistureWord;
  /** Dry density and how it was come by. */
  readonly density: SampleDensity;
  /** Volume of quartz in the volume of the mineral solids; typical of the texture when left out [1]. */
  readonly quartzFraction?: Fraction;
  /** Density of the grains, 1000 to 5000; 2650, less with organic matter, when left out [kg/m3]. */
  readonly particleDensity?: Density;
  /** Organic matter per dry soil; 0 when left out [kg/kg]. */
  readonly organicMatter?: MassFraction;
  /** Grains above 2 mm in the mass of mineral solids, 0 to below 1; 0 when left out [kg/kg]. */
  readonly gravel?: MassFraction;
  /** What the bands are for: the ground about the pipes, or the sample itself; the ground when left out. */
  readonly extent?: 'ground' | 'sample';
  /** Temperature of the frozen state, −60 to −0.1; −4 °C when left out [degC]. */
  readonly frozenAt?: Temperature;
}

/** Conductivities read with a probe in the ground. */
export interface ProbeEvidence {
  /** A probe was read at one or more places. */
  readonly from: 'probe';
  /** Geometric mean of the readings, 0.01 to 10 [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Places that were read, 1 to 1000. */
  readonly readings: number;
  /** Error that all readings share, of the instrument, the method and the season, as a share, 0.01 to 1; 15 % when left out [1]. */
  readonly standardError?: Fraction;
  /** Volumetric heat capacity, 1e5 to 1e7; assumed when left out [J/(m3.K)]. */
  readonly heatCapacity?: HeatCapacity;
}

/** Whatever is known of a soil: a sample in parts, readings of a probe, a conductivity measured in a laboratory, or a word. */
export type SoilEvidence = SampleEvidence | ProbeEvidence | MeasuredSoil | HandbookSoil;

const FEEL_OBSERVERS = ['professional', 'seasonal staff'] as const;
const observer = { optional: FEEL_OBSERVERS } as const;
/** Shape of {@link SampleEvidence} without its key. */
const sampleEvidenceFields = {
  texture: {
    by: 'from',
    oneOf: {
      fractions: { sand: 'mass fraction', clay: 'mass fraction' },
      laboratory: { class: TEXTURE_CLASSES },
      jar: jarTestShape,
      feel: { class: TEXTURE_CLASSES, observer },
      'feel path': { answers: { list: FEEL_ANSWERS }, observer },
      unknown: {},
    },
  },
  moisture: {
    by: 'basis',
    oneOf: { dry: { value: 'moisture on dry basis' }, wet: { value: 'moisture on wet basis' }, weighed: dryingShape, word: { word: MOISTURE_WORDS } },
  },
  moistureError: { optional: 'moisture on dry basis' },
  moistureWord: { optional: MOISTURE_WORDS },
  density: sampleDensityShape,
  quartzFraction: { optional: 'fraction' },
  particleDensity: { optional: 'density' },
  organicMatter: { optional: 'mass fraction' },
  gravel: { optional: 'mass fraction' },
  extent: { optional: ['ground', 'sample'] },
  frozenAt: { optional: 'temperature' },
} as const;

/** Shape of {@link SampleEvidence}. */
export const sampleEvidenceShape: Shape<SampleEvidence> = /* @__PURE__ */ joinedShape({ from: ['sample'] }, sampleEvidenceFields);

/** Shape of {@link SoilEvidence}. */
export const soilEvidenceShape: Shape<SoilEvidence> = {
  by: 'from',
  oneOf: {
    sample: sampleEvidenceFields,
    probe: {
      conductivity: 'conductivity',
      readings: 'count',
      standardError: { optional: 'fraction' },
      heatCapacity: { optional: 'heat capacity' },
    },
    laboratory: measuredFields,
    handbook: handbookFields,
  },
};
