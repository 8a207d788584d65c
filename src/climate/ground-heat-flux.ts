import { demand } from '../errors/index.js';
import { type AnnualWave, annualWaveShape } from '../states/index.js';
import type { Conductivity, DayOfYear, Diffusivity, HeatFlux, Length, Shape } from '../units/index.js';
import { demandDay, demandDepth, demandDiffusivity } from './limits.js';
import { demandSines, type SecondHarmonic, secondHarmonicShape } from './second-harmonic.js';
import { damping, type Sine, turned } from './wave-at-depth.js';

/** What {@link groundHeatFlux} needs. */
export interface GroundHeatFluxInput {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** A second sine on top of the wave; none when left out. */
  readonly secondHarmonic?: SecondHarmonic;
  /** Thermal conductivity of the ground, 0.01 to 100 [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Thermal diffusivity of the ground, 1e-8 to 1e-5 [m2/s]. */
  readonly diffusivity: Diffusivity;
  /** Depth below the surface, 0 to 1e4 [m]. */
  readonly depth: Length;
  /** When; 1.0 is 1 January 00:00 [d]. */
  readonly day: DayOfYear;
}

/** Shape of {@link GroundHeatFluxInput}. */
export const groundHeatFluxInputShape: Shape<GroundHeatFluxInput> = {
  wave: annualWaveShape,
  secondHarmonic: { optional: secondHarmonicShape },
  conductivity: 'conductivity',
  diffusivity: 'diffusivity',
  depth: 'length',
  day: 'day of year',
};

/** Refuses a conductivity that no ground has. */
export function demandConductivity(conductivity: Conductivity): void {
  demand('conductivity', 'conductivity', conductivity, { atLeast: 0.01, atMost: 100 });
}

/**
 * Heat that the yearly wave drives down through undisturbed ground; positive downwards.
 *
 * What the sun lends the ground in summer and takes back in winter: a few watts per square metre, which is what a loop competes with.
 * Same assumptions as `groundTemperature`.
 *
 * @param input - wave of the ground surface, conductivity [W/(m.K)], diffusivity [m2/s], depth [m] and day [d]
 * @returns heat flux, positive into the ground [W/m2]
 * @throws InputError when a number is out of range or the wave is of the air
 * @remarks
 * q = −k dT/dz = −(√2 k A/D) e^(−z/D) cos(2π(t − coldest)/P − z/D + π/4); source: `carslawJaeger1959`.
 * Invariants: it is the slope of the temperature; it runs an eighth of a period ahead of it; what flows into a slab and not out of it
 * warms the slab; nothing is left over a period.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, metres, squareMetresPerDay, wattsPerMetreKelvin } = await import('../units/index.js');
 * const wave = {
 *   of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(36), period: days(365),
 * } as const;
 * const soil = { conductivity: wattsPerMetreKelvin(1.2), diffusivity: squareMetresPerDay(0.05) };
 * expect(groundHeatFlux({ wave, ...soil, depth: metres(0), day: dayOfYear(36) })).toBeCloseTo(-5.97, 2);
 * ```
 */
export function groundHeatFlux({ wave, secondHarmonic, conductivity, diffusivity, depth, day }: GroundHeatFluxInput): HeatFlux {
  const sines = demandSines(wave, secondHarmonic);
  demandConductivity(conductivity);
  demandDiffusivity(diffusivity);
  demandDepth('depth', depth);
  demandDay('day', day);
  const upwards = (sine: Sine): number => {
    const depthOfDamping = damping(diffusivity, sine.period);
    const dampings = depth / depthOfDamping;
    const largest = (Math.SQRT2 * conductivity * sine.amplitude) / depthOfDamping;
    return largest * Math.exp(-dampings) * Math.cos(turned(sine, day) - dampings + Math.PI / 4);
  };
  return -sines.reduce((sum, sine) => sum + upwards(sine), 0) as HeatFlux;
}
