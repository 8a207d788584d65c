import { solveDense } from '../numerics/index.js';
import { type Panel, type Place, slopeBy, slopeByLine, warmingBy, warmingByLine } from './panel.js';

import { conductivityAt, trenchFaces, type TrenchSection } from './trench-faces.js';

/** What is even about the middle of the trench, and what is odd; the two add up to any arrangement of pipes. */
const PARITIES = [1, -1] as const;

/** Charges driven by less than this are none: pipes that lie even drive no odd ones [K/m per W/m]. */
const NONE = 1e-9;

/**
 * Mean steady warming of the walls of pipes in a filled trench, one watt per metre in each, the surface held at its temperature [m.K/W].
 *
 * Where two grounds meet, heat passes as if their common face carried charges: as many as make the flow on both sides the same. They
 * follow from one equation per panel of the face; the warming is that of the pipes and of the charges, each with its image over the surface.
 */
export function trenchRise(section: TrenchSection, pipes: readonly Place[], radius: number): number {
  const panels = trenchFaces(section, pipes);
  const lines = pipes.map((place) => ({ place, strength: 1 / conductivityAt(section.fill, place.depth) }));
  const parts = PARITIES.map((parity) => ({ parity, charges: chargesOf(panels, lines, parity) }));
  const rise = (pipe: Place): number =>
    total(lines, ({ place, strength }) => strength * warmingByLine(place, pipe, radius)) +
    total(parts, ({ parity, charges }) =>
      charges.reduce((sum, charge, index) => {
        const panel = panels[index];
        return panel === undefined ? sum : sum + charge * (warmingBy(panel, pipe) + parity * warmingBy(mirrored(panel), pipe));
      }, 0),
    );
  return total(pipes, rise) / pipes.length;
}

/** A pipe with what one watt per metre of it drives through ground of its own kind. */
interface Line {
  readonly place: Place;
  readonly strength: number;
}

/** The even or the odd part of the charges on the right half of the faces; none where nothing drives them. */
function chargesOf(panels: readonly Panel[], lines: readonly Line[], parity: number): readonly number[] {
  const driven = panels.map((panel) =>
    total(lines, ({ place, strength }) => {
      const slope = slopeByLine(place, panel, panel.upright) + parity * slopeByLine(mirrored(place), panel, panel.upright);
      return (panel.contrast * strength * slope) / 2;
    }),
  );
  if (driven.every((each) => Math.abs(each) < NONE)) return [];
  const system = panels.map((panel, row) =>
    panels.map((other, column) => {
      const slope = slopeBy(other, panel, panel.upright) + parity * slopeBy(mirrored(other), panel, panel.upright);
      return (row === column ? 0.5 : 0) - panel.contrast * slope;
    }),
  );
  return solveDense(system, driven);
}

function mirrored<T extends Place>(one: T): T {
  return { ...one, x: -one.x };
}

function total<T>(each: readonly T[], of: (one: T) => number): number {
  return each.reduce((sum, one) => sum + of(one), 0);
}
