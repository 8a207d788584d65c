import type { Finding } from '../findings/index.js';
import type { Conductivity, Length } from '../units/index.js';
import type { LayeredGround } from './effective-conductivity.js';
import type { SoilLayer } from './layers.js';

/** The log is wanted from here on, and down to this far below the lowest pipe [m]. */
const FROM = 0.3;
const BELOW = 0.5;

/** Bedding asked for where a trench is dug in rock: six inches of fines or sand (`common practice`) [m]. */
const BED = 0.15;

/** Layers whose conductivities differ by this factor are told to be felt one after the other [1]. */
const APART = 1.5;

/** What is doubtful about a log: how far it reaches, what stands in it, and the water in the trench. */
export function logFindings(ground: LayeredGround, radius: number): readonly Finding[] {
  const pipeDepth = Math.max(...ground.pipes.map(({ depth }) => depth)) as Length;
  const wanted = (pipeDepth + BELOW) as Length;
  const near = ground.layers.filter(({ top }) => top < wanted);
  return [
    ...reachFindings(ground.layers, pipeDepth, wanted),
    ...near.flatMap((layer) => kindFindings(layer, ground)),
    ...apartFindings(near),
    ...acrossFindings(ground, radius),
    ...waterFindings(ground, (ground.fill?.depth ?? pipeDepth + radius) as Length),
  ];
}

/** Whether the log reaches from near the surface to below the lowest pipe. */
function reachFindings(layers: readonly SoilLayer[], pipeDepth: Length, wanted: Length): readonly Finding[] {
  const logTop = layers[0]?.top ?? (0 as Length);
  const logBottom = layers[layers.length - 1]?.bottom ?? logTop;
  const deep: Finding = { code: 'soil-log-starts-deep', level: 'warning', values: { logTop, wanted: FROM as Length }, source: 'common practice' };
  const shallow: Finding = {
    code: 'soil-log-too-shallow',
    level: logBottom < pipeDepth ? 'warning' : 'note',
    values: { logBottom, pipeDepth, wanted },
    source: 'common practice',
  };
  return [...(logTop > FROM ? [deep] : []), ...(logBottom < wanted ? [shallow] : [])];
}

/** What a layer is called. Rock matters where the trench cuts it. */
function kindFindings({ ground, top, bottom, thermal }: SoilLayer, { pipes, bedding }: LayeredGround): readonly Finding[] {
  const { conductivity } = thermal;
  const source = 'common practice';
  if (ground === 'peat') return [{ code: 'peat-in-log', level: 'warning', values: { top, bottom, conductivity }, source }];
  if (ground === 'made ground') return [{ code: 'made-ground-in-log', level: 'warning', values: { top, bottom }, source }];
  const cut = ground === 'rock' && pipes.some(({ depth }) => depth > top - BED);
  return cut && bedding === undefined ? [{ code: 'rock-without-bedding', level: 'warning', values: { top, thickness: BED as Length }, source }] : [];
}

/** Layers that differ so much that the conductivity of the long run is not that of a winter. */
function apartFindings(layers: readonly SoilLayer[]): readonly Finding[] {
  const each = layers.map(({ thermal }) => thermal.conductivity);
  const [least, greatest] = [Math.min(...each) as Conductivity, Math.max(...each) as Conductivity];
  return greatest < APART * least ? [] : [{ code: 'layers-felt-late', level: 'note', values: { least, greatest }, source: 'layeredLineSource' }];
}

/** A ring of bedding that an interface cuts: it is reckoned with the mean of both layers about it. */
function acrossFindings({ layers, pipes, bedding, fill }: LayeredGround, radius: number): readonly Finding[] {
  if (bedding === undefined || fill !== undefined) return [];
  const { thickness } = bedding;
  const cut = layers.slice(1).find(({ top }) => pipes.some(({ depth }) => Math.abs(depth - top) < radius + thickness));
  return cut === undefined
    ? []
    : [{ code: 'bedding-across-layers', level: 'note', values: { top: cut.top, thickness }, source: 'layeredLineSource' }];
}

function waterFindings({ waterTable }: LayeredGround, trenchDepth: Length): readonly Finding[] {
  if (waterTable === undefined || waterTable >= trenchDepth) return [];
  return [{ code: 'water-table-in-trench', level: 'warning', values: { waterTable, trenchDepth }, source: 'common practice' }];
}
