import { joinedShape } from '../states/index.js';
import type { ElectricEnergy, Energy, FlowPerPower, Fraction, Ratio, Shape, Temperature, Time } from '../units/index.js';
import { heatPumpFormShapes, type HeatPumpFormValues } from './heat-pump-forms.js';

type Mode = 'heating' | 'cooling';

/** Values of the findings that the heat-pump room raises, by code. */
export interface HeatPumpFindingValues extends HeatPumpFormValues {
  /** The rating points are an invented example. */
  'unit-invented': Readonly<Record<never, never>>;
  /** The unit was evaluated beyond its rating points. */
  'map-extrapolated': { readonly mode: Mode; readonly enteringFluid: Temperature; readonly lowest: Temperature; readonly highest: Temperature };
  /** The unit was evaluated beyond the load-side temperatures of its rating points. */
  'load-side-extrapolated': { readonly mode: Mode; readonly loadSide: Temperature; readonly lowest: Temperature; readonly highest: Temperature };
  /** Every condition was rated at a flow of its own, so that the flow is not told from the rest. */
  'rating-flows-mixed': { readonly mode: Mode; readonly leastFlowRatio: Ratio; readonly greatestFlowRatio: Ratio };
  /** The COP moves against what units do as the load side gets warmer. */
  'load-side-odd': { readonly mode: Mode; readonly enteringFluid: Temperature; readonly loadSide: Temperature };
  /** Between two load-side temperatures the capacity turns over the entering fluid though at both it does not. */
  'map-turns-between': { readonly mode: Mode; readonly enteringFluid: Temperature; readonly loadSide: Temperature };
  /** A supply temperature is asked for, and the rating points do not say which they are for. */
  'rating-supply-unstated': { readonly designSupply: Temperature };
  /** The design supply temperature lies outside those of the rating points; the nearest was taken. */
  'supply-not-rated': {
    readonly designSupply: Temperature;
    readonly lowestSupply: Temperature;
    readonly highestSupply: Temperature;
    readonly takenSupply: Temperature;
  };
  /** The unit is taken at its design supply temperature the whole year, where a curve lowers it in milder weather. */
  'supply-taken-as-fixed': {
    readonly designSupply: Temperature;
    readonly designCop: Ratio;
    readonly mildOutdoor: Temperature;
    readonly mildSupply: Temperature;
    readonly mildCop: Ratio;
  };
  /** A supply temperature above what the unit, or its control, gives. */
  'supply-above-unit': { readonly designSupply: Temperature; readonly highestSupply: Temperature };
  /** The emitters need warmer water than there is. */
  'emitter-short': { readonly requiredSupply: Temperature; readonly availableSupply: Temperature; readonly metShare: Fraction };
  /** A map rests on a straight line between two points. */
  'few-rating-points': { readonly mode: Mode; readonly points: number };
  /** A quantity moves against what units do as the loop gets warmer. */
  'rating-points-odd': { readonly mode: Mode; readonly quantity: 'capacity' | 'COP'; readonly enteringFluid: Temperature };
  /** A COP that units do not have. */
  'cop-unusual': { readonly mode: Mode; readonly enteringFluid: Temperature; readonly cop: Ratio; readonly lowest: Ratio; readonly highest: Ratio };
  /** A loop flow that units are not made for. */
  'source-flow-unusual': { readonly flowPerPower: FlowPerPower; readonly lowest: FlowPerPower; readonly highest: FlowPerPower };
  /** A higher level of a unit has the better COP. */
  'level-cop-odd': {
    readonly mode: Mode;
    readonly levelInUse: number;
    readonly enteringFluid: Temperature;
    readonly cop: Ratio;
    readonly lowerCop: Ratio;
  };
  /** A level of a unit is rated beyond what all levels have in common. */
  'level-ranges-differ': { readonly mode: Mode; readonly levelInUse: number; readonly lowest: Temperature; readonly highest: Temperature };
  /** The crankcase time of a season fits the sum of thermostat and off time only of another season; with that sum the SCOP would be `factor` times what it is. */
  'season-hours-doubtful': {
    readonly climate: 'average' | 'warmer' | 'colder';
    readonly crankcaseTime: Time;
    readonly expected: Time;
    readonly factor: Ratio;
  };
  /** A seasonal performance factor that plants do not have. */
  'performance-factor-unusual': { readonly boundary: 'H3'; readonly performanceFactor: Ratio; readonly low: Ratio; readonly high: Ratio };
  /** A factor computed from rating points, and the range that installed plants of that kind were found in. */
  'installed-performance-lower': { readonly boundary: 'H3'; readonly performanceFactor: Ratio; readonly low: Ratio; readonly high: Ratio };
  /** A share of the condenser heat that desuperheaters do not take. */
  'desuperheater-share-unusual': { readonly desuperheaterShare: Fraction; readonly lowest: Fraction; readonly highest: Fraction };
  /** Hot water out of the heating is paid for by ground, electricity and auxiliary heat. */
  'desuperheater-not-free': {
    readonly winterEnergy: Energy;
    readonly extraFromGround: Energy;
    readonly extraElectricEnergy: ElectricEnergy;
    readonly extraUnmetEnergy: Energy;
  };
}

const mode: Shape<Mode> = ['heating', 'cooling'];

/** Shapes of {@link HeatPumpFindingValues}. */
export const heatPumpFindingShapes: { readonly [C in keyof HeatPumpFindingValues]: Shape<HeatPumpFindingValues[C]> } = /* @__PURE__ */ joinedShape(
  heatPumpFormShapes,
  {
    'unit-invented': {},
    'map-extrapolated': { mode, enteringFluid: 'temperature', lowest: 'temperature', highest: 'temperature' },
    'load-side-extrapolated': { mode, loadSide: 'temperature', lowest: 'temperature', highest: 'temperature' },
    'rating-flows-mixed': { mode, leastFlowRatio: 'ratio', greatestFlowRatio: 'ratio' },
    'load-side-odd': { mode, enteringFluid: 'temperature', loadSide: 'temperature' },
    'map-turns-between': { mode, enteringFluid: 'temperature', loadSide: 'temperature' },
    'rating-supply-unstated': { designSupply: 'temperature' },
    'supply-not-rated': { designSupply: 'temperature', lowestSupply: 'temperature', highestSupply: 'temperature', takenSupply: 'temperature' },
    'supply-taken-as-fixed': {
      designSupply: 'temperature',
      designCop: 'ratio',
      mildOutdoor: 'temperature',
      mildSupply: 'temperature',
      mildCop: 'ratio',
    },
    'supply-above-unit': { designSupply: 'temperature', highestSupply: 'temperature' },
    'emitter-short': { requiredSupply: 'temperature', availableSupply: 'temperature', metShare: 'fraction' },
    'few-rating-points': { mode, points: 'count' },
    'rating-points-odd': { mode, quantity: ['capacity', 'COP'], enteringFluid: 'temperature' },
    'cop-unusual': { mode, enteringFluid: 'temperature', cop: 'ratio', lowest: 'ratio', highest: 'ratio' },
    'source-flow-unusual': { flowPerPower: 'flow per power', lowest: 'flow per power', highest: 'flow per power' },
    'level-cop-odd': { mode, levelInUse: 'count', enteringFluid: 'temperature', cop: 'ratio', lowerCop: 'ratio' },
    'level-ranges-differ': { mode, levelInUse: 'count', lowest: 'temperature', highest: 'temperature' },
    'season-hours-doubtful': { climate: ['average', 'warmer', 'colder'], crankcaseTime: 'time', expected: 'time', factor: 'ratio' },
    'performance-factor-unusual': { boundary: ['H3'], performanceFactor: 'ratio', low: 'ratio', high: 'ratio' },
    'installed-performance-lower': { boundary: ['H3'], performanceFactor: 'ratio', low: 'ratio', high: 'ratio' },
    'desuperheater-share-unusual': { desuperheaterShare: 'fraction', lowest: 'fraction', highest: 'fraction' },
    'desuperheater-not-free': {
      winterEnergy: 'energy',
      extraFromGround: 'energy',
      extraElectricEnergy: 'electric energy',
      extraUnmetEnergy: 'energy',
    },
  },
);
