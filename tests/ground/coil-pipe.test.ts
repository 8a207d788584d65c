import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coilPipe, coilPipeInputShape } from '../../src/ground/index.js';
import { inches, metres } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('coilPipe', () => {
  it('is at least the circles and the pitch, at most both, and the same when both are scaled', () => {
    fc.assert(
      fc.property(between(0.3, 2), between(0.05, 5), between(0.4, 2), (ringDiameter, pitch, scale) => {
        const coil = coilPipe({ ringDiameter: metres(ringDiameter), pitch: metres(pitch) });
        expect(coil.ringPipePerTrench).toBeGreaterThanOrEqual(coil.circlesPerTrench * (1 - 1e-12));
        expect(coil.ringPipePerTrench).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(coil.ringPipePerTrench).toBeLessThanOrEqual(coil.circlesPerTrench + 1);
        expect(coil.pipePerTrench).toBeCloseTo(coil.ringPipePerTrench + 1, 12);
        const scaled = coilPipe({ ringDiameter: metres(scale * ringDiameter), pitch: metres(scale * pitch) });
        expect(scaled.ringPipePerTrench / coil.ringPipePerTrench).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is the length of many short chords, a second way to the same arc', () => {
    const [radius, pitch, steps] = [0.4572, 0.254, 200_000];
    const at = (u: number): readonly [number, number] => [(pitch * u) / (2 * Math.PI) + radius * Math.cos(u), radius * Math.sin(u)];
    let length = 0;
    for (let step = 0; step < steps; step += 1) {
      const [x, y] = at((2 * Math.PI * step) / steps);
      const [nextX, nextY] = at((2 * Math.PI * (step + 1)) / steps);
      length += Math.hypot(nextX - x, nextY - y);
    }
    expect(coilPipe({ ringDiameter: metres(2 * radius), pitch: metres(pitch) }).pipePerTurn).toBeCloseTo(length, 9);
  });

  it('does not give the 4 ft per foot that is printed for 36 in rings 56 in apart (LS-31): it is 3.15', () => {
    expect(coilPipe({ ringDiameter: inches(36), pitch: inches(56) }).pipePerTrench).toBeCloseTo(3.145, 3);
  });

  it('refuses bad input by name', () => {
    refuses(coilPipe, coilPipeInputShape, { ringDiameter: metres(0.9), pitch: metres(0.25) });
  });
});
