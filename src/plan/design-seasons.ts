import { erbsSpread } from '../building/index.js';
import { type ColdSpell, designSummer, designWinter, type DesignSeason, type DesignSeasonInput, type HotSpell } from '../climate/index.js';
import { demand, demandObject } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { atPlace } from './at-place.js';
import type { SurfaceWaves } from './ground-at-pipes.js';

/** A hard season to design for. */
export interface HardSeasonInput {
  /** In so many seasons one is expected to be harder, 2 to 100; 10 when left out. */
  readonly returnPeriod?: number;
  /** Standard deviation of the mean of three months from year to year, 0 to 6; assumed when left out [K]. */
  readonly seasonDeviation?: TemperatureDifference;
}

/** A hard season as it was designed for. */
export interface HardSeason {
  /** In so many seasons one is expected to be harder. */
  readonly returnPeriod: number;
  /** How much harder than usual the three months are [K]. */
  readonly departure: TemperatureDifference;
  /** The ground surface in such a year. */
  readonly surface: AnnualWave;
}

/** Shape of {@link HardSeasonInput}. */
export const hardSeasonInputShape: Shape<HardSeasonInput> = {
  returnPeriod: { optional: 'count' },
  seasonDeviation: { optional: 'temperature difference' },
};

/** Shape of {@link HardSeason}. */
export const hardSeasonShape: Shape<HardSeason> = { returnPeriod: 'count', departure: 'temperature difference', surface: annualWaveShape };

/** Refuses a season that none can be designed for. */
export function demandHardSeason(argument: 'designWinter' | 'designSummer', season: HardSeasonInput | undefined): void {
  if (season === undefined) return;
  demandObject(argument, season);
  const { returnPeriod, seasonDeviation } = season;
  if (returnPeriod !== undefined) demand(`${argument}.returnPeriod`, 'count', returnPeriod, { atLeast: 2, atMost: 100 });
  if (seasonDeviation !== undefined) demand(`${argument}.seasonDeviation`, 'temperature difference', seasonDeviation, { atLeast: 0, atMost: 6 });
}

/** What the seasons of a job are made from. */
export interface DesignSeasonsInput {
  readonly designWinter?: HardSeasonInput | undefined;
  readonly designSummer?: HardSeasonInput | undefined;
  /** Twelve monthly means of the air in a usual year [degC]. */
  readonly usualMonths: readonly Temperature[];
  /** The part of the input that they come from. */
  readonly airPlace: 'climate' | 'airMonths';
  /** The usual wave of the ground surface. */
  readonly wave: AnnualWave;
}

/** Air and ground surface of the year that a loop is designed for. */
export interface DesignSeasons {
  /** Twelve monthly means of the air [degC]. */
  readonly months: readonly Temperature[];
  /** Standard deviation of the hours of each month [K]. */
  readonly spread: readonly TemperatureDifference[];
  /** The ground surface in a usual year and after hard seasons. */
  readonly surface: SurfaceWaves;
  readonly coldSpell?: ColdSpell;
  readonly hotSpell?: HotSpell;
  readonly winter?: HardSeason;
  readonly summer?: HardSeason;
  readonly findings: readonly Finding[];
}

/**
 * A usual year, with the hard winter and the hard summer in it that were asked for, in load and ground at once.
 *
 * @param input - what was asked for, the usual months and the usual ground surface
 * @returns months, spells and surface waves of the year to design for
 */
export function designSeasons({ designWinter: cold, designSummer: hot, usualMonths, airPlace, wave }: DesignSeasonsInput): DesignSeasons {
  const spread = atPlace(airPlace, () => erbsSpread(usualMonths).withinMonth);
  const usual: DesignSeasonInput = { monthlyMeans: usualMonths, spread, wave };
  const winter = cold && atPlace(airPlace, () => designWinter({ ...usual, ...cold }));
  const summer = hot && atPlace(airPlace, () => designSummer({ ...usual, ...hot }));
  const shifted = (mean: number, index: number): number => mean + (winter?.monthlyShifts[index] ?? 0) + (summer?.monthlyShifts[index] ?? 0);
  return {
    months: usualMonths.map((mean, index) => shifted(mean, index) as Temperature),
    spread,
    surface: { usual: wave, afterWinter: winter?.wave ?? wave, afterSummer: summer?.wave ?? wave },
    ...(winter?.spell && { coldSpell: winter.spell }),
    ...(summer?.spell && { hotSpell: summer.spell }),
    ...(winter && { winter: hardSeason(winter, wave) }),
    ...(summer && { summer: hardSeason(summer, wave) }),
    findings: [...(winter?.findings ?? []), ...(summer?.findings ?? [])],
  };
}

function hardSeason({ returnPeriod, departure, wave }: DesignSeason, usual: AnnualWave): HardSeason {
  return { returnPeriod, departure, surface: wave ?? usual };
}
