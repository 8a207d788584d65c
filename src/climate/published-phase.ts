import { demand, demandChoice } from '../errors/index.js';
import type { DayOfYear, Ratio, Shape, Time } from '../units/index.js';
import { DAY, demandDay, demandPart } from './limits.js';
import { wrapDay } from './wave-at-depth.js';

/** How a publication counts its days: as moments with 1 January 00:00 as 1.0, as days elapsed since then, or as days of the calendar, meaning their noon. */
export type DayCount = 'moment' | 'days elapsed' | 'calendar day';

/** A day on which the wave is somewhere that can be told. */
export interface MarkedDay<Mark extends string> {
  /** Where the wave is on that day. */
  readonly marks: Mark;
  /** The day; 1.0 is 1 January 00:00 unless said otherwise beside it [d]. */
  readonly day: DayOfYear;
  /** How the day is counted; as a moment when left out. Few publications say, and the difference is half a day or one. */
  readonly countedAs?: DayCount;
}

/** Phase φ of mean + A sin(ωt − φ) or of mean + A cos(ωt − φ), with t the time since 1 January 00:00. */
export interface MarkedAngle<Mark extends string> {
  /** Of which form the phase is known, instead of a day. */
  readonly marks: Mark;
  /** The phase φ, −100 to 100 [rad]. */
  readonly angle: Ratio;
}

/** Phase of a published sine. */
export type SinePhase = MarkedAngle<'sine phase'>;

/** Phase of a published cosine. */
export type CosinePhase = MarkedAngle<'cosine phase'>;

/** How a publication says when the wave is where. */
export type PublishedPhase =
  | MarkedDay<'coldest'>
  | MarkedDay<'rising through the mean'>
  | MarkedDay<'warmest'>
  | MarkedDay<'falling through the mean'>
  | SinePhase
  | CosinePhase;

const dayShape = { day: 'day of year', countedAs: { optional: ['moment', 'days elapsed', 'calendar day'] } } as const;

/** Shape of {@link PublishedPhase}. */
export const publishedPhaseShape: Shape<PublishedPhase> = {
  by: 'marks',
  oneOf: {
    coldest: dayShape,
    'rising through the mean': dayShape,
    warmest: dayShape,
    'falling through the mean': dayShape,
    'sine phase': { angle: 'ratio' },
    'cosine phase': { angle: 'ratio' },
  },
};

/** Part of a period from the coldest day to the day that is marked. */
const AFTER_COLDEST = { coldest: 0, 'rising through the mean': 0.25, warmest: 0.5, 'falling through the mean': 0.75 } as const;

/** Part of a period from the coldest day to the angle φ of a form, where it has turned by nothing. */
const AT_PHASE = { 'sine phase': 0.25, 'cosine phase': 0.5 } as const;

/** What is added to a published day to make it a moment [d]. */
const TO_MOMENT: Readonly<Record<DayCount, number>> = { moment: 0, 'days elapsed': 1, 'calendar day': 0.5 };

/** The day within the period on which a sine is lowest, whatever the form of its phase. */
export function lowestDay(phase: PublishedPhase, period: Time): number {
  demandPart('phase', phase);
  demandChoice('phase.marks', phase.marks, [...Object.keys(AFTER_COLDEST), ...Object.keys(AT_PHASE)]);
  const days = period / DAY;
  if (phase.marks === 'sine phase' || phase.marks === 'cosine phase') {
    demand('phase.angle', 'ratio', phase.angle, { atLeast: -100, atMost: 100 }, 'radians');
    return wrapDay(1 + (phase.angle / (2 * Math.PI) - AT_PHASE[phase.marks]) * days, period);
  }
  const { marks, day, countedAs = 'moment' } = phase;
  demandDay('phase.day', day);
  demandChoice('phase.countedAs', countedAs, Object.keys(TO_MOMENT));
  return wrapDay(day + TO_MOMENT[countedAs] - AFTER_COLDEST[marks] * days, period);
}
