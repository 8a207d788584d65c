/** A family of polyethylene pipe sizes, all with the same outside diameters. */
export type PipeSeries = 'IPS' | 'CTS' | 'metric';

/** Nominal size: inches for IPS and CTS, outside diameter in millimetres for metric. */
export type PipeSize = '3/4' | '1' | '1-1/4' | '1-1/2' | '2' | '3' | '4' | '20' | '25' | '32' | '40' | '50' | '63' | '75' | '90' | '110';

/** Outside diameter over minimum wall, as printed on the pipe (DR in inches, SDR in millimetres). */
export type DimensionRatio = '9' | '11' | '13.5' | '13.6' | '15.5' | '17';

/** One ratio of a series. */
export interface RatioRecord {
  /** What the outside diameter is divided by: the ratio itself, or the exact 2 S + 1 of the metric series. */
  readonly divisor: number;
  /** Smallest outside diameter that the ratio is made in. */
  readonly from: number;
}

/** Sizes and ratios of a series. */
export interface SeriesRecord {
  /** The unit that the standard rounds in [m]. */
  readonly unit: number;
  /** Outside diameter of each size, in that unit. */
  readonly outside: Readonly<Partial<Record<PipeSize, number>>>;
  /** The ratios made. */
  readonly ratios: Readonly<Partial<Record<DimensionRatio, RatioRecord>>>;
}

/** ASTM D3035 and F714: thousandths of an inch. */
const IPS: SeriesRecord = {
  unit: 25.4e-6,
  outside: { '3/4': 1050, '1': 1315, '1-1/4': 1660, '1-1/2': 1900, '2': 2375, '3': 3500, '4': 4500 },
  ratios: {
    '9': { divisor: 9, from: 1050 },
    '11': { divisor: 11, from: 1050 },
    '13.5': { divisor: 13.5, from: 1050 },
    '15.5': { divisor: 15.5, from: 1050 },
    '17': { divisor: 17, from: 1050 },
  },
};

/** ASTM D2737: thousandths of an inch. */
const CTS: SeriesRecord = {
  unit: 25.4e-6,
  outside: { '3/4': 875, '1': 1125, '1-1/4': 1375, '1-1/2': 1625, '2': 2125 },
  ratios: { '9': { divisor: 9, from: 875 }, '11': { divisor: 11, from: 875 } },
};

/** ISO 4427-2 and EN 12201-2: tenths of a millimetre. S is counted as the exact Renard number: 10^0.6 to 10^0.9, nominally 4, 5, 6.3 and 8. */
const METRIC: SeriesRecord = {
  unit: 1e-4,
  outside: { '20': 200, '25': 250, '32': 320, '40': 400, '50': 500, '63': 630, '75': 750, '90': 900, '110': 1100 },
  ratios: {
    '9': { divisor: 8.962143411069945, from: 200 },
    '11': { divisor: 11.023744672545444, from: 200 },
    '13.6': { divisor: 13.619146889603867, from: 250 },
    '17': { divisor: 16.88656469448563, from: 320 },
  },
};

/** The record of each series. */
export const SERIES: Readonly<Record<PipeSeries, SeriesRecord>> = { IPS, CTS, metric: METRIC };
