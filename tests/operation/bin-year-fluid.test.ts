import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fluidAlongLine, fluidLineInputShape } from '../../src/operation/index.js';
import { celsius, hours } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('fluidAlongLine', () => {
  const place = (outdoor: number, enteringFluid: number) => ({ outdoor: celsius(outdoor), enteringFluid: celsius(enteringFluid) });

  it('meets its ends and is straight between and beyond', () => {
    fc.assert(
      fc.property(between(-30, 0), between(-10, 10), between(2, 30), between(0, 20), between(-0.5, 1.5), (cold, fluid, span, rise, share) => {
        const outdoors = [cold, cold + share * span, cold + span];
        const bins = outdoors.map((outdoor) => ({ outdoor: celsius(outdoor), time: hours(1) }));
        const found = fluidAlongLine({ bins, atDesign: place(cold, fluid), atBalance: place(cold + span, fluid + rise) });
        [fluid, fluid + share * rise, fluid + rise].forEach((expected, index) => expect(found[index]?.enteringFluid).toBeCloseTo(expected, 9));
      }),
    );
  });

  it('refuses ends that are one place, and bad input by name', () => {
    const input = { bins: [{ outdoor: celsius(0), time: hours(1) }], atDesign: place(-10, 0), atBalance: place(16, 8) };
    expect(() => fluidAlongLine({ ...input, atBalance: place(-9.5, 8) })).toThrow('atBalance.outdoor');
    refuses(fluidAlongLine, fluidLineInputShape, input);
  });
});
