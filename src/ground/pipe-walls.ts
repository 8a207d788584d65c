import { demand, demandCount, InputError } from '../errors/index.js';
import { annualWaveShape, type AnnualWave, joinedShape } from '../states/index.js';
import type { DayOfYear, HeatPerPipeLength, Shape, Temperature } from '../units/index.js';
import { foldedRise, foldedSteps } from './folded-steps.js';
import { groundResponse } from './ground-response.js';
import { pipeGround } from './pipe-ground.js';
import { type GroundResponseInput, groundResponseInputShape } from './response.js';
import { type SurfaceHarmonic, surfaceHarmonicShape } from './surface-harmonics.js';

/** What the walls of the pipes one by one are computed from. */
export interface PipeWallsInput extends GroundResponseInput {
  /** The wave of the ground surface. */
  readonly wave: AnnualWave;
  /** What bends it, as snow does; nothing when left out. */
  readonly secondHarmonic?: SurfaceHarmonic;
  /** Heat that each pipe gives to the ground in equal steps of a year that repeats, from 1 January; negative where taken, 12 to 8784 steps, within ±1e4 [W/m]. */
  readonly heat: readonly HeatPerPipeLength[];
}

/** Shape of {@link PipeWallsInput}. */
export const pipeWallsInputShape: Shape<PipeWallsInput> = /* @__PURE__ */ joinedShape(groundResponseInputShape, {
  wave: annualWaveShape,
  secondHarmonic: { optional: surfaceHarmonicShape },
  heat: { list: 'heat per pipe length' },
});

/** The walls of the pipes of a loop one by one, in the year that repeats. */
export interface PipeWalls {
  /** Of each pipe at the end of each step, trench by trench in the order of the layout's pipes, plain numbers [degC]. */
  readonly pipeWalls: readonly (readonly Float64Array[])[];
  /** Mean over the pipes at the end of each step, plain numbers [degC]. */
  readonly walls: Float64Array;
  /** The coldest wall of any pipe [degC]. */
  readonly coldestWall: Temperature;
  /** Trench of that pipe, the first is 0. */
  readonly coldestTrench: number;
  /** Its place among the layout's pipes, the first is 0. */
  readonly coldestPipe: number;
  /** End of the step in which it is [d]. */
  readonly coldestDay: DayOfYear;
}

const DAY = 86_400;

/**
 * Wall temperature of each pipe through a year that repeats, all pipes giving off equal heat: what the ice around each of them, and the pipe that freezes first, go by.
 *
 * At unlike depths each pipe has its own undisturbed ground and its own response, and in many trenches the inner ones are the coldest. Walls that share one
 * temperature have nothing to tell apart: theirs is the mean wall of the simulation.
 *
 * @param input - pipes, soil and surface as for {@link groundResponse} but for a sealed one, the wave of the ground surface, and the heat; days are fine enough
 * @returns the walls, their mean and the coldest
 * @throws InputError as {@link groundResponse} and {@link pipeGround} do, for a heat out of its range, and below a sealed surface, where no year repeats
 * @remarks Superposed steps, those of more than five years ago as their mean. Checked against finite elements of a year (0.02 K in the mean over the pipes). Invariants tested:
 * without heat the ground of {@link pipeGround}; linear in the heat; their mean that of the periodic response; opposite trenches alike.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, diameterMillimetres, joulesPerCubicMetreKelvin, kelvinDifference, metres, squareMetresPerSecond, wattsPerMetreKelvin, wattsPerPipeMetre } =
 *   await import('../units/index.js');
 * const { twoPipeStacked } = await import('./layout-makers.js');
 * const { coldestPipe, coldestWall } = pipeWalls({
 *   layout: twoPipeStacked({ upperDepth: metres(1.2), lowerDepth: metres(1.8), trenches: 1, trenchSpacing: metres(3) }),
 *   pipe: { outsideDiameter: diameterMillimetres(33.4) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 *   wave: { of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(12), coldestDay: dayOfYear(35), period: days(365) },
 *   heat: Array.from({ length: 365 }, (_, day) => wattsPerPipeMetre(day < 90 || day > 300 ? -10 : 0)),
 * });
 * expect([coldestPipe, Math.round(coldestWall)]).toEqual([0, -4]);
 * ```
 */
export function pipeWalls({ wave, secondHarmonic, heat, ...input }: PipeWallsInput): PipeWalls {
  const ground = pipeGround({ ...input, wave, ...(secondHarmonic === undefined ? {} : { secondHarmonic }) });
  demandCount('heat', heat, 12, 8784);
  heat.forEach((each, index) => {
    demand(`heat.${String(index)}`, 'heat per pipe length', each, { atLeast: -1e4, atMost: 1e4 });
  });
  const response = groundResponse(input);
  const steady = response.steadyPipeRises?.flat();
  if (steady === undefined)
    throw new InputError({
      code: 'impossible',
      argument: 'surface.type',
      value: 'adiabatic',
      allowed: 'isothermal or film',
      hint: 'below a sealed surface the ground changes for ever and no year repeats',
    });
  const steps = heat.length;
  const step = wave.period / steps;
  const { trenches, pipesPerTrench } = input.layout;
  const folded = foldedSteps((time) => response.pipeRisesAfter(time).flat(), { steps, step, walls: trenches * pipesPerTrench });
  const course = (flat: number): Float64Array => {
    const [undisturbed, rises] = [ground.pipes[flat % pipesPerTrench], folded[flat]];
    return Float64Array.from(heat, (_, end) => {
      const rest = undisturbed?.temperatureOn((1 + ((end + 1) * step) / DAY) as DayOfYear) ?? NaN;
      return rest + (rises === undefined ? NaN : foldedRise(rises, heat, end, steady[flat] ?? NaN));
    });
  };
  const flat = Array.from({ length: trenches * pipesPerTrench }, (_, index) => course(index));
  const lowest = flat.map((walls) => walls.reduce((least, wall) => Math.min(least, wall), Infinity));
  const coldest = lowest.indexOf(Math.min(...lowest));
  const coldestWall = lowest[coldest] ?? NaN;
  return {
    pipeWalls: Array.from({ length: trenches }, (_, trench) => flat.slice(trench * pipesPerTrench, (trench + 1) * pipesPerTrench)),
    walls: Float64Array.from(heat, (_, end) => flat.reduce((sum, walls) => sum + (walls[end] ?? NaN), 0) / flat.length),
    coldestWall: coldestWall as Temperature,
    coldestTrench: Math.floor(coldest / pipesPerTrench),
    coldestPipe: coldest % pipesPerTrench,
    coldestDay: (1 + ((1 + (flat[coldest]?.indexOf(coldestWall) ?? NaN)) * step) / DAY) as DayOfYear,
  };
}
