import type { FluidRecord } from './fluid-record.js';

/**
 * Propylene glycol (1,2-propanediol) in water.
 *
 * The coefficients are those of Å. Melinder (2010), Properties of Secondary Working Fluids for Indirect Systems, 2nd edition,
 * International Institute of Refrigeration, in the restatement that CoolProp carries (solution MPG). CoolProp is © 2012–2018
 * Ian H. Bell and other CoolProp developers, MIT licence; the notice stands in NOTICE.
 *
 * The fits are of the pure, uninhibited glycol. Density of the pure glycol: handbook value at 20 °C, recalled.
 */
export const PROPYLENE_GLYCOL: FluidRecord = {
  name: 'propylene-glycol',
  centreMassFraction: 0.307031,
  centreTemperature: 32.7083,
  density: [
    [1018, -0.5406, -0.002666, 1.347e-5],
    [76.04, -0.945, 0.005541, -1.343e-5],
    [-24.98, 0.27, -0.004018, 3.376e-5],
    [-155, 2.829, -0.007175],
    [-113.1, -2.221],
    [234.2],
  ],
  specificHeat: [
    [3882, 2.699, -0.001659, -1.032e-5],
    [-1304, 5.07, -0.004752, 0.0001522],
    [-1598, 0.9534, 0.1167, -0.000487],
    [353.9, 31.02, -0.295],
    [5000, -71.35],
    [-4959],
  ],
  conductivity: [
    [0.4513, 0.0007955, 3.482e-8, -5.966e-9],
    [-0.4795, -0.001678, 8.941e-6, 1.493e-8],
    [0.2076, 0.001563, -4.615e-5, 9.897e-8],
    [-0.09083, -0.002518, 6.543e-5],
    [-0.05952, -0.003605],
    [0.2104],
  ],
  logViscosity: [
    [0.6837, -0.03045, 0.0002525, -1.399e-6],
    [3.328, -0.03984, 0.0004332, -1.86e-6],
    [0.5453, -0.00086, -0.0001593, -4.465e-7],
    [-3.9, 0.1054, -0.001589],
    [-1.587, 0.04475],
    [35.64],
  ],
  freezingPoint: [-13.25, -66.31, -109.4, -228.3, -340.9, 146.5],
  warmestSource: [
    [0, 0],
    [0.1, 0.78],
    [0.154, 1.14],
    [0.204, 0.68],
    [0.353, 0.43],
    [0.401, 0.11],
    [0.41, 0],
  ],
  highestMassFraction: 0.6,
  highestTemperature: 100,
  pureDensity: 1036.1,
  inhibitorFloor: 0.25,
  use: 'house',
  uncertainty: { freezingPoint: 0.5, density: 0.005, specificHeat: 0.02, conductivity: 0.03, viscosity: 0.05, coldViscosity: 0.15 },
};
