import { type ElectricityByPart, type ElectricityUse, monthStarts } from './electricity-use.js';
import { blockCost, type EnergyPricing, priceAt } from './tariff.js';

/** A month of the bill, or the whole year where it is told as a whole; parts in their order. */
export interface BilledPeriod {
  /** Electricity of each part [J]. */
  readonly used: readonly number[];
  /** Energy cost of each part [cur]. */
  readonly costs: readonly number[];
  /** Highest hour, where it is known [W]. */
  readonly highestPower?: number | undefined;
}

const HOUR = 3600;

/**
 * Bills the energy of a year.
 *
 * @param use - electricity, fine enough for the pricing
 * @param pricing - how energy is priced
 * @returns twelve months, or one year
 */
export function billedPeriods(use: ElectricityUse, pricing: EnergyPricing): readonly BilledPeriod[] {
  if (use.from === 'hours') return billedHours(use, pricing);
  const known = use.from === 'months' ? use.months : [use];
  return known.map((period) => {
    const used = partsOf(period);
    return { used, costs: costsOf(used, pricing), highestPower: 'highestPower' in period ? period.highestPower : undefined };
  });
}

const partsOf = (period: ElectricityByPart): readonly number[] => [
  period.unitElectricity,
  period.circulatorElectricity ?? 0,
  period.auxiliaryElectricity ?? 0,
  period.loadSideElectricity ?? 0,
];

/** Cost of each part at the price of the period; in blocks each part shares in the mean price. */
function costsOf(used: readonly number[], pricing: EnergyPricing): readonly number[] {
  if (pricing.type !== 'by block') return used.map((energy) => energy * pricing.energyPrice);
  const total = used.reduce((sum, each) => sum + each, 0);
  const cost = blockCost(pricing.blocks, pricing.energyPrice, total);
  return used.map((energy) => (total === 0 ? 0 : cost * (energy / total)));
}

function billedHours(use: ElectricityUse & { readonly from: 'hours' }, pricing: EnergyPricing): readonly BilledPeriod[] {
  const draws = [use.unitDraws, use.circulatorDraws, use.auxiliaryDraws, use.loadSideDraws];
  const starts = monthStarts(use.unitDraws.length);
  return starts.slice(1).map((end, index) => {
    const prices = Array.from({ length: 24 }, (_, hour) =>
      pricing.type === 'by time' ? priceAt(pricing.windows, pricing.energyPrice, index + 1, hour) : pricing.energyPrice,
    );
    const used = draws.map(() => 0);
    const costs = draws.map(() => 0);
    let highestPower = 0;
    for (let hour = starts[index] ?? 0; hour < end; hour += 1) {
      let power = 0;
      for (const [part, series] of draws.entries()) {
        const energy = (series?.[hour] ?? 0) * HOUR;
        used[part] = (used[part] ?? 0) + energy;
        costs[part] = (costs[part] ?? 0) + energy * (prices[hour % 24] ?? 0);
        power += series?.[hour] ?? 0;
      }
      highestPower = Math.max(highestPower, power);
    }
    return { used, costs: pricing.type === 'by block' ? costsOf(used, pricing) : costs, highestPower };
  });
}
