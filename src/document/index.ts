export { readQuantity, writeQuantity, type Unreadable, type UnitSystem } from './exact.js';
export { codecOf, type DocumentCodec, type Json } from './codec.js';
export { inputDocument, inputDocumentShape, type InputDocument, type InputFormat } from './input-document.js';
export { planDocument, type PlanDocument } from './plan-document.js';
export { writeMoney, type MoneyForm, type MoneyRounding } from './write-money.js';
