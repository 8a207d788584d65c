import type { Finding } from '../findings/index.js';
import type { Length, Ratio } from '../units/index.js';
import { nearestPipes } from './demand-ground.js';
import type { Layout } from './layout.js';

/** A neighbour further off than this many radii disturbs the line source by less than about half a percent; at 22 radii 0.4 % were computed. */
const RADII_APART = 20;

/** Share by which trenches may raise the resistance of one another before it is worth a word. */
export const NOTICEABLE = 0.2;

/** A film taken for soil up to this share of the depth of the pipes is right within about half a percent; at one and a quarter depths it was 1.5 % low. */
const THIN_FILM = 0.5;

/** What is doubtful about pipes in the ground. */
export function groundFindings(layout: Layout, radius: number, risesBy: number, addedDepth: number): readonly Finding[] {
  const shallowest = Math.min(...layout.pipes.map(({ depth }) => depth));
  const distance = Math.min(nearestPipes(layout), 2 * shallowest);
  const findings: Finding[] = [...lineFindings(distance, radius)];
  if (addedDepth > THIN_FILM * shallowest)
    findings.push({
      code: 'film-as-added-depth',
      level: 'warning',
      values: { addedDepth: addedDepth as Length, depth: shallowest as Length },
      source: 'carslawJaeger1959',
    });
  if (risesBy > 1 + NOTICEABLE)
    findings.push({
      code: 'trenches-warm-each-other',
      level: 'note',
      values: { trenchSpacing: layout.trenchSpacing, trenches: layout.trenches, risesBy: risesBy as Ratio },
      source: 'ingersoll1954',
    });
  return findings;
}

/** What is doubtful about a distance of pipes, or of a pipe from its mirror image [m], for line sources. */
export function lineFindings(distance: number, radius: number): readonly Finding[] {
  const holdsFrom = RADII_APART * radius;
  if (distance >= holdsFrom) return [];
  const values = { distance: distance as Length, holdsFrom: holdsFrom as Length };
  return [{ code: 'pipes-near-for-line-sources', level: 'note', values, source: 'buriedPipeElements' }];
}
