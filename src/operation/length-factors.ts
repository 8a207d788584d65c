import { demand, demandChoice, demandObject } from '../errors/index.js';
import type { HeatPerPipeLength, PipeLength, PipeResistance, Power, Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import type { LoadMode } from './margin.js';

/** The hour in which a loop comes nearest to its limit. */
export interface HardestHour {
  /** Heat between pipe and ground while the unit runs, 1 to 1e8 [W]. */
  readonly runningHeat: Power;
  /** Undisturbed ground at pipe depth [degC]. */
  readonly undisturbed: Temperature;
  /** Pipe wall [degC]. */
  readonly wallTemperature: Temperature;
  /** Mean of entering and leaving fluid [degC]. */
  readonly meanFluid: Temperature;
}

/** Shape of {@link HardestHour}. */
export const hardestHourShape: Shape<HardestHour> = {
  runningHeat: 'power',
  undisturbed: 'temperature',
  wallTemperature: 'temperature',
  meanFluid: 'temperature',
};

/** What {@link lengthFactors} needs. */
export interface LengthFactorsInput {
  /** Heating or cooling. */
  readonly mode: LoadMode;
  /** Pipe of the loop that was simulated, 1 to 1e6 [m]. */
  readonly pipeLength: PipeLength;
  /** Its hardest hour. */
  readonly hour: HardestHour;
  /** What the handbook equation was computed with, and came to. */
  readonly handbook: {
    /** Length, 1 to 1e6 [m]. */
    readonly pipe: PipeLength;
    /** Heat between pipe and ground, 1 to 1e8 [W]. */
    readonly groundHeat: Power;
    /** Pipe wall and film, with the soil times the run fraction [m.K/W]. */
    readonly resistance: PipeResistance;
    /** Soil times the run fraction [m.K/W]. */
    readonly reducedGroundResistance: PipeResistance;
    /** Between ground and mean fluid [K]. */
    readonly margin: TemperatureDifference;
  };
}

/** Why a simulated length differs from the handbook's: factors whose product is the ratio of the two. */
export interface LengthFactors {
  /** Simulated over handbook length [1]. */
  readonly ratioToHandbook: Ratio;
  /** More or less heat in the hardest hour than at design [1]. */
  readonly heatFactor: Ratio;
  /** A narrower or wider margin between ground and fluid: the coldest fluid does not meet the coldest ground [1]. */
  readonly marginFactor: Ratio;
  /** Another film at the fluid's real temperature, and the pipe's ends [1]. */
  readonly filmFactor: Ratio;
  /** What months and days of real running leave in the ground, beside the steady soil times a run fraction [1]. */
  readonly groundFactor: Ratio;
  /** Resistance of the ground in the hardest hour, undisturbed ground to wall over the running heat [m.K/W]. */
  readonly seenGroundResistance: PipeResistance;
  /** Film and wall in the hardest hour [m.K/W]. */
  readonly seenPipeResistance: PipeResistance;
  /** Heat per metre of pipe in the hardest hour [W/m]. */
  readonly hardestHeat: HeatPerPipeLength;
}

/** Shape of {@link LengthFactors}. */
export const lengthFactorsShape: Shape<LengthFactors> = {
  ratioToHandbook: 'ratio',
  heatFactor: 'ratio',
  marginFactor: 'ratio',
  filmFactor: 'ratio',
  groundFactor: 'ratio',
  seenGroundResistance: 'pipe resistance',
  seenPipeResistance: 'pipe resistance',
  hardestHeat: 'heat per pipe length',
};

/**
 * Explains a simulated length by the handbook's, factor by factor: with L = q (Rp + Rs)/(ground − fluid) in both,
 * ratio = (q/q′) · (margin′/margin) · ((Rp + Rs′)/(Rp′ + Rs′)) · ((Rp + Rs)/(Rp + Rs′)), the primes being the handbook's.
 *
 * @param input - see {@link LengthFactorsInput}
 * @returns the factors, and the resistances of the hardest hour
 * @throws InputError for a value out of its range, or a wall or fluid on the wrong side of the ground
 * @remarks An identity. Invariant tested: the product of the factors is the ratio.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kelvinDifference, kilowatts, pipeMetreKelvinPerWatt, pipeMetres } = await import('../units/index.js');
 * const { ratioToHandbook, heatFactor, marginFactor } = lengthFactors({
 *   mode: 'heating',
 *   pipeLength: pipeMetres(500),
 *   hour: { runningHeat: kilowatts(5), undisturbed: celsius(5), wallTemperature: celsius(-2), meanFluid: celsius(-4) },
 *   handbook: {
 *     pipe: pipeMetres(450), groundHeat: kilowatts(5), resistance: pipeMetreKelvinPerWatt(0.9),
 *     reducedGroundResistance: pipeMetreKelvinPerWatt(0.7), margin: kelvinDifference(10),
 *   },
 * });
 * expect([heatFactor, marginFactor]).toEqual([1, 10 / 9]);
 * expect(ratioToHandbook).toBeCloseTo(500 / 450, 12);
 * ```
 */
export function lengthFactors({ mode, pipeLength, hour, handbook }: LengthFactorsInput): LengthFactors {
  demandChoice('mode', mode, ['heating', 'cooling']);
  demand('pipeLength', 'pipe length', pipeLength, { atLeast: 1, atMost: 1e6 });
  demandObject('hour', hour);
  demandObject('handbook', handbook);
  demand('hour.runningHeat', 'power', hour.runningHeat, { atLeast: 1, atMost: 1e8 });
  demand('handbook.pipe', 'pipe length', handbook.pipe, { atLeast: 1, atMost: 1e6 });
  demand('handbook.groundHeat', 'power', handbook.groundHeat, { atLeast: 1, atMost: 1e8 });
  demand('handbook.margin', 'temperature difference', handbook.margin, { above: 0, atMost: 200 });
  demand('handbook.resistance', 'pipe resistance', handbook.resistance, { above: 0, atMost: 1000 });
  const { resistance, reducedGroundResistance } = handbook;
  demand('handbook.reducedGroundResistance', 'pipe resistance', reducedGroundResistance, { above: 0, atMost: resistance });
  const { undisturbed, wallTemperature, meanFluid } = hour;
  demand('hour.undisturbed', 'temperature', undisturbed, { atLeast: -60, atMost: 100 });
  // In cooling the order is the other way round; with both signs changed one rule serves.
  const [low, high] = mode === 'heating' ? [-60, undisturbed] : [undisturbed, 100];
  demand('hour.wallTemperature', 'temperature', wallTemperature, { atLeast: low, atMost: high });
  const [lower, upper] = mode === 'heating' ? [-60, wallTemperature] : [wallTemperature, 100];
  demand('hour.meanFluid', 'temperature', meanFluid, { atLeast: lower, atMost: upper });

  const heat = hour.runningHeat / pipeLength;
  const margin = Math.abs(undisturbed - meanFluid);
  demand('hour.meanFluid', 'temperature difference', margin, { above: 0 }, 'the fluid has the temperature of the ground');
  const ground = Math.abs(undisturbed - wallTemperature) / heat;
  const film = Math.abs(wallTemperature - meanFluid) / heat;
  const heatFactor = hour.runningHeat / handbook.groundHeat;
  const marginFactor = handbook.margin / margin;
  const filmFactor = (film + reducedGroundResistance) / resistance;
  const groundFactor = (film + ground) / (film + reducedGroundResistance);
  return {
    ratioToHandbook: pipeLength / handbook.pipe,
    heatFactor,
    marginFactor,
    filmFactor,
    groundFactor,
    seenGroundResistance: ground,
    seenPipeResistance: film,
    hardestHeat: heat,
  } as LengthFactors;
}
