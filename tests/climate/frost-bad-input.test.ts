import { describe, it } from 'vitest';
import {
  type AirReadings,
  berggrenCoefficient,
  berggrenCoefficientInputShape,
  type BerggrenCoefficientInput,
  clearedStripWave,
  clearedStripInputShape,
  type ClearedStripInput,
  computedFrostDepth,
  computedFrostDepthInputShape,
  type ComputedFrostDepthInput,
  coveredSurface,
  coveredSurfaceInputShape,
  type CoveredSurfaceInput,
  DEGREE_DAY_COUNTINGS,
  degreeDays,
  type DegreeDayCounting,
  designFreezingIndex,
  designTemperatures,
  exceededTemperature,
  freezingIndex,
  FROST_SURFACES,
  type FrostSurface,
  layeredStefanFrostDepth,
  layeredStefanInputShape,
  type LayeredStefanInput,
  monthlyDegreeDays,
  monthlyDegreeDaysInputShape,
  type MonthlyDegreeDaysInput,
  monthlyFreezingIndex,
  nFactors,
  snowConductivityInputShape,
  type SnowConductivityInput,
  stefanFrostDepth,
  stefanFrostDepthInputShape,
  type StefanFrostDepthInput,
  sturmSnowConductivity,
  temperatureBins,
} from '../../src/climate/index.js';
import {
  celsius,
  dayOfYear,
  days,
  type DegreeDays,
  fraction,
  type Fraction,
  hours,
  joulesPerCubicMetre,
  joulesPerCubicMetreKelvin,
  kelvinDays,
  kelvinDifference,
  kilogramsPerCubicMetre,
  metres,
  ratio,
  type Shape,
  squareMetreKelvinPerWatt,
  type Temperature,
  type TemperatureDifference,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loam, temperate } from './waves.js';

/** Readings as a list, whose shape is known; a series of doubles has none. */
interface Listed extends AirReadings {
  readonly temperatures: readonly Temperature[];
}
const listed = { temperatures: { list: 'temperature' }, step: 'time' } as const;
const readings: Listed = { temperatures: [-3, 1, 8, 12].map((t) => celsius(t)), step: hours(12) };
const monthlyMeans = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));
const base = celsius(18);

describe('bad readings are refused by name', () => {
  it('by degree days', () => {
    const shape: Shape<Listed & { readonly base: Temperature; readonly counting?: DegreeDayCounting }> = {
      ...listed,
      base: 'temperature',
      counting: { optional: DEGREE_DAY_COUNTINGS },
    };
    refuses(degreeDays, shape, { ...readings, base, counting: 'daily extremes' });
  });
  it('by degree days of monthly means', () => {
    const spread = monthlyMeans.map(() => kelvinDifference(4));
    refuses<MonthlyDegreeDaysInput>(monthlyDegreeDays, monthlyDegreeDaysInputShape, { monthlyMeans, base, spread });
  });
  it('by temperature bins', () => {
    type Binned = Listed & { readonly binWidth: TemperatureDifference; readonly anchor?: Temperature };
    const shape: Shape<Binned> = {
      ...listed,
      binWidth: 'temperature difference',
      anchor: { optional: 'temperature' },
    };
    refuses<Binned>(temperatureBins, shape, { ...readings, binWidth: kelvinDifference(2), anchor: celsius(0) });
  });
  it('by the freezing index', () => {
    const shape: Shape<Listed & { readonly afterLast: 'first day' | 'nothing' }> = { ...listed, afterLast: ['first day', 'nothing'] };
    refuses(freezingIndex, shape, { ...readings, afterLast: 'nothing' });
    const monthly: Shape<{ readonly monthlyMeans: readonly Temperature[] }> = { monthlyMeans: { list: 'temperature' } };
    refuses((input) => monthlyFreezingIndex(input.monthlyMeans), monthly, { monthlyMeans });
  });
  it('by the index of a design winter', () => {
    const winters = [410, 300, 520, 280, 610, 450, 390, 330, 480, 370].map((index) => kelvinDays(index));
    const shape: Shape<{ readonly winters: readonly DegreeDays[] }> = { winters: { list: 'degree days' } };
    refuses((input) => designFreezingIndex(input.winters), shape, { winters });
  });
  it('by design temperatures', () => {
    const shape: Shape<Listed> = listed;
    refuses(designTemperatures, shape, readings);
    const share: Shape<Listed & { readonly exceeded: Fraction }> = { ...listed, exceeded: 'fraction' };
    refuses(exceededTemperature, share, { ...readings, exceeded: fraction(0.99) });
  });
});

const layer = {
  thickness: metres(1),
  frozenConductivity: wattsPerMetreKelvin(1.5),
  latentHeat: joulesPerCubicMetre(1e8),
  heatCapacity: joulesPerCubicMetreKelvin(2e6),
};
const freezing = { freezingIndex: kelvinDays(400), nFactor: ratio(0.5) };
const surfaceResistance = squareMetreKelvinPerWatt(0.5);

describe('bad frost is refused by name', () => {
  it('by n-factors', () => {
    const shape: Shape<{ readonly surface: FrostSurface }> = { surface: FROST_SURFACES };
    refuses<{ readonly surface: FrostSurface }>(({ surface }) => nFactors(surface), shape, { surface: 'turf' });
  });
  it('by the coefficient', () => {
    const input = { thermalRatio: ratio(1), fusionParameter: ratio(0.2) };
    refuses<BerggrenCoefficientInput>(berggrenCoefficient, berggrenCoefficientInputShape, input);
  });
  it('by Stefan', () => {
    const { frozenConductivity, latentHeat } = layer;
    refuses<StefanFrostDepthInput>(stefanFrostDepth, stefanFrostDepthInputShape, { frozenConductivity, latentHeat, ...freezing });
    refuses<LayeredStefanInput>(layeredStefanFrostDepth, layeredStefanInputShape, { layers: [layer, layer], ...freezing, surfaceResistance });
  });
  it('by the computed frost depth', () => {
    refuses<ComputedFrostDepthInput>(computedFrostDepth, computedFrostDepthInputShape, {
      layers: [layer],
      surface: 'turf',
      ...freezing,
      surfaceResistance,
      duration: days(100),
      mean: celsius(9),
      frostLine: metres(1),
      pipeDepth: metres(1.5),
    });
  });
});

describe('bad snow is refused by name', () => {
  it('by its conductivity', () => {
    refuses<SnowConductivityInput>(sturmSnowConductivity, snowConductivityInputShape, { density: kilogramsPerCubicMetre(250) });
  });
  it('by the covered surface', () => {
    const air = { ...temperate, of: 'air', coldestDay: dayOfYear(18) } as const;
    const known = { cover: 'grass', meanOffset: kelvinDifference(1), amplitudeRatio: ratio(0.9), lag: days(3) } as const;
    const snow = Array.from({ length: 12 }, (_, month) => ({ depth: metres(month < 2 ? 0.2 : 0), density: kilogramsPerCubicMetre(250) }));
    const ground = { conductivity: wattsPerMetreKelvin(1.5), diffusivity: loam };
    refuses<CoveredSurfaceInput>(coveredSurface, coveredSurfaceInputShape, { air, ...known, snow, ...ground });
  });
  it('by the cleared strip', () => {
    const strip = { stripWidth: metres(4), depth: metres(1.5), diffusivity: loam };
    refuses<ClearedStripInput>(clearedStripWave, clearedStripInputShape, { cleared: temperate, covered: temperate, ...strip });
  });
});
