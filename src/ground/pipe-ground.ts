import { demandChoice } from '../errors/index.js';
import { type Complex, times } from '../numerics/index.js';
import { annualWaveShape, type AnnualWave, joinedShape } from '../states/index.js';
import type { Ratio, Shape, Time } from '../units/index.js';
import { groundPipes } from './ground-pipes.js';
import { periodicKernel } from './periodic-kernel.js';
import { type GroundResponseInput, groundResponseInputShape, type WallCondition } from './response.js';
import {
  demandSurfaceWaves,
  leftAt,
  partOf,
  type SurfaceHarmonic,
  surfaceHarmonicShape,
  type UndisturbedWave,
  undisturbedWave,
} from './surface-harmonics.js';
import { tiedWeights } from './tied-weights.js';

/** What the ground at the pipes is computed from. */
export interface PipeGroundInput extends GroundResponseInput {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** What bends it, as snow does; nothing when left out. */
  readonly secondHarmonic?: SurfaceHarmonic;
  /** What the walls have in common; equal flux when left out. */
  readonly wallCondition?: WallCondition;
}

/** Shape of {@link PipeGroundInput}. */
export const pipeGroundInputShape: Shape<PipeGroundInput> = /* @__PURE__ */ joinedShape(groundResponseInputShape, {
  wave: annualWaveShape,
  secondHarmonic: { optional: surfaceHarmonicShape },
  wallCondition: { optional: ['equal flux', 'equal temperature'] },
});

/** How much one pipe's own ground counts in that of the loop, at the pace of a year. */
export interface PipeWeight {
  /** Over the mean of all pipes [1]. */
  readonly overMean: Ratio;
  /** How much later than it comes it counts; below 0 sooner [s]. */
  readonly lag: Time;
}

/** Undisturbed ground at pipes of unlike depths. */
export interface PipeGround {
  /** What the loop feels at rest: the course that belongs to a response of the same wall condition in a simulation. */
  readonly loop: UndisturbedWave;
  /** At each pipe of a trench, in the order of the layout. */
  readonly pipes: readonly UndisturbedWave[];
  /** The weights of the pipes in it for the yearly wave, trench by trench in the order of the layout's pipes. */
  readonly weights: readonly (readonly PipeWeight[])[];
}

/**
 * The undisturbed ground that a loop with pipes at unlike depths feels, and that of each pipe.
 *
 * With equal heat it is the plain mean over the pipes. Where the walls share one temperature, pipes exchange heat with one another even when the loop gives off none, and
 * their wall comes to a weighted mean: the weights are the shares of heat that the pipes take at the pace of the change, shallow and outer pipes the most. At the
 * pace of a year they also lag or lead a little.
 *
 * @param input - pipes, soil and surface as for {@link groundResponse}, the wave of the ground surface and the wall condition; 200 pipes at most for equal temperature
 * @returns the course for the loop, for each pipe, and the weights
 * @throws InputError as {@link groundResponse} does, for a wave that is none or of the air, and for too many pipes
 * @remarks Source: Carslaw and Jaeger; the weights solve (line sources at a rate iω) the same system as {@link equalTemperatureResponse}. Checked against finite elements of
 * a year (0.02 K). Invariants tested: pipes of one depth feel their own ground; the weights add up to 1; the loop between its pipes' extremes.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, diameterMillimetres, joulesPerCubicMetreKelvin, kelvinDifference, metres, squareMetresPerSecond, wattsPerMetreKelvin } =
 *   await import('../units/index.js');
 * const { twoPipeStacked } = await import('./layout-makers.js');
 * const { loop, pipes } = pipeGround({
 *   layout: twoPipeStacked({ upperDepth: metres(1.2), lowerDepth: metres(1.8), trenches: 1, trenchSpacing: metres(3) }),
 *   pipe: { outsideDiameter: diameterMillimetres(33.4) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 *   wave: { of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(35), period: days(365) },
 *   wallCondition: 'equal temperature',
 * });
 * expect(pipes.map(({ amplitude }) => Math.round(10 * amplitude) / 10)).toEqual([7.4, 5.8]);
 * expect(loop.temperatureOn(dayOfYear(60))).toBeCloseTo(3.54, 2);
 * ```
 */
export function pipeGround({ wave, secondHarmonic, wallCondition = 'equal flux', ...input }: PipeGroundInput): PipeGround {
  const ground = groundPipes(input);
  const waves = { wave, ...(secondHarmonic === undefined ? {} : { secondHarmonic }) };
  demandSurfaceWaves(waves);
  demandChoice('wallCondition', wallCondition, ['equal flux', 'equal temperature']);
  const { pipes, trenches } = ground.places;
  const { diffusivity } = input.soil;
  const count = pipes.length * trenches;
  const weightsOf = (n: number): readonly Complex[] =>
    wallCondition === 'equal flux'
      ? Array.from({ length: count }, () => ({ re: 1 / count, im: 0 }))
      : tiedWeights(ground.places, periodicKernel((wave.period * diffusivity) / n, ground));
  const left = (n: number): readonly Complex[] => pipes.map(({ depth }) => leftAt(depth, partOf(n, wave.period, diffusivity)));
  const weighted = (weights: readonly Complex[], of: readonly Complex[]): Complex =>
    weights.reduce<Complex>(
      (sum, weight, index) => {
        const { re, im } = times(weight, of[index % pipes.length] ?? weight);
        return { re: sum.re + re, im: sum.im + im };
      },
      { re: 0, im: 0 },
    );
  const [yearly, first, second] = [weightsOf(1), left(1), left(2)];
  const none = { re: 0, im: 0 };
  const all = yearly.map(
    ({ re, im }): PipeWeight => ({
      overMean: (count * Math.hypot(re, im)) as Ratio,
      lag: ((-Math.atan2(im, re) * wave.period) / (2 * Math.PI)) as Time,
    }),
  );
  return {
    loop: undisturbedWave(waves, weighted(yearly, first), secondHarmonic === undefined ? none : weighted(weightsOf(2), second)),
    pipes: pipes.map((_, index) => undisturbedWave(waves, first[index] ?? none, second[index] ?? none)),
    weights: Array.from({ length: trenches }, (_, trench) => all.slice(trench * pipes.length, (trench + 1) * pipes.length)),
  };
}
