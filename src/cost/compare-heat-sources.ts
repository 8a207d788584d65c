import { demand, demandCount, demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { joinedShape } from '../states/index.js';
import type { Energy, Mass, Money, Shape } from '../units/index.js';
import { type FuelUse, fuelUse, fuelUseShape } from './fuel-use.js';
import { demandHeatSource, type HeatSource, heatSourceShape } from './heat-source.js';
import { YEARLY_ENERGY } from './limits.js';
import { demandPriceSet, priceAge, type PriceSet, priceSetShape } from './price-set.js';

/** What {@link compareHeatSources} needs. All prices are in one currency and of one year. */
export interface CompareHeatSourcesInput extends PriceSet {
  /** Heat wanted over the year, 0 to 1e16 [J]. */
  readonly energy: Energy;
  /** What could make it, 1 to 50; the first is what the others are held against. */
  readonly heatSources: readonly HeatSource[];
  /** Year in which the reckoning is made, 1900 to 2300; the age of the prices is looked at where given. */
  readonly dateYear?: number;
}

/** Shape of {@link CompareHeatSourcesInput}. */
export const compareHeatSourcesInputShape: Shape<CompareHeatSourcesInput> = /* @__PURE__ */ joinedShape(priceSetShape, {
  energy: 'energy',
  heatSources: { list: heatSourceShape },
  dateYear: { optional: 'count' },
});

/** One way of making the heat beside the first. */
export interface ComparedSource extends FuelUse {
  /** What it costs beyond the first; below 0 where less [cur]. */
  readonly costBeyondFirst: Money;
  /** What it emits beyond the first; absent where either is not reckoned [kg]. */
  readonly emissionsBeyondFirst?: Mass;
}

/** Ways of making the same heat, side by side. */
export interface HeatSourceComparison extends PriceSet {
  /** In the order given. */
  readonly rows: readonly ComparedSource[];
  /** Label of the one with the least total cost of the year; the first of equals. */
  readonly cheapest: string;
}

/** Shape of {@link HeatSourceComparison}. */
export const heatSourceComparisonShape: Shape<HeatSourceComparison> = /* @__PURE__ */ joinedShape(priceSetShape, {
  rows: {
    list: /* @__PURE__ */ joinedShape<Shape<ComparedSource>, typeof fuelUseShape>(fuelUseShape, {
      costBeyondFirst: 'money',
      emissionsBeyondFirst: { optional: 'mass' },
    }),
  },
  cheapest: 'text',
});

/** {@link HeatSourceComparison} with findings. */
export interface HeatSourceComparisonResult extends HeatSourceComparison {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/**
 * Ways of making the same heat, side by side: energy, cost of a year, price of heat, emissions. First costs are not in it; see `compareLifeCycles`.
 *
 * @param input - heat [J], ways of making it, of which prices
 * @returns one row for each
 * @throws InputError when a number is out of its range, or bases are mixed without their ratio
 * @example
 * ```ts @import.meta.vitest
 * const { kilowattHours, perKilowattHour, perTherm, ratio } = await import('../units/index.js');
 * const electricity = { soldBy: 'electricity', energyPrice: perKilowattHour(0.16) } as const;
 * const gas = { soldBy: 'energy', energyPrice: perTherm(1.4), basis: 'higher' } as const;
 * const heatSources = [
 *   { label: 'ground source', supply: electricity, efficiency: ratio(3.3) },
 *   { label: 'gas', supply: gas, efficiency: ratio(0.92), efficiencyBasis: 'higher' },
 * ] as const;
 * const { rows, cheapest } = compareHeatSources({ currency: 'USD', priceYear: 2026, energy: kilowattHours(20_000), heatSources });
 * expect(rows.map(({ totalCost }) => Math.round(totalCost))).toEqual([970, 1038]);
 * expect(cheapest).toBe('ground source');
 * ```
 */
export function compareHeatSources(input: CompareHeatSourcesInput): HeatSourceComparisonResult {
  demandPriceSet(input);
  const { currency, priceYear, dateYear, energy, heatSources } = input;
  demand('energy', 'energy', energy, YEARLY_ENERGY);
  demandCount('heatSources', heatSources, 1, 50);
  const uses = heatSources.map((source, index) => {
    const place = `heatSources.${String(index)}`;
    demandObject(place, source);
    locate(place, () => demandHeatSource(source));
    return fuelUse({ energy, source });
  });
  const [first] = uses;
  const rows = uses.map(({ findings: _, ...use }): ComparedSource => {
    const both = use.emissions !== undefined && first?.emissions !== undefined ? use.emissions - first.emissions : undefined;
    return {
      ...use,
      costBeyondFirst: (use.totalCost - (first?.totalCost ?? 0)) as Money,
      ...(both === undefined ? {} : { emissionsBeyondFirst: both as Mass }),
    };
  });
  const cheapest = rows.reduce((least, row) => (row.totalCost < least.totalCost ? row : least));
  return {
    currency,
    priceYear,
    rows,
    cheapest: cheapest.label,
    findings: [...priceAge(input, dateYear), ...uses.flatMap(({ findings }) => findings)],
  };
}
