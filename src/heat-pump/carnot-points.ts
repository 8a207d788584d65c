import { demand, demandCount, demandObject, locate } from '../errors/index.js';
import type { CarnotPointsInput, CarnotShare } from './carnot-share.js';
import type { DerivedRatingPoints } from './derived-points.js';
import type { RatingOrigin } from './heat-pump-input.js';
import { ENTERING } from './rating-point.js';

/** Rating points of a share of Carnot's COP at the capacityRows given. */
export function carnotPoints(
  { supplyTemperature, capacityRows }: CarnotPointsInput,
  copAt: CarnotShare['copAt'],
  ratingOrigin: RatingOrigin,
): DerivedRatingPoints {
  demand('supplyTemperature', 'temperature', supplyTemperature, { atLeast: 20, atMost: 80 });
  demandCount('capacityRows', capacityRows, 2, 100);
  const rows = capacityRows.map((row, index) =>
    locate(`capacityRows.${String(index)}`, () => {
      demandObject('enteringFluid', row);
      demand('enteringFluid', 'temperature', row.enteringFluid, ENTERING);
      demand('capacity', 'power', row.capacity, { atLeast: 1, atMost: 1e8 });
      return { ...row, told: locate('enteringFluid', () => copAt({ cold: row.enteringFluid, warm: supplyTemperature })) };
    }),
  );
  const points = rows.map(({ enteringFluid, capacity, told }) => ({ enteringFluid, capacity, cop: told.copBand.estimate }));
  const said = new Map(rows.flatMap(({ told }) => told.findings).map((finding) => [finding.code, finding]));
  const values = { mode: 'heating', derivedBy: 'Carnot share' } as const;
  return {
    derivedBy: 'Carnot share',
    ratingOrigin,
    points: points.sort((a, b) => a.enteringFluid - b.enteringFluid),
    findings: [{ code: 'rating-points-derived', level: 'warning', values, source: 'common practice' }, ...said.values()],
  };
}
