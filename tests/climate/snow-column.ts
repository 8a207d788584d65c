/** Ground below snow, stepped by itself; metres, days and kelvin. */
export interface SnowColumn {
  /** Conductivity [W/(m.K)]. */
  readonly conductivity: number;
  /** Diffusivity [m2/d]. */
  readonly diffusivity: number;
  /** Temperature on the snow at a time of the year, 0 to 1. */
  readonly outside: (share: number) => number;
  /** Resistance of the snow [m2.K/W], and whether it keeps the ground at 0 °C or below. */
  readonly snow: (share: number) => { readonly resistance: number; readonly closed: boolean };
  readonly start: number;
}

/** Height of a cell [m]; the column is 15 m deep and sealed below. */
const CELL = 0.06;
const CELLS = 250;
const STEPS_PER_YEAR = 13_140;
const YEARS = 25;

/** Surface temperatures of the last of many years by explicit finite volumes, at equal steps; knows nothing of harmonics. */
export function surfaceBelowSnow({ conductivity, diffusivity, outside, snow, start }: SnowColumn): Float64Array {
  const now = new Float64Array(CELLS).fill(start);
  const dt = 365 / STEPS_PER_YEAR;
  const r = (diffusivity * dt) / CELL ** 2;
  const half = CELL / 2 / conductivity;
  const surface = new Float64Array(STEPS_PER_YEAR);
  for (let step = 0; step < YEARS * STEPS_PER_YEAR; step += 1) {
    const share = ((step + 0.5) % STEPS_PER_YEAR) / STEPS_PER_YEAR;
    const { resistance, closed } = snow(share);
    const free = (outside(share) * half + (now[0] ?? 0) * resistance) / (half + resistance);
    const top = closed ? Math.min(0, free) : free;
    surface[step % STEPS_PER_YEAR] = top;
    // What comes into a cell less what leaves it, in units of r.
    let down = 2 * (top - (now[0] ?? 0));
    for (let i = 0; i < CELLS; i += 1) {
      const next = i === CELLS - 1 ? 0 : (now[i] ?? 0) - (now[i + 1] ?? 0);
      now[i] = (now[i] ?? 0) + r * (down - next);
      down = next;
    }
  }
  return surface;
}
