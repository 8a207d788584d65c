import { demand, demandChoice, demandCount, demandObject, locate } from '../errors/index.js';
import type { MeterPeriod } from './meter-readings.js';
import { type CountedWeather, countedWeather } from './period-weather.js';
import type { Shortfall } from './shortfall.js';

/** A span from one reading off the meter to the next, whatever was estimated in between. */
export interface ReadPeriod {
  /** Length [s]. */
  readonly time: number;
  /** Counted by the meter [J]. */
  readonly delivered: number;
  /** Mean shortfall below a base and the share of time below it. */
  readonly below: (base: number) => Shortfall;
  /** Periods that were put together, 1 where each was read. */
  readonly merged: number;
}

/** Periods that can be fitted, those that cannot, and the bases that all can be asked for. */
export interface ReadPeriods {
  readonly periods: readonly ReadPeriod[];
  /** Periods at the end without a reading off the meter. */
  readonly leftOut: number;
  readonly lowest: number;
  readonly highest: number;
}

interface Piece extends CountedWeather {
  readonly delivered: number;
}

/** Refuses periods that cannot be, and puts each estimated one together with those after it up to the next reading. */
export function readPeriods(given: readonly MeterPeriod[]): ReadPeriods {
  demandCount('periods', given, 1, 1000);
  const periods: ReadPeriod[] = [];
  let open: Piece[] = [];
  let [lowest, highest] = [-Infinity, Infinity];
  for (const [index, period] of given.entries()) {
    locate(`periods.${String(index)}`, () => {
      demandObject('', period);
      const { delivered, weather, reading = 'read' } = period;
      demand('delivered', 'energy', delivered, { atLeast: 0, atMost: 1e15 });
      demandChoice('reading', reading, ['read', 'estimated']);
      const counted = countedWeather(weather);
      [lowest, highest] = [Math.max(lowest, counted.lowest), Math.min(highest, counted.highest)];
      open.push({ ...counted, delivered });
      if (reading === 'estimated') return;
      periods.push(joined(open));
      open = [];
    });
  }
  return { periods, leftOut: open.length, lowest, highest };
}

function joined(pieces: readonly Piece[]): ReadPeriod {
  const sum = (of: (piece: Piece) => number): number => pieces.reduce((total, piece) => total + of(piece), 0);
  const time = sum((piece) => piece.time);
  const below = (base: number): Shortfall => {
    let [mean, share] = [0, 0];
    for (const piece of pieces) {
      const part = piece.below(base);
      mean += (piece.time * part.mean) / time;
      share += (piece.time * part.share) / time;
    }
    return { mean, share };
  };
  return { time, delivered: sum((piece) => piece.delivered), below, merged: pieces.length };
}
