/** A course of complex numbers, as many as a power of two. */
export interface Complex {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** A course of real numbers, with zeros after it up to a size that is a power of two. */
export function padded(course: Float64Array, size: number): Complex {
  const re = new Float64Array(size);
  re.set(course);
  return { re, im: new Float64Array(size) };
}

/** Discrete Fourier transform in place, after Cooley and Tukey: Σ x(j) · e^(−2πi·jk/n), or with a plus sign and without 1/n on the way back. */
export function fourier({ re, im }: Complex, way: 'there' | 'back' = 'there'): void {
  const size = re.length;
  if (!Number.isInteger(Math.log2(size)) || im.length !== size) throw new Error('the size is no power of two');
  const at = (list: Float64Array, index: number): number => list[index] ?? Number.NaN;
  for (let here = 1, there = 0; here < size; here += 1) {
    let bit = size >> 1;
    for (; (there & bit) !== 0; bit >>= 1) there ^= bit;
    there ^= bit;
    if (here < there) {
      [re[here], re[there]] = [at(re, there), at(re, here)];
      [im[here], im[there]] = [at(im, there), at(im, here)];
    }
  }
  const sign = way === 'there' ? -1 : 1;
  const angle = (step: number): number => (sign * 2 * Math.PI * step) / size;
  const cosines = Float64Array.from({ length: size / 2 }, (_, step) => Math.cos(angle(step)));
  const sines = Float64Array.from({ length: size / 2 }, (_, step) => Math.sin(angle(step)));
  for (let half = 1; half < size; half *= 2) {
    const stride = size / (2 * half);
    for (let start = 0; start < size; start += 2 * half) {
      for (let step = 0; step < half; step += 1) {
        const [low, high] = [start + step, start + step + half];
        const [c, s] = [at(cosines, step * stride), at(sines, step * stride)];
        const real = at(re, high) * c - at(im, high) * s;
        const imaginary = at(re, high) * s + at(im, high) * c;
        re[high] = at(re, low) - real;
        im[high] = at(im, low) - imaginary;
        re[low] = at(re, low) + real;
        im[low] = at(im, low) + imaginary;
      }
    }
  }
}
