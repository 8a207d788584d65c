import type { Conductivity, Diameter, PipeResistance, Ratio, Shape } from '../units/index.js';
import { demandBuriedPipes, demandConductivity } from './demand-ground.js';
import { type Layout, layoutShape } from './layout.js';
import { steadyKernel } from './step-kernel.js';
import { tiedPipes } from './tied-pipes.js';

/** Pipes whose walls all take one temperature. */
export interface EqualTemperatureInput {
  /** The pipes in their trenches. */
  readonly layout: Layout;
  /** The pipe laid, the same throughout. */
  readonly pipe: {
    /** Outside diameter [m]. */
    readonly outsideDiameter: Diameter;
  };
  /** Conductivity of the soil [W/(m.K)]. */
  readonly conductivity: Conductivity;
}

/** Shape of {@link EqualTemperatureInput}. */
export const equalTemperatureInputShape: Shape<EqualTemperatureInput> = {
  layout: layoutShape,
  pipe: { outsideDiameter: 'diameter' },
  conductivity: 'conductivity',
};

/** Steady state of pipes that share one wall temperature. */
export interface EqualTemperatureResistance {
  /** Wall temperature rise per mean heat per metre of pipe [m.K/W]. */
  readonly resistance: PipeResistance;
  /** Heat of each pipe over the mean, trench by trench in the order of the layout's pipes [1]. */
  readonly heatShares: readonly (readonly Ratio[])[];
}

/**
 * Steady resistance of the soil when all pipe walls take one temperature and each pipe the heat that follows: n / Σ(A⁻¹ 1) / 2πk with
 * A = ln(r'/r) between all pipes.
 *
 * The other limit beside {@link groundResponse}, whose pipes all give off the same heat; parallel pipes on one header are nearer to this one. It is never
 * the larger of the two, and for straight pipes in a trench at most a few percent smaller.
 *
 * @param input - pipes and conductivity of the soil; up to 400 pipes below an isothermal surface
 * @returns resistance and heat of each pipe
 * @throws InputError when a number is out of its range, a pipe sticks out of the ground, pipes overlap or there are more than 400
 * @remarks Source: line sources with mirror images; checked against a linear solution carried out independently (1e-10).
 * @example
 * ```ts @import.meta.vitest
 * const { feet, diameterMillimetres, wattsPerMetreKelvin } = await import('../units/index.js');
 * const { twoPipeStacked } = await import('./layout-makers.js');
 * const layout = twoPipeStacked({ upperDepth: feet(4), lowerDepth: feet(6), trenches: 1, trenchSpacing: feet(10) });
 * const pipe = { outsideDiameter: diameterMillimetres(33.4) };
 * const { resistance, heatShares } = equalTemperatureResistance({ layout, pipe, conductivity: wattsPerMetreKelvin(1) });
 * expect(resistance).toBeCloseTo(1.0798, 4);
 * expect(heatShares[0]?.[0]).toBeCloseTo(1.0567, 4);
 * ```
 */
export function equalTemperatureResistance({ layout, pipe, conductivity }: EqualTemperatureInput): EqualTemperatureResistance {
  demandBuriedPipes(layout, pipe);
  demandConductivity('conductivity', conductivity);
  const { rise, heatShares } = tiedPipes({ ...layout, addedDepth: 0 })(steadyKernel(pipe.outsideDiameter / 2));
  return {
    resistance: (rise / (4 * Math.PI * conductivity)) as PipeResistance,
    heatShares: heatShares as EqualTemperatureResistance['heatShares'],
  };
}
