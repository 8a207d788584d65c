import type { ElectricEnergy, Energy, Shape, Time } from '../units/index.js';
import { desuperheaterMonth, type MonthAsked } from './desuperheater-month.js';

/** Hot water of a unit with a desuperheater over a month or a year, and what house, ground and meter see of it. */
export interface DesuperheaterBalance {
  /** Hot water out of the heating, which the unit runs longer for [J]. */
  readonly byHeating: Energy;
  /** Hot water out of the cooling, which the ground is spared [J]. */
  readonly byCooling: Energy;
  /** Hot water that the unit makes in a run of its own [J]. */
  readonly byOwnRun: Energy;
  /** Hot water left to electric resistance [J]. */
  readonly byResistance: Energy;
  /** Time that the unit heats, cools and makes hot water alone [s]. */
  readonly runTime: Time;
  /** Space heating that the unit gives [J]. */
  readonly heatedEnergy: Energy;
  /** Cooling that the unit gives [J]. */
  readonly cooledEnergy: Energy;
  /** Heating and cooling that the unit does not reach in the time of the month [J]. */
  readonly unmetEnergy: Energy;
  /** Heat from the ground [J]. */
  readonly fromGround: Energy;
  /** Heat to the ground [J]. */
  readonly toGround: Energy;
  /** Electricity of the unit, without resistance and circulator [J]. */
  readonly electricEnergy: ElectricEnergy;
  /** What the desuperheater adds to the heat from the ground in heating [J]. */
  readonly extraFromGround: Energy;
  /** What it adds to the electricity of the unit in heating [J]. */
  readonly extraElectricEnergy: ElectricEnergy;
  /** What it leaves to auxiliary heat in a month in which the unit has no time to run longer [J]. */
  readonly extraUnmetEnergy: Energy;
}

/** Shape of {@link DesuperheaterBalance}. */
export const desuperheaterBalanceShape: Shape<DesuperheaterBalance> = {
  byHeating: 'energy',
  byCooling: 'energy',
  byOwnRun: 'energy',
  byResistance: 'energy',
  runTime: 'time',
  heatedEnergy: 'energy',
  cooledEnergy: 'energy',
  unmetEnergy: 'energy',
  fromGround: 'energy',
  toGround: 'energy',
  electricEnergy: 'electric energy',
  extraFromGround: 'energy',
  extraElectricEnergy: 'electric energy',
  extraUnmetEnergy: 'energy',
};

/** What becomes of a month with a share of the condenser heat taken, and against none. */
export function balanceOf(share: number, asked: MonthAsked): DesuperheaterBalance {
  const { heating, cooling, hotWater } = asked;
  const made = desuperheaterMonth(share, asked);
  const { byHeating, byCooling, byOwnRun, byResistance, heatingTime, coolingTime, hotWaterTime, heated, cooled } = made;
  const without = desuperheaterMonth(0, asked);
  const longer = heatingTime - without.heatingTime;
  const electric = heating.power * heatingTime + (cooling?.power ?? 0) * coolingTime + (hotWater?.power ?? 0) * hotWaterTime;
  return {
    byHeating,
    byCooling,
    byOwnRun,
    byResistance,
    runTime: heatingTime + coolingTime + hotWaterTime,
    heatedEnergy: heated,
    cooledEnergy: cooled,
    unmetEnergy: heating.energy - heated + (cooling === undefined ? 0 : cooling.energy - cooled),
    fromGround: (heating.capacity - heating.power) * heatingTime + byOwnRun - (hotWater?.power ?? 0) * hotWaterTime,
    toGround: cooled + (cooling?.power ?? 0) * coolingTime - byCooling,
    electricEnergy: electric,
    extraFromGround: (heating.capacity - heating.power) * longer,
    extraElectricEnergy: heating.power * longer,
    extraUnmetEnergy: without.heated - heated,
  } as DesuperheaterBalance;
}

/** The sum of months. */
export function sumOfBalances(months: readonly DesuperheaterBalance[]): DesuperheaterBalance {
  const total = (of: (month: DesuperheaterBalance) => number): number => months.reduce((sum, month) => sum + of(month), 0);
  return {
    byHeating: total(({ byHeating }) => byHeating),
    byCooling: total(({ byCooling }) => byCooling),
    byOwnRun: total(({ byOwnRun }) => byOwnRun),
    byResistance: total(({ byResistance }) => byResistance),
    runTime: total(({ runTime }) => runTime),
    heatedEnergy: total(({ heatedEnergy }) => heatedEnergy),
    cooledEnergy: total(({ cooledEnergy }) => cooledEnergy),
    unmetEnergy: total(({ unmetEnergy }) => unmetEnergy),
    fromGround: total(({ fromGround }) => fromGround),
    toGround: total(({ toGround }) => toGround),
    electricEnergy: total(({ electricEnergy }) => electricEnergy),
    extraFromGround: total(({ extraFromGround }) => extraFromGround),
    extraElectricEnergy: total(({ extraElectricEnergy }) => extraElectricEnergy),
    extraUnmetEnergy: total(({ extraUnmetEnergy }) => extraUnmetEnergy),
  } as DesuperheaterBalance;
}
