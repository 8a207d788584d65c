import { MONTH_DAYS } from '../states/index.js';
import type { DayOfYear, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { FARTHEST, type SpellByDeparture } from './cold-spell.js';
import { SPELL } from './design-season.data.js';
import { DAY } from './limits.js';
import type { SeasonMeans } from './season-means.js';
import { dailyMeans, hardestDays, seasonOfHours } from './season-of-hours.js';
import { syntheticWeatherYear } from './synthetic-weather-year.js';
import type { SyntheticWeatherYearInput } from './synthetic-weather-year-input.js';

/** A wanted row of days is met when it is missed by less [K]. */
const CLOSE = 0.005;

/** Steps after which a search that does not close in is given up. */
const STEPS = 40;

/** Steps after which the spell stays where it is and steps are halved: two rows of days that are equally hard would send both to and fro. */
const SETTLED = 8;

/** A spell is there in full from a day between the middle of the hardest month and so long after its end [d]. */
const LATE = 10;

/** How far three things lead away from the usual year; the spell and the months beside 0 or more, the hardest month so with its spell [K]. */
interface Depths {
  /** The hardest month. */
  readonly middle: number;
  /** The month before and the month after. */
  readonly beside: number;
  /** The spell. */
  readonly spell: number;
}

/** What the search goes by. */
export interface SeasonSearch {
  /** The usual year. */
  readonly usual: Omit<SyntheticWeatherYearInput, 'course' | 'coldSpell' | 'hotSpell'>;
  readonly monthlyMeans: readonly Temperature[];
  readonly wantedDays: SeasonMeans;
  /** The hardest month, 0 to 11. */
  readonly month: number;
  readonly sign: -1 | 1;
}

/** The year that was found. */
export interface FoundSeason {
  readonly monthlyShifts: readonly TemperatureDifference[];
  readonly spell?: SpellByDeparture;
  readonly madeDays: SeasonMeans;
  readonly departure: TemperatureDifference;
}

/**
 * The months and the spell with which the hardest days of a made year are those wanted.
 *
 * Five days go with month and spell, thirty with the month and their share of the spell, ninety with the three months and theirs; each step
 * takes what is missed for that and the next what is left. None of the three leads the other way, the month with its spell counted: what is
 * reached without them stays.
 */
export function searchSeason(search: SeasonSearch): FoundSeason {
  let depths: Depths = { middle: 0, beside: 0, spell: 0 };
  let made = madeSeason(search, depths);
  let best = made;
  for (let step = 0; step < STEPS && missed(best, search) > CLOSE; step += 1) {
    depths = towards(depths, nextDepths(made, search, depths), step < SETTLED ? 1 : 0.5);
    made = madeSeason(search, depths, step < SETTLED ? undefined : made.spell?.day);
    if (missed(made, search) < missed(best, search)) best = made;
  }
  return best;
}

const towards = (from: Depths, to: Depths, share: number): Depths => ({
  middle: from.middle + share * (to.middle - from.middle),
  beside: from.beside + share * (to.beside - from.beside),
  spell: from.spell + share * (to.spell - from.spell),
});

const DAYS_BESIDE = 59;
/** Days of the spell at its depth: one less than `SPELL.inAll`, since it comes and goes for half a day each. */
const SPELL_DAYS = 6;

function nextDepths({ madeDays }: FoundSeason, { wantedDays, sign, month }: SeasonSearch, { middle, beside, spell }: Depths): Depths {
  const [five, thirty, ninety] = [
    sign * (wantedDays.fiveDays - madeDays.fiveDays),
    sign * (wantedDays.thirtyDays - madeDays.thirtyDays),
    sign * (wantedDays.ninetyDays - madeDays.ninetyDays),
  ];
  const nextSpell = Math.min(FARTHEST, Math.max(0, spell + (five - thirty) / (1 - SPELL_DAYS / 30)));
  const spellStep = nextSpell - spell;
  const days = MONTH_DAYS[month] ?? 30;
  const nextMiddle = Math.max((-SPELL_DAYS * nextSpell) / days, middle + thirty - (spellStep * SPELL_DAYS) / 30);
  const inMonths = days * (nextMiddle - middle) + SPELL_DAYS * spellStep;
  return { middle: nextMiddle, beside: Math.max(0, beside + (90 * ninety - inMonths) / DAYS_BESIDE), spell: nextSpell };
}

/** How far the worst of the three rows is missed [K]. */
const missed = ({ madeDays }: FoundSeason, { wantedDays }: SeasonSearch): number =>
  Math.max(
    Math.abs(madeDays.fiveDays - wantedDays.fiveDays),
    Math.abs(madeDays.thirtyDays - wantedDays.thirtyDays),
    Math.abs(madeDays.ninetyDays - wantedDays.ninetyDays),
  );

/** The year of these depths. */
function madeSeason({ usual, monthlyMeans, month, sign }: SeasonSearch, { middle, beside, spell: depth }: Depths, day?: DayOfYear): FoundSeason {
  const monthlyShifts = monthlyMeans.map((_, index) => {
    const away = (index - month + 12) % 12;
    return (away === 0 ? sign * middle : away === 1 || away === 11 ? sign * beside : 0) as TemperatureDifference;
  });
  const shifted = monthlyMeans.map((mean, index) => (mean + (monthlyShifts[index] ?? 0)) as Temperature);
  const bare = { ...usual, course: { from: 'monthly-air', monthlyMeans: shifted } } as const;
  const { temperatures } = syntheticWeatherYear(bare);
  const spell = depth > 0 ? spellOn(day ?? spellDay(dailyMeans(temperatures), month, sign), depth) : undefined;
  const year = spell === undefined ? temperatures : syntheticWeatherYear({ ...bare, [sign < 0 ? 'coldSpell' : 'hotSpell']: spell }).temperatures;
  const daysOf = (away: number): number => MONTH_DAYS[(month + away) % 12] ?? 30;
  const beyond = middle * daysOf(0) + beside * (daysOf(11) + daysOf(1)) + depth * SPELL_DAYS;
  const departure = beyond / (daysOf(11) + daysOf(0) + daysOf(1));
  return { monthlyShifts, ...(spell && { spell }), madeDays: seasonOfHours(year, sign), departure: departure as TemperatureDifference };
}

const spellOn = (day: DayOfYear, departure: number): SpellByDeparture => ({
  by: 'departure',
  day,
  duration: (SPELL.inAll * DAY) as Time,
  departure: departure as TemperatureDifference,
});

/** The day before the hardest five of the late half of the season, when the ground at the pipes is further on its way than in the early one. */
function spellDay(days: Float64Array, month: number, sign: -1 | 1): DayOfYear {
  const start = MONTH_DAYS.slice(0, month).reduce((sum, each) => sum + each, 0);
  const length = MONTH_DAYS[month] ?? 30;
  const half = Math.floor(length / 2);
  const late = Float64Array.from({ length: length - half + LATE + SPELL.inFull }, (_, index) => days[(start + half + index) % days.length] ?? 0);
  const { first } = hardestDays(late, SPELL.inFull, sign);
  return (1 + ((start + half + first + days.length - 1) % days.length)) as DayOfYear;
}
