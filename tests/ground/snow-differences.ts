const YEAR = 31_536_000;
const STEPS_PER_MONTH = 320;
const YEARS = 6;
/** Width of the cells [m]. */
const CELL = 0.15;
const [ACROSS, DOWN] = [66, 80];

/** One pipe below a surface whose resistance changes, by explicit finite differences in half of a field 20 m wide and 12 m deep. */
export interface SnowDifferences {
  readonly conductivity: number;
  readonly diffusivity: number;
  /** Row of cells that the pipe lies in the middle of. */
  readonly row: number;
  /** Heat by month [W/m]. */
  readonly heat: readonly number[];
  /** Resistance between the air and the surface in the middle of each month, changing evenly between [m2.K/W]. */
  readonly resistances: readonly number[];
}

/** Depth of the pipe [m]. */
export const depthOf = (row: number): number => (row + 0.5) * CELL;

/** Change of the cell that the pipe heats, at the end of each month of the sixth year [K]; its level is that of the cell, so that only differences between surfaces tell. */
export function snowDifferences({ conductivity, diffusivity, row, heat, resistances }: SnowDifferences): readonly number[] {
  const step = YEAR / 12 / STEPS_PER_MONTH;
  const number = (diffusivity * step) / CELL ** 2;
  const capacity = conductivity / diffusivity;
  let now = new Float64Array(ACROSS * DOWN);
  let next = new Float64Array(ACROSS * DOWN);
  const ends: number[] = [];
  for (let count = 0; count < YEARS * 12 * STEPS_PER_MONTH; count += 1) {
    const month = Math.floor(count / STEPS_PER_MONTH) % 12;
    const place = ((count + 0.5) / STEPS_PER_MONTH - 0.5 + 12) % 12;
    const before = Math.floor(place);
    const resistance = (resistances[before] ?? 0) * (before + 1 - place) + (resistances[(before + 1) % 12] ?? 0) * (place - before);
    // From the middle of the first cell to the air, over what lies between two cells.
    const outwards = CELL / conductivity / (resistance + CELL / 2 / conductivity);
    for (let z = 0; z < DOWN; z += 1)
      for (let x = 0; x < ACROSS; x += 1) {
        const at = z * ACROSS + x;
        const here = now[at] ?? 0;
        const left = x === 0 ? (now[at + 1] ?? 0) : (now[at - 1] ?? 0);
        const right = x === ACROSS - 1 ? here : (now[at + 1] ?? 0);
        const up = z === 0 ? -outwards * here : (now[at - ACROSS] ?? 0) - here;
        const down = z === DOWN - 1 ? 0 : (now[at + ACROSS] ?? 0) - here;
        next[at] = here + number * (left + right - 2 * here + up + down);
      }
    const pipe = row * ACROSS;
    next[pipe] = (next[pipe] ?? 0) + ((heat[month] ?? 0) * step) / (capacity * CELL ** 2);
    [now, next] = [next, now];
    if ((count + 1) % STEPS_PER_MONTH === 0) ends.push(now[pipe] ?? 0);
  }
  return ends.slice(-12);
}
