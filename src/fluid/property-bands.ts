import type { Band, FluidState } from '../states/index.js';
import type { DynamicViscosity } from '../units/index.js';
import { demandFluid, type OfAnyFluid } from './fluids.js';
import { fluidProperties, type FluidCondition } from './properties.js';

/** The state of a fluid with the limits between which each property of the fluid really bought should lie. */
export interface FluidPropertyBands {
  /** Density [kg/m3]. */
  readonly density: Band<'density'>;
  /** Dynamic viscosity [Pa.s]. */
  readonly viscosity: Band<'dynamic viscosity'>;
  /** Specific heat [J/(kg.K)]. */
  readonly specificHeat: Band<'specific heat'>;
  /** Thermal conductivity [W/(m.K)]. */
  readonly conductivity: Band<'conductivity'>;
  /** Freezing point: from the fit less its uncertainty to the fit plus it [degC]. */
  readonly freezingPoint: Band<'temperature'>;
  /** The fluid at the lower limit of its viscosity, all else as estimated: the earliest turbulence, the least head. */
  readonly thinnest: FluidState;
  /** The fluid as estimated. */
  readonly expected: FluidState;
  /** The fluid at the upper limit of its viscosity, all else as estimated: the latest turbulence, the greatest head. */
  readonly thickest: FluidState;
}

/** Temperature below which sources of viscosity part as they do in the cold [degC]. */
const COLD = 5;

/** Temperature from which they agree [degC]. */
const WARM = 20;

/** Share of cases that stated limits of a handbook value are taken to hold. */
const COVERAGE = 0.9;

/**
 * Properties of a loop fluid with the limits of what is known of them.
 *
 * Viscosity decides whether a flow is turbulent, and it is what sources differ in: ± 15 % below 5 °C, ± 5 % from 20 °C up, on a straight
 * line between (ours). Compute film and head with both {@link FluidPropertyBands.thinnest} and {@link FluidPropertyBands.thickest}: what holds
 * at both ends can be relied on. Limits are those stated for the fluid, taken to hold nine times in ten.
 *
 * @param condition - fluid, mass fraction of antifreeze [kg/kg], temperature [degC]
 * @returns each property as a band, and the state at either end of the viscosity
 * @throws InputError as {@link fluidProperties} does
 * @remarks
 * Limits: scatter between `melinder2010`, `ashrae2001Coolants`, `vdiCoolants` and `lange1999`; see {@link fluidFacts}.
 *
 * Invariants: the estimates are those of {@link fluidProperties}; the width of the viscosity never grows with temperature.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, massPercent, millipascalSeconds } = await import('../units/index.js');
 * const { viscosity } = fluidPropertyBands({ fluid: 'propylene-glycol', massFraction: massPercent(25), temperature: celsius(-5) });
 * expect(millipascalSeconds.of(viscosity.low)).toBeCloseTo(5.99, 2);
 * expect(millipascalSeconds.of(viscosity.high)).toBeCloseTo(8.10, 2);
 * ```
 */
export function fluidPropertyBands(condition: OfAnyFluid<FluidCondition>): FluidPropertyBands {
  const expected = fluidProperties(condition);
  const { uncertainty } = demandFluid(condition.fluid);
  const { density, viscosity, specificHeat, conductivity, freezingPoint } = expected;
  const thick = viscosityShare(uncertainty, condition.temperature);
  const viscosities = band(viscosity, viscosity * thick);
  const withViscosity = (value: number): FluidState => ({ ...expected, viscosity: value as DynamicViscosity });
  return {
    density: band(density, density * uncertainty.density),
    viscosity: viscosities,
    specificHeat: band(specificHeat, specificHeat * uncertainty.specificHeat),
    conductivity: band(conductivity, conductivity * uncertainty.conductivity),
    freezingPoint: band(freezingPoint, uncertainty.freezingPoint),
    thinnest: withViscosity(viscosities.low),
    expected,
    thickest: withViscosity(viscosities.high),
  } as FluidPropertyBands;
}

/** How far the viscosity may be off, as a share of it. */
function viscosityShare({ viscosity, coldViscosity }: { readonly viscosity: number; readonly coldViscosity: number }, temperature: number): number {
  const warmth = Math.min(Math.max((temperature - COLD) / (WARM - COLD), 0), 1);
  return coldViscosity + (viscosity - coldViscosity) * warmth;
}

function band(
  estimate: number,
  width: number,
): { readonly low: number; readonly estimate: number; readonly high: number; readonly coverage: number } {
  return { low: estimate - width, estimate, high: estimate + width, coverage: COVERAGE };
}
