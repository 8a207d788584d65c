import {
  binRun,
  degreeDayEnergy,
  energySignature,
  erbsDegreeDays,
  heatingBalancePoint,
  loadAt,
  monthlyLoads,
  runFractions,
  schoenauKehrigDegreeDays,
  type BinRun,
  type EnergySignature,
  type MonthRun,
  type WeatherBin,
} from '../../src/building/index.js';
import {
  btu,
  btuPerHour,
  btuPerHourFahrenheit,
  celsius,
  fahrenheit,
  fahrenheitDays,
  hours,
  kelvinDifference,
  kilowattHours,
  kilowatts,
} from '../../src/units/index.js';
import { caseChecks, type CaseInputs } from '../support/load-cases.js';
import { type PublishedCheck } from '../support/published.js';
import { coolingLine, heatingLine } from './building-lines.js';
import { fullLoadHours, season, seasonChecks } from './building-seasons.checks.js';
import { hourlyLoadChecks } from './building-hours.checks.js';
import { climateLoadChecks, urbanaDegreeDays, urbanaYear } from './building-climate.checks.js';

// --- signatures and balance points
const house = ({ Qdes_kW, Tdes_C, Tin_C, Tbal_C }: CaseInputs) =>
  ({
    mode: 'heating',
    designLoad: kilowatts(Number(Qdes_kW)),
    designOutdoor: celsius(Number(Tdes_C)),
    indoor: celsius(Number(Tin_C)),
    balancePoint: celsius(Number(Tbal_C)),
  }) as const;
const loadOf = (form: EnergySignature['form']) => (inputs: CaseInputs) =>
  kilowatts.of(loadAt(energySignature({ ...house(inputs), form }), celsius(Number(inputs.To_C))));
const residence = ({ Qdes_Btuh, dT_F, Tin_F, gains_Btuh }: CaseInputs) => ({
  designLoad: btuPerHour(Number(Qdes_Btuh)),
  designOutdoor: fahrenheit(Number(Tin_F) - Number(dT_F)),
  indoor: fahrenheit(Number(Tin_F)),
  gains: btuPerHour(Number(gains_Btuh)),
});
const coefficientOf = (inputs: CaseInputs): number => {
  const { designLoad, designOutdoor, indoor, gains } = residence(inputs);
  const balancePoint = heatingBalancePoint({ designLoad, designOutdoor, indoor, gains });
  return btuPerHourFahrenheit.of(
    energySignature({ mode: 'heating', form: 'gains as offset', designLoad, designOutdoor, indoor, balancePoint }).slope,
  );
};

// --- twelve months of which the first is the row's
const months = <T>(first: T, others: T): readonly T[] => [first, ...Array.from({ length: 11 }, () => others)];
const firstMonth = (
  signature: EnergySignature,
  mean: number,
  spread: number,
  capacity: number,
): MonthRun & { readonly balance: number; readonly mean: number } => {
  const loads = monthlyLoads({
    signature,
    meanOutdoor: months(celsius(mean), celsius(18)),
    spread: months(kelvinDifference(spread), kelvinDifference(3)),
  });
  const { months: runs, capacityBalancePoint } = runFractions({ loads, capacity: kilowatts(capacity) });
  const [run] = runs;
  const [load] = loads.months;
  if (run === undefined || load === undefined) throw new Error('twelve months without a first');
  return { ...run, balance: capacityBalancePoint, mean: load.meanLoad };
};
const designMonth = (inputs: CaseInputs) =>
  firstMonth(signatureOf(inputs), Number(inputs.Tmean_C), Number(inputs.sigma_hour_K), Number(inputs.capacity_kW));
/** A line of a given slope: its load 10 K beyond the balance point. */
const signatureOf = ({ slope_kW_per_K, Tbal_C }: CaseInputs): EnergySignature =>
  heatingLine(10 * Number(slope_kW_per_K), Number(Tbal_C) - 10, Number(Tbal_C));
const coolingMonth = ({ slope_kW_per_K, Tbal_C, Tmean_C, sigma_hour_K, capacity_kW }: CaseInputs) =>
  firstMonth(
    coolingLine(10 * Number(slope_kW_per_K), Number(Tbal_C) + 10, Number(Tbal_C)),
    Number(Tmean_C),
    Number(sigma_hour_K),
    Number(capacity_kW),
  );

const covered = ({ climate, ratio }: CaseInputs): number => season(String(climate), 10, 10 * Number(ratio)).coveredShare;
const monthBins = ({ bins_h }: CaseInputs): readonly WeatherBin[] =>
  Object.entries(Object(bins_h)).map(([outdoor, time]) => ({ outdoor: celsius(Number(outdoor)), time: hours(Number(time)) }));
export const binMonth = (inputs: CaseInputs): BinRun =>
  binRun({ signature: signatureOf(inputs), bins: monthBins(inputs), capacity: kilowatts(Number(inputs.capacity_kW)) });

const normal = ({ Tb_C, Tm_C, sigma_day_K, N }: CaseInputs): number =>
  schoenauKehrigDegreeDays({
    base: celsius(Number(Tb_C)),
    meanOutdoor: celsius(Number(Tm_C)),
    spread: kelvinDifference(Number(sigma_day_K)),
    days: Number(N),
  }).heating;
const erbs = ({ Tb_C, Tm_C, sigma_m_K, N }: CaseInputs): number =>
  erbsDegreeDays({
    base: celsius(Number(Tb_C)),
    meanOutdoor: celsius(Number(Tm_C)),
    yearToYear: kelvinDifference(Number(sigma_m_K)),
    days: Number(N),
  }).heating;

export const buildingChecks: readonly PublishedCheck[] = [
  ...caseChecks('building', [
    ['L1a', 'load, gains as offset', loadOf('gains as offset')],
    ['L1b', 'load, anchored at design', loadOf('anchored at design')],
    ['L1c', 'ratio of the two', (inputs) => loadOf('gains as offset')(inputs) / loadOf('anchored at design')(inputs)],
    ['L2a', 'loss coefficient', coefficientOf],
    ['L2b', 'balance point', (inputs) => fahrenheit.of(heatingBalancePoint(residence(inputs)))],
    [
      'L3',
      'fuel by degree days',
      ({ Q_Btuh, dT_F, DD_Fday, eff }) =>
        btu.of(degreeDayEnergy(btuPerHourFahrenheit(Number(Q_Btuh) / Number(dT_F)), fahrenheitDays(Number(DD_Fday)))) / Number(eff),
    ],
    ['L4a', 'Erbs heating degree days of a year', () => urbanaYear('heating')],
    ['L4b', 'Erbs cooling degree days of a year', () => urbanaYear('cooling')],
    [
      'L4c',
      'heating less cooling degree days',
      ({ month }) => urbanaDegreeDays('heating', Number(month)) - urbanaDegreeDays('cooling', Number(month)),
    ],
    ...['L5a', 'L5b', 'L5c', 'L5d', 'M3d'].map((id) => [id, 'degree days of a normal month', normal] as const),
    ...['L6a', 'L6b', 'L6c', 'L6d'].map((id) => [id, 'Erbs degree days of a month', erbs] as const),
    ...['average', 'warmer', 'colder'].map((climate) => [`L8-${climate}`, 'hours at full load', () => fullLoadHours(climate)] as const),
    ['L9', 'heat of a season', ({ climate, Pdes_kW }) => kilowattHours.of(season(String(climate), Number(Pdes_kW), 8).energy)],
    ...['L10', 'M7-warmer-0.5', 'M7-warmer-0.65', 'M7-warmer-0.8'].map((id) => [id, 'share covered by a small unit', covered] as const),
    ['L12a', 'mean load of the design month', (inputs) => designMonth(inputs).mean / 1000],
    ['L12b', 'balance point of the capacity', (inputs) => designMonth(inputs).balance],
    ['L12c', 'mean unmet load', (inputs) => designMonth(inputs).meanUnmet / 1000],
    ['L12d', 'run fraction in heating', (inputs) => designMonth(inputs).runFraction],
    ['L12e', 'run fraction in cooling', (inputs) => coolingMonth(inputs).runFraction],
    ['L13a', 'run fraction over bins', (inputs) => binMonth(inputs).runFraction],
    ['L13b', 'unmet heat over bins', (inputs) => kilowattHours.of(binMonth(inputs).unmetEnergy)],
  ]),
  ...seasonChecks,
  ...climateLoadChecks,
  ...hourlyLoadChecks,
];
