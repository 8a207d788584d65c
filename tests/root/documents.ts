import { demoDocument } from '../../src/index.js';

/** Documents that are planned, which between them hold the optional fields and the members of the unions of an input. */
export const DOCUMENTS: readonly { readonly about: string; readonly document: object }[] = [
  { about: 'the demo', document: demoDocument },
  {
    about: 'everything given',
    document: {
      ...demoDocument,
      heatPump: {
        ...demoDocument.heatPump,
        heating: [
          { enteringFluid: '-6 degC', capacity: '7.3 kW', cop: '3.0' },
          { enteringFluid: '2 degC', capacity: '8.9 kW', cop: '3.6' },
          { enteringFluid: '12 degC', capacity: '11.2 kW', power: '2.6 kW' },
        ],
      },
      climate: { from: 'wave', mean: '10 degC', amplitude: '11 K', coldestDay: '30 d', period: '365.25 d' },
      airMonths: demoDocument.climate.monthlyMeans,
      soil: {
        layers: [
          { top: '0 m', bottom: '1 m', sample: { from: 'handbook', material: 'clay', state: 'saturated' } },
          {
            top: '1 m',
            bottom: '1.5 m',
            sample: {
              from: 'sample',
              moisture: { basis: 'wet', value: '15 %' },
              density: { from: 'sand cone', dryDensity: '1550 kg/m3' },
              texture: { from: 'laboratory', class: 'silt loam' },
              quartzFraction: '40 %',
              particleDensity: '2650 kg/m3',
              organicMatter: '2 %',
            },
          },
          {
            top: '1.5 m',
            bottom: '2.5 m',
            sample: { from: 'laboratory', conductivity: '1.4 W/(m.K)', standardError: '10 %', heatCapacity: '2.5 MJ/(m3.K)' },
          },
        ],
      },
      field: {
        layout: { type: 'four-pipe', upperDepth: '1.2 m', lowerDepth: '1.8 m', spacing: '0.6 m', trenchSpacing: '4 m' },
        longestTrench: '80 m',
        mostTrenches: 20,
      },
      circuits: {
        coilLengths: ['100 m', '150 m'],
        distanceToHouse: '15 m',
        leadLength: '4 m',
        longestCircuit: '160 m',
        circuitsPerTrench: 2,
        trenchesPerCircuit: 1,
      },
      designWinter: { returnPeriod: 20, seasonDeviation: '1.5 K' },
      designSummer: { returnPeriod: 5, seasonDeviation: '1 K' },
      peakTimes: { heating: '72 h', cooling: '8 h' },
    },
  },
  {
    about: 'a wave of the air, water, pipes as drawn, heating alone',
    document: {
      format: 'loamloop-input-1',
      name: 'heating alone',
      building: { heating: { designLoad: '6 kW', designOutdoor: '-5 degC' } },
      heatPump: {
        label: 'Example unit, not a product',
        ratingOrigin: 'invented',
        heating: demoDocument.heatPump.heating,
        sourceFlow: '0.5 L/s',
        lowestEntering: '5 degC',
        lowestLeaving: '2 degC',
      },
      climate: { from: 'air-wave', mean: '13 degC', amplitude: '8 K', coldestDay: '20 d', meanOffset: '1 K', amplitudeRatio: '0.9', lag: '2 d' },
      soil: {
        layers: [
          {
            top: '0 m',
            bottom: '2.5 m',
            sample: {
              from: 'sample',
              moisture: { basis: 'dry', value: '25 %' },
              density: { from: 'disturbed', dryDensity: '1400 kg/m3' },
              texture: { from: 'feel', class: 'clay' },
            },
          },
        ],
      },
      field: {
        layout: {
          type: 'custom',
          pipes: [
            { x: '-0.2 m', depth: '1.5 m' },
            { x: '0.2 m', depth: '1.8 m' },
          ],
          trenchSpacing: '3 m',
        },
        longestTrench: '80 m',
        mostTrenches: 30,
      },
      pipe: { series: 'IPS', size: '3/4', dimensionRatio: '11' },
      header: { series: 'IPS', size: '1-1/2', dimensionRatio: '11' },
      circuits: { coilLengths: ['400 ft', '500 ft'] },
      fluid: 'water',
    },
  },
];
