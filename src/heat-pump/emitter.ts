import { demand, demandChoice, demandObject, InputError, locate } from '../errors/index.js';
import type { Power, Ratio, Shape, Temperature, TemperatureDifference } from '../units/index.js';
import { EMITTER_EXPONENTS, type EmitterKind } from './emitter.data.js';
import { EXPONENT } from './weather-compensation-input.js';

/** Water through an emitter, and the room around it. */
export interface EmitterWater {
  /** Water entering the emitter, 10 to 100 [degC]. */
  readonly supplyTemperature: Temperature;
  /** Water leaving it, above the room and at most the supply [degC]. */
  readonly returnTemperature: Temperature;
  /** Room, 5 to 35 [degC]. */
  readonly indoor: Temperature;
  /** Which mean of the excess over the room; logarithmic when left out, as EN 442 corrects large spreads. */
  readonly excessMean?: 'logarithmic' | 'arithmetic';
}

/** Shape of {@link EmitterWater}. */
export const emitterWaterShape: Shape<EmitterWater> = {
  supplyTemperature: 'temperature',
  returnTemperature: 'temperature',
  indoor: 'temperature',
  excessMean: { optional: ['logarithmic', 'arithmetic'] },
};

/** What the emitters of the house are rated for, all together or those of one room. */
export interface EmitterRating {
  /** What they are. */
  readonly emitter: EmitterKind;
  /** Exponent as its maker states it, 0.8 to 2; that of its kind when left out [1]. */
  readonly exponent?: Ratio;
  /** Heat that they give at the rating, 1 to 1e8 [W]. */
  readonly ratedOutput: Power;
  /** Water and room of the rating; for radiators by EN 442 75, 65 and 20 degC. */
  readonly ratedWater: EmitterWater;
}

/** Shape of {@link EmitterRating}. */
export const emitterRatingShape: Shape<EmitterRating> = {
  emitter: ['radiator', 'convector', 'floor', 'fan coil'],
  exponent: { optional: 'ratio' },
  ratedOutput: 'power',
  ratedWater: emitterWaterShape,
};

/** What {@link emitterOutput} needs. */
export interface EmitterOutputInput {
  /** What the emitters are rated for. */
  readonly emitters: EmitterRating;
  /** Water and room that they meet; the mean of the excess as in the rating. */
  readonly emitterWater: Omit<EmitterWater, 'excessMean'>;
}

/** Shape of {@link EmitterOutputInput}. */
export const emitterOutputInputShape: Shape<EmitterOutputInput> = {
  emitters: emitterRatingShape,
  emitterWater: { supplyTemperature: 'temperature', returnTemperature: 'temperature', indoor: 'temperature' },
};

/** What emitters give. */
export interface EmitterOutput {
  /** Heat given to the room [W]. */
  readonly emittedHeat: Power;
  /** Over that at the rating [1]. */
  readonly ratedRatio: Ratio;
  /** Mean excess temperature over the room [K]. */
  readonly meanExcess: TemperatureDifference;
}

/** Shape of {@link EmitterOutput}. */
export const emitterOutputShape: Shape<EmitterOutput> = { emittedHeat: 'power', ratedRatio: 'ratio', meanExcess: 'temperature difference' };

/**
 * Mean excess temperature of the water over the room.
 *
 * Logarithmic for water that cools along the emitter at constant heat transfer; the arithmetic mean is larger, by 1.4 % where the return has two thirds of the excess of the supply,
 * 4 % where it has half.
 *
 * @param water - supply, return and room [degC], and which mean
 * @returns excess, above 0 [K]
 * @throws InputError when the return is not above the room, or above the supply
 * @remarks (s − r)/ln(s/r) with the excesses s and r of supply and return. Source: `en442Emitters`. Invariants: between the two excesses; logarithmic ≤ arithmetic.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius } = await import('../units/index.js');
 * const water = { supplyTemperature: celsius(75), returnTemperature: celsius(65), indoor: celsius(20) };
 * expect(meanExcess({ ...water, excessMean: 'arithmetic' })).toBe(50);
 * expect(meanExcess(water)).toBeCloseTo(10 / Math.log(55 / 45), 12);
 * ```
 */
export function meanExcess({ supplyTemperature, returnTemperature, indoor, excessMean = 'logarithmic' }: EmitterWater): TemperatureDifference {
  demand('indoor', 'temperature', indoor, { atLeast: 5, atMost: 35 });
  demand('supplyTemperature', 'temperature', supplyTemperature, { atLeast: indoor + LEAST_EXCESS, atMost: 100 });
  demand('returnTemperature', 'temperature', returnTemperature, { atLeast: indoor + LEAST_EXCESS, atMost: supplyTemperature });
  demandChoice('excessMean', excessMean, ['logarithmic', 'arithmetic']);
  const [supplied, returned] = [supplyTemperature - indoor, returnTemperature - indoor];
  if (excessMean === 'arithmetic') return ((supplied + returned) / 2) as TemperatureDifference;
  const share = (supplied - returned) / supplied;
  // −ln(1 − share)/share → 1 + share/2 where the spread is nothing.
  return (share < 1e-8 ? supplied * (1 - share / 2) : (supplied * share) / -Math.log1p(-share)) as TemperatureDifference;
}

/** Water closer to the room than this warms it no more; a bound against a division by nothing [K]. */
export const LEAST_EXCESS = 0.01;

/**
 * Heat that emitters give with other water than they are rated for.
 *
 * @param input - emitters, and the water and room met
 * @returns heat [W], its ratio to the rating, mean excess [K]
 * @throws InputError when a temperature or a rating is impossible
 * @remarks
 * Heat = rated heat · (mean excess/rated mean excess)^exponent. Sources: `en442Emitters`, `emitterExponents`. Invariants: the rating comes back; rises with supply and return, falls with the room.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kilowatts } = await import('../units/index.js');
 * const water = (supply: number, back: number) => ({ supplyTemperature: celsius(supply), returnTemperature: celsius(back), indoor: celsius(20) });
 * const emitters = { emitter: 'radiator', ratedOutput: kilowatts(10), ratedWater: water(75, 65) } as const;
 * expect(emitterOutput({ emitters, emitterWater: water(55, 45) }).ratedRatio).toBeCloseTo(0.511, 3);
 * expect(emitterOutput({ emitters, emitterWater: water(45, 35) }).ratedRatio).toBeCloseTo(0.297, 3);
 * ```
 */
export function emitterOutput({ emitters, emitterWater }: EmitterOutputInput): EmitterOutput {
  const emitter = locate('emitters', () => readEmitter(emitters));
  demandObject('emitterWater', emitterWater);
  const excess = locate('emitterWater', () => meanExcess({ ...emitterWater, excessMean: emitter.excessMean }));
  const ratedRatio = (excess / emitter.ratedExcess) ** emitter.exponent;
  return { emittedHeat: (emitters.ratedOutput * ratedRatio) as Power, ratedRatio: ratedRatio as Ratio, meanExcess: excess };
}

/** A rating as plain numbers. */
export interface ReadEmitter {
  readonly exponent: number;
  readonly ratedOutput: number;
  readonly ratedExcess: number;
  readonly excessMean: 'logarithmic' | 'arithmetic';
}

/** Refuses a rating that cannot be; gives it as plain numbers. */
export function readEmitter(emitters: EmitterRating): ReadEmitter {
  demandObject('', emitters);
  const { emitter, exponent, ratedOutput, ratedWater } = emitters;
  demandChoice('emitter', emitter, ['radiator', 'convector', 'floor', 'fan coil']);
  if (exponent !== undefined) demand('exponent', 'ratio', exponent, EXPONENT);
  demand('ratedOutput', 'power', ratedOutput, { atLeast: 1, atMost: 1e8 });
  demandObject('ratedWater', ratedWater);
  const ratedExcess = locate('ratedWater', () => meanExcess(ratedWater));
  if (ratedExcess < 1) {
    throw new InputError({
      code: 'out-of-range',
      argument: 'ratedWater.supplyTemperature',
      value: { kind: 'temperature', value: ratedWater.supplyTemperature },
      allowed: 'water that is at least 1 K warmer than the room on the mean',
    });
  }
  return { exponent: exponent ?? EMITTER_EXPONENTS[emitter], ratedOutput, ratedExcess, excessMean: ratedWater.excessMean ?? 'logarithmic' };
}
