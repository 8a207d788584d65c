import { demand, demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Fraction, Pressure, Shape, Temperature } from '../units/index.js';
import { DERATINGS, DESIGN_STRESSES, type PipeMaterial } from './pressure-rating.data.js';
import type { DimensionRatio } from './series.data.js';

/** A pipe whose pressure rating is wanted. */
export interface RatedPipe {
  /** The polyethylene, as printed on the pipe. */
  readonly material: PipeMaterial;
  /** Dimension ratio, as printed on the pipe. */
  readonly dimensionRatio: DimensionRatio;
  /** Temperature of the pipe wall, −50 to 37.8 °C (100 °F) [degC]. */
  readonly temperature: Temperature;
  /** Factor for what the pipe carries, above 0 up to 1; 1, as for water and glycol solutions, when left out [1]. */
  readonly environmentFactor?: Fraction;
}

/** Shape of {@link RatedPipe}. */
export const ratedPipeShape: Shape<RatedPipe> = {
  material: ['PE3608', 'PE4710', 'PE80', 'PE100'],
  dimensionRatio: ['9', '11', '13.5', '13.6', '15.5', '17'],
  temperature: 'temperature',
  environmentFactor: { optional: 'fraction' },
};

/** The list that the temperature factor is from. */
export type DeratingSource = keyof typeof DERATINGS;

/** Share of the cold rating left at a temperature, by the list that says so. */
export interface ListedFactors {
  /** AWWA manual M55, by steps of ten degrees Fahrenheit [1]. */
  readonly awwaM55: Fraction;
  /** Pipe of AS/NZS 4130 [1]. */
  readonly asNzs4130: Fraction;
  /** Annex A of ISO 4427-1 [1]. */
  readonly iso4427Temperature: Fraction;
}

/** What a pipe bears for long. */
export interface PressureRating {
  /** Pressure that it bears at this temperature [Pa]. */
  readonly rating: Pressure;
  /** Pressure that it bears in the cold, as printed on it [Pa]. */
  readonly coldRating: Pressure;
  /** Design stress of the material, its safety factor taken off [Pa]. */
  readonly designStress: Pressure;
  /** Share of the cold rating left at this temperature [1]. */
  readonly temperatureFactor: Fraction;
  /** What each of the lists leaves of it. */
  readonly listedFactors: ListedFactors;
  /** The strictest list, which that share is from; absent while nothing is taken off. */
  readonly deratedBy?: DeratingSource;
}

/** A {@link PressureRating} with its findings. */
export interface PressureRatingResult extends PressureRating {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link PressureRating}. */
export const pressureRatingShape: Shape<PressureRating> = {
  rating: 'pressure',
  coldRating: 'pressure',
  designStress: 'pressure',
  temperatureFactor: 'fraction',
  listedFactors: { awwaM55: 'fraction', asNzs4130: 'fraction', iso4427Temperature: 'fraction' },
  deratedBy: { optional: ['awwaM55', 'asNzs4130', 'iso4427Temperature'] },
};

const LISTS: readonly DeratingSource[] = ['awwaM55', 'asNzs4130', 'iso4427Temperature'];

/** 100 °F; above it the makers have to be asked [degC]. */
const WARMEST = 37.77777777777778;

/**
 * Pressure that a polyethylene pipe bears for long at a temperature.
 *
 * The three lists of temperature factors differ between 20 and 38 °C; the lowest is taken. Never more than the cold rating. Warm is not the
 * ground but a black pipe in the sun on the day of the pressure test: let it cool first.
 *
 * @param pipe - material, dimension ratio, wall temperature, −50 to 37.8 °C [degC], optionally a factor for the fluid [1]
 * @returns ratings and design stress [Pa], temperature factor [1], and findings
 * @throws InputError when a choice is unknown or a number out of range
 * @remarks
 * p = 2 σ F_T F_e / (DR − 1). Sources: `ppiDesignStress` for inch materials, `iso4427` for metric; factors `awwaM55`, `asNzs4130`,
 * `iso4427Temperature`. Checked against a state rule's table for PE3608 and nominal pressures of the metric series. That rule's PE4710
 * column does not reproduce: it counts with 1008 psi and prints 202 for DR 11, where this gives 200.
 *
 * Invariants: falls with temperature and with the dimension ratio.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, psi } = await import('../units/index.js');
 * const { rating, coldRating } = pipePressureRating({ material: 'PE4710', dimensionRatio: '11', temperature: celsius(30) });
 * expect([coldRating, rating].map((pressure) => Math.round(psi.of(pressure)))).toEqual([200, 174]);
 * ```
 */
export function pipePressureRating({ material, dimensionRatio, temperature, environmentFactor = 1 as Fraction }: RatedPipe): PressureRatingResult {
  demandChoice('material', material, Object.keys(DESIGN_STRESSES));
  demandChoice('dimensionRatio', dimensionRatio, ['9', '11', '13.5', '13.6', '15.5', '17']);
  demand('temperature', 'temperature', temperature, { atLeast: -50, atMost: WARMEST }, 'above it only the maker can say; let a sun-warmed pipe cool');
  demand('environmentFactor', 'fraction', environmentFactor, { above: 0, atMost: 1 });
  const designStress = DESIGN_STRESSES[material];
  const coldRating = (2 * designStress * environmentFactor) / (Number(dimensionRatio) - 1);
  const listedFactors = {
    awwaM55: listedFactor(DERATINGS.awwaM55, temperature),
    asNzs4130: listedFactor(DERATINGS.asNzs4130, temperature),
    iso4427Temperature: listedFactor(DERATINGS.iso4427Temperature, temperature),
  } as ListedFactors;
  const factor = Math.min(...LISTS.map((list) => listedFactors[list]));
  const deratedBy = factor < 1 ? LISTS.find((list) => listedFactors[list] === factor) : undefined;
  const rating = coldRating * factor;
  const result = { rating, coldRating, designStress, temperatureFactor: factor, listedFactors, ...(deratedBy && { deratedBy }) } as PressureRating;
  if (deratedBy === undefined) return { ...result, findings: [] };
  const values = { rating: result.rating, coldRating: result.coldRating, temperature };
  return { ...result, findings: [{ code: 'pipe-derated', level: 'note', values, source: deratedBy }] };
}

/** The factor of one list: 1 up to its first point, then its step or the line to the next point. */
function listedFactor({ steps, points }: (typeof DERATINGS)[DeratingSource], temperature: number): number {
  let [before, whole]: readonly [number, number] = points[0];
  for (const [at, factor] of points) {
    if (temperature <= at) {
      if (steps || at === before) return factor;
      return whole + ((factor - whole) * (temperature - before)) / (at - before);
    }
    [before, whole] = [at, factor];
  }
  return whole;
}
