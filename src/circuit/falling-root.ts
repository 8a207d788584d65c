/**
 * Where a falling function that is above 0 at the left end and not above it at the right passes 0; the right end where it does not come down so far.
 *
 * Regula falsi; an end that stays put twice counts half (the Illinois rule), so that kinks and bends cannot stall it.
 */
export function fallingRoot(valueAt: (x: number) => number, left: number, right: number): number {
  let [low, high] = [left, right];
  let [above, below] = [valueAt(low), valueAt(high)];
  const close = 1e-14 * Math.max(Math.abs(left), Math.abs(right));
  const nothing = 1e-15 * Math.max(above, -below);
  if (below >= 0) return high;
  let moved: 'low' | 'high' | undefined;
  for (let steps = 0; steps < 200 && high - low > close; steps += 1) {
    const x = Math.min(low + ((high - low) * above) / (above - below), high);
    const value = valueAt(x);
    if (Math.abs(value) <= nothing) return x;
    if (value > 0) {
      [low, above] = [x, value];
      if (moved === 'low') below /= 2;
      moved = 'low';
    } else {
      [high, below] = [x, value];
      if (moved === 'high') above /= 2;
      moved = 'high';
    }
  }
  return (low + high) / 2;
}
