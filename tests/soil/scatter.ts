/** A normal deviate of mean 0 and deviation 1, from a seed: sums of twelve steps of a multiplicative generator. */
function normals(seed: number): () => number {
  let state = seed;
  const uniform = (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  return () => Array.from({ length: 12 }, uniform).reduce((sum, each) => sum + each, -6);
}

/** Standard deviation of what comes of many draws. */
export function scatterOf(draw: (normal: () => number) => number, draws: number = 20_000): number {
  const normal = normals(20_261_125);
  const found = Array.from({ length: draws }, () => draw(normal));
  const mean = found.reduce((sum, each) => sum + each, 0) / draws;
  return Math.sqrt(found.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (draws - 1));
}
