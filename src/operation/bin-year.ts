import { type EnergySignature, loadAt } from '../building/index.js';
import { demand, demandChoice, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import { type PerformanceMap, seasonalPerformance, type StagedUnit } from '../heat-pump/index.js';
import type { ElectricEnergy, ElectricPower, Energy, Fraction, Time } from '../units/index.js';
import { beyondRating, idleBin, runningBin } from './bin-year-bin.js';
import { type PartLoadForm, demandCycling } from './bin-year-cycling.js';
import { demandWeather, ENTERING, type FluidBin } from './bin-year-fluid.js';
import type { BinYearResult, YearBin } from './bin-year-result.js';

/** What {@link binYear} needs. */
export interface BinYearInput {
  /** The building, in one mode. */
  readonly signature: EnergySignature;
  /** Bins with their entering fluid, 1 to 10 000 in any order: of a season, month by month each with its own fluid, or every hour. */
  readonly bins: readonly FluidBin[];
  /** The unit in the same mode: of one level, or of several levels or speeds with whatever loss by cycling it has. */
  readonly unit: PerformanceMap | StagedUnit;
  /** Loss of a unit of one level below full load; none when left out. */
  readonly cycling?: PartLoadForm;
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
 * nothing here. The pump's heat in the fluid is left out: in heating the ground gives 2 to 3 % less than said here,
 * in cooling it takes as much more. Cooling beyond the capacity is not met.
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
export function binYear(input: BinYearInput): BinYearResult {
  const { signature, bins, unit, cycling } = input;
  const { pumpPower = 0, auxiliaryEfficiency = 1 }: { readonly pumpPower?: number; readonly auxiliaryEfficiency?: number } = input;
  demandCount('bins', bins, 1, 10_000);
  demandObject('signature', signature);
  demandObject('unit', unit);
  demandChoice('signature.mode', signature.mode, ['heating', 'cooling']);
  demandMode(signature, unit);
  demand('pumpPower', 'electric power', pumpPower, { atLeast: 0, atMost: 1e6 });
  demand('auxiliaryEfficiency', 'fraction', auxiliaryEfficiency, { atLeast: 0.5, atMost: 1 });
  demandCycling(cycling);
  if (cycling !== undefined && 'levels' in unit) {
    throw new InputError({
      code: 'impossible',
      argument: 'cycling',
      value: cycling.form,
      allowed: 'none with a unit of several levels, which has its own',
    });
  }
  const parts = bins.map((bin, index): YearBin => {
    const argument = `bins.${String(index)}`;
    demandWeather(argument, bin);
    const { outdoor, time, enteringFluid, supplyTemperature } = bin;
    demand(`${argument}.enteringFluid`, 'temperature', enteringFluid, ENTERING);
    if (supplyTemperature !== undefined) demand(`${argument}.supplyTemperature`, 'temperature', supplyTemperature, { atLeast: -50, atMost: 150 });
    // Whatever else a caller hangs on a bin is not carried along.
    const own: FluidBin = { outdoor, time, enteringFluid, ...(supplyTemperature !== undefined && { supplyTemperature }) };
    const load = loadAt(signature, outdoor);
    return load === 0 || time === 0 ? idleBin(own, load) : locate(argument, () => runningBin(own, load, unit, cycling, pumpPower));
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
  const auxiliary =
    mode === 'heating' ? { auxiliaryEnergy: unmetEnergy, auxiliaryElectricity: (unmetEnergy / auxiliaryEfficiency) as ElectricEnergy } : {};
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

function demandMode({ mode }: EnergySignature, unit: PerformanceMap | StagedUnit): void {
  if (typeof unit.at !== 'function') {
    throw new InputError({
      code: 'missing',
      argument: 'unit.at',
      value: undefined,
      allowed: 'a unit as a performance map or a unit of several levels',
    });
  }
  if (unit.mode === mode) return;
  throw new InputError({ code: 'impossible', argument: 'unit.mode', value: unit.mode, allowed: `a unit in ${mode}, as the building` });
}
