import type { Temperature } from '../units/index.js';

/** Indoor temperature taken where none is given, common practice: 20 to 21 degC in heating, 24 to 25.5 degC in cooling [degC]. */
export const ASSUMED_INDOOR: Readonly<Record<'heating' | 'cooling', Temperature>> = { heating: 20 as Temperature, cooling: 25 as Temperature };

/** Balance point taken where none is given: heating as the load line of EN 14825, cooling 4 K above it, the usual dead band [degC]. */
export const ASSUMED_BALANCE_POINT: Readonly<Record<'heating' | 'cooling', Temperature>> = { heating: 16 as Temperature, cooling: 20 as Temperature };

/** Balance points that houses have: 12 degC well insulated to 18 degC leaky in heating, with 2 K for habits; in cooling by sun and people [degC]. */
export const USUAL_BALANCE_POINT: Readonly<Record<'heating' | 'cooling', { readonly lowest: Temperature; readonly highest: Temperature }>> = {
  heating: { lowest: 10 as Temperature, highest: 20 as Temperature },
  cooling: { lowest: 14 as Temperature, highest: 26 as Temperature },
};

/** How far a design outdoor temperature lies beyond the mean of the most extreme month, in standard deviations of that month; about 2 is usual. */
export const USUAL_DESIGN_DISTANCE = { least: 1, most: 4.5 } as const;

/** Below this deviation of the twelve means a climate is mild, and Erbs' spread too wide; own judgement from maritime stations [K]. */
export const MILD_OVER_YEAR = 6;

/** A unit that covers less of a year's heat than this is small; Swedish and Canadian practice asks for 95 % [1]. */
export const LEAST_COVERED = 0.95;
