import { demand, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import { MONTH_DAYS } from '../states/index.js';
import type { Density, Length, Shape, SurfaceResistance } from '../units/index.js';
import { sturmSnowConductivity } from './sturm-snow-conductivity.js';

/** Snow on the ground in the middle of a month. */
export interface SnowMonth {
  /** Its depth, 0 to 5 [m]. */
  readonly depth: Length;
  /** Its density, 50 to 600; 250 when left out, settled snow [kg/m3]. */
  readonly density?: Density;
}

/** Shape of {@link SnowMonth}. */
export const snowMonthShape: Shape<SnowMonth> = { depth: 'length', density: { optional: 'density' } };

/** Snow that has settled, taken where the density is not known [kg/m3]. */
const SETTLED = 250 as Density;

/** From this depth on snow lies everywhere and its base is wet or frozen [m]. */
export const CLOSED = 0.05;

/** Beyond this no heat to speak of passes, and a response has no film for it [m2.K/W]. */
const MOST = 9.9;

/** The snow on the ground at one time. */
export interface Snow {
  /** Its resistance [m2.K/W]. */
  readonly resistance: number;
  /** Whether it lies everywhere. */
  readonly closed: boolean;
}

/** Resistance of the snow of each month; refuses snow that cannot be. */
export function snowResistances(snow: readonly SnowMonth[]): readonly SurfaceResistance[] {
  demandCount('snow', snow, 12, 12);
  return snow.map((month, place) =>
    locate(`snow.${String(place)}`, () => {
      demandObject('', month);
      const { depth, density = SETTLED } = month;
      demand('depth', 'length', depth, { atLeast: 0, atMost: 5 }, 'metres of snow');
      const resistance = depth / sturmSnowConductivity({ density });
      if (resistance <= MOST) return resistance as SurfaceResistance;
      const value = { kind: 'surface resistance', value: resistance } as const;
      throw new InputError({
        code: 'impossible',
        argument: 'depth',
        value,
        allowed: `at most ${String(MOST)} m2.K/W of snow`,
        hint: 'so deep a snow is denser',
      });
    }),
  );
}

/** Middles of the months, days after 1 January 00:00. */
export function monthMiddles(): readonly number[] {
  let end = 0;
  return MONTH_DAYS.map((days) => (end += days) - days / 2);
}

/** The snow at equal steps of the year, in the middle of each; between the middles of the months it changes evenly. */
export function snowThroughYear(snow: readonly SnowMonth[], resistances: readonly number[], steps: number): readonly Snow[] {
  const middles = monthMiddles();
  const end = 365;
  return Array.from({ length: steps }, (_, step) => {
    const day = ((step + 0.5) * end) / steps;
    const next = middles.findIndex((middle) => middle > day);
    const after = next < 0 ? 0 : next;
    const before = (after + 11) % 12;
    const [from = 0, to = 0] = [middles[before], middles[after]];
    const share = ((day - from + end) % end) / ((to - from + end) % end);
    const between = (of: (month: number) => number): number => of(before) + share * (of(after) - of(before));
    return { resistance: between((month) => resistances[month] ?? 0), closed: between((month) => snow[month]?.depth ?? 0) >= CLOSED };
  });
}
