/**
 * Coefficients of Erbs, Klein and Beckman (1983), `erbs1983`: the shape a [d^½] and the line for the year-to-year deviation of a monthly
 * mean [K], σ = constant + perMean · mean [degC] + perYear · standard deviation of the twelve means [K].
 *
 * The shape is 1.698, not 1.698 √N: h carries d^−½ already.
 */
export const ERBS = { shape: 1.698, constant: 1.45, perMean: -0.029, perYear: 0.0664 } as const;
