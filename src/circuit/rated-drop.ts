import { demand, demandObject } from '../errors/index.js';
import type { HydraulicFluid } from '../pipe/index.js';
import { joinedShape } from '../states/index.js';
import type { Flow, Pressure, Shape } from '../units/index.js';

/** A pressure drop as a data sheet gives it: at one flow. */
export interface RatedDrop {
  /** The flow, 1e-9 to 1000 [m3/s]. */
  readonly ratedFlow: Flow;
  /** The drop at that flow, 0 to 1e8 [Pa]. */
  readonly ratedDrop: Pressure;
}

/** Shape of {@link RatedDrop}. */
export const ratedDropShape: Shape<RatedDrop> = { ratedFlow: 'flow', ratedDrop: 'pressure' };

/** What {@link valveDrop} needs. */
export interface ValveDropInput {
  /** The valve with water; Kv is its flow in m3/h at 1 bar, Cv its flow in gpm at 1 psi. */
  readonly valve: RatedDrop;
  /** Density of the fluid, 500 to 2000 [kg/m3]. */
  readonly density: HydraulicFluid['density'];
  /** Flow through it, 0 to 1000 [m3/s]. */
  readonly flow: Flow;
}

/** Water that valves are rated with, at 15 °C [kg/m3]. */
export const VALVE_WATER = 999.1;

/**
 * Pressure drop of a valve from its flow coefficient: rated drop · (density/density of water) · (flow/rated flow)².
 *
 * For turbulent flow through the seat; in thick fluid and a nearly closed valve the drop is larger.
 *
 * @param input - see {@link ValveDropInput}
 * @returns pressure drop [Pa]
 * @throws InputError for a value out of its range
 * @remarks Source: `valveFlowCoefficient`. Checked: a Cv of 1 is a Kv of 0.865, as the units make it. Invariant tested: twice the flow, four times the drop.
 * @example
 * ```ts @import.meta.vitest
 * const { bars, cubicMetresPerHour, kilogramsPerCubicMetre, kilopascals } = await import('../units/index.js');
 * const valve = { ratedFlow: cubicMetresPerHour(2.5), ratedDrop: bars(1) };
 * const drop = valveDrop({ valve, density: kilogramsPerCubicMetre(1022), flow: cubicMetresPerHour(0.7) });
 * expect(kilopascals.of(drop)).toBeCloseTo(8.02, 2);
 * ```
 */
export function valveDrop({ valve, density, flow }: ValveDropInput): Pressure {
  demandRated('valve', valve);
  demand('density', 'density', density, { atLeast: 500, atMost: 2000 });
  demand('flow', 'flow', flow, { atLeast: 0, atMost: 1e3 });
  return (valve.ratedDrop * (density / VALVE_WATER) * (flow / valve.ratedFlow) ** 2) as Pressure;
}

/** The loop side of a heat pump as its data sheet has it. */
export interface RatedWaterSide extends RatedDrop {
  /** The fluid that the data sheet is for, mostly water. */
  readonly ratedFluid: HydraulicFluid;
}

/** Shape of {@link RatedWaterSide}. */
export const ratedWaterSideShape: Shape<RatedWaterSide> = /* @__PURE__ */ joinedShape(ratedDropShape, {
  ratedFluid: { density: 'density', viscosity: 'dynamic viscosity' },
});

/** What {@link equipmentDrop} needs. */
export interface EquipmentDropInput {
  /** The heat pump's loop side. */
  readonly waterSide: RatedWaterSide;
  /** The fluid in the loop. */
  readonly fluid: HydraulicFluid;
  /** Flow through it, 0 to 1000 [m3/s]. */
  readonly flow: Flow;
}

/**
 * Pressure drop of the heat pump's loop side with another fluid at another flow: ∝ density^0.75 · viscosity^0.25 · flow^1.75.
 *
 * Blasius' smooth turbulent friction. The maker's own factor for antifreeze goes before it; thick fluid in narrow passages may be laminar, where this does not hold.
 *
 * @param input - see {@link EquipmentDropInput}
 * @returns pressure drop [Pa]
 * @throws InputError for a value out of its range
 * @remarks Derived from `blasius1913`. Invariants tested: the rated fluid at the rated flow gives the rated drop; the powers.
 * @example
 * ```ts @import.meta.vitest
 * const { kilogramsPerCubicMetre, kilopascals, litresPerSecond, millipascalSeconds } = await import('../units/index.js');
 * const drop = equipmentDrop({
 *   waterSide: {
 *     ratedFlow: litresPerSecond(0.76),
 *     ratedDrop: kilopascals(25),
 *     ratedFluid: { density: kilogramsPerCubicMetre(999.7), viscosity: millipascalSeconds(1.306) },
 *   },
 *   fluid: { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) },
 *   flow: litresPerSecond(0.76),
 * });
 * expect(kilopascals.of(drop)).toBeCloseTo(33.4, 1);
 * ```
 */
export function equipmentDrop({ waterSide, fluid, flow }: EquipmentDropInput): Pressure {
  demandWaterSide(waterSide);
  demandHydraulic('fluid', fluid);
  demand('flow', 'flow', flow, { atLeast: 0, atMost: 1e3 });
  const { ratedFlow, ratedDrop, ratedFluid } = waterSide;
  const ofFluid = (fluid.density / ratedFluid.density) ** 0.75 * (fluid.viscosity / ratedFluid.viscosity) ** 0.25;
  return (ratedDrop * ofFluid * (flow / ratedFlow) ** 1.75) as Pressure;
}

/** Refuses a rated drop that nothing can have. */
export function demandRated(path: string, rated: RatedDrop): void {
  demandObject(path, rated);
  demand(`${path}.ratedFlow`, 'flow', rated.ratedFlow, { atLeast: 1e-9, atMost: 1e3 });
  demand(`${path}.ratedDrop`, 'pressure', rated.ratedDrop, { atLeast: 0, atMost: 1e8 });
}

/** Refuses a loop side that no heat pump can have. */
export function demandWaterSide(waterSide: RatedWaterSide): void {
  demandRated('waterSide', waterSide);
  demandHydraulic('waterSide.ratedFluid', waterSide.ratedFluid);
}

/** Refuses a fluid that no loop can hold. */
export function demandHydraulic(path: string, fluid: HydraulicFluid): void {
  demandObject(path, fluid);
  demand(`${path}.density`, 'density', fluid.density, { atLeast: 500, atMost: 2000 });
  demand(`${path}.viscosity`, 'dynamic viscosity', fluid.viscosity, { atLeast: 1e-5, atMost: 100 });
}
