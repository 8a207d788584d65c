import { demand, demandChoice } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { LengthPerPower, PipeResistance, Power, Ratio, RunFraction, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { type LengthFigures, lengthFigures, lengthFiguresShape } from './length-figures.js';
import { type LoadMode, temperatureMargin } from './margin.js';

/** Which temperature of the fluid stands in the formula: the mean of entering and leaving, or the one entering the heat pump. */
export type FluidConvention = 'mean fluid' | 'entering fluid';

/** What {@link handbookPipeLength} needs. */
export interface HandbookLengthInput {
  /** Heating (heat from the ground) or cooling (heat to the ground). */
  readonly mode: LoadMode;
  /** Heating or cooling capacity of the unit at the design fluid temperature, 1 to 1e8 [W]. */
  readonly capacity: Power;
  /** Capacity over electric input at the design fluid temperature; above 1 in heating, from 0.1 in cooling, to 100 [1]. */
  readonly cop: Ratio;
  /** Pipe wall and film, per metre of each pipe, 0 to 1000 [m.K/W]. */
  readonly pipeResistance: PipeResistance;
  /** Response of the soil to a lasting load, per metre of each pipe, 0.001 to 1000 [m.K/W]. */
  readonly groundResistance: PipeResistance;
  /** Hours the unit runs in the design month over the hours of the month, 0.001 to 1. */
  readonly runFraction: RunFraction;
  /** Undisturbed ground at the mean depth of the pipes: its lowest of the year in heating, its highest in cooling [degC]. */
  readonly groundTemperature: Temperature;
  /** Which temperature of the fluid {@link fluidTemperature} is. */
  readonly convention: FluidConvention;
  /** Design temperature of the fluid [degC]. */
  readonly fluidTemperature: Temperature;
  /** Metres of pipe in a metre of trench, 0.1 to 100 [1]: 2 for two pipes, 7.3 for a coil of 36 in rings 18 in apart with its return. */
  readonly pipePerTrench: Ratio;
}

/** A length by the handbook equation, with everything the worksheet prints. */
export interface HandbookLength extends LengthFigures {
  /** Heating or cooling. */
  readonly mode: LoadMode;
  /** Which temperature of the fluid stood in the formula. */
  readonly convention: FluidConvention;
  /** Heat taken from or given to the ground while the unit runs [W]. */
  readonly groundHeat: Power;
  /** Pipe resistance + ground resistance · run fraction [m.K/W]. */
  readonly resistance: PipeResistance;
  /** Share of it that the soil holds: ground resistance · run fraction [m.K/W]. */
  readonly reducedGroundResistance: PipeResistance;
  /** Ground − fluid in heating, fluid − ground in cooling [K]. */
  readonly margin: TemperatureDifference;
  /** Pipe per unit of the unit's capacity in this mode at design [m/W]; in ft/ton, the ton is 12 000 Btu/h of that capacity. */
  readonly pipePerCapacity: LengthPerPower;
}

/** Shape of {@link HandbookLength}. */
export const handbookLengthShape: Shape<HandbookLength> = /* @__PURE__ */ joinedShape(lengthFiguresShape, {
  mode: ['heating', 'cooling'],
  convention: ['mean fluid', 'entering fluid'],
  groundHeat: 'power',
  resistance: 'pipe resistance',
  reducedGroundResistance: 'pipe resistance',
  margin: 'temperature difference',
  pipePerCapacity: 'length per power',
});

/**
 * Length of pipe by the handbook equation for horizontal loops:
 * heating L = capacity · (COP − 1)/COP · (Rp + Rs · F)/(ground − fluid),
 * cooling L = capacity · (COP + 1)/COP · (Rp + Rs · F)/(fluid − ground).
 *
 * A comparison, not the answer. It leaves out freezing, the trench fill and, unless the ground resistance holds them, the
 * neighbouring trenches; it multiplies the whole soil resistance by the run fraction of the design month, which smears
 * multi-day spells of full load; and it lets the coldest ground meet the coldest month, which comes weeks earlier.
 *
 * Derived with the mean fluid temperature. Some printings insert the entering one: half the fluid range closer to the
 * ground in heating and in cooling, so the length comes out longer. The result says which was used.
 *
 * @param input - see {@link HandbookLengthInput}
 * @returns length, figures per length and per power, and every intermediate
 * @throws InputError for a value out of its range; `unreachable` when the fluid is not beyond the ground by 0.01 K
 * @remarks Source: the design manual family after Bose, Parker and McQuiston (`bose1985`), recalled; checked against eight rows computed
 * independently with every input explicit (LS-20). Invariants tested: proportional to capacity, inverse to the margin, rising
 * in each resistance and in the run fraction, the same in US units.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, feetPerTon, pipeMetreKelvinPerWatt, ratio, runFraction, tons } = await import('../units/index.js');
 * const length = handbookPipeLength({
 *   mode: 'heating',
 *   capacity: tons(3),
 *   cop: ratio(3.3),
 *   pipeResistance: pipeMetreKelvinPerWatt(0.1),
 *   groundResistance: pipeMetreKelvinPerWatt(0.82),
 *   runFraction: runFraction(0.55),
 *   groundTemperature: celsius(7.2),
 *   convention: 'mean fluid',
 *   fluidTemperature: celsius(-1.1),
 *   pipePerTrench: ratio(2),
 * });
 * expect(length.pipe).toBeCloseTo(488, 0);
 * expect(length.trench).toBeCloseTo(244, 0);
 * expect(feetPerTon.of(length.pipePerCapacity)).toBeCloseTo(534, 0);
 * ```
 */
export function handbookPipeLength(input: HandbookLengthInput): HandbookLength {
  const { mode, capacity, cop, pipeResistance, groundResistance, runFraction, convention, pipePerTrench } = input;
  demandChoice('mode', mode, ['heating', 'cooling']);
  demandChoice('convention', convention, ['mean fluid', 'entering fluid']);
  demand('capacity', 'power', capacity, { atLeast: 1, atMost: 1e8 });
  demand('cop', 'ratio', cop, mode === 'heating' ? { above: 1, atMost: 100 } : { atLeast: 0.1, atMost: 100 });
  demand('pipeResistance', 'pipe resistance', pipeResistance, { atLeast: 0, atMost: 1000 });
  demand('groundResistance', 'pipe resistance', groundResistance, { atLeast: 0.001, atMost: 1000 });
  demand('runFraction', 'run fraction', runFraction, { atLeast: 0.001, atMost: 1 }, 'a unit that never runs in the design month needs no loop');
  demand('pipePerTrench', 'ratio', pipePerTrench, { atLeast: 0.1, atMost: 100 });
  const margin = temperatureMargin(mode, input.groundTemperature, input.fluidTemperature, 'groundTemperature');

  const groundHeat = (capacity * (mode === 'heating' ? cop - 1 : cop + 1)) / cop;
  const reducedGroundResistance = groundResistance * runFraction;
  const resistance = pipeResistance + reducedGroundResistance;
  const pipe = (groundHeat * resistance) / margin;
  return {
    ...lengthFigures(pipe, pipePerTrench, groundHeat as Power),
    mode,
    convention,
    groundHeat: groundHeat as Power,
    resistance: resistance as PipeResistance,
    reducedGroundResistance: reducedGroundResistance as PipeResistance,
    margin,
    pipePerCapacity: (pipe / capacity) as LengthPerPower,
  };
}
