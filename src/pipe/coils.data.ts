import type { PipeLength } from '../units/index.js';
import type { PipeSeries } from './series.data.js';

/**
 * Lengths of coil that suppliers usually deliver in small sizes [m]: 500, 600 and 800 ft of inch pipe, 100, 150 and 200 m of metric.
 *
 * Only a start, by `common practice`: ask the supplier, and pass the list that can really be had.
 */
export const DELIVERED_COILS: Readonly<Record<PipeSeries, readonly PipeLength[]>> = {
  IPS: [152.4, 182.88, 243.84] as readonly number[] as readonly PipeLength[],
  CTS: [152.4, 182.88, 243.84] as readonly number[] as readonly PipeLength[],
  metric: [100, 150, 200] as readonly number[] as readonly PipeLength[],
};
