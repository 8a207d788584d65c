import { describe, expect, it } from 'vitest';
import { bindingLimit, regretTable, type RegretTableInput, simulate } from '../../src/operation/index.js';
import { celsius, pipeMetres, ratio } from '../../src/units/index.js';
import { house } from './support/plant.js';

const limits = { lowestEntering: celsius(-5), lowestLeaving: celsius(-8), highestEntering: celsius(30) };
const input: RegretTableInput = { ...house, limits };

describe('regretTable', () => {
  const rows = regretTable(input);

  it('goes from 30 % less to 30 % more pipe, each row a simulation of that length', () => {
    expect(rows.map(({ lengthRatio }) => lengthRatio)).toEqual([0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3]);
    for (const { pipe, limitMargin, coldestFluid, warmestFluid, unmetEnergy } of [rows[0], rows[3], rows[6]].flatMap((row) => row ?? [])) {
      const alone = simulate({ ...house, pipeLength: pipe });
      expect(Math.abs(limitMargin - (bindingLimit(alone, limits)?.limitMargin ?? Number.NaN))).toBeLessThan(0.001);
      expect(Math.abs((coldestFluid ?? Number.NaN) - (alone.lastYear.heating.coldestFluid ?? 0))).toBeLessThan(0.001);
      expect(Math.abs((warmestFluid ?? Number.NaN) - (alone.lastYear.cooling.warmestFluid ?? 0))).toBeLessThan(0.001);
      expect(unmetEnergy / alone.lastYear.heating.unmetEnergy).toBeCloseTo(1, 3);
    }
  });

  it('never comes nearer to a limit, nor uses more electricity, with more pipe', () => {
    rows.slice(1).forEach(({ limitMargin, usedElectricity, coldestFluid }, index) => {
      const shorter = rows[index];
      expect(limitMargin).toBeGreaterThan(shorter?.limitMargin ?? Number.NaN);
      expect(coldestFluid).toBeGreaterThan(shorter?.coldestFluid ?? Number.NaN);
      expect(usedElectricity).toBeLessThan(shorter?.usedElectricity ?? Number.NaN);
    });
  });

  it('refuses ratios and limits that are none', () => {
    expect(() => regretTable({ ...input, lengthRatios: [] })).toThrow(expect.objectContaining({ argument: 'lengthRatios' }));
    expect(() => regretTable({ ...input, lengthRatios: [ratio(1), ratio(Number.NaN)] })).toThrow(
      expect.objectContaining({ argument: 'lengthRatios.1' }),
    );
    expect(() => regretTable({ ...input, limits: {} })).toThrow(expect.objectContaining({ argument: 'limits' }));
    expect(() => regretTable({ ...input, pipeLength: pipeMetres(0) })).toThrow(expect.objectContaining({ argument: 'pipeLength' }));
  });
});
