import { demand, demandChoice } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { DayOfYear, DegreeDays, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { DAY } from './limits.js';

/** When a spell comes and how long it stays. */
export interface SpellTime {
  /** When the temperature begins to leave its course, 1 to 366; 1.0 is 1 January 00:00. A spell may run over the end of the year [d]. */
  readonly day: DayOfYear;
  /** From leaving the course until back on it, 1 to 60 days. Entry and exit take a day each, or half of it where it is shorter than two days [s]. */
  readonly duration: Time;
}

/** A cold or hot spell of a known departure from the course. */
export interface SpellByDeparture extends SpellTime {
  /** The departure is known. */
  readonly by: 'departure';
  /** How far the spell leads away from the course, 0 to 60 [K]. */
  readonly departure: TemperatureDifference;
}

/** A cold spell just deep enough for its coldest hour. */
export interface SpellToLowest extends SpellTime {
  /** The coldest hour is known, such as the design outdoor temperature. */
  readonly by: 'lowest';
  /** Mean of the coldest hour, −90 to 50 [degC]. */
  readonly lowest: Temperature;
}

/** A hot spell just strong enough for its hottest hour. */
export interface SpellToHighest extends SpellTime {
  /** The hottest hour is known, such as the design outdoor temperature. */
  readonly by: 'highest';
  /** Mean of the hottest hour, −50 to 60 [degC]. */
  readonly highest: Temperature;
}

/** Several days that are colder than the course. */
export type ColdSpell = SpellByDeparture | SpellToLowest;

/** Several days that are hotter than the course. */
export type HotSpell = SpellByDeparture | SpellToHighest;

/** A spell as it was laid over a year. */
export interface LaidSpell {
  /** How far it leads away from the course while it lasts in full; 0 or more [K]. */
  readonly departure: TemperatureDifference;
  /** Mean of its coldest, or hottest, hour [degC]. */
  readonly reached: Temperature;
  /** What it takes from, or adds to, the degree days of the year: departure times the duration less one entry [K.d]. */
  readonly degreeDays: DegreeDays;
}

const timeShape = { day: 'day of year', duration: 'time' } as const;

/** Shape of {@link ColdSpell}. */
export const coldSpellShape: Shape<ColdSpell> = {
  by: 'by',
  oneOf: {
    departure: /* @__PURE__ */ joinedShape(timeShape, { departure: 'temperature difference' }),
    lowest: /* @__PURE__ */ joinedShape(timeShape, { lowest: 'temperature' }),
  },
};

/** Shape of {@link HotSpell}. */
export const hotSpellShape: Shape<HotSpell> = {
  by: 'by',
  oneOf: {
    departure: /* @__PURE__ */ joinedShape(timeShape, { departure: 'temperature difference' }),
    highest: /* @__PURE__ */ joinedShape(timeShape, { highest: 'temperature' }),
  },
};

/** Colder and hotter than the extremes any design is made for [degC]. */
const EXTREMES = { lowest: { atLeast: -90, atMost: 50 }, highest: { atLeast: -50, atMost: 60 } } as const;

/** Largest departure of a spell from its course [K]. */
export const FARTHEST = 60;

/** Refuses a spell that cannot be. */
export function demandSpell(side: 'lowest' | 'highest', spell: ColdSpell | HotSpell): void {
  demandChoice('by', spell.by, ['departure', side]);
  demand('day', 'day of year', spell.day, { atLeast: 1, below: 366 }, '1.0 is 1 January 00:00');
  demand('duration', 'time', spell.duration, { atLeast: DAY, atMost: 60 * DAY }, 'seconds; a cold spell lasts 3 to 7 days');
  if (spell.by === 'departure') demand('departure', 'temperature difference', spell.departure, { atLeast: 0, atMost: FARTHEST });
  else demand(side, 'temperature', spell.by === 'lowest' ? spell.lowest : spell.highest, EXTREMES[side]);
}
