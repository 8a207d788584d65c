import type { GroundFindingValues } from '../../findings/ground.js';
import type { FindingTexts } from './finding-texts.js';

/** Texts of the findings of the ground room. */
export const groundFindingTexts: FindingTexts<GroundFindingValues> = {
  'pipes-near-for-line-sources': ({ distance, holdsFrom }, show) =>
    `Two pipes, or a pipe and its mirror image above the surface, lie only ${show('length', distance)} apart. The ground response treats a neighbouring ` +
    `pipe as a line, which holds from about ${show('length', holdsFrom)} up; the error may pass half a percent.`,
  'trenches-warm-each-other': ({ trenchSpacing, trenches, risesBy }, show) =>
    `At ${show('length', trenchSpacing)} apart, the ${String(trenches)} trenches work on one another: in the long run the ground resists ` +
    `${show('ratio', risesBy)} times as much as around one trench alone. Wider spacing needs less pipe and more land.`,
  'film-as-added-depth': ({ addedDepth, depth }, show) =>
    `The surface film was taken for ${show('length', addedDepth)} of soil on top of the ground, which is much over pipes at ${show('length', depth)}: below ` +
    `snow or another good insulator this makes the loop change the ground too little, by several percent. The exact film response does without.`,
  'pipe-between-rings-left-out': ({ pitch, pipePerTurn, countedPerTurn }, show) =>
    `Rings drawn ${show('length', pitch)} apart take ${show('pipe length', pipePerTurn)} of pipe a turn, of which the ground response counts ` +
    `${show('pipe length', countedPerTurn)}, a circle. The rest is a reserve.`,
};
