import { demand, demandObject, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Density, ForcePerLength, Length, Mass, PipeLength, Pressure, Shape } from '../units/index.js';
import { GRAVITY } from '../numerics/index.js';
import { demandRing, type PipeRing } from './wall-give.js';

/** A pipe in a wet trench. */
export interface WetPipe {
  /** The pipe. */
  readonly pipe: PipeRing;
  /** Density of what is in it: about 1 when it lies empty, 0 to 2000 [kg/m3]. */
  readonly contents: Density;
  /** Density of what it lies in: water, or backfill while that is a slurry, 500 to 2500 [kg/m3]. */
  readonly surroundings: Density;
  /** What holds it down; weights are not reckoned when left out. */
  readonly ballast?: Ballast;
  /** Density of the wall, 800 to 1500; polyethylene's 955 when left out [kg/m3]. */
  readonly wallDensity?: Density;
}

/** Single weights at equal distances. */
export interface Ballast {
  /** Mass of one weight, above 0 up to 1e4 [kg]. */
  readonly weight: Mass;
  /** Density of its material: sandbags about 1600, concrete 2300 [kg/m3]. */
  readonly weightDensity: Density;
  /** How far the pipe may rise between two weights, above 0 up to 1 [m]. */
  readonly allowedRise: Length;
  /** Modulus of the wall under a load of days, 1e7 to 1e10; 400 MPa when left out [Pa]. */
  readonly bendingModulus?: Pressure;
}

/** Whether a pipe floats, and what holds it. */
export interface PipeBuoyancy {
  /** Force upwards; below 0 where the pipe sinks [N/m]. */
  readonly uplift: ForcePerLength;
  /** Force upwards if it lay there empty [N/m]. */
  readonly upliftEmpty: ForcePerLength;
  /** Distance that one weight holds down by its weight under water, safety of 1.5 taken off; absent where the pipe does not float [m]. */
  readonly heldLength?: PipeLength;
  /** Distance over which the pipe between two weights rises as far as it may [m]. */
  readonly stiffLength?: PipeLength;
  /** The lesser of the two: distance from weight to weight [m]. */
  readonly ballastSpacing?: PipeLength;
}

/** A {@link PipeBuoyancy} with its findings. */
export interface PipeBuoyancyResult extends PipeBuoyancy {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link PipeBuoyancy}. */
export const pipeBuoyancyShape: Shape<PipeBuoyancy> = {
  uplift: 'force per length',
  upliftEmpty: 'force per length',
  heldLength: { optional: 'pipe length' },
  stiffLength: { optional: 'pipe length' },
  ballastSpacing: { optional: 'pipe length' },
};

/** Polyethylene of high density [kg/m3]. */
const POLYETHYLENE = 955 as Density;
/** Over the weight that just holds [1]. */
const SAFETY = 1.5;
/** Of polyethylene under a load of days to weeks [Pa]. */
const BENDING_MODULUS = 400e6 as Pressure;

/**
 * Force by which a pipe floats up in a wet trench, and the distance of weights that keep it down.
 *
 * Filled with water it hardly weighs anything under water; empty it floats, and in backfill that flows like mud it floats even when full. So lay it
 * filled, fill with material that does not flow, and dewater where walls slump: nobody steps in to hold a pipe down. The pipe between two weights
 * is taken as a beam fixed at both, without the help of its tension; a pipe that coils up of itself needs more weights than this.
 *
 * @param of - see {@link WetPipe}
 * @returns uplift full and empty [N/m], distances of weights [m], and a finding where the pipe floats
 * @throws InputError for a value out of its range
 * @remarks w = g (ρ_out A_outside − ρ_wall A_wall − ρ_in A_bore); a weight holds m g (1 − ρ_out/ρ_weight); the beam rises by w L⁴/(384 E I). Checked against
 * three cases of 3/4 in DR 11 worked out independently (H-FLOAT), the beam against the textbook's table (from memory) by integrating its equation. Invariants tested:
 * uplift rises with the surroundings and falls with the contents; contents, wall and surroundings of one density do not float.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, kilogramsForcePerMetre, kilogramsPerCubicMetre } = await import('../units/index.js');
 * const pipe = { outsideDiameter: diameterMillimetres(26.67), insideDiameter: diameterMillimetres(21.844) };
 * const water = kilogramsPerCubicMetre(1000);
 * const { uplift, upliftEmpty } = pipeBuoyancy({ pipe, contents: water, surroundings: water });
 * expect([uplift, upliftEmpty].map((force) => kilogramsForcePerMetre.of(force).toFixed(2))).toEqual(['0.01', '0.38']);
 * ```
 */
export function pipeBuoyancy(of: WetPipe): PipeBuoyancyResult {
  const { pipe, contents, surroundings, wallDensity = POLYETHYLENE, ballast } = of;
  demandRing(pipe);
  demand('contents', 'density', contents, { atLeast: 0, atMost: 2000 });
  demand('surroundings', 'density', surroundings, { atLeast: 500, atMost: 2500 });
  demand('wallDensity', 'density', wallDensity, { atLeast: 800, atMost: 1500 });
  const bore = (Math.PI / 4) * pipe.insideDiameter ** 2;
  const whole = (Math.PI / 4) * pipe.outsideDiameter ** 2;
  const upliftEmpty = GRAVITY * (surroundings * whole - wallDensity * (whole - bore));
  const uplift = upliftEmpty - GRAVITY * contents * bore;
  const forces = { uplift: uplift as ForcePerLength, upliftEmpty: upliftEmpty as ForcePerLength };
  const finding: Finding = { code: 'pipe-floats', level: 'warning', values: forces, source: 'common practice' };
  const findings = Math.max(uplift, upliftEmpty) > FLOATING ? [finding] : [];
  if (ballast === undefined) return { ...forces, findings };
  demandObject('ballast', ballast);
  const spacing = ballastSpacing(of, ballast, uplift);
  return { ...forces, ...spacing, findings };
}

/** 10 grams per metre, less than the wall's tolerance makes [N/m]. */
const FLOATING = 0.1;

/** How far apart weights may lie against an uplift. */
function ballastSpacing(
  { pipe, surroundings }: WetPipe,
  { weight, weightDensity, allowedRise, bendingModulus = BENDING_MODULUS }: Ballast,
  uplift: number,
): Pick<PipeBuoyancy, 'heldLength' | 'stiffLength' | 'ballastSpacing'> {
  demand('ballast.weight', 'mass', weight, { above: 0, atMost: 1e4 });
  demand('ballast.weightDensity', 'density', weightDensity, { atLeast: 500, atMost: 2e4 });
  demand('ballast.allowedRise', 'length', allowedRise, { above: 0, atMost: 1 });
  demand('ballast.bendingModulus', 'pressure', bendingModulus, { atLeast: 1e7, atMost: 1e10 });
  if (weightDensity <= surroundings) {
    const value = { kind: 'density', value: weightDensity } as const;
    const allowed = `above the surroundings, ${String(surroundings)} kg/m3`;
    throw new InputError({ code: 'impossible', argument: 'ballast.weightDensity', value, allowed, hint: 'a weight that floats holds nothing' });
  }
  if (uplift <= 0) return {};
  const inertia = (Math.PI / 64) * (pipe.outsideDiameter ** 4 - pipe.insideDiameter ** 4);
  const heldLength = ((weight * GRAVITY * (1 - surroundings / weightDensity)) / (SAFETY * uplift)) as PipeLength;
  const stiffLength = (((384 * bendingModulus * inertia * allowedRise) / uplift) ** 0.25) as PipeLength;
  return { heldLength, stiffLength, ballastSpacing: Math.min(heldLength, stiffLength) as PipeLength };
}
