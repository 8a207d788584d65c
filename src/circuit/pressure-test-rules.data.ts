import type { Source } from '../references/index.js';
import type { Fraction, Pressure, Time } from '../units/index.js';

/** A stretch of a pressure test. */
export interface TestPhase {
  /** What it is for. */
  readonly phase: 'expansion' | 'hold';
  /** How long it lasts [s]. */
  readonly duration: Time;
  /** By how much the pressure is let down before it [Pa]. */
  readonly letDown: Pressure;
  /** Whether water may be pumped in to keep the pressure while the wall expands. */
  readonly makeUp: boolean;
  /** Share of the pressure that may be lost; absent where only what is seen counts [1]. */
  readonly allowedFall?: Fraction;
}

/** How the pressure of a test is set: a number, or a multiple of the working pressure. */
export interface TestRule {
  /** Least pressure, where the rule names one [Pa]. */
  readonly leastPressure?: Pressure;
  /** Times the working pressure, where the rule says so [1]. */
  readonly timesWorking?: number;
  /** The phases in order. */
  readonly phases: readonly TestPhase[];
  /** Where the rule is from. */
  readonly source: Source;
}

/** Name of a rule for pressure tests. */
export type TestRuleName = 'expansion and hold' | 'model code' | 'federal specification' | 'homes standard' | 'state specification';

/** The names, for lists and shapes. */
export const TEST_RULE_NAMES: readonly TestRuleName[] = [
  'expansion and hold',
  'model code',
  'federal specification',
  'homes standard',
  'state specification',
];

const hold = (duration: number, allowedFall?: number, letDown = 0): TestPhase =>
  ({ phase: 'hold', duration, letDown, makeUp: false, ...(allowedFall === undefined ? {} : { allowedFall }) }) as TestPhase;

/** What standards and codes want of a pressure test of fused polyethylene. None of them allows leakage at a fused joint. */
export const TEST_RULES: Readonly<Record<TestRuleName, TestRule>> = /* @__PURE__ */ (() => ({
  // Four hours of expansion with make-up, 10 psi let down, one hour within 5 %.
  'expansion and hold': {
    timesWorking: 1.5,
    phases: [{ phase: 'expansion', duration: 14_400 as Time, letDown: 0 as Pressure, makeUp: true }, hold(3600, 0.05, 68_947.57293168361)],
    source: 'astmF2164',
  },
  // 100 psi for 30 minutes.
  'model code': { leastPressure: 689_475.7293168361 as Pressure, phases: [hold(1800, 0)], source: 'modelCodePressureTest' },
  // 188 psi for two hours without a drop; the copy prints 1278 kPa beside it, the exact conversion is 1296.
  'federal specification': { leastPressure: 1_296_214.371115652 as Pressure, phases: [hold(7200, 0)], source: 'federalPressureTest' },
  // No pressure named; no leak seen in 30 minutes.
  'homes standard': { phases: [hold(1800)], source: 'purgeVelocityHomes' },
  // 100 psi with water once assembled, joints seen before backfill; no time named, 30 minutes taken as elsewhere.
  'state specification': { leastPressure: 689_475.7293168361 as Pressure, phases: [hold(1800)], source: 'statePressureTest' },
}))();
