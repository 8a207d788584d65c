import type { Source } from '../references/index.js';
import type { Temperature, TemperatureDifference } from '../units/index.js';
import { type ColdestFluid, protectionTemperature } from './protection-temperature.js';

/** What a convention of the trade asks the freezing point to be. */
export interface ProtectionConvention {
  /** Which convention. */
  readonly convention: 'below leaving fluid' | 'below entering fluid' | 'colder of both' | 'ready-mixed brine';
  /** Freezing point it asks for [degC]. */
  readonly protectTo: Temperature;
  /** How far that is below the coldest leaving fluid; negative where the convention would let it freeze [K]. */
  readonly belowLeaving: TemperatureDifference;
  /** What it rests on. */
  readonly source: Source;
}

/** Freezing point of the ready-mixed brines of central and northern Europe, made for fluid leaving at −5 to −8 °C [degC]. */
const BRINE = -15;

/**
 * The freezing point that each convention of the trade asks for, side by side.
 *
 * Conventions hide their margins; here each is named, so that no margin is added twice. `protectionTemperature` uses the colder of the
 * two margins. Tables of "protection temperatures" have a margin of 0.6 to 3.3 K in them already, and some sheets print a mean of
 * freezing and setting point: neither is a freezing point. Protection against bursting is not protection of a running loop.
 *
 * @param coldest - coldest entering and leaving fluid [degC], margins [K]
 * @returns one row for each convention
 * @throws InputError as `protectionTemperature` does
 * @remarks Source: `freezeMarginPractice` for the margins; the fixed brine is common practice.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * const rows = protectionConventions({ lowestEntering: celsius(-1.1), lowestLeaving: celsius(-4) });
 * expect(rows.map(({ convention, protectTo }) => `${convention}: ${protectTo.toFixed(1)}`)).toEqual([
 *   'below leaving fluid: -9.6',
 *   'below entering fluid: -9.4',
 *   'colder of both: -9.6',
 *   'ready-mixed brine: -15.0',
 * ]);
 * ```
 */
export function protectionConventions(coldest: ColdestFluid): readonly ProtectionConvention[] {
  const both = protectionTemperature(coldest).protectTo;
  const { lowestEntering, lowestLeaving, belowEntering = 15 / 1.8, belowLeaving = 10 / 1.8 } = coldest;
  const row = (convention: ProtectionConvention['convention'], protectTo: number, source: Source): ProtectionConvention => ({
    convention,
    protectTo: protectTo as Temperature,
    belowLeaving: (lowestLeaving - protectTo) as TemperatureDifference,
    source,
  });
  return [
    row('below leaving fluid', lowestLeaving - belowLeaving, 'freezeMarginPractice'),
    row('below entering fluid', lowestEntering - belowEntering, 'freezeMarginPractice'),
    row('colder of both', both, 'freezeMarginPractice'),
    row('ready-mixed brine', BRINE, 'common practice'),
  ];
}
