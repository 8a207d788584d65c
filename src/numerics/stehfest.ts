/** Ten weights, twelve times each; they add up to nothing. */
const WEIGHTS = [1, -385, 15348, -187484, 1010930, -2843490, 4510940, -4080860, 1968750, -393750];

/**
 * What a smooth step response has come to after a time, from its transfer function at ten real places: p times the Laplace transform of the response.
 *
 * For responses that change slowly with the logarithm of time, as those of diffusion do: within some 3e-4 of the greatest value. The transfer function is needed
 * with 8 digits more than the answer, since weights up to 4e5 cancel.
 *
 * @param transfer - transfer function at p [1/time]
 * @param time - since the step
 * @returns the response
 * @remarks Gaver's functionals with the weights of Stehfest, Numerical inversion of Laplace transforms (Algorithm 368), for ten terms.
 */
export function stepFromTransfer(transfer: (p: number) => number, time: number): number {
  return WEIGHTS.reduce((sum, weight, index) => sum + (weight / 12 / (index + 1)) * transfer(((index + 1) * Math.LN2) / time), 0);
}
