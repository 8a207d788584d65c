import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circuitResistance, type CircuitResistance, type CircuitResistanceInput, circuitResistanceInputShape } from '../../src/operation/index.js';
import { days, pipeMetreKelvinPerWatt, pipeMetres, wattsPerKelvin } from '../../src/units/index.js';
import { layoutOf, responseOf } from '../ground/support.js';
import { refuses } from '../support/bad-input.js';
import { e1 } from '../support/line-source.js';

interface Plain {
  readonly length: number;
  readonly rate: number;
  readonly pipe: number;
  readonly ground: number;
  readonly mutual: number;
}
const inputOf = ({ length, rate, pipe, ground, mutual }: Plain): CircuitResistanceInput => ({
  pipeLength: pipeMetres(length),
  heatCapacityRate: wattsPerKelvin(rate),
  pipeResistance: pipeMetreKelvinPerWatt(pipe),
  groundResistance: pipeMetreKelvinPerWatt(ground),
  mutualResistance: pipeMetreKelvinPerWatt(mutual),
});
const of = (circuit: Plain): CircuitResistance => circuitResistance(inputOf(circuit));
const usual: Plain = { length: 200, rate: 1000, pipe: 0.1, ground: 0.6, mutual: 0.25 };
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const someCircuit = fc
  .record({ length: between(1, 2000), rate: between(100, 5000), pipe: between(0, 0.5), ground: between(0.1, 2), share: between(0, 0.45) })
  .map(({ share, ...rest }): Plain => ({ ...rest, mutual: share * (rest.pipe + rest.ground) }));

/** Follows both ways from the far end of the trench, where they join, back to its mouth by Runge and Kutta's method: leaving over entering. */
function steppedShare({ length, rate, pipe, ground, mutual }: Plain, steps = 2000): number {
  const self = pipe + ground - mutual;
  const determinant = self * self - mutual * mutual;
  // Heats of both ways from their fluids: the two resistances solved for them.
  const slopes = ([out, back]: readonly [number, number]): readonly [number, number] => [
    (self * out - mutual * back) / (determinant * rate),
    -(self * back - mutual * out) / (determinant * rate),
  ];
  const width = length / 2 / steps;
  let [out, back]: readonly [number, number] = [1, 1];
  for (let step = 0; step < steps; step += 1) {
    const [a, b] = slopes([out, back]);
    const [c, d] = slopes([out + (width / 2) * a, back + (width / 2) * b]);
    const [e, f] = slopes([out + (width / 2) * c, back + (width / 2) * d]);
    const [g, h] = slopes([out + width * e, back + width * f]);
    [out, back] = [out + (width / 6) * (a + 2 * c + 2 * e + g), back + (width / 6) * (b + 2 * d + 2 * f + h)];
  }
  return back / out;
}

describe('circuitResistance', () => {
  it('leaves of the difference what stepwise integration of the two ways leaves', () => {
    fc.assert(
      fc.property(someCircuit, (circuit) => {
        expect(of(circuit).remainingShare).toBeCloseTo(steppedShare(circuit), 10);
      }),
      { numRuns: 60 },
    );
  });

  it('carries by the flow the heat that passes the effective resistance', () => {
    fc.assert(
      fc.property(someCircuit, (circuit) => {
        const { remainingShare, effectiveResistance, assumedResistance, addedResistance, heatOverAssumed } = of(circuit);
        const byFlow = circuit.rate * (1 - remainingShare);
        const byResistance = (circuit.length * (1 + remainingShare)) / 2 / effectiveResistance;
        expect(byFlow / byResistance).toBeCloseTo(1, 10);
        expect(addedResistance).toBeCloseTo(effectiveResistance - assumedResistance, 12);
        expect(heatOverAssumed).toBeCloseTo(assumedResistance / effectiveResistance, 12);
        expect(addedResistance).toBeGreaterThan(0);
        expect(remainingShare).toBeGreaterThan(0);
        expect(remainingShare).toBeLessThan(1);
      }),
    );
  });

  it('of one pipe alone is the exponential of the textbook, with the ratios computed by hand', () => {
    fc.assert(
      fc.property(between(0.01, 30), (units) => {
        const { remainingShare, transferUnits, heatOverAssumed } = of({ length: units * 500, rate: 1000, pipe: 0.1, ground: 0.4, mutual: 0 });
        expect(transferUnits).toBeCloseTo(units, 10);
        expect(remainingShare / Math.exp(-units)).toBeCloseTo(1, 10);
        expect(heatOverAssumed).toBeCloseTo((1 - Math.exp(-units)) / units / ((1 + Math.exp(-units)) / 2), 10);
      }),
    );
    const ratioAt = (units: number): number => of({ length: units * 500, rate: 1000, pipe: 0.1, ground: 0.4, mutual: 0 }).heatOverAssumed;
    expect(ratioAt(0.1)).toBeCloseTo(0.9992, 4);
    expect(ratioAt(0.5)).toBeCloseTo(0.98, 3);
    expect(ratioAt(1)).toBeCloseTo(0.924, 3);
    expect(ratioAt(2)).toBeCloseTo(0.762, 3);
  });

  it('keeps all digits of what is added where that is next to nothing, and joins where the two forms meet', () => {
    const units = (transferUnits: number): CircuitResistance => of({ length: 500 * transferUnits, rate: 1000, pipe: 0.1, ground: 0.4, mutual: 0 });
    for (const each of [0.001, 0.01, 0.03]) {
      const half = each / 2;
      const series = half ** 2 / 3 - half ** 4 / 45 + (2 * half ** 6) / 945;
      expect(units(each).addedResistance / (0.5 * series)).toBeCloseTo(1, 12);
    }
    const wide = circuitResistance({ ...inputOf(usual), pipeLength: pipeMetres(1), heatCapacityRate: wattsPerKelvin(1e9) });
    expect(wide.addedResistance).toBeGreaterThan(0);
    expect(wide.effectiveResistance).toBe(wide.assumedResistance);
    for (const each of [1.99999999, 2, 2.00000001]) {
      const half = each / 2;
      expect(units(each).addedResistance).toBeCloseTo(0.5 * (half / Math.tanh(half) - 1), 14);
    }
  });

  it('grows with the length and what the ways have in common, and falls with the flow', () => {
    fc.assert(
      fc.property(someCircuit, between(1.01, 3), (circuit, factor) => {
        const { effectiveResistance } = of(circuit);
        expect(of({ ...circuit, length: factor * circuit.length }).effectiveResistance).toBeGreaterThan(effectiveResistance);
        expect(of({ ...circuit, rate: factor * circuit.rate }).effectiveResistance).toBeLessThan(effectiveResistance);
        expect(of({ ...circuit, mutual: circuit.mutual / factor }).effectiveResistance).toBeLessThanOrEqual(effectiveResistance);
      }),
    );
  });

  it('of circuits in parallel is that of one of them, by length and flow alike', () => {
    expect(of({ ...usual, length: 4 * usual.length, rate: 4 * usual.rate })).toEqual(of(usual));
  });

  it('finds what the ways have in common as the rise of both pipes less that of one alone: a line and its image', () => {
    const soil = { radius: 0.0167, conductivity: 1.5, diffusivity: 6e-7 };
    const riseOf = (pipes: readonly (readonly [number, number])[]): number => responseOf(layoutOf(pipes), soil).riseAfter(days(90));
    const both = riseOf([
      [-0.3, 1.5],
      [0.3, 1.5],
    ]);
    const lineAt = (distance: number): number => e1(distance ** 2 / (4 * 6e-7 * 90 * 86_400)) / (4 * Math.PI * 1.5);
    expect(both - riseOf([[0, 1.5]])).toBeCloseTo(lineAt(0.6) - lineAt(Math.hypot(0.6, 3)), 12);
  });

  it('in an endless trench still leaves the share that the ways pass to one another', () => {
    const { remainingShare } = of({ ...usual, length: 1e6 });
    const self = usual.pipe + usual.ground - usual.mutual;
    expect(remainingShare).toBeCloseTo(usual.mutual / (self + Math.sqrt(self ** 2 - usual.mutual ** 2)), 12);
  });

  it('refuses ways that act on one another as on themselves, and bad input by name', () => {
    expect(() => of({ ...usual, mutual: 0.35 })).toThrow(expect.objectContaining({ code: 'impossible', argument: 'mutualResistance' }));
    refuses(circuitResistance, circuitResistanceInputShape, inputOf(usual));
  });
});
