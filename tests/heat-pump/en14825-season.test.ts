import { describe, expect, it } from 'vitest';
import { type En14825Climate, en14825Season } from '../../src/heat-pump/index.js';
import { hours } from '../../src/units/index.js';
import { loadFixture } from '../support/fixture.js';

const bins = loadFixture('load-scop-bins');
const seasons = loadFixture('load-scop-seasons');
const CLIMATES: readonly En14825Climate[] = ['average', 'warmer', 'colder'];

describe.each(CLIMATES)('the season of the %s climate', (climate) => {
  const season = en14825Season(climate);
  const row = seasons.rows.find((each) => each.text('climate') === climate);
  /** Hours of the table beside the data file, whose columns of hours carry no tolerance of their own. */
  const printed = (column: string): number => Number(row?.text(column));

  it('has the bins of the table, no more and no fewer', () => {
    const carried = season.bins.map(({ outdoor, time }) => [outdoor, hours.of(time)]);
    const table = bins.rows.map((each) => [Number(each.text('outdoor_bin_C')), Number(each.text(`hours_${climate}`))]);
    expect(carried).toEqual(table.filter(([, time]) => time !== 0));
    expect(carried[0]?.[0]).toBe(season.designOutdoor);
  });

  it('has the hours of the table', () => {
    expect(hours.of(season.thermostatOffTime)).toBe(printed('H_TO_heating_only_h'));
    expect(hours.of(season.standbyTime)).toBe(printed('H_SB_h'));
    expect(hours.of(season.crankcaseTime)).toBe(printed('H_CK_heating_only_h'));
    expect(hours.of(season.offTime)).toBe(printed('H_OFF_heating_only_h'));
    expect(season.designOutdoor).toBe(printed('T_designh_C'));
    expect(season.balancePoint).toBe(printed('T_heating_limit_C'));
    expect(season.bins.reduce((sum, { time }) => sum + hours.of(time), 0)).toBe(printed('bin_hours_total'));
  });
});

describe('en14825Season', () => {
  it('declares units at the load ratios of the standard, which prints 88, 54, 35 and 15 %', () => {
    const ratios = en14825Season('average').partLoadPoints.map(({ point, loadRatio }) => `${point} ${(100 * loadRatio).toFixed(0)}`);
    expect(ratios).toEqual(['A 88', 'B 54', 'C 35', 'D 15']);
    expect(en14825Season('colder').partLoadPoints.map(({ point }) => point)).toEqual(['G', 'A', 'B', 'C', 'D']);
    expect(en14825Season('warmer').partLoadPoints.map(({ point, loadRatio }) => [point, loadRatio])[0]).toEqual(['B', 1]);
  });

  it('has crankcase times that fit only with the thermostat time of one another, but for the average climate', () => {
    const [average, warmer, colder] = CLIMATES.map(en14825Season);
    expect(average?.crankcaseTime).toBe((average?.thermostatOffTime ?? 0) + (average?.offTime ?? 0));
    expect(warmer?.crankcaseTime).toBe((colder?.thermostatOffTime ?? 0) + (warmer?.offTime ?? 0));
    expect(colder?.crankcaseTime).toBe((warmer?.thermostatOffTime ?? 0) + (colder?.offTime ?? 0));
    expect(warmer?.crankcaseTime).not.toBe((warmer?.thermostatOffTime ?? 0) + (warmer?.offTime ?? 0));
  });

  it('refuses another climate', () => {
    // The wrong text is what a caller without a type checker may pass.
    expect(() => en14825Season('polar' as En14825Climate)).toThrow('climate: polar');
  });
});
