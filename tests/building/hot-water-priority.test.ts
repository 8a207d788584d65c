import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hotWaterDemand, hotWaterPriority, hourlyLoads } from '../../src/building/index.js';
import { celsius, hours, kilowattHours, kilowatts, watts, type Power, type Shape, type Time } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { heating } from './houses.js';
import { household } from './hot-water-house.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const step = hours(1);
const days = fc.integer({ min: 1, max: 48 }).chain((steps) => {
  const list = (least: number, most: number): fc.Arbitrary<readonly Power[]> =>
    fc.array(
      fc.oneof(fc.constant(least), between(least + 1e-3, most)).map((power) => watts(power)),
      { minLength: steps, maxLength: steps },
    );
  return fc.record({ spaceLoads: list(0, 15_000), hotWaterLoads: list(0, 12_000), spaceCapacity: list(1, 12_000), hotWaterCapacity: list(1, 9000) });
});

describe('hotWaterPriority', () => {
  it('fills exactly by auxiliary heat what the unit does not reach', () => {
    fc.assert(
      fc.property(days, (input) => {
        const { spaceDuty, hotWaterDuty, capacityLeft, runTime, runFraction, displacedEnergy } = hotWaterPriority({ ...input, step });
        let displaced = 0;
        input.spaceLoads.forEach((load, index) => {
          const [space, water] = [spaceDuty, hotWaterDuty].map(({ met, auxiliary, shares }) => ({
            met: Number(met[index]),
            auxiliary: Number(auxiliary[index]),
            share: Number(shares[index]),
          }));
          const [wanted, house, hot] = [input.hotWaterLoads[index], input.spaceCapacity[index], input.hotWaterCapacity[index]].map(Number);
          if (!space || !water || wanted === undefined || house === undefined || hot === undefined) throw new Error('no step');
          for (const [duty, of] of [
            [space, load],
            [water, wanted],
          ] as const) {
            expect(Math.abs(duty.met + duty.auxiliary - of)).toBeLessThanOrEqual(1e-12 * of);
            expect(Math.min(duty.met, duty.auxiliary, duty.share)).toBeGreaterThanOrEqual(0);
          }
          expect(space.share + water.share).toBeLessThanOrEqual(1);
          expect(Math.abs(space.share * house - space.met)).toBeLessThanOrEqual(1e-12 * house);
          expect(Math.abs(water.share * hot - water.met)).toBeLessThanOrEqual(1e-12 * hot);
          expect(Math.abs(Number(capacityLeft[index]) - (1 - water.share) * house)).toBeLessThanOrEqual(1e-12 * house);
          // Auxiliary heat only where nothing is left.
          if (space.auxiliary > 0) expect(space.share + water.share).toBe(1);
          displaced += 3600 * (space.auxiliary - Math.max(0, load - house));
        });
        expect(Math.abs(displaced - displacedEnergy)).toBeLessThanOrEqual(1e-6);
        expect(runFraction).toBeLessThanOrEqual(1);
        expect(runTime).toBe(spaceDuty.runTime + hotWaterDuty.runTime);
        expect(Math.abs(spaceDuty.metEnergy + spaceDuty.unmetEnergy - spaceDuty.energy)).toBeLessThanOrEqual(1e-12 * spaceDuty.energy);
      }),
    );
  });

  it('leaves no more to auxiliary heat with more capacity', () => {
    fc.assert(
      fc.property(days, between(1, 3), (input, more) => {
        const small = hotWaterPriority({ ...input, step });
        const larger = (powers: readonly Power[]): readonly Power[] => powers.map((power) => watts(more * power));
        const large = hotWaterPriority({
          ...input,
          step,
          spaceCapacity: larger(input.spaceCapacity),
          hotWaterCapacity: larger(input.hotWaterCapacity),
        });
        for (const duty of ['spaceDuty', 'hotWaterDuty'] as const)
          expect(large[duty].unmetEnergy).toBeLessThanOrEqual(small[duty].unmetEnergy + 1e-6);
      }),
    );
  });

  it('is the plain run fraction without hot water, and takes a house of which it is asked nothing', () => {
    const spaceLoads = [watts(2000), watts(8000), watts(9000)];
    const { spaceDuty, hotWaterDuty, runFraction, displacedEnergy } = hotWaterPriority({
      spaceLoads,
      hotWaterLoads: new Float64Array(3),
      step,
      spaceCapacity: kilowatts(8),
      hotWaterCapacity: kilowatts(6),
    });
    expect([...spaceDuty.shares]).toEqual([0.25, 1, 1]);
    expect([hotWaterDuty.energy, hotWaterDuty.runTime, displacedEnergy]).toEqual([0, 0, 0]);
    expect(runFraction).toBe(0.75);
  });

  it('joins a year of a house with a year of hot water', () => {
    const temperatures = Float64Array.from({ length: 8760 }, (_, hour) => 9 - 13 * Math.cos((2 * Math.PI * (hour / 24 - 20)) / 365));
    const { loads } = hourlyLoads({ heating, temperatures, step });
    const water = hotWaterDemand(household);
    const year = hotWaterPriority({
      spaceLoads: loads,
      hotWaterLoads: water.loads,
      step,
      spaceCapacity: kilowatts(8),
      hotWaterCapacity: kilowatts(7),
    });
    expect(Math.abs(year.hotWaterDuty.metEnergy / water.energy - 1)).toBeLessThan(1e-12);
    expect(hours.of(year.hotWaterDuty.runTime)).toBeCloseTo(kilowattHours.of(water.energy) / 7, 6);
    // In summer the unit runs for hot water alone.
    const july = [...year.spaceDuty.shares.slice(24 * 190, 24 * 195)];
    expect(Math.max(...july)).toBe(0);
    expect(year.hotWaterDuty.shares[24 * 190]).toBeGreaterThan(0);
  });

  it('refuses bad input by name', () => {
    interface Listed {
      readonly spaceLoads: readonly Power[];
      readonly hotWaterLoads: readonly Power[];
      readonly step: Time;
      readonly spaceCapacity: Power;
      readonly hotWaterCapacity: Power;
    }
    const shape: Shape<Listed> = {
      spaceLoads: { list: 'power' },
      hotWaterLoads: { list: 'power' },
      step: 'time',
      spaceCapacity: 'power',
      hotWaterCapacity: 'power',
    };
    const day = { spaceLoads: [watts(5000), watts(0)], hotWaterLoads: [watts(0), watts(900)], step, spaceCapacity: kilowatts(8) };
    const full = { ...day, hotWaterCapacity: kilowatts(6) };
    refuses<Listed>(hotWaterPriority, shape, full);
    expect(() => hotWaterPriority({ ...full, hotWaterCapacity: [kilowatts(6), watts(0)] })).toThrow('hotWaterCapacity.1');
    expect(() => hotWaterPriority({ ...full, spaceCapacity: [kilowatts(6)] })).toThrow('spaceCapacity: 1 (count)');
    expect(() => hotWaterPriority({ ...full, spaceLoads: Float64Array.of(1, Number.NaN) })).toThrow('spaceLoads.1: NaN');
    expect(() => hotWaterPriority({ ...full, spaceLoads: [celsius(-3000) as never, watts(0)] })).toThrow('spaceLoads.0');
    expect(() => hotWaterPriority({ ...full, hotWaterLoads: new Float64Array(3) })).toThrow('hotWaterLoads: 3 (count)');
    expect(() => hotWaterPriority({ ...full, spaceLoads: watts(5) as never })).toThrow('spaceLoads');
    expect(() => hotWaterPriority({ ...full, spaceLoads: new Float64Array(1_000_001) })).toThrow('1 to 1000000 steps');
  });
});
