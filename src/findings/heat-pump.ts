import type { FlowPerPower, Ratio, Shape, Temperature } from '../units/index.js';

type Mode = 'heating' | 'cooling';

/** Values of the findings that the heat-pump room raises, by code. */
export interface HeatPumpFindingValues {
  /** The rating points are an invented example. */
  'unit-invented': Readonly<Record<never, never>>;
  /** The unit was evaluated beyond its rating points. */
  'map-extrapolated': { readonly mode: Mode; readonly enteringFluid: Temperature; readonly lowest: Temperature; readonly highest: Temperature };
  /** A map rests on a straight line between two points. */
  'few-rating-points': { readonly mode: Mode; readonly points: number };
  /** A quantity moves against what units do as the loop gets warmer. */
  'rating-points-odd': { readonly mode: Mode; readonly quantity: 'capacity' | 'COP'; readonly enteringFluid: Temperature };
  /** A COP that units do not have. */
  'cop-unusual': { readonly mode: Mode; readonly enteringFluid: Temperature; readonly cop: Ratio; readonly lowest: Ratio; readonly highest: Ratio };
  /** A loop flow that units are not made for. */
  'source-flow-unusual': { readonly flowPerPower: FlowPerPower; readonly lowest: FlowPerPower; readonly highest: FlowPerPower };
}

const mode: Shape<Mode> = ['heating', 'cooling'];

/** Shapes of {@link HeatPumpFindingValues}. */
export const heatPumpFindingShapes: { readonly [C in keyof HeatPumpFindingValues]: Shape<HeatPumpFindingValues[C]> } = {
  'unit-invented': {},
  'map-extrapolated': { mode, enteringFluid: 'temperature', lowest: 'temperature', highest: 'temperature' },
  'few-rating-points': { mode, points: 'count' },
  'rating-points-odd': { mode, quantity: ['capacity', 'COP'], enteringFluid: 'temperature' },
  'cop-unusual': { mode, enteringFluid: 'temperature', cop: 'ratio', lowest: 'ratio', highest: 'ratio' },
  'source-flow-unusual': { flowPerPower: 'flow per power', lowest: 'flow per power', highest: 'flow per power' },
};
