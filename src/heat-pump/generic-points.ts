import { demand, demandCount, InputError } from '../errors/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { Fraction, Power, Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { ruhnauCop, staffellCop } from './cop.js';
import type { DerivedRatingPoints } from './derived-points.js';
import { ENTERING } from './rating-point.js';

/** What an average unit is made from. */
export interface GenericPointsInput {
  /** Heating capacity at the entering fluid of `ratedEntering`, 1 to 1e8 [W]. */
  readonly capacity: Power;
  /** Fluid entering at which the capacity holds, −15 to 25 [degC]. */
  readonly ratedEntering: Temperature;
  /** Water supplied to the house, 25 to 65; the regressions are of units that heat water, not air [degC]. */
  readonly supplyTemperature: Temperature;
  /** Entering fluids wanted, each 20 to 60 K below the supply, 2 to 100; −5, 0, 5, 10 and 15 °C as far as they are that when left out [degC]. */
  readonly wantedEntering?: readonly Temperature[];
  /** Rise of the capacity per kelvin of entering fluid, over the capacity stated, 0 to 0.06; 0.027 when left out [1]. */
  readonly capacityRise?: Ratio;
}

/** The COP that two regressions give an average unit. */
export interface GenericCop {
  /** Fluid entering the heat pump [degC]. */
  readonly enteringFluid: Temperature;
  /** Mean of the two as installed, and the two of them as its limits. */
  readonly copBand: Band<'ratio'>;
}

/** Rating points of an average unit, with how far the regressions disagree. */
export interface GenericRatingPoints extends DerivedRatingPoints {
  /** The COP of each point with its limits. */
  readonly copBands: readonly GenericCop[];
  /** Largest difference of the two regressions over their mean [1]. */
  readonly disagreement: Fraction;
  /** What installed units reach of it, taken off already [1]. */
  readonly installedShare: Fraction;
}

/** Shape of {@link GenericPointsInput}. */
export const genericPointsInputShape: Shape<GenericPointsInput> = {
  capacity: 'power',
  ratedEntering: 'temperature',
  supplyTemperature: 'temperature',
  wantedEntering: { optional: { list: 'temperature' } },
  capacityRise: { optional: 'ratio' },
};

/** Shape of {@link GenericCop}. */
export const genericCopShape: Shape<GenericCop> = { enteringFluid: 'temperature', copBand: /* @__PURE__ */ bandShape('ratio') };

/** What installed units reach of a regression made from data sheets, `ruhnau2019` [1]. */
const INSTALLED = 0.85;
/** Of two independent and unbiased tellings, the truth lies between them half of the times [1]. */
const COVERAGE = 0.5 as Fraction;
/** Rise of the capacity near 0 °C as catalogues have it; own judgement [1/K]. */
const USUAL_RISE = 0.027 as Ratio;
/** Where a straight line of the capacity is led no further [1]. */
const LEAST_SHARE = 0.3;
const USUAL_ENTERING: readonly number[] = [-5, 0, 5, 10, 15];
/** Lifts that both regressions were made for [K]. */
const LIFTS = { least: 20, most: 60 } as const;

/**
 * Rating points of an average ground-source unit that heats water, for a first look before a unit is chosen. Nothing in the library reaches for them by itself.
 *
 * COP is the mean of the regressions of Staffell and of Ruhnau, times 0.85 for installed performance; the two are the limits of its band, and differ by up to
 * 15 % at the ends. Capacity is a straight line through the one stated. No loop may be built by them: ask the maker for the unit's own points.
 *
 * @param input - capacity [W], where it holds [degC], water supplied [degC]; see {@link GenericPointsInput}
 * @returns points with the origin `estimated`, COP bands, and a finding that says what they are
 * @throws InputError when a number is impossible, or an entering fluid is not 20 to 60 K below the supply
 * @remarks
 * Sources: `staffell2012`, `ruhnau2019` (coefficients of its data file, and the 0.85). The limits are two tellings, not an interval; `coverage` 0.5 is what two
 * independent and unbiased ones would have. Invariants: the COP falls as the lift grows; the points scale with the capacity; the band holds its estimate.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts } = await import('../units/index.js');
 * const { points, ratingOrigin, copBands } = genericRatingPoints({
 *   capacity: kilowatts(8),
 *   ratedEntering: celsius(0),
 *   supplyTemperature: celsius(40),
 * });
 * expect(ratingOrigin).toBe('estimated');
 * expect(points[1]?.cop).toBeCloseTo(0.85 * (3.9444 + 3.872) / 2, 9);
 * expect(copBands[1]?.copBand.low).toBeCloseTo(0.85 * 3.872, 9);
 * ```
 */
export function genericRatingPoints(input: GenericPointsInput): GenericRatingPoints {
  const { capacity, ratedEntering, supplyTemperature, wantedEntering, capacityRise = USUAL_RISE } = input;
  demand('capacity', 'power', capacity, { atLeast: 1, atMost: 1e8 });
  demand('ratedEntering', 'temperature', ratedEntering, { atLeast: -15, atMost: 25 });
  demand('supplyTemperature', 'temperature', supplyTemperature, { atLeast: 25, atMost: 65 });
  demand('capacityRise', 'ratio', capacityRise, { atLeast: 0, atMost: 0.06 }, 'a share of the capacity per kelvin, not per cent');
  if (wantedEntering !== undefined) demandCount('wantedEntering', wantedEntering, 2, 100);
  const rows = wantedEntering === undefined ? [...usualFluids(supplyTemperature)] : [...wantedEntering];
  rows.forEach((enteringFluid, index) => {
    const range = { atLeast: Math.max(supplyTemperature - LIFTS.most, ENTERING.atLeast), atMost: supplyTemperature - LIFTS.least };
    demand(`wantedEntering.${String(index)}`, 'temperature', enteringFluid, range, 'the regressions hold for lifts of 20 to 60 K');
  });
  const told = rows
    .sort((a, b) => a - b)
    .map((enteringFluid) => {
      const lift = (supplyTemperature - enteringFluid) as TemperatureDifference;
      const [one, other] = [staffellCop(lift), ruhnauCop(lift)];
      const mean = (one + other) / 2;
      const copBand = {
        low: INSTALLED * Math.min(one, other),
        estimate: INSTALLED * mean,
        high: INSTALLED * Math.max(one, other),
        coverage: COVERAGE,
      };
      return { enteringFluid, copBand: copBand as GenericCop['copBand'], apart: Math.abs(one - other) / mean };
    });
  const disagreement = Math.max(...told.map(({ apart }) => apart)) as Fraction;
  const installedShare = INSTALLED as Fraction;
  return {
    derivedBy: 'regressions',
    ratingOrigin: 'estimated',
    points: told.map(({ enteringFluid, copBand }) => ({
      enteringFluid,
      capacity: (capacity * shareOn(1 + capacityRise * (enteringFluid - ratedEntering), enteringFluid)) as Power,
      cop: copBand.estimate,
    })),
    copBands: told.map(({ enteringFluid, copBand }) => ({ enteringFluid, copBand })),
    disagreement,
    installedShare,
    findings: [
      {
        code: 'rating-points-generic',
        level: 'warning',
        values: { supplyTemperature, disagreement, installedShare },
        source: 'ruhnau2019',
      },
    ],
  };
}

const usualFluids = (supplyTemperature: number): readonly Temperature[] =>
  USUAL_ENTERING.filter((each) => supplyTemperature - each >= LIFTS.least && supplyTemperature - each <= LIFTS.most).map(
    (each) => each as Temperature,
  );

/** Share of the stated capacity at an entering fluid; refused where the line has come down to little. */
function shareOn(line: number, enteringFluid: Temperature): number {
  if (line >= LEAST_SHARE) return line;
  throw new InputError({
    code: 'impossible',
    argument: 'wantedEntering',
    value: { kind: 'temperature', value: enteringFluid },
    allowed: 'entering fluids at which three tenths of the capacity stated are left',
    hint: 'the line of the capacity does not reach so far; state a capacity nearer',
  });
}
