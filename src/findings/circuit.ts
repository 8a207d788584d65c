import type {
  Diameter,
  ElectricPower,
  Flow,
  ForcePerLength,
  Fraction,
  Head,
  PipeLength,
  Pressure,
  Shape,
  TemperatureDifference,
  Time,
  Velocity,
  Volume,
} from '../units/index.js';

/** Values of the findings that the circuit room raises, by code. */
export interface CircuitFindingValues {
  /** A circuit needs more pipe than the longest delivered coil, hence a joint under the ground. */
  'circuit-longer-than-coil': { readonly circuitLength: PipeLength; readonly longestCoil: PipeLength; readonly coilsPerCircuit: number };
  /** A circuit is longer than the given limit. */
  'circuit-long': { readonly circuitLength: PipeLength; readonly longest: PipeLength };
  /** Whole coils leave much more pipe in the ground than was needed. */
  'spare-pipe-high': { readonly spare: PipeLength; readonly share: Fraction };
  /** Circuits in parallel differ in length. */
  'circuits-unequal': { readonly shortest: PipeLength; readonly longest: PipeLength; readonly spread: Fraction };
  /** Circuits in parallel get unlike flows. */
  'flow-split-uneven': { readonly least: Flow; readonly most: Flow; readonly spread: Fraction };
  /** Headers so narrow that the fluid comes back through a circuit. */
  'circuit-runs-backwards': { readonly circuit: number; readonly flow: Flow };
  /** The loop asks for more head than residential loops usually do. */
  'pump-head-high': { readonly head: Head; readonly usual: Head };
  /** The circulators take much of the electricity. */
  'pump-share-high': { readonly share: Fraction; readonly usual: Fraction; readonly perHeat: Fraction };
  /** The circulators take much beside the heat they bring. */
  'pump-power-high': { readonly electricPower: ElectricPower; readonly perHeat: Fraction; readonly usual: Fraction };
  /** The fluid runs so slowly that air stays in high points. */
  'fluid-slow': { readonly velocity: Velocity; readonly usual: Velocity };
  /** A circuit is shorter or longer than is usual with its pipe. */
  'circuit-length-unusual': { readonly circuitLength: PipeLength; readonly shortest: PipeLength; readonly longest: PipeLength };
  /** The run to the house takes much of the pressure. */
  'header-loss-high': { readonly headerDrop: Pressure; readonly circuitDrop: Pressure; readonly share: Fraction };
  /** The fluid runs faster than is usual in plastic pipe. */
  'fluid-fast': { readonly velocity: Velocity; readonly usual: Velocity };
  /** A header section is too wide for the purging flow to carry the air out of it. */
  'header-not-purged': { readonly bore: Diameter; readonly widest: Diameter; readonly circuits: number };
  /** A piece of pipe is too slow for the cart's flow to carry the air out of it. */
  'section-not-purged': {
    /** 0 for the circuits, 1 for the first header piece, and so on. */
    readonly section: number;
    readonly velocity: Velocity;
    readonly wanted: Velocity;
    readonly leastFlow: Flow;
    readonly widest: Diameter;
  };
  /** The readings of a pressure test show a leak. */
  'pressure-test-leak': { readonly leakPerHour: Pressure; readonly leastLeak: Pressure; readonly falseAlarm: Fraction };
  /** They show none of the size that was to be found. */
  'pressure-test-tight': { readonly leakToFind: Pressure; readonly missedLeak: Fraction };
  /** They do not tell a leak from creep. */
  'pressure-test-open': {
    readonly leastLeakTold: Pressure;
    readonly leakToFind: Pressure;
    readonly falseAlarm: Fraction;
    readonly missedLeak: Fraction;
  };
  /** The pressure rises against creep, so that something else is at work. */
  'pressure-test-rising': { readonly risePerHour: Pressure; readonly leakToFind: Pressure };
  /** The pressure does not move at all, as that of a gauge that sticks or is shut off. */
  'pressure-test-still': { readonly range: Pressure; readonly gaugeError: Pressure };
  /** The readings follow neither form of creep, with or without a leak. */
  'pressure-test-no-creep': { readonly scatter: Pressure; readonly gaugeError: Pressure };
  /** No temperature was read, and a small drift would pass for a leak. */
  'pressure-test-temperature-unread': { readonly drift: TemperatureDifference; readonly leakToFind: Pressure };
  /** A test pressure is more than the rating of the weakest part, and no more than the rule allows. */
  'test-pressure-within-ceiling': { readonly testPressure: Pressure; readonly ceiling: Pressure; readonly rating: Pressure };
  /** A test pressure is more than the weakest part may be tested with. */
  'test-pressure-over-rating': { readonly testPressure: Pressure; readonly ceiling: Pressure; readonly rating: Pressure };
  /** A rule allows no drop and gives the wall no time to creep. */
  'test-without-expansion': { readonly duration: Time };
  /** A kick of pressure finds air. */
  'air-in-loop': { readonly airVolume: Volume; readonly leastAir: Volume; readonly mostAir: Volume };
  /** A kick of pressure finds none that could be told from the swelling of the wall. */
  'air-not-seen': { readonly mostAir: Volume };
  /** A sealed loop may run out of pressure at one end of its year. */
  'sealed-pressure-low': { readonly lowest: Pressure; readonly expected: Pressure; readonly least: Pressure };
  /** A sealed loop may come above what its weakest part bears, or above what parts usually bear where that was not told. */
  'sealed-pressure-high': { readonly highest: Pressure; readonly expected: Pressure; readonly rating: Pressure };
  /** A pipe floats in its wet trench. */
  'pipe-floats': { readonly uplift: ForcePerLength; readonly upliftEmpty: ForcePerLength };
}

/** Shapes of {@link CircuitFindingValues}. */
export const circuitFindingShapes: { readonly [C in keyof CircuitFindingValues]: Shape<CircuitFindingValues[C]> } = {
  'circuit-longer-than-coil': { circuitLength: 'pipe length', longestCoil: 'pipe length', coilsPerCircuit: 'count' },
  'circuit-long': { circuitLength: 'pipe length', longest: 'pipe length' },
  'spare-pipe-high': { spare: 'pipe length', share: 'fraction' },
  'circuits-unequal': { shortest: 'pipe length', longest: 'pipe length', spread: 'fraction' },
  'flow-split-uneven': { least: 'flow', most: 'flow', spread: 'fraction' },
  'circuit-runs-backwards': { circuit: 'count', flow: 'flow' },
  'pump-head-high': { head: 'head', usual: 'head' },
  'pump-share-high': { share: 'fraction', usual: 'fraction', perHeat: 'fraction' },
  'pump-power-high': { electricPower: 'electric power', perHeat: 'fraction', usual: 'fraction' },
  'fluid-slow': { velocity: 'velocity', usual: 'velocity' },
  'circuit-length-unusual': { circuitLength: 'pipe length', shortest: 'pipe length', longest: 'pipe length' },
  'header-loss-high': { headerDrop: 'pressure', circuitDrop: 'pressure', share: 'fraction' },
  'fluid-fast': { velocity: 'velocity', usual: 'velocity' },
  'header-not-purged': { bore: 'diameter', widest: 'diameter', circuits: 'count' },
  'section-not-purged': { section: 'count', velocity: 'velocity', wanted: 'velocity', leastFlow: 'flow', widest: 'diameter' },
  'pressure-test-leak': { leakPerHour: 'pressure', leastLeak: 'pressure', falseAlarm: 'fraction' },
  'pressure-test-tight': { leakToFind: 'pressure', missedLeak: 'fraction' },
  'pressure-test-open': { leastLeakTold: 'pressure', leakToFind: 'pressure', falseAlarm: 'fraction', missedLeak: 'fraction' },
  'pressure-test-rising': { risePerHour: 'pressure', leakToFind: 'pressure' },
  'pressure-test-still': { range: 'pressure', gaugeError: 'pressure' },
  'pressure-test-no-creep': { scatter: 'pressure', gaugeError: 'pressure' },
  'pressure-test-temperature-unread': { drift: 'temperature difference', leakToFind: 'pressure' },
  'test-pressure-within-ceiling': { testPressure: 'pressure', ceiling: 'pressure', rating: 'pressure' },
  'test-pressure-over-rating': { testPressure: 'pressure', ceiling: 'pressure', rating: 'pressure' },
  'test-without-expansion': { duration: 'time' },
  'air-in-loop': { airVolume: 'volume', leastAir: 'volume', mostAir: 'volume' },
  'air-not-seen': { mostAir: 'volume' },
  'sealed-pressure-low': { lowest: 'pressure', expected: 'pressure', least: 'pressure' },
  'sealed-pressure-high': { highest: 'pressure', expected: 'pressure', rating: 'pressure' },
  'pipe-floats': { uplift: 'force per length', upliftEmpty: 'force per length' },
};
