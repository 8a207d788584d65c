import { InputError } from '../errors/index.js';
import type { ConditionTable } from './condition-rows.js';
import type { QuantitySurface } from './unit-surface.js';

/** A table with its two surfaces. */
export interface UnitSurfaces {
  readonly mode: 'heating' | 'cooling';
  readonly table: ConditionTable;
  readonly capacity: QuantitySurface;
  readonly power: QuantitySurface;
}

/** Beyond this the continuation has levelled off: 2 K beyond the points and the one in which it levels [K]. */
const FARTHEST = 3;

/**
 * Refuses a table so uneven that somewhere the unit would have no capacity, no electric input or no heat from the ground.
 *
 * Between the points it is certain: every curve is monotone between neighbouring entering fluids, and what lies between rows and layers lies between their values, so
 * that the corners of each cell bound it. Beyond the first and the last load-side temperature it is looked at where the entering fluids of the table lie and between them.
 */
export function demandBelievableTable(list: string, { mode, table, capacity, power }: UnitSurfaces): void {
  const entering = knotsOf(table.layers.flatMap(({ rows }) => rows.flatMap(({ ratings }) => ratings.map(({ enteringFluid }) => enteringFluid))));
  const sides = knotsOf(table.layers.flatMap(({ rows }) => rows.map(({ loadSide }) => loadSide)));
  const flows = table.layers.map(({ flowRatio }) => flowRatio);
  const farthest = [(entering[0] ?? 0) - FARTHEST, ...entering, (entering.at(-1) ?? 0) + FARTHEST];
  const bad = (places: readonly number[], loadSides: readonly number[], ratios: readonly number[]): boolean => {
    const corners = places.flatMap((place) => loadSides.flatMap((side) => ratios.map((ratio) => [place, side, ratio] as const)));
    const least = Math.min(...corners.map((corner) => capacity(...corner).value));
    const powers = corners.map((corner) => power(...corner).value);
    const floor = mode === 'heating' ? Math.max(...powers) : 0;
    return !(Math.min(...powers) > 0 && least > floor);
  };
  for (const places of pairs(farthest)) {
    const middle = places.reduce((total, place) => total + place, 0) / places.length;
    for (const ratios of pairs(flows)) {
      for (const loadSides of pairs(sides)) if (bad(places, loadSides, ratios)) refuse(list, table, middle, loadSides[0] ?? 0);
      if (sides.length < 2) continue;
      for (const side of [(sides[0] ?? 0) - FARTHEST, (sides.at(-1) ?? 0) + FARTHEST]) {
        for (const place of [...places, middle]) for (const ratio of ratios) if (bad([place], [side], [ratio])) refuse(list, table, place, side);
      }
    }
  }
}

const knotsOf = (values: readonly number[]): readonly number[] => [...new Set(values)].sort((a, b) => a - b);

/** Each two neighbours; the one value of a list of one. */
const pairs = (values: readonly number[]): readonly (readonly number[])[] =>
  values.length < 2 ? [values] : values.slice(1).map((value, k) => [values[k] ?? value, value]);

function refuse(list: string, { layers }: ConditionTable, place: number, side: number): never {
  const ratings = layers.flatMap(({ rows }) => rows.flatMap((row) => row.ratings));
  const distance = (rating: (typeof ratings)[number]): number => Math.hypot(rating.enteringFluid - place, rating.loadSide - side);
  const nearest = ratings.reduce((best, each) => (distance(each) < distance(best) ? each : best));
  throw new InputError({
    code: 'impossible',
    argument: `${list}.${String(nearest.index)}.capacity`,
    value: { kind: 'power', value: nearest.capacity },
    allowed: 'a capacity above the electric input here and at every neighbouring point, leading to nothing nowhere within 3 K',
    hint: 'capacity and power may be interchanged, in different units, or of different units',
  });
}
