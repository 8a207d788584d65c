/** How outdoor temperatures lie about the mean of their month. */
export type Distribution = 'normal' | 'logistic';

/** Outdoor temperatures of one month, as plain numbers [degC, K]. */
export interface Outdoor {
  readonly distribution: Distribution;
  /** Mean of the month [degC]. */
  readonly mean: number;
  /** Standard deviation about the mean [K]. */
  readonly spread: number;
}

/** How far temperatures fall below a base on the mean, and the share of time they do. */
export interface Shortfall {
  /** Mean of max(0, base − temperature) [K]. */
  readonly mean: number;
  /** Share of the time below the base [1]; the slope of the mean over the base. */
  readonly share: number;
}

/** Standard deviation of a logistic distribution over its scale, π/√3. */
export const LOGISTIC_DEVIATION = 1.8137993642342178;

/**
 * How far the temperatures of a month fall below a base.
 *
 * @param outdoor - distribution, mean [degC] and spread, 0 or more [K]
 * @param base - temperature counted from [degC]
 * @returns mean shortfall [K] and the share of time below the base [1]
 * @remarks Normal: σ [Z Φ(Z) + φ(Z)], Z = (base − mean)/σ. Logistic of scale s: s ln(1 + e^z), z = (base − mean)/s.
 */
export function shortfallBelow({ distribution, mean, spread }: Outdoor, base: number): Shortfall {
  const below = base - mean;
  if (spread === 0) return { mean: Math.max(0, below), share: below > 0 ? 1 : 0 };
  const scale = distribution === 'normal' ? spread : spread / LOGISTIC_DEVIATION;
  const distance = Math.abs(below) / scale;
  const tail = distribution === 'normal' ? normalTail(distance) : logisticTail(distance);
  // What lies below the base and what lies above it differ by base − mean, whatever the distribution.
  return below > 0 ? { mean: below + scale * tail.mean, share: 1 - tail.share } : { mean: scale * tail.mean, share: tail.share };
}

/** How far the temperatures of a month rise above a base: the same with every sign turned, both distributions being symmetric. */
export function excessAbove({ distribution, mean, spread }: Outdoor, base: number): Shortfall {
  return shortfallBelow({ distribution, mean: -mean, spread }, -base);
}

function logisticTail(z: number): Shortfall {
  const small = Math.exp(-z);
  return { mean: Math.log1p(small), share: small / (1 + small) };
}

/** From here on the continued fraction has converged within its terms; below, the series loses no more than a digit. */
const FAR = 2;
const FRACTION_TERMS = 60;

/**
 * Mean excess φ(z) − z Q(z) and share Q(z) = Φ(−z) of the upper tail of the standard normal distribution, without cancellation.
 *
 * @param z - 0 or more
 * @remarks
 * Far out by Laplace's continued fraction for Mills' ratio, Q/φ = 1/(z + K), K = 1/(z + 2/(z + 3/(z + …))), which makes the mean excess
 * φ K/(z + K); near the middle by Q = 1/2 − φ Σ z^(2n+1)/(1·3·…·(2n+1)).
 */
function normalTail(z: number): Shortfall {
  const density = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
  if (z >= FAR) {
    let rest = 0;
    for (let term = FRACTION_TERMS; term >= 1; term -= 1) rest = term / (z + rest);
    const share = density / (z + rest);
    return { mean: share * rest, share };
  }
  let term = z;
  let sum = 0;
  for (let odd = 3; sum + term !== sum; odd += 2) {
    sum += term;
    term *= (z * z) / odd;
  }
  const share = 0.5 - density * sum;
  return { mean: density - z * share, share };
}
