/** A fixed sequence of pseudo-random numbers with the standard normal distribution (Park and Miller's generator; Box and Muller's form). */
export function normalNoise(start = 1): () => number {
  let seed = start;
  const uniform = (): number => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
