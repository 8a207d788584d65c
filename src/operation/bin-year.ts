import { type EnergySignature, loadAt } from '../building/index.js';
import { demand, demandChoice, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import { type PerformanceMap, seasonalPerformance } from '../heat-pump/index.js';
import type { ElectricEnergy, ElectricPower, Energy, Fraction, Time } from '../units/index.js';
import { beyondRating, idleBin, runningBin } from './bin-year-bin.js';
import { type CyclingLoss, demandCycling } from './bin-year-cycling.js';
import { demandWeather, ENTERING, type FluidBin } from './bin-year-fluid.js';
import type { BinYearResult, YearBin } from './bin-year-result.js';

/** What {@link binYear} needs. */
export interface BinYearInput {
  /** The building, in one mode. */
  readonly signature: EnergySignature;
  /** Bins with their entering fluid, 1 to 1000 in any order: of a season, or month by month each with its own fluid. */
  readonly bins: readonly FluidBin[];
  /** The unit in the same mode. */
  readonly unit: PerformanceMap;
  /** Loss below full load; none when left out. */
  readonly cycling?: CyclingLoss;
  /** Electric input of the loop pump while the unit runs, 0 to 1e6; none when left out [W]. */
  readonly pumpPower?: ElectricPower;
  /** Heat over electricity of the auxiliary heater, 0.5 to 1; 1 when left out [1]. */
  readonly auxiliaryEfficiency?: Fraction;
}

/**
 * A year, or a season, of a ground-source unit over bins of outdoor temperature.
 *
 * In each bin the unit at its entering fluid meets the load, with an electric auxiliary where it is short; the pump runs while the unit does. A bin remembers
 * nothing: neither heat stored in the building nor the lag of the ground, which only bins of single months bring in. A unit with nothing to do draws
 * nothing here. The pump's heat in the fluid is left out, which asks about 5 % more of the ground than there is. Cooling beyond the capacity is not met.
 *
 * @param input - signature, bins with fluid [degC, s], unit, loss by cycling, pump and auxiliary
 * @returns bin by bin, sums [J, s], seasonal performance at its boundaries, and what to look at
 * @throws InputError for a value out of its range, a unit of the other mode, fluid beyond the unit's rating points, or bins without time
 * @remarks
 * Ground heat follows from the COP while running steadily; what cycling costs is electricity on top that gives no heat, `cyclingElectricity`, so that in heating
 * energy = ground + unit electricity − cycling electricity + auxiliary heat. Part load: `ahri210240`, `en14825PartLoad`. Checked against worked years.
 *
 * Invariants tested: that balance to 1e-12; splitting a bin changes nothing; fractions in 0 to 1; H1 ≥ H2 ≥ H3 ≥ H4 for an auxiliary no better than H2.
 * @example
 * ```ts @import.meta.vitest
 * const { energySignature } = await import('../building/index.js');
 * const { performanceMap } = await import('../heat-pump/index.js');
 * const { celsius, electricWatts, fraction, hours, kilowatts, ratio } = await import('../units/index.js');
 * const year = binYear({
 *   signature: energySignature({
 *     mode: 'heating',
 *     form: 'anchored at design',
 *     designLoad: kilowatts(10),
 *     designOutdoor: celsius(-10),
 *     indoor: celsius(20),
 *     balancePoint: celsius(15),
 *   }),
 *   bins: [
 *     { outdoor: celsius(-8), time: hours(100), enteringFluid: celsius(0) },
 *     { outdoor: celsius(5), time: hours(3000), enteringFluid: celsius(4) },
 *   ],
 *   unit: performanceMap({
 *     mode: 'heating', // an invented unit
 *     points: [
 *       { enteringFluid: celsius(0), capacity: kilowatts(8), cop: ratio(3.4) },
 *       { enteringFluid: celsius(10), capacity: kilowatts(10), cop: ratio(4.1) },
 *     ],
 *   }),
 *   cycling: { form: 'degradation', degradation: fraction(0.1) },
 *   pumpPower: electricWatts(150),
 * });
 * expect(kilowatts.of(year.bins[0]?.unmet ?? kilowatts(0))).toBeCloseTo(1.2, 9);
 * expect(year.performance.boundaries.map(({ boundary }) => boundary)).toEqual(['H1', 'H2', 'H3', 'H4']);
 * ```
 */
export function binYear({ signature, bins, unit, cycling, pumpPower, auxiliaryEfficiency }: BinYearInput): BinYearResult {
  demandCount('bins', bins, 1, 1000);
  demandObject('signature', signature);
  demandObject('unit', unit);
  demandChoice('signature.mode', signature.mode, ['heating', 'cooling']);
  demandMode(signature, unit);
  const efficiency: number = auxiliaryEfficiency ?? 1;
  const pump: number = pumpPower ?? 0;
  demand('pumpPower', 'electric power', pump, { atLeast: 0, atMost: 1e6 });
  demand('auxiliaryEfficiency', 'fraction', efficiency, { atLeast: 0.5, atMost: 1 });
  demandCycling(cycling);
  const parts = bins.map((bin, index): YearBin => {
    const argument = `bins.${String(index)}`;
    demandWeather(argument, bin);
    demand(`${argument}.enteringFluid`, 'temperature', bin.enteringFluid, ENTERING);
    const load = loadAt(signature, bin.outdoor);
    return load === 0 || bin.time === 0 ? idleBin(bin, load) : locate(argument, () => runningBin(bin, load, unit, cycling, pump));
  });
  const over = (of: (part: YearBin) => number): number => parts.reduce((sum, part) => sum + part.time * of(part), 0);
  demand(
    'bins.time',
    'time',
    over(() => 1),
    { above: 0 },
    'all bins together hold no time',
  );
  const { mode } = signature;
  const energy = over(({ load }) => load);
  const unmetEnergy = over(({ unmet }) => unmet) as Energy;
  const unitElectricity = over(({ unitPower }) => unitPower) as ElectricEnergy;
  const circulatorElectricity = over(({ circulator }) => circulator) as ElectricEnergy;
  const auxiliary = mode === 'heating' ? { auxiliaryEnergy: unmetEnergy, auxiliaryElectricity: (unmetEnergy / efficiency) as ElectricEnergy } : {};
  const metEnergy = over(({ load, unmet }) => load - unmet) as Energy;
  const { findings, ...performance } = seasonalPerformance({
    mode,
    origin: 'rating points',
    metEnergy,
    unitElectricity,
    circulatorElectricity,
    ...auxiliary,
  });
  return {
    bins: parts,
    energy: energy as Energy,
    metEnergy,
    unmetEnergy,
    coveredShare: (unmetEnergy === 0 ? 1 : 1 - unmetEnergy / energy) as Fraction,
    runTime: over(({ runFraction }) => runFraction) as Time,
    unitElectricity,
    cyclingElectricity: over(({ cyclingPower }) => cyclingPower) as ElectricEnergy,
    circulatorElectricity,
    auxiliaryElectricity: (auxiliary.auxiliaryElectricity ?? 0) as ElectricEnergy,
    groundEnergy: over(({ groundHeat }) => groundHeat) as Energy,
    performance,
    findings: [...beyondRating(unit, parts), ...findings],
  };
}

function demandMode({ mode }: EnergySignature, unit: PerformanceMap): void {
  if (unit.mode === mode) return;
  throw new InputError({ code: 'impossible', argument: 'unit.mode', value: unit.mode, allowed: `a unit in ${mode}, as the building` });
}
