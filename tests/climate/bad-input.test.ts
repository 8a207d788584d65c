import { describe, it } from 'vitest';
import {
  annualWave,
  type AnnualWaveReadings,
  annualWaveReadingsShape,
  type ClimateInput,
  climateInputShape,
  dampingDepth,
  type DampingDepthInput,
  dampingDepthInputShape,
  fitAnnualWave,
  groundHeatFlux,
  type GroundHeatFluxInput,
  groundHeatFluxInputShape,
  groundTemperature,
  type GroundTemperatureInput,
  groundTemperatureInputShape,
  groundTemperatureRange,
  type GroundTemperatureRangeInput,
  groundTemperatureRangeInputShape,
  groundWave,
  meanTemperatureOverDepth,
  meanTemperatureOverTime,
  type PublishedWave,
  publishedWaveShape,
  type SlabInput,
  slabInputShape,
  type SpanInput,
  spanInputShape,
  type SurfaceFilmInput,
  surfaceFilmInputShape,
  surfaceWaveFromAir,
  type SurfaceWaveFromAirInput,
  surfaceWaveFromAirInputShape,
  surfaceWaveThroughFilm,
} from '../../src/climate/index.js';
import { celsius, dayOfYear, days, kelvinDifference, metres, ratio, wattsPerMetreKelvin, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loam, temperate } from './waves.js';

const day = dayOfYear(60);
const air = { ...temperate, of: 'air' } as const;
const conductivity = wattsPerMetreKelvin(1.2);
const point = { wave: temperate, diffusivity: loam, depth: metres(1.5) };
const secondHarmonic = { amplitude: kelvinDifference(1), coldestDay: day };
const known = { cover: 'grass', meanOffset: kelvinDifference(1), amplitudeRatio: ratio(0.9), lag: days(3) } as const;
const numbers = { mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(18), period: days(365) };
const monthlyMeans = [2.4, 4.8, 9.6, 14, 18.8, 23, 25.7, 25.1, 20.1, 16.1, 9.5, 3.7].map((mean) => celsius(mean));

describe('bad input is refused by name', () => {
  it('by the temperature at a point', () => {
    refuses<GroundTemperatureInput>(groundTemperature, groundTemperatureInputShape, { ...point, day, secondHarmonic });
  });
  it('by the range at a depth', () => {
    refuses<GroundTemperatureRangeInput>(groundTemperatureRange, groundTemperatureRangeInputShape, { ...point, secondHarmonic });
  });
  it('by the damping depth', () => {
    refuses<DampingDepthInput>(dampingDepth, dampingDepthInputShape, { diffusivity: loam, period: days(365) });
  });
  it('by the mean over a slab', () => {
    const slab = { wave: temperate, secondHarmonic, diffusivity: loam, top: metres(0.9), bottom: metres(1.8), day };
    refuses<SlabInput>(meanTemperatureOverDepth, slabInputShape, slab);
  });
  it('by the mean over a season', () => {
    refuses<SpanInput>(meanTemperatureOverTime, spanInputShape, { ...point, secondHarmonic, start: dayOfYear(305), end: dayOfYear(456) });
  });
  it('by the heat flux', () => {
    refuses<GroundHeatFluxInput>(groundHeatFlux, groundHeatFluxInputShape, { ...point, secondHarmonic, conductivity, day });
  });
  it('by the film', () => {
    const film = { air, coefficient: wattsPerSquareMetreKelvin(5), conductivity, diffusivity: loam };
    refuses<SurfaceFilmInput>(surfaceWaveThroughFilm, surfaceFilmInputShape, film);
  });
  it('by the fit', () => {
    refuses<AnnualWaveReadings>(fitAnnualWave, annualWaveReadingsShape, { of: 'air', monthlyMeans });
  });
  it('by the step from air to surface', () => {
    refuses<SurfaceWaveFromAirInput>(surfaceWaveFromAir, surfaceWaveFromAirInputShape, { air, ...known });
  });
  it('by the published forms', () => {
    const { mean, amplitude, period } = numbers;
    const [by, whole, extremes] = [
      { by: 'amplitude', mean, amplitude },
      { by: 'whole swing', mean, wholeSwing: amplitude },
      { by: 'extremes', lowest: celsius(0), highest: celsius(20) },
    ] as const;
    refuses<PublishedWave>(
      annualWave,
      publishedWaveShape,
      { of: 'air', swing: by, phase: { marks: 'coldest', day, countedAs: 'moment' }, period },
      {
        more: [
          { of: 'air', swing: extremes, phase: { marks: 'warmest', day, countedAs: 'days elapsed' } },
          { of: 'air', swing: whole, phase: { marks: 'rising through the mean', day, countedAs: 'calendar day' } },
          { of: 'air', swing: by, phase: { marks: 'falling through the mean', day, countedAs: 'moment' } },
          { of: 'air', swing: by, phase: { marks: 'cosine phase', angle: ratio(2) } },
          { of: 'air', swing: by, phase: { marks: 'sine phase', angle: ratio(2) } },
        ],
      },
    );
  });
  it('by the whole step to the ground wave', () => {
    refuses<ClimateInput>(
      groundWave,
      climateInputShape,
      { from: 'wave', ...numbers },
      {
        more: [
          { from: 'air-wave', ...numbers, ...known },
          { from: 'monthly-air', monthlyMeans, ...known },
        ],
      },
    );
  });
});
