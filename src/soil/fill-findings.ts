import type { Finding } from '../findings/index.js';
import type { Conductivity } from '../units/index.js';

/** What a fill does to the ground that the pipes see. */
export interface FillEffect {
  /** Effective conductivity with the fill. */
  readonly conductivity: Conductivity;
  /** Conductivity of the fill; absent without one. */
  readonly fillConductivity: Conductivity | undefined;
  /** Effective conductivity without the trench. */
  readonly unfilled: Conductivity;
}

/** A loss of this share of the conductivity and more is a warning [1]. */
const MUCH = 0.1;

/** What the fill of a trench takes from the conductivity of the native ground. */
export function fillFindings({ conductivity, fillConductivity, unfilled }: FillEffect): readonly Finding[] {
  if (fillConductivity === undefined) return [];
  const level = conductivity < (1 - MUCH) * unfilled ? 'warning' : 'note';
  return [{ code: 'trench-fill-around-pipes', level, values: { fillConductivity, conductivity, unfilled }, source: 'facesOfFill' }];
}
