import { demandCount } from '../errors/index.js';
import { type Complex, over, solveDense } from '../numerics/index.js';
import { type PipePlaces, squaredDistances } from './pairs.js';
import type { PeriodicKernel } from './periodic-kernel.js';

/** Most pipes for which the system of equations is solved. */
const MOST_PIPES = 200;

/**
 * The share of the whole heat that each of the pipes takes when their walls swing together; by reciprocity also how much the undisturbed ground at each counts for the
 * common wall when the loop as a whole takes none. Trench by trench; adds up to 1.
 *
 * @param places - where the pipes lie
 * @param kernel - what a source that swings does to a wall
 * @throws InputError for more than 200 pipes
 */
export function tiedWeights(places: PipePlaces, kernel: PeriodicKernel): readonly Complex[] {
  const { pipes, trenches } = places;
  const all = Array.from({ length: trenches }, (_, trench) => pipes.map((pipe, index) => ({ pipe, trench, index }))).flat();
  demandCount('layout.pipes', all, 1, MOST_PIPES);
  // One trench sees another by how many lie between them alone.
  const seen = new Map<number, Complex>();
  const between = (from: (typeof all)[number], to: (typeof all)[number]): Complex => {
    const key = (from.index * pipes.length + to.index) * 2 * trenches + (to.trench - from.trench + trenches);
    const value = seen.get(key) ?? kernel(squaredDistances(places, from.pipe, to.pipe, to.trench - from.trench));
    seen.set(key, value);
    return value;
  };
  const matrix = all.map((from) => all.map((to) => between(from, to)));
  // (A + iB)(x + iy) = 1 as two real systems in one.
  const rows = [
    ...matrix.map((row) => [...row.map(({ re }) => re), ...row.map(({ im }) => -im)]),
    ...matrix.map((row) => [...row.map(({ im }) => im), ...row.map(({ re }) => re)]),
  ];
  const solution = solveDense(rows, [...all.map(() => 1), ...all.map(() => 0)]);
  const heats = all.map((_, index): Complex => ({ re: solution[index] ?? 0, im: solution[all.length + index] ?? 0 }));
  const sum = heats.reduce<Complex>((whole, { re, im }) => ({ re: whole.re + re, im: whole.im + im }), { re: 0, im: 0 });
  return heats.map((heat) => over(heat, sum));
}
