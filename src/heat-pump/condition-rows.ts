import { InputError } from '../errors/index.js';
import type { ConditionRating } from './condition-point.js';

/** Rating points of one load-side temperature at one flow, coldest first. */
export interface ConditionRow {
  readonly loadSide: number;
  readonly ratings: readonly ConditionRating[];
}

/** Rows of one flow, coldest load side first. */
export interface ConditionLayer {
  readonly flowRatio: number;
  readonly rows: readonly ConditionRow[];
}

/** The table of a unit, layer by layer, least flow first. */
export interface ConditionTable {
  readonly layers: readonly ConditionLayer[];
  /** Whether each row had flows of its own, so that flow could not be told from load side and was left out. */
  readonly flowsMixed: boolean;
}

/** Values closer than this are the same setting. */
const SAME = { enteringFluid: 0.1, loadSide: 0.1, flowRatio: 0.005 } as const;

/** Sorts rating points into layers of rows; refuses what is no table. */
export function conditionTable(list: string, ratings: readonly ConditionRating[]): ConditionTable {
  const layers = layersOf(ratings);
  const [first, ...others] = layers;
  if (first === undefined || others.length === 0 || layers.every((layer) => complete(layer) && alike(layer, first))) {
    layers.forEach(({ rows }) => demandRows(list, rows));
    return { layers, flowsMixed: false };
  }
  // No layer for each flow: where every condition was rated once, at whatever flow, flow cannot be an axis.
  const mixed = layersOf(ratings.map((rating) => ({ ...rating, flowRatio: 1 })));
  mixed.forEach(({ rows }) => demandRows(list, rows));
  return { layers: mixed, flowsMixed: true };
}

const layersOf = (ratings: readonly ConditionRating[]): readonly ConditionLayer[] =>
  grouped(ratings, 'flowRatio').map(({ setting, members }) => ({
    flowRatio: setting,
    rows: grouped(members, 'loadSide').map((row) => ({
      loadSide: row.setting,
      ratings: [...row.members].sort((a, b) => a.enteringFluid - b.enteringFluid),
    })),
  }));

function grouped(
  ratings: readonly ConditionRating[],
  of: 'flowRatio' | 'loadSide',
): readonly { readonly setting: number; readonly members: readonly ConditionRating[] }[] {
  const groups: { setting: number; members: ConditionRating[] }[] = [];
  for (const rating of [...ratings].sort((a, b) => a[of] - b[of])) {
    const last = groups.at(-1);
    if (last === undefined || rating[of] - last.setting >= SAME[of]) groups.push({ setting: rating[of], members: [rating] });
    else last.members.push(rating);
  }
  return groups;
}

const complete = ({ rows }: ConditionLayer): boolean => rows.every(({ ratings }) => ratings.length >= 2);
const alike = (layer: ConditionLayer, first: ConditionLayer): boolean =>
  layer.rows.length === first.rows.length &&
  layer.rows.every(({ loadSide }, k) => Math.abs(loadSide - (first.rows[k]?.loadSide ?? Infinity)) < SAME.loadSide);

function demandRows(list: string, rows: readonly ConditionRow[]): void {
  rows.forEach(({ ratings, loadSide }, k) => {
    demandApart(list, ratings);
    const [rating] = ratings;
    if (rating !== undefined && ratings.length < 2) {
      refuse(list, rating, 'loadSide', 'too-few', 'two entering fluid temperatures or more for each load-side temperature', HINT_FEW);
    }
    const below = rows[k - 1]?.ratings;
    if (below === undefined || rating === undefined) return;
    const apart = Math.max(first(ratings), first(below)) > Math.min(last(ratings), last(below)) - SAME.enteringFluid;
    if (apart)
      refuse(
        list,
        { ...rating, loadSide },
        'loadSide',
        'impossible',
        'a range of entering fluid that overlaps that of the next load-side temperature',
      );
  });
}

const HINT_FEW = 'leave out a load-side temperature that was rated at a single entering fluid, or ask the maker for another point';

const first = (ratings: readonly ConditionRating[]): number => ratings[0]?.enteringFluid ?? Number.NaN;
const last = (ratings: readonly ConditionRating[]): number => ratings.at(-1)?.enteringFluid ?? Number.NaN;

function demandApart(list: string, ratings: readonly ConditionRating[]): void {
  ratings.forEach((rating, k) => {
    if (rating.enteringFluid - (ratings[k - 1]?.enteringFluid ?? -Infinity) >= SAME.enteringFluid) return;
    const hint = 'state the load-side temperature or the flow ratio by which the two differ, or leave one out';
    refuse(list, rating, 'enteringFluid', 'impossible', 'one rating point for each condition, at least 0.1 K apart', hint);
  });
}

function refuse(
  list: string,
  rating: ConditionRating,
  field: 'enteringFluid' | 'loadSide',
  code: 'impossible' | 'too-few',
  allowed: string,
  hint?: string,
): never {
  const names = { 'supply water': 'supplyTemperature', 'entering air': 'enteringAir', 'not stated': 'enteringFluid' } as const;
  const name = field === 'loadSide' ? names[rating.side] : field;
  const value = name === 'enteringFluid' ? rating.enteringFluid : rating.loadSide;
  throw new InputError({ code, argument: `${list}.${String(rating.index)}.${name}`, value: { kind: 'temperature', value }, allowed, hint });
}
