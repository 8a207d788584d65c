/**
 * Heating seasons of EN 14825: hours of every whole degree outdoors from the design temperature up to 15 °C, hours at full load, and hours of a unit that only
 * heats in its other states. Sources: bins `en14825`; hours at full load and structure `eu811of2013`; the others as a secondary text prints them (`en14825Hours`).
 */
export const EN14825_SEASONS = {
  average: {
    designOutdoor: -10,
    binHours: [1, 25, 23, 24, 27, 68, 91, 89, 165, 173, 240, 280, 320, 357, 356, 303, 330, 326, 348, 335, 315, 215, 169, 151, 105, 74],
    fullLoad: 2066,
    thermostatOff: 179,
    standby: 0,
    crankcase: 3851,
    off: 3672,
    partLoad: { A: -7, B: 2, C: 7, D: 12 },
  },
  warmer: {
    designOutdoor: 2,
    binHours: [3, 22, 63, 63, 175, 162, 259, 360, 428, 430, 503, 444, 384, 294],
    fullLoad: 1336,
    thermostatOff: 755,
    standby: 0,
    crankcase: 4476,
    off: 4345,
    partLoad: { B: 2, C: 7, D: 12 },
  },
  colder: {
    designOutdoor: -22,
    binHours: [
      1, 6, 13, 17, 19, 26, 39, 41, 35, 52, 37, 41, 43, 54, 90, 125, 169, 195, 278, 306, 454, 385, 490, 533, 380, 228, 261, 279, 229, 269, 233, 230,
      243, 191, 146, 150, 97, 61,
    ],
    fullLoad: 2465,
    thermostatOff: 131,
    standby: 0,
    crankcase: 2944,
    off: 2189,
    partLoad: { G: -15, A: -7, B: 2, C: 7, D: 12 },
  },
} as const;

/** Outdoor temperature at which no heat is needed any more [degC]. */
export const LOAD_ENDS = 16;

/** Share of the full electric input that goes with the load, of a unit that nobody tested, `en14825PartLoad` [1]. */
export const USUAL_LOAD_SHARE = 0.9;

/** From primary energy to electricity, losses by controls and by the pump of a brine or water unit; recalled, later rules lower the first. */
export const EFFICIENCY_TERMS = { conversion: 2.5, controlsLoss: 0.03, pumpLoss: 0.05 } as const;
