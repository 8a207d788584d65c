import type { FluidRecord } from './fluid-record.js';

/**
 * Potassium formate in water.
 *
 * The coefficients are those of Å. Melinder (2010), Properties of Secondary Working Fluids for Indirect Systems, 2nd edition,
 * International Institute of Refrigeration, in the restatement that CoolProp carries (solution MKF). CoolProp is © 2012–2018
 * Ian H. Bell and other CoolProp developers, MIT licence; the notice stands in NOTICE.
 *
 * From one source alone: the freezing point is trusted to 1 K, and the warmer-source rule takes that kelvin.
 */
export const POTASSIUM_FORMATE: FluidRecord = {
  name: 'potassium-formate',
  centreMassFraction: 0.291447,
  centreTemperature: 5.8908,
  density: [
    [1189, -0.3515, -0.001918, 3.132e-5],
    [704.4, -0.656, 0.007018, -0.0001459],
    [188.9, 1.034, -0.03889, 9.225e-5],
    [-226.2, 0.3692, 0.06609],
    [2368, 8.766],
    [10610],
  ],
  specificHeat: [
    [3144, 1.698, -0.001303, 5.177e-5],
    [-2994, 2.29, 0.0003898, 0.0007391],
    [2944, -24.82, 0.33, -0.004871],
    [1161, 67.58, -1.277],
    [-14290, 99.49],
    [-32210],
  ],
  conductivity: [
    [0.5253, 0.001241, -3.799e-8, -2.951e-9],
    [-0.1972, -0.0006322, 2.654e-6, -7.324e-8],
    [-0.2596, -0.0004693, -4.362e-5, 2.899e-7],
    [-0.5062, -0.005229, 0.0001035],
    [1.501, 0.05376],
    [5.562],
  ],
  logViscosity: [
    [0.8088, -0.02556, 0.0002195, -1.667e-6],
    [1.758, 0.008603, 0.0002498, -3.569e-6],
    [-0.8372, -0.01601, 4.815e-5, -1.861e-5],
    [-1.184, -0.1331, -0.005489],
    [108.8, -0.7003],
    [309.8],
  ],
  freezingPoint: [-20.19, -110.6, -210, -263.8, 83.27, 634.5],
  warmestSource: [[0, 1]],
  highestMassFraction: 0.48,
  highestTemperature: 40,
  pureDensity: 0,
  inhibitorFloor: 0,
  use: 'written consent',
  uncertainty: { freezingPoint: 1, density: 0.005, specificHeat: 0.02, conductivity: 0.03, viscosity: 0.05, coldViscosity: 0.15 },
};
