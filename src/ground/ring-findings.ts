import type { Finding } from '../findings/index.js';
import type { PipeLength, Ratio } from '../units/index.js';
import { coilPipe } from './coil-pipe.js';
import { measuredSteady } from './distance-measure.js';
import { lineFindings, NOTICEABLE } from './ground-findings.js';
import { nearestPipes } from './demand-ground.js';
import type { RingLayout } from './ring-layout.js';
import { returnToRings } from './ring-clearance.js';
import type { RingedGround } from './ringed-pipes.js';

/** Share of the pipe between rings from which it is worth a word that it is left out. */
const LEFT_OUT = 0.02;

/** What is doubtful about pipe laid in rings; the steady rise · 4πk, where there is one. */
export function ringFindings(layout: RingLayout, ground: RingedGround, steady: number | undefined): readonly Finding[] {
  if (layout.type === 'ring-trench') {
    const { pipes, ringDiameter } = layout;
    const shallowest = Math.min(...pipes.map(({ depth }) => depth));
    return lineFindings(Math.min(nearestPipes({ pipes, trenches: 1, trenchSpacing: ringDiameter }), 2 * shallowest), ground.radius);
  }
  const { ringDiameter, pitch, depth, returnPipe, trenches, trenchSpacing } = layout;
  const upright = layout.type === 'upright-overlapped-coil';
  const cover = depth - (upright ? ringDiameter / 2 : 0);
  const beside = returnPipe === undefined ? cover : Math.min(returnPipe.depth, returnToRings(layout, returnPipe, upright) / 2);
  const findings: Finding[] = [...lineFindings(2 * Math.min(cover, beside), ground.radius)];
  const { pipePerTurn } = coilPipe(layout);
  const countedPerTurn = Math.PI * ringDiameter;
  if (pipePerTurn > (1 + LEFT_OUT) * countedPerTurn)
    findings.push({
      code: 'pipe-between-rings-left-out',
      level: 'note',
      values: { pitch, pipePerTurn, countedPerTurn: countedPerTurn as PipeLength },
      source: 'xiong2015',
    });
  const risesBy = steady === undefined || trenches === 1 ? 1 : steady / measuredSteady(ground.measure(1));
  if (risesBy > 1 + NOTICEABLE)
    findings.push({
      code: 'trenches-warm-each-other',
      level: 'note',
      values: { trenchSpacing, trenches, risesBy: risesBy as Ratio },
      source: 'ingersoll1954',
    });
  return findings;
}
