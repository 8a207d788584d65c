/** The smallest multiple of a step that is enough, near a guess; `enough` must stay true once it is. */
export function smallestEnough(guess: number, step: number, enough: (count: number) => boolean): number {
  let count = Math.max(1, Math.round(guess / step)) * step;
  while (!enough(count)) count += step;
  while (count > step && enough(count - step)) count -= step;
  return count;
}
