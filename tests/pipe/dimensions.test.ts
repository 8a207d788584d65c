import { describe, expect, it } from 'vitest';
import { pipeChoiceShape, pipeDimensions, POLYETHYLENE_CONDUCTIVITY, type PipeChoice, type PipeDimensions } from '../../src/pipe/index.js';
import { SERIES } from '../../src/pipe/series.data.js';
import { diameterInches, diameterMillimetres, wattsPerMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

/** Every pipe that is made. */
const made: readonly PipeDimensions[] = pipeChoiceShape.series.flatMap((series) =>
  pipeChoiceShape.size.flatMap((size) =>
    pipeChoiceShape.dimensionRatio.flatMap((dimensionRatio) => {
      try {
        return [pipeDimensions({ series, size, dimensionRatio })];
      } catch {
        return [];
      }
    }),
  ),
);

describe('pipeDimensions', () => {
  it('makes the 78 pipes of the tables and no other', () => {
    expect(made).toHaveLength(45 + 24 + 9);
  });

  it('puts the bores inside the pipe, the average-wall bore inside the other', () => {
    for (const { outsideDiameter, minimumWallBore, averageWallBore, insideDiameter, wall, minimumWall, volumePerLength } of made) {
      expect(minimumWallBore).toBeLessThan(outsideDiameter);
      expect(averageWallBore).toBeLessThan(minimumWallBore);
      expect(insideDiameter).toBe(averageWallBore);
      expect(insideDiameter + 2 * wall).toBeCloseTo(outsideDiameter, 15);
      expect(minimumWallBore + 2 * minimumWall).toBeCloseTo(outsideDiameter, 15);
      expect(volumePerLength).toBeCloseTo((Math.PI * insideDiameter ** 2) / 4, 15);
    }
  });

  it('keeps the wall near outside diameter over ratio', () => {
    for (const { outsideDiameter, minimumWall, dimensionRatio, series } of made) {
      const thinnest = series === 'metric' ? 2e-3 : 62 * 25.4e-6;
      // Metric walls are rounded up, in small pipe to 2.0, 2.3 or 3.0 mm: DN 25 SDR 9, of 2.78 mm, has 3.0.
      const rounding = series === 'metric' ? 2.3e-4 : 0.5 * 25.4e-6;
      const exact = Math.max(outsideDiameter / Number(dimensionRatio), thinnest);
      expect(Math.abs(minimumWall - exact)).toBeLessThan(rounding * 1.0001);
    }
  });

  it('makes the wall thicker as the ratio falls', () => {
    for (const one of made) {
      for (const other of made) {
        if (one.series !== other.series || one.size !== other.size) continue;
        if (Number(one.dimensionRatio) < Number(other.dimensionRatio)) expect(one.minimumWall).toBeGreaterThan(other.minimumWall);
      }
    }
  });

  it('takes the bore convention and the conductivity it is told', () => {
    const choice = { series: 'IPS', size: '3/4', dimensionRatio: '11' } as const;
    const nominal = pipeDimensions({ ...choice, bore: 'minimum wall', wallConductivity: wattsPerMetreKelvin(0.45) });
    expect(diameterInches.of(nominal.insideDiameter)).toBeCloseTo(0.86, 12);
    expect(nominal.bore).toBe('minimum wall');
    expect(nominal.wallConductivity).toBe(0.45);
    expect(pipeDimensions(choice)).toMatchObject({ bore: 'average wall', wallConductivity: POLYETHYLENE_CONDUCTIVITY.estimate });
    expect(diameterMillimetres.of(pipeDimensions({ series: 'metric', size: '32', dimensionRatio: '11' }).insideDiameter)).toBeCloseTo(25.6, 12);
  });

  it('counts metric walls by the exact Renard numbers', () => {
    const { '9': nine, '11': eleven, '13.6': thirteen, '17': seventeen } = SERIES.metric.ratios;
    const series = [nine, eleven, thirteen, seventeen].map((ratio) => ((ratio?.divisor ?? NaN) - 1) / 2);
    expect(series).toEqual([0.6, 0.7, 0.8, 0.9].map((power) => expect.closeTo(10 ** power, 13)));
  });

  it('refuses pipes that are not made', () => {
    const refused: readonly (readonly [PipeChoice, string])[] = [
      [{ series: 'IPS', size: '32', dimensionRatio: '11' }, 'size: 32'],
      [{ series: 'CTS', size: '1', dimensionRatio: '13.5' }, 'dimensionRatio: 13.5'],
      [{ series: 'metric', size: '20', dimensionRatio: '17' }, 'not made in a pipe this small'],
      [{ series: 'metric', size: '3/4', dimensionRatio: '11' }, 'size: 3/4'],
    ];
    for (const [choice, message] of refused) expect(() => pipeDimensions(choice)).toThrow(message);
  });

  it('refuses bad input', () => {
    refuses(pipeDimensions, pipeChoiceShape, {
      series: 'IPS',
      size: '1',
      dimensionRatio: '11',
      bore: 'average wall',
      wallConductivity: wattsPerMetreKelvin(0.4),
    });
  });
});
