import { demand, demandCount, demandObject, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { PipePosition } from '../ground/index.js';
import { e1Difference, exponentialIntegral } from '../numerics/index.js';
import type { SoilThermal } from '../states/index.js';
import type { DayOfYear, PipeLength, PipeResistance, TemperatureDifference, Time } from '../units/index.js';
import { demandSeries } from './demand-simulation.js';

/** What {@link neighbourChange} needs. */
export interface NeighbourInput {
  /** Pipes of the section that is looked at, 1 to 200; `x` is counted from one line for both sections. */
  readonly pipes: readonly PipePosition[];
  /** Pipes of the section beside it, all that give heat, 1 to 200. */
  readonly neighbourPipes: readonly PipePosition[];
  /** The soil between. */
  readonly soil: Pick<SoilThermal, 'conductivity' | 'diffusivity'>;
  /** Whether the surface is sealed against heat, which is the most that it can hinder; open, held at its temperature, when left out. */
  readonly sealedSurface?: boolean;
  /** Length of a step, 1 minute to 1 day [s]. */
  readonly step: Time;
  /** Heat taken from the ground of the section beside in each step of a year, given to it below 0, within ±1e9, plain numbers from 1 January [W]. */
  readonly groundHeats: ArrayLike<number>;
  /** Its active pipe, all of it, 0.001 to 1e9 [m]. */
  readonly neighbourLength: PipeLength;
  /** For how many years it has worked by the end of the last, 1 to 100; 20 when left out. */
  readonly years?: number;
}

/** What a section does to the one beside it through the ground. */
export interface NeighbourChange {
  /** Change of the mean wall when it is greatest in the last year, below 0 where the section is made colder [K]. */
  readonly mostChange: TemperatureDifference;
  /** When that is [d]. */
  readonly day: DayOfYear;
  /** Mean change over the last year [K]. */
  readonly meanChange: TemperatureDifference;
  /** Rise of the mean wall per lasting heat per metre of each pipe of the neighbour, after all years [m.K/W]. */
  readonly mutualResistance: PipeResistance;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Half months: what goes on within them does not get across from one section to another. */
const PARTS = 24;
/** A change below this is lost in what is known of the ground [K]. */
const SMALL = 0.2;
const DAY = 86_400;

/**
 * How much one section changes the wall of another through the ground, which sections in parallel leave out: an old loop and its extension, or two fields
 * side by side.
 *
 * Pipes run parallel, side by side for all of their length and without end, so that it is an upper estimate for fields that end or lie apart lengthwise. The
 * neighbour keeps the heat that it was followed with; that the change would make it give a little less is left out, which is on the same side. Half a month
 * is the shortest time looked at; sections less than 1 m apart are one layout.
 *
 * @param input - see {@link NeighbourInput}
 * @returns greatest and mean change of the wall [K], and a finding where it is not small
 * @throws InputError for a value out of its range; `impossible` for sections less than 1 m apart
 * @remarks Line sources with mirror images, superposed. Invariants tested: reciprocal; in proportion to the heat; less with distance; that of the response of both as one
 * layout less that of one alone.
 * @example
 * ```ts @import.meta.vitest
 * const { hours, metres, pipeMetres, squareMetresPerSecond, wattsPerMetreKelvin } = await import('../units/index.js');
 * const row = (x: number) => [{ x: metres(x), depth: metres(1.5) }];
 * const beside = (away: number) => neighbourChange({
 *   pipes: row(0),
 *   neighbourPipes: row(away),
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), diffusivity: squareMetresPerSecond(6e-7) },
 *   step: hours(1),
 *   groundHeats: Array.from({ length: 8760 }, (_, step) => 6000 * Math.max(0, Math.cos((2 * Math.PI * (step / 24 - 20)) / 365))),
 *   neighbourLength: pipeMetres(400),
 * });
 * expect(beside(3).mostChange).toBeLessThan(-0.2);
 * expect(beside(3).findings).toHaveLength(1);
 * expect(beside(10).findings).toHaveLength(0);
 * ```
 */
export function neighbourChange(input: NeighbourInput): NeighbourChange {
  demandNeighbour(input);
  const { step, groundHeats, neighbourLength, years = 20 } = input;
  const count = groundHeats.length;
  const part = (step * count) / PARTS;
  const heats = halfMonths(groundHeats).map((heat) => heat / neighbourLength);
  const rises = Array.from({ length: years * PARTS + 1 }, (_, parts) => (parts === 0 ? 0 : mutualRise(input, parts * part)));
  const changes = Array.from({ length: PARTS }, (_, place) => {
    let change = 0;
    for (let ago = 0; ago < (years - 1) * PARTS + place + 1; ago += 1) {
      const heat = heats[(place - ago + years * PARTS) % PARTS] ?? Number.NaN;
      change -= heat * ((rises[ago + 1] ?? Number.NaN) - (rises[ago] ?? Number.NaN));
    }
    return change;
  });
  const most = changes.reduce((best, change, place) => (Math.abs(change) > Math.abs(changes[best] ?? 0) ? place : best), 0);
  const mostChange = (changes[most] ?? Number.NaN) as TemperatureDifference;
  const day = (1 + ((most + 1) * part) / DAY) as DayOfYear;
  return {
    mostChange,
    day,
    meanChange: (changes.reduce((sum, change) => sum + change, 0) / PARTS) as TemperatureDifference,
    mutualResistance: (rises.at(-1) ?? Number.NaN) as PipeResistance,
    findings:
      Math.abs(mostChange) < SMALL
        ? []
        : [{ code: 'section-neighbour', level: 'warning', values: { change: mostChange, day }, source: 'ingersoll1954' }],
  };
}

/** Means over twenty-fourths of a year. */
function halfMonths(heats: ArrayLike<number>): readonly number[] {
  const count = heats.length;
  return Array.from({ length: PARTS }, (_, place) => {
    const from = (place * count) / PARTS;
    const to = ((place + 1) * count) / PARTS;
    let sum = 0;
    for (let index = Math.floor(from); index < to; index += 1) sum += (heats[index] ?? 0) * (Math.min(index + 1, to) - Math.max(index, from));
    return sum / (to - from);
  });
}

/** Rise of the mean wall of one section per heat per metre of each pipe of the other [m.K/W]. */
function mutualRise({ pipes, neighbourPipes, soil, sealedSurface = false }: NeighbourInput, time: number): number {
  const spread = 4 * soil.diffusivity * time;
  let sum = 0;
  for (const { x, depth } of pipes) {
    for (const other of neighbourPipes) {
      const straight = ((x - other.x) ** 2 + (depth - other.depth) ** 2) / spread;
      const mirrored = ((x - other.x) ** 2 + (depth + other.depth) ** 2) / spread;
      sum += sealedSurface ? exponentialIntegral(straight) + exponentialIntegral(mirrored) : e1Difference(straight, mirrored);
    }
  }
  return sum / (4 * Math.PI * soil.conductivity * pipes.length);
}

function demandNeighbour(input: NeighbourInput): void {
  const { pipes, neighbourPipes, soil, sealedSurface, step, groundHeats, neighbourLength, years } = input;
  for (const [name, places] of [
    ['pipes', pipes],
    ['neighbourPipes', neighbourPipes],
  ] as const) {
    demandCount(name, places, 1, 200);
    places.forEach((place, index) => {
      const path = `${name}.${String(index)}`;
      demandObject(path, place);
      demand(`${path}.x`, 'length', place.x, { atLeast: -1e4, atMost: 1e4 });
      demand(`${path}.depth`, 'length', place.depth, { atLeast: 0.1, atMost: 50 });
    });
  }
  for (const { x, depth } of pipes) {
    for (const other of neighbourPipes) {
      if (Math.hypot(x - other.x, depth - other.depth) < 1) {
        const allowed = 'at least 1 m from every pipe of the section looked at';
        const hint = 'pipes so near to one another are one layout with one response';
        throw new InputError({ code: 'impossible', argument: 'neighbourPipes', value: undefined, allowed, hint });
      }
    }
  }
  demandObject('soil', soil);
  demand('soil.conductivity', 'conductivity', soil.conductivity, { atLeast: 0.01, atMost: 10 });
  demand('soil.diffusivity', 'diffusivity', soil.diffusivity, { atLeast: 1e-8, atMost: 1e-5 });
  if (sealedSurface !== undefined && typeof sealedSurface !== 'boolean') {
    throw new InputError({ code: 'wrong-type', argument: 'sealedSurface', value: String(sealedSurface), allowed: 'true or false' });
  }
  demand('step', 'time', step, { atLeast: 60, atMost: 86_400 });
  demandSeries('groundHeats', 'power', groundHeats, { atLeast: -1e9, atMost: 1e9 });
  demand('groundHeats.length', 'count', groundHeats.length, { atLeast: PARTS, atMost: 600_000 });
  demand('neighbourLength', 'pipe length', neighbourLength, { atLeast: 0.001, atMost: 1e9 });
  if (years !== undefined) demand('years', 'count', years, { atLeast: 1, atMost: 100 });
}
