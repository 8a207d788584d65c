import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Situation } from '../safety/index.js';
import type { Energy, Fraction, Pressure, Shape, Time, Volume } from '../units/index.js';
import { overRating, testCeiling } from './over-rating.js';
import { TEST_RULE_NAMES, TEST_RULES, type TestRuleName } from './pressure-test-rules.data.js';
import { WATER_COMPRESSIBILITY } from './wall-give.js';

/** A pressure test that is to be prepared. */
export interface PressureTestToPlan {
  /** The rule to test by; the local code decides which. */
  readonly rule: TestRuleName;
  /** Greatest gauge pressure in service, 1e4 to 2e6 [Pa]. */
  readonly workingPressure: Pressure;
  /** What the weakest part bears at its temperature on the day, a black pipe in the sun included, 1e4 to 1e7 [Pa]. */
  readonly rating: Pressure;
  /** Contents of what is tested, above 0 up to 100 [m3]. */
  readonly loopVolume: Volume;
}

/** A phase with its pressure. */
export interface PlannedPhase {
  /** `expansion`, in which the wall creeps and water is pumped in, or `hold`. */
  readonly phase: 'expansion' | 'hold';
  /** Gauge pressure at its start [Pa]. */
  readonly pressure: Pressure;
  /** How long it lasts [s]. */
  readonly duration: Time;
  /** Whether water may be pumped in. */
  readonly makeUp: boolean;
  /** Share of the pressure that the rule lets be lost; absent where only what is seen counts [1]. */
  readonly allowedFall?: Fraction;
}

/** A pressure test as a rule wants it. */
export interface PressureTestPlan {
  /** Gauge pressure to pump up to [Pa]. */
  readonly testPressure: Pressure;
  /** Most that the weakest part may be tested with, 1.5 of its rating [Pa]. */
  readonly ceiling: Pressure;
  /** The phases in order. */
  readonly phases: readonly PlannedPhase[];
  /** Energy that comes free if it bursts, filled with water; the wall's own comes on top [J]. */
  readonly waterEnergy: Energy;
  /** The same if it were filled with air: the reason for water [J]. */
  readonly airEnergy: Energy;
  /** Situations to ask `noticesFor` with before anybody pumps. */
  readonly situations: readonly Situation[];
}

/** A {@link PressureTestPlan} with its findings. */
export interface PressureTestPlanResult extends PressureTestPlan {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link PressureTestToPlan}. */
export const pressureTestToPlanShape: Shape<PressureTestToPlan> = {
  rule: ['expansion and hold', 'model code', 'federal specification', 'homes standard', 'state specification'],
  workingPressure: 'pressure',
  rating: 'pressure',
  loopVolume: 'volume',
};

/** Of the working pressure, where a rule names no pressure [1]. */
const USUAL_MULTIPLE = 1.5;
/** Of the standard atmosphere [Pa]. */
const SEA_LEVEL = 101_325;

/**
 * Pressure and phases of a pressure test as a rule wants them, held against what the pipe bears, and the energy that is pumped in.
 *
 * With water, never with air or gas: air stores thousands of times the energy, and a burst throws it all at whoever stands there. The wall creeps
 * while it is under pressure, so a rule that allows no drop at all in a loop just pumped up asks for the impossible: let it expand first.
 *
 * @param of - see {@link PressureTestToPlan}
 * @returns pressures [Pa], phases [s], energies [J], and a finding where the pressure is more than the rating of the weakest part, or more than it may be tested with
 * @throws InputError for a value out of its range
 * @remarks Sources: those of the rules; ceiling of 1.5 ratings `astmF2164`. Air expands isothermally to the atmosphere, the work on that taken off; water ½ p² V/K.
 * Checked against the 53 kJ printed for 57 L of air at 100 psi (H-ENERGY); the 6.5 J printed for water do not reproduce with the compressibility of 4.6e-10/Pa used
 * throughout: 6.2 J. Invariants tested: energies are proportional to the volume; air holds more than water.
 * @example
 * ```ts @import.meta.vitest
 * const { kilojoules, litres, psi } = await import('../units/index.js');
 * const { testPressure, phases, airEnergy, findings } = planPressureTest({
 *   rule: 'expansion and hold',
 *   workingPressure: psi(60),
 *   rating: psi(160),
 *   loopVolume: litres(230),
 * });
 * expect(psi.of(testPressure)).toBeCloseTo(90, 6);
 * expect(phases.map(({ makeUp }) => makeUp)).toEqual([true, false]);
 * expect(kilojoules.of(airEnergy)).toBeGreaterThan(150);
 * expect(findings).toEqual([]);
 * ```
 */
export function planPressureTest({ rule, workingPressure, rating, loopVolume }: PressureTestToPlan): PressureTestPlanResult {
  demandChoice('rule', rule, TEST_RULE_NAMES);
  demand('workingPressure', 'pressure', workingPressure, { atLeast: 1e4, atMost: 2e6 });
  demand('rating', 'pressure', rating, { atLeast: 1e4, atMost: 1e7 });
  demand('loopVolume', 'volume', loopVolume, { above: 0, atMost: 100 });
  const { leastPressure, timesWorking, phases, source } = TEST_RULES[rule];
  const testPressure = (leastPressure ?? (timesWorking ?? USUAL_MULTIPLE) * workingPressure) as Pressure;
  const lettingDown = phases.reduce((sum, { letDown }) => sum + letDown, 0);
  if (lettingDown >= testPressure) {
    const value = { kind: 'pressure', value: workingPressure } as const;
    throw new InputError({ code: 'impossible', argument: 'workingPressure', value, allowed: `more than is let down, ${String(lettingDown)} Pa` });
  }
  let pressure: number = testPressure;
  const planned = phases.map(({ letDown, ...phase }): PlannedPhase => {
    pressure -= letDown;
    return { ...phase, pressure: pressure as Pressure };
  });
  const unexpanded = phases.every(({ phase }) => phase === 'hold') && phases.some(({ allowedFall }) => allowedFall === 0);
  const creeps: Finding = { code: 'test-without-expansion', level: 'note', values: { duration: phases[0]?.duration ?? (0 as Time) }, source };
  return {
    testPressure,
    ceiling: testCeiling(rating),
    phases: planned,
    waterEnergy: (0.5 * testPressure ** 2 * loopVolume * WATER_COMPRESSIBILITY) as Energy,
    airEnergy: airEnergy(testPressure, loopVolume) as Energy,
    situations: ['pressure-test'],
    findings: [...overRating(testPressure, rating), ...(unexpanded ? [creeps] : [])],
  };
}

/** Work of air that expands at one temperature to the atmosphere, the work on the atmosphere taken off [J]. */
function airEnergy(gaugePressure: number, volume: number): number {
  const absolute = gaugePressure + SEA_LEVEL;
  return absolute * volume * Math.log(absolute / SEA_LEVEL) - gaugePressure * volume;
}
