export { InputError, type InputErrorCode, type InputErrorDetails } from './input-error.js';
export { demand, demandChoice, demandCount, demandObject, locate, type AllowedRange } from './demand.js';
export { quotedChoices } from './quoted-choices.js';
