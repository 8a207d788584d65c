import { demand, demandChoice, InputError } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { PipeResistance, Power, Ratio, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { type LengthFigures, lengthFigures, lengthFiguresShape } from './length-figures.js';
import { type LoadMode, temperatureMargin } from './margin.js';
import { readRises, type RiseAfter } from './rise-after.js';

/** What {@link threePulsePipeLength} needs. Heat counts in the direction of the mode: from the ground in heating, to it in cooling. */
export interface ThreePulseInput {
  /** Heating or cooling. */
  readonly mode: LoadMode;
  /** Mean ground heat from the start of the season to the design month, at most the peak; negative where the ground gained [W]. */
  readonly seasonHeat: Power;
  /** Mean ground heat of the design month, 0 to the peak [W]. */
  readonly monthHeat: Power;
  /** Ground heat while the unit runs at full load at the end of the month, 1 to 1e8 [W]. */
  readonly peakHeat: Power;
  /** Length of the season before the design month, 1 day to 100 years [s]. */
  readonly seasonTime: Time;
  /** Length of the design month, 1 day to a year [s]. */
  readonly monthTime: Time;
  /** How long the full load lasts, 1 minute to 60 days [s]. */
  readonly peakTime: Time;
  /** Step response of the ground. */
  readonly riseAfter: RiseAfter;
  /** Pipe wall and film, per metre of each pipe, 0 to 1000 [m.K/W]. */
  readonly pipeResistance: PipeResistance;
  /** Undisturbed ground at pipe depth on the design date [degC]. */
  readonly groundTemperature: Temperature;
  /** Mean of entering and leaving fluid at the design date [degC]. */
  readonly fluidTemperature: Temperature;
  /** Metres of pipe in a metre of trench, 0.1 to 100 [1]. */
  readonly pipePerTrench: Ratio;
}

/** A length by three pulses, with everything the worksheet prints. */
export interface ThreePulseLength extends LengthFigures {
  /** Heating or cooling. */
  readonly mode: LoadMode;
  /** Response to the season's mean heat: rise(season + month + peak) − rise(month + peak) [m.K/W]. */
  readonly seasonResistance: PipeResistance;
  /** Response to the month's mean heat: rise(month + peak) − rise(peak) [m.K/W]. */
  readonly monthResistance: PipeResistance;
  /** Response to the full load: rise(peak) [m.K/W]. */
  readonly peakResistance: PipeResistance;
  /** Pipe wall and film [m.K/W]. */
  readonly pipeResistance: PipeResistance;
  /** Ground − fluid in heating, fluid − ground in cooling [K]. */
  readonly margin: TemperatureDifference;
  /** The part of the margin that each spends at this length; the four add up to it. */
  readonly spent: {
    /** Season [K]. */
    readonly season: TemperatureDifference;
    /** Design month [K]. */
    readonly month: TemperatureDifference;
    /** Full load in the ground [K]. */
    readonly peak: TemperatureDifference;
    /** Full load across film and pipe wall [K]. */
    readonly pipe: TemperatureDifference;
  };
}

/** Shape of {@link ThreePulseLength}. */
export const threePulseLengthShape: Shape<ThreePulseLength> = /* @__PURE__ */ joinedShape(lengthFiguresShape, {
  mode: ['heating', 'cooling'],
  seasonResistance: 'pipe resistance',
  monthResistance: 'pipe resistance',
  peakResistance: 'pipe resistance',
  pipeResistance: 'pipe resistance',
  margin: 'temperature difference',
  spent: {
    season: 'temperature difference',
    month: 'temperature difference',
    peak: 'temperature difference',
    pipe: 'temperature difference',
  },
});

const DAY = 86_400;

/**
 * Length of pipe for three pulses of heat on top of one another: the season so far, the design month and the full load at its end,
 * L = (peak · Rp + season · Rseason + month · Rmonth + peak · Rpeak)/(ground − fluid).
 *
 * A shallow loop remembers months, not years: the season pulse is the mean of the heating season so far, and the ground
 * temperature that of the design date at pipe depth, not the yearly mean. Ice and trench fill are left out.
 *
 * @param input - see {@link ThreePulseInput}
 * @returns length, resistances and the part of the margin that each spends
 * @throws InputError for a value out of its range; `impossible` when a mean exceeds the full load or the ground gains heat on balance;
 * `unreachable` when the fluid is not beyond the ground by 0.01 K
 * @remarks Derived from superposition; the form is that of Kavanaugh and Rafferty (`kavanaughRafferty1997`), recalled; arithmetic checked against two rows
 * computed independently (LS-22). Invariants tested: proportional to the three heats together, inverse to the margin, the spent
 * parts add up to the margin, one lasting heat for all three gives the plain resistance of the whole time.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, days, hours, pipeMetreKelvinPerWatt, ratio, watts } = await import('../units/index.js');
 * const length = threePulsePipeLength({
 *   mode: 'heating',
 *   seasonHeat: watts(900),
 *   monthHeat: watts(3200),
 *   peakHeat: watts(7000),
 *   seasonTime: days(150),
 *   monthTime: days(30),
 *   peakTime: hours(4),
 *   riseAfter: (time) => pipeMetreKelvinPerWatt(0.053 * Math.log(1 + time / 200)),
 *   pipeResistance: pipeMetreKelvinPerWatt(0.1),
 *   groundTemperature: celsius(7),
 *   fluidTemperature: celsius(0),
 *   pipePerTrench: ratio(2),
 * });
 * expect(length.spent.season + length.spent.month + length.spent.peak + length.spent.pipe).toBeCloseTo(7, 9);
 * ```
 */
export function threePulsePipeLength(input: ThreePulseInput): ThreePulseLength {
  const { mode, seasonHeat, monthHeat, peakHeat, seasonTime, monthTime, peakTime, riseAfter, pipeResistance, pipePerTrench } = input;
  demandChoice('mode', mode, ['heating', 'cooling']);
  demand('peakHeat', 'power', peakHeat, { atLeast: 1, atMost: 1e8 });
  const aboveMean = 'a mean cannot exceed the full load';
  demand('monthHeat', 'power', monthHeat, { atLeast: 0, atMost: peakHeat }, aboveMean);
  demand('seasonHeat', 'power', seasonHeat, { atLeast: -1e8, atMost: peakHeat }, aboveMean);
  demand('seasonTime', 'time', seasonTime, { atLeast: DAY, atMost: 36_600 * DAY });
  demand('monthTime', 'time', monthTime, { atLeast: DAY, atMost: 366 * DAY });
  demand('peakTime', 'time', peakTime, { atLeast: 60, atMost: 60 * DAY });
  demand('pipeResistance', 'pipe resistance', pipeResistance, { atLeast: 0, atMost: 1000 });
  demand('pipePerTrench', 'ratio', pipePerTrench, { atLeast: 0.1, atMost: 100 });
  const margin = temperatureMargin(mode, input.groundTemperature, input.fluidTemperature, 'groundTemperature');

  const [peak = 0, month = 0, season = 0] = readRises(riseAfter, [peakTime, monthTime + peakTime, seasonTime + monthTime + peakTime]);
  const demanded = {
    season: seasonHeat * (season - month),
    month: monthHeat * (month - peak),
    peak: peakHeat * peak,
    pipe: peakHeat * pipeResistance,
  };
  const total = demanded.season + demanded.month + demanded.peak + demanded.pipe;
  if (total <= 0) {
    throw new InputError({
      code: 'impossible',
      argument: 'seasonHeat',
      value: { kind: 'power', value: seasonHeat },
      allowed: 'a season that leaves the ground with something to give',
      hint: 'the ground gains more than the month and the full load take: these loads need no loop',
    });
  }
  const pipe = total / margin;
  return {
    ...lengthFigures(pipe, pipePerTrench, peakHeat),
    mode,
    seasonResistance: (season - month) as PipeResistance,
    monthResistance: (month - peak) as PipeResistance,
    peakResistance: peak as PipeResistance,
    pipeResistance,
    margin,
    spent: {
      season: (demanded.season / pipe) as TemperatureDifference,
      month: (demanded.month / pipe) as TemperatureDifference,
      peak: (demanded.peak / pipe) as TemperatureDifference,
      pipe: (demanded.pipe / pipe) as TemperatureDifference,
    },
  };
}
