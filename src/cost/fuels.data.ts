/** A fuel that the table knows. */
export type FuelName = 'fuel oil no. 1' | 'fuel oil no. 2' | 'kerosene' | 'propane' | 'liquefied petroleum gas' | 'butane' | 'natural gas';

/** A fuel with its higher heating value as the regulation prints it, and its lower heating value over that. */
interface FuelRecord {
  /** MMBtu per US gallon, or per cubic foot of gas at 60 °F and 1 atm. */
  readonly higher: number;
  readonly per: 'gallon' | 'cubic foot';
  readonly lowerOverHigher: number;
}

/** Heating values: table C-1 of 40 CFR 98 (`cfr98TableC1`). Lower over higher heating value: recalled, as in `ipcc2006`, good to 0.01. */
export const FUEL_RECORDS: Readonly<Record<FuelName, FuelRecord>> = {
  'fuel oil no. 1': { higher: 0.139, per: 'gallon', lowerOverHigher: 0.945 },
  'fuel oil no. 2': { higher: 0.138, per: 'gallon', lowerOverHigher: 0.945 },
  kerosene: { higher: 0.135, per: 'gallon', lowerOverHigher: 0.945 },
  propane: { higher: 0.091, per: 'gallon', lowerOverHigher: 0.92 },
  'liquefied petroleum gas': { higher: 0.092, per: 'gallon', lowerOverHigher: 0.92 },
  butane: { higher: 0.103, per: 'gallon', lowerOverHigher: 0.92 },
  'natural gas': { higher: 0.001026, per: 'cubic foot', lowerOverHigher: 0.9 },
};
