import { type BuildingSignatures, hourlyLoads } from '../building/index.js';
import { type ColdSpell, type HotSpell, type LaidSpell, syntheticWeatherYear, type SyntheticWeatherYear } from '../climate/index.js';
import { locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { LoadMode } from '../operation/index.js';
import type { DayOfYear, Shape, Temperature, Time } from '../units/index.js';
import { atPlace } from './at-place.js';
import type { DesignSeasons } from './design-seasons.js';
import type { GroundAtPipes } from './ground-at-pipes.js';

/** The weather that the hours were made from. */
export interface HoursOfWeather {
  /** Coldest hour of the year [degC]. */
  readonly coldestOutdoor: Temperature;
  /** Hottest hour of the year [degC]. */
  readonly hottestOutdoor: Temperature;
  /** The cold spell laid over the usual course; absent where that reaches the design temperature by itself. */
  readonly coldSpell?: SpellOfWeather;
  /** The hot spell. */
  readonly hotSpell?: SpellOfWeather;
}

/** A spell of the year of hours. */
export interface SpellOfWeather {
  /** Day on which it begins [d]. */
  readonly day: DayOfYear;
  /** How long it stays, a day of entry and one of exit included [s]. */
  readonly duration: Time;
  /** Its coldest, or hottest, hour [degC]. */
  readonly reached: Temperature;
}

const spellShape: Shape<SpellOfWeather> = { day: 'day of year', duration: 'time', reached: 'temperature' };

/** Shape of {@link HoursOfWeather}. */
export const hoursOfWeatherShape: Shape<HoursOfWeather> = {
  coldestOutdoor: 'temperature',
  hottestOutdoor: 'temperature',
  coldSpell: { optional: spellShape },
  hotSpell: { optional: spellShape },
};

/** A year of hours for the loop to be followed through: loads, with the weather they come from. */
export interface YearOfHours {
  /** Loads of the house, heating above 0, cooling below, plain numbers [W]. */
  readonly loads: Float64Array;
  /** Air of each hour, plain numbers [degC]. */
  readonly outdoor: Float64Array;
  readonly weather: HoursOfWeather;
  readonly findings: readonly Finding[];
}

/** What the year of hours is made from. */
export interface YearOfHoursInput {
  readonly building: BuildingSignatures;
  /** Modes in which the unit runs. */
  readonly modes: readonly LoadMode[];
  /** Air of the year to design for. */
  readonly seasons: Pick<DesignSeasons, 'months' | 'spread' | 'coldSpell' | 'hotSpell'>;
  /** The part of the input that it comes from. */
  readonly airPlace: 'climate' | 'airMonths';
  /** How long the hardest weather lasts, by mode [s]. */
  readonly peakTimes: Readonly<Record<LoadMode, Time>>;
}

const DAY = 86_400;
const HOURS_OF_YEAR = 8760;
/** A spell takes a day to come and a day to go; between them it lasts in full [s]. */
const ENTRY_AND_EXIT = 172_800;

/**
 * The year to design for in hours, with a spell of the design weather where the year does not reach it: three days in full at the coldest time of winter, and
 * a hot day at the hottest time of summer.
 *
 * @param input - house, climate and how long the hardest weather lasts
 * @returns loads hour by hour, and the weather behind them
 */
export function yearOfHours({ building, modes, seasons, airPlace, peakTimes }: YearOfHoursInput): YearOfHours {
  const heating = modes.includes('heating') ? building.heatingForSizing : undefined;
  const cooling = modes.includes('cooling') ? building.cooling : undefined;
  const { months, spread, coldSpell: ofWinter, hotSpell: ofSummer } = seasons;
  const course = { course: { from: 'monthly-air', monthlyMeans: months }, spread } as const;
  const usual = atPlace(airPlace, () =>
    syntheticWeatherYear({ ...course, ...(ofWinter && { coldSpell: ofWinter }), ...(ofSummer && { hotSpell: ofSummer }) }),
  );
  const coldSpell: ColdSpell | undefined =
    heating !== undefined && usual.lowest > heating.designOutdoor
      ? { by: 'lowest', lowest: heating.designOutdoor, ...around(usual.lowestHour, peakTimes.heating) }
      : ofWinter;
  const hotSpell: HotSpell | undefined =
    cooling !== undefined && usual.highest < cooling.designOutdoor
      ? { by: 'highest', highest: cooling.designOutdoor, ...around(usual.highestHour, peakTimes.cooling) }
      : ofSummer;
  const year = atPlace('building', () => syntheticWeatherYear({ ...course, ...(coldSpell && { coldSpell }), ...(hotSpell && { hotSpell }) }));
  const { loads } = locate('building', () =>
    hourlyLoads({ ...(heating && { heating }), ...(cooling && { cooling }), temperatures: year.temperatures, step: year.step }),
  );
  const findings = year.findings.filter(({ code }) => code !== 'no-cold-winter-used');
  return { loads, outdoor: Float64Array.from(year.temperatures), weather: weatherOf(year, coldSpell, hotSpell), findings };
}

/** A spell whose middle is at an hour of the year. */
function around(hour: number, inFull: Time): { readonly day: DayOfYear; readonly duration: Time } {
  const duration = inFull + ENTRY_AND_EXIT;
  const start = (hour + 0.5) / 24 - duration / DAY / 2;
  return { day: (1 + ((start + 365) % 365)) as DayOfYear, duration: duration as Time };
}

function weatherOf(year: SyntheticWeatherYear, cold: ColdSpell | undefined, hot: HotSpell | undefined): HoursOfWeather {
  const spell = (asked: ColdSpell | HotSpell | undefined, laid: LaidSpell | undefined): SpellOfWeather | undefined =>
    asked && laid && { day: asked.day, duration: asked.duration, reached: laid.reached };
  const [coldSpell, hotSpell] = [spell(cold, year.coldSpell), spell(hot, year.hotSpell)];
  return {
    coldestOutdoor: year.lowest,
    hottestOutdoor: year.highest,
    ...(coldSpell && { coldSpell }),
    ...(hotSpell && { hotSpell }),
  };
}

/**
 * The undisturbed ground at the pipes at the end of every hour, with the year's own length of 365 days.
 *
 * @param ground - what the pipes see
 * @returns plain numbers [degC]
 */
export function groundByHours({ onDay }: GroundAtPipes): Float64Array {
  return Float64Array.from({ length: HOURS_OF_YEAR }, (_, hour) => onDay((hour + 1) / 24 + 1, 365));
}
