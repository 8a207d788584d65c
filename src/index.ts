export { planLoop, type PlanOptions, type PlanWords } from './plan-loop-document.js';
export { demoDocument } from './demo.data.js';
export { inputDocument, planDocument, type InputDocument, type Json, type PlanDocument, type UnitSystem } from './document/index.js';
export { InputError } from './errors/index.js';
