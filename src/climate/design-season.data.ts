/**
 * How far seasons and the days within them go, where no years are known: a share of half the range of the monthly means, up to a most.
 *
 * Standard deviation of the mean of ninety days from year to year: 2.0 K in six winters of a continental station with a half range of 14 K, 1.4 K in
 * 51 winters of a maritime one with 7 K, 1.0 K in seven summers of the former. The coldest thirty days go further than a month of the course: by 0.6
 * and 0.8 of that deviation on the mean of all winters, with 1.1 and 1.4 times the deviation. The coldest five days lie 0.6 to 0.9 of the spread of
 * January’s hours below the coldest thirty at six places, the hottest 0.6 to 0.8 of that of July’s; that spread itself is 2.8 to 7.2 K in January and
 * 3.9 to 4.6 K in July. The numbers taken from that are judgement, on the safe side of the middle.
 */
export const ASSUMED_SEASONS = {
  winter: { deviation: { share: 0.2, most: 2 }, hoursSpread: { share: 0.45, most: 6 }, fiveBelowThirty: 0.85 },
  summer: { deviation: { share: 0.12, most: 1.2 }, hoursSpread: { share: 0.3, most: 4 }, fiveBelowThirty: 0.75 },
} as const;

/** How much further than a month of the course the coldest thirty days of a mean winter go, in deviations of ninety days [1]. */
export const THIRTY_DAYS_FURTHER = 0.7;

/** Deviation of the coldest thirty days over that of ninety [1]. */
export const THIRTY_DAYS_DEVIATION = 1.25;

/** Of the cold spell, days in full and days with coming and going [d]. */
export const SPELL = { inFull: 5, inAll: 7 } as const;

/** What of a season's departure at the surface goes into the mean of the ground wave, and what into its amplitude [1]. */
export const WAVE_SHARES = { mean: 0.09, amplitude: 0.92 } as const;
