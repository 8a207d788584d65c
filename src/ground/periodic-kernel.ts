import { demand } from '../errors/index.js';
import { besselK, type Complex, over, times } from '../numerics/index.js';
import type { SoilThermal } from '../states/index.js';
import type { Time } from '../units/index.js';
import { filmImages } from './film-image.js';
import type { PairGroup } from './pairs.js';
import type { StepTreatment } from './step-kernel.js';

/** What a source that swings as a sine does to a wall, as swing · 2πk per swing of the heat per metre [1], by the squared distances of the two. */
export type PeriodicKernel = (distances: Omit<PairGroup, 'weight'>) => Complex;

/** Refuses a period out of range, or too short for a pipe that is a line. */
export function demandPeriod(period: Time, { selfTerm, radius }: StepTreatment, { diffusivity }: SoilThermal): void {
  demand('period', 'time', period, { atLeast: 60, atMost: 1e12 });
  if (selfTerm === 'cylinder') return;
  const atLeast = (4 * Math.PI * radius * radius) / diffusivity;
  demand('period', 'time', period, { atLeast }, 'for a line the pipe must be thin against the depth that the wave reaches');
}

/**
 * K0(σr) for a line and K0(σr)/(σr K1(σr)) for a cylinder, σ = √(iω/α), with the image added below a sealed surface and else subtracted; below a film with
 * twice the mean of the places that {@link filmImages} spreads it to.
 *
 * @param perPeriod - period · diffusivity [m2]
 * @param treatment - of the pipe's own heat and the surface
 * @param added - conductivity over coefficient of a film [m]; none, and not sealed, for an isothermal surface
 */
export function periodicKernel(perPeriod: number, { radius, selfTerm, sealed }: StepTreatment, added = 0): PeriodicKernel {
  // √(iω/α) lies halfway between the axes: both its parts are √(ω/2α)
  const part = Math.sqrt(Math.PI / perPeriod);
  const line = (square: number): Complex => {
    const distance = part * Math.sqrt(square);
    return besselK({ re: distance, im: distance }).k0;
  };
  const rim = { re: part * radius, im: part * radius };
  const own = selfTerm === 'line' ? line(radius * radius) : over(besselK(rim).k0, times(rim, besselK(rim).k1));
  const placesOf = filmImages(added);
  return ({ axis, image, across }) => {
    const direct = axis === 0 ? own : line(axis);
    const mirrored = line(image);
    const sign = sealed || added > 0 ? 1 : -1;
    let re = direct.re + sign * mirrored.re;
    let im = direct.im + sign * mirrored.im;
    if (added > 0)
      for (const { square, weight } of placesOf(image, across)) {
        const lifted = line(square);
        re -= 2 * weight * lifted.re;
        im -= 2 * weight * lifted.im;
      }
    return { re, im };
  };
}
