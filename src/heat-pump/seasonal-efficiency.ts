import { demand, demandChoice, demandObject } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { ElectricEnergy, ElectricPower, Energy, Fraction, Power, Ratio, Shape, Time } from '../units/index.js';
import { CLIMATES, type En14825Climate, type En14825Season, en14825Season, type SeasonTimes, seasonTimesShape } from './en14825-season.js';
import { EFFICIENCY_TERMS } from './en14825-seasons.data.js';
import { SEASON_POWER } from './seasonal-cop.js';

/** What {@link seasonalEfficiency} needs. */
export interface SeasonalEfficiencyInput {
  /** The season. */
  readonly climate: En14825Climate;
  /** Heat loss at the design temperature of the climate, 0.001 to 1e9 [W]. */
  readonly designLoad: Power;
  /** SCOPon, 0.5 to 50 [1]. */
  readonly activeCop: Ratio;
  /** Electric input with the thermostat off, 0 to 1e6 [W]. */
  readonly thermostatOffPower: ElectricPower;
  /** Electric input standing by, 0 to 1e6 [W]. */
  readonly standbyPower: ElectricPower;
  /** Electric input of the crankcase heater, 0 to 1e6 [W]. */
  readonly crankcasePower: ElectricPower;
  /** Electric input while off, 0 to 1e6 [W]. */
  readonly offPower: ElectricPower;
  /** Times in these states of a unit that also cools; those of a unit that only heats when left out. */
  readonly times?: SeasonTimes;
  /** Primary energy per electricity, CC, 1 to 5; 2.5 when left out, later rules have less [1]. */
  readonly conversion?: Ratio;
  /** Taken off for controls, F(1), 0 to 0.5; 0.03 when left out [1]. */
  readonly controlsLoss?: Fraction;
  /** Taken off for the pump of a brine or water unit, F(2), 0 to 0.5; 0.05 when left out [1]. */
  readonly pumpLoss?: Fraction;
}

/** Seasonal COP with all that a unit takes through the year, and the seasonal efficiency of labels. */
export interface SeasonalEfficiency {
  /** Heat of the season: design load for the legal time at full load [J]. */
  readonly energy: Energy;
  /** Electricity in states without heat [J]. */
  readonly idleElectricity: ElectricEnergy;
  /** Heat over all electricity, SCOP [1]. */
  readonly seasonalCop: Ratio;
  /** Heat over primary energy less the losses, η_s [1]. */
  readonly primaryEfficiency: Ratio;
}

/** A {@link SeasonalEfficiency} with its findings. */
export interface SeasonalEfficiencyResult extends SeasonalEfficiency {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link SeasonalEfficiencyInput}. */
export const seasonalEfficiencyInputShape: Shape<SeasonalEfficiencyInput> = {
  climate: CLIMATES,
  designLoad: 'power',
  activeCop: 'ratio',
  thermostatOffPower: 'electric power',
  standbyPower: 'electric power',
  crankcasePower: 'electric power',
  offPower: 'electric power',
  times: { optional: seasonTimesShape },
  conversion: { optional: 'ratio' },
  controlsLoss: { optional: 'fraction' },
  pumpLoss: { optional: 'fraction' },
};

/** Shape of {@link SeasonalEfficiency}. */
export const seasonalEfficiencyShape: Shape<SeasonalEfficiency> = {
  energy: 'energy',
  idleElectricity: 'electric energy',
  seasonalCop: 'ratio',
  primaryEfficiency: 'ratio',
};

const STATES = ['thermostatOff', 'standby', 'crankcase', 'off'] as const;
const YEAR = 31_622_400;

/**
 * Seasonal COP and seasonal efficiency of an EN 14825 season, from SCOPon and what the unit takes while it gives no heat.
 *
 * @param input - season, design load [W], SCOPon, electric input in four states [W]; times, conversion and losses where they differ
 * @returns heat and idle electricity [J], SCOP and η_s [1], and what to look at
 * @throws InputError for a value out of its range
 * @remarks
 * SCOP = Q/(Q/SCOPon + Σ H P) with Q = design load · legal hours; η_s = SCOP/CC − F(1) − F(2). Sources: `eu811of2013` for the structure; CC, F(1), F(2) and the
 * times are recalled or second-hand (`en14825Hours`). Invariants tested: nothing drawn while idle, SCOP is SCOPon; more idle power never helps.
 * @example
 * ```ts @import.meta.vitest
 * const { electricWatts, kilowatts, ratio } = await import('../units/index.js');
 * const idle = { thermostatOffPower: electricWatts(15), standbyPower: electricWatts(10), crankcasePower: electricWatts(0), offPower: electricWatts(10) };
 * const label = seasonalEfficiency({ climate: 'average', designLoad: kilowatts(8), activeCop: ratio(4), ...idle });
 * expect(label.seasonalCop).toBeCloseTo(3.962214, 6);
 * expect(label.primaryEfficiency).toBeCloseTo(1.504886, 6);
 * ```
 */
export function seasonalEfficiency(input: SeasonalEfficiencyInput): SeasonalEfficiencyResult {
  const { climate, designLoad, activeCop, times } = input;
  demandChoice('climate', climate, CLIMATES);
  demand('designLoad', 'power', designLoad, SEASON_POWER);
  demand('activeCop', 'ratio', activeCop, { atLeast: 0.5, atMost: 50 });
  for (const state of STATES) demand(`${state}Power`, 'electric power', input[`${state}Power`], { atLeast: 0, atMost: 1e6 });
  if (times !== undefined) {
    demandObject('times', times);
    for (const state of STATES) demand(`times.${state}Time`, 'time', times[`${state}Time`], { atLeast: 0, atMost: YEAR });
  }
  const {
    conversion = EFFICIENCY_TERMS.conversion,
    controlsLoss = EFFICIENCY_TERMS.controlsLoss,
    pumpLoss = EFFICIENCY_TERMS.pumpLoss,
  }: { readonly conversion?: number; readonly controlsLoss?: number; readonly pumpLoss?: number } = input;
  demand('conversion', 'ratio', conversion, { atLeast: 1, atMost: 5 });
  demand('controlsLoss', 'fraction', controlsLoss, { atLeast: 0, atMost: 0.5 });
  demand('pumpLoss', 'fraction', pumpLoss, { atLeast: 0, atMost: 0.5 });
  const season = en14825Season(climate);
  const energy = designLoad * season.fullLoadTime;
  const idleOver = (spent: SeasonTimes): number => STATES.reduce((sum, state) => sum + spent[`${state}Time`] * input[`${state}Power`], 0);
  const copWith = (idle: number): number => energy / (energy / activeCop + idle);
  const idleElectricity = idleOver(times ?? season);
  const cop = copWith(idleElectricity);
  const copOfSums = copWith(idleOver({ ...season, crankcaseTime: sumTime(season) }));
  return {
    energy: energy as Energy,
    idleElectricity: idleElectricity as ElectricEnergy,
    seasonalCop: cop as Ratio,
    primaryEfficiency: (cop / conversion - controlsLoss - pumpLoss) as Ratio,
    findings: times === undefined && copOfSums !== cop ? [doubtfulHours(season, copOfSums / cop)] : [],
  };
}

/** The crankcase heater of a unit that only heats is on whenever the thermostat has stopped it or it is off. */
const sumTime = ({ thermostatOffTime, offTime }: SeasonTimes): Time => (thermostatOffTime + offTime) as Time;

const doubtfulHours = (season: En14825Season, factor: number): Finding => ({
  code: 'season-hours-doubtful',
  level: 'note',
  values: { climate: season.climate, crankcaseTime: season.crankcaseTime, expected: sumTime(season), factor: factor as Ratio },
  source: 'en14825Hours',
});
