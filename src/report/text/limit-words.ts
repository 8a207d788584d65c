import type { FluidLimit } from '../../findings/fluid-limit.js';

/** Limits of the fluid, in words. */
export const LIMIT_WORDS: Readonly<Record<FluidLimit, string>> = {
  lowestEntering: 'lowest entering fluid temperature',
  lowestLeaving: 'lowest leaving fluid temperature',
  highestEntering: 'highest entering fluid temperature',
};
