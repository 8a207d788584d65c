import type { FluidRecord } from './fluid-record.js';

/**
 * Potassium acetate in water.
 *
 * The coefficients are those of Å. Melinder (2010), Properties of Secondary Working Fluids for Indirect Systems, 2nd edition,
 * International Institute of Refrigeration, in the restatement that CoolProp carries (solution MKA). CoolProp is © 2012–2018
 * Ian H. Bell and other CoolProp developers, MIT licence; the notice stands in NOTICE.
 *
 * From one source alone: the freezing point is trusted to 1 K, and the warmer-source rule takes that kelvin.
 */
export const POTASSIUM_ACETATE: FluidRecord = {
  name: 'potassium-acetate',
  centreMassFraction: 0.256757,
  centreTemperature: 6.7757,
  density: [
    [1138, -0.3565, -0.00202, 4.205e-6],
    [579.6, -0.79, 0.002753, 5.14e-6],
    [130.6, 0.6845, -0.0113, 0.0002433],
    [-1427, 0.8304, 0.01303],
    [935.3, 2.322],
    [22850],
  ],
  specificHeat: [
    [3327, 1.806, -0.001766, 4.357e-5],
    [-2895, 4.131, 0.04429, 0.001125],
    [466.3, 7.775, 0.3463, -0.007261],
    [-1249, 51.15, -2.987],
    [16590, -519.3],
    [-4612],
  ],
  conductivity: [
    [0.4958, 0.00134, 6.837e-8, 2.637e-9],
    [-0.2931, -0.001477, 4.659e-6, 2.886e-8],
    [0.1032, -0.002396, -4.352e-5, -2.23e-7],
    [-0.2024, -0.005541, 8.984e-5],
    [-0.2371, 0.05573],
    [5.515],
  ],
  logViscosity: [
    [1.042, -0.03071, 0.0002819, -2.19e-6],
    [3.405, -0.01511, 0.0001172, -2.379e-6],
    [5.017, -0.07779, 0.0009125, -1.888e-5],
    [5.637, 0.02534, 0.001596],
    [-29.22, 0.4601],
    [-79.6],
  ],
  freezingPoint: [-17.04, -122.8, -386.2, -457.1, 2969, 8690],
  warmestSource: [[0, 1]],
  highestMassFraction: 0.45,
  highestTemperature: 40,
  pureDensity: 0,
  inhibitorFloor: 0,
  use: 'written consent',
  uncertainty: { freezingPoint: 1, density: 0.005, specificHeat: 0.02, conductivity: 0.03, viscosity: 0.05, coldViscosity: 0.15 },
};
