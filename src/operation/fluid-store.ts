import { demand, demandObject, locate } from '../errors/index.js';
import type { Diameter, HeatCapacity, Shape } from '../units/index.js';

/** What fluid and wall of the pipes store, per metre of pipe. */
export interface FluidStore {
  /** Bore, above 0 to 2 [m]. */
  readonly insideDiameter: Diameter;
  /** Outside of the pipe, at least the bore, to 2 [m]. */
  readonly outsideDiameter: Diameter;
  /** Heat capacity of the fluid by volume: density times specific heat, 0 to 1e7 [J/(m3.K)]. */
  readonly heatCapacity: HeatCapacity;
  /** The same of the pipe wall, 0 to 1e7; 2.1 MJ/(m3.K) as of polyethylene when left out [J/(m3.K)]. */
  readonly wallHeatCapacity?: HeatCapacity;
}

/** Shape of {@link FluidStore}. */
export const fluidStoreShape: Shape<FluidStore> = {
  insideDiameter: 'diameter',
  outsideDiameter: 'diameter',
  heatCapacity: 'heat capacity',
  wallHeatCapacity: { optional: 'heat capacity' },
};

/** Polyethylene: 950 kg/m3 times some 2200 J/(kg.K) near 10 degC [J/(m3.K)]. */
const POLYETHYLENE = 2.1e6;

/** Refuses a store that cannot be. */
export function demandStore(argument: string, store: FluidStore): void {
  demandObject(argument, store);
  const { insideDiameter, outsideDiameter, heatCapacity, wallHeatCapacity } = store;
  locate(argument, () => {
    demand('insideDiameter', 'diameter', insideDiameter, { above: 0, atMost: 2 });
    demand('outsideDiameter', 'diameter', outsideDiameter, { atLeast: insideDiameter, atMost: 2 });
    demand('heatCapacity', 'heat capacity', heatCapacity, { atLeast: 0, atMost: 1e7 });
    if (wallHeatCapacity !== undefined) demand('wallHeatCapacity', 'heat capacity', wallHeatCapacity, { atLeast: 0, atMost: 1e7 });
  });
}

/**
 * Heat that a metre of pipe stores with each kelvin, fluid and wall at one temperature.
 *
 * @param store - checked
 * @returns [J/(m.K)]
 */
export function storedPerLength({
  insideDiameter,
  outsideDiameter,
  heatCapacity,
  wallHeatCapacity = POLYETHYLENE as HeatCapacity,
}: FluidStore): number {
  const bore = insideDiameter * insideDiameter;
  return (Math.PI / 4) * (bore * heatCapacity + (outsideDiameter * outsideDiameter - bore) * wallHeatCapacity);
}
