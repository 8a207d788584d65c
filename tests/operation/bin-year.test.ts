import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { energySignatureShape } from '../../src/building/index.js';
import { en14825Season } from '../../src/heat-pump/index.js';
import { binYear, type BinYearInput, type BinYearResult, type PartLoadForm, partLoadFormShape, fluidBinShape } from '../../src/operation/index.js';
import { celsius, electricWatts, fraction, hours } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { anyYear, bin, flat, house } from './support/bin-years.js';
import { inventedChiller, inventedLevel, inventedStages, inventedUnit } from './support/invented-unit.js';

const SUMS = [
  'energy',
  'metEnergy',
  'unmetEnergy',
  'runTime',
  'unitElectricity',
  'cyclingElectricity',
  'circulatorElectricity',
  'groundEnergy',
] as const;
const same = (found: BinYearResult, expected: BinYearResult): void => {
  for (const sum of SUMS) expect(Math.abs(found[sum] - expected[sum])).toBeLessThanOrEqual(1e-12 * expected.energy);
};

describe('binYear', () => {
  it('balances to 1e-12: heat is ground, electricity that is not lost to cycling, and auxiliary', () => {
    fc.assert(
      fc.property(anyYear, (input) => {
        const { energy, metEnergy, unmetEnergy, groundEnergy, unitElectricity, cyclingElectricity } = binYear(input);
        const steady = unitElectricity - cyclingElectricity;
        const made = input.signature.mode === 'heating' ? groundEnergy + steady : groundEnergy - steady;
        expect(Math.abs(made - metEnergy)).toBeLessThanOrEqual(1e-12 * energy);
        expect(Math.abs(metEnergy + unmetEnergy - energy)).toBeLessThanOrEqual(1e-12 * energy);
        expect(cyclingElectricity).toBeGreaterThanOrEqual(-1e-12 * energy);
      }),
    );
  });

  it('balances bin by bin, with the auxiliary filling exactly and shares within 0 and 1', () => {
    fc.assert(
      fc.property(anyYear, (input) => {
        const year = binYear(input);
        expect(year.coveredShare).toBeGreaterThanOrEqual(0);
        expect(year.coveredShare).toBeLessThanOrEqual(1);
        year.bins.forEach(({ load, unmet, runFraction, capacity = Infinity, factor = 1, groundHeat, unitPower, cyclingPower }) => {
          expect(runFraction).toBeGreaterThanOrEqual(0);
          expect(runFraction).toBeLessThanOrEqual(1);
          expect(factor).toBeGreaterThanOrEqual(0);
          expect(factor).toBeLessThanOrEqual(1);
          if (capacity < Infinity) expect(unmet).toBe(load - Math.min(load, capacity));
          expect(unmet).toBeGreaterThanOrEqual(0);
          const steady = unitPower - cyclingPower;
          const made = input.signature.mode === 'heating' ? groundHeat + steady : groundHeat - steady;
          expect(Math.abs(made + unmet - load)).toBeLessThanOrEqual(1e-12 * (load + unitPower));
        });
      }),
    );
  });

  it('does not feel a bin split in two, nor the order of the bins', () => {
    fc.assert(
      fc.property(anyYear, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (input, share) => {
        const year = binYear(input);
        const [first, ...rest] = input.bins;
        if (first === undefined) return;
        const parts = [share, 1 - share].map((part) => ({ ...first, time: hours(part * hours.of(first.time)) }));
        same(binYear({ ...input, bins: [...rest.toReversed(), ...parts] }), year);
      }),
    );
  });

  it('has factors that fall from boundary to boundary', () => {
    fc.assert(
      fc.property(anyYear, (input) => {
        const { performance } = binYear(input);
        const found = performance.boundaries.map(({ performanceFactor }) => performanceFactor ?? 0);
        const [, second = 0] = found;
        // With a bin or two of little load an EN unit may come to less than an electric heater.
        if (second >= (input.auxiliaryEfficiency ?? 1)) {
          found.forEach((each, index) => expect(each).toBeLessThanOrEqual((found[index - 1] ?? Infinity) * (1 + 1e-12)));
        }
      }),
    );
  });

  it('takes electricity for cycling on top, in two forms that are not one another', () => {
    const { bins } = en14825Season('average');
    const run = (cycling?: PartLoadForm): BinYearResult =>
      binYear({
        signature: house(6),
        bins: bins.map(({ outdoor, time }) => ({ outdoor, time, enteringFluid: celsius(3) })),
        unit: inventedUnit,
        pumpPower: electricWatts(100),
        ...(cycling && { cycling }),
      });
    const steady = run();
    const ahri = run({ form: 'degradation', degradation: fraction(0.1) });
    const norm = run({ form: 'load share', loadShare: fraction(0.9) });
    expect(steady.cyclingElectricity).toBe(0);
    expect(ahri.cyclingElectricity).toBeGreaterThan(0);
    expect(norm.cyclingElectricity).toBeGreaterThan(2 * ahri.cyclingElectricity);
    expect(ahri.groundEnergy).toBe(steady.groundEnergy);
    expect(ahri.runTime).toBeGreaterThan(steady.runTime);
    expect(norm.runTime).toBe(steady.runTime);
  });

  it('takes a unit of levels with its own loss: of one level as the map with that loss, of two better at small load', () => {
    const { bins } = en14825Season('average');
    const rest = { signature: house(10), bins: bins.map(({ outdoor, time }) => ({ outdoor, time, enteringFluid: celsius(3) })) };
    const cycling: PartLoadForm = { form: 'degradation', degradation: fraction(0.1) };
    const plain = binYear({ ...rest, unit: inventedUnit, cycling });
    same(binYear({ ...rest, unit: inventedLevel }), plain);
    const staged = binYear({ ...rest, unit: inventedStages });
    expect(staged.unmetEnergy).toBeCloseTo(plain.unmetEnergy, 3);
    expect(staged.unitElectricity).toBeLessThan(plain.unitElectricity);
    expect(() => binYear({ ...rest, unit: inventedLevel, cycling })).toThrow('cycling: degradation');
  });

  it('knows a March from a November of the same weather by bins of months, as a line over the outdoor temperature cannot', () => {
    const run = (march: number, november: number): BinYearResult =>
      binYear({ signature: house(9), bins: [bin(4, 700, march), bin(4, 700, november)], unit: inventedUnit });
    const { bins } = run(1, 9);
    expect(bins[0]?.cop).toBeLessThan(bins[1]?.cop ?? 0);
    expect(run(1, 9).unitElectricity).not.toBe(run(5, 5).unitElectricity);
  });

  it('draws nothing where there is nothing to do, at any fluid, and says nothing of it', () => {
    const year = binYear({ signature: house(9), bins: [bin(20, 100, 50)], unit: inventedUnit, pumpPower: electricWatts(150) });
    expect(year.coveredShare).toBe(1);
    expect(SUMS.map((sum) => year[sum])).toEqual(SUMS.map(() => 0));
    expect(year.performance.boundaries.every(({ performanceFactor }) => performanceFactor === undefined)).toBe(true);
    expect(year.findings).toEqual([]);
  });

  it('has no auxiliary in cooling, and gives heat and electricity to the ground', () => {
    const year = binYear({ signature: flat, bins: [bin(40, 10, 30)], unit: inventedChiller });
    expect(year.unmetEnergy).toBeGreaterThan(0);
    expect(year.auxiliaryElectricity).toBe(0);
    expect(year.groundEnergy).toBeGreaterThan(year.metEnergy);
    expect(year.performance.boundaries.map(({ boundary }) => boundary)).toEqual(['C1', 'C2', 'C4']);
  });

  it('says where the fluid is beyond the rating points, once for each end', () => {
    const fluids = [-6.5, -6, 26, 26.5, 3];
    const { findings } = binYear({ signature: house(6), bins: fluids.map((fluid) => bin(0, 10, fluid)), unit: inventedUnit });
    expect(findings.filter(({ code }) => code === 'map-extrapolated').map(({ values }) => Reflect.get(values, 'enteringFluid'))).toEqual([
      -6.5, 26.5,
    ]);
    const beyond = { signature: house(6), bins: [bin(0, 10, 3), bin(0, 10, -8)], unit: inventedUnit };
    expect(() => binYear(beyond)).toThrow('bins.1.enteringFluid');
  });

  it('refuses a unit of the other mode, bins without time, and what is no unit', () => {
    const input = { signature: house(6), bins: [bin(0, 10, 3)], unit: inventedUnit };
    expect(() => binYear({ ...input, unit: inventedChiller })).toThrow('unit.mode');
    expect(() => binYear({ ...input, bins: [bin(0, 0, 3)] })).toThrow('bins.time');
    // What a caller without a type checker may pass.
    expect(() => binYear({ ...input, unit: undefined as unknown as typeof inventedUnit })).toThrow('unit: nothing');
    expect(() => binYear({ ...input, unit: { mode: 'heating' } as typeof inventedUnit })).toThrow('unit.at');
  });

  it('refuses bad input by name', () => {
    const input: Omit<BinYearInput, 'unit'> = {
      signature: house(6),
      bins: [bin(0, 10, 3), { ...bin(7, 100, 5), supplyTemperature: celsius(35) }],
      cycling: { form: 'degradation', degradation: fraction(0.1) },
      pumpPower: electricWatts(150),
      auxiliaryEfficiency: fraction(0.95),
    };
    refuses(
      (each: Omit<BinYearInput, 'unit'>) => binYear({ ...each, unit: inventedUnit }),
      {
        signature: energySignatureShape,
        bins: { list: fluidBinShape },
        cycling: { optional: partLoadFormShape },
        pumpPower: { optional: 'electric power' },
        auxiliaryEfficiency: { optional: 'fraction' },
      },
      input,
      { more: [{ ...input, cycling: { form: 'load share', loadShare: fraction(0.9) } }] },
    );
  });
});
