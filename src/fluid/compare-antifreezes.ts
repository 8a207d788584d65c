import { demandCount, locate } from '../errors/index.js';
import type { Diameter, MassFraction, Ratio, Shape, Temperature, VolumeFraction } from '../units/index.js';
import type { FluidName, FluidUse } from './fluid-record.js';
import { type AnyFluid, demandFluid, FLUID_NAMES, FLUID_RECORD_NAMES } from './fluids.js';
import { type FluidTransport, fluidTransport, fluidTransportShape } from './fluid-transport.js';
import { freezingPoint } from './freezing.js';
import { type FreezingRule, leastMassFraction } from './least-mass-fraction.js';
import { fluidPropertyBands } from './property-bands.js';
import { massFromVolumeFraction, volumeFromMassFraction } from './volume-share.js';
import { warmestFreezingPoint } from './warmest-freezing-point.js';

/** Fluids to be compared at the same protection. */
export interface AntifreezeComparison {
  /** The fluids, by name or record. */
  readonly fluids: readonly AnyFluid[];
  /** The freezing point of none may lie above this [degC]. */
  readonly protectTo: Temperature;
  /** Whose freezing point that is; the warmest source's when left out. */
  readonly freezingRule?: FreezingRule;
  /** Mean temperature of the fluid in the coldest weeks [degC]. */
  readonly temperature: Temperature;
  /** Inside diameter of one circuit [m]. */
  readonly insideDiameter: Diameter;
}

/** {@link AntifreezeComparison} of fluids that have a name, as a document gives it. */
export const antifreezeComparisonShape: Shape<NamedComparison> = {
  fluids: { list: FLUID_NAMES },
  protectTo: 'temperature',
  freezingRule: { optional: ['fit', 'warmest source'] },
  temperature: 'temperature',
  insideDiameter: 'diameter',
};
type NamedComparison = Omit<AntifreezeComparison, 'fluids'> & { readonly fluids: readonly Extract<AnyFluid, string>[] };

/** One fluid of the comparison. */
export interface ComparedAntifreeze {
  /** The fluid. */
  readonly fluid: FluidName;
  /** Whether it may go into a house's loop without asking; only those that may are ranked. */
  readonly use: FluidUse;
  /** Place among those for houses, 1 the least pump power; absent for all others. */
  readonly rank?: number;
  /** Mass share that protects, not below what inhibitors need [kg/kg]. */
  readonly massFraction: MassFraction;
  /** The same by volume at 20 °C; absent for a salt [m3/m3]. */
  readonly volumeFraction?: VolumeFraction;
  /** Where it freezes by the fit [degC]. */
  readonly freezingPoint: Temperature;
  /** Where it freezes by the warmest of the sources compared [degC]. */
  readonly warmestFreezingPoint: Temperature;
  /** What set the share. */
  readonly governedBy: 'protection' | 'inhibitor floor';
  /** How it flows and what it costs beside water. */
  readonly expected: FluidTransport;
  /** The same at the lower limit of its viscosity. */
  readonly thinnest: FluidTransport;
  /** The same at the upper limit. */
  readonly thickest: FluidTransport;
}

/** Shape of {@link ComparedAntifreeze}. */
export const comparedAntifreezeShape: Shape<ComparedAntifreeze> = {
  fluid: FLUID_RECORD_NAMES,
  use: ['house', 'check local code', 'written consent'],
  rank: { optional: 'count' },
  massFraction: 'mass fraction',
  volumeFraction: { optional: 'volume fraction' },
  freezingPoint: 'temperature',
  warmestFreezingPoint: 'temperature',
  governedBy: ['protection', 'inhibitor floor'],
  expected: fluidTransportShape,
  thinnest: fluidTransportShape,
  thickest: fluidTransportShape,
};

/**
 * What each antifreeze costs in film, head and pump power at the same protection.
 *
 * Ranked by pump power in turbulent flow, and only among fluids that units for houses are made for: a fluid that some places forbid or that
 * needs the unit maker's written consent stands in its place of the list without a rank, however well it flows. No prices. What the
 * ranking leaves open shows in the columns for the ends of the viscosity.
 *
 * @param comparison - fluids, protection temperature [degC], temperature in the cold [degC], bore [m]
 * @returns one row for each fluid, in the order given
 * @throws InputError when there is no fluid, one cannot protect so far, or the temperature is below a freezing point
 * @remarks
 * Source: `melinder2010`, `inhibitedGlycolSheets`; see `fluidTransport` for the ratios.
 *
 * Invariants: no row freezes above `protectTo`; ranks are 1, 2, 3 … of the fluids for houses alone.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, diameterMillimetres } = await import('../units/index.js');
 * const { ETHANOL } = await import('./ethanol.data.js');
 * const { METHANOL } = await import('./methanol.data.js');
 * const at = { protectTo: celsius(-9.6), temperature: celsius(-2), insideDiameter: diameterMillimetres(26.2) };
 * const rows = compareAntifreezes({ fluids: ['propylene-glycol', ETHANOL, METHANOL], ...at });
 * expect(rows.map(({ rank }) => rank)).toEqual([2, 1, undefined]);
 * ```
 */
export function compareAntifreezes(comparison: AntifreezeComparison): readonly ComparedAntifreeze[] {
  const { fluids } = comparison;
  demandCount('fluids', fluids, 1);
  const rows = fluids.map((fluid, index) => {
    locate(`fluids.${String(index)}`, () => demandFluid(fluid));
    return compared(fluid, comparison);
  });
  const ranked = rows.filter(({ use }) => use === 'house').sort((one, other) => one.expected.pumpPowerRatio - other.expected.pumpPowerRatio);
  return rows.map((row) => ({ ...row, ...(row.use === 'house' && { rank: ranked.indexOf(row) + 1 }) }));
}

function compared(fluid: AnyFluid, comparison: AntifreezeComparison): ComparedAntifreeze {
  const { protectTo, freezingRule = 'warmest source', temperature, insideDiameter } = comparison;
  const { name, use, inhibitorFloor, pureDensity } = demandFluid(fluid);
  const least = leastMassFraction(demandFluid(fluid), protectTo, freezingRule);
  const floor = inhibitorFloor === 0 ? 0 : massFromVolumeFraction({ fluid, volumeFraction: inhibitorFloor as VolumeFraction });
  const massFraction = Math.max(least, floor) as MassFraction;
  const { expected, viscosity } = fluidPropertyBands({ fluid, massFraction, temperature });
  const transport = (bound: number): FluidTransport =>
    fluidTransport({ fluid, massFraction, temperature, insideDiameter, viscosityFactor: (bound / expected.viscosity) as Ratio });
  return {
    fluid: name,
    use,
    massFraction,
    ...(pureDensity > 0 && { volumeFraction: volumeFromMassFraction({ fluid, massFraction }) }),
    freezingPoint: freezingPoint({ fluid, massFraction }),
    warmestFreezingPoint: warmestFreezingPoint({ fluid, massFraction }),
    governedBy: least < floor ? 'inhibitor floor' : 'protection',
    expected: transport(expected.viscosity),
    thinnest: transport(viscosity.low),
    thickest: transport(viscosity.high),
  };
}
