import { demand, demandChoice, InputError } from '../errors/index.js';
import type { ElectricPower, Power, Shape } from '../units/index.js';

/** What the loop has to carry is told from this. */
export interface GroundHeatInput {
  /** Heating or cooling. */
  readonly mode: 'heating' | 'cooling';
  /** Heating or cooling capacity, 0 to 1e8 [W]. */
  readonly capacity: Power;
  /** Electric input of the unit, 0 to 1e8 [W]. */
  readonly power: ElectricPower;
  /** Electricity of the loop circulator that ends as heat in the fluid, 0 to 1e6; none when left out [W]. */
  readonly circulator?: ElectricPower;
}

/** Shape of {@link GroundHeatInput}. */
export const groundHeatInputShape: Shape<GroundHeatInput> = {
  mode: ['heating', 'cooling'],
  capacity: 'power',
  power: 'electric power',
  circulator: { optional: 'electric power' },
};

/**
 * Heat that the unit takes from the ground in heating, or gives to it in cooling, while it runs.
 *
 * @param of - mode, capacity [W], electric input [W], and where it counts the circulator's [W]
 * @returns heat from or to the ground, above 0 [W]
 * @throws InputError when a number is impossible, or electricity alone would make the heat
 * @remarks
 * Heat = ground + electricity: capacity − power − circulator in heating, capacity + power + circulator in cooling. With COP:
 * capacity (1 − 1/COP) and capacity (1 + 1/COP). The circulator counts when it runs inside the boundary; it is about 5 % of the electricity, 2 to 3 % of the heat from the ground. Losses of casing and indoor piping are not counted.
 *
 * Invariants: ground + electricity = capacity in heating, ground = capacity + electricity in cooling.
 * @example
 * ```ts @import.meta.vitest
 * const { electricKilowatts, kilowatts } = await import('../units/index.js');
 * const unit = { capacity: kilowatts(8), power: electricKilowatts(2.35) };
 * expect(kilowatts.of(groundHeat({ mode: 'heating', ...unit }))).toBeCloseTo(5.65, 9);
 * expect(kilowatts.of(groundHeat({ mode: 'cooling', ...unit }))).toBeCloseTo(10.35, 9);
 * ```
 */
export function groundHeat({ mode, capacity, power, circulator }: GroundHeatInput): Power {
  demandChoice('mode', mode, ['heating', 'cooling']);
  demand('capacity', 'power', capacity, { atLeast: 0, atMost: 1e8 });
  demand('power', 'electric power', power, { atLeast: 0, atMost: 1e8 });
  if (circulator !== undefined) demand('circulator', 'electric power', circulator, { atLeast: 0, atMost: 1e6 });
  const electricity = power + (circulator ?? 0);
  if (mode === 'cooling') return (capacity + electricity) as Power;
  if (electricity <= capacity) return (capacity - electricity) as Power;
  throw new InputError({
    code: 'impossible',
    argument: 'power',
    value: { kind: 'electric power', value: power },
    allowed: `with the circulator at most the heating capacity, ${String(capacity)} W`,
    hint: 'capacity in kW and power in W may be mixed, or the two interchanged',
  });
}
