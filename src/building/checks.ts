import { demand, demandChoice, demandCount, demandObject } from '../errors/index.js';
import type { Temperature, TemperatureDifference } from '../units/index.js';
import type { EnergySignature } from './signature.js';

/** The two ways to load a loop. */
export const MODES = ['heating', 'cooling'] as const;

/** The two lines of heating. */
export const FORMS = ['gains as offset', 'anchored at design'] as const;

/** Colder and warmer than any weather on record, a bound against absurd input [degC]. */
export const OUTDOOR = { atLeast: -95, atMost: 65 } as const;

/** Indoor temperature of any building in use, a bound that catches degF given as degC [degC]. */
export const INDOOR = { atLeast: 0, atMost: 50 } as const;

/** The likely cause of a temperature far out. */
export const DEGF = 'a temperature in degF may have been given as degC';

/** Mean of a month anywhere on earth [degC]; up to here Erbs' spread is positive. */
export const MONTHLY_MEAN = { atLeast: -75, atMost: 45 } as const;

/** What a building may need, a bound against overflow [W]. */
export const LOAD = { atLeast: 1e-3, atMost: 1e9 } as const;

/** Refuses a signature that no building can have. */
export function demandSignature(signature: EnergySignature): void {
  demandObject('signature', signature);
  const { mode, form, slope, balancePoint, designLoad, designOutdoor, loadAtDesign, gainsTakenOff } = signature;
  demandChoice('signature.mode', mode, MODES);
  demandChoice('signature.form', form, FORMS);
  demand('signature.slope', 'conductance', slope, { atLeast: 1e-6, atMost: 1e9 });
  demand('signature.balancePoint', 'temperature', balancePoint, OUTDOOR);
  demand('signature.designLoad', 'power', designLoad, LOAD);
  demand('signature.designOutdoor', 'temperature', designOutdoor, OUTDOOR);
  demand('signature.loadAtDesign', 'power', loadAtDesign, { above: 0, atMost: LOAD.atMost });
  demand('signature.gainsTakenOff', 'power', gainsTakenOff, { atLeast: 0, atMost: LOAD.atMost });
}

/** Refuses a line whose slope is not the heat loss of the building itself. */
export function demandOwnSlope(signature: EnergySignature): void {
  demandSignature(signature);
  demandChoice('signature.mode', signature.mode, ['heating']);
  demandChoice('signature.form', signature.form, ['gains as offset']);
}

/** Refuses a year that is not twelve monthly means. */
export function demandMeans(means: readonly Temperature[]): void {
  demandCount('meanOutdoor', means, 12, 12);
  means.forEach((mean, index) => demand(`meanOutdoor.${String(index)}`, 'temperature', mean, MONTHLY_MEAN));
}

/** Refuses spreads that do not belong to twelve months. */
export function demandSpreads(spreads: readonly TemperatureDifference[]): void {
  demandCount('spread', spreads, 12, 12);
  spreads.forEach((spread, index) => demandSpread(`spread.${String(index)}`, spread));
}

/** Refuses an impossible spread of outdoor temperatures. */
export function demandSpread(argument: string, spread: TemperatureDifference): void {
  demand(argument, 'temperature difference', spread, { atLeast: 0, atMost: 50 });
}
