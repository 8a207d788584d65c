import { demand, demandObject, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { EmissionFactor, Energy, EnergyPrice, Mass, Money, Ratio, Shape, Volume } from '../units/index.js';
import { demandHeatSource, type EnergySupply, type HeatSource, heatSourceShape } from './heat-source.js';
import { energyRatio } from './heating-basis.js';
import { YEARLY_ENERGY } from './limits.js';

/** What {@link fuelUse} needs. */
export interface FuelUseInput {
  /** Heat wanted over the year, 0 to 1e16 [J]. */
  readonly energy: Energy;
  /** What makes it. */
  readonly source: HeatSource;
}

/** Shape of {@link FuelUseInput}. */
export const fuelUseInputShape: Shape<FuelUseInput> = { energy: 'energy', source: heatSourceShape };

/** What a year of heat takes, costs and emits. */
export interface FuelUse {
  /** What makes the heat. */
  readonly label: string;
  /** Efficiency on the basis of the supply [1]. */
  readonly usedEfficiency: Ratio;
  /** Energy bought, on the basis of the supply [J]. */
  readonly boughtEnergy: Energy;
  /** Volume bought, where it is sold by volume [m3]. */
  readonly boughtVolume?: Volume;
  /** Mass bought, where it is sold by mass [kg]. */
  readonly boughtMass?: Mass;
  /** Cost of that [cur]. */
  readonly energyCost: Money;
  /** Paid whatever is used [cur]. */
  readonly fixedCost: Money;
  /** Both together [cur]. */
  readonly totalCost: Money;
  /** What one more unit of heat costs, without what is paid anyway [cur/J]. */
  readonly heatPrice: EnergyPrice;
  /** Emissions per heat; absent where they are not reckoned [kg/J]. */
  readonly heatEmissionFactor?: EmissionFactor;
  /** Emissions of the year [kg]. */
  readonly emissions?: Mass;
}

/** Shape of {@link FuelUse}. */
export const fuelUseShape: Shape<FuelUse> = {
  label: 'text',
  usedEfficiency: 'ratio',
  boughtEnergy: 'energy',
  boughtVolume: { optional: 'volume' },
  boughtMass: { optional: 'mass' },
  energyCost: 'money',
  fixedCost: 'money',
  totalCost: 'money',
  heatPrice: 'energy price',
  heatEmissionFactor: { optional: 'emission factor' },
  emissions: { optional: 'mass' },
};

/** {@link FuelUse} with findings. */
export interface FuelUseResult extends FuelUse {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/**
 * What a year of heat takes of a fuel or of electricity, what it costs and what it emits.
 *
 * Price, efficiency and emissions may count on different heating values; they are brought to that of the supply with the ratio given, and an efficiency
 * that was converted is a finding. Without the ratio the mixture is refused.
 *
 * @param input - heat [J] and what makes it
 * @returns energy [J], amount [m3, kg], cost [cur], emissions [kg]
 * @throws InputError when a number is out of its range, or bases are mixed without their ratio
 * @remarks Invariants tested: linear in heat and in price; the same amount of fuel on either basis.
 * @example
 * ```ts @import.meta.vitest
 * const { gallons, kilowattHours, perGallon, ratio } = await import('../units/index.js');
 * const { fuelFacts } = await import('./fuel-facts.js');
 * const { volumetricHeatingValue, basis } = fuelFacts('fuel oil no. 2');
 * const supply = { soldBy: 'volume', volumePrice: perGallon(3.8), volumetricHeatingValue, basis } as const;
 * const source = { label: 'oil boiler', supply, efficiency: ratio(0.85), efficiencyBasis: 'higher' } as const;
 * const { boughtVolume, totalCost } = fuelUse({ energy: kilowattHours(20_000), source });
 * expect(boughtVolume && gallons.of(boughtVolume)).toBeCloseTo(581.78, 2);
 * expect(totalCost).toBeCloseTo(2210.77, 2);
 * ```
 */
export function fuelUse({ energy, source }: FuelUseInput): FuelUseResult {
  demand('energy', 'energy', energy, YEARLY_ENERGY);
  demandObject('source', source);
  locate('source', () => demandHeatSource(source));
  const { label, supply, emissionFactor, emissionBasis, lowerOverHigher = 1, yearlyCharge = 0 } = source;
  const basis = supply.soldBy === 'electricity' ? undefined : supply.basis;
  const usedEfficiency = usedEfficiencyOf(source);
  const bought = energy / usedEfficiency;
  const heatPrice = priceInSupply(supply) / usedEfficiency;
  // Emissions are brought to the basis of the supply as the efficiency is; a factor per lower heating value counts less energy.
  const factor =
    emissionFactor === undefined
      ? undefined
      : emissionFactor * (basis === undefined ? 1 : energyRatio(emissionBasis ?? basis, basis, lowerOverHigher));
  return {
    label,
    usedEfficiency: usedEfficiency as Ratio,
    boughtEnergy: bought as Energy,
    ...(supply.soldBy === 'volume' ? { boughtVolume: (bought / supply.volumetricHeatingValue) as Volume } : {}),
    ...(supply.soldBy === 'mass' ? { boughtMass: (bought / supply.gravimetricHeatingValue) as Mass } : {}),
    energyCost: (energy * heatPrice) as Money,
    fixedCost: yearlyCharge as Money,
    totalCost: (energy * heatPrice + yearlyCharge) as Money,
    heatPrice: heatPrice as EnergyPrice,
    ...(factor === undefined ? {} : { heatEmissionFactor: (factor / usedEfficiency) as EmissionFactor, emissions: (bought * factor) as Mass }),
    findings: findingsOf(source, usedEfficiency as Ratio),
  };
}

/** Efficiency on the basis of the supply. */
function usedEfficiencyOf({ supply, efficiency, efficiencyBasis, lowerOverHigher = 1 as Ratio }: HeatSource): number {
  if (supply.soldBy === 'electricity') return efficiency;
  return efficiency * energyRatio(efficiencyBasis ?? supply.basis, supply.basis, lowerOverHigher);
}

/** Price of the energy in it, on its own basis [cur/J]. */
function priceInSupply(supply: EnergySupply): number {
  if (supply.soldBy === 'volume') return supply.volumePrice / supply.volumetricHeatingValue;
  return supply.soldBy === 'mass' ? supply.massPrice / supply.gravimetricHeatingValue : supply.energyPrice;
}

/** Lower over higher heating value of hydrogen, and of wood that is still moist; of other fuels it is more [1]. */
const LEAST_USUAL_RATIO = 0.84;

function findingsOf({ label, supply, efficiency, efficiencyBasis, lowerOverHigher }: HeatSource, usedEfficiency: Ratio): readonly Finding[] {
  if (supply.soldBy === 'electricity' || efficiencyBasis === undefined) return [];
  const found: Finding[] = [];
  if (efficiencyBasis !== supply.basis && lowerOverHigher !== undefined) {
    const values = { label, givenBasis: efficiencyBasis, efficiency, usedEfficiency, lowerOverHigher };
    found.push({ code: 'efficiency-basis-converted', level: 'note', values, source: 'common practice' });
  }
  // Without the ratio an efficiency on the lower heating value may pass 1 honestly, as far as the wettest of usual fuels lets it.
  const onHigher = usedEfficiency * energyRatio(supply.basis, 'higher', lowerOverHigher ?? LEAST_USUAL_RATIO);
  if (onHigher > 1) {
    found.push({ code: 'efficiency-above-fuel', level: 'warning', values: { label, efficiency: onHigher as Ratio }, source: 'common practice' });
  }
  return found;
}

/**
 * What one unit of heat costs, without what is paid anyway: price/(heating value · efficiency).
 *
 * @param source - what makes the heat
 * @returns price of heat [cur/J]
 * @throws InputError when a number is out of its range, or bases are mixed without their ratio
 * @example
 * ```ts @import.meta.vitest
 * const { perKilowattHour, perTherm, ratio } = await import('../units/index.js');
 * const supply = { soldBy: 'energy', energyPrice: perTherm(1.4), basis: 'higher' } as const;
 * const heatPrice = costOfHeat({ label: 'gas', supply, efficiency: ratio(0.92), efficiencyBasis: 'higher' });
 * expect(perKilowattHour.of(heatPrice)).toBeCloseTo(0.051924, 6);
 * ```
 */
export function costOfHeat(source: HeatSource): EnergyPrice {
  demandObject('source', source);
  demandHeatSource(source);
  return (priceInSupply(source.supply) / usedEfficiencyOf(source)) as EnergyPrice;
}
