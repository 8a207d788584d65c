import type { DimensionRatio } from './series.data.js';

/** A polyethylene by its designation; PE3608 stands for PE3408 too. */
export type PipeMaterial = 'PE3608' | 'PE4710' | 'PE80' | 'PE100';

/** Stress that a material bears for long at 23 °C (PE3608, PE4710) or 20 °C (PE80, PE100), its safety factor taken off [Pa]. */
export const DESIGN_STRESSES: Readonly<Record<PipeMaterial, number>> = {
  // 800 and 1000 psi; the latter is 1008 psi unrounded, from which some tables print 202 psi for DR 11 (`ppiDesignStress`).
  PE3608: 5_515_805.834534,
  PE4710: 6_894_757.293168,
  // 8 MPa/1.25 counted as the Renard number 6.3, and 10 MPa/1.25 (`iso4427`).
  PE80: 6.3e6,
  PE100: 8e6,
};

/**
 * Share of the cold rating left at a temperature [degC, 1]. Straight lines between the points, but for the steps of `awwaM55`, which has one factor
 * for each ten degrees Fahrenheit; no list is carried on beyond its end.
 */
export const DERATINGS = {
  awwaM55: {
    steps: true,
    points: [
      [26.666666666666668, 1],
      [32.22222222222222, 0.9],
      [37.77777777777778, 0.8],
    ],
  },
  asNzs4130: {
    steps: false,
    points: [
      [25, 1],
      [30, 0.9375],
      [35, 0.89375],
      [40, 0.84375],
    ],
  },
  iso4427Temperature: {
    steps: false,
    points: [
      [20, 1],
      [30, 0.87],
      [40, 0.74],
    ],
  },
} as const;

/** Least radius of a cold bend in an open trench over outside diameter; 15.5 as 17 (`ppiBendRadius`). */
export const BEND_RATIOS: Readonly<Record<DimensionRatio, number>> = { '9': 20, '11': 25, '13.5': 25, '13.6': 25, '15.5': 27, '17': 27 };

/** The same with a fitting, joint or flange in the bend. */
export const BEND_RATIO_AT_FITTING = 100;
