import type { HeatSource, Tariff } from '../../src/cost/index.js';
import {
  kilogramsPerKilowattHour,
  megajoulesPerKilogram,
  megajoulesPerLitre,
  money,
  perKilogram,
  perKilowatt,
  perKilowattHour,
  perLitre,
  perTherm,
  ratio,
  type Ratio,
} from '../../src/units/index.js';

// Invented prices, for these tests only.
const prices = { currency: 'EUR', priceYear: 2026 } as const;
export const flat: Tariff = { ...prices, pricing: { type: 'flat', energyPrice: perKilowattHour(0.25) } };
export const byTime: Tariff = {
  ...prices,
  pricing: {
    type: 'by time',
    energyPrice: perKilowattHour(0.2),
    windows: [
      { inMonths: [1, 2, 12], fromHour: 16, toHour: 20, energyPrice: perKilowattHour(0.5) },
      { fromHour: 22, toHour: 6, energyPrice: perKilowattHour(0.1) },
    ],
  },
  monthlyCharge: money(9),
  demandPrice: perKilowatt(4),
  taxRatio: ratio(0.1),
};

const emissionFactor = kilogramsPerKilowattHour(0.25);
/** A boiler told on bases that differ. */
export const oilBoiler: HeatSource = {
  label: 'oil',
  supply: { soldBy: 'volume', volumePrice: perLitre(1.1), volumetricHeatingValue: megajoulesPerLitre(38.5), basis: 'higher' },
  efficiency: ratio(0.92),
  efficiencyBasis: 'lower',
  lowerOverHigher: ratio(0.94),
  emissionFactor,
  emissionBasis: 'lower',
  yearlyCharge: money(180),
};
export const pelletBoiler: HeatSource = {
  label: 'pellets',
  supply: { soldBy: 'mass', massPrice: perKilogram(0.35), gravimetricHeatingValue: megajoulesPerKilogram(17), basis: 'lower' },
  efficiency: ratio(0.88),
  efficiencyBasis: 'lower',
};
export const gasBoiler: HeatSource = {
  label: 'gas',
  supply: { soldBy: 'energy', energyPrice: perTherm(1.4), basis: 'higher' },
  efficiency: ratio(0.92),
  efficiencyBasis: 'higher',
  emissionFactor,
};
export const heatPump = (performance: Ratio): HeatSource => ({
  label: 'ground source',
  supply: { soldBy: 'electricity', energyPrice: perKilowattHour(0.16) },
  efficiency: performance,
  emissionFactor: kilogramsPerKilowattHour(0.4),
});
