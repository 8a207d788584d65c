import type { Kind } from '../../units/index.js';

/** Writes a quantity for a person, in the unit system of the reader. */
export type Show = (kind: Kind, value: number) => string;

/** Writes a number without unit that is best read whole. */
export const whole = (value: number): string => String(Math.round(value)).replace('-', '−');

/** One sentence or two for each finding of a room, made from its values in the reader's units. */
export type FindingTexts<Values> = { readonly [C in keyof Values]: (values: Values[C], show: Show) => string };
