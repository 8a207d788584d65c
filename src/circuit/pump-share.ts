import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { ElectricEnergy, ElectricPower, Fraction, Power, Ratio, Shape, Time } from '../units/index.js';

/** Marks of a scale made for large plants. */
export type PumpGrade = 'A' | 'B' | 'C' | 'D' | 'F';

/** What {@link pumpShare} needs. */
export interface PumpShareInput {
  /** Electric input of all circulators of the loop, 0 to 1e6 [W]. */
  readonly electricPower: ElectricPower;
  /** Heat that the unit gives the house while they run, above 0 to 1e9 [W]. */
  readonly capacity: Power;
  /** How long they run in the season or the year, above 0 to 31 622 400 [s]. */
  readonly runningTime: Time;
  /** Electricity of the unit over the same time, without the circulators, 0 to 1e15 [J]. */
  readonly unitElectricity: ElectricEnergy;
  /** Nominal cooling, the measure of the scale for large plants, above 0 to 1e9; no grade when left out [W]. */
  readonly nominalCooling?: Power;
}

/** What the circulators take. */
export interface PumpShare {
  /** Electric input over the heat [1]. */
  readonly perHeat: Fraction;
  /** Electricity of the circulators [J]. */
  readonly circulatorElectricity: ElectricEnergy;
  /** Its share of the electricity of unit and circulators [1]. */
  readonly electricityShare: Fraction;
  /** Electric input per nominal cooling [1]. */
  readonly perCooling?: Ratio;
  /** Remark: the mark on a scale made for large plants, where an ordinary house with two small circulators gets a D. */
  readonly grade?: PumpGrade;
}

/** A {@link PumpShare} with its findings. */
export interface PumpShareResult extends PumpShare {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link PumpShareInput}. */
export const pumpShareInputShape: Shape<PumpShareInput> = {
  electricPower: 'electric power',
  capacity: 'power',
  runningTime: 'time',
  unitElectricity: 'electric energy',
  nominalCooling: { optional: 'power' },
};

/** Shape of {@link PumpShare}. */
export const pumpShareShape: Shape<PumpShare> = {
  perHeat: 'fraction',
  circulatorElectricity: 'electric energy',
  electricityShare: 'fraction',
  perCooling: { optional: 'ratio' },
  grade: { optional: ['A', 'B', 'C', 'D', 'F'] },
};

/** Share of the electricity that the circulators of a loop well laid out stay within; a judgement [1]. */
const USUAL_SHARE = 0.1;

/** Upper ends of the marks in watts per ton of 12 000 Btu/h, each included; beyond the last an F. */
const MARKS: readonly (readonly [PumpGrade, number])[] = [
  ['A', 50],
  ['B', 75],
  ['C', 100],
  ['D', 150],
];
/** Watts of 12 000 Btu/h. */
const TON = 3516.8528420667;

/**
 * What the circulators take: per watt of heat, and of the electricity of the season.
 *
 * Judge by these two. The grade is a remark: its scale was made for large plants and is recalled, and a house seldom does well on it.
 *
 * @param input - see {@link PumpShareInput}
 * @returns electric input per heat [1], electricity [J], its share [1], and a finding where that is high
 * @throws InputError for a value out of its range
 * @remarks Source of the grade: `pumpGrades`. Checked: 5 hp for 100 tons at a motor efficiency of 0.75 is the end of A. Invariants tested: proportional to the
 * running time, share between 0 and 1, grades fall as the power rises.
 * @example
 * ```ts @import.meta.vitest
 * const { electricKilowattHours, electricWatts, hours, kilowatts } = await import('../units/index.js');
 * const { perHeat, electricityShare } = pumpShare({
 *   electricPower: electricWatts(200),
 *   capacity: kilowatts(10),
 *   runningTime: hours(2000),
 *   unitElectricity: electricKilowattHours(5000),
 * });
 * expect(perHeat).toBe(0.02);
 * expect(electricityShare).toBeCloseTo(0.0741, 4);
 * ```
 */
export function pumpShare(input: PumpShareInput): PumpShareResult {
  const { electricPower, capacity, runningTime, unitElectricity, nominalCooling } = input;
  demand('electricPower', 'electric power', electricPower, { atLeast: 0, atMost: 1e6 });
  demand('capacity', 'power', capacity, { atLeast: 1e-3, atMost: 1e9 });
  demand('runningTime', 'time', runningTime, { above: 0, atMost: 31_622_400 });
  demand('unitElectricity', 'electric energy', unitElectricity, { atLeast: 0, atMost: 1e15 });
  if (nominalCooling !== undefined) demand('nominalCooling', 'power', nominalCooling, { atLeast: 1e-3, atMost: 1e9 });
  const circulatorElectricity = (electricPower * runningTime) as ElectricEnergy;
  const electricityShare = (circulatorElectricity === 0 ? 0 : circulatorElectricity / (circulatorElectricity + unitElectricity)) as Fraction;
  const perHeat = (electricPower / capacity) as Fraction;
  const values = { share: electricityShare, usual: USUAL_SHARE as Fraction, perHeat };
  const high: Finding = { code: 'pump-share-high', level: 'warning', values, source: 'common practice' };
  return {
    perHeat,
    circulatorElectricity,
    electricityShare,
    ...(nominalCooling === undefined ? {} : graded((electricPower / nominalCooling) as Ratio)),
    findings: electricityShare > USUAL_SHARE ? [high] : [],
  };
}

const graded = (perCooling: Ratio): Required<Pick<PumpShare, 'perCooling' | 'grade'>> => ({
  perCooling,
  grade: MARKS.find(([, most]) => perCooling * TON <= most)?.[0] ?? 'F',
});
