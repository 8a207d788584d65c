import { describe, expect, it } from 'vitest';
import { conditionMap, stagedUnit, unitOverSupply } from '../../src/heat-pump/index.js';
import { celsius, kilowatts, type Power, ratio, type Temperature } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

/** An invented unit at a share of its output, rated down to −5 °C at 35 °C alone. */
const map = (share: number): ReturnType<typeof conditionMap> =>
  conditionMap({
    mode: 'heating',
    points: [35, 45, 55].flatMap((supply) =>
      (supply === 35 ? [-5, 0, 5, 10] : [0, 5, 10]).map((entering) => ({
        enteringFluid: celsius(entering),
        supplyTemperature: celsius(supply),
        capacity: kilowatts(share * (8 + 0.22 * entering - 0.03 * (supply - 35))),
        cop: ratio(4.5 + 0.1 * entering - 0.085 * (supply - 35)),
      })),
    ),
  });

describe('unitOverSupply', () => {
  const unit = unitOverSupply(map(1));

  it('has the numbers of its map, and the entering fluids that all load sides have in common', () => {
    expect(unit.rated).toEqual({ lowest: 0, highest: 10 });
    expect(unit.usable.lowest).toBeLessThanOrEqual(0);
    expect(unit.usable.highest).toBe(12);
    const { capacity, power, groundHeat } = map(1).at({ enteringFluid: celsius(3), loadSide: celsius(41) });
    expect(unit.continuedAt(celsius(3), celsius(41))).toMatchObject({ capacity, power, groundHeat });
  });

  it('is a level of a unit, which asks for the temperature supplied', () => {
    const staged = stagedUnit({ levels: [unitOverSupply(map(0.5)), unit], between: 'stages' });
    const [cool, warm] = [35, 50].map((supply) => staged.at(celsius(2), kilowatts(5), celsius(supply)));
    expect(warm?.power).toBeGreaterThan(1.3 * (cool?.power ?? Number.NaN));
    expect(() => staged.at(celsius(2), kilowatts(5))).toThrow('loadSide');
  });

  it('refuses bad input by name', () => {
    refuses(
      ({ enteringFluid, loadSide }: { readonly enteringFluid: Temperature; readonly loadSide: Temperature }): Power =>
        unit.continuedAt(enteringFluid, loadSide).capacity,
      { enteringFluid: 'temperature', loadSide: 'temperature' },
      { enteringFluid: celsius(2), loadSide: celsius(40) },
    );
    for (const none of [undefined, 5, {}]) expect(() => unitOverSupply(none as never)).toThrow('map');
  });
});
