import { describe, expect, it } from 'vitest';
import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import { type LoopInput, loopInputShape, planLoop } from '../../src/plan/index.js';
import { corruptions, refuses } from '../support/bad-input.js';
import { PLANTS } from './plan-plants.js';

const read = (change: object): LoopInput => inputDocument().read({ ...demoDocument, ...change });
const { soil, heatPump, pipe, header, circuits, field } = demoDocument;
const [first, second, third] = soil.layers;
const layout = (of: object): object => ({ ...field, longestTrench: '160 m', layout: { trenchSpacing: '4 m', ...of } });
const measured = (from: string): object => ({ from, dryDensity: '1520 kg/m3', standardError: '4 %' });
const wave = { mean: '10 degC', amplitude: '11 K', coldestDay: '36 d', period: '365 d' };
const airMonths = demoDocument.climate.monthlyMeans;

/** The demo, and inputs that between them give every optional field and every way of saying a thing. */
const demo = read({});
const more: readonly LoopInput[] = [
  read({
    climate: { from: 'wave', ...wave },
    airMonths,
    field: layout({ type: 'one-pipe', depth: '1.8 m' }),
    soil: {
      layers: [
        { ...first, sample: { from: 'laboratory', conductivity: '1.3 W/(m.K)', standardError: '10 %', heatCapacity: '2.3 MJ/(m3.K)' } },
        {
          ...second,
          sample: { ...second.sample, moisture: { basis: 'dry', value: '20 %' }, density: measured('sand cone') },
        },
        { ...third, sample: { ...third.sample, moisture: { basis: 'wet', value: '18 %' }, density: measured('clod') } },
      ],
    },
  }),
  read({
    climate: { from: 'air-wave', ...wave, cover: 'grass', meanOffset: '1 K', amplitudeRatio: '0.85', lag: '4 d' },
    airMonths,
    field: layout({ type: 'two-pipe-side-by-side', depth: '1.8 m', spacing: '0.6 m' }),
    designWinter: { returnPeriod: 20, seasonDeviation: '1.5 K' },
    designSummer: { returnPeriod: 5, seasonDeviation: '1 K' },
    peakTimes: { heating: '48 h', cooling: '8 h' },
  }),
  read({
    climate: { ...demoDocument.climate, meanOffset: '1 K', amplitudeRatio: '0.85', lag: '4 d' },
    field: layout({ type: 'four-pipe', upperDepth: '1.4 m', lowerDepth: '2 m', spacing: '0.6 m' }),
    pipe: { ...pipe, bore: 'minimum wall', wallConductivity: '0.4 W/(m.K)' },
    header: { ...header, bore: 'average wall', wallConductivity: '0.4 W/(m.K)' },
    soil: {
      layers: [
        first,
        { ...second, sample: { ...second.sample, density: measured('core') } },
        { ...third, sample: { ...third.sample, density: measured('water replacement') } },
      ],
    },
    circuits: { ...circuits, longestCircuit: '400 m', circuitsPerTrench: 2, trenchesPerCircuit: 1 },
  }),
  read({
    field: layout({ type: 'six-pipe', upperDepth: '1.2 m', middleDepth: '1.6 m', lowerDepth: '2 m', spacing: '0.6 m' }),
    heatPump: {
      ...heatPump,
      heating: heatPump.heating.map(({ enteringFluid, capacity }) => ({ enteringFluid, capacity, cop: '3.5' })),
      cooling: heatPump.cooling.map(({ enteringFluid, capacity }) => ({ enteringFluid, capacity, cop: '4', enteringAir: '25 degC', flowRatio: '1' })),
    },
    soil: {
      layers: [
        { ...first, sample: { from: 'handbook', material: 'clay', state: 'natural' } },
        {
          ...second,
          sample: {
            ...second.sample,
            density: { from: 'disturbed', dryDensity: '1400 kg/m3' },
            quartzFraction: '30 %',
            particleDensity: '2680 kg/m3',
          },
        },
        { ...third, sample: { ...third.sample, texture: { from: 'laboratory', class: 'silty clay loam' } } },
      ],
    },
  }),
  read({
    field: layout({
      type: 'custom',
      pipes: [
        { x: '0 m', depth: '1.5 m' },
        { x: '0.5 m', depth: '1.9 m' },
      ],
    }),
  }),
  read({
    field: layout({ type: 'area-collector', depth: '1.5 m' }),
    heatPump: { ...heatPump, cooling: heatPump.cooling.map((point) => ({ ...point, supplyTemperature: '12 degC' })) },
  }),
  read({
    field: layout({
      type: 'unequal-trenches',
      trenchGroup: [
        { across: '0 m', pipes: [{ x: '0 m', depth: '1.5 m' }] },
        { across: '3 m', pipes: [{ x: '0 m', depth: '1.9 m' }] },
      ],
      trenchSpacing: '6 m',
    }),
  }),
];

describe('the whole job', () => {
  it('refuses every single fault of its input by name', () => {
    refuses(planLoop, loopInputShape, demo, { more: [...more, ...PLANTS] });
  }, 120_000);

  it('is asked hundreds of faults', () => {
    expect(corruptions({ ...loopInputShape }, demo).length).toBeGreaterThan(500);
  });
});
