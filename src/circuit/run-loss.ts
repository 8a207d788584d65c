import { demand, demandObject } from '../errors/index.js';
import { flowVelocity, type HydraulicFluid, pressureGradient, reynoldsNumber } from '../pipe/index.js';
import type { PipeSection } from '../states/index.js';
import type { Flow, Length, PipeLength, Pressure, PressureGradient, Ratio, Shape, Velocity } from '../units/index.js';

/** A length of pipe with its fittings. */
export interface PipeRun {
  /** The pipe; only its bore matters here. */
  readonly pipe: Pick<PipeSection, 'insideDiameter'>;
  /** Its length, 0 to 1e6 [m]. */
  readonly length: PipeLength;
  /** Loss coefficients of its fittings added up, in velocity heads, 0 to 1e4; 0 when left out [1]. */
  readonly fittings?: Ratio;
}

/** Where the pressure of a run goes. */
export interface RunLoss {
  /** Mean velocity in the bore [m/s]. */
  readonly velocity: Velocity;
  /** Density · velocity · bore/viscosity [1]. */
  readonly reynolds: Ratio;
  /** Friction per metre [Pa/m]. */
  readonly gradient: PressureGradient;
  /** Friction over the length [Pa]. */
  readonly frictionDrop: Pressure;
  /** Fittings: coefficients · density · velocity²/2 [Pa]. */
  readonly fittingsDrop: Pressure;
  /** Both [Pa]. */
  readonly pressureDrop: Pressure;
}

/** Shape of {@link RunLoss}. */
export const runLossShape: Shape<RunLoss> = {
  velocity: 'velocity',
  reynolds: 'ratio',
  gradient: 'pressure gradient',
  frictionDrop: 'pressure',
  fittingsDrop: 'pressure',
  pressureDrop: 'pressure',
};

/** Pressure drop of one run of pipe with its fittings. */
export function runLoss(of: {
  readonly run: PipeRun;
  readonly fluid: HydraulicFluid;
  readonly flow: Flow;
  readonly roughness: Length | undefined;
}): RunLoss {
  const { fluid, flow, roughness } = of;
  const { pipe, length, fittings = 0 } = of.run;
  demandObject('pipe', pipe);
  demand('length', 'pipe length', length, { atLeast: 0, atMost: 1e6 });
  demand('fittings', 'ratio', fittings, { atLeast: 0, atMost: 1e4 });
  const velocity = flowVelocity({ pipe, flow });
  const gradient = pressureGradient({ pipe, fluid, flow, ...(roughness === undefined ? {} : { roughness }) });
  const frictionDrop = gradient * length;
  const fittingsDrop = (fittings * fluid.density * velocity ** 2) / 2;
  return {
    velocity,
    reynolds: reynoldsNumber({ pipe, fluid, flow }),
    gradient,
    frictionDrop: frictionDrop as Pressure,
    fittingsDrop: fittingsDrop as Pressure,
    pressureDrop: (frictionDrop + fittingsDrop) as Pressure,
  };
}
