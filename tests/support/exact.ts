/** An exact fraction; the denominator is above 0. */
export interface Rational {
  readonly over: bigint;
  readonly under: bigint;
}

/** The exact value of a decimal text such as `-459.67`. */
export function ofDecimal(text: string): Rational {
  const match = /^(-?)(\d+)(?:\.(\d+))?$/u.exec(text);
  if (match === null) throw new Error(`${text} is no plain decimal`);
  const [, sign = '', whole = '', broken = ''] = match;
  return { over: BigInt(`${whole}${broken}`) * (sign === '-' ? -1n : 1n), under: 10n ** BigInt(broken.length) };
}

/** The exact value of a finite double. */
export function ofDouble(x: number): Rational {
  const bits = new DataView(new ArrayBuffer(8));
  bits.setFloat64(0, x);
  const word = bits.getBigUint64(0);
  const exponent = Number((word >> 52n) & 0x7ffn);
  if (exponent === 0x7ff) throw new Error(`${String(x)} is not finite`);
  const fraction = word & 0xfffffffffffffn;
  const mantissa = (exponent === 0 ? fraction : fraction | 0x10000000000000n) * (x < 0 ? -1n : 1n);
  const power = BigInt(Math.max(exponent, 1) - 1075);
  return power >= 0n ? { over: mantissa << power, under: 1n } : { over: mantissa, under: 1n << -power };
}

export const plus = (a: Rational, b: Rational): Rational => ({ over: a.over * b.under + b.over * a.under, under: a.under * b.under });
export const minus = (a: Rational, b: Rational): Rational => plus(a, { over: -b.over, under: b.under });
export const times = (a: Rational, b: Rational): Rational => ({ over: a.over * b.over, under: a.under * b.under });
export const divided = (a: Rational, b: Rational): Rational =>
  b.over < 0n ? { over: -a.over * b.under, under: -a.under * b.over } : { over: a.over * b.under, under: a.under * b.over };

/** A fraction as a double, good to some sixty bits: for saying how large something is, not for comparing. */
export function toDouble({ over, under }: Rational): number {
  if (over === 0n) return 0;
  const size = (n: bigint): number => n.toString(2).length;
  const shift = size(under) - size(over < 0n ? -over : over) + 64;
  const quotient = shift >= 0 ? (over << BigInt(shift)) / under : over / (under << BigInt(-shift));
  return Number(quotient) * 2 ** -shift;
}

/** One unit in the last place of a double. */
export function ulp(x: number): number {
  const exponent = Math.floor(Math.log2(Math.abs(x)));
  const at = 2 ** (exponent - 52);
  return Number.isFinite(exponent) ? (2 ** exponent > Math.abs(x) ? at / 2 : at) : Number.MIN_VALUE;
}
