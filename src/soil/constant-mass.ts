import { demand, demandChoice, demandCount, demandObject, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Mass, Ratio, Shape, Time } from '../units/index.js';

/** One weighing of a sample that is drying. */
export interface OvenWeighing {
  /** Time in the oven up to the weighing, 0 to 30 days [s]. */
  readonly ovenTime: Time;
  /** Soil with its container, cooled under cover [kg]. */
  readonly dryMass: Mass;
}

/** Weighings of a sample in the course of its drying. */
export interface DryingCourse {
  /** Two weighings or more, in order of time. */
  readonly weighings: readonly OvenWeighing[];
  /** The empty container; 0 when left out [kg]. */
  readonly tareMass?: Mass;
  /** By whose rule; by the first when left out. */
  readonly dryingRule?: 'ASTM D2216' | 'ISO 17892-1';
}

/** Shape of {@link DryingCourse}. */
export const dryingCourseShape: Shape<DryingCourse> = {
  weighings: { list: { ovenTime: 'time', dryMass: 'mass' } },
  tareMass: { optional: 'mass' },
  dryingRule: { optional: ['ASTM D2216', 'ISO 17892-1'] },
};

/** Whether a sample has dried to constant mass. */
export interface ConstantMass {
  /** Whether the last weighings agree within the limit, far enough apart in time. */
  readonly constant: boolean;
  /** Last dry mass, with the container [kg]. */
  readonly dryMass: Mass;
  /** Mass lost between the last two weighings over the dry soil; below 0 where it was gained [1]. */
  readonly lostShare: Ratio;
  /** Loss that must not be reached [1]. */
  readonly lostLimit: Ratio;
}

/** {@link ConstantMass} with findings. */
export interface ConstantMassResult extends ConstantMass {
  /** What is possible but doubtful about the drying. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link ConstantMass}. */
export const constantMassShape: Shape<ConstantMass> = { constant: 'flag', dryMass: 'mass', lostShare: 'ratio', lostLimit: 'ratio' };

/** Loss below which a mass is constant, and how long drying usually takes [s], by rule; both recalled. */
const RULES = {
  'ASTM D2216': { lost: 0.001, usualTime: 43_200, source: 'astmD2216' },
  'ISO 17892-1': { lost: 0.001, usualTime: 57_600, source: 'iso17892Part1' },
} as const;

/** Least time between two weighings that are compared [s]. */
const APART = 3600;

/**
 * Whether a sample has dried to constant mass, from repeated weighings.
 *
 * @param course - weighings [kg] with their times [s], container [kg], rule
 * @returns the verdict, the last mass [kg], and the last loss as a share of the dry soil [1], with findings
 * @throws InputError when a number is impossible, times do not ascend, or the container outweighs all
 * @remarks
 * Constant: after an hour more in the oven less than 0.1 % of the dry soil is lost. Sources: `astmD2216`, `iso17892Part1`; both recalled.
 *
 * Invariant: the same in any unit of mass.
 * @example
 * ```ts @import.meta.vitest
 * const { grams, hours } = await import('../units/index.js');
 * const weighings = [
 *   { ovenTime: hours(14), dryMass: grams(432.4) },
 *   { ovenTime: hours(16), dryMass: grams(431.7) },
 * ];
 * expect(constantMass({ weighings, tareMass: grams(102.3) }).constant).toBe(false);
 * ```
 */
export function constantMass({ weighings, tareMass = 0 as Mass, dryingRule = 'ASTM D2216' }: DryingCourse): ConstantMassResult {
  demandCount('weighings', weighings, 2, 1000);
  demand('tareMass', 'mass', tareMass, { atLeast: 0, atMost: 1000 });
  demandChoice('dryingRule', dryingRule, ['ASTM D2216', 'ISO 17892-1']);
  weighings.forEach((weighing, index) => demandWeighing(`weighings.${String(index)}`, weighing, tareMass, weighings[index - 1]));
  const [before, last] = weighings.slice(-2);
  if (before === undefined || last === undefined) throw new InputError({ code: 'too-few', argument: 'weighings', value: undefined, allowed: 'two' });
  const { lost, usualTime, source } = RULES[dryingRule];
  const lostLimit = lost as Ratio;
  const lostShare = ((before.dryMass - last.dryMass) / (last.dryMass - tareMass)) as Ratio;
  const gained = lostShare <= -lost;
  const constant = Math.abs(lostShare) < lost && last.ovenTime - before.ovenTime >= APART;
  const short = { ovenTime: last.ovenTime, usualTime: usualTime as Time };
  const findings: readonly Finding[] = [
    ...(constant || gained ? [] : [{ code: 'mass-not-constant', level: 'warning', values: { lostShare, lostLimit }, source } as const]),
    ...(gained ? [{ code: 'mass-gained-in-drying', level: 'warning', values: { gainedShare: -lostShare as Ratio }, source } as const] : []),
    ...(last.ovenTime < usualTime ? [{ code: 'drying-time-short', level: 'note', values: short, source } as const] : []),
  ];
  return { constant, dryMass: last.dryMass, lostShare, lostLimit, findings };
}

function demandWeighing(argument: string, weighing: OvenWeighing, tareMass: Mass, before: OvenWeighing | undefined): void {
  demandObject(argument, weighing);
  const { ovenTime, dryMass } = weighing;
  demand(`${argument}.ovenTime`, 'time', ovenTime, { atLeast: 0, atMost: 30 * 86_400 });
  demand(`${argument}.dryMass`, 'mass', dryMass, { above: tareMass, atMost: 1000 }, 'it includes the container');
  if (before !== undefined) demand(`${argument}.ovenTime`, 'time', ovenTime, { above: before.ovenTime }, 'weighings go in order of time');
}
