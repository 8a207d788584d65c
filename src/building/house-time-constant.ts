import { demand, demandChoice } from '../errors/index.js';
import type { Area, Conductance, Shape, Time } from '../units/index.js';
import { FLOOR_HEAT_CAPACITY, HEAT_CAPACITY_CLASSES, type HeatCapacityClass } from './heat-capacity-classes.data.js';

/** What {@link houseTimeConstant} needs. */
export interface HouseTimeConstantInput {
  /** How heavy the building is inside. */
  readonly heatCapacityClass: HeatCapacityClass;
  /** Heated floor area, 1 to 1e6 [m2]. */
  readonly floorArea: Area;
  /** Heat loss per kelvin, 1e-6 to 1e9; that of a line with gains as offset, not of one anchored at design [W/K]. */
  readonly slope: Conductance;
}

/** Shape of {@link HouseTimeConstantInput}. */
export const houseTimeConstantInputShape: Shape<HouseTimeConstantInput> = {
  heatCapacityClass: HEAT_CAPACITY_CLASSES,
  floorArea: 'area',
  slope: 'conductance',
};

/**
 * Time in which a house without heat covers 63 % of the way to the temperature that it would end at.
 *
 * From a class the answer is good to a third. Better is a night without heat: τ = time / ln(rise above the end at its start / at its finish).
 *
 * @param input - class, floor area [m2], heat loss per kelvin [W/K]
 * @returns time constant [s]
 * @throws InputError when a number is impossible
 * @remarks
 * τ = C A/K with C of the class. Source: `iso13790`.
 *
 * Invariants: proportional to the floor area, inversely to the slope; heavier is slower.
 * @example
 * ```ts @import.meta.vitest
 * const { hours, squareMetres, wattsPerKelvin } = await import('../units/index.js');
 * const time = houseTimeConstant({ heatCapacityClass: 'medium', floorArea: squareMetres(150), slope: wattsPerKelvin(200) });
 * expect(hours.of(time)).toBeCloseTo(34.375, 9);
 * ```
 */
export function houseTimeConstant({ heatCapacityClass, floorArea, slope }: HouseTimeConstantInput): Time {
  demandChoice('heatCapacityClass', heatCapacityClass, HEAT_CAPACITY_CLASSES);
  demand('floorArea', 'area', floorArea, { atLeast: 1, atMost: 1e6 });
  demand('slope', 'conductance', slope, { atLeast: 1e-6, atMost: 1e9 });
  return ((FLOOR_HEAT_CAPACITY[heatCapacityClass] * floorArea) / slope) as Time;
}
