// Times work as a ratio to a reference that runs in turn with it, and takes the fastest round of either, which a busy machine disturbs least.

/** One piece of work, repeated until it takes about this long [ms], so that the clock's grain does not matter. */
const BATCH = 2;
const MOST_ROUNDS = 201;
const LEAST_ROUNDS = 11;
/** Long work is repeated fewer times, so that all of it takes about this long [ms]. */
const ENOUGH = 2000;

export interface Timing {
  /** Time of the work over that of the reference [1]. */
  readonly ratio: number;
  /** Time of one run of the work [ms]. */
  readonly time: number;
}

/** What every work is measured against: 1000 exponentials and multiplications, a few microseconds of plain arithmetic. */
export function reference(): number {
  let sum = 0;
  for (let i = 1; i <= 1000; i += 1) sum = sum * 0.5 + Math.exp(-i / 500);
  return sum;
}

/** Keeps results alive, so that no compiler leaves the work out. */
let sink = 0;

function timeOf(work: () => number, repeats: number): number {
  const start = performance.now();
  for (let i = 0; i < repeats; i += 1) sink += work();
  return (performance.now() - start) / repeats;
}

function repeatsOf(work: () => number): number {
  let repeats = 1;
  while (timeOf(work, repeats) * repeats < BATCH) repeats *= 2;
  return repeats;
}

/** Times `work` against the reference, turn by turn. */
export function measure(work: () => number): Timing {
  for (let warm = 0; warm < 5; warm += 1) timeOf(work, repeatsOf(work));
  const repeats = repeatsOf(work);
  const yardstick = repeatsOf(reference);
  const once = timeOf(work, repeats) * repeats;
  const count = Math.min(MOST_ROUNDS, Math.max(LEAST_ROUNDS, Math.round(ENOUGH / once)));
  const rounds = Array.from({ length: count }, () => ({ work: timeOf(work, repeats), reference: timeOf(reference, yardstick) }));
  if (!Number.isFinite(sink)) throw new Error('the work does not return a finite number');
  const time = Math.min(...rounds.map((round) => round.work));
  return { ratio: time / Math.min(...rounds.map((round) => round.reference)), time };
}
