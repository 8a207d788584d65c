/**
 * The embedded demo: a house, a meadow, a log of oven weighings and a heat pump, as an input document.
 *
 * All of it is invented for this purpose, the heat pump’s rating points too; it is nobody’s house and nobody’s product.
 */
export const demoDocument = {
  format: 'loamloop-input-1',
  name: 'Farmhouse by a damp meadow (invented example)',
  building: {
    heating: { designLoad: '9 kW', designOutdoor: '-14 degC', indoor: '20 degC', balancePoint: '15 degC' },
    cooling: { designLoad: '5 kW', designOutdoor: '31 degC', indoor: '25 degC', balancePoint: '21 degC' },
  },
  heatPump: {
    label: 'Example unit, not a product',
    ratingOrigin: 'invented',
    heating: [
      { enteringFluid: '-5 degC', capacity: '7.4 kW', power: '2.40 kW' },
      { enteringFluid: '0 degC', capacity: '8.5 kW', power: '2.45 kW' },
      { enteringFluid: '5 degC', capacity: '9.6 kW', power: '2.52 kW' },
      { enteringFluid: '10 degC', capacity: '10.8 kW', power: '2.60 kW' },
      { enteringFluid: '20 degC', capacity: '13.2 kW', power: '2.75 kW' },
    ],
    cooling: [
      { enteringFluid: '10 degC', capacity: '10.9 kW', power: '1.60 kW' },
      { enteringFluid: '20 degC', capacity: '10.2 kW', power: '2.05 kW' },
      { enteringFluid: '30 degC', capacity: '9.4 kW', power: '2.65 kW' },
      { enteringFluid: '40 degC', capacity: '8.5 kW', power: '3.35 kW' },
    ],
    sourceFlow: '0.5 L/s',
    lowestEntering: '-5 degC',
    lowestLeaving: '-9 degC',
    highestEntering: '35 degC',
  },
  climate: {
    from: 'monthly-air',
    monthlyMeans: [
      '-2.8 degC',
      '-1.6 degC',
      '3.1 degC',
      '8.4 degC',
      '13.6 degC',
      '17.2 degC',
      '19 degC',
      '18.3 degC',
      '14.2 degC',
      '8.9 degC',
      '3.3 degC',
      '-1.1 degC',
    ],
    cover: 'grass',
  },
  soil: {
    layers: [
      {
        top: '0 m',
        bottom: '0.4 m',
        sample: {
          from: 'sample',
          moisture: { basis: 'weighed', moistMass: '412 g', dryMass: '351 g', tareMass: '52 g' },
          density: { from: 'texture' },
          texture: { from: 'feel', class: 'loam' },
          organicMatter: '3 %',
        },
      },
      {
        top: '0.4 m',
        bottom: '1.3 m',
        sample: {
          from: 'sample',
          moisture: { basis: 'weighed', moistMass: '438 g', dryMass: '368 g', tareMass: '53 g' },
          density: { from: 'core', dryDensity: '1520 kg/m3' },
          texture: { from: 'feel', class: 'clay loam' },
        },
      },
      {
        top: '1.3 m',
        bottom: '2.6 m',
        sample: {
          from: 'sample',
          moisture: { basis: 'weighed', moistMass: '455 g', dryMass: '379 g', tareMass: '52 g' },
          density: { from: 'core', dryDensity: '1560 kg/m3' },
          texture: { from: 'feel', class: 'silty clay loam' },
        },
      },
    ],
  },
  field: {
    layout: { type: 'two-pipe-stacked', upperDepth: '1.4 m', lowerDepth: '2 m', trenchSpacing: '4 m' },
    longestTrench: '75 m',
    mostTrenches: 12,
  },
  pipe: { series: 'metric', size: '32', dimensionRatio: '11' },
  header: { series: 'metric', size: '50', dimensionRatio: '11' },
  circuits: { coilLengths: ['100 m', '125 m', '150 m'], distanceToHouse: '12 m', leadLength: '6 m' },
  fluid: 'propylene-glycol',
} as const;
