import { describe, expect, it } from 'vitest';
import { ETHANOL, METHANOL, mixtureFlashPoint } from '../../src/fluid/index.js';
import { massPercent } from '../../src/units/index.js';

/** An alcohol: Antoine's constants for mmHg and degC, van Laar's constants with water, molar mass [g/mol]; all recalled. */
interface Alcohol {
  readonly antoine: readonly [number, number, number];
  readonly vanLaar: readonly [number, number];
  readonly molarMass: number;
}
const methanol: Alcohol = { antoine: [8.08097, 1582.271, 239.726], vanLaar: [0.8041, 0.5619], molarMass: 32.042 };
const ethanol: Alcohol = { antoine: [8.20417, 1642.89, 230.3], vanLaar: [1.6798, 0.9227], molarMass: 46.068 };

/** Flash point by the rule that the vapour above the mixture is as rich as above the pure alcohol at its own flash point. */
function flashPointByRule({ antoine: [a, b, c], vanLaar: [one, other], molarMass }: Alcohol, pure: number, share: number): number {
  const pressure = (t: number): number => 10 ** (a - b / (t + c));
  const moles = share / molarMass;
  const x = moles / (moles + (1 - share) / 18.015);
  const activity = Math.exp(one / (1 + (one * x) / (other * (1 - x))) ** 2);
  let [low, high] = [-20, 120];
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (x * activity * pressure(middle) < pressure(pure)) low = middle;
    else high = middle;
  }
  return low;
}

describe('flash points of mixtures', () => {
  it('of methanol are those of the rule of partial pressures, to the degree printed', () => {
    for (const percent of [10, 15, 20, 25, 30]) {
      const { flashPoint } = mixtureFlashPoint({ fluid: METHANOL, massFraction: massPercent(percent) });
      expect(Math.abs(flashPoint - flashPointByRule(methanol, 11, percent / 100))).toBeLessThan(0.55);
    }
  });

  it('of ethanol, which are a table, lie within its 4 K of the same rule and the flash points of pure ethanol', () => {
    for (const percent of [10, 20, 30]) {
      const { flashPoint, flashPointError } = mixtureFlashPoint({ fluid: ETHANOL, massFraction: massPercent(percent) });
      const [low, high] = [13, 17].map((pure) => flashPointByRule(ethanol, pure, percent / 100));
      expect(flashPoint).toBeGreaterThan((low ?? NaN) - flashPointError);
      expect(flashPoint).toBeLessThan((high ?? NaN) + flashPointError);
    }
  });
});
