import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CompensatedSupply, heatingCurve, type SupplyControl, supplyControlShape } from '../../src/heat-pump/index.js';
import { celsius, kelvinDifference, ratio } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { between } from './tables.js';

const anyControl: fc.Arbitrary<CompensatedSupply> = fc
  .record({
    indoor: between(15, 24),
    gains: between(0, 8),
    cold: between(5, 45),
    excess: between(1, 40),
    waterSpread: between(0, 12),
    exponent: between(0.9, 1.6),
  })
  .map(({ indoor, gains, cold, excess, waterSpread, exponent }) => ({
    control: 'by outdoor temperature',
    designOutdoor: celsius(indoor - gains - cold),
    designSupply: celsius(Math.max(20, indoor + waterSpread + excess)),
    balancePoint: celsius(indoor - gains),
    indoor: celsius(indoor),
    exponent: ratio(exponent),
    waterSpread: kelvinDifference(waterSpread),
  }));
const limited: CompensatedSupply = {
  control: 'by outdoor temperature',
  designOutdoor: celsius(-12),
  designSupply: celsius(50),
  balancePoint: celsius(16),
  indoor: celsius(20),
  exponent: ratio(1.3),
  waterSpread: kelvinDifference(8),
  lowestSupply: celsius(28),
  highestSupply: celsius(45),
};

describe('heatingCurve', () => {
  it('sends the design supply at design, the indoor temperature at the balance point, and never warmer water in warmer weather', () => {
    fc.assert(
      fc.property(anyControl, between(-40, 40), between(0, 20), (control, outdoor, more) => {
        const { supplyAt, designSupply } = heatingCurve(control);
        expect(supplyAt(control.designOutdoor)).toBe(control.designSupply);
        expect(designSupply).toBe(control.designSupply);
        expect(supplyAt(control.balancePoint)).toBe(control.indoor);
        expect(supplyAt(celsius(outdoor + more))).toBeLessThanOrEqual(supplyAt(celsius(outdoor)) + 1e-9);
      }),
    );
  });

  it('meets the load: found again by halving on what the emitters give', () => {
    fc.assert(
      fc.property(anyControl, between(0.02, 1.2), (control, load) => {
        const { designSupply, designOutdoor, balancePoint, indoor, exponent = 1, waterSpread = 0 } = control;
        const outdoor = balancePoint - load * (balancePoint - designOutdoor);
        const given = (supply: number): number =>
          (Math.max(0, supply - (waterSpread * load) / 2 - indoor) / (designSupply - waterSpread / 2 - indoor)) ** exponent;
        let [low, high] = [indoor as number, 200];
        for (let k = 0; k < 80; k += 1) {
          const middle = (low + high) / 2;
          if (given(middle) < load) low = middle;
          else high = middle;
        }
        expect(heatingCurve(control).supplyAt(celsius(outdoor))).toBeCloseTo(low, 8);
      }),
    );
  });

  it('bends above a straight line for an exponent above 1', () => {
    const { highestSupply: _, lowestSupply: __, ...free } = limited;
    const line = heatingCurve({ ...free, exponent: ratio(1) });
    for (let outdoor = -11; outdoor < 16; outdoor += 3) {
      expect(heatingCurve(free).supplyAt(celsius(outdoor))).toBeGreaterThan(line.supplyAt(celsius(outdoor)));
    }
  });

  it('keeps its limits, says which holds, and warns where design is beyond the highest', () => {
    const curve = heatingCurve(limited);
    expect(curve.at(celsius(-12))).toMatchObject({ wantedSupply: 50, supplyTemperature: 45, heldBy: 'highest supply', designLoadRatio: 1 });
    expect(curve.at(celsius(15))).toMatchObject({ supplyTemperature: 28, heldBy: 'lowest supply' });
    expect(curve.at(celsius(2)).heldBy).toBe('nothing');
    expect(curve.at(celsius(-26)).designLoadRatio).toBeCloseTo(1.5, 12);
    expect(curve.findings.map(({ code }) => code)).toEqual(['supply-above-unit']);
    expect(heatingCurve({ ...limited, highestSupply: celsius(50) }).findings).toEqual([]);
  });

  it('may be fixed', () => {
    const curve = heatingCurve({ control: 'fixed', supplyTemperature: celsius(35) });
    for (const outdoor of [-20, 0, 30]) expect(curve.supplyAt(celsius(outdoor))).toBe(35);
    expect(curve.designSupply).toBe(35);
    expect(() => curve.supplyAt(celsius(Number.NaN))).toThrow('outdoor');
  });

  it('refuses water that does not warm the room, and bad input by name', () => {
    expect(() => heatingCurve({ ...limited, designSupply: celsius(28) })).toThrow('designSupply');
    expect(() => heatingCurve({ ...limited, balancePoint: celsius(21) })).toThrow('balancePoint');
    expect(() => heatingCurve({ ...limited, designOutdoor: celsius(15.5) })).toThrow('designOutdoor');
    expect(() => heatingCurve({ ...limited, highestSupply: celsius(27) })).toThrow('highestSupply');
    const at = (control: SupplyControl): unknown => heatingCurve(control).at(celsius(0));
    refuses<SupplyControl>(at, supplyControlShape, limited, { more: [{ control: 'fixed', supplyTemperature: celsius(35) }] });
  });
});
