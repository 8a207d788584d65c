import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type StagedState, stagedUnit, type StagedUnit, type UnitsOnLoopInput, unitsOnLoop, unitsTogether } from '../../src/heat-pump/index.js';
import { celsius, kilowatts, litresPerSecond, type Power, ratio, type Shape, type Temperature, watts } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { anyStaged, between, flat } from './levels.js';

const flow = litresPerSecond(0.4);
const sum = (states: readonly StagedState[], of: (state: StagedState) => number): number => states.reduce((total, state) => total + of(state), 0);
const topAt = ({ levels }: StagedUnit, entering: Temperature): number => levels.at(-1)?.model.continuedAt(entering, entering).capacity ?? Number.NaN;
/** Two or three units of one mode that can be asked at one temperature. */
const anyUnits = fc
  .tuple(fc.array(anyStaged, { minLength: 2, maxLength: 8 }), fc.constantFrom('heating', 'cooling'))
  .map(([units, mode]) => units.filter((unit) => unit.mode === mode).slice(0, 3))
  .filter(
    (units) => units.length > 1 && Math.max(...units.map(({ rated }) => rated.lowest)) + 1 < Math.min(...units.map(({ rated }) => rated.highest)),
  );

describe('units together', () => {
  it('in order are at any load the sum of what each does', () => {
    fc.assert(
      fc.property(anyUnits, between(0, 1), between(1e-6, 1.3), (units, place, share) => {
        const together = unitsTogether({ units, sharing: 'in order' });
        const entering = celsius(together.rated.lowest + place * (together.rated.highest - together.rated.lowest));
        const load = watts(share * topAt(together, entering));
        const one = together.at(entering, load);
        const loop = unitsOnLoop({ enteringFluid: entering, units: units.map((unit) => ({ unit, sourceFlow: flow })), load, sharing: 'in order' });
        const size = 1e-9 * (load + one.power);
        expect(Math.abs(loop.metLoad - one.metLoad)).toBeLessThanOrEqual(size);
        expect(Math.abs(loop.unmetLoad - one.unmetLoad)).toBeLessThanOrEqual(size);
        expect(Math.abs(loop.power - one.power)).toBeLessThanOrEqual(size);
        expect(Math.abs(sum(loop.byUnit, ({ groundHeat }) => groundHeat) - one.groundHeat)).toBeLessThanOrEqual(size);
        expect(Math.abs(Math.abs(loop.netGroundHeat) - one.groundHeat)).toBeLessThanOrEqual(size);
        // The first runs before any other does.
        if ((loop.byUnit[1]?.runFraction ?? 0) > 1e-9) expect(loop.byUnit[0]?.unmetLoad).toBe(0);
        expect(loop.leastRunFraction).toBeLessThanOrEqual(loop.mostRunFraction + 1e-12);
        expect(loop.flowOfRunning).toBeLessThanOrEqual(loop.flowOfAll * (1 + 1e-12));
      }),
    );
  });

  it('that are equal, evenly are one unit of as many times the output', () => {
    fc.assert(
      fc.property(anyStaged, fc.integer({ min: 2, max: 5 }), between(0, 1), between(1e-6, 1.3), (unit, count, place, share) => {
        const units = Array.from({ length: count }, () => unit);
        const entering = celsius(unit.rated.lowest + place * (unit.rated.highest - unit.rated.lowest));
        const load = watts(share * topAt(unit, entering));
        const own = unit.at(entering, load);
        const together = unitsTogether({ units, sharing: 'evenly' }).at(entering, (count * load) as Power);
        const size = 1e-9 * count * (load + own.power);
        expect(Math.abs(together.power - count * own.power)).toBeLessThanOrEqual(size);
        expect(Math.abs(together.groundHeat - count * own.groundHeat)).toBeLessThanOrEqual(size);
        expect(Math.abs(together.unmetLoad - count * own.unmetLoad)).toBeLessThanOrEqual(size);
        expect(together.runFraction).toBeCloseTo(own.runFraction, 6);
        const loop = unitsOnLoop({
          enteringFluid: entering,
          units: units.map((each) => ({ unit: each, sourceFlow: flow })),
          load: (count * load) as Power,
          sharing: 'evenly',
        });
        for (const each of loop.byUnit) expect(Math.abs(each.power - own.power)).toBeLessThanOrEqual(size);
        expect(Math.abs(loop.metLoad + loop.unmetLoad - count * load)).toBeLessThanOrEqual(size);
      }),
    );
  });

  it('that are unlike, evenly carry the load in proportion to what each gives at the level', () => {
    const units = [
      stagedUnit({ levels: [flat(4, 4), flat(6, 3.5)], between: 'stages' }),
      stagedUnit({ levels: [flat(6, 4.2), flat(14, 3.2)], between: 'stages' }),
    ];
    const at = (load: number): readonly number[] =>
      unitsOnLoop({
        enteringFluid: celsius(0),
        units: units.map((unit) => ({ unit, sourceFlow: flow })),
        load: kilowatts(load),
        sharing: 'evenly',
      }).byUnit.map(({ metLoad, unmetLoad }) => Number(kilowatts.of((metLoad + unmetLoad) as Power).toFixed(9)));
    expect([at(5), at(15), at(30)]).toEqual([
      [2, 3],
      [5, 10],
      [9, 21],
    ]);
  });

  it('keep the loss of the one that cycles, at its own share', () => {
    const cyclingLoss = (share: number): ReturnType<typeof ratio> => ratio(1 - 0.2 * (1 - share));
    const unit = stagedUnit({ levels: [flat(10, 4)], between: 'stages', cyclingLoss });
    const { power, cyclingPower, runFraction } = unitsTogether({ units: [unit, unit], sharing: 'in order' }).at(celsius(0), kilowatts(15));
    expect(power).toBeCloseTo(2500 + 1250 / 0.9, 9);
    expect(cyclingPower).toBeCloseTo(1250 / 0.9 - 1250, 9);
    expect(runFraction).toBe(1);
  });

  it('with loads of their own tell both ends of the running time, and both flows', () => {
    const units = [
      { unit: flat(10, 4), sourceFlow: litresPerSecond(0.5), load: kilowatts(4) },
      { unit: flat(8, 4), sourceFlow: litresPerSecond(0.4), load: kilowatts(6) },
    ];
    const loop = unitsOnLoop({ enteringFluid: celsius(0), units });
    expect([loop.leastRunFraction, loop.mostRunFraction]).toEqual([0.75, 1]);
    expect(litresPerSecond.of(loop.flowOfAll)).toBeCloseTo(0.9, 12);
    expect(litresPerSecond.of(loop.flowOfRunning)).toBeCloseTo(0.4 * 0.5 + 0.75 * 0.4, 12);
    expect(loop.netGroundHeat).toBeCloseTo(7500, 9);
  });

  it('refuse units that cannot share, and loads of two kinds or none', () => {
    const [one, two] = [flat(6, 4), stagedUnit({ levels: [flat(4, 4), flat(6, 3.5)], between: 'stages' })];
    const lossy = stagedUnit({ levels: [flat(6, 4)], between: 'stages', cyclingLoss: () => ratio(1) });
    const wrong =
      (input: object): (() => unknown) =>
      () =>
        unitsTogether({ units: [one, two], sharing: 'in order', ...input });
    expect(wrong({ units: [one] })).toThrow('units');
    expect(wrong({ units: [one, 5] })).toThrow('units.1');
    expect(wrong({ sharing: 'by lot' })).toThrow('sharing');
    expect(wrong({ units: [one, flat(6, 4, 'cooling')] })).toThrow(expect.objectContaining({ argument: 'units.1.mode' }));
    expect(wrong({ sharing: 'evenly' })).toThrow(expect.objectContaining({ argument: 'units.1.levels' }));
    expect(wrong({ units: [one, lossy], sharing: 'evenly' })).toThrow(expect.objectContaining({ argument: 'units.1.levels.0' }));
    const each = { unit: one, sourceFlow: flow };
    const loop =
      (input: object): (() => unknown) =>
      () =>
        unitsOnLoop({ enteringFluid: celsius(0), units: [each, each], ...input });
    expect(loop({})).toThrow(expect.objectContaining({ code: 'missing', argument: 'units.0.load' }));
    expect(loop({ load: kilowatts(3) })).toThrow(expect.objectContaining({ code: 'missing', argument: 'sharing' }));
    expect(loop({ load: kilowatts(3), sharing: 'evenly', units: [{ ...each, load: kilowatts(2) }] })).toThrow(
      expect.objectContaining({ code: 'impossible', argument: 'units.0.load' }),
    );
  });

  it('refuse bad input by name', () => {
    const shape: Shape<Numbers> = {
      enteringFluid: 'temperature',
      load: 'power',
      sharing: ['in order', 'evenly'],
      units: { list: { sourceFlow: 'flow' } },
    };
    const example: Numbers = {
      enteringFluid: celsius(0),
      load: kilowatts(9),
      sharing: 'in order',
      units: [{ sourceFlow: flow }, { sourceFlow: flow }],
    };
    const withUnits = (units: readonly object[]): readonly object[] =>
      units.map((each) => (typeof each === 'object' ? { unit: flat(6, 4), ...each } : each));
    refuses(
      (input) => unitsOnLoop({ ...input, units: Array.isArray(input.units) ? withUnits(input.units) : input.units } as UnitsOnLoopInput),
      shape,
      example,
    );
  });
});

interface Numbers extends Omit<UnitsOnLoopInput, 'units' | 'supplyTemperature' | 'load' | 'sharing'> {
  readonly load: Power;
  readonly sharing: 'in order' | 'evenly';
  readonly units: readonly { readonly sourceFlow: typeof flow }[];
}
