import type { GroundResponse } from '../../../src/ground/index.js';
import { seconds, type Time } from '../../../src/units/index.js';
import { type Complex, fourier, padded } from './fourier.js';

const at = (list: ArrayLike<number>, index: number): number => list[index] ?? Number.NaN;

/**
 * Wall change at the end of each step [K] for a course of heat [W/m], constant within a step, by full convolution with the increments of the step
 * response; `rises[k]` is the response k + 1 steps after its heat began [m.K/W].
 */
export function convolve(heat: Float64Array, rises: Float64Array): Float64Array {
  const size = 2 ** Math.ceil(Math.log2(2 * heat.length));
  const first = padded(heat, size);
  const second = padded(
    rises.map((rise, k) => (k === 0 ? rise : rise - at(rises, k - 1))),
    size,
  );
  fourier(first);
  fourier(second);
  const product: Complex = {
    re: first.re.map((re, k) => re * at(second.re, k) - at(first.im, k) * at(second.im, k)),
    im: first.re.map((re, k) => re * at(second.im, k) + at(first.im, k) * at(second.re, k)),
  };
  fourier(product, 'back');
  return product.re.subarray(0, heat.length).map((each) => each / size);
}

const NODES_PER_DECADE = 60;

/**
 * A step response at the ends of `count` steps [m.K/W], read at nodes evenly spaced in the logarithm of time and put between them by
 * the cubic through the four nodes around, since reading it at every step would take minutes.
 */
export function exactRises({ riseAfter }: Pick<GroundResponse, 'riseAfter'>, step: Time, count: number): Float64Array {
  const spacing = Math.LN10 / NODES_PER_DECADE;
  const intervals = Math.ceil(Math.log(count) / spacing);
  // One node before the first step and two after the last, so that the cubic always has two on either side.
  const nodes = Array.from({ length: intervals + 4 }, (_, node) => riseAfter(seconds(step * Math.exp((node - 1) * spacing))));
  return Float64Array.from({ length: count }, (_, index) => {
    const place = Math.log(index + 1) / spacing;
    const left = Math.floor(place);
    const t = place - left;
    const [a, b, c, d] = [at(nodes, left), at(nodes, left + 1), at(nodes, left + 2), at(nodes, left + 3)];
    return (
      (-t * (t - 1) * (t - 2) * a) / 6 + ((t + 1) * (t - 1) * (t - 2) * b) / 2 - ((t + 1) * t * (t - 2) * c) / 2 + ((t + 1) * t * (t - 1) * d) / 6
    );
  });
}
