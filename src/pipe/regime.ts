/** How a fluid flows in a pipe. */
export type FlowRegime = 'laminar' | 'transitional' | 'turbulent';

/** Above this laminar flow gives way [1]. */
export const TRANSITION = 2300;

/** From here on flow is turbulent [1]. */
export const TURBULENCE = 4000;

/**
 * The regime of a flow through a straight pipe.
 *
 * @param reynolds - Reynolds number [1]
 * @returns the regime
 */
export function regimeOf(reynolds: number): FlowRegime {
  if (reynolds < TRANSITION) return 'laminar';
  return reynolds < TURBULENCE ? 'transitional' : 'turbulent';
}
