import { demand, demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { ElectricPower, Fraction, Power, Shape } from '../units/index.js';
import { shareFindings } from './desuperheater-findings.js';
import { groundHeat } from './ground-heat.js';

/** What {@link desuperheaterState} needs. */
export interface DesuperheaterInput {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** Heating or cooling capacity of the unit, above 0 to 1e8 [W]. */
  readonly capacity: Power;
  /** Electric input of the unit, 0 to 1e8, less than the capacity in heating [W]. */
  readonly power: ElectricPower;
  /** Share of the condenser heat that the desuperheater takes, 0 to 0.5; 0.05 to 0.15 is usual [1]. */
  readonly desuperheaterShare: Fraction;
}

/** Heat flows of a unit with a desuperheater while its compressor runs. */
export interface DesuperheaterState {
  /** All the heat that the condenser side gives off [W]. */
  readonly condenserHeat: Power;
  /** What the desuperheater takes of it for hot water [W]. */
  readonly desuperheaterHeat: Power;
  /** Heating or cooling that the house gets: in heating less than the capacity [W]. */
  readonly houseHeat: Power;
  /** Heat from the ground in heating, to the ground in cooling [W]. */
  readonly groundHeat: Power;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link DesuperheaterInput}. */
export const desuperheaterInputShape: Shape<DesuperheaterInput> = {
  mode: ['heating', 'cooling'],
  capacity: 'power',
  power: 'electric power',
  desuperheaterShare: 'fraction',
};

/**
 * Where the heat of a unit goes that warms hot water by its hot gas.
 *
 * In heating that heat is missed by the house: the ground gives what it gave before, and the house gets less while the compressor runs. In cooling it is
 * heat that the ground need not take. Nothing of it is there while the compressor stands. The electricity of its small pump is not counted, and the unit is
 * taken to run as without it.
 *
 * @param input - mode, capacity [W], electric input [W] and the share of the condenser heat [1]
 * @returns heat of condenser, desuperheater, house and ground while the unit runs [W]
 * @throws InputError when a number is impossible, or electricity alone would make the heat
 * @remarks
 * Heating: condenser Qh, house Qh − Qd, ground Qh − P. Cooling: condenser Qc + P, house Qc, ground Qc + P − Qd. Usual share after `desuperheaterPractice`.
 *
 * Invariants: ground + electricity = house + desuperheater in heating; cooling + electricity = ground + desuperheater; a share of 0 is {@link groundHeat}.
 * @example
 * ```ts @import.meta.vitest
 * const { electricKilowatts, kilowatts, percent } = await import('../units/index.js');
 * const unit = { capacity: kilowatts(10), power: electricKilowatts(2.5), desuperheaterShare: percent(10) };
 * expect(desuperheaterState({ mode: 'heating', ...unit }).houseHeat).toBeCloseTo(9000, 9);
 * expect(desuperheaterState({ mode: 'cooling', ...unit }).groundHeat).toBeCloseTo(11_250, 9);
 * ```
 */
export function desuperheaterState({ mode, capacity, power, desuperheaterShare }: DesuperheaterInput): DesuperheaterState {
  demandChoice('mode', mode, ['heating', 'cooling']);
  demand('capacity', 'power', capacity, { above: 0, atMost: 1e8 });
  demandShare(desuperheaterShare);
  const ground = groundHeat({ mode, capacity, power });
  const condenser = mode === 'heating' ? capacity : capacity + power;
  const taken = desuperheaterShare * condenser;
  return {
    condenserHeat: condenser as Power,
    desuperheaterHeat: taken as Power,
    houseHeat: (mode === 'heating' ? capacity - taken : capacity) as Power,
    groundHeat: (mode === 'heating' ? ground : ground - taken) as Power,
    findings: shareFindings(desuperheaterShare),
  };
}

/** Refuses a share that no hot gas holds. */
export function demandShare(desuperheaterShare: Fraction): void {
  demand('desuperheaterShare', 'fraction', desuperheaterShare, { atLeast: 0, atMost: 0.5 }, 'a share, not percent');
}
