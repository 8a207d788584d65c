/** Values that follow one another, as places in their list; may run over the end and on from the start. */
export interface Run {
  /** Sum of the values. */
  readonly sum: number;
  /** First place. */
  readonly from: number;
  /** How many. */
  readonly count: number;
}

/**
 * The run of successive values with the largest sum, the way of a cumulative curve from its low to its high; empty where no sum is above nothing.
 *
 * @param values - what is added up
 * @param joined - whether the first value follows on the last
 */
export function largestRun(values: readonly number[], joined: boolean): Run {
  const inside = straightRun(values, 1);
  if (!joined) return inside;
  // A run over the end is all there is but the run in between that takes away most.
  const between = straightRun(values, -1);
  const sum = values.reduce((all, value) => all + value, 0) + between.sum;
  if (sum <= inside.sum) return inside;
  return { sum, from: (between.from + between.count) % values.length, count: values.length - between.count };
}

/** The run that adds most of the values taken with this sign. */
function straightRun(values: readonly number[], sign: 1 | -1): Run {
  let [best, sum, from] = [{ sum: 0, from: 0, count: 0 }, 0, 0];
  for (const [place, value] of values.entries()) {
    sum += sign * value;
    if (sum > best.sum) best = { sum, from, count: place + 1 - from };
    if (sum > 0) continue;
    [sum, from] = [0, place + 1];
  }
  return best;
}
