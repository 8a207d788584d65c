import type { Source } from '../references/index.js';
import type { Shape } from '../units/index.js';
import { buildingFindingShapes, type BuildingFindingValues } from './building.js';
import { circuitFindingShapes, type CircuitFindingValues } from './circuit.js';
import { climateFindingShapes, type ClimateFindingValues } from './climate.js';
import { costFindingShapes, type CostFindingValues } from './cost.js';
import { fluidFindingShapes, type FluidFindingValues } from './fluid.js';
import { groundFindingShapes, type GroundFindingValues } from './ground.js';
import { heatPumpFindingShapes, type HeatPumpFindingValues } from './heat-pump.js';
import { operationFindingShapes, type OperationFindingValues } from './operation.js';
import { pipeFindingShapes, type PipeFindingValues } from './pipe.js';
import { planFindingShapes, type PlanFindingValues } from './plan.js';
import { soilFindingShapes, type SoilFindingValues } from './soil.js';

/** The typed values of every finding, by its stable code. */
export interface FindingValues
  extends SoilFindingValues,
    ClimateFindingValues,
    FluidFindingValues,
    PipeFindingValues,
    GroundFindingValues,
    BuildingFindingValues,
    HeatPumpFindingValues,
    OperationFindingValues,
    CircuitFindingValues,
    PlanFindingValues,
    CostFindingValues {}

/** The stable code of a finding. */
export type FindingCode = keyof FindingValues;

/** How much a finding weighs: good to know, doubtful, or not to be built like this. */
export type FindingLevel = 'note' | 'warning' | 'stop';

/** A finding of one code. */
export interface FindingOf<C extends FindingCode> {
  /** Stable code, for programs and translators. */
  readonly code: C;
  /** How much it weighs. */
  readonly level: FindingLevel;
  /** What was found, as typed values; the text is made on the top floor. */
  readonly values: FindingValues[C];
  /** The rule it rests on. */
  readonly source: Source;
}

/** Something possible but doubtful, out of a correlation's range, or unwise. Carries values, no prose. */
export type Finding = { [C in FindingCode]: FindingOf<C> }[FindingCode];

/** Shapes of the values of every finding. */
export const findingShapes: { readonly [C in FindingCode]: Shape<FindingValues[C]> } = /* @__PURE__ */ (() => ({
  ...soilFindingShapes,
  ...climateFindingShapes,
  ...fluidFindingShapes,
  ...pipeFindingShapes,
  ...groundFindingShapes,
  ...buildingFindingShapes,
  ...heatPumpFindingShapes,
  ...operationFindingShapes,
  ...circuitFindingShapes,
  ...planFindingShapes,
  ...costFindingShapes,
}))();
