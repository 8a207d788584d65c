import fc from 'fast-check';
import { type FluidRecord, freezingPoint, WATER } from '../../src/fluid/index.js';
import { celsius, massFraction, type MassFraction, type Temperature } from '../../src/units/index.js';
import { SOLUTIONS } from '../published/fluid.checks.js';

/** Every fluid with a record, in the order of the list of names. */
export const ALL_FLUIDS: readonly FluidRecord[] = [
  WATER,
  ...[
    'propylene-glycol',
    'ethylene-glycol',
    'ethanol',
    'methanol',
    'glycerol',
    'potassium-carbonate',
    'potassium-formate',
    'potassium-acetate',
    'calcium-chloride',
  ].map((name) => SOLUTIONS.find((each) => each.name === name) ?? WATER),
];

/** Those whose antifreeze is poured by the litre. */
export const LIQUIDS: readonly FluidRecord[] = SOLUTIONS.filter(({ pureDensity }) => pureDensity > 0);

/** Those whose antifreeze is a salt. */
export const SALTS: readonly FluidRecord[] = SOLUTIONS.filter(({ pureDensity }) => pureDensity === 0);

/** Any of some fluids at any concentration of its fits. */
export const choiceOf = (fluids: readonly FluidRecord[]): fc.Arbitrary<{ readonly fluid: FluidRecord; readonly massFraction: MassFraction }> =>
  fc
    .tuple(fc.constantFrom(...fluids), fc.double({ min: 0, max: 1, noNaN: true }))
    .map(([fluid, along]) => ({ fluid, massFraction: massFraction(along * fluid.highestMassFraction) }));

/** The same without the very ends of the fits, where a round trip may come out a last digit beyond them. */
export const inwardOf = (fluids: readonly FluidRecord[]): ReturnType<typeof choiceOf> =>
  choiceOf(fluids).map(({ fluid, massFraction: x }) => ({ fluid, massFraction: massFraction(0.001 * fluid.highestMassFraction + 0.998 * x) }));

/** Any fluid at any concentration and temperature that can be computed, not above a limit. */
export const conditionOf = (
  fluids: readonly FluidRecord[],
  warmest: number = Infinity,
): fc.Arbitrary<{ readonly fluid: FluidRecord; readonly massFraction: MassFraction; readonly temperature: Temperature }> =>
  fc.tuple(choiceOf(fluids), fc.double({ min: 0, max: 1, noNaN: true })).map(([choice, up]) => {
    const freezes = freezingPoint(choice);
    const top = Math.min(choice.fluid.highestTemperature, warmest);
    return { ...choice, temperature: celsius(Math.max(freezes, Math.min(freezes + up * (top - freezes), top))) };
  });
