// An invented set of prices, efficiencies and emission factors, dated 2026. Nothing in it is a quotation; put your own bills in its place.
// The emissions of the fuels are those of table C-1, 40 CFR 98; those of the grid are invented, too.
import { fuelFacts, type HeatSource, type Tariff } from 'loamloop/cost';
import type { UnitSystem } from 'loamloop/report';
import {
  gramsPerKilowattHour,
  kilogramsPerMillionBtu,
  type LengthPrice,
  money,
  type Money,
  perFoot,
  perGallon,
  perKilowattHour,
  perLitre,
  perMetre,
  perTherm,
  ratio,
  type EmissionFactor,
  type EnergyPrice,
} from 'loamloop/units';

/** What an example of costs takes. */
export interface ExamplePrices {
  readonly tariff: Tariff;
  readonly energyPrice: EnergyPrice;
  /** Boilers; the first is what would be put in otherwise. */
  readonly boilers: readonly HeatSource[];
  readonly grid: readonly { readonly year: number; readonly gridEmissionFactor: EmissionFactor }[];
  readonly boilerCost: Money;
  /** Unit with all that is inside the house. */
  readonly unitCost: Money;
  /** Pipe in the ground: digging, pipe, fill. */
  readonly lengthPrice: LengthPrice;
}

const OIL = kilogramsPerMillionBtu(73.96);
const PROPANE = kilogramsPerMillionBtu(62.87);
const GAS = kilogramsPerMillionBtu(53.06);
const grid = (now: number, later: number): ExamplePrices['grid'] => [
  { year: 2026, gridEmissionFactor: gramsPerKilowattHour(now) },
  { year: 2045, gridEmissionFactor: gramsPerKilowattHour(later) },
];
const oil = fuelFacts('fuel oil no. 2');
const propane = fuelFacts('propane');
const { basis } = oil;

const metricPrice = perKilowattHour(0.28);
const usPrice = perKilowattHour(0.16);

/** By the units of the reader: euros and boilers rated on the lower heating value, or dollars and the higher. */
export const EXAMPLE_PRICES: Readonly<Record<UnitSystem, ExamplePrices>> = {
  metric: {
    tariff: {
      currency: 'EUR',
      priceYear: 2026,
      pricing: { type: 'flat', energyPrice: metricPrice },
      monthlyCharge: money(8),
    },
    energyPrice: metricPrice,
    boilers: [
      {
        label: 'oil, condensing',
        supply: { soldBy: 'volume', volumePrice: perLitre(1.15), volumetricHeatingValue: oil.volumetricHeatingValue, basis },
        efficiency: ratio(0.95),
        efficiencyBasis: 'lower',
        lowerOverHigher: oil.lowerOverHigher,
        emissionFactor: OIL,
        yearlyCharge: money(280),
      },
      {
        label: 'propane',
        supply: { soldBy: 'volume', volumePrice: perLitre(0.85), volumetricHeatingValue: propane.volumetricHeatingValue, basis },
        efficiency: ratio(1),
        efficiencyBasis: 'lower',
        lowerOverHigher: propane.lowerOverHigher,
        emissionFactor: PROPANE,
        yearlyCharge: money(240),
      },
      {
        label: 'gas by the pipe',
        supply: { soldBy: 'energy', energyPrice: perKilowattHour(0.11), basis },
        efficiency: ratio(0.92),
        efficiencyBasis: 'higher',
        emissionFactor: GAS,
        yearlyCharge: money(320),
      },
    ],
    grid: grid(320, 60),
    boilerCost: money(14_000),
    unitCost: money(21_000),
    lengthPrice: perMetre(16),
  },
  us: {
    tariff: { currency: 'USD', priceYear: 2026, pricing: { type: 'flat', energyPrice: usPrice }, monthlyCharge: money(12), taxRatio: ratio(0.03) },
    energyPrice: usPrice,
    boilers: [
      {
        label: 'oil',
        supply: { soldBy: 'volume', volumePrice: perGallon(3.8), volumetricHeatingValue: oil.volumetricHeatingValue, basis },
        efficiency: ratio(0.85),
        efficiencyBasis: 'higher',
        emissionFactor: OIL,
        yearlyCharge: money(250),
      },
      {
        label: 'propane',
        supply: { soldBy: 'volume', volumePrice: perGallon(2.6), volumetricHeatingValue: propane.volumetricHeatingValue, basis },
        efficiency: ratio(0.94),
        efficiencyBasis: 'higher',
        emissionFactor: PROPANE,
        yearlyCharge: money(200),
      },
      {
        label: 'gas by the pipe',
        supply: { soldBy: 'energy', energyPrice: perTherm(1.4), basis },
        efficiency: ratio(0.92),
        efficiencyBasis: 'higher',
        emissionFactor: GAS,
        yearlyCharge: money(220),
      },
    ],
    grid: grid(370, 120),
    boilerCost: money(11_000),
    unitCost: money(19_000),
    lengthPrice: perFoot(5),
  },
};
