/** COP of ground-source units over the lift, water supplied minus fluid entering [K]; `staffell2012` and the data file of `ruhnau2019`. */
export const COP_REGRESSIONS = {
  staffell: { constant: 8.77, linear: -0.15, square: 0.000734, least: 20, most: 60 },
  ruhnau: { constant: 10.288, linear: -0.2084, square: 0.0012, least: 15, most: 60 },
} as const;
