import type { Finding } from '../findings/index.js';
import type { Source } from '../references/index.js';
import { bandShape, soilThermalShape, type Band, type SoilThermal } from '../states/index.js';
import type { DryBasisMoisture, Fraction, LatentHeat, Ratio, Shape, Temperature } from '../units/index.js';
import { type ApplicableModel, applicableShape, type InapplicableModel, inapplicableShape } from './applicable-models.js';
import { type ErrorCause, ERROR_CAUSES } from './error-causes.js';
import { SOIL_MODELS, type SoilModel } from './model-refusals.js';
import { soilPhasesShape, type SoilPhases } from './phases.js';
import { TEXTURE_CLASSES, type TextureClass } from './texture.js';
import type { TextureShare } from './textures-within.js';

/** One cause of error of a conductivity, as standard deviations of its logarithm, which are nearly shares. */
export interface ConductivityError {
  /** Where it comes from. */
  readonly cause: ErrorCause;
  /** How far down [1]. */
  readonly downward: Ratio;
  /** How far up [1]. */
  readonly upward: Ratio;
  /** Its part of the squares of all, which is what knowing it exactly would take off [1]. */
  readonly share: Fraction;
}

/** A soil with ice in its pores. */
export interface FrozenProperties {
  /** Temperature it was reckoned at [degC]. */
  readonly temperature: Temperature;
  /** Thermal conductivity. */
  readonly conductivity: Band<'conductivity'>;
  /** Volumetric heat capacity, its thawing apart. */
  readonly heatCapacity: Band<'heat capacity'>;
  /** The estimates. */
  readonly thermal: SoilThermal;
  /** Water that stays liquid [kg/kg]. */
  readonly unfrozenMoisture: DryBasisMoisture;
  /** Heat set free when the rest freezes [J/m3]. */
  readonly latentHeat: LatentHeat;
  /** Models that have a form for frozen soil. */
  readonly models: readonly ApplicableModel[];
}

/** A soil as a sample tells it. */
export interface SampleProperties {
  /** Class that was reckoned with. */
  readonly texture: TextureClass;
  /** Every class it may be, the likeliest first. */
  readonly possible: readonly TextureShare[];
  /** Solids, water and air. */
  readonly phases: SoilPhases;
  /** Quartz in the mineral solids that was reckoned with [1]. */
  readonly quartzFraction: Fraction;
  /** The model that the estimate rests on. */
  readonly model: SoilModel;
  /** Models that apply, each with its value. */
  readonly models: readonly ApplicableModel[];
  /** Models that do not, each with the reason. */
  readonly inapplicable: readonly InapplicableModel[];
  /** The soil with ice in its pores. */
  readonly frozenProperties: FrozenProperties;
}

/** Thermal properties of a soil with bands, and what the bands are made of. */
export interface EvidenceProperties {
  /** What they rest on. */
  readonly from: 'sample' | 'probe' | 'laboratory' | 'handbook';
  /** Thermal conductivity without ice. */
  readonly conductivity: Band<'conductivity'>;
  /** Volumetric heat capacity without ice. */
  readonly heatCapacity: Band<'heat capacity'>;
  /** Thermal diffusivity without ice. */
  readonly diffusivity: Band<'diffusivity'>;
  /** The three estimates. */
  readonly thermal: SoilThermal;
  /** What the band of the conductivity is made of, the greatest first: what to measure next. None where a handbook gives the band whole. */
  readonly errors: readonly ConductivityError[];
  /** All that only a sample tells; absent without one. */
  readonly sample?: SampleProperties;
}

/** {@link EvidenceProperties} with findings and sources. */
export interface EvidencePropertiesResult extends EvidenceProperties {
  /** What is possible but doubtful, and what to measure next. */
  readonly findings: readonly Finding[];
  /** What the numbers rest on. */
  readonly sources: readonly Source[];
}

const conductivity = /* @__PURE__ */ bandShape('conductivity');
const heatCapacity = /* @__PURE__ */ bandShape('heat capacity');

/** Shape of {@link EvidenceProperties}. */
export const evidencePropertiesShape: Shape<EvidenceProperties> = {
  from: ['sample', 'probe', 'laboratory', 'handbook'],
  conductivity,
  heatCapacity,
  thermal: soilThermalShape,
  diffusivity: /* @__PURE__ */ bandShape('diffusivity'),
  errors: { list: { cause: ERROR_CAUSES, downward: 'ratio', upward: 'ratio', share: 'fraction' } },
  sample: {
    optional: {
      texture: TEXTURE_CLASSES,
      possible: { list: { texture: TEXTURE_CLASSES, share: 'fraction' } },
      phases: soilPhasesShape,
      quartzFraction: 'fraction',
      model: SOIL_MODELS,
      models: applicableShape,
      inapplicable: inapplicableShape,
      frozenProperties: {
        temperature: 'temperature',
        conductivity,
        heatCapacity,
        thermal: soilThermalShape,
        unfrozenMoisture: 'moisture on dry basis',
        latentHeat: 'latent heat',
        models: applicableShape,
      },
    },
  },
};
