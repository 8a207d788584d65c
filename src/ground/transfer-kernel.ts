import { realBesselK } from '../numerics/index.js';
import type { StepKernel, StepTreatment } from './step-kernel.js';

/**
 * The transfer function of heat sources, whose steps a {@link StepKernel} otherwise is: what heat that grows as exp(pt) does to a pipe wall. With a for
 * √(p/diffusivity) · distance it is 2K0(a) for a line and 2K0(a)/(a K1(a)) for a cylinder, the image subtracted below an isothermal surface and added
 * below a sealed one.
 *
 * @param rate - p/diffusivity [1/m2]
 * @param treatment - radius and surface; the pipe's own heat leaves a cylinder
 * @returns the kernel
 */
export function transferKernel(rate: number, { radius, sealed }: Omit<StepTreatment, 'selfTerm'>): StepKernel {
  const line = (square: number): number => 2 * realBesselK(Math.sqrt(square * rate)).k0;
  const mirrored = sealed ? line : (image: number) => -line(image);
  const wall = radius * Math.sqrt(rate);
  const { k0, k1 } = realBesselK(wall);
  const cylinder = (2 * k0) / (wall * k1);
  return { own: (image) => cylinder + mirrored(image), other: (axis, image) => line(axis) + mirrored(image) };
}
