/** Each node is so many times as far from the axis as the one before, where ice counts, and beyond. */
const CLOSE_RATIO = 1.13;
const FAR_RATIO = 1.5;
/** How far out the ground is followed, over how far ice counts, and at least [m]. */
const REACH = 3;
const LEAST_REACH = 1.2;

/** The ground around one pipe, cut into rings by nodes; all per metre of pipe. */
export interface FrozenNodes {
  /** How many nodes from the wall out have ice that counts. */
  readonly counting: number;
  /** Section of the ring of each node that may change its temperature [m2]. */
  readonly areas: Float64Array;
  /** Heat from a node to the next per kelvin and per conductivity [1]. */
  readonly links: Float64Array;
}

/**
 * Cuts up the ground around a pipe. The last ring whose ice counts ends at the reach; the last node, which has no ring, keeps its temperature.
 *
 * @param radius - of the pipe [m]
 * @param reach - as far from its axis as ice counts [m]
 * @returns sections and links
 */
export function frozenNodes(radius: number, reach: number): FrozenNodes {
  const counting = Math.max(4, Math.ceil(Math.log(reach / radius) / Math.log(CLOSE_RATIO)));
  const ratio = (reach / radius) ** (1 / (counting - 0.5));
  const nodes = Array.from({ length: counting + 1 }, (_, node) => radius * ratio ** node);
  const end = Math.max(REACH * reach, LEAST_REACH);
  for (let last = radius * ratio ** counting; last < end; nodes.push(last)) last *= FAR_RATIO;
  const links = Float64Array.from(nodes.slice(1), (outer, node) => (2 * Math.PI) / Math.log(outer / (nodes[node] ?? outer)));
  // Rings part half a ratio beyond a node; the first one begins at the wall.
  const edges = nodes.slice(1).map((outer, node) => outer * (nodes[node] ?? outer));
  return { counting, areas: Float64Array.from(edges, (edge, node) => Math.PI * (edge - (edges[node - 1] ?? radius * radius))), links };
}
