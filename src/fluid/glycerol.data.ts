import type { FluidRecord } from './fluid-record.js';

/**
 * Glycerol in water.
 *
 * The coefficients are those of Å. Melinder (2010), Properties of Secondary Working Fluids for Indirect Systems, 2nd edition,
 * International Institute of Refrigeration, in the restatement that CoolProp carries (solution MGL). CoolProp is © 2012–2018
 * Ian H. Bell and other CoolProp developers, MIT licence; the notice stands in NOTICE.
 *
 * The fits are of the pure, uninhibited solute. Density of it at 20 °C: handbook value, recalled.
 */
export const GLYCEROL: FluidRecord = {
  name: 'glycerol',
  centreMassFraction: 0.361905,
  centreTemperature: 8.911,
  density: [
    [1093, -0.3624, -0.002451, 1.547e-5],
    [274, -0.8373, 0.009596, -6.999e-5],
    [40.81, 0.1808, -0.008516, 0.0001441],
    [-47.44, 1.833, -0.03077],
    [-141.5, 1.863],
    [-60.97],
  ],
  specificHeat: [
    [3486, 3.766, -0.0001222, 3.219e-5],
    [-2250, 18.11, 0.03766, -0.00173],
    [-325.8, 7.249, -0.2133, 0.004907],
    [2922, -53.46, 0.23],
    [2238, -53.83],
    [-5944],
  ],
  conductivity: [
    [0.4532, 0.0009782, -1.196e-7, -8.778e-9],
    [-0.3223, -0.001951, 1.178e-5, 1.048e-8],
    [0.05539, -0.0006878, -2.587e-5, 2.262e-7],
    [-0.2073, -0.0002235, -1.421e-5],
    [0.3, 0.01604],
    [2.221],
  ],
  logViscosity: [
    [1.52, -0.03729, 0.0003572, -3.648e-6],
    [4.45, -0.02688, 8.876e-5, -2.209e-6],
    [3.633, -0.04088, 0.0006219, 6.331e-6],
    [1.069, -0.1248, 0.003019],
    [5.729, -0.178],
    [21.16],
  ],
  freezingPoint: [-13, -57.42, -91.19, -164.1, -240.8, -77.34],
  warmestSource: [
    [0, 0],
    [0.1, 0.38],
    [0.2, 0.76],
    [0.3, 0.26],
    [0.4, 0],
  ],
  highestMassFraction: 0.6,
  highestTemperature: 40,
  pureDensity: 1261.3,
  inhibitorFloor: 0,
  use: 'written consent',
  uncertainty: { freezingPoint: 0.8, density: 0.005, specificHeat: 0.02, conductivity: 0.03, viscosity: 0.05, coldViscosity: 0.15 },
};
