import { lineEnds, lineInTheEnd } from './line-ends.js';
import { type StepKernel, stepKernel, type StepTreatment } from './step-kernel.js';

/** {@link stepKernel} for pipes of a length, their ends abreast: what the ends take off is subtracted for pipe and mirror image alike. */
export function finiteKernel(spread: number, treatment: StepTreatment, length: number): StepKernel {
  const endless = stepKernel(spread, treatment);
  const ends = (square: number): number => lineEnds(square, spread, length);
  const off = treatment.sealed
    ? (axis: number, image: number): number => ends(axis) + ends(image)
    : (axis: number, image: number): number => ends(axis) - ends(image);
  const ownSquare = treatment.radius * treatment.radius;
  return {
    own: (image) => endless.own(image) - off(ownSquare, image),
    other: (axis, image, across) => endless.other(axis, image, across) - off(axis, image),
  };
}

/** What {@link finiteKernel} tends to below an isothermal surface. */
export function finiteSteadyKernel(radius: number, length: number): StepKernel {
  const other = (axis: number, image: number): number => lineInTheEnd(axis, length) - lineInTheEnd(image, length);
  return { own: (image) => other(radius * radius, image), other };
}
