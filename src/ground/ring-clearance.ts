import { demand, locate } from '../errors/index.js';
import { demandBuriedPipes } from './demand-ground.js';
import type { Diameter, Length } from '../units/index.js';
import type { OverlappedCoilSection, RingLayout } from './ring-layout.js';

/** Refuses rings that lie on one another or out of the ground, and a return that would run into them. */
export function demandClear(layout: RingLayout, outsideDiameter: Diameter): void {
  if (layout.type === 'ring-trench') {
    const { pipes, ringDiameter } = layout;
    demandBuriedPipes({ name: 'custom', pipes, pipesPerTrench: pipes.length, trenches: 1, trenchSpacing: ringDiameter }, { outsideDiameter });
    return;
  }
  const { ringDiameter, pitch, depth, returnPipe } = layout;
  const upright = layout.type === 'upright-overlapped-coil';
  locate('layout', () => {
    demand(
      'pitch',
      'length',
      pitch,
      { atLeast: outsideDiameter },
      'closer than the pipe is thick: each ring would lie on the next along its whole length',
    );
    const tall = upright ? ringDiameter / 2 : 0;
    demand('depth', 'length', depth, { above: tall + outsideDiameter / 2 }, 'the pipe would stick out of the ground');
    if (returnPipe === undefined) return;
    demand('returnPipe.depth', 'length', returnPipe.depth, { above: outsideDiameter / 2 }, 'the pipe would stick out of the ground');
    const distance = returnToRings(layout, returnPipe, upright) as Length;
    demand('returnPipe', 'length', distance, { atLeast: outsideDiameter }, 'distance of the return from the rings: they would overlap');
  });
}

/** Least distance of the return's axis from the axis of the rings, which in a cross-section are a bar as wide, or as tall, as they are [m]. */
export function returnToRings(
  { ringDiameter, depth }: OverlappedCoilSection,
  returnPipe: { readonly x: number; readonly depth: number },
  upright: boolean,
): number {
  const [along, beside] = upright ? [returnPipe.depth - depth, returnPipe.x] : [returnPipe.x, returnPipe.depth - depth];
  return Math.hypot(Math.max(0, Math.abs(along) - ringDiameter / 2), beside);
}
