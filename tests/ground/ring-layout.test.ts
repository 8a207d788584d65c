import { describe, expect, it } from 'vitest';
import {
  exponentialRingResponse,
  flatOverlappedCoil,
  type OverlappedCoilSection,
  overlappedCoilSectionShape,
  ringLayoutFrom,
  type RingLayoutInput,
  ringLayoutInputShape,
  ringResponse,
  type RingResponseInput,
  ringResponseInputShape,
  ringTrench,
  ringTrenchSectionShape,
  uprightOverlappedCoil,
} from '../../src/ground/index.js';
import { days, diameterMetres, type Length, metres, type Time, wattsPerSquareMetreKelvin } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { soilOf } from './support.js';

const at = (x: number, depth: number): { x: Length; depth: Length } => ({ x: metres(x), depth: metres(depth) });
const section = { ringDiameter: metres(0.9), pitch: metres(0.3), depth: metres(1.8), turns: 6, returnPipe: at(0, 1.2), trenchSpacing: metres(4) };
const INPUTS: readonly RingLayoutInput[] = [
  { type: 'flat-overlapped-coil', ...section },
  { type: 'upright-overlapped-coil', ...section, returnPipe: at(0.3, 1.8) },
  { type: 'ring-trench', ringDiameter: metres(8), pipes: [at(-0.3, 1.5), at(0.3, 1.5)] },
];
const example: RingResponseInput = {
  layout: { type: 'flat-overlapped-coil', ...section, trenches: 2 },
  pipe: { outsideDiameter: diameterMetres(0.032), leastBendRadius: metres(0.4) },
  soil: soilOf(1.5, 6e-7),
  surface: { type: 'film', coefficient: wattsPerSquareMetreKelvin(15) },
  selfTerm: 'line',
};

describe('pipe laid in rings', () => {
  it('refuses every impossible field of a layout by its name', () => {
    const [first = INPUTS[0], ...more] = INPUTS;
    if (first === undefined) throw new Error('no example');
    refuses((input) => ringLayoutFrom(input, 1), ringLayoutInputShape, first, { more });
    refuses<OverlappedCoilSection>((coil) => flatOverlappedCoil({ ...coil, trenches: 2 }), overlappedCoilSectionShape, section);
    refuses<OverlappedCoilSection>((coil) => uprightOverlappedCoil({ ...coil, trenches: 2 }), overlappedCoilSectionShape, section);
    refuses(ringTrench, ringTrenchSectionShape, { ringDiameter: metres(8), pipes: [at(-0.3, 1.5), at(0.3, 1.5)] });
  });

  it('refuses every impossible field of a response by its name', () => {
    const numbersOf = (input: RingResponseInput): unknown => {
      const response = ringResponse(input);
      return [response, response.riseAfter(days(30)), response.trenchRiseAfter(days(1))];
    };
    const more: RingResponseInput[] = [
      { ...example, layout: { type: 'upright-overlapped-coil', ...section, returnPipe: at(0.3, 1.8), trenches: 1 }, surface: { type: 'adiabatic' } },
      {
        ...example,
        layout: ringLayoutFrom({ type: 'ring-trench', ringDiameter: metres(8), pipes: [at(0, 1.5)] }, 1),
        surface: { type: 'isothermal' },
      },
    ];
    refuses(numbersOf, ringResponseInputShape, example, { more });
    const exact: RingResponseInput = { ...example, selfTerm: 'cylinder' };
    refuses(exponentialRingResponse, ringResponseInputShape, exact, { more: more.map((each) => ({ ...each, selfTerm: 'cylinder' })) });
    expect(() => exponentialRingResponse(example)).toThrow(/selfTerm/u);
  });

  it.each([Number.NaN, -1, Infinity, 1e13, '3600'])('refuses %s as a time', (time) => {
    const response = ringResponse(example);
    expect(() => response.riseAfter(time as Time)).toThrow(/time/u);
    expect(() => response.risesAfter([days(1), time as Time])).toThrow(/times\.1\.time/u);
  });

  it('carries trenches and name; a closed ring stands alone', () => {
    for (const input of INPUTS) expect(ringLayoutFrom(input, 1).type).toBe(input.type);
    expect(ringLayoutFrom({ type: 'flat-overlapped-coil', ...section }, 5)).toMatchObject({ trenches: 5, turns: 6 });
    expect(() => ringLayoutFrom({ type: 'ring-trench', ringDiameter: metres(8), pipes: [at(0, 1.5)] }, 2)).toThrow(/trenches.*stands alone/u);
  });

  it('refuses coils that stand out of the ground or run into one another', () => {
    const upright = { ...section, depth: metres(0.45), trenches: 1 };
    expect(() => uprightOverlappedCoil(upright)).toThrow(/depth.*stand out of the ground/u);
    expect(flatOverlappedCoil(upright).type).toBe('flat-overlapped-coil');
    const near = { ...section, trenchSpacing: metres(1), trenches: 2 };
    expect(() => flatOverlappedCoil(near)).toThrow(/trenchSpacing.*run into one another/u);
    expect(uprightOverlappedCoil(near).type).toBe('upright-overlapped-coil');
    expect(() => uprightOverlappedCoil({ ...near, returnPipe: at(0.9, 1.8) })).toThrow(/trenchSpacing/u);
    expect(() => ringTrench({ ringDiameter: metres(2), pipes: [at(-1, 1.5)] })).toThrow(/pipes\.0\.x.*middle of the ring/u);
  });
});

describe('pipe that cannot be laid in rings', () => {
  const of = (change: Partial<RingResponseInput['layout']>, pipe: Partial<RingResponseInput['pipe']> = {}, type = example.layout.type) => {
    const layout = { ...example.layout, ...change, type } as RingResponseInput['layout'];
    return () => ringResponse({ ...example, layout, pipe: { ...example.pipe, ...pipe } });
  };

  it('lies closer than it is thick, is bent too tightly or sticks out of the ground', () => {
    expect(of({ pitch: metres(0.03) })).toThrow(/layout\.pitch.*closer than the pipe is thick/u);
    expect(of({}, { leastBendRadius: metres(0.5) })).toThrow(/layout\.ringDiameter.*tighter than the pipe may be bent/u);
    expect(of({}, { outsideDiameter: diameterMetres(0.1), leastBendRadius: metres(0) })).toThrow(/layout\.ringDiameter.*five diameters/u);
    expect(of({ depth: metres(0.01) })).toThrow(/layout\.depth.*stick out of the ground/u);
    expect(of({ depth: metres(0.46) }, {}, 'upright-overlapped-coil')).toThrow(/layout\.depth.*stick out of the ground/u);
  });

  it('has its return in the rings', () => {
    expect(of({ returnPipe: at(0.2, 1.81) })).toThrow(/layout\.returnPipe.*overlap/u);
    expect(of({ returnPipe: at(0.5, 1.8) })).not.toThrow();
    expect(of({ returnPipe: at(0.01, 1.5) }, {}, 'upright-overlapped-coil')).toThrow(/layout\.returnPipe.*overlap/u);
    expect(of({ returnPipe: at(0, 0.01) })).toThrow(/layout\.returnPipe\.depth/u);
  });

  it('is bent to the ring of its innermost pipe, and overlaps in one trench', () => {
    const ring = (pipes: readonly { x: Length; depth: Length }[]) => () =>
      ringResponse({ ...example, layout: ringTrench({ ringDiameter: metres(2), pipes }), pipe: { ...example.pipe, leastBendRadius: metres(0.8) } });
    expect(ring([at(-0.3, 1.5)])).toThrow(/layout\.ringDiameter.*may be bent/u);
    expect(ring([at(-0.2, 1.5), at(-0.19, 1.5)])).toThrow(/overlap/u);
    expect(ring([at(-0.2, 1.5)])).not.toThrow();
  });
});
