import { cylinderWall, e1Difference, exponentialIntegral } from '../numerics/index.js';

/**
 * What heat sources do to a pipe wall, as rise · 4πk per heat per metre of pipe [1]: a source together with its mirror image above the surface.
 * Distances come squared, since only their squares are needed.
 */
export interface StepKernel {
  /** The pipe's own heat; squared distance to its own mirror image [m2]. */
  readonly own: (image: number) => number;
  /** Another pipe's heat; squared distances to its axis, to its mirror image, and what of both is sideways [m2]. */
  readonly other: (axis: number, image: number, across: number) => number;
}

/** How the pipe's own heat and the surface are treated. */
export interface StepTreatment {
  /** Outside radius of the pipe [m]. */
  readonly radius: number;
  /** As leaving a cylinder or a line. */
  readonly selfTerm: 'cylinder' | 'line';
  /** Whether no heat passes the surface, so that the mirror image has the sign of the pipe. */
  readonly sealed: boolean;
}

/**
 * The kernel of a step of heat, a time after it began: E1(r²/4αt) for a line, 4π G(αt/r², 1) for a cylinder, with the image subtracted below an
 * isothermal surface and added below a sealed one.
 *
 * @param spread - diffusivity · time, αt [m2]
 * @param treatment - of the pipe's own heat and the surface
 * @returns the kernel
 */
export function stepKernel(spread: number, { radius, selfTerm, sealed }: StepTreatment): StepKernel {
  const line = (square: number): number => exponentialIntegral(square / (4 * spread));
  const ownSquare = radius * radius;
  const other = sealed
    ? (axis: number, image: number): number => line(axis) + line(image)
    : (axis: number, image: number): number => e1Difference(axis / (4 * spread), image / (4 * spread));
  if (selfTerm === 'line') return { own: (image) => other(ownSquare, image), other };
  const cylinder = 4 * Math.PI * cylinderWall(spread / ownSquare);
  return { own: (image) => (sealed ? cylinder + line(image) : cylinder - line(image)), other };
}

/**
 * The kernel that a step of heat tends to below an isothermal surface: ln(r'²/r²), the same for cylinder and line.
 *
 * @param radius - outside radius of the pipe [m]
 * @returns the kernel
 */
export function steadyKernel(radius: number): StepKernel {
  const other = (axis: number, image: number): number => Math.log(image / axis);
  return { own: (image) => other(radius * radius, image), other };
}
