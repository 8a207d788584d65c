import { demand } from '../errors/index.js';
import { type FluidState, joinedShape } from '../states/index.js';
import type { Diameter, Flow, HeatCapacity, KinematicViscosity, Ratio, Shape } from '../units/index.js';
import { fluidChoiceShape, type OfAnyFluid } from './fluids.js';
import { fluidProperties, type FluidCondition } from './properties.js';
import { WATER } from './water.data.js';

/** A fluid in a pipe. */
export interface TransportCondition extends FluidCondition {
  /** Inside diameter of one circuit [m]. */
  readonly insideDiameter: Diameter;
  /** Factor on the viscosity, to compute with an end of its band; 1 when left out [1]. */
  readonly viscosityFactor?: Ratio;
}

/** Shape of {@link TransportCondition}. */
export const transportConditionShape: Shape<TransportCondition> = /* @__PURE__ */ joinedShape(fluidChoiceShape, {
  temperature: 'temperature',
  insideDiameter: 'diameter',
  viscosityFactor: { optional: 'ratio' },
});

/** How well a fluid carries heat through a pipe, beside water. */
export interface FluidTransport {
  /** Kinematic viscosity [m2/s]. */
  readonly kinematicViscosity: KinematicViscosity;
  /** Density times specific heat [J/(m3.K)]. */
  readonly heatCapacity: HeatCapacity;
  /** Prandtl number [1]. */
  readonly prandtl: Ratio;
  /** Flow through one circuit below which all is laminar, Re 2300 [m3/s]. */
  readonly laminarBelow: Flow;
  /** Flow through one circuit from which all is turbulent, Re 4000 [m3/s]. */
  readonly turbulentFrom: Flow;
  /** Flow for the same heat at the same temperature difference, over that of water [1]. */
  readonly flowRatio: Ratio;
  /** Turbulent film coefficient at the same velocity, over that of water [1]. */
  readonly filmRatio: Ratio;
  /** Turbulent pressure drop for the same heat, over that of water [1]. */
  readonly pressureRatio: Ratio;
  /** Turbulent pump power for the same heat, over that of water [1]. */
  readonly pumpPowerRatio: Ratio;
}

/** Shape of {@link FluidTransport}. */
export const fluidTransportShape: Shape<FluidTransport> = {
  kinematicViscosity: 'kinematic viscosity',
  heatCapacity: 'heat capacity',
  prandtl: 'ratio',
  laminarBelow: 'flow',
  turbulentFrom: 'flow',
  flowRatio: 'ratio',
  filmRatio: 'ratio',
  pressureRatio: 'ratio',
  pumpPowerRatio: 'ratio',
};

/** Reynolds number at which turbulence may begin. */
const LAMINAR = 2300;

/** Reynolds number at which it is complete. */
const TURBULENT = 4000;

/**
 * What a fluid costs in flow, film, head and pump power, beside water.
 *
 * For comparing fluids at the same temperature and protection, in turbulent flow through smooth pipe: Δp ∝ ρ^0.75 μ^0.25 Q^1.75 and
 * h ∝ k^0.6 ρ^0.8 c^0.4 μ^−0.4. A fluid that is laminar at the flow at hand loses its film and less head than this says: compare
 * `laminarBelow` with the flow of a circuit. What a pipe really loses, the pipe room computes.
 *
 * @param of - fluid, mass fraction of antifreeze [kg/kg], temperature [degC], bore [m], factor on the viscosity
 * @returns its transport properties, limits of the regimes, and ratios to water at the same temperature, or at 0 °C below that
 * @throws InputError as `fluidProperties` does, and when bore or factor is impossible
 * @remarks
 * The powers are those of Blasius’ friction and of the Dittus–Boelter form of turbulent heat transfer, common practice. Checked against
 * a table of flows at Re 2300 and 4000 in seven pipes and ratios worked out outside this library.
 *
 * Invariant: water beside itself has ratios of 1.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, diameterMillimetres, litresPerMinute, massPercent } = await import('../units/index.js');
 * const of = { massFraction: massPercent(25), temperature: celsius(0), insideDiameter: diameterMillimetres(26.2) };
 * const glycol = fluidTransport({ fluid: 'propylene-glycol', ...of });
 * expect(litresPerMinute.of(glycol.laminarBelow)).toBeCloseTo(15.3, 1);
 * expect(glycol.pumpPowerRatio).toBeCloseTo(1.59, 2);
 * expect(glycol.filmRatio).toBeCloseTo(0.55, 2);
 * ```
 */
export function fluidTransport(of: OfAnyFluid<TransportCondition>): FluidTransport {
  const { temperature, insideDiameter, viscosityFactor = 1 } = of;
  const state = fluidProperties(of);
  demand('insideDiameter', 'diameter', insideDiameter, { atLeast: 0.001, atMost: 10 });
  demand('viscosityFactor', 'ratio', viscosityFactor, { atLeast: 0.1, atMost: 10 });
  const { density, specificHeat, conductivity } = state;
  const viscosity = state.viscosity * viscosityFactor;
  const kinematicViscosity = viscosity / density;
  const flowAt = (reynolds: number): number => (reynolds * Math.PI * insideDiameter * kinematicViscosity) / 4;
  const water = fluidProperties({ fluid: WATER, massFraction: 0 as FluidState['massFraction'], temperature: coldWater(temperature) });
  const heavier = density / water.density;
  const thicker = viscosity / water.viscosity;
  const heatCapacity = density * specificHeat;
  const flowRatio = (water.density * water.specificHeat) / heatCapacity;
  const pressureRatio = heavier ** 0.75 * thicker ** 0.25 * flowRatio ** 1.75;
  return {
    kinematicViscosity,
    heatCapacity,
    prandtl: (viscosity * specificHeat) / conductivity,
    laminarBelow: flowAt(LAMINAR),
    turbulentFrom: flowAt(TURBULENT),
    flowRatio,
    filmRatio: (conductivity / water.conductivity) ** 0.6 * heavier ** 0.8 * (specificHeat / water.specificHeat) ** 0.4 * thicker ** -0.4,
    pressureRatio,
    pumpPowerRatio: pressureRatio * flowRatio,
  } as FluidTransport;
}

/** Temperature of the water to compare with: that of the fluid, as far as water is liquid and its fit goes. */
function coldWater(temperature: number): FluidState['temperature'] {
  return Math.min(Math.max(temperature, 0), WATER.highestTemperature) as FluidState['temperature'];
}
