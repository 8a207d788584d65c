/** A ring of pipe in space: its centre, radius, and whether it stands in the plane along the trench or lies flat; depths below the surface count down. */
export interface EvenRing {
  readonly centre: readonly [along: number, across: number, depth: number];
  readonly ringRadius: number;
  readonly upright: boolean;
}

type Place = readonly [x: number, y: number, z: number];

/**
 * Mean over a ring's wall, at its inner and outer side, of Σ 1/d to all of another ring's pipe, or to its mirror image, by even points: the steady rise ·
 * 4πk that one does to the other. Nothing of it is shared with the library.
 */
export function evenPair(wall: EvenRing, source: EvenRing, radius: number, mirrored: boolean, points: number): number {
  const place = ({ centre: [along, across, depth], ringRadius, upright }: EvenRing, angle: number, out = 0): Place => {
    const [a, b] = [(ringRadius + out) * Math.cos(angle), (ringRadius + out) * Math.sin(angle)];
    return upright ? [along + a, across, depth + b] : [along + a, across + b, depth];
  };
  const angle = (index: number): number => (2 * Math.PI * (index + 0.5)) / points;
  const distance = (p: Place, q: Place): number => Math.sqrt((p[0] - q[0]) ** 2 + (p[1] - q[1]) ** 2 + (p[2] - q[2]) ** 2);
  const sources = Array.from({ length: points }, (_, j): Place => {
    const [x, y, z] = place(source, angle(j));
    return [x, y, mirrored ? -z : z];
  });
  let sum = 0;
  for (let i = 0; i < points; i += 1) {
    const [inner, outer] = [place(wall, angle(i), -radius), place(wall, angle(i), radius)];
    for (const from of sources) sum += 2 / (distance(from, inner) + distance(from, outer));
  }
  return (sum * 2 * Math.PI * source.ringRadius) / points ** 2;
}
