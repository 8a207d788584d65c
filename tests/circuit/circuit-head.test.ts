import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { circuitHead, type CircuitHeadInput } from '../../src/circuit/index.js';
import {
  diameterMillimetres,
  feetOfWater,
  kilogramsPerCubicMetre,
  kilopascals,
  litresPerSecond,
  metres,
  millipascalSeconds,
  pascals,
  pipeMetres,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const inputShape: Shape<CircuitHeadInput> = {
  circuit: { pipe: { insideDiameter: 'diameter' }, length: 'pipe length', fittings: { optional: 'ratio' } },
  circuits: 'count',
  flow: 'flow',
  fluid: { density: 'density', viscosity: 'dynamic viscosity' },
  header: { optional: { pipe: { insideDiameter: 'diameter' }, length: 'pipe length', fittings: { optional: 'ratio' } } },
  equipmentDrop: { optional: 'pressure' },
  roughness: { optional: 'length' },
};
const small = { insideDiameter: diameterMillimetres(21.844) };
const wide = { insideDiameter: diameterMillimetres(34.4932) };
const glycol = { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) };
const example: CircuitHeadInput = { circuit: { pipe: small, length: pipeMetres(152.4) }, circuits: 4, flow: litresPerSecond(0.76), fluid: glycol };
const full: CircuitHeadInput = {
  ...example,
  circuit: { ...example.circuit, fittings: ratio(5) },
  header: { pipe: wide, length: pipeMetres(30.48), fittings: ratio(12) },
  equipmentDrop: kilopascals(25),
  roughness: metres(0.0000015),
};
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const codes = (input: CircuitHeadInput): readonly string[] => circuitHead(input).findings.map(({ code }) => code);

describe('circuitHead', () => {
  it('adds up: circuit + header + equipment, head of this fluid, power of this flow', () => {
    const { circuit, header, equipmentDrop, pressureDrop, head, hydraulicPower } = circuitHead(full);
    expect(circuit.pressureDrop + (header?.pressureDrop ?? Number.NaN) + equipmentDrop).toBeCloseTo(pressureDrop, 9);
    expect(circuit.frictionDrop + circuit.fittingsDrop).toBeCloseTo(circuit.pressureDrop, 9);
    expect(head * 1022 * 9.80665).toBeCloseTo(pressureDrop, 6);
    expect(hydraulicPower).toBeCloseTo(pressureDrop * 0.00076, 9);
    expect(circuit.fittingsDrop).toBeCloseTo((5 * 1022 * circuit.velocity ** 2) / 2, 9);
  });

  it('drops in proportion to the length, and not at all over none', () => {
    fc.assert(
      fc.property(between(0, 1000), between(0.05, 3), (length, flow) => {
        const at = (metresOfPipe: number): number =>
          circuitHead({ ...example, flow: litresPerSecond(flow), circuit: { pipe: small, length: pipeMetres(metresOfPipe) } }).pressureDrop;
        expect(at(length)).toBeCloseTo((at(100) * length) / 100, 4);
      }),
    );
  });

  it('is the same for n circuits at n times the flow as for one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), between(0.02, 0.5), (circuits, flow) => {
        const one = circuitHead({ ...example, circuits: 1, flow: litresPerSecond(flow) });
        const many = circuitHead({ ...example, circuits, flow: litresPerSecond(circuits * flow) });
        expect(many.pressureDrop / one.pressureDrop).toBeCloseTo(1, 9);
        expect(many.hydraulicPower / one.hydraulicPower / circuits).toBeCloseTo(1, 9);
      }),
    );
  });

  it('rises strictly with the flow through every regime', () => {
    let before = 0;
    for (let flow = 0.02; flow < 4; flow *= 1.02) {
      const { pressureDrop } = circuitHead({ ...full, flow: litresPerSecond(flow) });
      expect(pressureDrop).toBeGreaterThan(before);
      before = pressureDrop;
    }
  });

  it('is Hagen–Poiseuille in slow flow: 128 μ L Q/(π D⁴)', () => {
    const { circuit } = circuitHead({ ...example, flow: litresPerSecond(0.2) });
    expect(circuit.reynolds).toBeLessThan(1000);
    const exact = (128 * 3.9e-3 * 152.4 * 5e-5) / (Math.PI * 0.021844 ** 4);
    expect(circuit.pressureDrop / exact).toBeCloseTo(1, 6);
  });

  it('finds a high head, a narrow header and fast fluid, and nothing in a plain loop', () => {
    expect(codes(example)).toEqual([]);
    expect(codes({ ...example, equipmentDrop: pascals(feetOfWater(30)) })).toEqual(['pump-head-high']);
    expect(codes({ ...example, header: { pipe: wide, length: pipeMetres(60) } })).toEqual(['header-loss-high']);
    expect(codes({ ...example, circuits: 1, circuit: { pipe: small, length: pipeMetres(5) } })).toEqual(['fluid-fast']);
  });

  it('refuses bad input by name', () => {
    refuses(circuitHead, inputShape, example, { more: [full] });
  });
});
