import type { FluidRecord } from './fluid-record.js';

/**
 * Ethanol (ethyl alcohol) in water.
 *
 * The coefficients are those of Å. Melinder (2010), Properties of Secondary Working Fluids for Indirect Systems, 2nd edition,
 * International Institute of Refrigeration, in the restatement that CoolProp carries (solution MEA). CoolProp is © 2012–2018
 * Ian H. Bell and other CoolProp developers, MIT licence; the notice stands in NOTICE.
 *
 * The fits are of pure ethanol; denatured spirit holds up to 12 % of other alcohols or ketones. Density of it at 20 °C: handbook
 * value, recalled. Solutions of 2 to 20 % hold more heat per kilogram than water does: no misprint. An older table of the same author
 * has up to 6 % less specific heat near −20 °C.
 */
export const ETHANOL: FluidRecord = {
  name: 'ethanol',
  centreMassFraction: 0.292361,
  centreTemperature: 8.1578,
  density: [
    [961.9, -0.5222, -0.003281, 1.569e-5],
    [-143.3, -1.989, 0.0187, -9.154e-5],
    [-226, 2.281, -0.0008581, 4.056e-5],
    [-169, 8.594, -0.09607],
    [1291, -15.9],
    [-831.8],
  ],
  specificHeat: [
    [4204, 2.319, -0.03042, 0.000686],
    [-2102, 49.27, -0.3072, -0.00569],
    [-3714, -23.35, -0.196, 0.007461],
    [17430, -296.9, 1.901],
    [-6292, 535.3],
    [-82900],
  ],
  conductivity: [
    [0.4067, 0.0006775, 3.105e-7, -2e-8],
    [-0.5008, -0.002377, -3.216e-6, 8.362e-9],
    [0.2801, 0.002669, -3.606e-5, 1.552e-7],
    [-0.02009, -0.006813, 0.0001429],
    [-0.1506, 0.01167],
    [-0.1653],
  ],
  logViscosity: [
    [1.474, -0.04745, 0.0004314, -3.023e-6],
    [1.565, -0.004106, -0.0005135, 7.004e-6],
    [-8.435, 0.164, -0.001091, -1.967e-5],
    [7.552, -0.1118, 0.001899],
    [15.29, -0.09481],
    [-41.3],
  ],
  freezingPoint: [-19.41, -95.4, -26.48, 385.1, -28.58, -1670],
  warmestSource: [
    [0, 0],
    [0.12, 0.2],
    [0.14, 0.51],
    [0.164, 0.87],
    [0.25, 1],
    [0.3, 1.14],
  ],
  highestMassFraction: 0.6,
  highestTemperature: 40,
  pureDensity: 789.3,
  inhibitorFloor: 0,
  use: 'house',
  uncertainty: { freezingPoint: 1.1, density: 0.005, specificHeat: 0.02, conductivity: 0.03, viscosity: 0.05, coldViscosity: 0.15 },
};
