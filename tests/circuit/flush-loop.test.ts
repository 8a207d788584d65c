import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flushLoop, loopVolume, purgeFlow, type FlushedSection, type FlushLoopInput } from '../../src/circuit/index.js';
import {
  cubicMetresPerSecond,
  type Diameter,
  diameterMetres,
  diameterMillimetres,
  kilogramsPerCubicMetre,
  kilopascals,
  litresPerSecond,
  metresPerSecond,
  millipascalSeconds,
  pipeMetres,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const pipeShape = { insideDiameter: 'diameter' } as const;
const inputShape: Shape<FlushLoopInput> = {
  circuit: { pipe: pipeShape, length: 'pipe length', fittings: { optional: 'ratio' } },
  circuits: 'count',
  headers: { optional: { list: { pipe: pipeShape, length: 'pipe length', fittings: { optional: 'ratio' }, circuits: 'count' } } },
  flow: 'flow',
  fluid: { density: 'density', viscosity: 'dynamic viscosity' },
  cartDrop: { optional: 'pressure' },
  velocity: { optional: 'velocity' },
  turnovers: { optional: 'ratio' },
};
const bore = (millimetres: number): { readonly insideDiameter: Diameter } => ({ insideDiameter: diameterMillimetres(millimetres) });
const example: FlushLoopInput = {
  circuit: { pipe: bore(21.844), length: pipeMetres(152.4), fittings: ratio(5) },
  circuits: 6,
  headers: [
    { pipe: bore(49.35), length: pipeMetres(30), circuits: 6, fittings: ratio(4) },
    { pipe: bore(34.49), length: pipeMetres(6), circuits: 3 },
  ],
  flow: litresPerSecond(1.2),
  fluid: { density: kilogramsPerCubicMetre(999.7), viscosity: millipascalSeconds(1.3059) },
};
const all = (input: FlushLoopInput): readonly FlushedSection[] => {
  const { circuit, headers } = flushLoop(input);
  return [circuit, ...headers];
};
const flows = fc.double({ min: 0.1, max: 5, noNaN: true }).map((litres) => litresPerSecond(litres));

describe('flushLoop', () => {
  it('runs each piece at its least flow, and with its widest bore, at just the velocity asked for', () => {
    fc.assert(
      fc.property(flows, fc.double({ min: 0.3, max: 1.5, noNaN: true }), (flow, wanted) => {
        const input = { ...example, flow, velocity: metresPerSecond(wanted) };
        for (const [index, { leastFlow, widestBore }] of all(input).entries()) {
          expect(all({ ...input, flow: leastFlow })[index]?.velocity).toBeCloseTo(wanted, 10);
          const pipe = { insideDiameter: diameterMetres(widestBore) };
          const circuit = index === 0 ? { ...input.circuit, pipe } : input.circuit;
          const headers = (input.headers ?? []).map((header, at) => (at + 1 === index ? { ...header, pipe } : header));
          expect(all({ ...input, circuit, headers })[index]?.velocity).toBeCloseTo(wanted, 10);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('does at the flow of purgeFlow what purgeFlow says', () => {
    const { flow, headers, pressureDrop } = purgeFlow(example);
    const flushed = flushLoop({ ...example, flow });
    expect(flushed.circuit.velocity).toBeCloseTo(0.6096, 12);
    expect(flushed.pressureDrop).toBeCloseTo(pressureDrop, 6);
    expect(flushed.headers.map(({ velocity }) => velocity)).toEqual(headers.map(({ velocity }) => expect.closeTo(velocity, 12)));
  });

  it('tells which pieces are too slow, and at the least flow of all tells of none', () => {
    const { findings, leastFlow } = flushLoop({ ...example, flow: litresPerSecond(1) });
    expect(findings.map(({ values }) => values)).toEqual([
      expect.objectContaining({ section: 0 }),
      expect.objectContaining({ section: 1 }),
      expect.objectContaining({ section: 2 }),
    ]);
    expect(flushLoop({ ...example, flow: leastFlow }).findings).toEqual([]);
    expect(flushLoop({ ...example, flow: cubicMetresPerSecond(leastFlow * 0.999) }).findings).toHaveLength(1);
  });

  it('passes the contents once in a turnover', () => {
    const { circuit, headers = [], circuits, flow } = example;
    const { total } = loopVolume({ pipes: [{ ...circuit, count: circuits }, ...headers.map(({ pipe, length }) => ({ pipe, length }))] });
    const { turnoverTime, flushTime, purgeTime } = flushLoop({ ...example, turnovers: ratio(4) });
    expect(turnoverTime * flow).toBeCloseTo(total, 12);
    expect(flushTime / turnoverTime).toBeCloseTo(4, 12);
    expect(purgeTime).toBe(900);
  });

  it('adds what filter and hoses lose', () => {
    const added = flushLoop({ ...example, cartDrop: kilopascals(30) }).pressureDrop - flushLoop(example).pressureDrop;
    expect(added).toBeCloseTo(30_000, 6);
  });

  it('refuses more circuits beyond a piece than there are, and bad input by name', () => {
    expect(() => flushLoop({ ...example, circuits: 5 })).toThrow(expect.objectContaining({ argument: 'headers.0.circuits' }));
    const full: FlushLoopInput = { ...example, cartDrop: kilopascals(20), velocity: metresPerSecond(0.8), turnovers: ratio(3) };
    refuses(flushLoop, inputShape, full);
  });
});
