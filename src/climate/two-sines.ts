/** One sine about the mean, mean − amplitude · cos: amplitude and when it is lowest, as a share of the year from 1 January on. */
export interface SineOfYear {
  readonly amplitude: number;
  readonly coldest: number;
}

/** The mean and the first two sines of values at equal steps of a year. */
export interface Sines {
  readonly mean: number;
  readonly first: SineOfYear;
  readonly second: SineOfYear;
  /** Root mean square of what is left over. */
  readonly remainder: number;
}

/** The mean and the first two sines of values in the middle of equal steps of a year. */
export function sinesOf(values: readonly number[]): Sines {
  const steps = values.length;
  const angle = (step: number): number => (2 * Math.PI * (step + 0.5)) / steps;
  const sum = (of: (value: number, step: number) => number): number => values.reduce((all, value, step) => all + of(value, step), 0);
  const sine = (n: 1 | 2): SineOfYear => {
    const cosine = (2 / steps) * sum((value, step) => value * Math.cos(n * angle(step)));
    const crossed = (2 / steps) * sum((value, step) => value * Math.sin(n * angle(step)));
    return { amplitude: Math.hypot(cosine, crossed), coldest: Math.atan2(-crossed, -cosine) / (2 * Math.PI * n) };
  };
  const mean = sum((value) => value) / steps;
  const [first, second] = [sine(1), sine(2)];
  const left = sum((value, step) => {
    const lowered = first.amplitude * Math.cos(angle(step) - 2 * Math.PI * first.coldest);
    return (value - mean + lowered + second.amplitude * Math.cos(2 * (angle(step) - 2 * Math.PI * second.coldest))) ** 2;
  });
  return { mean, first, second, remainder: Math.sqrt(left / steps) };
}
