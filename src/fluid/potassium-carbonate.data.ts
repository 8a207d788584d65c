import type { FluidRecord } from './fluid-record.js';

/**
 * Potassium carbonate in water.
 *
 * The coefficients are those of Å. Melinder (2010), Properties of Secondary Working Fluids for Indirect Systems, 2nd edition,
 * International Institute of Refrigeration, in the restatement that CoolProp carries (solution MKC). CoolProp is © 2012–2018
 * Ian H. Bell and other CoolProp developers, MIT licence; the notice stands in NOTICE.
 *
 * Sources part here: another table has 3 % more density and up to 38 % more viscosity below 0 °C, and is itself doubtful (its density
 * disagrees with a third). The uncertainties hold both.
 */
export const POTASSIUM_CARBONATE: FluidRecord = {
  name: 'potassium-carbonate',
  centreMassFraction: 0.220833,
  centreTemperature: 11.2422,
  density: [
    [1216, -0.4114, -0.003383, 2.99e-5],
    [1064, -0.7614, 0.005214, -8.087e-5],
    [441.3, 0.7806, -0.01173, 0.0005658],
    [-133.3, -2.381, 0.1696],
    [-1246, 27.08],
    [2035],
  ],
  specificHeat: [
    [3217, 1.492, -0.001539, -3.546e-5],
    [-3733, -1.775, 0.05416, 0.000659],
    [2023, 45.53, 0.3587, -0.003707],
    [19710, 136.7, -3.667],
    [34050, -1676],
    [-348800],
  ],
  conductivity: [
    [0.5622, 0.001656, 2.108e-6, -4.482e-8],
    [-0.0892, 0.0002031, -2.616e-5, 7.965e-8],
    [-0.005233, -0.002962, -9.174e-5, 1.027e-6],
    [-0.9283, -0.01814, 0.0008767],
    [-1.011, 0.08471],
    [13.11],
  ],
  logViscosity: [
    [0.8063, -0.02362, 0.0001851, -2.372e-6],
    [3.624, -0.001262, -3.022e-5, -7.761e-7],
    [6.659, -0.1611, 0.00153, 1.061e-5],
    [10.77, -0.09796, 0.00307],
    [-10.97, 0.7825],
    [-84.53],
  ],
  freezingPoint: [-10.3, -77.86, -276.6, -822.6, -237.2, 3251],
  warmestSource: [[0, 0]],
  highestMassFraction: 0.4,
  highestTemperature: 40,
  pureDensity: 0,
  inhibitorFloor: 0,
  use: 'written consent',
  uncertainty: { freezingPoint: 0.5, density: 0.033, specificHeat: 0.056, conductivity: 0.04, viscosity: 0.05, coldViscosity: 0.38 },
};
