import type { HeatPerPipeLength, HeatPerTrenchLength, LengthPerPower, PipeLength, Power, Ratio, Shape, TrenchLength } from '../units/index.js';

/** A length of pipe with what people compare it by. */
export interface LengthFigures {
  /** Length of pipe that exchanges heat [m]. */
  readonly pipe: PipeLength;
  /** Length of the trenches it lies in [m]. */
  readonly trench: TrenchLength;
  /** Ground heat per metre of pipe [W/m]. */
  readonly heatPerPipeLength: HeatPerPipeLength;
  /** Ground heat per metre of trench [W/m]. */
  readonly heatPerTrenchLength: HeatPerTrenchLength;
  /** Pipe per unit of ground heat at design [m/W]; the comparison that depends on the ground alone. */
  readonly pipePerGroundHeat: LengthPerPower;
}

/** Shape of {@link LengthFigures}. */
export const lengthFiguresShape: Shape<LengthFigures> = {
  pipe: 'pipe length',
  trench: 'trench length',
  heatPerPipeLength: 'heat per pipe length',
  heatPerTrenchLength: 'heat per trench length',
  pipePerGroundHeat: 'length per power',
};

/** The figures of a length of pipe; the arguments have been checked by the caller. */
export function lengthFigures(pipe: number, pipePerTrench: Ratio, groundHeat: Power): LengthFigures {
  return {
    pipe: pipe as PipeLength,
    trench: (pipe / pipePerTrench) as TrenchLength,
    heatPerPipeLength: (groundHeat / pipe) as HeatPerPipeLength,
    heatPerTrenchLength: ((groundHeat / pipe) * pipePerTrench) as HeatPerTrenchLength,
    pipePerGroundHeat: (pipe / groundHeat) as LengthPerPower,
  };
}
