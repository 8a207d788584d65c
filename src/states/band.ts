import type { Fraction, Kind, Quantity } from '../units/index.js';

/** An uncertain quantity: an estimate and the limits between which the true value lies with the stated probability. */
export interface Band<K extends Kind> {
  /** Lower limit, in the unit of the kind. */
  readonly low: Quantity<K>;
  /** The single value used where one is needed. */
  readonly estimate: Quantity<K>;
  /** Upper limit. */
  readonly high: Quantity<K>;
  /** Probability that the true value lies between the limits [1]. */
  readonly coverage: Fraction;
}
