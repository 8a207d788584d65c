import { demand, demandCount, demandObject, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type {
  ElectricEnergy,
  Energy,
  EnergyPrice,
  Fraction,
  LengthPrice,
  Money,
  PipeLength,
  Ratio,
  Shape,
  TemperatureDifference,
  YearlyRate,
} from '../units/index.js';
import { ENERGY_PRICE, RATE, YEARLY_ENERGY } from './limits.js';
import { annuity, demandTerms, netRate, type StudyTerms } from './present-value.js';

/** A loop of some length over a year; a row of the regret table of `operation` is one. */
export interface LoopOfLength {
  /** Length over that of the loop planned, 0.1 to 10; one of the rows is the loop itself, 1 [1]. */
  readonly lengthRatio: Ratio;
  /** Pipe that exchanges heat, 0 to 1e6 [m]. */
  readonly pipe: PipeLength;
  /** How far inside its limits the fluid stays, within ±1000; negative beyond one [K]. */
  readonly limitMargin: TemperatureDifference;
  /** Electricity of unit and circulator over the year, 0 to 1e16 [J]. */
  readonly usedElectricity: ElectricEnergy;
  /** Load that the unit does not meet, left to the auxiliary heater, 0 to 1e16 [J]. */
  readonly unmetEnergy: Energy;
}

/** What {@link shorterLoopCosts} needs. */
export interface ShorterLoopInput extends StudyTerms {
  /** The loop at several lengths, 2 to 50. */
  readonly loops: readonly LoopOfLength[];
  /** What a metre of pipe costs in the ground: pipe, digging, fill, 0 to 1e6 [cur/m]. */
  readonly lengthPrice: LengthPrice;
  /** Price of electricity, 0 to 0.01 [cur/J]. */
  readonly energyPrice: EnergyPrice;
  /** Heat over electricity of the auxiliary heater, 0.05 to 1; 1 when left out [1]. */
  readonly auxiliaryEfficiency?: Fraction;
  /** Yearly change of the price, −0.5 to 1; none when left out [1/a]. */
  readonly escalation?: YearlyRate;
}

const loopOfLengthShape: Shape<LoopOfLength> = {
  lengthRatio: 'ratio',
  pipe: 'pipe length',
  limitMargin: 'temperature difference',
  usedElectricity: 'electric energy',
  unmetEnergy: 'energy',
};

/** Shape of {@link ShorterLoopInput}. */
export const shorterLoopInputShape: Shape<ShorterLoopInput> = {
  discountRate: 'yearly rate',
  years: 'count',
  loops: { list: loopOfLengthShape },
  lengthPrice: 'length price',
  energyPrice: 'energy price',
  auxiliaryEfficiency: { optional: 'fraction' },
  escalation: { optional: 'yearly rate' },
};

/** What a length saves and costs beside the loop planned. */
export interface LengthCost {
  /** Length over that of the loop planned [1]. */
  readonly lengthRatio: Ratio;
  /** Pipe that exchanges heat [m]. */
  readonly pipe: PipeLength;
  /** How far inside its limits the fluid stays; negative beyond one [K]. */
  readonly limitMargin: TemperatureDifference;
  /** Electricity of the auxiliary heater over the year [J]. */
  readonly auxiliaryElectricity: ElectricEnergy;
  /** All electricity of the year [J]. */
  readonly usedElectricity: ElectricEnergy;
  /** Saved in the ground at the start; below 0 for a longer loop [cur]. */
  readonly firstCostSaved: Money;
  /** What a year costs more; below 0 where less [cur]. */
  readonly yearlyExtraCost: Money;
  /**
   * Saved at the start less the present value of all extra costs: below 0 the length is wrong to cut. Absent where the fluid leaves its limits: the unit stops there, which has no
   * price here [cur].
   */
  readonly netSavings?: Money;
}

/** Shape of {@link LengthCost}. */
export const lengthCostShape: Shape<LengthCost> = {
  lengthRatio: 'ratio',
  pipe: 'pipe length',
  limitMargin: 'temperature difference',
  auxiliaryElectricity: 'electric energy',
  usedElectricity: 'electric energy',
  firstCostSaved: 'money',
  yearlyExtraCost: 'money',
  netSavings: { optional: 'money' },
};

/** What other lengths save and cost. */
export interface ShorterLoopCosts {
  /** In the order given. */
  readonly lengths: readonly LengthCost[];
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/**
 * What is saved and what is paid for when a loop is cut short, or made longer.
 *
 * Money is the smaller part of it: heave, a unit that stops on its protection and a cold house have no price here. So a length at which the fluid leaves what the
 * unit must keep has no net savings, and a finding names it; what a year costs more is then the least of it.
 *
 * @param input - the loop at several lengths, prices, rates [1/a], years
 * @returns money at the start, a year, and in all [cur]
 * @throws InputError when a number is out of its range or no row is the loop itself
 * @example
 * ```ts @import.meta.vitest
 * const { electricKilowattHours, kelvinDifference, kilowattHours, percentPerYear, perKilowattHour, perMetre, pipeMetres, ratio } =
 *   await import('../units/index.js');
 * const loop = (lengthRatio: number, limitMargin: number, used: number, unmet: number) => ({
 *   lengthRatio: ratio(lengthRatio),
 *   pipe: pipeMetres(600 * lengthRatio),
 *   limitMargin: kelvinDifference(limitMargin),
 *   usedElectricity: electricKilowattHours(used),
 *   unmetEnergy: kilowattHours(unmet),
 * });
 * const loops = [loop(0.8, -1.2, 5300, 400), loop(1, 0.4, 5100, 150), loop(1.1, 0.9, 5040, 110)];
 * const prices = { lengthPrice: perMetre(12), energyPrice: perKilowattHour(0.25) };
 * const { lengths, findings } = shorterLoopCosts({ loops, ...prices, discountRate: percentPerYear(3), years: 25 });
 * expect(lengths[0]?.firstCostSaved).toBeCloseTo(1440, 9);
 * expect(lengths[0]?.yearlyExtraCost).toBeCloseTo(112.5, 9);
 * expect(lengths[0]).not.toHaveProperty('netSavings'); // it stops on its protection
 * expect(lengths[2]?.netSavings).toBeCloseTo(-284.67, 2);
 * expect(findings.map(({ code }) => code)).toEqual(['shorter-loop-beyond-limit']);
 * ```
 */
export function shorterLoopCosts(input: ShorterLoopInput): ShorterLoopCosts {
  demandTerms(input);
  const { loops, lengthPrice, energyPrice, auxiliaryEfficiency, escalation, discountRate, years } = input;
  demandCount('loops', loops, 2, 50);
  loops.forEach((loop, index) => demandLoop(loop, `loops.${String(index)}`));
  demand('lengthPrice', 'length price', lengthPrice, { atLeast: 0, atMost: 1e6 });
  demand('energyPrice', 'energy price', energyPrice, ENERGY_PRICE);
  if (auxiliaryEfficiency !== undefined) demand('auxiliaryEfficiency', 'fraction', auxiliaryEfficiency, { atLeast: 0.05, atMost: 1 });
  if (escalation !== undefined) demand('escalation', 'yearly rate', escalation, RATE);
  const planned = loops.find(({ lengthRatio }) => lengthRatio === 1);
  if (planned === undefined) {
    throw new InputError({ code: 'missing', argument: 'loops', value: undefined, allowed: 'one with the length ratio 1, the loop planned' });
  }
  const auxiliaryOf = ({ unmetEnergy }: LoopOfLength): number => unmetEnergy / (auxiliaryEfficiency ?? 1);
  const yearly = (loop: LoopOfLength): number => loop.usedElectricity + auxiliaryOf(loop);
  const weight = annuity(netRate(discountRate, escalation ?? 0), years);
  const lengths = loops.map((loop): LengthCost => {
    const { lengthRatio, pipe, limitMargin } = loop;
    const firstCostSaved = (planned.pipe - pipe) * lengthPrice;
    const yearlyExtraCost = (yearly(loop) - yearly(planned)) * energyPrice;
    return {
      lengthRatio,
      pipe,
      limitMargin,
      auxiliaryElectricity: auxiliaryOf(loop) as ElectricEnergy,
      usedElectricity: yearly(loop) as ElectricEnergy,
      firstCostSaved: firstCostSaved as Money,
      yearlyExtraCost: yearlyExtraCost as Money,
      ...(limitMargin < 0 ? {} : { netSavings: (firstCostSaved - yearlyExtraCost * weight) as Money }),
    };
  });
  const beyond = lengths.filter(({ limitMargin }) => limitMargin < 0);
  const findings = beyond.map(({ pipe, limitMargin }): Finding => {
    return { code: 'shorter-loop-beyond-limit', level: 'warning', values: { pipe, limitMargin }, source: 'common practice' };
  });
  return { lengths, findings };
}

function demandLoop(loop: LoopOfLength, place: string): void {
  demandObject(place, loop);
  demand(`${place}.lengthRatio`, 'ratio', loop.lengthRatio, { atLeast: 0.1, atMost: 10 });
  demand(`${place}.pipe`, 'pipe length', loop.pipe, { atLeast: 0, atMost: 1e6 });
  demand(`${place}.limitMargin`, 'temperature difference', loop.limitMargin, { atLeast: -1000, atMost: 1000 });
  demand(`${place}.usedElectricity`, 'electric energy', loop.usedElectricity, YEARLY_ENERGY);
  demand(`${place}.unmetEnergy`, 'energy', loop.unmetEnergy, YEARLY_ENERGY);
}
