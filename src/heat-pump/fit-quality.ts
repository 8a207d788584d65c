import type { Finding } from '../findings/index.js';
import type { ElectricPower, Fraction, Power, Shape } from '../units/index.js';

/** How far a fit misses one of the points it was made from. */
export interface FitRow {
  /** Capacity of the point less that of the fit [W]. */
  readonly capacityResidual: Power;
  /** Electric input of the point less that of the fit [W]. */
  readonly powerResidual: ElectricPower;
  /** The residual over the capacity of the point, either sign [1]. */
  readonly capacityError: Fraction;
  /** The residual over the electric input of the point, either sign [1]. */
  readonly powerError: Fraction;
}

/** How well a fit tells the points it was made from. */
export interface FitQuality {
  /** One row for each point, in the order given. */
  readonly fitRows: readonly FitRow[];
  /** Largest relative residual of capacity or electric input, without its sign [1]. */
  readonly worstError: Fraction;
  /** Which point it is at, from 0. */
  readonly worstPoint: number;
  /** Points less the coefficients that each fit has. */
  readonly degreesOfFreedom: number;
  /** Standard deviation of the capacity about the fit; absent where no point is left to tell it [W]. */
  readonly capacityDeviation?: Power;
  /** Standard deviation of the electric input about the fit; absent where no point is left to tell it [W]. */
  readonly powerDeviation?: ElectricPower;
}

/** Shape of {@link FitRow}. */
export const fitRowShape: Shape<FitRow> = {
  capacityResidual: 'power',
  powerResidual: 'electric power',
  capacityError: 'fraction',
  powerError: 'fraction',
};

/** Shape of {@link FitQuality}. */
export const fitQualityShape: Shape<FitQuality> = {
  fitRows: { list: fitRowShape },
  worstError: 'fraction',
  worstPoint: 'count',
  degreesOfFreedom: 'count',
  capacityDeviation: { optional: 'power' },
  powerDeviation: { optional: 'electric power' },
};

/** A form that misses a table by more hides what the table says; own judgement, half of the tolerance of tests [1]. */
const MOST_USUAL_ERROR = 0.025;

/** Capacity and electric input of a point, as plain numbers. */
interface Measured {
  readonly capacity: number;
  readonly power: number;
}

/** What is left of each point, and how much that is. */
export function fitQuality(
  points: readonly Measured[],
  capacityResiduals: readonly number[],
  powerResiduals: readonly number[],
  degreesOfFreedom: number,
): FitQuality {
  const fitRows = points.map(({ capacity, power }, index) => {
    const [capacityResidual = Number.NaN, powerResidual = Number.NaN] = [capacityResiduals[index], powerResiduals[index]];
    return { capacityResidual, powerResidual, capacityError: capacityResidual / capacity, powerError: powerResidual / power } as FitRow;
  });
  const worst = fitRows.map(({ capacityError, powerError }) => Math.max(Math.abs(capacityError), Math.abs(powerError)));
  const worstError = Math.max(...worst) as Fraction;
  const deviation = (residuals: readonly number[]): number => Math.sqrt(residuals.reduce((sum, each) => sum + each * each, 0) / degreesOfFreedom);
  return {
    fitRows,
    worstError,
    worstPoint: worst.indexOf(worstError),
    degreesOfFreedom,
    ...(degreesOfFreedom > 0 && {
      capacityDeviation: deviation(capacityResiduals) as Power,
      powerDeviation: deviation(powerResiduals) as ElectricPower,
    }),
  };
}

/** That a fit misses its points by much, or has none left over to tell by how much it would miss others. */
export function fitQualityFindings(mode: 'heating' | 'cooling', { worstError, degreesOfFreedom, fitRows }: FitQuality): readonly Finding[] {
  const poor: Finding = {
    code: 'fit-poor',
    level: 'warning',
    values: { mode, worstError, usual: MOST_USUAL_ERROR as Fraction },
    source: 'common practice',
  };
  const bare: Finding = { code: 'fit-without-spare', level: 'note', values: { mode, points: fitRows.length }, source: 'leastSquares' };
  return [...(worstError > MOST_USUAL_ERROR ? [poor] : []), ...(degreesOfFreedom === 0 ? [bare] : [])];
}
