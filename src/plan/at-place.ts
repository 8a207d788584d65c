import { InputError } from '../errors/index.js';

/**
 * Runs a computation whose own names mean nothing to whoever gave the input, and names the part of the input that was at fault instead.
 *
 * @param place - the place in the input
 * @param run - the computation
 * @param only - refusals of these codes alone; all when left out
 * @returns what it returns
 * @throws InputError at the place
 */
export function atPlace<T>(place: string, run: () => T, only?: readonly string[]): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError) || (only !== undefined && !only.includes(error.code))) throw error;
    const { code, value, allowed } = error;
    // The value is not the one that was given there, so it is said what it is.
    const follows = `the ${error.argument} that follows from it`;
    const hint = error.hint === undefined ? follows : `${follows}; ${error.hint}`;
    throw new InputError({ code, argument: place, value, allowed, hint });
  }
}
