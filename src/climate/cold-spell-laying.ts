import { InputError, locate } from '../errors/index.js';
import type { DegreeDays, Temperature, TemperatureDifference } from '../units/index.js';
import { type ColdSpell, FARTHEST, type HotSpell, type LaidSpell, type SpellTime } from './cold-spell.js';
import { DAY } from './limits.js';

/** What a spell does less to an hour is lost in rounding; such an hour is not of the spell [1]. */
const LEAST_SHARE = 1e-9;

/** The two spells of a year, as far as there are. */
interface Spells {
  readonly coldSpell?: ColdSpell;
  readonly hotSpell?: HotSpell;
}

/**
 * Lays the spells of a year over its hourly temperatures, in place.
 *
 * @throws InputError when they share an hour, or one cannot be as told
 */
export function laySpells(
  temperatures: Float64Array,
  { coldSpell, hotSpell }: Spells,
): { readonly coldSpell: LaidSpell | undefined; readonly hotSpell: LaidSpell | undefined } {
  if (coldSpell !== undefined && hotSpell !== undefined) {
    const cold = spellHours(coldSpell, temperatures.length);
    if ([...spellHours(hotSpell, temperatures.length).keys()].some((hour) => cold.has(hour))) {
      const value = { kind: 'day of year', value: hotSpell.day } as const;
      throw new InputError({ code: 'impossible', argument: 'hotSpell.day', value, allowed: 'a hot spell that shares no hour with the cold one' });
    }
  }
  return {
    coldSpell: coldSpell && locate('coldSpell', () => laySpell(temperatures, coldSpell, -1)),
    hotSpell: hotSpell && locate('hotSpell', () => laySpell(temperatures, hotSpell, 1)),
  };
}

/**
 * Lays a spell over hourly temperatures, in place.
 *
 * The departure rises and falls as half a cosine wave, without step or kink; hours have the mean of it over the hour.
 *
 * @throws InputError when the hours of the spell are beyond the wanted extreme already, or only a departure beyond 60 K would reach it
 */
function laySpell(temperatures: Float64Array, spell: ColdSpell | HotSpell, sign: -1 | 1): LaidSpell {
  const hours = spellHours(spell, temperatures.length);
  const at = (hour: number): number => temperatures[hour] ?? 0;
  const departure =
    spell.by === 'departure' ? spell.departure : departureTo(spell.by === 'lowest' ? spell.lowest : spell.highest, { hours, at, sign, by: spell.by });
  for (const [hour, share] of hours) temperatures[hour] = at(hour) + sign * departure * share;
  return {
    departure: departure as TemperatureDifference,
    reached: (sign * Math.max(...[...hours.keys()].map((hour) => sign * at(hour)))) as Temperature,
    degreeDays: ((departure * (spell.duration - entryOf(spell))) / DAY) as DegreeDays,
  };
}

interface SpellOver {
  readonly hours: ReadonlyMap<number, number>;
  readonly at: (hour: number) => number;
  readonly sign: -1 | 1;
  readonly by: 'lowest' | 'highest';
}

/** The largest departure that takes no hour beyond the extreme; it takes one to it. */
function departureTo(extreme: Temperature, { hours, at, sign, by }: SpellOver): number {
  const departure = Math.min(...[...hours].map(([hour, share]) => (sign * (extreme - at(hour))) / share));
  if (departure >= 0 && departure <= FARTHEST) return departure;
  const nearest = sign * Math.max(...[...hours.keys()].map((hour) => sign * at(hour)));
  throw new InputError({
    code: 'impossible',
    argument: by,
    value: { kind: 'temperature', value: extreme },
    allowed: `up to ${String(FARTHEST)} K ${sign < 0 ? 'below' : 'above'} ${nearest.toFixed(2)} degC, which these days reach without the spell`,
    hint: 'the year, the season of the spell or the temperature may be of another place',
  });
}

const entryOf = ({ duration }: SpellTime): number => Math.min(DAY, duration / 2);

/** Share of the departure that each hour of the spell has on its mean. */
function spellHours(spell: SpellTime, hoursOfYear: number): ReadonlyMap<number, number> {
  const entry = entryOf(spell) / 3600;
  const start = (spell.day - 1) * 24;
  const exit = start + spell.duration / 3600 - entry;
  /** Time integral of a rise from 0 to 1 that begins at zero and takes one entry [h]. */
  const risen = (time: number): number => {
    const x = Math.min(1, Math.max(0, time / entry));
    return entry * (x / 2 - Math.sin(Math.PI * x) / (2 * Math.PI)) + Math.max(0, time - entry);
  };
  const until = (hour: number): number => risen(hour - start) - risen(hour - exit);
  const hours = new Map<number, number>();
  for (let hour = Math.floor(start); hour < exit + entry; hour += 1) {
    const share = until(hour + 1) - until(hour);
    if (share > LEAST_SHARE) hours.set(hour % hoursOfYear, share);
  }
  return hours;
}
