import type { ConditionLayer, ConditionRow, ConditionTable } from './condition-rows.js';
import { levelled } from './levelled.js';
import { type MonotoneCubic, monotoneCubic } from './monotone-cubic.js';
import { acrossMembers, type AcrossReading, type Reading } from './stacked.js';
import { EXTRAPOLATED } from './unit-curves.js';

/** Entering fluids from the lowest to the highest, as plain numbers. */
export interface Span {
  readonly lowest: number;
  readonly highest: number;
}

/** One quantity of the unit over all conditions; `across` is its change with the flow ratio. */
export type QuantitySurface = (entering: number, loadSide: number, flowRatio: number) => AcrossReading;

/** Which of the two a surface is of. */
type Quantity = 'capacity' | 'power';

/** A quantity over all conditions, continued beyond the table and levelling off there. */
export function quantitySurface({ layers }: ConditionTable, quantity: Quantity): QuantitySurface {
  const flows = layers.map(({ flowRatio }) => flowRatio);
  const surfaces = layers.map((layer) => layerSurface(layer, quantity));
  return (entering, loadSide, flowRatio) => acrossMembers(flows, (k) => (surfaces[k] ?? NOWHERE)(entering, loadSide), flowRatio);
}

const NOWHERE = (): Reading => ({ value: Number.NaN, byEntering: Number.NaN, byLoadSide: Number.NaN });

function layerSurface({ rows }: ConditionLayer, quantity: Quantity): (entering: number, loadSide: number) => Reading {
  const sides = rows.map(({ loadSide }) => loadSide);
  const [coldest, warmest] = [sides[0] ?? Number.NaN, sides.at(-1) ?? Number.NaN];
  const curves = rows.map(({ ratings }) =>
    monotoneCubic(
      ratings.map(({ enteringFluid }) => enteringFluid),
      ratings.map((rating) => rating[quantity]),
    ),
  );
  const reaches = rows.map((_, k) => reachOf(rows, k));
  return (entering, loadSide) => {
    const { place, fading } = levelled(loadSide, coldest, warmest);
    const reading = acrossMembers(sides, (k) => rowReading(curves[k], reaches[k], entering), place);
    return { value: reading.value, byEntering: reading.byEntering, byLoadSide: fading * reading.across };
  };
}

function rowReading(curve: MonotoneCubic | undefined, reach: Span | undefined, entering: number): Reading {
  if (curve === undefined || reach === undefined) return NOWHERE();
  const { place, fading } = levelled(entering, reach.lowest, reach.highest);
  const { value, slope } = curve.at(place);
  return { value, byEntering: fading * slope, byLoadSide: 0 };
}

const spanOf = ({ ratings }: ConditionRow): Span => ({
  lowest: ratings[0]?.enteringFluid ?? Number.NaN,
  highest: ratings.at(-1)?.enteringFluid ?? Number.NaN,
});

/** How far a row is led on in a straight line, so that a missing corner beside a longer row can be crossed. */
function reachOf(rows: readonly ConditionRow[], k: number): Span {
  const spans = rows.slice(Math.max(0, k - 1), k + 2).map(spanOf);
  return { lowest: Math.min(...spans.map(({ lowest }) => lowest)), highest: Math.max(...spans.map(({ highest }) => highest)) };
}

/**
 * Where a layer answers at a load side.
 *
 * @returns `rated`: entering fluids that both neighbouring rows have; `usable`: between the ends of the two rows, in a straight line from one to the other, and
 * 2 K beyond
 */
export function spansAt({ rows }: ConditionLayer, loadSide: number): { readonly rated: Span; readonly usable: Span } {
  const above = rows.findIndex((row) => row.loadSide >= loadSide);
  const upper = rows[above === -1 ? rows.length - 1 : above];
  const lower = above > 0 && upper?.loadSide !== loadSide ? rows[above - 1] : upper;
  if (upper === undefined || lower === undefined) throw new Error('a layer without rows');
  const [low, high] = [spanOf(lower), spanOf(upper)];
  const share = lower === upper ? 0 : (loadSide - lower.loadSide) / (upper.loadSide - lower.loadSide);
  return {
    rated: { lowest: Math.max(low.lowest, high.lowest), highest: Math.min(low.highest, high.highest) },
    usable: {
      lowest: low.lowest + share * (high.lowest - low.lowest) - EXTRAPOLATED,
      highest: low.highest + share * (high.highest - low.highest) + EXTRAPOLATED,
    },
  };
}

/** As {@link spansAt} of every layer at once: where all of them answer. */
export function spansOf({ layers }: ConditionTable, loadSide: number): { readonly rated: Span; readonly usable: Span } {
  const all = layers.map((layer) => spansAt(layer, loadSide));
  const shared = (spans: readonly Span[]): Span => ({
    lowest: Math.max(...spans.map(({ lowest }) => lowest)),
    highest: Math.min(...spans.map(({ highest }) => highest)),
  });
  return { rated: shared(all.map(({ rated }) => rated)), usable: shared(all.map(({ usable }) => usable)) };
}
