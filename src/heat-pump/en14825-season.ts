import { demandChoice } from '../errors/index.js';
import type { Fraction, Shape, Temperature, Time } from '../units/index.js';
import { EN14825_SEASONS, LOAD_ENDS } from './en14825-seasons.data.js';

/** The reference climates of the standard: average as in Strasbourg, warmer as in Athens, colder as in Helsinki. */
export type En14825Climate = 'average' | 'warmer' | 'colder';

/** The climates, as they are chosen from. */
export const CLIMATES = ['average', 'warmer', 'colder'] as const;

/** Time that the season spends at an outdoor temperature. */
export interface SeasonBin {
  /** Outdoor temperature, a whole degree [degC]. */
  readonly outdoor: Temperature;
  /** Time there [s]. */
  readonly time: Time;
}

/** Time of a year that a unit spends in states in which it gives no heat. */
export interface SeasonTimes {
  /** Switched off by the thermostat, within the season, 0 to a year [s]. */
  readonly thermostatOffTime: Time;
  /** Standing by, 0 to a year [s]. */
  readonly standbyTime: Time;
  /** With the crankcase heater on, 0 to a year [s]. */
  readonly crankcaseTime: Time;
  /** Off, 0 to a year [s]. */
  readonly offTime: Time;
}

/** An outdoor temperature at which makers declare a unit at part load. */
export interface PartLoadPoint {
  /** Its letter; E, the limit of operation, and F, the bivalent temperature, are the unit's own and stand in no table. */
  readonly point: 'A' | 'B' | 'C' | 'D' | 'G';
  /** Outdoor temperature [degC]. */
  readonly outdoor: Temperature;
  /** Load over design load [1]. */
  readonly loadRatio: Fraction;
}

/** A heating season of the standard. */
export interface En14825Season extends SeasonTimes {
  /** Which of the three. */
  readonly climate: En14825Climate;
  /** Outdoor temperature of the design load [degC]. */
  readonly designOutdoor: Temperature;
  /** Outdoor temperature at which the load is nothing, 16 °C [degC]. */
  readonly balancePoint: Temperature;
  /** Every temperature of the season, coldest first. */
  readonly bins: readonly SeasonBin[];
  /** Where units are declared, coldest first. */
  readonly partLoadPoints: readonly PartLoadPoint[];
  /** Legal time at full load: heat of the season over design load [s]. */
  readonly fullLoadTime: Time;
}

/** Shape of {@link SeasonTimes}. */
export const seasonTimesShape: Shape<SeasonTimes> = { thermostatOffTime: 'time', standbyTime: 'time', crankcaseTime: 'time', offTime: 'time' };

/** Shape of {@link SeasonBin}. */
export const seasonBinShape: Shape<SeasonBin> = { outdoor: 'temperature', time: 'time' };

/** Shape of {@link En14825Season}. */
export const en14825SeasonShape: Shape<En14825Season> = {
  climate: CLIMATES,
  designOutdoor: 'temperature',
  balancePoint: 'temperature',
  bins: { list: seasonBinShape },
  partLoadPoints: { list: { point: ['A', 'B', 'C', 'D', 'G'], outdoor: 'temperature', loadRatio: 'fraction' } },
  fullLoadTime: 'time',
  thermostatOffTime: 'time',
  standbyTime: 'time',
  crankcaseTime: 'time',
  offTime: 'time',
};

const HOUR = 3600;

/**
 * A heating season of EN 14825: bins of outdoor temperature, load line and hours.
 *
 * @param climate - average, warmer or colder
 * @returns bins [degC, s], design temperature and the times of a unit that only heats [s]
 * @throws InputError for any other climate
 * @remarks
 * Load over design load = (16 °C − outdoor)/(16 °C − design outdoor). Sources: `en14825`, `eu811of2013`, `en14825Hours`. Checked: bins weighed with the line give the
 * legal hours at full load. The crankcase times of the warmer and the colder climate fit the sum of the others only with one another's thermostat time; they
 * are kept as printed.
 * @example
 * ```ts @import.meta.vitest
 * const { hours } = await import('../units/index.js');
 * const { bins, designOutdoor, fullLoadTime } = en14825Season('average');
 * const atFullLoad = bins.reduce((sum, { outdoor, time }) => sum + (time * (16 - outdoor)) / (16 - designOutdoor), 0);
 * expect(hours.of(fullLoadTime)).toBe(2066);
 * expect(atFullLoad / 3600).toBeCloseTo(2065.6154, 4);
 * ```
 */
export function en14825Season(climate: En14825Climate): En14825Season {
  demandChoice('climate', climate, CLIMATES);
  const { designOutdoor, binHours, fullLoad, thermostatOff, standby, crankcase, off, partLoad } = EN14825_SEASONS[climate];
  const points = Object.entries<number>(partLoad);
  return {
    climate,
    designOutdoor: designOutdoor as Temperature,
    balancePoint: LOAD_ENDS as Temperature,
    bins: binHours.map((hours, index) => ({ outdoor: (designOutdoor + index) as Temperature, time: (hours * HOUR) as Time })),
    partLoadPoints: points.map(([point, outdoor]) => ({
      point: point as PartLoadPoint['point'],
      outdoor: outdoor as Temperature,
      loadRatio: loadRatioAt(designOutdoor, outdoor) as Fraction,
    })),
    fullLoadTime: (fullLoad * HOUR) as Time,
    thermostatOffTime: (thermostatOff * HOUR) as Time,
    standbyTime: (standby * HOUR) as Time,
    crankcaseTime: (crankcase * HOUR) as Time,
    offTime: (off * HOUR) as Time,
  };
}

/** Load over design load. */
export const loadRatioAt = (designOutdoor: number, outdoor: number): number => (LOAD_ENDS - outdoor) / (LOAD_ENDS - designOutdoor);
