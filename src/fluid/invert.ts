/**
 * Finds where an increasing function reaches a value, by halving until two neighbouring doubles remain.
 *
 * @param increasing - the function
 * @param target - the value, between those at the two ends
 * @param low - lower end
 * @param high - upper end
 * @returns the least double found at which the function is no less than the target
 */
export function invertIncreasing(increasing: (x: number) => number, target: number, low: number, high: number): number {
  let [below, reached] = [low, high];
  for (let middle = (low + high) / 2; below < middle && middle < reached; middle = (below + reached) / 2) {
    if (increasing(middle) < target) below = middle;
    else reached = middle;
  }
  return increasing(below) < target ? reached : below;
}
