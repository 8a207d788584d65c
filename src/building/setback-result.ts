import type { Finding } from '../findings/index.js';
import type { Energy, Fraction, Power, Shape, Temperature, Time } from '../units/index.js';
import { type EnergySignature, energySignatureShape } from './signature.js';

/** What {@link setback} needs. */
export interface SetbackInput {
  /** The building in heating, with gains as offset: its slope must be its own heat loss per kelvin. */
  readonly signature: EnergySignature;
  /** Outdoor temperature, held through the cycle, below the balance point [degC]. */
  readonly outdoor: Temperature;
  /** Indoor temperature that the set-back lets the house fall to, below the usual one [degC]. */
  readonly lowered: Temperature;
  /** How long the thermostat stands low, 60 s up to the cycle less the reheat [s]. */
  readonly setbackTime: Time;
  /** Time in which the house is to be warm again, at least 60 s [s]. */
  readonly reheatTime: Time;
  /** From one set-back to the next, at most a year; a day when left out, for an absence its length and more [s]. */
  readonly cycleTime?: Time;
  /** Time constant of the house, an hour to 1000 h [s]. */
  readonly timeConstant: Time;
  /** Heating capacity of the unit, to be held against the reheat, 0.001 to 1e9 [W]. */
  readonly capacity?: Power;
}

/** A set-back in one weather. */
export interface Setback {
  /** Indoor temperature that is kept otherwise [degC]. */
  readonly indoor: Temperature;
  /** Indoor temperature that gains alone would hold in this weather [degC]. */
  readonly unheatedIndoor: Temperature;
  /** Lowest indoor temperature [degC]. */
  readonly lowestIndoor: Temperature;
  /** Indoor temperature on the mean over the cycle [degC]. */
  readonly meanIndoor: Temperature;
  /** Load while the usual temperature is kept [W]. */
  readonly steadyLoad: Power;
  /** Heat of a cycle [J]. */
  readonly energy: Energy;
  /** Heat that the set-back saves in a cycle [J]. */
  readonly savedEnergy: Energy;
  /** As a share of the heat without it [1]. */
  readonly savedShare: Fraction;
  /** Load of the reheat, held through it [W]. */
  readonly reheatLoad: Power;
  /** Heat beyond the capacity that a reheat in the time wanted takes, of a cycle; absent without a capacity [J]. */
  readonly unmetEnergy?: Energy;
  /** Time that the capacity alone takes to reheat; absent without a capacity, or where it never gets there within the cycle [s]. */
  readonly reheatTimeByCapacity?: Time;
}

/** {@link Setback} with findings. */
export interface SetbackResult extends Setback {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link SetbackInput}. */
export const setbackInputShape: Shape<SetbackInput> = {
  signature: energySignatureShape,
  outdoor: 'temperature',
  lowered: 'temperature',
  setbackTime: 'time',
  reheatTime: 'time',
  cycleTime: { optional: 'time' },
  timeConstant: 'time',
  capacity: { optional: 'power' },
};

/** Shape of {@link Setback}. */
export const setbackShape: Shape<Setback> = {
  indoor: 'temperature',
  unheatedIndoor: 'temperature',
  lowestIndoor: 'temperature',
  meanIndoor: 'temperature',
  steadyLoad: 'power',
  energy: 'energy',
  savedEnergy: 'energy',
  savedShare: 'fraction',
  reheatLoad: 'power',
  unmetEnergy: { optional: 'energy' },
  reheatTimeByCapacity: { optional: 'time' },
};
