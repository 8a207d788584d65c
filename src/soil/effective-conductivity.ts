import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Source } from '../references/index.js';
import { soilThermalShape, type SoilThermal } from '../states/index.js';
import type { Conductivity, Diameter, HeatCapacity, Length, PipeResistance, Shape } from '../units/index.js';
import { type BuriedPipe, buriedPipeShape, demandPipes, USUAL_DIAMETER } from './buried-pipes.js';
import { fillFindings } from './fill-findings.js';
import { groundAtPipe, groundLayers, onInterface } from './ground-at-pipe.js';
import { thermalOf } from './heat-capacity.js';
import { demandLayers, type SoilLayer, soilLayerShape } from './layers.js';
import { logFindings } from './log-findings.js';
import { layeredRise, uniformRise } from './mean-rise.js';
import { demandBedding, demandFill, fillLayers, type PipeBedding, pipeBeddingShape, type TrenchFill, trenchFillShape } from './trench-fill.js';
import { trenchRise } from './trench-rise.js';

/** Ground in layers with pipes in it. */
export interface LayeredGround {
  /** Layers of the log from the top down, each beginning where the one above ends; 1 to 20 of them. */
  readonly layers: readonly SoilLayer[];
  /** The pipes of one trench, 1 to 20 of them. */
  readonly pipes: readonly BuriedPipe[];
  /** Outside diameter of the pipes, 0.005 to 0.5, on which little depends; 32 mm when left out [m]. */
  readonly outsideDiameter?: Diameter;
  /** What the trench is filled with; left out, the native ground is taken to close about the pipes again. */
  readonly fill?: TrenchFill;
  /** Sand or sieved soil about the pipes; none when left out. */
  readonly bedding?: PipeBedding;
  /** Depth of the water table when it stands highest while the trench is open, 0 to 100; not known when left out [m]. */
  readonly waterTable?: Length;
}

/** Shape of {@link LayeredGround}. */
export const layeredGroundShape: Shape<LayeredGround> = {
  layers: { list: soilLayerShape },
  pipes: { list: buriedPipeShape },
  outsideDiameter: { optional: 'diameter' },
  fill: { optional: trenchFillShape },
  bedding: { optional: pipeBeddingShape },
  waterTable: { optional: 'length' },
};

/** The uniform ground that resists in the long run as the layered one does. */
export interface EffectiveGround {
  /** What to compute the ground with. */
  readonly thermal: SoilThermal;
  /** Mean conductivity of what the pipes themselves lie in, which heat of some hours is alone to feel [W/(m.K)]. */
  readonly aroundPipes: Conductivity;
  /** Mean warming of the pipe walls in the long run, per heat per metre of each pipe [m.K/W]. */
  readonly steadyRise: PipeResistance;
  /** The same uniform ground for the native layers alone, as if there were no trench; equal to `thermal` without fill and bedding. */
  readonly native: SoilThermal;
  /** What fill and bedding add to the steady warming in the native ground; below 0 where they conduct better, 0 without [m.K/W]. */
  readonly addedResistance: PipeResistance;
}

/** {@link EffectiveGround} with findings and sources. */
export interface EffectiveGroundResult extends EffectiveGround {
  /** What is doubtful about the log. */
  readonly findings: readonly Finding[];
  /** What it rests on. */
  readonly sources: readonly Source[];
}

/** Shape of {@link EffectiveGround}. */
export const effectiveGroundShape: Shape<EffectiveGround> = {
  thermal: soilThermalShape,
  aroundPipes: 'conductivity',
  steadyRise: 'pipe resistance',
  native: soilThermalShape,
  addedResistance: 'pipe resistance',
};

/**
 * The uniform soil that the pipes of a trench would take layered ground for, with its fill and bedding.
 *
 * Equal in the long run: conductivity is that of uniform ground with the same steady mean warming of all pipes, heat capacity that of the
 * native layers beside the pipes. A mean over the depths would be wrong by up to 65 %, since most of the resistance lies near the pipe;
 * for the same reason a narrow trench fill counts for much more than its width. The first layer is continued to the surface and the last
 * one downward, with a finding where the log should have gone on.
 *
 * `thermal` is that of the long run; {@link layeredResponse} is the ground in time. With a uniform response take the ground as `native` and put
 * `addedResistance` in series with the pipe wall. Heat of hours reaches no further than what the pipes lie in, `aroundPipes`. The wave of
 * the seasons knows no trench and goes with `native`.
 *
 * One trench only; with neighbours near, the far layers weigh a little more than here.
 *
 * @param ground - layers with their depths [m] and properties, pipes [m], what the trench is filled with
 * @returns the effective soil, with findings
 * @throws InputError when layers overlap or leave a gap, the trench does not hold its pipes, beddings meet, or a number is impossible
 * @remarks
 * Layers: the two-dimensional steady field of every pair of pipes, layer by layer without approximation (`layeredLineSource`); a pipe whose
 * wall reaches into a second layer counts as lying on their interface. Fill, and bedding in it: charges on all faces between grounds
 * (`facesOfFill`). Bedding without a fill: a ring in series, exact to the square of its radius over twice the depth.
 *
 * Checked against finite elements. In the long run: two layers with one or two pipes, 0.05 % of the effective conductivity; fill 0.6 m wide
 * with two pipes 0.02 %, rings of bedding 0.02 %, a square of bedding 0.06 %. Layers after 30 and 120 days: `thermal` is at most 9 and 4 % below
 * with a dry layer above the pipe (the safe side) or 5 and 2 % above with a poorer layer below the interface. Fill and bedding in time, as
 * `addedResistance` on the native response: warming within 0.1 % in bedding and 2.7 % in fill from a week on; after a day 1.8 % and, too much and
 * so on the safe side, 7.6 %. By `thermal` alone it would be 11 to 35 % too little in the first month: do not. A ring that an interface cuts
 * is reckoned with the mean of both layers about it, up to 5 % off, with a finding. Layers against charges, which share nothing but the equation
 * of heat: 0.1 %.
 *
 * Invariants: lies between the least and the greatest conductivity present, and between the harmonic and the arithmetic mean by the shares
 * of heat dissipated in uniform ground; uniform ground comes back as it is; scales with the conductivities; cutting a layer in two changes
 * nothing; more fill that conducts worse never helps.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, metres, squareMillimetresPerSecond, megajoulesPerCubicMetreKelvin, wattsPerMetreKelvin } = await import(
 *   '../units/index.js'
 * );
 * const soil = (k: number, c: number) => ({
 *   conductivity: wattsPerMetreKelvin(k),
 *   heatCapacity: megajoulesPerCubicMetreKelvin(c),
 *   diffusivity: squareMillimetresPerSecond(k / c),
 * });
 * const { thermal } = effectiveConductivity({
 *   layers: [
 *     { top: metres(0), bottom: metres(1.2), thermal: soil(0.9, 1.6) },
 *     { top: metres(1.2), bottom: metres(3), thermal: soil(1.9, 2.6) },
 *   ],
 *   pipes: [{ x: metres(0), depth: metres(1.5) }],
 *   outsideDiameter: diameterMillimetres(33.4),
 * });
 * expect(thermal.conductivity).toBeCloseTo(1.607, 3);
 * ```
 */
export function effectiveConductivity(ground: LayeredGround): EffectiveGroundResult {
  const { layers, pipes, outsideDiameter = USUAL_DIAMETER, fill, bedding, waterTable } = ground;
  demandLayers(layers);
  demandPipes(pipes, outsideDiameter);
  const radius = outsideDiameter / 2;
  if (fill !== undefined) demandFill(fill, pipes, radius);
  if (bedding !== undefined) demandBedding(bedding, pipes, radius, fill !== undefined);
  if (waterTable !== undefined) demand('waterTable', 'length', waterTable, { atLeast: 0, atMost: 100 });
  const conductivity = fill === undefined ? seenInRings(ground, radius) : seenInTrench(ground, fill, radius);
  const unfilled = fill === undefined && bedding === undefined ? conductivity : seenInRings({ layers, pipes }, radius);
  const logged = groundLayers(layers);
  const beside = pipes.map(({ depth }) => groundAtPipe(logged, onInterface(logged, depth, radius)));
  const heatCapacity = mean(beside.map((each) => each.heatCapacity)) as HeatCapacity;
  const aroundPipes = bedding?.thermal.conductivity ?? fill?.thermal.conductivity ?? mean(beside.map((each) => each.conductivity));
  const shape = uniformRise(pipes, radius);
  return {
    thermal: thermalOf(conductivity, heatCapacity),
    aroundPipes: aroundPipes as Conductivity,
    steadyRise: (shape / conductivity) as PipeResistance,
    native: thermalOf(unfilled, heatCapacity),
    addedResistance: (shape / conductivity - shape / unfilled) as PipeResistance,
    findings: [...logFindings(ground, radius), ...fillFindings({ conductivity, fillConductivity: fill?.thermal.conductivity, unfilled })],
    sources: fill === undefined ? SOURCES : [...SOURCES, 'facesOfFill'],
  };
}

/** In layers, each pipe and its ring of bedding taken for a thicker pipe behind the resistance of the ring. */
function seenInRings({ layers, pipes, bedding }: LayeredGround, radius: number): Conductivity {
  const ground = groundLayers(layers);
  const outer = radius + (bedding?.thickness ?? 0);
  const axes = pipes.map(({ x, depth }) => ({ x, depth: onInterface(ground, depth, outer) }));
  const ring = bedding === undefined ? 0 : Math.log(outer / radius) / (2 * Math.PI * bedding.thermal.conductivity);
  return (uniformRise(axes, radius) / (ring + layeredRise(ground, axes, outer))) as Conductivity;
}

/** In a filled trench, bedding from wall to wall of it. */
function seenInTrench({ layers, pipes, bedding }: LayeredGround, fill: TrenchFill, radius: number): Conductivity {
  const section = { native: groundLayers(layers), fill: fillLayers(fill, bedding, pipes, radius), halfWidth: fill.width / 2 };
  return (uniformRise(pipes, radius) / trenchRise(section, pipes, radius)) as Conductivity;
}

const SOURCES: readonly Source[] = ['layeredLineSource'];

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
