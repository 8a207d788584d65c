import type { Finding } from '../findings/index.js';
import type { ReferenceKey } from '../references/index.js';
import { type SoilThermal, soilThermalShape } from '../states/index.js';
import type { Diameter, PipeResistance, Shape, SurfaceCoefficient, Time, TrenchResistance } from '../units/index.js';
import { type Layout, layoutShape } from './layout.js';

/**
 * What the ground surface does to the disturbance that the loop causes: held at its own temperature, sealed against heat (built over), or
 * coupled to the air through a film, which acts as soil of thickness conductivity over coefficient on top of the ground.
 */
export type GroundSurface =
  | { readonly type: 'isothermal' }
  | { readonly type: 'adiabatic' }
  | {
      readonly type: 'film';
      /** Heat transfer coefficient between ground surface and air [W/(m2.K)]. */
      readonly coefficient: SurfaceCoefficient;
    };

/** Shape of {@link GroundSurface}. */
export const groundSurfaceShape: Shape<GroundSurface> = {
  by: 'type',
  oneOf: { isothermal: {}, adiabatic: {}, film: { coefficient: 'surface coefficient' } },
};

/**
 * What the walls of all pipes have in common: the heat that they give off per metre, or their temperature, each then giving off what follows. Neither is
 * always the safe side.
 */
export type WallCondition = 'equal flux' | 'equal temperature';

/** What a ground response is computed from. */
export interface GroundResponseInput {
  /** The pipes in their trenches. */
  readonly layout: Layout;
  /** The pipe laid, the same throughout. */
  readonly pipe: {
    /** Outside diameter [m]. */
    readonly outsideDiameter: Diameter;
  };
  /** The soil, uniform. */
  readonly soil: SoilThermal;
  /** What the ground surface does; isothermal when left out. */
  readonly surface?: GroundSurface;
  /** How the pipe's own heat is treated: as leaving a cylinder, right from the first minute, or a line, low by 5 % at about an hour; cylinder when left out. */
  readonly selfTerm?: 'cylinder' | 'line';
}

/** Shape of {@link GroundResponseInput}. */
export const groundResponseInputShape: Shape<GroundResponseInput> = {
  layout: layoutShape,
  pipe: { outsideDiameter: 'diameter' },
  soil: soilThermalShape,
  surface: { optional: groundSurfaceShape },
  selfTerm: { optional: ['cylinder', 'line'] },
};

/**
 * How far the pipe walls warm when, from time zero on, every pipe gives off one watt per metre of its length. Extraction is the same with the
 * sign changed; loads that vary superpose. All pipes give off the same heat.
 */
export interface GroundResponse {
  /** The pipes it is for. */
  readonly layout: Layout;
  /**
   * Mean wall temperature rise of all pipes per heat per metre of each pipe [m.K/W].
   *
   * @param time - since the heat began, 0 to 1e12 [s]
   */
  readonly riseAfter: (time: Time) => PipeResistance;
  /** {@link GroundResponse.riseAfter} at many times [m.K/W]. */
  readonly risesAfter: (times: readonly Time[]) => readonly PipeResistance[];
  /** The rise that {@link GroundResponse.riseAfter} tends to [m.K/W]; absent below a sealed surface, where the ground warms for ever. */
  readonly steadyRise: PipeResistance | undefined;
  /**
   * Mean wall temperature rise per heat per metre of trench [m.K/W]: {@link GroundResponse.riseAfter} over the pipes in a trench.
   *
   * @param time - since the heat began, 0 to 1e12 [s]
   */
  readonly trenchRiseAfter: (time: Time) => TrenchResistance;
  /** {@link GroundResponse.steadyRise} per heat per metre of trench [m.K/W]. */
  readonly steadyTrenchRise: TrenchResistance | undefined;
  /**
   * Wall temperature rise of each pipe on its own per heat per metre of each pipe [m.K/W], trench by trench in the order of the layout's pipes.
   *
   * @param time - since the heat began, 0 to 1e12 [s]
   */
  readonly pipeRisesAfter: (time: Time) => readonly (readonly PipeResistance[])[];
  /** The rises that {@link GroundResponse.pipeRisesAfter} tends to [m.K/W]. */
  readonly steadyPipeRises: readonly (readonly PipeResistance[])[] | undefined;
  /** What is possible but doubtful about the pipes. */
  readonly findings: readonly Finding[];
  /** What the response rests on. */
  readonly sources: readonly ReferenceKey[];
}
