import type { Finding } from '../findings/index.js';
import { extrapolationFindings, type PerformanceMap, type StagedUnit } from '../heat-pump/index.js';
import type { ElectricPower, Fraction, Power, Ratio, RunFraction, Temperature } from '../units/index.js';
import { type PartLoadForm, cyclingAt } from './bin-year-cycling.js';
import type { FluidBin } from './bin-year-fluid.js';
import type { YearBin } from './bin-year-result.js';

/** A bin without load or without time. */
export function idleBin(bin: FluidBin, load: Power): YearBin {
  const nothing = { unitPower: 0 as ElectricPower, cyclingPower: 0 as ElectricPower, circulator: 0 as ElectricPower, groundHeat: 0 as Power };
  return { ...bin, load, unmet: 0 as Power, runFraction: 0 as RunFraction, ...nothing };
}

/** A bin in which the unit runs, at least part of the time. */
export function runningBin(bin: FluidBin, load: Power, unit: PerformanceMap | StagedUnit, cycling: PartLoadForm | undefined, pump: number): YearBin {
  const { enteringFluid, supplyTemperature } = bin;
  if ('levels' in unit) {
    const { metLoad, unmetLoad, runFraction, power, cyclingPower, groundHeat } = unit.at(enteringFluid, load, supplyTemperature);
    const steadyPower = power - cyclingPower;
    const loss = { cop: (metLoad / steadyPower) as Ratio, factor: (steadyPower / power) as Ratio };
    return {
      ...bin,
      load,
      ...loss,
      unmet: unmetLoad,
      runFraction,
      unitPower: power,
      cyclingPower,
      circulator: atPump(runFraction, pump),
      groundHeat,
    };
  }
  const { capacity, cop } = unit.at(enteringFluid);
  const met = Math.min(load, capacity);
  const { factor, runFraction } = cyclingAt(cycling, (met / capacity) as Fraction);
  const steadyPower = met / cop;
  const unitPower = steadyPower / factor;
  return {
    ...bin,
    load,
    capacity,
    cop,
    factor,
    unmet: (load - met) as Power,
    runFraction,
    unitPower: unitPower as ElectricPower,
    cyclingPower: (unitPower - steadyPower) as ElectricPower,
    circulator: atPump(runFraction, pump),
    groundHeat: (unit.mode === 'heating' ? met - steadyPower : met + steadyPower) as Power,
  };
}

/** The pump runs while the unit does. */
const atPump = (runFraction: number, pump: number): ElectricPower => (runFraction * pump) as ElectricPower;

/** One finding for the coldest and one for the warmest fluid beyond the rating points. */
export function beyondRating(unit: PerformanceMap | StagedUnit, parts: readonly YearBin[]): readonly Finding[] {
  const fluids = parts.filter(({ cop }) => cop !== undefined).map(({ enteringFluid }) => enteringFluid);
  if (fluids.length === 0) return [];
  const ends = new Set([Math.min(...fluids), Math.max(...fluids)]);
  return [...ends].flatMap((fluid) => extrapolationFindings(unit, fluid as Temperature));
}
