import { binRun, energySignature } from '../../src/building/index.js';
import {
  carnotCop,
  copFromEer,
  en14825PartLoadFactor,
  groundHeat,
  partLoadFactor,
  type PerformanceMap,
  performanceMap,
  ruhnauCop,
  staffellCop,
  type UnitState,
} from '../../src/heat-pump/index.js';
import { celsius, electricKilowatts, fraction, hours, kelvinDifference, kilowatts, ratio } from '../../src/units/index.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { caseChecks, type CaseInputs } from '../support/load-cases.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

type Mode = 'heating' | 'cooling';
const unit = loadFixture('load-example-unit');
const modeOf = (row: FixtureRow): Mode => (row.text('mode') === 'heating' ? 'heating' : 'cooling');

/** The invented unit over the entering fluid at one of the flows of its table; some of its points may be left out. */
const mapOf = (mode: Mode, flow: number, kept: (enteringFluid: number) => boolean = () => true): PerformanceMap =>
  performanceMap({
    mode,
    points: unit.rows
      .filter((row) => modeOf(row) === mode && row.number('flow_ratio') === flow && kept(row.number('entering_fluid_C')))
      .map((row) => ({
        enteringFluid: celsius(row.number('entering_fluid_C')),
        capacity: kilowatts(row.number('capacity_kW')),
        power: electricKilowatts(row.number('power_kW')),
      })),
  });

/** The unit at a row of its table, told from the other rows alone. */
const without = (row: FixtureRow): UnitState => {
  const place = row.number('entering_fluid_C');
  return mapOf(modeOf(row), row.number('flow_ratio'), (each) => each !== place).at(celsius(place));
};
/** The unit at a row of its table, told from all rows. */
const withRow = (row: FixtureRow): UnitState => mapOf(modeOf(row), row.number('flow_ratio')).at(celsius(row.number('entering_fluid_C')));
/** Beside an end the three neighbours weigh 1/3, 1 and −1/3, and each is rounded to four digits, as the row itself is. */
const LEFT_OUT = { absolute: (1 + 5 / 3) * 5.01e-5, reason: 'half a unit of the last printed digit of the row and of the points it is told from' };
const inner = (row: FixtureRow): boolean => {
  const { lowest, highest } = mapOf(modeOf(row), row.number('flow_ratio')).rated;
  const place = row.number('entering_fluid_C');
  return place > lowest && place < highest;
};

const fromUnit = (
  id: string,
  column: string,
  quantity: string,
  compute: (row: FixtureRow) => number,
  where: (row: FixtureRow) => boolean = () => true,
): PublishedCheck =>
  fromFixture(unit, {
    id: `LD-unit ${id}`,
    room: 'heat-pump',
    quantity,
    column,
    where,
    label: (row) => `${row.text('mode')} ${row.text('entering_fluid_C')} degC, flow ${row.text('flow_ratio')}`,
    compute,
  });

/** Rated flow only; rows L16h3 and L16c1, at other flows, stand with the map over flows. */
const atRating = (mode: Mode) => (inputs: CaseInputs) => {
  const { capacity, power, cop, groundHeat: ground } = mapOf(mode, Number(inputs.flow_ratio)).at(celsius(Number(inputs.EFT_C)));
  return [kilowatts.of(capacity), electricKilowatts.of(power), cop, kilowatts.of(ground)];
};

const withCop = (mode: Mode, capacity: number, cop: number): number =>
  kilowatts.of(groundHeat({ mode, capacity: kilowatts(capacity), power: electricKilowatts(capacity / cop) }));

const cycling = ({ PLR, Cd, Cc }: CaseInputs): readonly number[] => {
  const loadRatio = fraction(Number(PLR));
  const { factor, runFraction } = partLoadFactor({ loadRatio, degradation: fraction(Number(Cd)) });
  return [factor, runFraction, en14825PartLoadFactor({ loadRatio, loadShare: fraction(Number(Cc)) })];
};

/** Running time over bins with cycling losses of 10 %. */
const cyclingBins = ({ bins_h, slope_kW_per_K, Tbal_C, capacity_kW }: CaseInputs): number => {
  const balancePoint = celsius(Number(Tbal_C));
  const designLoad = kilowatts(10 * Number(slope_kW_per_K));
  const line = { designLoad, designOutdoor: celsius(Number(Tbal_C) - 10), indoor: celsius(21), balancePoint };
  const { bins } = binRun({
    signature: energySignature({ mode: 'heating', form: 'anchored at design', ...line }),
    bins: Object.entries(Object(bins_h)).map(([outdoor, time]) => ({ outdoor: celsius(Number(outdoor)), time: hours(Number(time)) })),
    capacity: kilowatts(Number(capacity_kW)),
  });
  const runHours = bins.map(
    ({ time, runFraction }) => hours.of(time) * partLoadFactor({ loadRatio: fraction(runFraction), degradation: fraction(0.1) }).runFraction,
  );
  return runHours.reduce((sum, each) => sum + each, 0);
};

const staffell = ({ dT_K }: CaseInputs): number => staffellCop(kelvinDifference(Number(dT_K)));
const ruhnau = ({ dT_K }: CaseInputs): number => ruhnauCop(kelvinDifference(Number(dT_K)));

/** All part loads in one check: at full load alone every factor is one, and a constant would pass. */
const cyclingCases = caseChecks(
  'heat-pump',
  ['0.1', '0.25', '0.5', '0.75', '1'].map((load) => [`L19-${load}`, 'loss by cycling', cycling] as const),
);
const cyclingCheck: PublishedCheck = {
  id: 'LD-L19',
  room: 'heat-pump',
  quantity: 'loss by cycling at five part loads',
  unit: '1',
  source: cyclingCases[0]?.source ?? '',
  seen: 'computed independently',
  tolerance: { relative: 1e-8, reason: 'double rounding in two programs, or the printed digits' },
  values: cyclingCases.flatMap(({ id, tolerance, values }) => values.map((value) => ({ ...value, label: `${id} ${value.label}`, tolerance }))),
};

export const heatPumpChecks: readonly PublishedCheck[] = [
  ...caseChecks('heat-pump', [
    ...['L16h0', 'L16h1', 'L16h2'].map((id) => [id, 'invented unit in heating', atRating('heating')] as const),
    ['L16c0', 'invented unit in cooling', atRating('cooling')],
    ...['L17s20', 'L17s30', 'L17s40', 'L17s50', 'L17s60', 'M10s25', 'M10s45'].map((id) => [id, 'COP after Staffell', staffell] as const),
    ...['L17r20', 'L17r30', 'L17r40', 'L17r50', 'L17r60', 'M10r25', 'M10r45'].map((id) => [id, 'COP after Ruhnau', ruhnau] as const),
    ['L17c', 'Carnot COP', ({ Tcold_C, Thot_C }) => carnotCop({ cold: celsius(Number(Tcold_C)), warm: celsius(Number(Thot_C)) })],
    ['L18a', 'heat from the ground', ({ Q_kW, COP }) => withCop('heating', Number(Q_kW), Number(COP))],
    ['L18b', 'heat to the ground', ({ Q_kW, EER_Btu_per_Wh }) => withCop('cooling', Number(Q_kW), copFromEer(ratio(Number(EER_Btu_per_Wh))))],
    ['L13c', 'running hours with cycling', cyclingBins],
  ]),
  cyclingCheck,
  fromUnit('COP', 'COP_or_EER_W_per_W', 'COP of the invented unit', (row) => withRow(row).cop),
  fromUnit(
    'from ground',
    'heat_from_ground_kW',
    'heat from the ground',
    (row) => kilowatts.of(withRow(row).groundHeat),
    (row) => modeOf(row) === 'heating',
  ),
  fromUnit(
    'to ground',
    'heat_to_ground_kW',
    'heat to the ground',
    (row) => kilowatts.of(withRow(row).groundHeat),
    (row) => modeOf(row) === 'cooling',
  ),
  {
    ...fromUnit('capacity left out', 'capacity_kW', 'capacity at a point left out', (row) => kilowatts.of(without(row).capacity), inner),
    tolerance: LEFT_OUT,
  },
  {
    ...fromUnit('power left out', 'power_kW', 'electric power at a point left out', (row) => electricKilowatts.of(without(row).power), inner),
    tolerance: LEFT_OUT,
  },
  {
    id: 'LD-EER',
    room: 'heat-pump',
    quantity: 'COP of an EER of 17.1 Btu/(W.h)',
    unit: '1',
    source: 'EER to COP by the International Table Btu, worked out outside this library',
    seen: 'computed independently',
    tolerance: { absolute: 5.01e-5, reason: 'half a unit of the last printed digit' },
    values: [{ label: '17.1', expected: 5.0115, compute: () => copFromEer(ratio(17.1)) }],
  },
];
