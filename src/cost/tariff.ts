import { demand, demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import { joinedShape } from '../states/index.js';
import type { ElectricEnergy, EnergyPrice, Money, PowerPrice, Ratio, Shape } from '../units/index.js';
import { ENERGY_PRICE, MONEY } from './limits.js';
import { demandPriceSet, type PriceSet, priceSetShape } from './price-set.js';

/** Hours of the day, in some months, that have a price of their own. Days of the week are not known. */
export interface PriceWindow {
  /** Months in which it holds, each 1 to 12; all when left out. */
  readonly inMonths?: readonly number[];
  /** Hour of the day at which it begins, 0 to 23, in the time that the hours of the use are counted in. */
  readonly fromHour: number;
  /** Hour at which it ends, 1 to 24; at or before its begin it runs past midnight. */
  readonly toHour: number;
  /** Price in it, 0 to 0.01 [cur/J]. */
  readonly energyPrice: EnergyPrice;
}

/** A block of the use of a month. */
export interface PriceBlock {
  /** Use of a month up to which it reaches, rising from block to block, 0 to 1e16 [J]. */
  readonly blockLimit: ElectricEnergy;
  /** Price in it [cur/J]. */
  readonly energyPrice: EnergyPrice;
}

/** How energy is priced. */
export type EnergyPricing =
  | {
      /** One price. */
      readonly type: 'flat';
      /** The price, 0 to 0.01 [cur/J]. */
      readonly energyPrice: EnergyPrice;
    }
  | {
      /** By time; needs a use by the hour. */
      readonly type: 'by time';
      /** Price outside all windows [cur/J]. */
      readonly energyPrice: EnergyPrice;
      /** Windows, 1 to 50; the first that holds is taken. */
      readonly windows: readonly PriceWindow[];
    }
  | {
      /** By the use of the month; needs a use by months or hours. The blocks are those of this use alone: what the house draws beside it is not known. */
      readonly type: 'by block';
      /** Blocks, 1 to 20. */
      readonly blocks: readonly PriceBlock[];
      /** Price of all use beyond the last [cur/J]. */
      readonly energyPrice: EnergyPrice;
    };

/** What electricity costs. */
export interface Tariff extends PriceSet {
  /** How energy is priced. */
  readonly pricing: EnergyPricing;
  /** Fixed charge of a month, 0 to 1e13; none when left out [cur]. */
  readonly monthlyCharge?: Money;
  /** Price of the highest hour of each month, 0 to 1e6; none when left out [cur/W]. */
  readonly demandPrice?: PowerPrice;
  /** Taxes on all of it over its price before tax, 0 to 10; none when left out [1]. */
  readonly taxRatio?: Ratio;
}

const windowShape: Shape<PriceWindow> = {
  inMonths: { optional: { list: 'count' } },
  fromHour: 'count',
  toHour: 'count',
  energyPrice: 'energy price',
};

/** Shape of {@link Tariff}. */
export const tariffShape: Shape<Tariff> = /* @__PURE__ */ joinedShape(priceSetShape, {
  pricing: {
    by: 'type',
    oneOf: {
      flat: { energyPrice: 'energy price' },
      'by time': { energyPrice: 'energy price', windows: { list: windowShape } },
      'by block': { blocks: { list: { blockLimit: 'electric energy', energyPrice: 'energy price' } }, energyPrice: 'energy price' },
    },
  },
  monthlyCharge: { optional: 'money' },
  demandPrice: { optional: 'power price' },
  taxRatio: { optional: 'ratio' },
});

/** Refuses a tariff that nobody can bill by. */
export function demandTariff(tariff: Tariff): void {
  demandPriceSet(tariff);
  const { pricing, monthlyCharge, demandPrice, taxRatio } = tariff;
  demandObject('pricing', pricing);
  demandChoice('pricing.type', pricing.type, ['flat', 'by time', 'by block']);
  demand('pricing.energyPrice', 'energy price', pricing.energyPrice, ENERGY_PRICE);
  if (pricing.type === 'by time') demandWindows(pricing.windows);
  if (pricing.type === 'by block') demandBlocks(pricing.blocks);
  if (monthlyCharge !== undefined) demand('monthlyCharge', 'money', monthlyCharge, MONEY);
  if (demandPrice !== undefined) demand('demandPrice', 'power price', demandPrice, { atLeast: 0, atMost: 1e6 });
  if (taxRatio !== undefined) demand('taxRatio', 'ratio', taxRatio, { atLeast: 0, atMost: 10 });
}

function demandWindows(windows: readonly PriceWindow[]): void {
  demandCount('pricing.windows', windows, 1, 50);
  windows.forEach((window, index) => {
    const place = `pricing.windows.${String(index)}`;
    demandObject(place, window);
    const { inMonths, fromHour, toHour, energyPrice } = window;
    if (inMonths !== undefined) demandCount(`${place}.inMonths`, inMonths, 1, 12);
    inMonths?.forEach((month, each) => demand(`${place}.inMonths.${String(each)}`, 'count', month, { atLeast: 1, atMost: 12 }));
    demand(`${place}.fromHour`, 'count', fromHour, { atLeast: 0, atMost: 23 });
    demand(`${place}.toHour`, 'count', toHour, { atLeast: 1, atMost: 24 });
    demand(`${place}.energyPrice`, 'energy price', energyPrice, ENERGY_PRICE);
  });
}

function demandBlocks(blocks: readonly PriceBlock[]): void {
  demandCount('pricing.blocks', blocks, 1, 20);
  let reached = 0;
  blocks.forEach((block, index) => {
    const place = `pricing.blocks.${String(index)}`;
    demandObject(place, block);
    demand(`${place}.blockLimit`, 'electric energy', block.blockLimit, { above: reached, atMost: 1e16 }, 'blocks rise');
    demand(`${place}.energyPrice`, 'energy price', block.energyPrice, ENERGY_PRICE);
    reached = block.blockLimit;
  });
}

/** Refuses a use that a tariff cannot bill because it is told too coarsely. */
export function demandFineEnough({ pricing, demandPrice }: Tariff, from: 'year' | 'months' | 'hours', hasHighest: boolean): void {
  const refuse = (allowed: string): never => {
    throw new InputError({ code: 'impossible', argument: 'use.from', value: from, allowed });
  };
  if (pricing.type === 'by time' && from !== 'hours') refuse('a use by hours, since the price changes with the time');
  if (pricing.type === 'by block' && from === 'year') refuse('a use by months or hours, since the price changes with the use of the month');
  if (demandPrice !== undefined && !hasHighest) refuse('a use by hours, or by months with their highest power, since that has a price');
}

/** The price at an hour of a day in a month under windows. */
export function priceAt(windows: readonly PriceWindow[], otherwise: number, month: number, hour: number): number {
  const holds = ({ inMonths, fromHour, toHour }: PriceWindow): boolean =>
    (inMonths?.includes(month) ?? true) && (fromHour < toHour ? hour >= fromHour && hour < toHour : hour >= fromHour || hour < toHour);
  return windows.find(holds)?.energyPrice ?? otherwise;
}

/** What the use of a month costs in blocks [cur]. */
export function blockCost(blocks: readonly PriceBlock[], beyond: number, usedElectricity: number): number {
  let cost = 0;
  let reached = 0;
  for (const { blockLimit, energyPrice } of blocks) {
    cost += Math.max(0, Math.min(usedElectricity, blockLimit) - reached) * energyPrice;
    reached = blockLimit;
  }
  return cost + Math.max(0, usedElectricity - reached) * beyond;
}
