import { demand } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { Conductivity, Diameter, Length, PipeResistance, Shape } from '../units/index.js';
import { MOST_DEPTH } from './arrange.js';
import { demandConductivity, demandOutsideDiameter } from './demand-ground.js';

/** A straight pipe below an isothermal surface. */
export interface SinglePipe {
  /** Depth of the pipe axis [m]. */
  readonly depth: Length;
  /** Outside diameter of the pipe [m]. */
  readonly outsideDiameter: Diameter;
  /** Conductivity of the soil [W/(m.K)]. */
  readonly conductivity: Conductivity;
}

/** Parallel pipes at one depth, the row endless to both sides. */
export interface PipeRow extends SinglePipe {
  /** Distance between neighbouring axes [m]. */
  readonly spacing: Length;
}

/** Shape of {@link SinglePipe}. */
export const singlePipeShape: Shape<SinglePipe> = { depth: 'length', outsideDiameter: 'diameter', conductivity: 'conductivity' };

/** Shape of {@link PipeRow}. */
export const pipeRowShape: Shape<PipeRow> = /* @__PURE__ */ joinedShape(singlePipeShape, { spacing: 'length' });

/**
 * Steady resistance of the soil between one pipe and an isothermal surface, per metre of pipe: arccosh(d/r) / 2πk.
 *
 * Exact for a pipe wall of one temperature and a depth above the radius; the logarithm ln(2d/r) of the line source is 0.1 % above it at 10 radii.
 *
 * @param input - depth [m], outside diameter [m], conductivity [W/(m.K)]
 * @returns resistance [m.K/W]
 * @throws InputError when a number is out of its range or the pipe sticks out of the ground
 * @remarks Source: shape factors of Incropera and DeWitt, table 4.1 (`shapeFactors`); checked against finite elements within 0.002 %.
 * @example
 * ```ts @import.meta.vitest
 * const { metres, diameterMillimetres, wattsPerMetreKelvin } = await import('../units/index.js');
 * const pipe = { depth: metres(1.5), outsideDiameter: diameterMillimetres(40), conductivity: wattsPerMetreKelvin(1) };
 * expect(1 / singlePipeResistance(pipe)).toBeCloseTo(1.25398, 5);
 * ```
 */
export function singlePipeResistance({ depth, outsideDiameter, conductivity }: SinglePipe): PipeResistance {
  demandPipe({ depth, outsideDiameter, conductivity });
  return (Math.acosh((2 * depth) / outsideDiameter) / (2 * Math.PI * conductivity)) as PipeResistance;
}

/**
 * Steady resistance of the soil between each pipe of an endless row and an isothermal surface, per metre of pipe:
 * ln[(w / πr) sinh(2πd / w)] / 2πk.
 *
 * The pipes act as lines: they lie several diameters apart and below the surface. It is what many parallel trenches tend to.
 *
 * @param input - depth [m], spacing [m], outside diameter [m], conductivity [W/(m.K)]
 * @returns resistance [m.K/W]
 * @throws InputError when a number is out of its range, the pipes stick out of the ground or overlap
 * @remarks Source: heat-transfer tables (`cengelShapeFactors`); checked against the sum over 400 001 mirror images.
 * @example
 * ```ts @import.meta.vitest
 * const { metres, diameterMillimetres, wattsPerMetreKelvin } = await import('../units/index.js');
 * const pipe = { depth: metres(1), outsideDiameter: diameterMillimetres(32), conductivity: wattsPerMetreKelvin(1) };
 * expect(pipeRowResistance({ ...pipe, spacing: metres(0.8) })).toBeCloseTo(1.58011, 5);
 * ```
 */
export function pipeRowResistance({ depth, outsideDiameter, conductivity, spacing }: PipeRow): PipeResistance {
  demandPipe({ depth, outsideDiameter, conductivity });
  demand('spacing', 'length', spacing, { atLeast: outsideDiameter, atMost: 1000 }, 'the pipes would overlap');
  const waves = (2 * Math.PI * depth) / spacing;
  // ln sinh x = x + ln(1 − e^(−2x)) − ln 2, which does not overflow
  const logSinh = waves + Math.log(-Math.expm1(-2 * waves) / 2);
  return ((Math.log((2 * spacing) / (Math.PI * outsideDiameter)) + logSinh) / (2 * Math.PI * conductivity)) as PipeResistance;
}

function demandPipe({ depth, outsideDiameter, conductivity }: SinglePipe): void {
  demandOutsideDiameter('outsideDiameter', outsideDiameter);
  demand('depth', 'length', depth, { above: outsideDiameter / 2, atMost: MOST_DEPTH }, 'the pipe would stick out of the ground');
  demandConductivity('conductivity', conductivity);
}
