/**
 * A fixed grid of three soils and three climates on one house, one invented unit and one layout.
 *
 * Written down before the solver existed, so that no cell could be chosen by its answer. The monthly means are those of
 * the public typical weather years named; the design temperatures, the house and the soils are ours.
 */
export const SOILS = [
  { name: 'damp silty clay loam', texture: 'silty clay loam', dryDensity: '1500 kg/m3', moisture: '24 %' },
  { name: 'moist sandy loam', texture: 'sandy loam', dryDensity: '1600 kg/m3', moisture: '12 %' },
  { name: 'dry sand', texture: 'sand', dryDensity: '1600 kg/m3', moisture: '4 %' },
] as const;

export const CLIMATES = [
  {
    name: 'cold continental (typical year of Chicago O’Hare)',
    heatingDesign: '-20 degC',
    coolingDesign: '33 degC',
    monthlyMeans: [-4.6465, -2.5202, 3.8239, 9.9508, 15.3103, 21.1092, 24.1348, 21.7737, 18.1339, 10.9808, 4.7317, -3.6862],
  },
  {
    name: 'temperate (typical year of Bologna)',
    heatingDesign: '-4 degC',
    coolingDesign: '34 degC',
    monthlyMeans: [2.3995, 4.8109, 9.6386, 13.9954, 18.8101, 22.9957, 25.7134, 25.1267, 20.054, 16.0602, 9.456, 3.6905],
  },
  {
    name: 'humid subtropical (typical year of Greensboro)',
    heatingDesign: '-8 degC',
    coolingDesign: '33 degC',
    monthlyMeans: [0.3321, 5.0299, 11.414, 14.6853, 19.0316, 23.5915, 25.4331, 24.7609, 20.076, 13.12, 10.8208, 4.2286],
  },
] as const;

export const HOUSE = {
  heatLoss: '9 kW',
  indoor: '20 degC',
  heatingBalance: '16 degC',
  heatGain: '7 kW',
  coolingIndoor: '25 degC',
  coolingBalance: '20 degC',
} as const;

/** Two pipes over one another at 1.2 and 1.8 m, trenches 3 m apart, at most 60 m long; 32 mm SDR 11 in coils of 100, 150 and 200 m. */
export const FIELD = {
  upperDepth: '1.2 m',
  lowerDepth: '1.8 m',
  trenchSpacing: '3 m',
  longestTrench: '60 m',
  coils: ['100 m', '150 m', '200 m'],
  header: '10 m',
} as const;

/** Fluid limits of the invented unit and its source flow. */
export const UNIT = { lowestEntering: '-2 degC', lowestLeaving: '-6 degC', highestEntering: '32 degC', flow: '0.5 L/s' } as const;
