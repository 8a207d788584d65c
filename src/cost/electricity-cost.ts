import { demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { joinedShape } from '../states/index.js';
import type { ElectricEnergy, ElectricPower, EnergyPrice, Money, Shape } from '../units/index.js';
import { type BilledPeriod, billedPeriods } from './billed-periods.js';
import { demandUse, type ElectricityUse, electricityUseShape, type ElectricPart, PARTS } from './electricity-use.js';
import { priceAge, type PriceSet, priceSetShape } from './price-set.js';
import { demandFineEnough, demandTariff, type Tariff, tariffShape } from './tariff.js';

/** What {@link electricityCost} needs. */
export interface ElectricityCostInput {
  /** Electricity of a year. */
  readonly use: ElectricityUse;
  /** What it costs. */
  readonly tariff: Tariff;
  /** Year in which the reckoning is made, 1900 to 2300; the age of the prices is looked at where given. */
  readonly dateYear?: number;
}

/** Shape of {@link ElectricityCostInput}. */
export const electricityCostInputShape: Shape<ElectricityCostInput> = {
  use: electricityUseShape,
  tariff: tariffShape,
  dateYear: { optional: 'count' },
};

/** What one part of the system costs. */
export interface CostOfPart {
  /** Which part. */
  readonly part: ElectricPart;
  /** What it draws over the year [J]. */
  readonly usedElectricity: ElectricEnergy;
  /** Its energy before tax; in blocks at the mean price of its month [cur]. */
  readonly energyCost: Money;
}

/** A month of the bill, before tax. */
export interface CostOfMonth {
  /** The month, 1 to 12. */
  readonly month: number;
  /** All parts together [J]. */
  readonly usedElectricity: ElectricEnergy;
  /** Highest hour; absent where it is not known [W]. */
  readonly highestPower?: ElectricPower;
  /** Energy [cur]. */
  readonly energyCost: Money;
  /** The highest hour [cur]. */
  readonly demandCost: Money;
}

/** What electricity costs in a year. */
export interface ElectricityCost extends PriceSet {
  /** All parts together [J]. */
  readonly usedElectricity: ElectricEnergy;
  /** Energy by part, before tax. */
  readonly parts: readonly CostOfPart[];
  /** Sum of the parts [cur]. */
  readonly energyCost: Money;
  /** Fixed charges of twelve months, before tax [cur]. */
  readonly fixedCost: Money;
  /** Highest hours of all months, before tax [cur]. */
  readonly demandCost: Money;
  /** Taxes on all three [cur]. */
  readonly taxCost: Money;
  /** Energy + fixed + highest hours + taxes, in that order [cur]. */
  readonly totalCost: Money;
  /** The total over the use; absent where there is none [cur/J]. */
  readonly meanEnergyPrice?: EnergyPrice;
  /** Month by month; absent where the use is told as a whole. */
  readonly months?: readonly CostOfMonth[];
}

/** Shape of {@link ElectricityCost}. */
export const electricityCostShape: Shape<ElectricityCost> = /* @__PURE__ */ joinedShape(priceSetShape, {
  usedElectricity: 'electric energy',
  parts: { list: { part: ['unit', 'circulator', 'auxiliary', 'load side'], usedElectricity: 'electric energy', energyCost: 'money' } },
  energyCost: 'money',
  fixedCost: 'money',
  demandCost: 'money',
  taxCost: 'money',
  totalCost: 'money',
  meanEnergyPrice: { optional: 'energy price' },
  months: {
    optional: {
      list: {
        month: 'count',
        usedElectricity: 'electric energy',
        highestPower: { optional: 'electric power' },
        energyCost: 'money',
        demandCost: 'money',
      },
    },
  },
});

/** {@link ElectricityCost} with findings. */
export interface ElectricityCostResult extends ElectricityCost {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** A larger share of the bill than this is worth a look. */
const LARGE = 0.2;

/**
 * What the electricity of a year costs, by part of the system and by month.
 *
 * Money is not rounded here: round the total once where it is printed; the rounded parts may then miss it by their last digit.
 *
 * @param input - use by part [J, W], tariff
 * @returns costs [cur] and findings
 * @throws InputError when a number is out of its range, or the use is told too coarsely for the tariff
 * @remarks Invariants tested: the cost is linear in all prices; parts add up to the energy cost and that with the other charges to the total, exactly; months
 * add up to them but for double rounding.
 * @example
 * ```ts @import.meta.vitest
 * const { electricKilowattHours, money, perKilowattHour, ratio } = await import('../units/index.js');
 * const pricing = { type: 'flat', energyPrice: perKilowattHour(0.2) } as const;
 * const tariff = { currency: 'EUR', priceYear: 2026, pricing, monthlyCharge: money(5), taxRatio: ratio(0.1) };
 * const use = { from: 'year', unitElectricity: electricKilowattHours(5000), circulatorElectricity: electricKilowattHours(300) } as const;
 * const cost = electricityCost({ use, tariff });
 * expect(cost.totalCost).toBeCloseTo((5300 * 0.2 + 60) * 1.1, 9);
 * expect(cost.parts[1]?.energyCost).toBeCloseTo(60, 9);
 * ```
 */
export function electricityCost({ use, tariff, dateYear }: ElectricityCostInput): ElectricityCostResult {
  demandObject('tariff', tariff);
  locate('tariff', () => demandTariff(tariff));
  locate('use', () => demandUse(use));
  const hasHighest = use.from === 'hours' || (use.from === 'months' && use.months.every(({ highestPower }) => highestPower !== undefined));
  demandFineEnough(tariff, use.from, hasHighest);
  const { currency, priceYear, monthlyCharge = 0, demandPrice = 0, taxRatio = 0 } = tariff;
  const periods = billedPeriods(use, tariff.pricing);
  const parts = PARTS.map((part, index): CostOfPart => {
    const over = (of: (period: BilledPeriod) => readonly number[]): number => periods.reduce((sum, period) => sum + (of(period)[index] ?? 0), 0);
    return { part, usedElectricity: over(({ used }) => used) as ElectricEnergy, energyCost: over(({ costs }) => costs) as Money };
  });
  const used = sum(parts.map(({ usedElectricity }) => usedElectricity));
  const energyCost = sum(parts.map((part) => part.energyCost));
  const fixedCost = 12 * monthlyCharge;
  const demandCost = sum(periods.map(({ highestPower = 0 }) => highestPower * demandPrice));
  const taxCost = (energyCost + fixedCost + demandCost) * taxRatio;
  const totalCost = energyCost + fixedCost + demandCost + taxCost;
  const cost: ElectricityCost = {
    currency,
    priceYear,
    usedElectricity: used as ElectricEnergy,
    parts,
    energyCost: energyCost as Money,
    fixedCost: fixedCost as Money,
    demandCost: demandCost as Money,
    taxCost: taxCost as Money,
    totalCost: totalCost as Money,
    // Less than a watt second is no use that a price could be told for.
    ...(used >= 1 ? { meanEnergyPrice: (totalCost / used) as EnergyPrice } : {}),
    ...(use.from === 'year' ? {} : { months: periods.map((period, index) => monthOf(period, index + 1, demandPrice)) }),
  };
  const large = demandCost > LARGE * totalCost;
  const values = { demandCost: cost.demandCost, totalCost: cost.totalCost };
  const finding = { code: 'demand-charge-large', level: 'note', values, source: 'common practice' } as const;
  return { ...cost, findings: [...priceAge(tariff, dateYear), ...(large ? [finding] : [])] };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);

const monthOf = ({ used, costs, highestPower }: BilledPeriod, month: number, demandPrice: number): CostOfMonth => ({
  month,
  usedElectricity: sum(used) as ElectricEnergy,
  ...(highestPower === undefined ? {} : { highestPower: highestPower as ElectricPower }),
  energyCost: sum(costs) as Money,
  demandCost: ((highestPower ?? 0) * demandPrice) as Money,
});
