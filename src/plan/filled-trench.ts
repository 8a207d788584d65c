import { locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Layout } from '../ground/index.js';
import type { Source } from '../references/index.js';
import { effectiveConductivity, type FillState, loosenedFill, soilThermalProperties } from '../soil/index.js';
import type { SoilThermal } from '../states/index.js';
import type { Density, Diameter, Length, PipeResistance } from '../units/index.js';
import { atPlace } from './at-place.js';
import type { PlanFill } from './fill-input.js';
import type { LayerResult } from './loop-plan.js';
import type { SampledLayer } from './soil-at-pipes.js';

/** The fill in one state, with what it adds between pipe and native ground. */
export interface FilledState {
  readonly fill: FillState;
  readonly addedResistance: PipeResistance;
}

/** A trench with its fill in both states. */
export interface FilledTrench {
  /** Depth of the trench [m]. */
  readonly depth: Length;
  readonly firstWinter: FilledState;
  readonly settled: FilledState;
  readonly findings: readonly Finding[];
  readonly sources: readonly Source[];
}

/** A trench ends so far under its lowest pipe [m]. */
const UNDER_PIPES = 0.05;

/** What a fill is followed from. */
export interface TrenchFacts {
  readonly fill: PlanFill;
  readonly layers: readonly LayerResult[];
  readonly layout: Layout;
  readonly outsideDiameter: Diameter;
  /** The layer that the pipes lie in. */
  readonly soil: SampledLayer;
}

/**
 * The soil of the trenches in its first winter and settled: that of the layer at the pipes, at its moisture and at a part of its density, by the same model.
 *
 * @param facts - trench, log and sample
 * @returns density and conductivity in both states, and what either adds in series with the pipe wall
 * @throws InputError at the fill, for shares that leave no room for the water
 */
export function filledTrench({ fill, layers, layout: { pipes }, outsideDiameter, soil }: TrenchFacts): FilledTrench {
  const { width, ...shares } = fill;
  const { sample, phases } = soil;
  // Only a fill denser than the ground has too little room for its water, and settled it is the densest.
  const thermalAt = (dryDensity: Density): SoilThermal =>
    atPlace('settledShare', () => soilThermalProperties({ ...sample, density: { from: 'core', dryDensity } }).thermal);
  const { firstWinter, settled, findings, sources } = locate('trenchFill', () =>
    loosenedFill({ nativeDensity: phases.dryDensity, thermalAt, ...shares }),
  );
  const depth = (Math.max(...pipes.map((pipe) => pipe.depth)) + outsideDiameter / 2 + UNDER_PIPES) as Length;
  const log = layers.map(({ top, bottom, properties: { thermal } }) => ({ top, bottom, thermal }));
  const stateOf = (state: FillState): FilledState => ({
    fill: state,
    addedResistance: effectiveConductivity({ layers: log, pipes, outsideDiameter, fill: { width, depth, thermal: state.thermal } }).addedResistance,
  });
  return { depth, firstWinter: stateOf(firstWinter), settled: stateOf(settled), findings, sources: [...sources, 'facesOfFill'] };
}
