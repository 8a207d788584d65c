// One house on a layout: sized to its limits, laid in whole coils, and followed without ice and with it, in its first winter and when the fill has settled.
import { customLayout, exponentialResponse, onePipe, pipeGround } from 'loamloop/ground';
import { circuitResistance, type FluidExtremes, followSettling, type IceSimulationInput, simulateWithIce, sizeLoop } from 'loamloop/operation';
import { effectiveConductivity } from 'loamloop/soil';
import type { SoilThermal } from 'loamloop/states';
import {
  type Area,
  celsius,
  cubicMetres,
  dayOfYear,
  days,
  type Length,
  metres,
  pipeMetreKelvinPerWatt,
  type PipeLength,
  pipeMetres,
  type PipeResistance,
  ratio,
  type Ratio,
  squareMetres,
  type Temperature,
  type TrenchLength,
  trenchMetres,
  type Volume,
  wattsPerKelvin,
} from 'loamloop/units';
import { type Kind, LASTING, type Laid } from './every-layout.js';
import { duty, fills, heatCapacityRate, iceSoil, limits, pipe, soil, start, step, wallAndFilm, wave } from './house.js';

/** Whole coils, each a circuit. */
export const COIL = pipeMetres(100);
/** Over so long a part of the winter what the ground does is told apart. */
export const SEASON = days(90);

/** Coldest fluid that enters the unit in a winter. */
export interface Winter {
  readonly withoutIce: Temperature;
  readonly withIce: Temperature;
}

/** What makes a layout what it is, each by itself. */
export interface Makings {
  /** Coldest that the ground at the pipes comes to without the loop, over all pipes. */
  readonly coldestGround: Temperature;
  readonly meanDepth: Length;
  /** Rise of the wall after a season, per heat per metre, of one such pipe alone at the depths of the layout. */
  readonly alone: PipeResistance;
  /** The same rise in the layout over that alone: what neighbours cost. */
  readonly byNeighbours: Ratio;
  /** The same rise below a surface that lets no heat through over that below the open one: what the surface gives. */
  readonly bySurface: Ratio;
  /** Pipe wall and film in the cold, and what the ends of a circuit cost. */
  readonly wallAndFilm: PipeResistance;
  readonly circuitEnds: PipeResistance;
  /** What fill adds. */
  readonly fill: { readonly firstWinter: PipeResistance; readonly settled: PipeResistance };
}

/** A layout with what it takes and gives. */
export interface Compared {
  readonly kind: Kind;
  /** The pipe that just keeps the limits with settled fill and without ice. */
  readonly needed: PipeLength;
  /** The pipe that would keep them in the first winter, too. */
  readonly neededLoose: PipeLength;
  readonly coils: number;
  readonly pipe: PipeLength;
  readonly trenches: number;
  readonly trench: TrenchLength;
  readonly land: Area;
  readonly earth: Volume;
  readonly settled: Winter;
  readonly firstWinter: Winter;
  readonly makings: Makings;
}

const HOURS_OF_YEAR = 8760;
const COLD = celsius(-5);
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** What a fill adds to each metre of pipe, the mean over the trenches of a group. */
export function addedByFill({ sections, trenchWidth, trenchDepth }: Kind, thermal: SoilThermal): PipeResistance {
  const layers = [{ top: metres(0), bottom: metres(5), thermal: soil }];
  const added = sections.map((pipes) => {
    const outermost = Math.max(...pipes.map(({ x }) => Math.abs(x)));
    const width = metres(Math.max(trenchWidth, 2 * outermost + trenchWidth / pipes.length));
    return effectiveConductivity({ layers, pipes, outsideDiameter: pipe.outsideDiameter, fill: { width, depth: trenchDepth, thermal } })
      .addedResistance;
  });
  return pipeMetreKelvinPerWatt(mean(added));
}

/** The undisturbed ground that all pipes of a layout feel on the mean. */
function groundOf({ sections }: Kind): ReturnType<typeof pipeGround> {
  const pipes = sections.flatMap((section, trench) => section.map(({ x, depth }) => ({ x: metres(x + 8 * trench), depth })));
  return pipeGround({ layout: customLayout({ pipes, trenches: 1, trenchSpacing: metres(40) }), pipe, soil, wave });
}

/** A number of coils laid in a layout, ready to be followed with either fill. */
export interface Topology {
  readonly trenches: number;
  readonly trenchLength: Length;
  readonly laid: Laid;
  readonly circuitEnds: PipeResistance;
  readonly withFill: (added: PipeResistance) => Omit<IceSimulationInput, 'pipeLength'>;
}

/** Trenches, response, film and ends of so many coils. */
export function topologyOf(kind: Kind, circuits: number): Topology {
  const { sections, perTrench, longestTrench } = kind;
  const trench = (circuits * COIL) / perTrench.bought;
  const groups = Math.ceil(trench / (sections.length * longestTrench) - 1e-9);
  const trenchLength = metres(trench / (groups * sections.length));
  const laid = kind.laid(groups, trenchLength);
  const film = wallAndFilm(circuits);
  const { addedResistance: circuitEnds } = circuitResistance({
    pipeLength: pipeMetres((COIL * perTrench.counted) / perTrench.bought),
    heatCapacityRate: wattsPerKelvin(heatCapacityRate / circuits),
    pipeResistance: film(COLD),
    groundResistance: laid.response.riseAfter(LASTING),
    ...(laid.mutual && { mutualResistance: laid.mutual }),
  });
  const { loop } = groundOf(kind);
  const ground = Float64Array.from({ length: HOURS_OF_YEAR }, (_, hour) => loop.temperatureOn(dayOfYear(1 + (hour + 1) / 24)));
  return {
    trenches: groups * sections.length,
    trenchLength,
    laid,
    circuitEnds,
    withFill: (added) => ({
      step,
      duty,
      ground,
      response: laid.response,
      resistanceAt: (meanFluid) => pipeMetreKelvinPerWatt(film(meanFluid) + circuitEnds + added),
      heatCapacityRate,
      start,
      freezingGround: { ...laid.iceRoom, soil: iceSoil, outsideDiameter: pipe.outsideDiameter },
    }),
  };
}

/** So many coils, and the pipe that their topology needs to keep the limits without ice, when the fill has settled. */
interface Sized {
  readonly coils: number;
  readonly needed: PipeLength;
  readonly topology: Topology;
}

/** The pipe that a layout of so many coils, their trenches and their flow needs, behind what a fill adds. */
export function sizedWith(kind: Kind, coils: number, added: PipeResistance): Sized {
  const { bought, counted } = kind.perTrench;
  const topology = topologyOf(kind, coils);
  const { exactLength } = sizeLoop({ ...topology.withFill(added), limits, guess: pipeMetres(coils * COIL) });
  return { coils, needed: pipeMetres((exactLength * bought) / counted), topology };
}

/** The fewest coils that are enough: up to the first number that is, and down as long as one less is, too. */
function fewestCoils(kind: Kind, added: PipeResistance): Sized {
  const enough = ({ coils, needed }: Sized): boolean => needed <= coils * COIL;
  let found = sizedWith(kind, 3, added);
  while (!enough(found)) found = sizedWith(kind, Math.ceil(found.needed / COIL), added);
  for (let less = found; enough(less) && less.coils > 1; less = sizedWith(kind, less.coils - 1, added)) found = less;
  return found;
}

/** A layout with what it takes and gives for the house. */
export function compared(kind: Kind): Compared {
  const { bought, counted } = kind.perTrench;
  const fill = { firstWinter: addedByFill(kind, fills.firstWinter), settled: addedByFill(kind, fills.settled) };
  const { coils, needed, topology } = fewestCoils(kind, fill.settled);
  const { laid, trenches, trenchLength, circuitEnds, withFill } = topology;
  const pipeLength = pipeMetres((coils * COIL * counted) / bought);
  const { freezingGround: _, ...native } = withFill(pipeMetreKelvinPerWatt(0));
  const settling = followSettling({ ...native, pipeLength, limits, firstWinterResistance: fill.firstWinter, settledResistance: fill.settled });
  const later = simulateWithIce({ ...withFill(fill.settled), pipeLength });
  const first = simulateWithIce({ ...withFill(fill.firstWinter), pipeLength, years: 1 });
  const coldest = ({ coldestEntering }: FluidExtremes): Temperature => coldestEntering?.temperature ?? noAnswer();
  const strip = kind.trenchSpacing;
  return {
    kind,
    needed,
    coils,
    pipe: pipeMetres(coils * COIL),
    trenches,
    trench: trenchMetres(trenches * trenchLength),
    land: squareMetres(trenches * strip * (trenchLength + (kind.closed ? 0 : strip))),
    earth: cubicMetres(trenches * trenchLength * kind.trenchWidth * kind.trenchDepth),
    settled: { withoutIce: coldest(settling.settled.simulation.lastYear), withIce: coldest(later.withIce.lastYear) },
    firstWinter: { withoutIce: coldest(settling.firstWinter.simulation.yearOne), withIce: coldest(first.withIce.yearOne) },
    neededLoose: pipeMetres(((settling.firstWinter.exactLength ?? noAnswer()) * bought) / counted),
    makings: makingsOf(kind, laid, circuitEnds, wallAndFilm(coils)(COLD), fill),
  };
}

function makingsOf(kind: Kind, laid: Laid, circuitEnds: PipeResistance, film: PipeResistance, fill: Makings['fill']): Makings {
  const depths = kind.sections.flat().map(({ depth }) => depth);
  const alone = mean(
    depths.map((depth) => exponentialResponse({ layout: onePipe({ depth, trenches: 1, trenchSpacing: metres(4) }), pipe, soil }).riseAfter(SEASON)),
  );
  const { loop } = groundOf(kind);
  const rise = laid.response.riseAfter(SEASON);
  return {
    coldestGround: celsius(loop.mean - loop.amplitude),
    meanDepth: metres(mean(depths)),
    alone: pipeMetreKelvinPerWatt(alone),
    byNeighbours: ratio(rise / alone),
    bySurface: ratio(laid.sealedAfter(SEASON) / rise),
    wallAndFilm: film,
    circuitEnds,
    fill,
  };
}

function noAnswer(): never {
  throw new Error('the unit never heats, or no pipe is enough');
}
