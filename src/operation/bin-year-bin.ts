import type { Finding } from '../findings/index.js';
import { extrapolationFindings, type PerformanceMap } from '../heat-pump/index.js';
import type { ElectricPower, Fraction, Power, RunFraction, Temperature } from '../units/index.js';
import { type CyclingLoss, cyclingAt } from './bin-year-cycling.js';
import type { FluidBin } from './bin-year-fluid.js';
import type { YearBin } from './bin-year-result.js';

/** A bin without load or without time. */
export function idleBin({ outdoor, time, enteringFluid }: FluidBin, load: Power): YearBin {
  const nothing = { unitPower: 0 as ElectricPower, cyclingPower: 0 as ElectricPower, circulator: 0 as ElectricPower, groundHeat: 0 as Power };
  return { outdoor, time, enteringFluid, load, unmet: 0 as Power, runFraction: 0 as RunFraction, ...nothing };
}

/** A bin in which the unit runs, at least part of the time. */
export function runningBin(
  { outdoor, time, enteringFluid }: FluidBin,
  load: Power,
  unit: PerformanceMap,
  cycling: CyclingLoss | undefined,
  pump: number,
): YearBin {
  const { capacity, cop } = unit.at(enteringFluid);
  const met = Math.min(load, capacity);
  const { factor, runFraction } = cyclingAt(cycling, (met / capacity) as Fraction);
  const steadyPower = met / cop;
  const unitPower = steadyPower / factor;
  return {
    outdoor,
    time,
    enteringFluid,
    load,
    capacity,
    cop,
    factor,
    unmet: (load - met) as Power,
    runFraction,
    unitPower: unitPower as ElectricPower,
    cyclingPower: (unitPower - steadyPower) as ElectricPower,
    circulator: (runFraction * pump) as ElectricPower,
    groundHeat: (unit.mode === 'heating' ? met - steadyPower : met + steadyPower) as Power,
  };
}

/** One finding for the coldest and one for the warmest fluid beyond the rating points. */
export function beyondRating(unit: PerformanceMap, parts: readonly YearBin[]): readonly Finding[] {
  const fluids = parts.filter(({ capacity }) => capacity !== undefined).map(({ enteringFluid }) => enteringFluid);
  if (fluids.length === 0) return [];
  const ends = new Set([Math.min(...fluids), Math.max(...fluids)]);
  return [...ends].flatMap((fluid) => extrapolationFindings(unit, fluid as Temperature));
}
