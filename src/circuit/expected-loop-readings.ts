import { demand, demandCount, locate } from '../errors/index.js';
import { type AnyFluid, type FluidChoice, fluidPropertyBands, freezingPoint, type OfAnyFluid } from '../fluid/index.js';
import type { FlowRegime } from '../pipe/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { Flow, Fraction, MassFraction, Power, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { loopDropBand } from './loop-drop-band.js';
import type { PipeRun } from './run-loss.js';

/** A loop whose meters are going to be read. */
export interface LoopToRead extends OfAnyFluid<FluidChoice> {
  /** One circuit, header to header. */
  readonly circuit: PipeRun;
  /** How many equal circuits share the flow, 1 to 1000. */
  readonly circuits: number;
  /** Run that carries the whole flow between the ports where pressure is read; none when left out. */
  readonly header?: PipeRun;
  /** Flow of the loop, 1e-6 to 1 [m3/s]. */
  readonly flow: Flow;
  /** Heat that the fluid takes up or gives off, above 0 up to 1e7 [W]. */
  readonly groundHeat: Power;
  /** Temperature of the water on the day of the flow test, 0 to 60 [degC]. */
  readonly testTemperature: Temperature;
  /** Mean temperatures to read the filled loop at, 1 to 50 of them; −5, 0, 5, 10 and 20 °C when left out [degC]. */
  readonly readTemperatures?: readonly Temperature[];
  /** How far the flow may be off, 90 % limits, 0 to 0.5; 0.05 when left out [1]. */
  readonly flowError?: Fraction;
  /** How far the heat may be off, 90 % limits, 0 to 0.5; 0.05 when left out [1]. */
  readonly heatError?: Fraction;
  /** How far each of two thermometers may be off, 90 % limits, 0 to 5; 0 when left out [K]. */
  readonly sensorError?: TemperatureDifference;
}

/** What the meters of a loop should show. */
export interface LoopReading {
  /** Mean temperature of the fluid [degC]. */
  readonly temperature: Temperature;
  /** Reynolds number in a circuit [1]. */
  readonly reynolds: Band<'ratio'>;
  /** Regimes that a circuit may be in, slowest first. */
  readonly regimes: readonly FlowRegime[];
  /** Pressure drop of circuit and header [Pa]. */
  readonly pressureDrop: Band<'pressure'>;
  /** Difference between entering and leaving fluid [K]. */
  readonly temperatureDifference: Band<'temperature difference'>;
  /** How far the heat worked out from meters at these limits may be off, 90 % limits [1]. */
  readonly heatReadingError: Fraction;
}

/** Readings to expect on the day of the test and later. */
export interface ExpectedLoopReadings {
  /** With water, on the day of the flow test. */
  readonly onTestDay: LoopReading;
  /** With the fluid filled, at each temperature at which it is liquid. */
  readonly filled: readonly LoopReading[];
  /** Temperatures asked for at which it is not [degC]. */
  readonly frozenAt: readonly Temperature[];
}

const loopReadingShape: Shape<LoopReading> = {
  temperature: 'temperature',
  reynolds: /* @__PURE__ */ bandShape('ratio'),
  regimes: { list: ['laminar', 'transitional', 'turbulent'] },
  pressureDrop: /* @__PURE__ */ bandShape('pressure'),
  temperatureDifference: /* @__PURE__ */ bandShape('temperature difference'),
  heatReadingError: 'fraction',
};

/** Shape of {@link ExpectedLoopReadings}. */
export const expectedLoopReadingsShape: Shape<ExpectedLoopReadings> = {
  onTestDay: loopReadingShape,
  filled: { list: loopReadingShape },
  frozenAt: { list: 'temperature' },
};

/** The temperatures of a loop through the year [degC]. */
const SEASONS: readonly Temperature[] = [-5 as Temperature, 0 as Temperature, 5 as Temperature, 10 as Temperature, 20 as Temperature];
/** Share of cases that the limits hold. */
const COVERAGE = 0.9;

/**
 * What the meters of a loop should show with water on the day of the test and with antifreeze through the year, each with its limits.
 *
 * Viscosity in the cold (±15 %), flow, fittings (±50 %) and an open regime make the limits of the pressure drop; between Reynolds 2300 and 4000 it
 * may be the laminar or the turbulent one. Compare the drop at the flow that was read, never flow and drop each for itself; and zero a pair of
 * thermometers on each other with the pump on and the compressor off. The bore of the pipe delivered is a limit of its own: 6 % of drop lie
 * between minimum and average wall.
 *
 * @param loop - see {@link LoopToRead}
 * @returns pressure drop [Pa] and temperature difference [K] with limits of 90 %, for water and for the fluid filled
 * @throws InputError for a value out of its range
 * @remarks Friction as `pressureDropBand` has it, properties as {@link fluidPropertyBands}; Δθ = heat/(ρ c flow). Checked against the differences
 * printed for one ton of cooling (H-READ). Invariants tested: the drop rises as one fluid cools within a regime; limits hold the estimate and widen with each
 * error; water on the test day is the fluid room's water.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, diameterMillimetres, kelvinDifference, litresPerSecond, massPercent, pipeMetres, watts } = await import('../units/index.js');
 * const { onTestDay, filled, frozenAt } = expectedLoopReadings({
 *   circuit: { pipe: { insideDiameter: diameterMillimetres(27.3) }, length: pipeMetres(180) },
 *   circuits: 4,
 *   flow: litresPerSecond(0.8),
 *   groundHeat: watts(8000),
 *   testTemperature: celsius(12),
 *   fluid: 'propylene-glycol',
 *   massFraction: massPercent(25),
 *   sensorError: kelvinDifference(0.1),
 * });
 * expect(onTestDay.pressureDrop.estimate).toBeCloseTo(12_935, -1);
 * expect(onTestDay.temperatureDifference.estimate).toBeCloseTo(2.39, 2);
 * expect(filled.map(({ regimes }) => regimes[0])).toEqual(['laminar', 'laminar', 'laminar', 'transitional', 'transitional']);
 * expect(frozenAt).toEqual([]);
 * ```
 */
export function expectedLoopReadings(loop: LoopToRead): ExpectedLoopReadings {
  const {
    circuits,
    flow,
    groundHeat,
    fluid,
    massFraction,
    testTemperature,
    readTemperatures,
    flowError = 0.05,
    heatError = 0.05,
    sensorError = 0,
  } = loop;
  demand('circuits', 'count', circuits, { atLeast: 1, atMost: 1000 });
  demand('flow', 'flow', flow, { atLeast: 1e-6, atMost: 1 });
  demand('groundHeat', 'power', groundHeat, { atLeast: 1, atMost: 1e7 });
  demand('testTemperature', 'temperature', testTemperature, { atLeast: 0, atMost: 60 });
  demand('flowError', 'fraction', flowError, { atLeast: 0, atMost: 0.5 });
  demand('heatError', 'fraction', heatError, { atLeast: 0, atMost: 0.5 });
  demand('sensorError', 'temperature difference', sensorError, { atLeast: 0, atMost: 5 });
  if (readTemperatures !== undefined) demandCount('readTemperatures', readTemperatures, 1, 50);
  const asked = readTemperatures ?? SEASONS;
  asked.forEach((each, index) => {
    demand(`readTemperatures.${String(index)}`, 'temperature', each, { atLeast: -60, atMost: 60 });
  });
  const freezing = freezingPoint({ fluid, massFraction });
  const readingOf = (path: string, of: AnyFluid, share: MassFraction, temperature: Temperature): LoopReading => {
    const bands = locate(path, () => fluidPropertyBands({ fluid: of, massFraction: share, temperature }));
    const { density, specificHeat } = bands;
    const difference = groundHeat / (density.estimate * specificHeat.estimate * flow);
    const capacityError = specificHeat.high / specificHeat.estimate - 1;
    const sensors = Math.SQRT2 * sensorError;
    const width = Math.hypot(difference * Math.hypot(flowError, heatError, capacityError), sensors);
    return {
      temperature,
      ...loopDropBand(loop, { density: density.estimate, viscosity: bands.viscosity }, flowError),
      temperatureDifference: { low: difference - width, estimate: difference, high: difference + width, coverage: COVERAGE },
      heatReadingError: Math.hypot(flowError, capacityError, sensors / difference),
    } as LoopReading;
  };
  return {
    onTestDay: readingOf('testTemperature', 'water', 0 as MassFraction, testTemperature),
    filled: asked.flatMap((each, index) => (each < freezing ? [] : [readingOf(`readTemperatures.${String(index)}`, fluid, massFraction, each)])),
    frozenAt: asked.filter((each) => each < freezing),
  };
}
