import { demand, demandCount, demandObject, locate } from '../errors/index.js';
import type { ElectricPower, Energy, Fraction, Power, Shape, Time } from '../units/index.js';
import { demandShare } from './desuperheater.js';
import type { MonthAsked } from './desuperheater-month.js';
import { groundHeat } from './ground-heat.js';

/** The unit at the fluid and supply temperature of one duty and month. */
export interface DutyPoint {
  /** Heating or cooling capacity, 0.001 to 1e8 [W]. */
  readonly capacity: Power;
  /** Electric input, 0 to 1e8, not more than the capacity where it heats [W]. */
  readonly power: ElectricPower;
}

/** Heat or cold that a house wants of the unit in a month. */
export interface HouseDuty extends DutyPoint {
  /** Heat or cold wanted, 0 to 1e15 [J]. */
  readonly energy: Energy;
}

/** One month of a unit with a desuperheater. */
export interface DesuperheaterMonthInput {
  /** Length of the month, above 0 to 1e8 [s]. */
  readonly time: Time;
  /** Space heating; an energy of 0 in a month without. */
  readonly heating: HouseDuty;
  /** Cooling; none when left out. */
  readonly cooling?: HouseDuty;
  /** Hot water wanted, losses of tank and circulation included, 0 to 1e15 [J]. */
  readonly hotWaterEnergy: Energy;
  /** The unit when it runs for hot water alone, hot; where left out, resistance makes what the desuperheater does not. */
  readonly hotWaterDuty?: DutyPoint;
}

/** What {@link desuperheaterYear} needs. */
export interface DesuperheaterYearInput {
  /** Share of the condenser heat that the desuperheater takes, 0 to 0.5; 0.05 to 0.15 is usual [1]. */
  readonly desuperheaterShare: Fraction;
  /** Twelve months, January first. */
  readonly months: readonly DesuperheaterMonthInput[];
}

const dutyPoint = { capacity: 'power', power: 'electric power' } as const;
const houseDuty = { energy: 'energy', capacity: 'power', power: 'electric power' } as const;

/** Shape of {@link DesuperheaterYearInput}. */
export const desuperheaterYearInputShape: Shape<DesuperheaterYearInput> = {
  desuperheaterShare: 'fraction',
  months: {
    list: {
      time: 'time',
      heating: houseDuty,
      cooling: { optional: houseDuty },
      hotWaterEnergy: 'energy',
      hotWaterDuty: { optional: dutyPoint },
    },
  },
};

/** Refuses a year that no unit has, and reads it as plain numbers. */
export function readDesuperheaterYear({ desuperheaterShare, months }: DesuperheaterYearInput): readonly MonthAsked[] {
  demandShare(desuperheaterShare);
  demandCount('months', months, 12, 12);
  return months.map((month, index) => locate(`months.${String(index)}`, () => readMonth(month)));
}

function readMonth(month: DesuperheaterMonthInput): MonthAsked {
  demandObject('', month);
  const { time, heating, cooling, hotWaterEnergy, hotWaterDuty } = month;
  demand('time', 'time', time, { above: 0, atMost: 1e8 });
  demandHouse('heating', heating);
  if (cooling !== undefined) demandHouse('cooling', cooling);
  demand('hotWaterEnergy', 'energy', hotWaterEnergy, ENERGY);
  if (hotWaterDuty !== undefined) demandPoint('hotWaterDuty', 'heating', hotWaterDuty);
  return { time, heating, cooling, wanted: hotWaterEnergy, hotWater: hotWaterDuty };
}

const ENERGY = { atLeast: 0, atMost: 1e15 } as const;

function demandHouse(mode: 'heating' | 'cooling', duty: HouseDuty): void {
  demandPoint(mode, mode, duty);
  demand(`${mode}.energy`, 'energy', duty.energy, ENERGY);
}

function demandPoint(argument: string, mode: 'heating' | 'cooling', point: DutyPoint): void {
  demandObject(argument, point);
  demand(`${argument}.capacity`, 'power', point.capacity, { atLeast: 1e-3, atMost: 1e8 });
  locate(argument, () => groundHeat({ mode, capacity: point.capacity, power: point.power }));
}
