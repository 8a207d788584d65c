import { describe, expect, it } from 'vitest';
import { simulateWithIce } from '../../src/operation/index.js';
import { layoutOf } from '../ground/support.js';
import { collector, collectorHeats, layeredCollector } from './support/guideline-collector.js';
import { coursesOf, directInput } from './support/ice-runs.js';

const { days: DAYS, coldest: COLDEST, depth: DEPTH, spacing: SPACING, outside: OUTSIDE, soil } = collector;
const { plain, iced } = layeredCollector();

describe('an area collector at 25 W/m²', () => {
  it('meets the published plane, −4.1 °C without ice and −0.7 °C with it, within 0.5 K', () => {
    // The source does not tell how its load goes through the year, nor the heat capacity. With daily means of 25 W/m² in the coldest week it would come to −8 and −1.7.
    expect(Math.abs(Math.min(...plain.plane) + 4.1)).toBeLessThan(0.5);
    expect(Math.abs(Math.min(...iced.plane) + 0.7)).toBeLessThan(0.5);
  });

  it('is followed by rings around its pipes: the plane without and with ice within 0.5 K of layers', () => {
    const steps = 4;
    const damping = Math.sqrt((Math.PI * 2.8e6) / 1.5 / (DAYS * 86_400));
    const ground = Array.from(
      { length: DAYS * steps },
      (_, step) => 10 - 9.5 * Math.exp(-DEPTH * damping) * Math.cos((2 * Math.PI * ((step + 1) / steps - COLDEST)) / DAYS - DEPTH * damping),
    );
    const perPipe = collectorHeats.flatMap((heat) => new Array<number>(steps).fill(heat * SPACING));
    const result = simulateWithIce(
      directInput({ layout: layoutOf([[0, DEPTH]], 60, SPACING), outside: OUTSIDE, soil, heats: perPipe, ground, step: 24 / steps, years: 3 }),
    );
    const walls = coursesOf(result);
    // From wall to plane: the steady row of pipes, ln(s/(2πr))/(2πk).
    const near = (conductivity: number): number => Math.log(SPACING / (Math.PI * 0.001 * OUTSIDE)) / (2 * Math.PI * conductivity);
    const plane = (series: Float64Array, conductivity: number): number =>
      series.reduce((least, wall, step) => Math.min(least, wall + (perPipe[step] ?? 0) * near(conductivity)), Infinity);
    expect(Math.abs(plane(walls.plain, 1.5) - Math.min(...plain.plane))).toBeLessThan(0.5);
    expect(Math.abs(plane(walls.iced, 1.95) - Math.min(...iced.plane))).toBeLessThan(0.5);
  });
});
