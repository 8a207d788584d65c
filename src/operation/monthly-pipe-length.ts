import { demand, demandChoice, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { PipeLength, PipeResistance, Power, Ratio, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { type LengthFigures, lengthFigures, lengthFiguresShape } from './length-figures.js';
import { type LoadMode, temperatureMargin } from './margin.js';
import { readRises, type RiseAfter } from './rise-after.js';
import { superpose } from './superposition.js';

/** A calendar month as {@link monthlyPipeLength} sees it. Heat counts in the direction of the mode. */
export interface GroundMonth {
  /** Mean ground heat over the month, at most the full load; negative where the ground gains [W]. */
  readonly meanHeat: Power;
  /** Mean ground heat over the spell at the end of the month, 0 to 1e8; 0 where the unit does not run [W]. */
  readonly peakHeat: Power;
  /** Ground heat while the unit runs, at least the mean of the spell, to 1e8; that mean, for a unit that never pauses in it, when left out [W]. */
  readonly runningHeat?: Power;
  /** Undisturbed ground at pipe depth at the end of the month [degC]. */
  readonly groundTemperature: Temperature;
}

/** What {@link monthlyPipeLength} needs. */
export interface MonthlyLengthInput {
  /** Heating or cooling. */
  readonly mode: LoadMode;
  /** January to December. */
  readonly months: readonly GroundMonth[];
  /** Month in which the loop starts to work, 1 to 12. */
  readonly startMonth: number;
  /** How many years it is followed, 1 to 50. */
  readonly years: number;
  /** How long the full load lasts, 1 minute to 10 days [s]. */
  readonly peakTime: Time;
  /** Step response of the ground. */
  readonly riseAfter: RiseAfter;
  /** Pipe wall and film, per metre of each pipe, 0 to 1000 [m.K/W]. */
  readonly pipeResistance: PipeResistance;
  /** Mean of entering and leaving fluid that must be kept [degC]. */
  readonly fluidTemperature: Temperature;
  /** Metres of pipe in a metre of trench, 0.1 to 100 [1]. */
  readonly pipePerTrench: Ratio;
}

/** A length by monthly superposition, with the month that binds. */
export interface MonthlyLength extends LengthFigures {
  /** Heating or cooling. */
  readonly mode: LoadMode;
  /** The calendar month that binds, 1 to 12. */
  readonly bindingMonth: number;
  /** The year of operation in which it binds, from 1. */
  readonly bindingYear: number;
  /** Ground − fluid in heating, fluid − ground in cooling, in that month [K]. */
  readonly margin: TemperatureDifference;
  /** The part of the margin that each spends at this length; the three add up to it. */
  readonly spent: {
    /** All months so far [K]. */
    readonly months: TemperatureDifference;
    /** The spell above the month's mean, in the ground [K]. */
    readonly peak: TemperatureDifference;
    /** Full load across film and pipe wall [K]. */
    readonly pipe: TemperatureDifference;
  };
  /** What the first year alone asks for; less than the whole where the ground has not yet cooled to its repeating year [m]. */
  readonly firstYear: PipeLength;
}

/** Shape of {@link MonthlyLength}. */
export const monthlyLengthShape: Shape<MonthlyLength> = /* @__PURE__ */ joinedShape(lengthFiguresShape, {
  mode: ['heating', 'cooling'],
  bindingMonth: 'count',
  bindingYear: 'count',
  margin: 'temperature difference',
  spent: { months: 'temperature difference', peak: 'temperature difference', pipe: 'temperature difference' },
  firstYear: 'pipe length',
});

/** A twelfth of 365.25 days [s]. */
const MONTH = 2_629_800;

/**
 * Length of pipe by monthly superposition with a spell of hard running at the end of each month: in every month of every year
 * L = (Σ heat steps · rise + (spell − mean) · rise(spell) + running · Rp)/(ground − fluid), and the longest binds.
 *
 * Each month meets the ground temperature of that month, so the coldest ground and the heaviest load need not fall together; and the real course of the
 * year replaces the run fraction of the handbook equation. Ice and trench fill are left out.
 *
 * @param input - see {@link MonthlyLengthInput}
 * @returns length, the month and year that bind, and what spends the margin
 * @throws InputError for a value out of its range; `impossible` when no month asks for pipe; `unreachable` when the fluid is not
 * beyond the ground by 0.01 K in a month in which the unit runs
 * @remarks Derived from superposition; checked against a 20-year course computed independently (LS-21). Invariants tested: proportional to the
 * heats, what is spent adds up to the margin, more years never shorten it, one lasting heat gives the plain resistance.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, pipeMetreKelvinPerWatt, ratio, watts } = await import('../units/index.js');
 * const means = [4200, 3700, 2900, 1600, 600, 0, 0, 0, 400, 1500, 2900, 3900];
 * const ground = [6, 5, 5, 6, 8, 10, 12, 14, 14, 12, 10, 8];
 * const length = monthlyPipeLength({
 *   mode: 'heating',
 *   months: means.map((mean, index) => ({
 *     meanHeat: watts(mean), peakHeat: watts(mean > 0 ? 7000 : 0), groundTemperature: celsius(ground[index] ?? 10),
 *   })),
 *   startMonth: 10,
 *   years: 5,
 *   peakTime: hours(48),
 *   riseAfter: (time) => pipeMetreKelvinPerWatt(0.72 * (1 - Math.exp(-((time / 1e6) ** 0.4)))),
 *   pipeResistance: pipeMetreKelvinPerWatt(0.1),
 *   fluidTemperature: celsius(-1),
 *   pipePerTrench: ratio(2),
 * });
 * expect([length.bindingMonth, length.bindingYear]).toEqual([2, 5]);
 * expect(length.firstYear).toBeLessThan(length.pipe);
 * ```
 */
export function monthlyPipeLength(input: MonthlyLengthInput): MonthlyLength {
  demandMonthlyInput(input);
  const { mode, months, startMonth, years, peakTime, pipeResistance, fluidTemperature } = input;
  const calendar = months.map((month, index) => ({ ...month, month: index + 1 }));
  const yearOfOperation = [...calendar.slice(startMonth - 1), ...calendar.slice(0, startMonth - 1)];
  const course = Array.from({ length: years }, (_, index) => yearOfOperation.map((month) => ({ ...month, year: index + 1 }))).flat();
  const rises = readRises(
    input.riseAfter,
    course.map((_, index) => (index + 1) * MONTH),
  );
  const [peakRise = 0] = readRises(input.riseAfter, [peakTime]);
  const changes = superpose(
    course.map(({ meanHeat }) => meanHeat),
    rises,
  );
  const needs = course.flatMap(({ month, year, meanHeat, peakHeat, runningHeat = peakHeat, groundTemperature }, index) => {
    if (peakHeat === 0) return [];
    const path = `months.${String(month - 1)}`;
    const margin = temperatureMargin(mode, groundTemperature, fluidTemperature, `${path}.groundTemperature`);
    const demanded = { months: changes[index] ?? 0, peak: (peakHeat - meanHeat) * peakRise, pipe: runningHeat * pipeResistance };
    return [{ month, year, runningHeat, margin, demanded, pipe: (demanded.months + demanded.peak + demanded.pipe) / margin }];
  });
  needs.sort((a, b) => b.pipe - a.pipe);
  const [binding] = needs;
  if (binding === undefined || binding.pipe <= 0) throw noPipeNeeded();
  const { margin, demanded, pipe } = binding;
  return {
    ...lengthFigures(pipe, input.pipePerTrench, binding.runningHeat),
    mode,
    bindingMonth: binding.month,
    bindingYear: binding.year,
    margin,
    spent: {
      months: (demanded.months / pipe) as TemperatureDifference,
      peak: (demanded.peak / pipe) as TemperatureDifference,
      pipe: (demanded.pipe / pipe) as TemperatureDifference,
    },
    firstYear: Math.max(0, needs.find(({ year }) => year === 1)?.pipe ?? 0) as PipeLength,
  };
}

function demandMonthlyInput(input: MonthlyLengthInput): void {
  demandChoice('mode', input.mode, ['heating', 'cooling']);
  demandCount('months', input.months, 12, 12);
  input.months.forEach((month, index) => {
    demandObject(`months.${String(index)}`, month);
    locate(`months.${String(index)}`, () => {
      const { meanHeat, peakHeat, runningHeat } = month;
      demand('peakHeat', 'power', peakHeat, { atLeast: 0, atMost: 1e8 });
      demand(
        'meanHeat',
        'power',
        meanHeat,
        { atLeast: -1e8, atMost: peakHeat },
        'a mean cannot exceed the heat of the spell at the end of its month',
      );
      if (runningHeat !== undefined) demand('runningHeat', 'power', runningHeat, { atLeast: peakHeat, atMost: 1e8 });
    });
  });
  demand('startMonth', 'count', input.startMonth, { atLeast: 1, atMost: 12 });
  demand('years', 'count', input.years, { atLeast: 1, atMost: 50 });
  demand('peakTime', 'time', input.peakTime, { atLeast: 60, atMost: 10 * 86_400 });
  demand('pipeResistance', 'pipe resistance', input.pipeResistance, { atLeast: 0, atMost: 1000 });
  demand('pipePerTrench', 'ratio', input.pipePerTrench, { atLeast: 0.1, atMost: 100 });
}

function noPipeNeeded(): InputError {
  return new InputError({
    code: 'impossible',
    argument: 'months',
    value: undefined,
    allowed: 'at least one month in which the unit runs and takes more than the ground has gained',
    hint: 'these loads need no loop; check the mode and the signs',
  });
}
