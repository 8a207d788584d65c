import type { FluidRecord } from './fluid-record.js';

/**
 * Methanol (methyl alcohol) in water.
 *
 * The coefficients are those of Å. Melinder (2010), Properties of Secondary Working Fluids for Indirect Systems, 2nd edition,
 * International Institute of Refrigeration, in the restatement that CoolProp carries (solution MMA). CoolProp is © 2012–2018
 * Ian H. Bell and other CoolProp developers, MIT licence; the notice stands in NOTICE.
 *
 * The fits are of pure methanol. Density of it at 20 °C: handbook value, recalled. Solutions of 2 to 10 % hold more heat per kilogram
 * than water does: no misprint. At 60 % near −72 °C the fit of specific heat falls to 2194 J/(kg.K), which is implausible; no loop
 * goes there. Poisonous, and forbidden in many places: see `fluidHazards`.
 */
export const METHANOL: FluidRecord = {
  name: 'methanol',
  centreMassFraction: 0.305128,
  centreTemperature: 3.5359,
  density: [
    [958.1, -0.4151, -0.002261, 2.998e-7],
    [-139.1, -1.51, 0.01113, -3.264e-5],
    [-110.5, 1.828, -0.01641, 0.000151],
    [-120.8, 2.992, 0.001455],
    [492.7, -13.25],
    [-772.7],
  ],
  specificHeat: [
    [3887, 7.201, -0.08979, -0.000439],
    [-1850, 29.84, -0.1865, -0.001718],
    [-376.9, -119.6, 0.9801, 0.00666],
    [-3776, -56.11, -0.7811],
    [-15040, 737.3],
    [64330],
  ],
  conductivity: [
    [0.4175, 0.0007271, 2.823e-7, 9.718e-9],
    [-0.4421, -0.002952, 7.336e-6, 4.328e-8],
    [0.2044, 0.003413, -3.665e-5, -2.791e-7],
    [0.2943, -0.0009646, 3.174e-5],
    [-0.08666, -4.573e-5],
    [-2.033],
  ],
  logViscosity: [
    [1.153, -0.03866, 0.0002779, -1.543e-6],
    [0.5448, 0.01008, -0.0002809, 9.811e-7],
    [-5.552, 0.08384, -0.0003997, -3.466e-6],
    [3.038, -0.07435, 0.0007442],
    [6.669, -0.09105],
    [-8.472],
  ],
  freezingPoint: [-26.29, -118.7, -121.8, -68.23, 12.97, 236.3],
  warmestSource: [
    [0, 0],
    [0.04, 0.14],
  ],
  highestMassFraction: 0.6,
  highestTemperature: 40,
  pureDensity: 791.4,
  inhibitorFloor: 0,
  use: 'check local code',
  uncertainty: { freezingPoint: 0.5, density: 0.005, specificHeat: 0.05, conductivity: 0.07, viscosity: 0.05, coldViscosity: 0.15 },
};
