import type { HydraulicFluid } from '../pipe/index.js';
import type { Flow, Fraction, Pressure, Shape } from '../units/index.js';
import { type OperatingPoint, operatingPointShape, pumpOperatingPoint } from './operating-point.js';
import type { PumpCurve } from './pump-curve.js';
import { demandHydraulic } from './rated-drop.js';

/** What {@link pumpSeasons} needs. */
export interface PumpSeasonsInput {
  /** The pump, or the pumps together. */
  readonly curve: PumpCurve;
  /** What the whole loop drops at a flow of a fluid; it rises with the flow [Pa]. */
  readonly dropAt: (flow: Flow, fluid: HydraulicFluid) => Pressure;
  /** The mixture at its coldest design temperature. */
  readonly coldest: HydraulicFluid;
  /** The mixture in summer. */
  readonly summer: HydraulicFluid;
  /** Water on the day of the test, before the antifreeze goes in; none when left out. */
  readonly testDay?: HydraulicFluid;
  /** Power given to the fluid over electric input, above 0 to 0.9; from the curve's own electric input when left out [1]. */
  readonly pumpEfficiency?: Fraction;
}

/** Where a pump works through the year. */
export interface PumpSeasons {
  /** In the coldest hour: the design point. */
  readonly coldest: OperatingPoint;
  /** In summer. */
  readonly summer: OperatingPoint;
  /** On the day of the test, with water: what the meter should then read. */
  readonly testDay?: OperatingPoint;
}

/** Shape of {@link PumpSeasons}. */
export const pumpSeasonsShape: Shape<PumpSeasons> = {
  coldest: operatingPointShape,
  summer: operatingPointShape,
  testDay: { optional: operatingPointShape },
};

/**
 * Operating point of a pump in the coldest hour, in summer and with water on test day.
 *
 * The same pump on the same loop: the flow differs by what the fluid's viscosity does. It need not be least in the cold: where the cold makes the
 * circuits laminar, they may drop less than a little warmer.
 *
 * @param input - see {@link PumpSeasonsInput}
 * @returns the three operating points
 * @throws InputError as {@link pumpOperatingPoint} does
 * @remarks See {@link pumpOperatingPoint}. Invariant tested: each is the operating point of its fluid alone.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, headMetres, kilogramsPerCubicMetre, litresPerSecond, millipascalSeconds, pipeMetres } = await import(
 *   '../units/index.js'
 * );
 * const { pumpCurve } = await import('./make-pump-curve.js');
 * const { circuitHead } = await import('./circuit-head.js');
 * const points = [[0, 9], [0.5, 8], [1, 5]].map(([flow = 0, head = 0]) => ({ flow: litresPerSecond(flow), head: headMetres(head) }));
 * const fluid = (density: number, viscosity: number) => ({ density: kilogramsPerCubicMetre(density), viscosity: millipascalSeconds(viscosity) });
 * const circuit = { pipe: { insideDiameter: diameterMillimetres(20.4) }, length: pipeMetres(150) };
 * const { coldest, summer, testDay } = pumpSeasons({
 *   curve: pumpCurve({ points }),
 *   dropAt: (flow, of) => circuitHead({ circuit, circuits: 4, flow, fluid: of }).pressureDrop,
 *   coldest: fluid(1026, 5.5),
 *   summer: fluid(1018, 2.2),
 *   testDay: fluid(999.7, 1.3),
 * });
 * expect([coldest, summer, testDay].map((point) => Number(litresPerSecond.of(point?.flow ?? litresPerSecond(0)).toFixed(2)))).toEqual([0.86, 0.86, 0.91]);
 * ```
 */
export function pumpSeasons({ curve, dropAt, pumpEfficiency, ...fluids }: PumpSeasonsInput): PumpSeasons {
  const pointOf = (season: 'coldest' | 'summer' | 'testDay', fluid: HydraulicFluid): OperatingPoint => {
    demandHydraulic(season, fluid);
    const { density } = fluid;
    const efficiency = pumpEfficiency === undefined ? {} : { pumpEfficiency };
    return pumpOperatingPoint({ curve, density, dropAt: (flow) => dropAt(flow, fluid), ...efficiency });
  };
  const { coldest, summer, testDay } = fluids;
  return {
    coldest: pointOf('coldest', coldest),
    summer: pointOf('summer', summer),
    ...(testDay === undefined ? {} : { testDay: pointOf('testDay', testDay) }),
  };
}
