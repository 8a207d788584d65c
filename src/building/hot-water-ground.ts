import { demand, demandCount } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { MONTH_DAYS } from '../states/index.js';
import type { ElectricEnergy, Energy, Fraction, Power, Ratio, Shape } from '../units/index.js';
import { NO_REST } from './hot-water.data.js';

/** What {@link hotWaterGroundHeat} needs; twelve of each, January first. */
export interface HotWaterGroundInput {
  /** Hot water that the unit makes in each month, losses included, 0 to 1e15 [J]. */
  readonly monthlyHotWater: readonly Energy[];
  /** COP of the unit at the supply temperature of hot water and the fluid of each month, 1 to 20 [1]. */
  readonly hotWaterCops: readonly Ratio[];
  /** Mean ground heat of each month for house and cooling, negative where the ground gains, within 1e9 either way; not looked at when left out [W]. */
  readonly otherGroundHeats?: readonly Power[];
}

/** What hot water takes from the ground in a month. */
export interface HotWaterGroundMonth {
  /** The month, 1 to 12. */
  readonly month: number;
  /** Heat from the ground [J]. */
  readonly fromGround: Energy;
  /** Electricity of the unit [J]. */
  readonly electricEnergy: ElectricEnergy;
  /** Heat from the ground for hot water, on the mean over the month [W]. */
  readonly hotWaterHeat: Power;
  /** Heat from the ground for everything, likewise; the same where nothing else is given [W]. */
  readonly meanHeat: Power;
}

/** What hot water takes from the ground through the year. */
export interface HotWaterGround {
  /** January first. */
  readonly months: readonly HotWaterGroundMonth[];
  /** Heat from the ground for hot water over the year [J]. */
  readonly fromGround: Energy;
  /** Electricity for hot water over the year [J]. */
  readonly electricEnergy: ElectricEnergy;
  /** The month in which the ground is asked for least, 1 to 12; the first of equals. */
  readonly restMonth: number;
  /** What it is asked for then, over the month in which it is asked for most; 0 where it gains or is never asked [1]. */
  readonly restShare: Fraction;
}

/** {@link HotWaterGround} with findings. */
export interface HotWaterGroundResult extends HotWaterGround {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link HotWaterGroundInput}. */
export const hotWaterGroundInputShape: Shape<HotWaterGroundInput> = {
  monthlyHotWater: { list: 'energy' },
  hotWaterCops: { list: 'ratio' },
  otherGroundHeats: { optional: { list: 'power' } },
};

/** Shape of {@link HotWaterGround}. */
export const hotWaterGroundShape: Shape<HotWaterGround> = {
  months: { list: { month: 'count', fromGround: 'energy', electricEnergy: 'electric energy', hotWaterHeat: 'power', meanHeat: 'power' } },
  fromGround: 'energy',
  electricEnergy: 'electric energy',
  restMonth: 'count',
  restShare: 'fraction',
};

const DAY = 86_400;

/**
 * Heat that hot water takes from the ground, month by month, summer included.
 *
 * A loop in soil lives by its summer: sun and rain warm the ground while nothing is taken. Hot water goes on taking, so that the ground starts the next winter
 * a little colder than without; the load goes into the simulation of the loop like any other.
 *
 * @param input - hot water of the unit [J] and its COP by months, and where known the other ground heat [W]
 * @returns heat from the ground and electricity by months, and how much rest is left
 * @throws InputError when a number is impossible, or there are not twelve of them
 * @remarks
 * Ground = heat (1 − 1/COP). A finding is raised where the quietest month still asks for a tenth of the hardest and most of that is hot water; the limit is
 * own judgement.
 *
 * Invariant: ground + electricity = heat.
 * @example
 * ```ts @import.meta.vitest
 * const { kilowattHours, kilowatts, ratio } = await import('../units/index.js');
 * const winter = [3, 2.6, 2, 1, 0.2, 0, 0, 0, 0.2, 1, 2, 2.8];
 * const { fromGround, restMonth, findings } = hotWaterGroundHeat({
 *   monthlyHotWater: winter.map(() => kilowattHours(300)), hotWaterCops: winter.map(() => ratio(2.5)),
 *   otherGroundHeats: winter.map((heat) => kilowatts(heat)),
 * });
 * expect(kilowattHours.of(fromGround)).toBeCloseTo(12 * 300 * 0.6, 9);
 * expect(restMonth).toBe(7);
 * expect(findings).toEqual([]);
 * ```
 */
export function hotWaterGroundHeat({ monthlyHotWater, hotWaterCops, otherGroundHeats }: HotWaterGroundInput): HotWaterGroundResult {
  demandTwelve('monthlyHotWater', 'energy', monthlyHotWater, 0, 1e15);
  demandTwelve('hotWaterCops', 'ratio', hotWaterCops, 1, 20);
  if (otherGroundHeats !== undefined) demandTwelve('otherGroundHeats', 'power', otherGroundHeats, -1e9, 1e9);
  const months = MONTH_DAYS.map((days, index): HotWaterGroundMonth => {
    const heat = Number(monthlyHotWater[index]);
    const electric = heat / Number(hotWaterCops[index]);
    const hotWaterHeat = (heat - electric) / (days * DAY);
    return {
      month: index + 1,
      fromGround: (heat - electric) as Energy,
      electricEnergy: electric as ElectricEnergy,
      hotWaterHeat: hotWaterHeat as Power,
      meanHeat: (hotWaterHeat + (otherGroundHeats?.[index] ?? 0)) as Power,
    };
  });
  const least = months.reduce((best, month) => (month.meanHeat < best.meanHeat ? month : best));
  const most = months.reduce((best, month) => (month.meanHeat > best.meanHeat ? month : best));
  const restShare = (least.meanHeat > 0 ? least.meanHeat / most.meanHeat : 0) as Fraction;
  return {
    months,
    fromGround: months.reduce((sum, { fromGround }) => sum + fromGround, 0) as Energy,
    electricEnergy: months.reduce((sum, { electricEnergy }) => sum + electricEnergy, 0) as ElectricEnergy,
    restMonth: least.month,
    restShare,
    findings: otherGroundHeats === undefined ? [] : restFindings(least, restShare),
  };
}

function demandTwelve(argument: string, kind: 'energy' | 'ratio' | 'power', values: readonly number[], atLeast: number, atMost: number): void {
  demandCount(argument, values, 12, 12);
  values.forEach((value, index) => demand(`${argument}.${String(index)}`, kind, value, { atLeast, atMost }));
}

function restFindings({ month, hotWaterHeat, meanHeat }: HotWaterGroundMonth, restShare: Fraction): readonly Finding[] {
  if (restShare < NO_REST.from || hotWaterHeat < meanHeat / 2) return [];
  const level = restShare >= NO_REST.warning ? 'warning' : 'note';
  return [{ code: 'ground-without-rest', level, values: { month, hotWaterHeat, restShare }, source: 'common practice' }];
}
