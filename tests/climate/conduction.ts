/** What a column of ground is stepped with; metres, days and kelvin. */
export interface Column {
  /** Diffusivity [m2/d]. */
  readonly diffusivity: number;
  /** Temperature above the ground at a time in days. */
  readonly outside: (time: number) => number;
  /** Conductivity over coefficient of the film [m]; 0 where the surface takes the temperature outside. */
  readonly film: number;
  readonly start: number;
  readonly time: { readonly from: number; readonly to: number; readonly step: number };
}

/** Distance of the nodes [m]; the column is 24 m deep and sealed below. */
export const SPACING = 0.05;
const NODES = 480;

/**
 * Heat conduction in a column of ground by finite volumes in space and the trapezoidal rule in time (Crank and Nicolson); knows nothing of waves.
 * Node i lies at i · SPACING; returns the temperatures by node at each whole day.
 */
export function conduct({ diffusivity, outside, film, start, time }: Column): ReadonlyMap<number, Float64Array> {
  const days = new Map<number, Float64Array>();
  const now = new Float64Array(NODES).fill(start);
  const r = (diffusivity * time.step) / (2 * SPACING ** 2);
  // The surface node holds half a cell; the film couples it to the outside.
  const coupling = film === 0 ? 0 : (2 * r * SPACING) / film;
  if (film === 0) now[0] = outside(time.from);
  const [factor, right] = [new Float64Array(NODES), new Float64Array(NODES)];
  const steps = Math.round((time.to - time.from) / time.step);
  for (let step = 1; step <= steps; step += 1) {
    const [before, after] = [outside(time.from + (step - 1) * time.step), outside(time.from + step * time.step)];
    const t = (i: number): number => now[i] ?? 0;
    // Forward sweep of the three-diagonal system.
    const [diagonal, upper] = film === 0 ? [1, 0] : [1 + 2 * r + coupling, -2 * r];
    const first = film === 0 ? after : t(0) + 2 * r * (t(1) - t(0)) + coupling * (before - t(0)) + coupling * after;
    factor[0] = upper / diagonal;
    right[0] = first / diagonal;
    for (let i = 1; i < NODES; i += 1) {
      const last = i === NODES - 1;
      const lower = last ? -2 * r : -r;
      const flow = last ? 2 * r * (t(i - 1) - t(i)) : r * (t(i - 1) - 2 * t(i) + t(i + 1));
      const pivot = 1 + 2 * r - lower * (factor[i - 1] ?? 0);
      factor[i] = (last ? 0 : -r) / pivot;
      right[i] = (t(i) + flow - lower * (right[i - 1] ?? 0)) / pivot;
    }
    for (let i = NODES - 1; i >= 0; i -= 1) now[i] = (right[i] ?? 0) - (i === NODES - 1 ? 0 : (factor[i] ?? 0) * t(i + 1));
    const day = time.from + step * time.step;
    if (Math.abs(day - Math.round(day)) < time.step / 4) days.set(Math.round(day), Float64Array.from(now));
  }
  return days;
}
