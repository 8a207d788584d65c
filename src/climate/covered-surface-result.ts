import { type AnnualWave, annualWaveShape, joinedShape } from '../states/index.js';
import type { Finding } from '../findings/index.js';
import type { Conductivity, Diffusivity, Shape, SurfaceCoefficient, SurfaceResistance, TemperatureDifference, Time } from '../units/index.js';
import { type SecondHarmonic, secondHarmonicShape } from './second-harmonic.js';
import { type SnowMonth, snowMonthShape } from './snow-months.js';
import { type SurfaceOffsets, surfaceOffsetsShape } from './surface-offsets.js';
import { type SurfaceWaveFromAirInput, surfaceWaveFromAirInputShape } from './surface-wave-from-air.js';

/** What `coveredSurface` needs. */
export interface CoveredSurfaceInput extends SurfaceWaveFromAirInput {
  /** Snow in the middle of each month, January first; nothing where it is cleared. */
  readonly snow: readonly SnowMonth[];
  /** Thermal conductivity of the ground, 0.01 to 100 [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
}

/** A surface film, as the responses of the room `ground` take it. */
export interface FilmSurface {
  /** Coupled to the air through a film. */
  readonly type: 'film';
  /** Heat transfer coefficient between ground surface and air [W/(m2.K)]. */
  readonly coefficient: SurfaceCoefficient;
}

/** The same cover for the loop's own disturbance: constant films that hold the truth of a changing one between them. */
export interface CoveredResponse {
  /** Without snow, the most that the surface takes up. */
  readonly open: FilmSurface;
  /** The film through which a steady heat lowers the surface as much over the year as through the changing snow. */
  readonly steady: FilmSurface;
  /** Below the most snow of the year, the least that the surface takes up. */
  readonly covered: FilmSurface;
}

/** The surface of ground that snow covers for a part of the year. */
export interface CoveredSurface {
  /** The likely wave of the ground surface. */
  readonly wave: AnnualWave;
  /** What snow bends the wave by, half a year long. */
  readonly secondHarmonic: SecondHarmonic;
  /** The unfavourable side for heating: little snow and cold ground. */
  readonly coldSide: AnnualWave;
  /** The unfavourable side for cooling: much snow and warm ground, swinging as if there were little. */
  readonly warmSide: AnnualWave;
  /** The step from air to surface, snow included. */
  readonly offsets: SurfaceOffsets;
  /** The step from air to a surface without snow. */
  readonly openOffsets: SurfaceOffsets;
  /** Resistance of the snow in the middle of each month, January first [m2.K/W]. */
  readonly snowResistances: readonly SurfaceResistance[];
  /** How long the ground melts the snow from below and is held at 0 °C [s]. */
  readonly meltingTime: Time;
  /** Root mean square of what the surface differs from the two waves by [K]. */
  readonly remainder: TemperatureDifference;
  /** What the response of the ground takes for the same cover. */
  readonly response: CoveredResponse;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

const filmShape = { type: ['film'], coefficient: 'surface coefficient' } as const;

/** Shape of {@link CoveredSurfaceInput}. */
export const coveredSurfaceInputShape: Shape<CoveredSurfaceInput> = /* @__PURE__ */ joinedShape(surfaceWaveFromAirInputShape, {
  snow: { list: snowMonthShape },
  conductivity: 'conductivity',
  diffusivity: 'diffusivity',
});

/** Shape of {@link CoveredSurface}, its findings apart. */
export const coveredSurfaceShape: Shape<Omit<CoveredSurface, 'findings'>> = {
  wave: annualWaveShape,
  secondHarmonic: secondHarmonicShape,
  coldSide: annualWaveShape,
  warmSide: annualWaveShape,
  offsets: surfaceOffsetsShape,
  openOffsets: surfaceOffsetsShape,
  snowResistances: { list: 'surface resistance' },
  meltingTime: 'time',
  remainder: 'temperature difference',
  response: { open: filmShape, steady: filmShape, covered: filmShape },
};
