import type { FluidRecord } from './fluid-record.js';

/**
 * Ethylene glycol (1,2-ethanediol) in water.
 *
 * The coefficients are those of Å. Melinder (2010), Properties of Secondary Working Fluids for Indirect Systems, 2nd edition,
 * International Institute of Refrigeration, in the restatement that CoolProp carries (solution MEG). CoolProp is © 2012–2018
 * Ian H. Bell and other CoolProp developers, MIT licence; the notice stands in NOTICE.
 *
 * The fits are of the pure, uninhibited solute. Density of it at 20 °C: handbook value, recalled. Handbook glycol is 8 to 15 % less
 * viscous in the cold, so these viscosities are on the safe side. Poisonous by mouth: see `fluidHazards`.
 */
export const ETHYLENE_GLYCOL: FluidRecord = {
  name: 'ethylene-glycol',
  centreMassFraction: 0.308462,
  centreTemperature: 31.728,
  density: [
    [1034, -0.4781, -0.002692, 4.725e-6],
    [131.1, -0.6876, 0.004805, 1.69e-6],
    [0.749, 0.7855, -0.003995, 4.982e-5],
    [-106.2, 1.229, -0.01153],
    [-96.23, -7.211],
    [489.1],
  ],
  specificHeat: [
    [3737, 2.93, -0.004675, -1.389e-5],
    [-1799, 10.46, -0.04147, 1.847e-5],
    [-993.3, 3.516, 0.05109, -0.0007138],
    [2610, -1.189, -0.1643],
    [1537, -42.72],
    [-16180],
  ],
  conductivity: [
    [0.472, 0.0008903, -1.058e-6, -2.789e-9],
    [-0.4286, -0.001473, 1.059e-5, -1.142e-8],
    [0.1747, 0.0006814, -3.612e-5, 2.365e-8],
    [0.03017, -0.002412, 4.004e-5],
    [-0.1322, 0.002555],
    [0.2678],
  ],
  logViscosity: [
    [0.4705, -0.0255, 0.0001782, -7.669e-7],
    [2.471, -0.01171, 0.0001052, -1.634e-6],
    [0.03328, 0.01086, 0.0001051, -6.475e-6],
    [1.659, 0.003157, 0.0004063],
    [3.089, 0.01831],
    [-18.65],
  ],
  freezingPoint: [-15.25, -80.8, -133.4, -72.93, 100.6, 11.4],
  warmestSource: [
    [0, 0],
    [0.15, 0.05],
    [0.22, 0.19],
    [0.25, 0.27],
    [0.3, 0.48],
    [0.35, 0.94],
    [0.4, 1.51],
    [0.5, 2.2],
  ],
  highestMassFraction: 0.6,
  highestTemperature: 100,
  pureDensity: 1113.5,
  inhibitorFloor: 0.2,
  use: 'check local code',
  uncertainty: { freezingPoint: 0.5, density: 0.005, specificHeat: 0.02, conductivity: 0.03, viscosity: 0.05, coldViscosity: 0.15 },
};
