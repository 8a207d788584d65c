import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { desuperheaterInputShape, desuperheaterState, groundHeat, type DesuperheaterInput } from '../../src/heat-pump/index.js';
import { electricWatts, fraction, kilowatts, electricKilowatts, percent, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const units = fc.record({ capacity: between(100, 50_000), copInverse: between(0.1, 1), share: between(0, 0.5) });

describe('desuperheaterState', () => {
  it('loses no heat: ground and electricity go to house and hot water', () => {
    fc.assert(
      fc.property(units, ({ capacity, copInverse, share }) => {
        const power = capacity * copInverse;
        const unit = { capacity: watts(capacity), power: electricWatts(power), desuperheaterShare: fraction(share) };
        const heating = desuperheaterState({ mode: 'heating', ...unit });
        expect(Math.abs(heating.groundHeat + power - heating.houseHeat - heating.desuperheaterHeat)).toBeLessThanOrEqual(1e-12 * capacity);
        expect(Math.abs(heating.houseHeat - (capacity - heating.desuperheaterHeat))).toBeLessThanOrEqual(1e-12 * capacity);
        const cooling = desuperheaterState({ mode: 'cooling', ...unit });
        expect(Math.abs(capacity + power - cooling.groundHeat - cooling.desuperheaterHeat)).toBeLessThanOrEqual(1e-12 * (capacity + power));
        expect(cooling.houseHeat).toBe(capacity);
      }),
    );
  });

  it('without a share is the unit as it was', () => {
    for (const mode of ['heating', 'cooling'] as const) {
      const unit = { mode, capacity: kilowatts(8), power: electricKilowatts(2) };
      expect(desuperheaterState({ ...unit, desuperheaterShare: percent(0) })).toMatchObject({
        desuperheaterHeat: 0,
        houseHeat: 8000,
        groundHeat: groundHeat(unit),
        findings: [],
      });
    }
  });

  it('doubts a share that hot gas does not hold', () => {
    const codes = (share: number): readonly string[] =>
      desuperheaterState({
        mode: 'heating',
        capacity: kilowatts(8),
        power: electricKilowatts(2),
        desuperheaterShare: percent(share),
      }).findings.map(({ code }) => code);
    expect([codes(5), codes(15)]).toEqual([[], []]);
    expect([codes(4.9), codes(20)]).toEqual([['desuperheater-share-unusual'], ['desuperheater-share-unusual']]);
  });

  it('refuses bad input by name', () => {
    const unit = { mode: 'heating', capacity: kilowatts(8), power: electricKilowatts(2), desuperheaterShare: percent(10) } as const;
    refuses<DesuperheaterInput>(desuperheaterState, desuperheaterInputShape, unit);
    expect(() => desuperheaterState({ ...unit, power: electricKilowatts(9) })).toThrow('power');
    expect(() => desuperheaterState({ ...unit, desuperheaterShare: fraction(10) })).toThrow('not percent');
  });
});
