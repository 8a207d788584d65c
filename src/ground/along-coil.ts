import { gaussLegendre } from '../numerics/index.js';

/** Coils are summed ring by ring up to this many rings, and to this many ring diameters; further rings are smeared into an integral. */
const COUNTED_RINGS = 48;
const COUNTED_DIAMETERS = 2;
/** Where a coil without end is cut off [m]: further than heat reaches in the longest time. */
const END = 1e7;

/**
 * Visits how far rings of a coil lie from one another along it, each distance with how many rings lie there, seen from the average ring: N − m pairs of N
 * rings lie m pitches apart. Past the counted rings the sum over rings becomes an integral, so that a long coil costs no more than a short one.
 *
 * @param coil - turns, Infinity without end; pitch and ring diameter [m]
 * @param visit - told a distance [m] and a number of rings
 */
export function alongCoil(
  { turns, pitch, ringDiameter }: { readonly turns: number; readonly pitch: number; readonly ringDiameter: number },
  visit: (along: number, rings: number) => void,
): void {
  const counted = Math.min(turns, Math.max(COUNTED_RINGS, Math.ceil((COUNTED_DIAMETERS * ringDiameter) / pitch)));
  visit(0, 1);
  for (let rings = 1; rings < counted; rings += 1) visit(rings * pitch, 2 * (1 - rings / turns));
  if (counted === turns) return;
  const [first, last] = [(counted - 0.5) * pitch, Math.min(END, turns * pitch)];
  const panels = Math.ceil(Math.log10(last / first));
  for (let panel = 0; panel < panels; panel += 1) {
    const at = (share: number): number => Math.log(first) + (Math.log(last / first) * share) / panels;
    gaussLegendre(at(panel), at(panel + 1), (logarithm, width) => {
      const along = Math.exp(logarithm);
      visit(along, 2 * (1 - along / (turns * pitch)) * ((along * width) / pitch));
    });
  }
}
