import { type PerformanceMap, performanceMap, partLoadFactor, type StagedUnit, stagedUnit } from '../../../src/heat-pump/index.js';
import { fraction, kilowatts, electricKilowatts, celsius } from '../../../src/units/index.js';
import { inventedCooling, inventedHeating } from '../../heat-pump/units.js';

/** The invented unit E-1 in heating; no product. */
export const inventedUnit: PerformanceMap = performanceMap({ mode: 'heating', points: inventedHeating });

/** The invented unit E-1 in cooling; no product. */
export const inventedChiller: PerformanceMap = performanceMap({ mode: 'cooling', points: inventedCooling });

/** The invented unit E-1 as the only level of a unit, with a loss by cycling of 10 %. */
export const inventedLevel: StagedUnit = stagedUnit({
  levels: [inventedUnit],
  between: 'stages',
  cyclingLoss: (loadRatio) => partLoadFactor({ loadRatio, degradation: fraction(0.1) }).factor,
});

/** A small stage with the invented unit E-1 above it. */
export const inventedStages: StagedUnit = stagedUnit({
  levels: [
    performanceMap({
      mode: 'heating',
      points: [-5, 25].map((t) => ({ enteringFluid: celsius(t), capacity: kilowatts(4.5 + 0.1 * t), power: electricKilowatts(1.2) })),
    }),
    inventedUnit,
  ],
  between: 'stages',
  cyclingLoss: (loadRatio) => partLoadFactor({ loadRatio, degradation: fraction(0.15) }).factor,
});
