import { demand } from '../errors/index.js';
import type { PipeSection } from '../states/index.js';
import type { Area, Flow, Ratio, Velocity } from '../units/index.js';
import { demandBore, demandFluid, type HydraulicFluid } from './checks.js';

/** A flow through one pipe. */
export interface BoreFlow {
  /** The pipe; only its bore matters here. */
  readonly pipe: Pick<PipeSection, 'insideDiameter'>;
  /** Flow through this one pipe, not through the loop [m3/s]. */
  readonly flow: Flow;
}

/** A fluid flowing through one pipe. */
export interface PipeFlow extends BoreFlow {
  /** The fluid at its temperature. */
  readonly fluid: HydraulicFluid;
}

/** Greatest flow computed with [m3/s]; a bound against overflow, far outside any loop. */
const GREATEST_FLOW = 1e3;

/**
 * Mean velocity of a flow through a pipe.
 *
 * @param of - bore [m] and flow, 0 or more [m3/s]
 * @returns velocity [m/s]
 * @throws InputError when bore or flow is impossible
 * @example
 * ```ts @import.meta.vitest
 * const { diameterInches, feetPerSecond, gallonsPerMinute } = await import('../units/index.js');
 * const velocity = flowVelocity({ pipe: { insideDiameter: diameterInches(0.86) }, flow: gallonsPerMinute(3.62) });
 * expect(feetPerSecond.of(velocity)).toBeCloseTo(2, 2);
 * ```
 */
export function flowVelocity({ pipe, flow }: BoreFlow): Velocity {
  demandBore(pipe);
  demand('flow', 'flow', flow, { atLeast: 0, atMost: GREATEST_FLOW });
  return (flow / areaOf(pipe)) as Velocity;
}

/**
 * Reynolds number of a flow through a pipe, Re = ρ v D / μ.
 *
 * Laminar below 2300, turbulent above 4000; evaluate it with the fluid at its coldest.
 *
 * @param of - bore [m], fluid, and flow through the one pipe, 0 or more [m3/s]
 * @returns Reynolds number [1]
 * @throws InputError when bore, fluid or flow is impossible
 * @remarks Invariant: proportional to the flow.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds } = await import('../units/index.js');
 * const fluid = { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) };
 * expect(reynoldsNumber({ pipe: { insideDiameter: diameterMillimetres(21.844) }, fluid, flow: litresPerSecond(0.19) })).toBeCloseTo(2902, 0);
 * ```
 */
export function reynoldsNumber({ pipe, fluid, flow }: PipeFlow): Ratio {
  const velocity = flowVelocity({ pipe, flow });
  demandFluid(fluid);
  return ((fluid.density * velocity * pipe.insideDiameter) / fluid.viscosity) as Ratio;
}

/**
 * Cross-section of a bore.
 *
 * @param pipe - the pipe; only its bore matters [m]
 * @returns area [m2]
 * @throws InputError when the bore is impossible
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres } = await import('../units/index.js');
 * expect(boreArea({ insideDiameter: diameterMillimetres(20) })).toBeCloseTo(3.1416e-4, 8);
 * ```
 */
export function boreArea(pipe: BoreFlow['pipe']): Area {
  demandBore(pipe);
  return areaOf(pipe) as Area;
}

/** A velocity wanted in a pipe. */
export interface VelocityWanted extends Pick<BoreFlow, 'pipe'> {
  /** The mean velocity wanted, 0 to 1000 [m/s]. */
  readonly velocity: Velocity;
}

/**
 * Flow at which a velocity is reached in a pipe, as for purging.
 *
 * @param wanted - bore [m] and velocity, 0 to 1000 [m/s]
 * @returns flow through the one pipe [m3/s]
 * @throws InputError when bore or velocity is impossible
 * @remarks Invariant: {@link flowVelocity} gives the velocity back.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterInches, feetPerSecond, gallonsPerMinute } = await import('../units/index.js');
 * const flow = flowAtVelocity({ pipe: { insideDiameter: diameterInches(0.86) }, velocity: feetPerSecond(2) });
 * expect(gallonsPerMinute.of(flow)).toBeCloseTo(3.62, 2);
 * ```
 */
export function flowAtVelocity({ pipe, velocity }: VelocityWanted): Flow {
  demandBore(pipe);
  demand('velocity', 'velocity', velocity, { atLeast: 0, atMost: 1e3 });
  return (velocity * areaOf(pipe)) as Flow;
}

/** A Reynolds number wanted in a pipe. */
export interface ReynoldsWanted extends Pick<PipeFlow, 'pipe' | 'fluid'> {
  /** The Reynolds number wanted, 0 to 1e12; 2300 ends laminar flow, from 4000 up it is turbulent [1]. */
  readonly reynolds: Ratio;
}

/**
 * Flow at which a Reynolds number is reached in a pipe.
 *
 * @param wanted - bore [m], fluid, and Reynolds number, 0 to 1e12
 * @returns flow through the one pipe, π D μ Re / (4 ρ) [m3/s]
 * @throws InputError when a number is impossible
 * @remarks Checked against the table of flows at Reynolds 2300, 2500 and 4000. Invariant: {@link reynoldsNumber} gives the number back.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, kilogramsPerCubicMetre, litresPerMinute, millipascalSeconds, ratio } = await import('../units/index.js');
 * const fluid = { density: kilogramsPerCubicMetre(1026), viscosity: millipascalSeconds(5.52) };
 * const flow = flowAtReynolds({ pipe: { insideDiameter: diameterMillimetres(21.84) }, fluid, reynolds: ratio(2300) });
 * expect(litresPerMinute.of(flow)).toBeCloseTo(12.7, 1);
 * ```
 */
export function flowAtReynolds({ pipe, fluid, reynolds }: ReynoldsWanted): Flow {
  demandBore(pipe);
  demandFluid(fluid);
  demand('reynolds', 'ratio', reynolds, { atLeast: 0, atMost: 1e12 });
  return ((Math.PI / 4) * ((pipe.insideDiameter * fluid.viscosity * reynolds) / fluid.density)) as Flow;
}

function areaOf({ insideDiameter }: BoreFlow['pipe']): number {
  return (Math.PI / 4) * insideDiameter ** 2;
}
