import type { Fraction, Temperature } from '../units/index.js';

/** Coldest and warmest water that a main brings, a bound against slips: frozen below, tepid above [degC]. */
export const COLD = { atLeast: 0, atMost: 34 } as const;

/** Hot water as a draw is counted, hotter than any {@link COLD} and within the fits of water [degC]. */
export const HOT = { atLeast: 36, atMost: 60 } as const;

/** Hot water in a tank [degC]. */
export const STORED = { atLeast: 36, atMost: 95 } as const;

/** Stored cooler than this, water wants a look for legionella; widespread guidance for storage [degC]. */
export const STORED_AT_LEAST: Temperature = 60 as Temperature;

/** Stored cooler than this, it stands near the range in which legionella multiply, 20 to 45 degC [degC]. */
export const STORED_COOL: Temperature = 50 as Temperature;

/** Water hotter than this at a tap scalds within minutes or less [degC]. */
export const SCALDS_ABOVE: Temperature = 50 as Temperature;

/** Hot water of a person and day that households are measured to draw, own judgement from field studies [m3]. */
export const USUAL_PER_PERSON = { lowest: 0.015, highest: 0.1 } as const;

/** A month in which the ground still gives this share of its hardest month, mostly for hot water, is no rest; from the second it is a warning; own judgement [1]. */
export const NO_REST = { from: 0.1, warning: 0.25 } as const;

/**
 * Share of a day's hot water in each of its 24 hours, midnight first, after the medium load profile of the European rules for water heaters.
 *
 * A test day of 23 draws, one family's by intention: 3 of every 4 litres in the early morning and the late evening. Source: `eu814of2013`, from
 * memory; its draws, counted by the hour, add up to the printed 5.845 kWh. A flat day is what you get without it.
 */
export const MEDIUM_TAPPING_SHARES: readonly Fraction[] = /* @__PURE__ */ (() =>
  [0, 0, 0, 0, 0, 0, 0, 1.61, 0.42, 0.21, 0.105, 0.21, 0.315, 0, 0.105, 0.105, 0.105, 0, 0.315, 0.105, 0.735, 1.505, 0, 0].map(
    (energy) => (energy / 5.845) as Fraction,
  ))();
