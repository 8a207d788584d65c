import { demand, demandChoice, demandObject } from '../errors/index.js';
import { coilMeasure, type Coils, circlesPerMetre } from './coil-measure.js';
import { demandOutsideDiameter, demandSoil, demandSurface } from './demand-ground.js';
import type { DistanceMeasure } from './distance-measure.js';
import type { RingLayout } from './ring-layout.js';
import { demandRingLayout } from './ring-layout-makers.js';
import type { RingResponseInput } from './ring-response-input.js';
import { ringTrenchMeasure } from './ring-trench-measure.js';
import { demandClear } from './ring-clearance.js';
import type { StepTreatment } from './step-kernel.js';

/** A ring response's input, checked, as what the sums over distances need. */
export interface RingedGround extends StepTreatment {
  /** The distances, of this many trenches. */
  readonly measure: (trenches: number) => DistanceMeasure;
  readonly trenches: number;
  /** Metres of pipe counted in a metre of trench, and in all trenches [m]. */
  readonly pipePerTrench: number;
  readonly counted: number;
  /** Depth of the middle of the rings, or of the deepest pipe, soil that stands for a film included [m]. */
  readonly deepest: number;
}

/**
 * Checks the input of a ring response.
 *
 * @param input - rings, pipe, soil, surface and treatment of the pipe's own heat
 * @returns the distances that its sums run over, and how the pipe's own heat is treated
 * @throws InputError naming the field
 */
export function ringedGround({ layout, pipe, soil, surface = { type: 'isothermal' }, selfTerm = 'cylinder' }: RingResponseInput): RingedGround {
  demandRingLayout(layout);
  demandPipe(layout, pipe);
  demandSoil(soil);
  demandSurface(surface);
  demandChoice('selfTerm', selfTerm, ['cylinder', 'line']);
  const addedDepth = surface.type === 'film' ? soil.conductivity / surface.coefficient : 0;
  const sealed = surface.type === 'adiabatic';
  const mirror = sealed ? 1 : -1;
  const radius = pipe.outsideDiameter / 2;
  const treatment = { radius, selfTerm, sealed };
  if (layout.type === 'ring-trench') {
    const middle = layout.ringDiameter / 2;
    const rings = layout.pipes.map(({ x, depth }) => ({ ringRadius: middle + x, depth: depth + addedDepth }));
    const around = rings.reduce((sum, { ringRadius }) => sum + ringRadius, 0);
    return {
      ...treatment,
      measure: () => ringTrenchMeasure({ rings, radius, mirror }),
      trenches: 1,
      pipePerTrench: around / middle,
      counted: 2 * Math.PI * around,
      deepest: Math.max(...rings.map(({ depth }) => depth)),
    };
  }
  const coils: Coils = {
    radius,
    mirror,
    ringRadius: layout.ringDiameter / 2,
    pitch: layout.pitch,
    turns: layout.turns ?? Infinity,
    upright: layout.type === 'upright-overlapped-coil',
    trenches: layout.trenches,
    trenchSpacing: layout.trenchSpacing,
    centre: layout.depth + addedDepth,
    returning: layout.returnPipe && { x: layout.returnPipe.x, depth: layout.returnPipe.depth + addedDepth },
  };
  const pipePerTrench = circlesPerMetre(coils) + (coils.returning ? 1 : 0);
  return {
    ...treatment,
    measure: (trenches) => coilMeasure({ ...coils, trenches }),
    trenches: coils.trenches,
    pipePerTrench,
    counted: pipePerTrench * coils.turns * coils.pitch * coils.trenches,
    deepest: coils.centre,
  };
}

function demandPipe(layout: RingLayout, pipe: RingResponseInput['pipe']): void {
  demandObject('pipe', pipe);
  demandOutsideDiameter('pipe.outsideDiameter', pipe.outsideDiameter);
  const { outsideDiameter, leastBendRadius = 0 } = pipe;
  demand('pipe.leastBendRadius', 'length', leastBendRadius, { atLeast: 0, atMost: 100 });
  const inwards = layout.type === 'ring-trench' ? Math.min(...layout.pipes.map(({ x }) => x)) : 0;
  const kinks = 'the rings are tighter than the pipe may be bent';
  demand('layout.ringDiameter', 'length', layout.ringDiameter, { atLeast: 2 * (leastBendRadius - inwards) }, kinks);
  demand('layout.ringDiameter', 'length', layout.ringDiameter, { atLeast: 10 * outsideDiameter - 2 * inwards }, 'no pipe bends to five diameters');
  demandClear(layout, outsideDiameter);
}
