import { studentQuantile } from '../numerics/index.js';

/** Half-width, in standard errors, of the interval that holds with this probability; held against the tabled 4.303 (two degrees of freedom) and 2.262 (nine) for 95 %. */
export const studentT = (coverage: number, degreesOfFreedom: number): number => studentQuantile((1 + coverage) / 2, degreesOfFreedom);
