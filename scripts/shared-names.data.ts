/** The names that stand for different kinds from place to place, and why they may. */
export const SHARED_NAMES: Readonly<Record<string, string>> = {
  value: 'the number of a pair whose other part says what it is',
  low: 'lower limit of a band of any kind',
  estimate: 'the single value of a band of any kind',
  high: 'upper limit of a band of any kind',
  heating: 'the heating side of what the interface is about',
  cooling: 'the cooling side of what the interface is about',
  pipe: 'a pipe by its section; beside `trench`, the length of it',
  moisture: 'with its basis beside it wherever a person gives it; on dry basis where it is computed',
  density: 'with its state beside it in a sample; else the bare quantity',
  needed: 'a length of pipe; with its breakdown in the result of a mode',
  resistance: 'a resistance; with its breakdown in the result of a mode',
  amplitude: 'half of a yearly swing, of a temperature or of the response to a heat of 1 W/m',
  spread: 'how far like things lie apart: days of a month in kelvin, circuits as a share',
};

/** Interfaces that split one quantity up under the names of its parts; their fields are read with the interface. */
export const BREAKDOWNS: Readonly<Record<string, string>> = {
  AnnualWaveErrors: 'standard error of each number of a wave, under the name of the number',
  ConductivityErrors: 'relative standard error of a conductivity, under the name of what causes it',
  FluidRecord: 'coefficients and facts of one fluid, under the name of the property',
  LoopVolume: 'volume of a loop by the part of the loop',
  PipeResistanceParts: 'resistance of a pipe by what the heat passes',
};
