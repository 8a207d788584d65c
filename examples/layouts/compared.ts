// One house on a layout: sized to its limits, laid in whole coils, and followed without ice and with it, in its first winter and when the fill has settled.
import { circuitResistance, type FluidExtremes, type IceSimulationInput, simulateWithIce, sizeLoop } from 'loamloop/operation';
import {
  type Area,
  celsius,
  cubicMetres,
  dayOfYear,
  type Energy,
  type Length,
  metres,
  pipeMetreKelvinPerWatt,
  type PipeLength,
  pipeMetres,
  type PipeResistance,
  squareMetres,
  type Temperature,
  type TrenchLength,
  trenchMetres,
  type Volume,
  wattsPerKelvin,
} from 'loamloop/units';
import { type Kind, LASTING, type Laid } from './every-layout.js';
import { addedByFill, groundOf, type Makings, makingsOf } from './makings.js';
import { duty, fills, heatCapacityRate, iceSoil, limits, pipe, start, step, wallAndFilm } from './house.js';

/** Whole coils, each a circuit. */
export const COIL = pipeMetres(100);

/** Coldest fluid that enters the unit in a winter. */
export interface Winter {
  readonly withoutIce: Temperature;
  readonly withIce: Temperature;
}

/** A layout with what it takes and gives. */
export interface Compared {
  readonly kind: Kind;
  /** The pipe that just keeps the limits with settled fill and without ice. */
  readonly needed: PipeLength;
  /** The pipe that would keep them in the first winter, too. */
  readonly neededLoose: PipeLength;
  /** The pipe that would keep them with settled fill and with the ice around it, within 0.02 K. */
  readonly neededIced: PipeLength;
  readonly coils: number;
  readonly pipe: PipeLength;
  readonly trenches: number;
  readonly trench: TrenchLength;
  readonly land: Area;
  readonly earth: Volume;
  readonly settled: Winter;
  readonly firstWinter: Winter;
  /** Heat taken from the ground for heating in a year, settled, without ice. */
  readonly groundEnergy: Energy;
  readonly makings: Makings;
}

const HOURS_OF_YEAR = 8760;
const COLD = celsius(-5);
/** From the ground at its coldest to the fluid, roughly, for a first step [K]. */
const USUAL_MARGIN = 10;
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
  const later = simulateWithIce({ ...withFill(fill.settled), pipeLength });
  const first = simulateWithIce({ ...withFill(fill.firstWinter), pipeLength, years: 1 });
  const loose = sizeLoop({ ...withFill(fill.firstWinter), years: 1, limits, guess: pipeLength });
  const iced = (counts: PipeLength): number => marginOf(simulateWithIce({ ...withFill(fill.settled), pipeLength: counts }).withIce.lastYear);
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
    settled: { withoutIce: coldest(later.withoutIce.lastYear), withIce: coldest(later.withIce.lastYear) },
    firstWinter: { withoutIce: coldest(first.withoutIce.yearOne), withIce: coldest(first.withIce.yearOne) },
    neededLoose: pipeMetres((loose.exactLength * bought) / counted),
    neededIced: pipeMetres((lengthWhere(iced, [pipeLength, marginOf(later.withIce.lastYear)]) * bought) / counted),
    groundEnergy: later.withoutIce.lastYear.heating.groundEnergy,
    makings: makingsOf(kind, laid, circuitEnds, wallAndFilm(coils)(COLD), fill),
  };
}

/** How far the fluid of a winter stays inside the limits of heating. */
function marginOf({ coldestEntering, coldestLeaving }: FluidExtremes): number {
  const inside = (reached: number | undefined, lowest: number | undefined): number =>
    reached === undefined || lowest === undefined ? Infinity : reached - lowest;
  return Math.min(inside(coldestEntering?.temperature, limits.lowestEntering), inside(coldestLeaving?.temperature, limits.lowestLeaving));
}

/** The length whose margin is nothing, by secants over 1/length, in which it is nearly straight. */
function lengthWhere(marginAt: (length: PipeLength) => number, [known, itsMargin]: readonly [length: PipeLength, margin: number]): PipeLength {
  let [before, beforeMargin] = [1 / known, itsMargin];
  let here = before * (1 + beforeMargin / USUAL_MARGIN);
  for (let round = 0; round < 8; round += 1) {
    const margin = marginAt(pipeMetres(1 / here));
    if (Math.abs(margin) < 0.02) return pipeMetres(1 / here);
    const next = here - (margin * (here - before)) / (margin - beforeMargin);
    [before, beforeMargin, here] = [here, margin, next];
  }
  return noAnswer();
}

function noAnswer(): never {
  throw new Error('the unit never heats, or no pipe is enough');
}
