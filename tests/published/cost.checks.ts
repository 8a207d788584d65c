import {
  breakEvenPerformance,
  capitalRecoveryFactor,
  costOfHeat,
  escalatedPresentValue,
  fuelFacts,
  type FuelName,
  fuelUse,
  type FuelUseResult,
  type HeatSource,
  investmentMeasures,
  type InvestmentMeasures,
  lifeCycleCost,
  type Payback,
  singlePresentValue,
  uniformPresentValue,
} from '../../src/cost/index.js';
import {
  cubicFeet,
  gallons,
  joules,
  kilogramsPerGigajoule,
  kilogramsPerKilowattHour,
  kilogramsPerMillionBtu,
  kilograms,
  kilowattHours,
  millionBtu,
  money,
  perGallon,
  perKilowattHour,
  percentPerYear,
  perTherm,
  ratio,
} from '../../src/units/index.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { caseChecks, type CaseInputs } from '../support/load-cases.js';
import { fromFixture, type PublishedCheck, type PublishedValue } from '../support/published.js';

const factors = loadFixture('load-discount-factors');
const fuels = loadFixture('load-fuels');

const factorCheck = (column: string, quantity: string, of: (years: number) => number): PublishedCheck =>
  fromFixture(factors, {
    id: `LD-discount ${column}`,
    room: 'cost',
    quantity,
    column,
    label: (row) => `${row.text('years')} a`,
    compute: (row) => of(row.number('years')),
  });

const uniform = (percent: number) => (years: number) => uniformPresentValue({ discountRate: percentPerYear(percent), years });
const escalated = (percent: number, rise: number) => (years: number) =>
  escalatedPresentValue({ discountRate: percentPerYear(percent), escalation: percentPerYear(rise), years });

/** The names of the table of the regulation in the words of the library. */
const FUEL: Readonly<Record<string, FuelName>> = {
  'distillate fuel oil No. 1': 'fuel oil no. 1',
  'distillate fuel oil No. 2 (heating oil)': 'fuel oil no. 2',
  kerosene: 'kerosene',
  propane: 'propane',
  LPG: 'liquefied petroleum gas',
  butane: 'butane',
  'natural gas (US average)': 'natural gas',
};

const isGas = (row: FixtureRow): boolean => row.text('unit') === 'scf';
/** Heat of one unit of a fuel and its emissions, burnt without loss. */
const oneUnit = (row: FixtureRow): FuelUseResult => {
  const name = FUEL[row.text('fuel')];
  if (name === undefined) throw new Error(`no fuel ${row.text('fuel')}`);
  const { volumetricHeatingValue, basis } = fuelFacts(name);
  const volume = isGas(row) ? cubicFeet(1) : gallons(1);
  const supply = { soldBy: 'volume', volumePrice: perGallon(0), volumetricHeatingValue, basis } as const;
  const emissionFactor = kilogramsPerMillionBtu(row.number('CO2_kg_per_MMBtu_HHV'));
  const source: HeatSource = { label: name, supply, efficiency: ratio(1), efficiencyBasis: 'higher', emissionFactor };
  return fuelUse({ energy: joules(volume * volumetricHeatingValue), source });
};

const fuelCheck = (column: string, quantity: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(fuels, { id: `LD-fuel ${column}`, room: 'cost', quantity, column, label: (row) => row.text('fuel'), compute });

const perHeat = (row: FixtureRow): NonNullable<FuelUseResult['heatEmissionFactor']> => {
  const { heatEmissionFactor } = oneUnit(row);
  if (heatEmissionFactor === undefined) throw new Error('emissions were asked for');
  return heatEmissionFactor;
};

const OIL = kilogramsPerMillionBtu(73.96);
const oilHeat = ({ eff }: CaseInputs): number => {
  const supply = { soldBy: 'energy', energyPrice: perTherm(0), basis: 'higher' } as const;
  const source: HeatSource = { label: 'oil', supply, efficiency: ratio(Number(eff)), efficiencyBasis: 'higher', emissionFactor: OIL };
  const { heatEmissionFactor } = fuelUse({ energy: kilowattHours(1), source });
  return heatEmissionFactor === undefined ? Number.NaN : kilogramsPerKilowattHour.of(heatEmissionFactor);
};
const breakEven = ({ grid_kg_per_kWh, eff }: CaseInputs): number =>
  breakEvenPerformance({
    gridEmissionFactor: kilogramsPerKilowattHour(Number(grid_kg_per_kWh)),
    emissionFactor: OIL,
    efficiency: ratio(Number(eff)),
  });
const gasHeat = ({ usd_per_therm, eff }: CaseInputs): number => {
  const supply = { soldBy: 'energy', energyPrice: perTherm(Number(usd_per_therm)), basis: 'higher' } as const;
  return perKilowattHour.of(costOfHeat({ label: 'gas', supply, efficiency: ratio(Number(eff)), efficiencyBasis: 'higher' }));
};

const upv = ({ d, n }: CaseInputs): number => uniform(100 * Number(d))(Number(n));
const upvStar = ({ d, e, n }: CaseInputs): number => escalated(100 * Number(d), 100 * Number(e))(Number(n));
const lcc = ({ initial, replacement, rep_year, residual, energy, e, om, d, n }: CaseInputs): number =>
  lifeCycleCost({
    plan: {
      label: 'worked case',
      firstCost: money(Number(initial)),
      replacements: [{ year: Number(rep_year), replacementCost: money(Number(replacement)) }],
      residualValue: money(Number(residual)),
      yearlyEnergyCost: money(Number(energy)),
      yearlyUpkeep: money(Number(om)),
    },
    escalation: percentPerYear(100 * Number(e)),
    discountRate: percentPerYear(100 * Number(d)),
    years: Number(n),
  }).lifeCycleCost;

/** Extra cost 13 000, saving 1278.288 a year, 3 %, 20 years. */
const worked = (): InvestmentMeasures =>
  investmentMeasures({ extraCost: money(13_000), yearlySaving: money(1278.288), discountRate: percentPerYear(3), years: 20 });
const yearsOf = (payback: Payback): number => (payback.outcome === 'paid back' ? payback.paybackYears : Number.NaN);
const printed = (label: string, expected: number, absolute: number, compute: () => number): PublishedValue => ({
  label,
  expected,
  compute,
  tolerance: { absolute, reason: 'half a unit of the last printed digit' },
});

const investmentCheck: PublishedCheck = {
  id: 'LD-investment',
  room: 'cost',
  quantity: 'payback, net savings, savings to investment, adjusted return',
  unit: 'a, cur, 1, %',
  source: 'worked case with invented amounts, formulas of NIST Handbook 135',
  seen: 'computed independently',
  tolerance: { relative: 1e-4, reason: 'each value brings its own, half a unit of its last printed digit' },
  values: [
    printed('simple payback', 10.17, 5.01e-4, () => yearsOf(worked().simplePayback)),
    printed('discounted payback', 12.314, 5.01e-4, () => yearsOf(worked().discountedPayback)),
    printed('net savings', 6017.7, 5.01e-3, () => worked().netSavings),
    printed('savings to investment', 1.4629, 5.01e-7, () => worked().savingsToInvestment ?? Number.NaN),
    printed('adjusted return', 4.978, 5.01e-4, () => percentPerYear.of(worked().adjustedReturn ?? percentPerYear(0))),
  ],
};

/** The factors as printed tables have them; the worked cases hold the same to nine digits. */
const tableCheck: PublishedCheck = {
  id: 'LD-UPV tables',
  room: 'cost',
  quantity: 'uniform present value as printed',
  unit: '1',
  source: 'a compound-interest table for 0.25 % (vdocuments.us/discrete-cash-flow.html), read; a federal table for 3 %, recalled',
  seen: 'quoted',
  tolerance: { absolute: 5.01e-3, reason: 'half a unit of the last printed digit' },
  values: [
    printed('0.25 %, 20 periods', 19.4845, 5.01e-5, () => uniform(0.25)(20)),
    ...[
      [10, 8.53],
      [15, 11.94],
      [20, 14.88],
      [25, 17.41],
      [30, 19.6],
    ].map(([years = 0, expected = 0]) => printed(`3 %, ${String(years)} a, recalled`, expected, 5.01e-3, () => uniform(3)(years))),
  ],
};

export const costChecks: readonly PublishedCheck[] = [
  ...caseChecks('cost', [
    ...['L24-10', 'L24-15', 'L24-20', 'L24-25', 'L24-30', 'L24-q', 'M13-0-20'].map((id) => [id, 'uniform present value', upv] as const),
    ...['L24-e', 'M13-eq'].map((id) => [id, 'uniform present value under escalation', upvStar] as const),
    ['L24-lcc', 'life-cycle cost', lcc],
    ['L25a', 'emissions of heat from oil', oilHeat],
    ['L25b', 'break-even performance against oil', breakEven],
    ['M14d', 'price of heat from gas', gasHeat],
  ]),
  factorCheck('SPV_3pct', 'single present value, 3 %', (years) => singlePresentValue({ discountRate: percentPerYear(3), years })),
  factorCheck('UPV_3pct', 'uniform present value, 3 %', uniform(3)),
  factorCheck('UPV_5pct', 'uniform present value, 5 %', uniform(5)),
  factorCheck('UPV_7pct', 'uniform present value, 7 %', uniform(7)),
  factorCheck('UPVstar_d3_e1', 'uniform present value, 3 %, prices rising 1 %', escalated(3, 1)),
  factorCheck('UPVstar_d3_e2', 'uniform present value, 3 %, prices rising 2 %', escalated(3, 2)),
  factorCheck('UPVstar_d5_e2', 'uniform present value, 5 %, prices rising 2 %', escalated(5, 2)),
  factorCheck('CRF_5pct', 'capital recovery factor, 5 %', (years) => capitalRecoveryFactor({ discountRate: percentPerYear(5), years })),
  fuelCheck('HHV_MMBtu_per_unit', 'heating value', (row) => millionBtu.of(oneUnit(row).boughtEnergy)),
  fuelCheck('HHV_kWh_per_unit', 'heating value', (row) => kilowattHours.of(oneUnit(row).boughtEnergy)),
  fuelCheck('CO2_kg_per_kWh_HHV', 'emissions of heat burnt without loss', (row) => kilogramsPerKilowattHour.of(perHeat(row))),
  fuelCheck('CO2_kg_per_GJ_HHV', 'emissions of heat burnt without loss', (row) => kilogramsPerGigajoule.of(perHeat(row))),
  fuelCheck('CO2_kg_per_unit', 'emissions of one unit', (row) => kilograms.of(oneUnit(row).emissions ?? kilograms(0))),
  investmentCheck,
  tableCheck,
];
