import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  energySignature,
  energySignatureShape,
  heatingBalanceInputShape,
  heatingBalancePoint,
  loadAt,
  type SignatureInput,
  signatureInputShape,
} from '../../src/building/index.js';
import { celsius, kilowatts, type Power, type Temperature } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const house = { designLoad: kilowatts(12), designOutdoor: celsius(-15), indoor: celsius(21), balancePoint: celsius(16) };
const heating: SignatureInput = { mode: 'heating', form: 'anchored at design', ...house };
const cooling: SignatureInput = {
  mode: 'cooling',
  designLoad: kilowatts(7),
  designOutdoor: celsius(33),
  indoor: celsius(25),
  balancePoint: celsius(20),
};

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
/** Houses of any size: design outdoor, then balance point and indoor above it. */
const houses = fc
  .record({ load: between(0.5, 500), outdoor: between(-50, 5), span: between(5, 35), gain: between(0, 10) })
  .map(({ load, outdoor, span, gain }) => ({
    designLoad: kilowatts(load),
    designOutdoor: celsius(outdoor),
    balancePoint: celsius(outdoor + span),
    indoor: celsius(Math.min(50, Math.max(0, outdoor + span + gain))),
  }))
  .filter(({ indoor, balancePoint }) => indoor >= balancePoint);

describe('energySignature', () => {
  it('anchored at design carries the whole design load there, bit for bit where no rounding comes in', () => {
    const signature = energySignature(heating);
    expect(signature.loadAtDesign).toBe(kilowatts(12));
    expect(signature.gainsTakenOff).toBe(0);
  });

  it('takes gains off the design load: the two add up to it', () => {
    fc.assert(
      fc.property(houses, (given) => {
        const signature = energySignature({ mode: 'heating', form: 'gains as offset', ...given });
        const { designLoad, designOutdoor } = given;
        expect((signature.loadAtDesign + signature.gainsTakenOff) / designLoad).toBeCloseTo(1, 12);
        expect(loadAt(signature, designOutdoor) / signature.loadAtDesign).toBeCloseTo(1, 12);
        expect(signature.gainsTakenOff).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('has one ratio between its two forms at every outdoor temperature', () => {
    fc.assert(
      fc.property(houses, between(0.05, 2), (given, share) => {
        const { designOutdoor, balancePoint, indoor } = given;
        const outdoor = celsius(Math.max(-95, balancePoint - share * (balancePoint - designOutdoor)));
        const offset = loadAt(energySignature({ mode: 'heating', form: 'gains as offset', ...given }), outdoor);
        const anchored = loadAt(energySignature({ mode: 'heating', form: 'anchored at design', ...given }), outdoor);
        expect(offset / anchored).toBeCloseTo((balancePoint - designOutdoor) / (indoor - designOutdoor), 9);
      }),
    );
  });

  it('has no load beyond the balance point, on either side', () => {
    expect(loadAt(energySignature(heating), celsius(16))).toBe(0);
    expect(loadAt(energySignature(heating), celsius(40))).toBe(0);
    expect(loadAt(energySignature(cooling), celsius(20))).toBe(0);
    expect(loadAt(energySignature(cooling), celsius(-40))).toBe(0);
    expect(loadAt(energySignature(cooling), celsius(33))).toBe(kilowatts(7));
  });

  it('refuses temperatures in the wrong order, naming the balance point', () => {
    expect(() => energySignature({ ...heating, balancePoint: celsius(-15.5) })).toThrow('balancePoint');
    expect(() => energySignature({ ...heating, balancePoint: celsius(21.5) })).toThrow('balancePoint');
    expect(() => energySignature({ ...heating, indoor: celsius(10) })).toThrow('balancePoint');
    expect(() => energySignature({ ...cooling, balancePoint: celsius(34) })).toThrow('balancePoint');
    expect(() => energySignature({ ...cooling, balancePoint: celsius(26) })).toThrow('balancePoint');
  });

  it('refuses bad input by name', () => {
    refuses<SignatureInput>(energySignature, signatureInputShape, heating, { more: [cooling] });
  });
});

describe('loadAt', () => {
  it('refuses bad input by name', () => {
    const signature = energySignature(heating);
    refuses(
      (input: { readonly signature: typeof signature; readonly outdoor: Temperature }) => loadAt(input.signature, input.outdoor),
      { signature: energySignatureShape, outdoor: 'temperature' },
      { signature, outdoor: celsius(0) },
    );
  });
});

describe('heatingBalancePoint', () => {
  const residence = { designLoad: kilowatts(12), designOutdoor: celsius(-15), indoor: celsius(21), gains: kilowatts(1.5) };

  it('is where the line with those gains begins', () => {
    fc.assert(
      fc.property(between(0, 0.9), (share) => {
        const gains = (share * residence.designLoad) as Power;
        const balancePoint = heatingBalancePoint({ ...residence, gains });
        const { gainsTakenOff } = energySignature({ mode: 'heating', form: 'gains as offset', ...residence, balancePoint });
        expect(gainsTakenOff).toBeCloseTo(gains, 8);
      }),
    );
  });

  it('refuses gains that heat the building at design', () => {
    expect(() => heatingBalancePoint({ ...residence, gains: kilowatts(12) })).toThrow('gains');
  });

  it('refuses bad input by name', () => {
    refuses(heatingBalancePoint, heatingBalanceInputShape, residence);
  });
});
