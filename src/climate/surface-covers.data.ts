/**
 * How the yearly wave of the ground surface differs from that of the air, by cover, and how well the surface exchanges heat with the air [W/(m2.K)].
 *
 * Judgement, not measurement: the middle values follow two measured records (grass, and grass under long snow: surface minus
 * air +1.2 and +2.25 K, amplitude ratio 0.94 and 0.73, lag 2 and 7 days), the rule that ground is about 1 K warmer than air, and mean
 * differences measured under covers in one city (asphalt +4.1, bare clay +1.4, sand +1.6, short grass +0.2 K). Long grass is cooler by the shade and damps by
 * a poorer exchange. How much bare soil and pavement swing was not read anywhere. The limits are meant to hold four sites in five.
 *
 * The exchange of an open surface is 15 to 25 W/(m2.K) by wind and radiation, that of long grass about 5.
 */
export const SURFACE_COVERS = {
  grass: { meanOffset: [0, 1, 2], amplitudeRatio: [0.8, 0.9, 1], lagDays: [-1, 3, 7], coefficient: 15, source: 'soilTaxonomyMean' },
  'long grass': { meanOffset: [-1, 0, 1], amplitudeRatio: [0.75, 0.85, 0.95], lagDays: [0, 5, 10], coefficient: 5, source: 'common practice' },
  'lasting snow': {
    meanOffset: [1, 2, 3],
    amplitudeRatio: [0.65, 0.75, 0.85],
    lagDays: [-1, 3, 7],
    coefficient: 15,
    source: 'climateReferenceNetwork',
  },
  'irrigated or shaded': {
    meanOffset: [-1, 0, 1],
    amplitudeRatio: [0.8, 0.9, 1],
    lagDays: [-1, 3, 7],
    coefficient: 15,
    source: 'surfaceCoversPrague',
  },
  'bare soil': { meanOffset: [0.5, 1.5, 2.5], amplitudeRatio: [0.9, 1, 1.1], lagDays: [-1, 3, 7], coefficient: 20, source: 'surfaceCoversPrague' },
  'bare and arid': { meanOffset: [1, 3, 5], amplitudeRatio: [1, 1.15, 1.3], lagDays: [-1, 3, 7], coefficient: 20, source: 'common practice' },
  pavement: { meanOffset: [2.5, 4, 5.5], amplitudeRatio: [0.95, 1.1, 1.25], lagDays: [-1, 3, 7], coefficient: 20, source: 'surfaceCoversPrague' },
} as const;

/** Share of sites that the limits are meant to hold [1]. */
export const COVERAGE = 0.8;

/** How far the snow of a place and its conductivity may lie from what is given, over that: wind, the years, and the spread of snow of one density [1]. */
export const SNOW_SPREAD = { little: 0.5, much: 1.5 } as const;
