import type { Finding } from '../findings/index.js';
import type { ReferenceKey } from '../references/index.js';
import { type SoilThermal, soilThermalShape } from '../states/index.js';
import type { Diameter, Length, PipeLength, PipeResistance, Ratio, Shape, Time, TrenchResistance } from '../units/index.js';
import { type GroundSurface, groundSurfaceShape } from './response.js';
import { type RingLayout, ringLayoutShape } from './ring-layout.js';

/** What the ground response of pipe laid in rings is computed from. */
export interface RingResponseInput {
  /** The coils in their trenches, or the pipes round a closed trench. */
  readonly layout: RingLayout;
  /** The pipe laid, the same throughout. */
  readonly pipe: {
    /** Outside diameter, at most a tenth of the rings' [m]. */
    readonly outsideDiameter: Diameter;
    /** Least radius that the pipe may be bent to, to its axis; rings narrower than that are refused. Not looked at when left out [m]. */
    readonly leastBendRadius?: Length;
  };
  /** The soil, uniform. */
  readonly soil: SoilThermal;
  /** What the ground surface does; isothermal when left out. */
  readonly surface?: GroundSurface;
  /** How the pipe's own heat is treated: as leaving a cylinder, right from the first minute, or a line, low by 5 % at about an hour; cylinder when left out. */
  readonly selfTerm?: 'cylinder' | 'line';
}

/** Shape of {@link RingResponseInput}. */
export const ringResponseInputShape: Shape<RingResponseInput> = {
  layout: ringLayoutShape,
  pipe: { outsideDiameter: 'diameter', leastBendRadius: { optional: 'length' } },
  soil: soilThermalShape,
  surface: { optional: groundSurfaceShape },
  selfTerm: { optional: ['cylinder', 'line'] },
};

/** How far the walls of pipe laid in rings warm when, from time zero on, every metre of it gives off one watt. */
export interface RingResponse {
  /** The rings it is for. */
  readonly layout: RingLayout;
  /**
   * Mean wall temperature rise of all pipe per heat per metre of pipe counted [m.K/W].
   *
   * @param time - since the heat began, 0 to 1e12 [s]
   */
  readonly riseAfter: (time: Time) => PipeResistance;
  /** {@link RingResponse.riseAfter} at many times [m.K/W]. */
  readonly risesAfter: (times: readonly Time[]) => readonly PipeResistance[];
  /** The rise that {@link RingResponse.riseAfter} tends to [m.K/W]; absent below a sealed surface. */
  readonly steadyRise: PipeResistance | undefined;
  /**
   * Mean wall temperature rise per heat per metre of trench [m.K/W].
   *
   * @param time - since the heat began, 0 to 1e12 [s]
   */
  readonly trenchRiseAfter: (time: Time) => TrenchResistance;
  /** {@link RingResponse.steadyRise} per heat per metre of trench [m.K/W]. */
  readonly steadyTrenchRise: TrenchResistance | undefined;
  /** Metres of pipe counted in a metre of trench: rings as circles, and the return [1]. */
  readonly countedPipePerTrench: Ratio;
  /** Pipe counted in all trenches, each as long as its turns times the pitch; absent for a coil without end [m]. */
  readonly countedPipe: PipeLength | undefined;
  /** What is possible but doubtful about the rings. */
  readonly findings: readonly Finding[];
  /** What the response rests on. */
  readonly sources: readonly ReferenceKey[];
}
