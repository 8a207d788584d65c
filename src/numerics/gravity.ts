/** Standard gravity, exact by definition [m/s2]. */
export const GRAVITY = 9.80665;
