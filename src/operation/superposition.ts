import { demand, demandCount } from '../errors/index.js';
import type { HeatPerPipeLength, TemperatureDifference, Time } from '../units/index.js';
import { readRises, type RiseAfter } from './rise-after.js';

/** What {@link superposedRise} needs. */
export interface SuperposedRiseInput {
  /** Heat given to the ground in each step, negative where heat is taken, within ±1e4, 1 to 5000 steps [W/m]. */
  readonly heat: readonly HeatPerPipeLength[];
  /** Length of a step, 1 s to 100 years [s]. */
  readonly step: Time;
  /** Step response of the ground. */
  readonly riseAfter: RiseAfter;
}

/**
 * Temperature change of the pipe wall at the end of each step of a course of heat, by superposing step responses:
 * change(n) = Σ (heat(j) − heat(j − 1)) · rise(t(n) − t(j − 1)).
 *
 * Exact for heat that is constant within a step and ground whose properties do not change; ice is left out.
 *
 * @param input - see {@link SuperposedRiseInput}
 * @returns change at the end of each step, negative where the ground has cooled [K]
 * @throws InputError for a heat or a step out of its range, or a response that falls or is not finite
 * @remarks Duhamel's superposition; checked against 48 months of a 20-year course computed independently (LS-21). Invariants
 * tested: linear in the heat, a constant heat gives the response itself, a shifted course gives a shifted change.
 * @example
 * ```ts @import.meta.vitest
 * const { hours, pipeMetreKelvinPerWatt, wattsPerPipeMetre } = await import('../units/index.js');
 * const riseAfter = (time: number) => pipeMetreKelvinPerWatt(0.1 * Math.log1p(time));
 * const [first, second] = superposedRise({ heat: [wattsPerPipeMetre(-20), wattsPerPipeMetre(0)], step: hours(1), riseAfter });
 * expect(first).toBe(-20 * riseAfter(3600));
 * expect(second).toBeCloseTo(-20 * (riseAfter(7200) - riseAfter(3600)), 12);
 * ```
 */
export function superposedRise({ heat, step, riseAfter }: SuperposedRiseInput): readonly TemperatureDifference[] {
  demandCount('heat', heat, 1, 5000);
  heat.forEach((each, index) => {
    demand(`heat.${String(index)}`, 'heat per pipe length', each, { atLeast: -1e4, atMost: 1e4 });
  });
  demand('step', 'time', step, { atLeast: 1, atMost: 100 * 366 * 86_400 });
  const rises = readRises(
    riseAfter,
    heat.map((_, index) => (index + 1) * step),
  );
  return superpose(heat, rises) as readonly TemperatureDifference[];
}

/** Superposes equal steps: `rises[k]` is the response k + 1 steps after its heat began. */
export function superpose(heat: readonly number[], rises: readonly number[]): readonly number[] {
  const increments = heat.map((each, index) => each - (heat[index - 1] ?? 0));
  return heat.map((_, end) => {
    let change = 0;
    for (let start = 0; start <= end; start += 1) change += (increments[start] ?? 0) * (rises[end - start] ?? 0);
    return change;
  });
}
