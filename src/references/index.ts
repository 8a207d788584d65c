import { BUILDING_REFERENCES } from './building.data.js';
import { CIRCUIT_REFERENCES } from './circuit.data.js';
import { CLIMATE_REFERENCES } from './climate.data.js';
import { COST_REFERENCES } from './cost.data.js';
import { FLUID_REFERENCES } from './fluid.data.js';
import { GENERAL_REFERENCES } from './general.data.js';
import { GROUND_REFERENCES } from './ground.data.js';
import { HEAT_PUMP_REFERENCES } from './heat-pump.data.js';
import { OPERATION_REFERENCES } from './operation.data.js';
import { PIPE_REFERENCES } from './pipe.data.js';
import type { Reference } from './reference.js';
import { SITE_REFERENCES } from './site.data.js';
import { SOIL_REFERENCES } from './soil.data.js';

export type { Reference } from './reference.js';

/** The key of a source in the bibliography. */
export type ReferenceKey =
  | keyof typeof GENERAL_REFERENCES
  | keyof typeof SOIL_REFERENCES
  | keyof typeof CLIMATE_REFERENCES
  | keyof typeof FLUID_REFERENCES
  | keyof typeof PIPE_REFERENCES
  | keyof typeof GROUND_REFERENCES
  | keyof typeof BUILDING_REFERENCES
  | keyof typeof HEAT_PUMP_REFERENCES
  | keyof typeof OPERATION_REFERENCES
  | keyof typeof CIRCUIT_REFERENCES
  | keyof typeof COST_REFERENCES
  | keyof typeof SITE_REFERENCES;

/** Where a rule or a number comes from: a source, or what the trade commonly does. */
export type Source = ReferenceKey | 'common practice';

/** The bibliography: every source that a correlation, a table, a default or a rule names. */
export const REFERENCES: Readonly<Record<ReferenceKey, Reference>> = /* @__PURE__ */ (() => ({
  ...GENERAL_REFERENCES,
  ...SOIL_REFERENCES,
  ...CLIMATE_REFERENCES,
  ...FLUID_REFERENCES,
  ...PIPE_REFERENCES,
  ...GROUND_REFERENCES,
  ...BUILDING_REFERENCES,
  ...HEAT_PUMP_REFERENCES,
  ...OPERATION_REFERENCES,
  ...CIRCUIT_REFERENCES,
  ...COST_REFERENCES,
  ...SITE_REFERENCES,
}))();
