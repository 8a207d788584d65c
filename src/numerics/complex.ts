/** A complex number. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

/** Product of two complex numbers. */
export function times(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re };
}

/** Quotient of two complex numbers. */
export function over(a: Complex, b: Complex): Complex {
  const square = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square };
}

/** Exponential of a complex number. */
export function exponential(a: Complex): Complex {
  const size = Math.exp(a.re);
  return { re: size * Math.cos(a.im), im: size * Math.sin(a.im) };
}

/** Square root with its real part not negative. */
export function root(a: Complex): Complex {
  const size = Math.sqrt(Math.hypot(a.re, a.im));
  const angle = Math.atan2(a.im, a.re) / 2;
  return { re: size * Math.cos(angle), im: size * Math.sin(angle) };
}
