import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { type FluidChoice, type OfAnyFluid, volumeChange } from '../fluid/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { Pressure, Ratio, Shape, Temperature } from '../units/index.js';
import {
  boreCompliance,
  boreExpansion,
  demandExpansion,
  demandModulus,
  demandRing,
  MONTHS,
  type PipeRing,
  WATER_COMPRESSIBILITY,
  type WallGive,
} from './wall-give.js';

/** A sealed loop of polyethylene whose pressure is wanted over the year. */
export interface SealedLoop extends OfAnyFluid<FluidChoice>, WallGive {
  /** The pipe that holds nearly all of the fluid. */
  readonly pipe: PipeRing;
  /** Mean temperature of the fluid when the loop was charged and shut [degC]. */
  readonly filledAt: Temperature;
  /** Coldest mean temperature of the fluid [degC]. */
  readonly coldestMean: Temperature;
  /** Warmest mean temperature of the fluid [degC]. */
  readonly warmestMean: Temperature;
  /** Gauge pressure after charging, 0 to 2e6 [Pa]. */
  readonly charge: Pressure;
  /** What the weakest part bears at its temperature, 1e4 to 1e7; held against 1e6 with a warning when left out [Pa]. */
  readonly rating?: Pressure;
}

/** A sealed loop at one temperature, against what it was when it was shut. */
export interface SealedState {
  /** Growth of the fluid left to itself, less that of the bore, as a share of the contents: what a vessel would have to take up [1]. */
  readonly mismatch: Band<'ratio'>;
  /** Change of pressure [Pa]. */
  readonly pressureChange: Band<'pressure'>;
  /** Gauge pressure; below 0 where fluid and wall would pull a vacuum [Pa]. */
  readonly pressure: Band<'pressure'>;
}

/** How the pressure of a sealed loop moves. */
export interface SealedPressureSwing {
  /** At the coldest. */
  readonly coldest: SealedState;
  /** At the warmest. */
  readonly warmest: SealedState;
  /** Volume that a vessel has to accept, as a share of the contents: the largest mismatch of all limits [1]. */
  readonly acceptance: Ratio;
}

/** A {@link SealedPressureSwing} with its findings. */
export interface SealedPressureSwingResult extends SealedPressureSwing {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

const sealedStateShape: Shape<SealedState> = {
  mismatch: /* @__PURE__ */ bandShape('ratio'),
  pressureChange: /* @__PURE__ */ bandShape('pressure'),
  pressure: /* @__PURE__ */ bandShape('pressure'),
};

/** Shape of {@link SealedPressureSwing}. */
export const sealedPressureSwingShape: Shape<SealedPressureSwing> = { coldest: sealedStateShape, warmest: sealedStateShape, acceptance: 'ratio' };

/**
 * Pressure of a sealed loop of polyethylene at its coldest and its warmest.
 *
 * The bore widens with warmth more than most fluids below 20 °C, so that pressure **falls as the loop warms** and rises as it cools, against what
 * is known from copper. Direction and order of size are all that can be had: expansion and modulus of the wall are uncertain by factors of 1.5 and
 * 4, and limits of both at once are a factor of ten apart. Metal parts, a vessel and stiff soil around the pipe lessen the swing. Beside it the wall
 * creeps: a loop newly charged loses pressure for days without a leak; charge it again, then watch.
 *
 * @param loop - see {@link SealedLoop}
 * @returns mismatch of volumes [1] and pressures [Pa] with limits, and findings
 * @throws InputError for a value out of its range, or a fluid frozen at a temperature given
 * @remarks Δp = (fluid − bore)/(C + 1/K), fluid from the densities, bore 2 α (1 + ν) Δt, C = Lamé's ring in plane strain with ν 0.45. Source:
 * `polyethyleneGive` for α and modulus; the model is ours. Checked against two states worked out by hand and the range printed for one (H-SEALED). The thin ring that others
 * take gives 15 % more swing in DR 11. Invariants tested: no change at the filling temperature; the estimate lies in its limits.
 * @example
 * ```ts @import.meta.vitest
 * const { bars, celsius, diameterMillimetres, massPercent } = await import('../units/index.js');
 * const { coldest, warmest } = sealedPressureSwing({
 *   pipe: { outsideDiameter: diameterMillimetres(33), insideDiameter: diameterMillimetres(27) },
 *   fluid: 'propylene-glycol',
 *   massFraction: massPercent(25),
 *   filledAt: celsius(15),
 *   coldestMean: celsius(-2),
 *   warmestMean: celsius(25),
 *   charge: bars(2),
 * });
 * const inBars = ({ low, estimate, high }: typeof coldest.pressureChange) => [low, estimate, high].map((each) => bars.of(each).toFixed(1));
 * expect(inBars(coldest.pressureChange)).toEqual(['0.3', '1.0', '4.0']);
 * expect(inBars(warmest.pressureChange)).toEqual(['-1.5', '-0.2', '0.2']);
 * ```
 */
export function sealedPressureSwing(loop: SealedLoop): SealedPressureSwingResult {
  const { pipe, fluid, massFraction, filledAt, charge, rating } = loop;
  demandRing(pipe);
  const expansion = demandExpansion(loop.linearExpansion);
  const modulus = demandModulus(loop.modulus, MONTHS);
  demand('filledAt', 'temperature', filledAt);
  demand('coldestMean', 'temperature', loop.coldestMean, { atMost: filledAt });
  demand('warmestMean', 'temperature', loop.warmestMean, { atLeast: filledAt });
  demand('charge', 'pressure', charge, { atLeast: 0, atMost: 2e6 });
  if (rating !== undefined) demand('rating', 'pressure', rating, { atLeast: 1e4, atMost: 1e7 });

  const coverage = Math.min(expansion.coverage, modulus.coverage);
  const stateAt = (temperature: Temperature): SealedState => {
    const fluidGrowth = volumeChange({ fluid, massFraction, filledAt, temperature });
    const mismatchOf = (alpha: number): number => fluidGrowth - boreExpansion(alpha) * (temperature - filledAt);
    const changeOf = (alpha: number, young: number): number => mismatchOf(alpha) / (boreCompliance(pipe, young) + WATER_COMPRESSIBILITY);
    const [slack, tight] = [expansion.low, expansion.high];
    const corners = [slack, tight].flatMap((alpha) => [changeOf(alpha, modulus.low), changeOf(alpha, modulus.high)]);
    const estimate = changeOf(expansion.estimate, modulus.estimate);
    const banded = (middle: number, all: readonly number[]): Record<'low' | 'estimate' | 'high' | 'coverage', number> => ({
      low: Math.min(...all),
      estimate: middle,
      high: Math.max(...all),
      coverage,
    });
    return {
      mismatch: banded(mismatchOf(expansion.estimate), [mismatchOf(slack), mismatchOf(tight)]),
      pressureChange: banded(estimate, corners),
      pressure: banded(
        charge + estimate,
        corners.map((change) => charge + change),
      ),
    } as SealedState;
  };
  const [coldest, warmest] = [stateAt(loop.coldestMean), stateAt(loop.warmestMean)];
  const acceptance = Math.max(...[coldest, warmest].flatMap(({ mismatch }) => [Math.abs(mismatch.low), Math.abs(mismatch.high)])) as Ratio;
  const states = [coldest.pressure, warmest.pressure];
  return { coldest, warmest, acceptance, findings: [...lowFinding(states), ...highFinding(states, rating)] };
}

function lowFinding(states: readonly Band<'pressure'>[]): readonly Finding[] {
  const lowest = Math.min(...states.map(({ low }) => low)) as Pressure;
  const expected = Math.min(...states.map(({ estimate }) => estimate)) as Pressure;
  if (lowest >= LEAST_PRESSURE) return [];
  const values = { lowest, expected, least: LEAST_PRESSURE };
  return [{ code: 'sealed-pressure-low', level: expected < LEAST_PRESSURE ? 'warning' : 'note', values, source: 'sealedLoopCharge' }];
}

function highFinding(states: readonly Band<'pressure'>[], given: Pressure | undefined): readonly Finding[] {
  const highest = Math.max(...states.map(({ high }) => high)) as Pressure;
  const expected = Math.max(...states.map(({ estimate }) => estimate)) as Pressure;
  const rating = given ?? USUAL_RATING;
  if (highest <= rating) return [];
  const values = { highest, expected, rating };
  return [{ code: 'sealed-pressure-high', level: given === undefined ? 'warning' : 'stop', values, source: 'common practice' }];
}

/** What pumps, valves and the water side of heat pumps are usually made for [Pa]. */
const USUAL_RATING = 1e6 as Pressure;

/** 5 psi, below which the pump's inlet may draw air or boil [Pa]. */
const LEAST_PRESSURE = 34_473.78646584145 as Pressure;
