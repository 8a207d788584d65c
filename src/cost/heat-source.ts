import { demand, demandChoice, demandObject, InputError } from '../errors/index.js';
import type {
  EmissionFactor,
  EnergyPrice,
  HeatingValueByMass,
  HeatingValueByVolume,
  MassPrice,
  Money,
  Ratio,
  Shape,
  VolumePrice,
} from '../units/index.js';
import { BASES, EFFICIENCY, type HeatingBasis, LOWER_OVER_HIGHER } from './heating-basis.js';
import { demandText, EMISSION, ENERGY_PRICE, MONEY } from './limits.js';

/** How an energy is sold: what it costs, and what is in it. */
export type EnergySupply =
  | {
      /** By volume: oil, propane, gas by the meter. */
      readonly soldBy: 'volume';
      /** Price, 0 to 1e9 [cur/m3]. */
      readonly volumePrice: VolumePrice;
      /** Heat in it, 1e5 to 1e12 [J/m3]. */
      readonly volumetricHeatingValue: HeatingValueByVolume;
      /** Which heating value that is. */
      readonly basis: HeatingBasis;
    }
  | {
      /** By mass: pellets, coal, wood. */
      readonly soldBy: 'mass';
      /** Price, 0 to 1e6 [cur/kg]. */
      readonly massPrice: MassPrice;
      /** Heat in it, 1e5 to 2e8 [J/kg]. */
      readonly gravimetricHeatingValue: HeatingValueByMass;
      /** Which heating value that is. */
      readonly basis: HeatingBasis;
    }
  | {
      /** By energy: gas by the therm or the kilowatt hour. */
      readonly soldBy: 'energy';
      /** Price, 0 to 0.01 [cur/J]. */
      readonly energyPrice: EnergyPrice;
      /** Which heating value is billed; gas mostly by the higher one. */
      readonly basis: HeatingBasis;
    }
  | {
      /** Electricity, or heat from a network: no heating value. */
      readonly soldBy: 'electricity';
      /** Price, 0 to 0.01 [cur/J]. */
      readonly energyPrice: EnergyPrice;
    };

/** One way of making heat, with its price and emissions as the caller has them. */
export interface HeatSource {
  /** What it is called. */
  readonly label: string;
  /** What it burns or draws. */
  readonly supply: EnergySupply;
  /** Heat over energy bought, over a season, 0.05 to 15: efficiency of a boiler, 1 of an electric heater, seasonal performance factor of a heat pump [1]. */
  readonly efficiency: Ratio;
  /** Heating value that the efficiency counts on; needed with a fuel, none with electricity. */
  readonly efficiencyBasis?: HeatingBasis;
  /** Lower over higher heating value, 0.5 to 1; needed where two bases meet [1]. */
  readonly lowerOverHigher?: Ratio;
  /** Emissions per energy bought, 0 to 1e-5; not reckoned when left out [kg/J]. */
  readonly emissionFactor?: EmissionFactor;
  /** Heating value that the emissions count on; that of the supply when left out, none with electricity. */
  readonly emissionBasis?: HeatingBasis;
  /** Paid each year whatever is used: meter, sweep, service, electricity of the blower, 0 to 1e13; nothing when left out [cur]. */
  readonly yearlyCharge?: Money;
}

/** Shape of {@link HeatSource}. */
export const heatSourceShape: Shape<HeatSource> = {
  label: 'text',
  supply: {
    by: 'soldBy',
    oneOf: {
      volume: { volumePrice: 'volume price', volumetricHeatingValue: 'heating value by volume', basis: ['higher', 'lower'] },
      mass: { massPrice: 'mass price', gravimetricHeatingValue: 'heating value by mass', basis: ['higher', 'lower'] },
      energy: { energyPrice: 'energy price', basis: ['higher', 'lower'] },
      electricity: { energyPrice: 'energy price' },
    },
  },
  efficiency: 'ratio',
  efficiencyBasis: { optional: ['higher', 'lower'] },
  lowerOverHigher: { optional: 'ratio' },
  emissionFactor: { optional: 'emission factor' },
  emissionBasis: { optional: ['higher', 'lower'] },
  yearlyCharge: { optional: 'money' },
};

/** Refuses a way of making heat that says too little of itself, or numbers on bases that cannot be brought together. */
export function demandHeatSource(source: HeatSource): void {
  const { label, supply, efficiency, efficiencyBasis, lowerOverHigher, emissionFactor, emissionBasis, yearlyCharge } = source;
  demandText('label', label);
  demandObject('supply', supply);
  demandChoice('supply.soldBy', supply.soldBy, ['volume', 'mass', 'energy', 'electricity']);
  demandSupply(supply);
  demand('efficiency', 'ratio', efficiency, EFFICIENCY);
  if (lowerOverHigher !== undefined) demand('lowerOverHigher', 'ratio', lowerOverHigher, LOWER_OVER_HIGHER);
  if (emissionFactor !== undefined) demand('emissionFactor', 'emission factor', emissionFactor, EMISSION);
  if (yearlyCharge !== undefined) demand('yearlyCharge', 'money', yearlyCharge, MONEY);
  if (supply.soldBy === 'electricity') {
    for (const [name, basis] of Object.entries({ efficiencyBasis, emissionBasis })) if (basis !== undefined) refuseBasis(name, basis);
    return;
  }
  if (efficiencyBasis === undefined) {
    const allowed = 'the heating value that the efficiency counts on, "higher" or "lower"';
    throw new InputError({ code: 'missing', argument: 'efficiencyBasis', value: undefined, allowed });
  }
  demandChoice('efficiencyBasis', efficiencyBasis, BASES);
  if (emissionBasis !== undefined) demandChoice('emissionBasis', emissionBasis, BASES);
  const bases = new Set([supply.basis, efficiencyBasis, emissionBasis ?? supply.basis]);
  if (bases.size > 1 && lowerOverHigher === undefined) {
    const allowed = 'the ratio of lower to higher heating value, since the price, the efficiency and the emissions count on different ones';
    throw new InputError({ code: 'missing', argument: 'lowerOverHigher', value: undefined, allowed });
  }
}

function refuseBasis(argument: string, value: string): never {
  demandChoice(argument, value, BASES);
  throw new InputError({ code: 'impossible', argument, value, allowed: 'nothing, since electricity has no heating value' });
}

function demandSupply(supply: EnergySupply): void {
  switch (supply.soldBy) {
    case 'volume':
      demand('supply.volumePrice', 'volume price', supply.volumePrice, { atLeast: 0, atMost: 1e9 });
      demand('supply.volumetricHeatingValue', 'heating value by volume', supply.volumetricHeatingValue, { atLeast: 1e5, atMost: 1e12 });
      break;
    case 'mass':
      demand('supply.massPrice', 'mass price', supply.massPrice, { atLeast: 0, atMost: 1e6 });
      demand('supply.gravimetricHeatingValue', 'heating value by mass', supply.gravimetricHeatingValue, { atLeast: 1e5, atMost: 2e8 });
      break;
    case 'energy':
    case 'electricity':
      demand('supply.energyPrice', 'energy price', supply.energyPrice, ENERGY_PRICE);
  }
  if (supply.soldBy !== 'electricity') demandChoice('supply.basis', supply.basis, BASES);
}
