import { demand, demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import { MONTH_DAYS } from '../states/index.js';
import type { ElectricEnergy, ElectricPower, Shape } from '../units/index.js';
import { YEARLY_ENERGY } from './limits.js';

/** What a heating system draws, by part. */
export type ElectricPart = 'unit' | 'circulator' | 'auxiliary' | 'load side';
/** The parts in the order of the results. */
export const PARTS: readonly ElectricPart[] = ['unit', 'circulator', 'auxiliary', 'load side'];

/** Electricity of some time by part. */
export interface ElectricityByPart {
  /** Of the unit, 0 to 1e16 [J]. */
  readonly unitElectricity: ElectricEnergy;
  /** Of the loop circulator; none when left out [J]. */
  readonly circulatorElectricity?: ElectricEnergy;
  /** Of the auxiliary heater; none when left out [J]. */
  readonly auxiliaryElectricity?: ElectricEnergy;
  /** Of pumps and fans in the house; none when left out [J]. */
  readonly loadSideElectricity?: ElectricEnergy;
}

/** Electricity of a month. */
export interface ElectricityOfMonth extends ElectricityByPart {
  /** Highest hour of the month, all parts together, 0 to 1e8; needed where that has a price [W]. */
  readonly highestPower?: ElectricPower;
}

/** Electricity of a year: as a whole, by months, or by hours. */
export type ElectricityUse =
  | ({
      /** As a whole. */
      readonly from: 'year';
    } & ElectricityByPart)
  | {
      /** By months. */
      readonly from: 'months';
      /** Twelve, January first. */
      readonly months: readonly ElectricityOfMonth[];
    }
  | {
      /** By hours, from 1 January 00:00: mean power of each hour, 8760 or, with 29 February, 8784 of them, 0 to 1e8 each. */
      readonly from: 'hours';
      /** Of the unit [W]. */
      readonly unitDraws: readonly ElectricPower[];
      /** Of the loop circulator; none when left out [W]. */
      readonly circulatorDraws?: readonly ElectricPower[];
      /** Of the auxiliary heater; none when left out [W]. */
      readonly auxiliaryDraws?: readonly ElectricPower[];
      /** Of pumps and fans in the house; none when left out [W]. */
      readonly loadSideDraws?: readonly ElectricPower[];
    };

/** Shape of {@link ElectricityUse}. */
export const electricityUseShape: Shape<ElectricityUse> = {
  by: 'from',
  oneOf: {
    year: {
      unitElectricity: 'electric energy',
      circulatorElectricity: { optional: 'electric energy' },
      auxiliaryElectricity: { optional: 'electric energy' },
      loadSideElectricity: { optional: 'electric energy' },
    },
    months: {
      months: {
        list: {
          unitElectricity: 'electric energy',
          circulatorElectricity: { optional: 'electric energy' },
          auxiliaryElectricity: { optional: 'electric energy' },
          loadSideElectricity: { optional: 'electric energy' },
          highestPower: { optional: 'electric power' },
        },
      },
    },
    hours: {
      unitDraws: { list: 'electric power' },
      circulatorDraws: { optional: { list: 'electric power' } },
      auxiliaryDraws: { optional: { list: 'electric power' } },
      loadSideDraws: { optional: { list: 'electric power' } },
    },
  },
};

const POWER = { atLeast: 0, atMost: 1e8 };

/** Refuses a use that no meter reads. */
export function demandUse(use: ElectricityUse): void {
  demandObject('', use);
  demandChoice('from', use.from, ['year', 'months', 'hours']);
  if (use.from === 'year') demandParts(use, '');
  else if (use.from === 'months') {
    demandCount('months', use.months, 12, 12);
    use.months.forEach((month, index) => {
      demandObject(`months.${String(index)}`, month);
      demandParts(month, `months.${String(index)}.`);
      if (month.highestPower !== undefined) demand(`months.${String(index)}.highestPower`, 'electric power', month.highestPower, POWER);
    });
  } else demandDraws(use);
}

function demandParts(parts: ElectricityByPart, place: string): void {
  demand(`${place}unitElectricity`, 'electric energy', parts.unitElectricity, YEARLY_ENERGY);
  for (const name of ['circulatorElectricity', 'auxiliaryElectricity', 'loadSideElectricity'] as const) {
    const energy = parts[name];
    if (energy !== undefined) demand(`${place}${name}`, 'electric energy', energy, YEARLY_ENERGY);
  }
}

function demandDraws({ unitDraws, circulatorDraws, auxiliaryDraws, loadSideDraws }: ElectricityUse & { readonly from: 'hours' }): void {
  for (const [name, draws] of Object.entries({ unitDraws, circulatorDraws, auxiliaryDraws, loadSideDraws })) {
    if (draws === undefined && name !== 'unitDraws') continue;
    demandCount(name, draws ?? [], 8760, 8784);
    if (name === 'unitDraws') demandYearOfHours(unitDraws.length);
    else demandCount(name, draws ?? [], unitDraws.length, unitDraws.length);
    // The place is put into words only for a number that is refused.
    const wrong = draws?.findIndex((power) => typeof power !== 'number' || !(power >= 0 && power <= POWER.atMost)) ?? -1;
    if (wrong >= 0) demand(`${name}.${String(wrong)}`, 'electric power', draws?.[wrong] as ElectricPower, POWER);
  }
}

function demandYearOfHours(hours: number): void {
  if (hours === 8760 || hours === 8784) return;
  const value = { kind: 'count', value: hours } as const;
  throw new InputError({ code: 'impossible', argument: 'unitDraws', value, allowed: '8760 hours or, with 29 February, 8784' });
}

/** The hour from 1 January in which each month begins, and the one after the last. */
export function monthStarts(hours: number): readonly number[] {
  const starts: number[] = [0];
  for (const [month, days] of MONTH_DAYS.entries()) starts.push((starts[month] ?? 0) + 24 * (days + (month === 1 && hours === 8784 ? 1 : 0)));
  return starts;
}
