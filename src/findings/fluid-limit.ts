import type { Shape } from '../units/index.js';

/** A limit of the fluid that findings name. */
export type FluidLimit = 'lowestEntering' | 'lowestLeaving' | 'highestEntering';

/** Shape of {@link FluidLimit}. */
export const fluidLimitShape: Shape<FluidLimit> = ['lowestEntering', 'lowestLeaving', 'highestEntering'];
