import type { ElectricEnergy, Energy, Fraction, Ratio, Shape, Temperature, Time } from '../units/index.js';
import type { Course } from './simulation.js';

/** What one mode did over some time. */
export interface ModeLedger {
  /** Load of the building; where heat from the ground was given, that heat [J]. */
  readonly energy: Energy;
  /** Load that the unit meets [J]. */
  readonly metEnergy: Energy;
  /** Load that it does not meet: auxiliary heat, or cooling missed [J]. */
  readonly unmetEnergy: Energy;
  /** Share of the load that the unit meets; 1 where there is none [1]. */
  readonly coveredShare: Fraction;
  /** Time that the unit runs [s]. */
  readonly runTime: Time;
  /** Time at full output in which the unit would draw the same heat from the ground; its running time, for one level without loss by cycling [s]. */
  readonly fullHeatTime: Time;
  /** Electricity of the unit [J]. */
  readonly unitElectricity: ElectricEnergy;
  /** The part of it that is lost by starting and stopping, and reaches neither house nor ground; absent where nothing is [J]. */
  readonly cyclingElectricity?: ElectricEnergy;
  /** Electricity of the pump [J]. */
  readonly circulatorElectricity: ElectricEnergy;
  /** Heat from the ground in heating, to the ground in cooling [J]. */
  readonly groundEnergy: Energy;
  /** Load met over the electricity of unit and pump; absent where none was used [1]. */
  readonly performanceFactor?: Ratio;
  /** Coldest fluid that entered the heat pump in this mode; absent where it never ran [degC]. */
  readonly coldestFluid?: Temperature;
  /** Warmest fluid that entered the heat pump in this mode; absent where it never ran [degC]. */
  readonly warmestFluid?: Temperature;
}

/** Shape of {@link ModeLedger}. */
export const modeLedgerShape: Shape<ModeLedger> = {
  energy: 'energy',
  metEnergy: 'energy',
  unmetEnergy: 'energy',
  coveredShare: 'fraction',
  runTime: 'time',
  fullHeatTime: 'time',
  unitElectricity: 'electric energy',
  cyclingElectricity: { optional: 'electric energy' },
  circulatorElectricity: 'electric energy',
  groundEnergy: 'energy',
  performanceFactor: { optional: 'ratio' },
  coldestFluid: { optional: 'temperature' },
  warmestFluid: { optional: 'temperature' },
};

/**
 * Adds up what a mode did from one step to another.
 *
 * @param mode - heating takes the steps with a load above 0, cooling those below
 * @param loads - of the steps [W]
 * @param course - of the steps
 * @param step - length of a step [s]
 * @param from - first step
 * @param to - the step after the last
 * @returns energies [J] and running time [s]
 */
export function ledgerOf(mode: 'heating' | 'cooling', loads: ArrayLike<number>, course: Course, step: number, from: number, to: number): ModeLedger {
  const sign = mode === 'heating' ? 1 : -1;
  let load = 0;
  let unmet = 0;
  let running = 0;
  let fullHeat = 0;
  let electricity = 0;
  let lost = 0;
  let circulation = 0;
  let ground = 0;
  let coldest = Infinity;
  let warmest = -Infinity;
  // Of a unit of one level without loss by cycling the two are the same course.
  const levels = course.fullHeatShares !== course.runShares;
  for (let index = from; index < to; index += 1) {
    const each = sign * (loads[index] ?? 0);
    if (each <= 0) continue;
    load += each;
    unmet += sign * (course.unmetLoads[index] ?? 0);
    running += course.runShares[index] ?? 0;
    electricity += course.unitPowers[index] ?? 0;
    if (levels) {
      fullHeat += course.fullHeatShares[index] ?? 0;
      lost += course.cyclingPowers?.[index] ?? 0;
    }
    circulation += course.pumpPowers[index] ?? 0;
    ground += sign * (course.groundHeats[index] ?? 0);
    const entering = course.enteringFluids[index] ?? Number.NaN;
    if (entering < coldest) coldest = entering;
    if (entering > warmest) warmest = entering;
  }
  const used = electricity + circulation;
  return {
    energy: (load * step) as Energy,
    metEnergy: ((load - unmet) * step) as Energy,
    unmetEnergy: (unmet * step) as Energy,
    coveredShare: (load === 0 ? 1 : 1 - unmet / load) as Fraction,
    runTime: (running * step) as Time,
    fullHeatTime: ((levels ? fullHeat : running) * step) as Time,
    unitElectricity: (electricity * step) as ElectricEnergy,
    ...(lost > 0 ? { cyclingElectricity: (lost * step) as ElectricEnergy } : {}),
    circulatorElectricity: (circulation * step) as ElectricEnergy,
    groundEnergy: (ground * step) as Energy,
    ...(used > 0 ? { performanceFactor: ((load - unmet) / used) as Ratio } : {}),
    ...(warmest >= coldest ? { coldestFluid: coldest as Temperature, warmestFluid: warmest as Temperature } : {}),
  };
}
