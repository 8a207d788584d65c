import { demand, demandChoice, demandObject } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { ElectricCurrent, Fraction } from '../units/index.js';
import type { CompressorDraw, CompressorStart, ServiceCheck, ServiceCheckInput, ServiceCurrents } from './service.js';

/** Power factors where none is told; assumed, and told so in a finding [1]. */
const ASSUMED = { compressor: 0.85, circulator: 0.6 } as const;
/** A start that draws more of the service than this is often seen in the lights; own judgement, the impedance of the supply decides [1]. */
const SEEN_IN_LIGHTS = 0.4;
const ROOT_THREE = 1.7320508075688772;

/**
 * Running and starting current of a heat pump with its auxiliary heater and circulators, against what the service has to spare.
 *
 * Everything at once: compressor at its hardest duty, all of the heater, all circulators, on top of the existing demand. That demand is given, measured or worked
 * out by an electrician; no code's way of reckoning it is built in, and local codes decide what must be left free. Voltage drop, cable, protection and the
 * utility's limit on starting current are not judged.
 *
 * @param input - supply, service, existing demand [A], compressor, heater and circulators; see {@link ServiceCheckInput}
 * @returns currents per line [A], whether they fit, and findings; always that a licensed electrician decides
 * @throws InputError when a number is outside its range, or the compressor would start with less than it runs
 * @remarks
 * I = P/(V · power factor) on one phase, P/(√3 · V · power factor) on three, heaters at a power factor of 1. Currents of different power factor are added as
 * numbers, which is never too little. `electricPowerFormulas`. Invariants: parts add up; currents scale with the power and inversely with the voltage; three lines
 * carry 1/√3 of one at the same voltage.
 * @example
 * ```ts @import.meta.vitest
 * const { amperes, electricKilowatts, electricWatts, volts } = await import('../units/index.js');
 * const check = checkService({
 *   connection: 'single phase',
 *   voltage: volts(240),
 *   serviceCurrent: amperes(100),
 *   existingCurrent: amperes(55),
 *   compressor: { by: 'running current', runningCurrent: amperes(14) },
 *   starting: { by: 'direct', lockedRotorCurrent: amperes(72) },
 *   auxiliaryHeater: electricKilowatts(9.6),
 *   circulator: electricWatts(216),
 * });
 * expect(check.addedCurrent).toBeCloseTo(14 + 40 + 1.5, 9);
 * expect(check.fits).toBe(false);
 * expect(check.findings.map(({ code }) => code)).toEqual([
 *   'electrician-decides', 'service-short', 'start-may-flicker', 'power-factor-assumed',
 * ]);
 * ```
 */
export function checkService(input: ServiceCheckInput): ServiceCheck {
  const { connection, voltage, serviceCurrent, existingCurrent, auxiliaryHeater, circulator, circulatorPowerFactor } = input;
  demandChoice('connection', connection, ['single phase', 'three phase']);
  demand('voltage', 'voltage', voltage, { atLeast: 90, atMost: 1000 });
  demand('serviceCurrent', 'electric current', serviceCurrent, { atLeast: 5, atMost: 5000 });
  demand('existingCurrent', 'electric current', existingCurrent, { atLeast: 0, atMost: 5000 });
  if (auxiliaryHeater !== undefined) demand('auxiliaryHeater', 'electric power', auxiliaryHeater, { atLeast: 0, atMost: 1e6 });
  if (circulator !== undefined) demand('circulator', 'electric power', circulator, { atLeast: 0, atMost: 1e5 });
  if (circulatorPowerFactor !== undefined) demand('circulatorPowerFactor', 'fraction', circulatorPowerFactor, { atLeast: 0.3, atMost: 1 });
  const perLine = (power: number, factor: number): number => power / (voltage * factor * (connection === 'three phase' ? ROOT_THREE : 1));
  const compressorCurrent = runningOf(input.compressor, perLine);
  const auxiliaryCurrent = perLine(auxiliaryHeater ?? 0, 1);
  const circulatorCurrent = perLine(circulator ?? 0, circulatorPowerFactor ?? ASSUMED.circulator);
  const addedCurrent = compressorCurrent + auxiliaryCurrent + circulatorCurrent;
  const startingCurrent = startOf(input.starting, compressorCurrent);
  const currents = {
    compressorCurrent,
    auxiliaryCurrent,
    circulatorCurrent,
    addedCurrent,
    startingCurrent,
    spareBefore: serviceCurrent - existingCurrent,
    spareAfter: serviceCurrent - existingCurrent - addedCurrent,
  } as ServiceCurrents;
  return { ...currents, fits: currents.spareAfter >= 0, situations: ['electrical'], findings: findingsOf(input, currents) };
}

function runningOf(compressor: CompressorDraw, perLine: (power: number, factor: number) => number): number {
  demandObject('compressor', compressor);
  demandChoice('compressor.by', compressor.by, ['running current', 'electric input']);
  if (compressor.by === 'running current') {
    demand('compressor.runningCurrent', 'electric current', compressor.runningCurrent, { atLeast: 0.1, atMost: 1000 });
    return compressor.runningCurrent;
  }
  const { electricPower, powerFactor } = compressor;
  demand('compressor.electricPower', 'electric power', electricPower, { atLeast: 50, atMost: 1e6 });
  if (powerFactor !== undefined) demand('compressor.powerFactor', 'fraction', powerFactor, { atLeast: 0.3, atMost: 1 });
  return perLine(electricPower, powerFactor ?? ASSUMED.compressor);
}

function startOf(starting: CompressorStart, running: number): number {
  demandObject('starting', starting);
  demandChoice('starting.by', starting.by, ['direct', 'soft starter', 'inverter']);
  if (starting.by === 'inverter') return running;
  const hint = 'the current with the rotor locked is several times the running one; the two may be interchanged';
  demand('starting.lockedRotorCurrent', 'electric current', starting.lockedRotorCurrent, { atLeast: Math.max(0.5, running), atMost: 10_000 }, hint);
  if (starting.by === 'direct') return starting.lockedRotorCurrent;
  demand('starting.startShare', 'fraction', starting.startShare, { atLeast: 0.2, atMost: 1 }, 'a share of the locked-rotor current');
  // No starter brings the motor up on less than it runs with.
  return Math.max(starting.lockedRotorCurrent * starting.startShare, running);
}

function findingsOf(input: ServiceCheckInput, { addedCurrent, spareBefore, startingCurrent }: ServiceCurrents): readonly Finding[] {
  const { serviceCurrent, compressor, circulator, circulatorPowerFactor } = input;
  const startShare = (startingCurrent / serviceCurrent) as Fraction;
  const shortBy = (addedCurrent - spareBefore) as ElectricCurrent;
  const assumed = (part: 'compressor' | 'circulators', powerFactor: number): Finding => ({
    code: 'power-factor-assumed',
    level: 'note',
    values: { part, powerFactor: powerFactor as Fraction },
    source: 'common practice',
  });
  const found: readonly (Finding | false)[] = [
    { code: 'electrician-decides', level: 'note', values: {}, source: 'common practice' },
    shortBy > 0 && { code: 'service-short', level: 'stop', values: { addedCurrent, spareCurrent: spareBefore, shortBy }, source: 'common practice' },
    input.starting.by !== 'inverter' &&
      startShare > SEEN_IN_LIGHTS && {
        code: 'start-may-flicker',
        level: 'warning',
        values: { startingCurrent, serviceCurrent, startShare },
        source: 'common practice',
      },
    compressor.by === 'electric input' && compressor.powerFactor === undefined && assumed('compressor', ASSUMED.compressor),
    (circulator ?? 0) > 0 && circulatorPowerFactor === undefined && assumed('circulators', ASSUMED.circulator),
  ];
  return found.filter((finding) => finding !== false);
}
