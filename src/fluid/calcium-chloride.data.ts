import type { FluidRecord } from './fluid-record.js';

/**
 * Calcium chloride in water.
 *
 * The coefficients are those of Å. Melinder (2010), Properties of Secondary Working Fluids for Indirect Systems, 2nd edition,
 * International Institute of Refrigeration, in the restatement that CoolProp carries (solution MCA). CoolProp is © 2012–2018
 * Ian H. Bell and other CoolProp developers, MIT licence; the notice stands in NOTICE.
 *
 * The cubic term of its density in temperature is ten times that of its neighbours: density itself agrees with another table within
 * 0.4 %, the expansion that follows from it has the wrong shape and is refused. Below −10 °C another table is 12 to 23 % more viscous.
 */
export const CALCIUM_CHLORIDE: FluidRecord = {
  name: 'calcium-chloride',
  centreMassFraction: 0.187414,
  centreTemperature: 7.5257,
  density: [
    [1171, -0.1463, -0.001302, -0.0001871],
    [984.7, -2.488, -0.0553, 0.001665],
    [338.9, -23.02, 0.3526, 0.002788],
    [1062, 62.91, 1.806],
    [2785, 642.3],
    [-18110],
  ],
  specificHeat: [
    [3133, 2.81, -0.01563, -1.233e-5],
    [-4480, 3.271, -0.1205, 0.0009346],
    [9511, -51.91, 2.282, -0.00929],
    [14720, 161.5, 5.073],
    [-134600, -975.4],
    [-667400],
  ],
  conductivity: [
    [0.558, 0.00146, 3.861e-7, 1.307e-8],
    [-0.115, -0.001008, -6.54e-6, 4.728e-8],
    [-0.1784, 0.003496, -4.84e-5, -2.011e-6],
    [-0.4415, -0.003462, 0.0003922],
    [4.699, 0.06179],
    [29.29],
  ],
  logViscosity: [
    [0.8939, -0.02647, 0.0001718, -7.918e-7],
    [4.389, 0.02102, -8.688e-5, -4.353e-6],
    [9.121, 0.03993, 0.003785, -9.979e-5],
    [1.963, -0.4892, 1.526e-5],
    [29.97, -3.631],
    [343.5],
  ],
  freezingPoint: [-16.21, -155.5, -549.6, -2624, -17260, -44940],
  warmestSource: [
    [0, 0],
    [0.15, 0.65],
  ],
  highestMassFraction: 0.3,
  highestTemperature: 40,
  pureDensity: 0,
  inhibitorFloor: 0,
  use: 'written consent',
  uncertainty: { freezingPoint: 0.65, density: 0.006, specificHeat: 0.02, conductivity: 0.03, viscosity: 0.05, coldViscosity: 0.23 },
};
