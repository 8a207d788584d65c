import type { Fraction } from '../units/index.js';

/** The half of the earth that a site lies on, which tells when its summer is. */
export type Hemisphere = 'northern' | 'southern';

/** Both halves of the earth. */
export const HEMISPHERES = ['northern', 'southern'] as const;

/**
 * Water in the ground at the end of a dry summer, of what it holds at the end of winter. Plants stop drawing at about half of what is held
 * (`common practice`); below the roots it dries less, so that this is the driest plausible state.
 */
export const DRIEST_SHARE = 0.5 as Fraction;

/** When the ground is wettest, at the end of winter, 1 March or 1 September (`common practice`) [d]. */
const WETTEST_DAY: Readonly<Record<Hemisphere, number>> = { northern: 60, southern: 244 };

const YEAR = 365.25;

/** Water in the ground on a day of the year, of what it holds when it is wettest: a cosine through the driest share half a year later. */
export function wetnessOn(day: number, hemisphere: Hemisphere): number {
  const swing = (1 - DRIEST_SHARE) / 2;
  return 1 - swing + swing * Math.cos((2 * Math.PI * (day - WETTEST_DAY[hemisphere])) / YEAR);
}
