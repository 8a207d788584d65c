import { demand, demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { LengthPerPower, PipeLength, Power, Shape } from '../units/index.js';
import { LENGTH_PER_TON, type RuleLayout } from './guidelines.data.js';

/** What {@link plausibleLength} needs. */
export interface PlausibleLengthInput {
  /** How the pipe is laid. */
  readonly layout: RuleLayout;
  /** Pipe of the loop, 1 to 1e6 [m]. */
  readonly pipe: PipeLength;
  /** Nominal cooling capacity of the unit, or heating capacity where it only heats, 1 to 1e8 [W]; the ton of the rules is a ton of this. */
  readonly nominalCapacity: Power;
}

/** A loop beside what is usual for pipe laid like it. */
export interface PlausibleLength {
  /** Pipe per nominal capacity [m/W]. */
  readonly pipePerCapacity: LengthPerPower;
  /** Lower end of what is usual [m/W]. */
  readonly low: LengthPerPower;
  /** Upper end [m/W]. */
  readonly high: LengthPerPower;
  /** Pipe of this unit at the lower end [m]. */
  readonly shortest: PipeLength;
  /** Pipe of this unit at the upper end [m]. */
  readonly longest: PipeLength;
}

/** A {@link PlausibleLength} with its findings. */
export interface PlausibleLengthResult extends PlausibleLength {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link PlausibleLength}. */
export const plausibleLengthShape: Shape<PlausibleLength> = {
  pipePerCapacity: 'length per power',
  low: 'length per power',
  high: 'length per power',
  shortest: 'pipe length',
  longest: 'pipe length',
};

/** One foot per ton: 0.3048 m over 12 000 Btu of 1055.05585262 J an hour [m/W]. */
const FOOT_PER_TON = 8.666839748144972e-5;

/**
 * Pipe per ton beside the rules of thumb for pipe laid the same way.
 *
 * The rules span a factor of two and a half and name neither soil nor climate: a band that catches a slipped unit or a wrong soil, never an answer.
 *
 * @param input - see {@link PlausibleLengthInput}
 * @returns pipe per nominal capacity, the band, and a finding where the loop lies outside
 * @throws InputError for a value out of its range
 * @remarks Each band names its source; checked against the quoted table.
 * @example
 * ```ts @import.meta.vitest
 * const { feetPerTon, pipeFeet, tons } = await import('../units/index.js');
 * const short = plausibleLength({ layout: 'two-pipe', pipe: pipeFeet(900), nominalCapacity: tons(3) });
 * expect(feetPerTon.of(short.low)).toBeCloseTo(420, 9);
 * expect(short.findings[0]?.code).toBe('outside-plausible-band');
 * ```
 */
export function plausibleLength({ layout, pipe, nominalCapacity }: PlausibleLengthInput): PlausibleLengthResult {
  demandChoice('layout', layout, Object.keys(LENGTH_PER_TON));
  demand('pipe', 'pipe length', pipe, { atLeast: 1, atMost: 1e6 });
  demand('nominalCapacity', 'power', nominalCapacity, { atLeast: 1, atMost: 1e8 });
  const rule = LENGTH_PER_TON[layout];
  const low = (rule.low * FOOT_PER_TON) as LengthPerPower;
  const high = (rule.high * FOOT_PER_TON) as LengthPerPower;
  const pipePerCapacity = (pipe / nominalCapacity) as LengthPerPower;
  const outside: Finding = { code: 'outside-plausible-band', level: 'warning', values: { pipePerCapacity, low, high }, source: rule.source };
  return {
    pipePerCapacity,
    low,
    high,
    shortest: (low * nominalCapacity) as PipeLength,
    longest: (high * nominalCapacity) as PipeLength,
    findings: pipePerCapacity < low || pipePerCapacity > high ? [outside] : [],
  };
}
