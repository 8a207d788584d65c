import { demand, InputError, type InputErrorDetails } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { GRAVITY } from '../numerics/index.js';
import { joinedShape } from '../states/index.js';
import type { Density, Diameter, Length, Ratio, Shape, Temperature, Time, Velocity } from '../units/index.js';
import { DEFAULT_PARTICLE_DENSITY } from './particle-density.js';
import { settlingWater } from './settling-water.js';

/** Still water that grains sink in. */
export interface SettlingColumn {
  /** Height that the grains fall, from the surface of the water to what has settled, 0.01 to 2 [m]. */
  readonly columnHeight: Length;
  /** Of the water, 10 to 25 [degC]. */
  readonly temperature: Temperature;
  /** Density of the grains, 1100 to 5000; 2650 when left out [kg/m3]. */
  readonly particleDensity?: Density;
}

/** A grain and the water it sinks in. */
export interface SettlingParticle extends SettlingColumn {
  /** Its diameter, as a sphere; above 0 [m]. */
  readonly particleSize: Diameter;
}

/** A time and the water in which it parts the grains. */
export interface SettlingTime extends SettlingColumn {
  /** From the end of shaking, above 0 and up to 30 days [s]. */
  readonly settlingTime: Time;
}

/** How a grain sinks. */
export interface Settling {
  /** Its diameter [m]. */
  readonly particleSize: Diameter;
  /** Time in which it falls the whole height; all that is coarser has settled by then [s]. */
  readonly settlingTime: Time;
  /** Velocity of the fall [m/s]. */
  readonly settlingVelocity: Velocity;
  /** Reynolds number of the fall [1]. */
  readonly reynolds: Ratio;
  /** Whether the law holds for it. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link SettlingColumn}. */
export const settlingColumnShape: Shape<SettlingColumn> = {
  columnHeight: 'length',
  temperature: 'temperature',
  particleDensity: { optional: 'density' },
};

/** Shape of {@link SettlingParticle}. */
export const settlingParticleShape: Shape<SettlingParticle> = /* @__PURE__ */ joinedShape({ particleSize: 'diameter' }, settlingColumnShape);

/** Shape of {@link SettlingTime}. */
export const settlingTimeShape: Shape<SettlingTime> = /* @__PURE__ */ joinedShape({ settlingTime: 'time' }, settlingColumnShape);

/** Reynolds number up to which the law holds, and the one beyond which it is no estimate any more: drag is 3/16 of it greater (`stokes1851`). */
const HOLDS = 0.3;
const FAILS = 1;

/**
 * Time in which a grain falls through a column of still water, after Stokes.
 *
 * For spheres that sink apart from one another in water of even temperature; clay that clots sinks faster, so a jar needs a dispersant. Holds to a
 * Reynolds number of 0.3, in water about 0.07 mm; up to 1 it is given with a finding, the fall then being up to a sixth slower.
 *
 * @param grain - diameter [m], height [m], temperature of the water [degC] and density of the grain [kg/m3]
 * @returns time [s], velocity [m/s] and Reynolds number [1]
 * @throws InputError when a number is out of range, or the grain is too coarse for the law
 * @remarks
 * v = (ρs − ρf) g d² / (18 µ), t = h / v. Sources: `stokes1851`, `iapwsWater` (viscosity and density of water). Checked against times and cuts
 * computed apart from this library.
 *
 * Invariants: the time grows with the height and with 1/d²; inverse of {@link stokesCutSize}.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, diameterMillimetres, hours, metres } = await import('../units/index.js');
 * const clay = { particleSize: diameterMillimetres(0.002), columnHeight: metres(0.1), temperature: celsius(20) };
 * expect(hours.of(stokesSettlingTime(clay).settlingTime)).toBeCloseTo(7.73, 2);
 * ```
 */
export function stokesSettlingTime({ particleSize, ...water }: SettlingParticle): Settling {
  demand('particleSize', 'diameter', particleSize, { above: 0, atMost: 0.01 });
  const settlingTime = (water.columnHeight / velocityOf(particleSize, water)) as Time;
  return settled({ particleSize, settlingTime }, water, { argument: 'particleSize', value: { kind: 'diameter', value: particleSize } });
}

/**
 * Size of grain that a time of settling parts: coarser grains have settled, finer ones are still falling in part.
 *
 * Assumes what {@link stokesSettlingTime} does.
 *
 * @param reading - time since shaking [s], height [m], temperature of the water [degC] and density of the grains [kg/m3]
 * @returns diameter [m], velocity [m/s] and Reynolds number [1]
 * @throws InputError when a number is out of range, or the time is so short that the law fails
 * @remarks d = √(18 µ h / ((ρs − ρf) g t)). Source: `stokes1851`. Invariant: inverse of {@link stokesSettlingTime}.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, diameterMillimetres, hours, metres } = await import('../units/index.js');
 * const cut = stokesCutSize({ settlingTime: hours(2), columnHeight: metres(0.1), temperature: celsius(20) });
 * expect(diameterMillimetres.of(cut.particleSize)).toBeCloseTo(0.0039, 4);
 * ```
 */
export function stokesCutSize({ settlingTime, ...water }: SettlingTime): Settling {
  demand('settlingTime', 'time', settlingTime, { atLeast: 1, atMost: 30 * 86400 }, 'it is counted from the end of shaking');
  const { columnHeight } = water;
  const particleSize = Math.sqrt(columnHeight / settlingTime / velocityOf(1, water)) as Diameter;
  return settled({ particleSize, settlingTime }, water, { argument: 'settlingTime', value: { kind: 'time', value: settlingTime } });
}

/** Velocity of a grain [m/s]. */
function velocityOf(
  particleSize: number,
  { columnHeight, temperature, particleDensity = DEFAULT_PARTICLE_DENSITY as Density }: SettlingColumn,
): number {
  demand('columnHeight', 'length', columnHeight, { atLeast: 0.01, atMost: 2 });
  demand('particleDensity', 'density', particleDensity, { atLeast: 1100, atMost: 5000 });
  const { viscosity, density } = settlingWater(temperature);
  return ((particleDensity - density) * GRAVITY * particleSize ** 2) / (18 * viscosity);
}

/** What was given, by which a refusal is told. */
type Given = Pick<InputErrorDetails, 'argument' | 'value'>;

function settled(fall: Pick<Settling, 'particleSize' | 'settlingTime'>, water: SettlingColumn, given: Given): Settling {
  const { particleSize } = fall;
  const settlingVelocity = velocityOf(particleSize, water) as Velocity;
  const { viscosity, density } = settlingWater(water.temperature);
  const reynolds = ((density * settlingVelocity * particleSize) / viscosity) as Ratio;
  if (reynolds > FAILS) {
    const allowed = `a fall with a Reynolds number up to ${String(FAILS)}, not ${reynolds.toPrecision(3)}`;
    throw new InputError({ code: 'out-of-range', ...given, allowed, hint: 'sieve what is coarser than 0.05 mm' });
  }
  const coarse: Finding = { code: 'grain-too-coarse-for-stokes', level: 'warning', values: { particleSize, reynolds }, source: 'stokes1851' };
  return { ...fall, settlingVelocity, reynolds, findings: reynolds > HOLDS ? [coarse] : [] };
}
