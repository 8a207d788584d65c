import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopVolume, type LoopVolumeInput } from '../../src/circuit/index.js';
import { diameterMillimetres, litres, pipeMetres, type Shape } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const inputShape: Shape<LoopVolumeInput> = {
  pipes: { list: { pipe: { insideDiameter: 'diameter' }, length: 'pipe length', count: { optional: 'count' } } },
  equipment: { optional: 'volume' },
};
const pipe: LoopVolumeInput['pipes'][number]['pipe'] = { insideDiameter: diameterMillimetres(26) };

describe('loopVolume', () => {
  it('is additive: pieces hold what the whole holds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50 }), fc.double({ min: 0, max: 500, noNaN: true }), (count, length) => {
        const pieces = loopVolume({ pipes: [{ pipe, length: pipeMetres(length), count }], equipment: litres(10) });
        const whole = loopVolume({ pipes: [{ pipe, length: pipeMetres(count * length) }], equipment: litres(10) });
        expect(pieces.total).toBeCloseTo(whole.total, 12);
        expect(pieces.pipes.reduce((sum, each) => sum + each, 0.01)).toBeCloseTo(pieces.total, 12);
      }),
    );
  });

  it('refuses bad input by name', () => {
    const example: LoopVolumeInput = { pipes: [{ pipe, length: pipeMetres(600), count: 4 }], equipment: litres(10) };
    refuses(loopVolume, inputShape, example);
  });
});
