import { e1Difference } from '../numerics/index.js';
import { filmImages } from './film-image.js';
import type { StepKernels } from './response-of-pipes.js';
import { steadyKernel, stepKernel, type StepKernel, type StepTreatment } from './step-kernel.js';

/**
 * The kernels of a surface with a film, exact for a line: what an isothermal surface leaves, and twice the mean of what is missed by holding the heat of the image
 * down to the image, E1(image) − E1(places above it). Every term is positive, so that a film never comes out below an isothermal surface.
 *
 * @param treatment - of the pipe's own heat; not sealed
 * @param added - conductivity over coefficient [m]
 */
export function filmKernels(treatment: StepTreatment, added: number): StepKernels {
  const placesOf = filmImages(added);
  const missed = (image: number, across: number, between: (near: number, far: number) => number): number =>
    placesOf(image, across).reduce((sum, { square, weight }) => sum + 2 * weight * between(image, square), 0);
  const above = (bare: StepKernel, between: (near: number, far: number) => number): StepKernel => ({
    own: (image) => bare.own(image) + missed(image, 0, between),
    other: (axis, image, across) => bare.other(axis, image, across) + missed(image, across, between),
  });
  return {
    after: (spread) => above(stepKernel(spread, treatment), (near, far) => e1Difference(near / (4 * spread), far / (4 * spread))),
    steady: above(steadyKernel(treatment.radius), (near, far) => Math.log(far / near)),
  };
}
