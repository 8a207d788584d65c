import type { FluidRecord } from './fluid-record.js';

/**
 * Water, as the fluid whose only mass fraction of antifreeze is 0.
 *
 * Polynomials in °C fitted to the IAPWS values of liquid water at 0.1 MPa. Between 0 and 60 °C and 1 and 4 bar they stay within
 * 0.015 % of the IAPWS density, 0.05 % of the viscosity, 0.033 % of the specific heat and 0.085 % of the conductivity.
 */
export const WATER: FluidRecord = {
  name: 'water',
  centreMassFraction: 0,
  centreTemperature: 0,
  density: [[999.84204, 6.78478146e-2, -9.07686394e-3, 1.00619063e-4, -1.23886544e-6, 1.06435069e-8, -4.27798773e-11]],
  specificHeat: [[4219.33662, -3.47665553, 1.33292881e-1, -3.26760366e-3, 5.50308636e-5, -5.40567067e-7, 2.29950616e-9]],
  conductivity: [[0.555582898, 2.51010526e-3, -2.11829516e-5, 9.89630954e-8]],
  logViscosity: [[0.583282731, -3.48408801e-2, 3.58205217e-4, -4.21296736e-6, 3.78391007e-8, -1.62498528e-10]],
  freezingPoint: [0],
  warmestSource: [[0, 0]],
  highestMassFraction: 0,
  highestTemperature: 60,
  pureDensity: 998.207,
  inhibitorFloor: 0,
  use: 'house',
  uncertainty: { freezingPoint: 0, density: 0.00015, specificHeat: 0.00033, conductivity: 0.00085, viscosity: 0.0005, coldViscosity: 0.0005 },
};
