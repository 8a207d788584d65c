/** A pipe in the cross-section of a trench: distance sideways and depth [m]. */
export type Point = readonly [x: number, depth: number];

const EULER = 0.5772156649015329;

/** Exponential integral E1 by its series below 1 and a continued fraction above; independent of the library's own. */
export function e1(x: number): number {
  if (x > 1) {
    let tail = 0;
    for (let n = 200; n >= 1; n -= 1) tail = n / (1 + n / (x + tail));
    return Math.exp(-x) / (x + tail);
  }
  let [term, sum] = [1, -EULER - Math.log(x)];
  for (let n = 1; n < 40; n += 1) {
    term *= -x / n;
    sum -= term / n;
  }
  return sum;
}

/**
 * Mean wall temperature rise of equal line sources below an isothermal surface, with mirror images, per heat per metre of each pipe.
 * Written apart from the library, as a second way to the same response.
 */
export function lineSourceRise(pipes: readonly Point[], radius: number, conductivity: number, diffusivity: number): (time: number) => number {
  const pairs = pipes.flatMap(([x, z], i) =>
    pipes.map(([u, w], j): readonly [near: number, far: number] => [i === j ? radius : Math.hypot(x - u, z - w), Math.hypot(x - u, z + w)]),
  );
  return (time) => {
    const spread = 4 * diffusivity * time;
    const sum = pairs.reduce((total, [near, far]) => total + e1(near ** 2 / spread) - e1(far ** 2 / spread), 0);
    return sum / (4 * Math.PI * conductivity * pipes.length);
  };
}
