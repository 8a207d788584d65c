import type { Finding } from '../findings/index.js';
import type { Source } from '../references/index.js';
import { bandShape, soilThermalShape, type Band, type SoilThermal } from '../states/index.js';
import type { Conductivity, Fraction, LatentHeat, Ratio, Shape } from '../units/index.js';
import { soilPhasesShape, type SoilPhases } from './phases.js';

/** What one model makes of a soil. */
export interface ModelConductivity {
  /** The model. */
  readonly model: 'johansen' | 'kersten';
  /** Conductivity without ice [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Conductivity with the water frozen [W/(m.K)]. */
  readonly frozenConductivity: Conductivity;
  /** Whether the soil lies in the range the model was made for; one that is out of it counts in no spread. */
  readonly inRange: boolean;
  /** The work it comes from. */
  readonly source: 'johansen1975' | 'kersten1949';
}

/** What the band of a conductivity is made of: one standard deviation of the logarithm for each, which is nearly a share [1]. */
export interface ConductivityErrors {
  /** The model against measured soils, and the models against one another. */
  readonly model: Ratio;
  /** Quartz and texture. */
  readonly quartz: Ratio;
  /** Dry density. */
  readonly density: Ratio;
  /** Moisture between the sample and the ground around. */
  readonly moisture: Ratio;
  /** One place against the next a step aside. */
  readonly place: Ratio;
  /** All of them, added as squares. */
  readonly total: Ratio;
}

/** Thermal properties of a soil with bands, and how they came about. */
export interface SoilThermalProperties {
  /** What they rest on. */
  readonly from: 'sample' | 'laboratory' | 'handbook';
  /** Thermal conductivity without ice. */
  readonly conductivity: Band<'conductivity'>;
  /** Volumetric heat capacity without ice. */
  readonly heatCapacity: Band<'heat capacity'>;
  /** Thermal diffusivity without ice. */
  readonly diffusivity: Band<'diffusivity'>;
  /** The three estimates. */
  readonly thermal: SoilThermal;
  /** Solids, water and air; absent without a sample. */
  readonly phases?: SoilPhases;
  /** Quartz in the solids that was reckoned with; absent without a sample [1]. */
  readonly quartzFraction?: Fraction;
  /** The soil with all of its water frozen; absent without a sample. */
  readonly frozen?: SoilThermal;
  /** Heat set free when all of the water freezes; absent without a sample [J/m3]. */
  readonly latentHeat?: LatentHeat;
  /** Models side by side; none without a sample. */
  readonly models: readonly ModelConductivity[];
  /** What makes the band of the conductivity; absent without a sample. */
  readonly conductivityErrors?: ConductivityErrors;
}

/** {@link SoilThermalProperties} with findings and sources. */
export interface SoilThermalPropertiesResult extends SoilThermalProperties {
  /** What is possible but doubtful, or outside a model's range. */
  readonly findings: readonly Finding[];
  /** What the numbers rest on. */
  readonly sources: readonly Source[];
}

/** Shape of {@link SoilThermalProperties}. */
export const soilThermalPropertiesShape: Shape<SoilThermalProperties> = {
  from: ['sample', 'laboratory', 'handbook'],
  conductivity: /* @__PURE__ */ bandShape('conductivity'),
  heatCapacity: /* @__PURE__ */ bandShape('heat capacity'),
  diffusivity: /* @__PURE__ */ bandShape('diffusivity'),
  thermal: soilThermalShape,
  phases: { optional: soilPhasesShape },
  quartzFraction: { optional: 'fraction' },
  frozen: { optional: soilThermalShape },
  latentHeat: { optional: 'latent heat' },
  models: {
    list: {
      model: ['johansen', 'kersten'],
      conductivity: 'conductivity',
      frozenConductivity: 'conductivity',
      inRange: 'flag',
      source: ['johansen1975', 'kersten1949'],
    },
  },
  conductivityErrors: {
    optional: { model: 'ratio', quartz: 'ratio', density: 'ratio', moisture: 'ratio', place: 'ratio', total: 'ratio' },
  },
};
