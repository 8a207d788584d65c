export { KINDS, type Factor } from './kinds.data.js';
export { factor, quantity, unit, type Kind, type Quantity, type TaggedQuantity, type Unit, type UnitOf } from './quantity.js';
export { temperatureDifference } from './difference.js';
export type { Shape, ShapeNode } from './shape.js';
export type * from './quantities.js';
export * from './units.data.js';
