import { demand, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { Fraction, Pressure, Shape, Volume } from '../units/index.js';
import { boreCompliance, demandModulus, demandRing, MINUTES, type PipeRing, WATER_COMPRESSIBILITY, type WallGive } from './wall-give.js';

/** A pressure kick: the loop is shut at its far end and the cart's pump pushes against it. */
export interface PressureKick extends Pick<WallGive, 'modulus'> {
  /** The pipe that holds nearly all of the water. */
  readonly pipe: PipeRing;
  /** Contents of all that is put under pressure, above 0 up to 100 [m3]. */
  readonly loopVolume: Volume;
  /** Water that goes in, read off the cart's tank, 0 or more [m3]. */
  readonly waterIn: Volume;
  /** Standard error of that reading, 0 or more [m3]. */
  readonly waterInError: Volume;
  /** Gauge pressure before, 0 to 2e6 [Pa]. */
  readonly pressureBefore: Pressure;
  /** Gauge pressure under the kick, above the one before up to 2e6 [Pa]. */
  readonly pressureAfter: Pressure;
  /** Pressure of the air outside, 5e4 to 1.1e5; that of sea level when left out [Pa]. */
  readonly airPressure?: Pressure;
}

/** What a pressure kick tells. */
export interface TrappedAir {
  /** Water that the swelling wall and the compressed water take up without any air [m3]. */
  readonly swell: Band<'volume'>;
  /** Air in the loop at the pressure before the kick; below 0 where the wall gave less than was reckoned [m3]. */
  readonly airVolume: Band<'volume'>;
  /** The air as a share of the contents [1]. */
  readonly airShare: Fraction;
}

/** A {@link TrappedAir} with its findings. */
export interface TrappedAirResult extends TrappedAir {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link TrappedAir}. */
export const trappedAirShape: Shape<TrappedAir> = {
  swell: /* @__PURE__ */ bandShape('volume'),
  airVolume: /* @__PURE__ */ bandShape('volume'),
  airShare: 'fraction',
};

/** Of the standard atmosphere [Pa]. */
const SEA_LEVEL = 101_325 as Pressure;
/** Ratio of specific heats of air: a pocket squeezed faster than it can give off its heat. */
const ADIABATIC = 1.4;
/** Standard errors on either side of the 90 % limits. */
const NINETY = 1.645;

/**
 * Volume of air in a loop from the water that a rise of pressure pushes in: air gives, water hardly.
 *
 * A kick takes seconds: the wall is stiff then, and so the modulus of minutes is the default; small bubbles keep the water's temperature, a large
 * pocket may warm (exponent 1 to 1.4). A kick through a long hose also swells the hose: shut it off, or measure it alone. Polyethylene still swells
 * for minutes; read at once. Stay below the rating of the weakest part.
 *
 * @param kick - see {@link PressureKick}
 * @returns swell and air with limits of 90 % [m3], and a finding on whether there is air
 * @throws InputError for a value out of its range, or no rise of pressure
 * @remarks Water in = V_air (1 − (p₁/p₂)^(1/n)) + V (C + 1/K) (p₂ − p₁), pressures absolute. The kick is `common practice`; the wall of the ring as
 * in {@link sealedPressureSwing}. Invariants tested: a kick made from a known volume of air gives it back; no air and the swell reckoned give none; limits widen
 * with the error of the reading.
 * @example
 * ```ts @import.meta.vitest
 * const { bars, diameterMillimetres, litres } = await import('../units/index.js');
 * const { airVolume, swell, findings } = trappedAir({
 *   pipe: { outsideDiameter: diameterMillimetres(26.67), insideDiameter: diameterMillimetres(21.844) },
 *   loopVolume: litres(230),
 *   waterIn: litres(4),
 *   waterInError: litres(0.2),
 *   pressureBefore: bars(1),
 *   pressureAfter: bars(4),
 * });
 * expect(litres.of(swell.estimate)).toBeCloseTo(0.84, 2);
 * expect([airVolume.low, airVolume.estimate, airVolume.high].map((volume) => litres.of(volume).toFixed(1))).toEqual(['4.6', '5.3', '7.5']);
 * expect(findings[0]?.code).toBe('air-in-loop');
 * ```
 */
export function trappedAir(kick: PressureKick): TrappedAirResult {
  const { pipe, loopVolume, waterIn, waterInError, pressureBefore, pressureAfter, airPressure = SEA_LEVEL } = kick;
  demandRing(pipe);
  demand('loopVolume', 'volume', loopVolume, { above: 0, atMost: 100 });
  demand('waterIn', 'volume', waterIn, { atLeast: 0, atMost: 100 });
  demand('waterInError', 'volume', waterInError, { atLeast: 0, atMost: 100 });
  demand('pressureBefore', 'pressure', pressureBefore, { atLeast: 0, atMost: 2e6 });
  demand('pressureAfter', 'pressure', pressureAfter, { above: pressureBefore, atMost: 2e6 }, 'the kick has to raise the pressure');
  demand('airPressure', 'pressure', airPressure, { atLeast: 5e4, atMost: 1.1e5 });
  const modulus = demandModulus(kick.modulus, MINUTES);
  const ratio = (pressureBefore + airPressure) / (pressureAfter + airPressure);
  if (ratio > 0.99) {
    const value = { kind: 'pressure', value: pressureAfter } as const;
    throw new InputError({ code: 'impossible', argument: 'pressureAfter', value, allowed: 'a rise by 1 % of the absolute pressure or more' });
  }

  const rise = pressureAfter - pressureBefore;
  const swellOf = (young: number): number => loopVolume * (boreCompliance(pipe, young) + WATER_COMPRESSIBILITY) * rise;
  const swell = { low: swellOf(modulus.high), estimate: swellOf(modulus.estimate), high: swellOf(modulus.low), coverage: modulus.coverage };
  const slow = 1 - ratio;
  const fast = 1 - ratio ** (1 / ADIABATIC);
  const estimate = (waterIn - swell.estimate) / slow;
  // Reading and wall are independent, so their parts of the limits add as squares; the exponent, which only adds, comes on top.
  const below = Math.hypot(NINETY * waterInError, swell.high - swell.estimate) / slow;
  const above = Math.hypot(NINETY * waterInError, swell.estimate - swell.low) / slow;
  const airVolume = { low: estimate - below, estimate, high: Math.max(estimate * (slow / fast), estimate) + above * (slow / fast), coverage: 0.9 };
  const result = { swell, airVolume, airShare: estimate / loopVolume } as TrappedAir;
  const { estimate: middle, low: leastAir, high: mostAir } = result.airVolume;
  return {
    ...result,
    findings: [
      airVolume.low > 0
        ? { code: 'air-in-loop', level: 'warning', values: { airVolume: middle, leastAir, mostAir }, source: 'common practice' }
        : { code: 'air-not-seen', level: 'note', values: { mostAir }, source: 'common practice' },
    ],
  };
}
