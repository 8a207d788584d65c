import { energySignature } from '../../src/building/index.js';
import {
  declaredSeasonalCop,
  type DeclaredPoint,
  type En14825Climate,
  en14825Season,
  type SeasonalBoundary,
  seasonalCop,
  seasonalEfficiency,
} from '../../src/heat-pump/index.js';
import { binYear, type BinYearResult, fluidAlongLine } from '../../src/operation/index.js';
import { celsius, electricKilowattHours, electricWatts, fraction, hours, kilowattHours, kilowatts, ratio } from '../../src/units/index.js';
import { inventedUnit } from '../operation/support/invented-unit.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { caseChecks, type CaseInputs } from '../support/load-cases.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const seasons = loadFixture('load-scop-seasons');
const bins = loadFixture('load-scop-bins');
const declared = loadFixture('season-declared');

export const climateOf = (text: unknown): En14825Climate => (text === 'warmer' || text === 'colder' ? text : 'average');
const seasonOfRow = (row: FixtureRow): ReturnType<typeof en14825Season> => en14825Season(climateOf(row.text('climate')));

/** Hours at full load that the bins of the data file make with its load line. */
const hoursFromBins = (row: FixtureRow): number => {
  const { bins: own, designOutdoor, balancePoint } = seasonOfRow(row);
  return own.reduce((sum, { outdoor, time }) => sum + (hours.of(time) * (balancePoint - outdoor)) / (balancePoint - designOutdoor), 0);
};

const averageHours = (row: FixtureRow): number =>
  hours.of(en14825Season('average').bins.find(({ outdoor }) => outdoor === row.number('outdoor_bin_C'))?.time ?? hours(0));

const activeCop = ({ climate, Pdes_kW, Pdh_kW, COP, Cc }: CaseInputs): number =>
  seasonalCop({
    climate: climateOf(climate),
    designLoad: kilowatts(Number(Pdes_kW)),
    unitAt: () => ({ capacity: kilowatts(Number(Pdh_kW)), cop: ratio(Number(COP)) }),
    loadShare: fraction(Number(Cc)),
  }).activeCop;

/** The worked year of a case: the invented unit over a season, with the fluid on the line that the case prints as `3+0.3*To`. */
export const workedYear = ({ climate, Pdes_kW, EFT_C, Cd, pump_kW }: CaseInputs): BinYearResult => {
  const { bins: season, designOutdoor, balancePoint } = en14825Season(climateOf(climate));
  const [start = Number.NaN, slope = Number.NaN] = String(EFT_C).replace('*To', '').split('+').map(Number);
  const place = (outdoor: number) => ({ outdoor: celsius(outdoor), enteringFluid: celsius(start + slope * outdoor) });
  return binYear({
    signature: energySignature({
      mode: 'heating',
      form: 'anchored at design',
      designLoad: kilowatts(Number(Pdes_kW)),
      designOutdoor,
      indoor: celsius(20),
      balancePoint,
    }),
    bins: fluidAlongLine({ bins: season, atDesign: place(designOutdoor), atBalance: place(balancePoint) }),
    unit: inventedUnit,
    cycling: { form: 'degradation', degradation: fraction(Number(Cd)) },
    pumpPower: electricWatts(1000 * Number(pump_kW)),
  });
};

const factorOf = ({ performance }: BinYearResult, boundary: SeasonalBoundary['boundary']): number =>
  performance.boundaries.find((each) => each.boundary === boundary)?.performanceFactor ?? Number.NaN;

const FIGURES: readonly (readonly [output: string, quantity: string, of: (year: BinYearResult) => number])[] = [
  ['QH', 'heat of the year', ({ energy }) => kilowattHours.of(energy)],
  ['Qaux', 'auxiliary heat of the year', ({ unmetEnergy }) => kilowattHours.of(unmetEnergy)],
  ['Ecomp', 'electricity of the unit', ({ unitElectricity }) => electricKilowattHours.of(unitElectricity)],
  ['Epump', 'electricity of the loop pump', ({ circulatorElectricity }) => electricKilowattHours.of(circulatorElectricity)],
  ['Qext', 'heat from the ground', ({ groundEnergy }) => kilowattHours.of(groundEnergy)],
  ['runhours', 'running time', ({ runTime }) => hours.of(runTime)],
  ['SPF_unit', 'performance factor H1', (year) => factorOf(year, 'H1')],
  ['SPF_H2', 'performance factor H2', (year) => factorOf(year, 'H2')],
  ['SPF_H3', 'performance factor H3', (year) => factorOf(year, 'H3')],
  ['pump_share', 'share of the loop pump', ({ performance }) => performance.pumpShare ?? Number.NaN],
];
const WARMER = ['QH', 'Ecomp', 'Qext', 'SPF_H2'];

/** Declared points as the fixture writes them: outdoor:capacity:COP. */
const pointsOf = (row: FixtureRow): readonly DeclaredPoint[] =>
  row
    .text('points')
    .split(' ')
    .map((point) => {
      const [outdoor = Number.NaN, capacity = Number.NaN, cop = Number.NaN] = point.split(':').map(Number);
      return { outdoor: celsius(outdoor), capacity: kilowatts(capacity), cop: ratio(cop) };
    });

const declaredCop = (row: FixtureRow): ReturnType<typeof declaredSeasonalCop> =>
  declaredSeasonalCop({
    climate: climateOf(row.text('climate')),
    designLoad: kilowatts(row.number('design_load_kW')),
    points: pointsOf(row),
    loadShare: fraction(row.number('Cc')),
    aboveWarmest: row.text('above_warmest') === 'held' ? 'held' : 'led on',
    ...(row.has('operation_limit_C') ? { operationLimit: celsius(row.number('operation_limit_C')) } : {}),
  });

const labelled = (row: FixtureRow): ReturnType<typeof seasonalEfficiency> =>
  seasonalEfficiency({
    climate: climateOf(row.text('climate')),
    designLoad: kilowatts(row.number('design_load_kW')),
    activeCop: declaredCop(row).activeCop,
    thermostatOffPower: electricWatts(row.number('thermostat_off_W')),
    standbyPower: electricWatts(row.number('standby_W')),
    crankcasePower: electricWatts(row.number('crankcase_W')),
    offPower: electricWatts(row.number('off_W')),
  });

const fromDeclared = (column: string, quantity: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(declared, {
    id: `SE-declared ${column}`,
    room: 'heat-pump',
    quantity,
    column,
    label: (row) => `${row.text('unit')}, ${row.text('climate')}`,
    compute,
  });

const fromSeasons = (id: string, quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(seasons, { id: `SE-${id}`, room: 'heat-pump', quantity, column, label: (row) => row.text('climate'), compute });

export const heatingSeasonChecks: readonly PublishedCheck[] = [
  fromFixture(bins, {
    id: 'SE-bins',
    room: 'heat-pump',
    quantity: 'hours of each bin, average climate',
    column: 'hours_average',
    label: (row) => `${row.text('outdoor_bin_C')} degC`,
    compute: averageHours,
  }),
  fromSeasons('hours from bins', 'hours at full load, from the bins', 'sum_h_times_16_minus_T_over_16_minus_Tdes', hoursFromBins),
  fromSeasons('legal hours', 'hours at full load, legal, against the bins', 'H_HE_h', hoursFromBins),
  fromSeasons('legal hours carried', 'hours at full load, legal, as carried', 'H_HE_h', (row) => hours.of(seasonOfRow(row).fullLoadTime)),
  ...caseChecks('heat-pump', [
    ['L22', 'SCOPon by bins', activeCop],
    ['M11-warmer', 'SCOPon by bins, warmer climate', activeCop],
  ]),
  ...caseChecks('operation', [
    ...FIGURES.map(([output, quantity, of]) => [`L23-${output}`, quantity, (inputs: CaseInputs) => of(workedYear(inputs))] as const),
    ...FIGURES.filter(([output]) => WARMER.includes(output)).map(
      ([output, quantity, of]) => [`M12w-${output}`, `${quantity}, warmer climate`, (inputs: CaseInputs) => of(workedYear(inputs))] as const,
    ),
  ]),
  fromDeclared('SCOPon', 'SCOPon from declared points', (row) => declaredCop(row).activeCop),
  fromDeclared('SCOPnet', 'SCOPnet from declared points', (row) => declaredCop(row).netCop),
  fromDeclared('SCOP', 'SCOP with idle states', (row) => labelled(row).seasonalCop),
  fromDeclared('eta_s', 'seasonal efficiency', (row) => labelled(row).primaryEfficiency),
];
