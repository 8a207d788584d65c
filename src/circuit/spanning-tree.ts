import { InputError } from '../errors/index.js';

/** Two nodes that a link joins; flow from the first to the second counts as positive. */
export interface LinkEnds {
  /** Index of the node where it begins. */
  readonly from: number;
  /** Index of the node where it ends. */
  readonly to: number;
}

/** A link walked along (1) or against (−1) its direction. */
export interface TreeStep {
  readonly link: number;
  readonly sign: 1 | -1;
}

/** Links that reach every node without a loop, as the way from each node back to the first. */
export interface SpanningTree {
  /** For each node, the steps from the first node to it. */
  readonly paths: readonly (readonly TreeStep[])[];
  /** The links left over; each closes one loop. */
  readonly chords: readonly number[];
}

/** Grows a tree from node 0, nearest nodes first; refuses a node that no link reaches. */
export function spanningTree(nodes: number, links: readonly LinkEnds[]): SpanningTree {
  const paths: (readonly TreeStep[] | undefined)[] = Array.from({ length: nodes }, () => undefined);
  const used = new Set<number>();
  const queue = [0];
  paths[0] = [];
  for (const node of queue) {
    for (const [link, { from, to }] of links.entries()) {
      const next = from === node ? to : from;
      if ((from !== node && to !== node) || paths[next] !== undefined) continue;
      paths[next] = [...(paths[node] ?? []), { link, sign: from === node ? 1 : -1 }];
      used.add(link);
      queue.push(next);
    }
  }
  const reached = paths.filter((path) => path !== undefined);
  if (reached.length === nodes) return { paths: reached, chords: [...links.keys()].filter((link) => !used.has(link)) };
  throw new InputError({
    code: 'impossible',
    argument: 'links',
    value: { kind: 'count', value: paths.findIndex((path) => path === undefined) },
    allowed: 'links that join every node to node 0',
    hint: 'the node given as the value is cut off',
  });
}

/** The loop that a chord closes: the chord, back over the tree; what both ways share drops out. */
export function loopOf({ paths }: SpanningTree, links: readonly LinkEnds[], chord: number): readonly TreeStep[] {
  const { from, to } = links[chord] ?? { from: 0, to: 0 };
  const out = paths[from] ?? [];
  const back = paths[to] ?? [];
  let shared = 0;
  while (shared < Math.min(out.length, back.length) && out[shared]?.link === back[shared]?.link) shared += 1;
  const returning = back.slice(shared).map(({ link, sign }): TreeStep => ({ link, sign: sign === 1 ? -1 : 1 }));
  return [...out.slice(shared), { link: chord, sign: 1 }, ...returning];
}
