/** A Btu in watt-hours, 1055.05585262 J over 3600 s: EER of a US table to COP [1]. */
export const WATT_HOURS_PER_BTU = 0.2930710701722222;

/**
 * COP of ground-source units over the lift, water supplied minus fluid entering [K]; `staffell2012` and the data file of `ruhnau2019`. A parabola turns
 * at −linear/(2 square), 102.2 and 86.8 K, beyond which more lift would help; `least` and `most` keep far from there.
 */
export const COP_REGRESSIONS = {
  staffell: { constant: 8.77, linear: -0.15, square: 0.000734, least: 20, most: 60, turnsAt: 102.2 },
  ruhnau: { constant: 10.288, linear: -0.2084, square: 0.0012, least: 15, most: 60, turnsAt: 86.8 },
} as const;
