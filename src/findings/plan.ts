import type {
  Conductivity,
  Fraction,
  Length,
  PipeLength,
  RunFraction,
  Shape,
  Temperature,
  TemperatureDifference,
  Time,
  TrenchLength,
} from '../units/index.js';

/** Values of the findings that the plan room raises, by code. */
export interface PlanFindingValues {
  /** The land ends before there are trenches enough. */
  'field-too-small': { readonly trenches: number; readonly laid: PipeLength; readonly needed: PipeLength };
  /** A trench so deep that its walls must be protected before anybody enters. */
  'trench-beyond-protection-depth': { readonly trenchDepth: Length; readonly protectionDepth: Length };
  /** Pipes so near the surface that tools and frost reach them. */
  'pipes-shallow': { readonly cover: Length; readonly usual: Length };
  /** The ground around the pipes freezes by itself, without the loop. */
  'ground-freezes-at-pipes': { readonly lowest: Temperature; readonly meanDepth: Length; readonly snow: 'counted' | 'left out' };
  /** The fluid in the pipes may freeze before the unit stops. */
  'freeze-protection-short': { readonly freezingPoint: Temperature; readonly lowestLeaving: Temperature };
  /** The fluid freezes not far below the coldest that leaves the unit. */
  'freeze-margin-small': { readonly freezingPoint: Temperature; readonly coldest: Temperature; readonly usual: TemperatureDifference };
  /** At one end of the soil's band the loop built is too short. */
  'short-if-soil-is-poor': {
    readonly end: 'low' | 'high';
    readonly laid: PipeLength;
    readonly neededIfPoor: PipeLength;
    readonly shortBy: Fraction;
  };
  /** At one end of the soil's band no length of pipe would keep the unit's limit. */
  'band-end-unreachable': { readonly end: 'low' | 'high'; readonly conductivity: Conductivity };
  /** The unit runs so little in a mode that the loop is not sized for it. */
  'mode-hardly-runs': { readonly mode: 'heating' | 'cooling'; readonly runFraction: RunFraction; readonly least: RunFraction };
  /** The design load takes only part of the unit's capacity. */
  'unit-oversized': { readonly mode: 'heating' | 'cooling'; readonly shareAtDesign: RunFraction; readonly usual: RunFraction };
  /** The mean of the ground surface is far from that of the air given apart from it. */
  'surface-mean-off-air': { readonly meanOffset: TemperatureDifference; readonly usual: TemperatureDifference };
  /** The winter of the ground surface is not that of the air given apart from it. */
  'surface-season-off-air': { readonly lag: Time; readonly most: Time };
  /** In the fill given the loop laid, sized for native soil, goes beyond a limit even once the fill has settled. */
  'short-in-fill': { readonly laid: PipeLength; readonly needed: PipeLength; readonly neededIfLoose: PipeLength };
  /** The trench fill is taken as native soil; loosened fill asks for more. */
  'trench-fill-not-modelled': { readonly trench: TrenchLength };
}

/** Shapes of {@link PlanFindingValues}. */
export const planFindingShapes: { readonly [C in keyof PlanFindingValues]: Shape<PlanFindingValues[C]> } = {
  'field-too-small': { trenches: 'count', laid: 'pipe length', needed: 'pipe length' },
  'trench-beyond-protection-depth': { trenchDepth: 'length', protectionDepth: 'length' },
  'pipes-shallow': { cover: 'length', usual: 'length' },
  'ground-freezes-at-pipes': { lowest: 'temperature', meanDepth: 'length', snow: ['counted', 'left out'] },
  'freeze-protection-short': { freezingPoint: 'temperature', lowestLeaving: 'temperature' },
  'freeze-margin-small': { freezingPoint: 'temperature', coldest: 'temperature', usual: 'temperature difference' },
  'band-end-unreachable': { end: ['low', 'high'], conductivity: 'conductivity' },
  'mode-hardly-runs': { mode: ['heating', 'cooling'], runFraction: 'run fraction', least: 'run fraction' },
  'unit-oversized': { mode: ['heating', 'cooling'], shareAtDesign: 'run fraction', usual: 'run fraction' },
  'short-if-soil-is-poor': { end: ['low', 'high'], laid: 'pipe length', neededIfPoor: 'pipe length', shortBy: 'fraction' },
  'surface-mean-off-air': { meanOffset: 'temperature difference', usual: 'temperature difference' },
  'surface-season-off-air': { lag: 'time', most: 'time' },
  'short-in-fill': { laid: 'pipe length', needed: 'pipe length', neededIfLoose: 'pipe length' },
  'trench-fill-not-modelled': { trench: 'trench length' },
};
