import { demand, demandChoice, demandObject, InputError } from '../errors/index.js';
import type { DegreeDays, Energy, Power, Temperature, Time } from '../units/index.js';
import { LOAD, OUTDOOR } from './checks.js';
import type { EnergySignature } from './signature.js';

/** What {@link hourlyLoads} needs; heating, cooling or both. */
export interface HourlyLoadsInput {
  /** The building in heating; no heating when left out. */
  readonly heating?: EnergySignature;
  /** The building in cooling, its balance point at least that of heating; no cooling when left out. */
  readonly cooling?: EnergySignature;
  /** Mean outdoor temperature of each step, 1 to 1e6 of them, each −95 to 65 [degC]. */
  readonly temperatures: Float64Array | readonly Temperature[];
  /** Length of a step, 1 s to a day; beyond an hour the course of the day is lost [s]. */
  readonly step: Time;
}

/** What a building asks for in one mode over all steps. */
export interface HourlyModeLoads {
  /** Heat or cold of all steps [J]. */
  readonly energy: Energy;
  /** On the base of the balance point, by step [K.d]. */
  readonly degreeDays: DegreeDays;
  /** Time with a load [s]. */
  readonly loadTime: Time;
  /** Largest load of a step [W]. */
  readonly peakLoad: Power;
  /** The step it comes in, counted from 0; the first of equals, and 0 where there is no load. */
  readonly peakStep: number;
  /** Hours at the design load that would hold the energy [s]. */
  readonly fullLoadHours: Time;
}

/** Loads of a building step by step. */
export interface HourlyLoads {
  /** Mean load of each step: positive where heat is wanted, negative where cold is, 0 between the balance points [W]. */
  readonly loads: Float64Array;
  /** Length of a step [s]. */
  readonly step: Time;
  /** All of the heating; absent where the building is not heated. */
  readonly heating: HourlyModeLoads | undefined;
  /** All of the cooling, as positive numbers; absent where the building is not cooled. */
  readonly cooling: HourlyModeLoads | undefined;
}

/** More steps than any study has, a year of minutes among them. */
const MOST_STEPS = 1e6;

/**
 * Loads of a building hour by hour from outdoor temperatures.
 *
 * Each step is taken at its mean temperature, without memory of the step before: the mass of a house, sun and wind are not in a line. Good for
 * days and longer, and for the heat of a year.
 *
 * @param input - signatures of heating, cooling or both; temperatures [degC] and the length of their step
 * @returns signed loads [W], and energy, degree days, peak and full-load hours of each mode
 * @throws InputError when a number is impossible, neither mode is given, a signature is of the other mode, or cooling begins below the balance
 * point of heating
 * @remarks
 * L = slope · max(0, θbal − θo) in heating, less slope · max(0, θo − θbal) in cooling. Checked against hour-by-hour sums of a weather year
 * computed outside this library (`loadWeatherChecks`).
 *
 * Invariants: energy = slope · degree days; sum of all loads = heating − cooling; every load is that of {@link loadAt}; the order of steps does
 * not matter to the sums.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, hours, kilowatts, kilowattHours } = await import('../units/index.js');
 * const { energySignature } = await import('./signature.js');
 * const house = { designLoad: kilowatts(12), designOutdoor: celsius(-15), indoor: celsius(21), balancePoint: celsius(16) };
 * const heating = energySignature({ mode: 'heating', form: 'anchored at design', ...house });
 * const temperatures = [-15, 0.5, 16, 20].map((t) => celsius(t));
 * const year = hourlyLoads({ heating, temperatures, step: hours(1) });
 * expect([...year.loads]).toEqual([12_000, 6000, 0, 0]);
 * expect(kilowattHours.of(year.heating?.energy ?? kilowattHours(0))).toBeCloseTo(18, 9);
 * expect(hours.of(year.heating?.fullLoadHours ?? hours(0))).toBeCloseTo(1.5, 9);
 * ```
 */
export function hourlyLoads({ heating, cooling, temperatures, step }: HourlyLoadsInput): HourlyLoads {
  demandLines(heating, cooling);
  demandTemperatures(temperatures);
  demand('step', 'time', step, { atLeast: 1, atMost: 86_400 }, 'seconds; an hour is 3600');
  const loads = new Float64Array(temperatures.length);
  return {
    loads,
    step,
    heating: heating && addLoads(loads, heating, temperatures, step),
    cooling: cooling && addLoads(loads, cooling, temperatures, step),
  };
}

/** Adds the loads of one mode and sums them up. */
function addLoads(
  loads: Float64Array,
  { mode, slope, balancePoint, designLoad }: EnergySignature,
  temperatures: HourlyLoadsInput['temperatures'],
  step: Time,
): HourlyModeLoads {
  const sign = mode === 'heating' ? 1 : -1;
  let [sum, steps, most, peakStep] = [0, 0, 0, 0];
  for (let index = 0; index < loads.length; index += 1) {
    const beyond = sign * (balancePoint - (temperatures[index] ?? balancePoint));
    if (beyond <= 0) continue;
    loads[index] = sign * slope * beyond;
    sum += beyond;
    steps += 1;
    if (beyond <= most) continue;
    [most, peakStep] = [beyond, index];
  }
  const energy = slope * sum * step;
  return {
    energy: energy as Energy,
    degreeDays: ((sum * step) / 86_400) as DegreeDays,
    loadTime: (steps * step) as Time,
    peakLoad: (slope * most) as Power,
    peakStep,
    fullLoadHours: (energy / designLoad) as Time,
  };
}

/** Refuses lines that no building has, looking at what is computed with. */
function demandLines(heating: EnergySignature | undefined, cooling: EnergySignature | undefined): void {
  if (heating === undefined && cooling === undefined) {
    const hint = 'a building without either has no load';
    throw new InputError({ code: 'missing', argument: 'heating', value: undefined, allowed: 'a signature of heating, of cooling or both', hint });
  }
  if (heating !== undefined) demandLine('heating', heating);
  if (cooling !== undefined) demandLine('cooling', cooling);
  if (heating === undefined || cooling === undefined || cooling.balancePoint >= heating.balancePoint) return;
  throw new InputError({
    code: 'impossible',
    argument: 'cooling.balancePoint',
    value: { kind: 'temperature', value: cooling.balancePoint },
    allowed: `at least that of heating, ${String(heating.balancePoint)} degC`,
    hint: 'the building would be heated and cooled at once; 2 to 4 K between the two are usual',
  });
}

function demandLine(mode: 'heating' | 'cooling', line: EnergySignature): void {
  demandObject(mode, line);
  demandChoice(`${mode}.mode`, line.mode, [mode]);
  demand(`${mode}.slope`, 'conductance', line.slope, { atLeast: 1e-6, atMost: 1e9 });
  demand(`${mode}.balancePoint`, 'temperature', line.balancePoint, OUTDOOR);
  demand(`${mode}.designLoad`, 'power', line.designLoad, LOAD);
}

/** Refuses temperatures that no weather has. A year has thousands, so that only a faulty one is looked at closely. */
function demandTemperatures(temperatures: HourlyLoadsInput['temperatures']): void {
  if (!isSeries(temperatures)) {
    const code = temperatures === undefined || temperatures === null ? 'missing' : 'wrong-type';
    throw new InputError({ code, argument: 'temperatures', value: undefined, allowed: 'a list of temperatures or a Float64Array' });
  }
  if (temperatures.length === 0 || temperatures.length > MOST_STEPS) {
    const code = temperatures.length === 0 ? 'too-few' : 'too-many';
    const value = { kind: 'count', value: temperatures.length } as const;
    throw new InputError({ code, argument: 'temperatures', value, allowed: `1 to ${String(MOST_STEPS)} steps` });
  }
  const { atLeast, atMost } = OUTDOOR;
  for (let index = 0; index < temperatures.length; index += 1) {
    const outdoor = temperatures[index];
    if (typeof outdoor === 'number' && outdoor >= atLeast && outdoor <= atMost) continue;
    demand(`temperatures.${String(index)}`, 'temperature', outdoor as Temperature, OUTDOOR);
  }
}

const isSeries = (given: unknown): boolean => Array.isArray(given) || given instanceof Float64Array;
