import { errorFunction } from '../numerics/index.js';
import { crossing } from './year-course.js';

/** Half-width, in standard deviations, of the interval that holds a normal quantity with this probability. */
export const normalWidth = (coverage: number): number => crossing((x) => errorFunction(x / Math.SQRT2) - coverage, 0, 9);
