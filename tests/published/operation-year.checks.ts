import { groundTemperature } from '../../src/climate/index.js';
import { exponentialResponse, groundResponse, type GroundResponseInput } from '../../src/ground/index.js';
import { circuitResistance, type CircuitResistance, superposedRise } from '../../src/operation/index.js';
import {
  celsius,
  dayOfYear,
  days,
  diameterMillimetres,
  hours,
  kelvinDifference,
  metres,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  wattsPerKelvin,
  wattsPerPipeMetre,
} from '../../src/units/index.js';
import { layoutOf, soilOf } from '../ground/support.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const room = 'operation';

/** LS-50: the circuit of a row, its film and wall counted as ground, with or without the other way acting on it. */
function circuitOf(row: FixtureRow, mutual = row.number('R12_Km_W')): CircuitResistance {
  return circuitResistance({
    pipeLength: pipeMetres(2 * row.number('trench_length_m(pipe=2x)')),
    heatCapacityRate: wattsPerKelvin(row.number('mdot_cp_W_K')),
    pipeResistance: pipeMetreKelvinPerWatt(0),
    groundResistance: pipeMetreKelvinPerWatt(row.number('R11_Km_W') + mutual),
    mutualResistance: pipeMetreKelvinPerWatt(mutual),
  });
}

const leavingOf = (row: FixtureRow, { remainingShare }: CircuitResistance): number =>
  row.number('T_ground_C') + remainingShare * (row.number('T_in_C') - row.number('T_ground_C'));

const circuitChecks = (): readonly PublishedCheck[] => {
  const fixture = loadFixture('loop-oracle-circuit');
  const of = (quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
    fromFixture(fixture, {
      id: 'LS-50',
      room,
      quantity,
      column,
      label: (row) => `trench ${row.text('trench_length_m(pipe=2x)')} m, R11 ${row.text('R11_Km_W')}, R12 ${row.text('R12_Km_W')}`,
      compute,
    });
  return [
    of('fluid leaving a circuit', 'T_out_C', (row) => leavingOf(row, circuitOf(row))),
    of('heat of a circuit', 'Q_gained_W', (row) => row.number('mdot_cp_W_K') * (leavingOf(row, circuitOf(row)) - row.number('T_in_C'))),
    of('fluid leaving a circuit whose ways lie far apart', 'T_out_if_R12=0', (row) => leavingOf(row, circuitOf(row, 0))),
    of('resistance to the mean fluid', 'effective_R_from_simple_mean_Km_W', (row) => circuitOf(row).effectiveResistance),
  ];
};

const HALF_DAY = 43_200;
const YEARS = 3;
const DEPTH = 1.5;
const loadYear = loadFixture('fem-h-year');
const loadSoil = soilOf(1.5, 1.5 / 2.3e6);
const loadPipes: GroundResponseInput = {
  layout: layoutOf([
    [-0.3, DEPTH],
    [0.3, DEPTH],
  ]),
  pipe: { outsideDiameter: diameterMillimetres(33.4) },
  soil: loadSoil,
};
/** The heat of three years in half days [W/m], taken from the ground and so negative. */
const halfDays: readonly number[] = Array.from({ length: YEARS }, () =>
  loadYear.rows.flatMap((row) => {
    const heat = -row.number('q_extraction_W_per_m_per_pipe');
    return [heat, heat];
  }),
).flat();

/** Undisturbed ground at the pipes so many days after 1 September 00:00, day 244 of the year [degC]. */
const undisturbedAfter = (time: number): number =>
  groundTemperature({
    wave: { of: 'ground surface', mean: celsius(10), amplitude: kelvinDifference(11), coldestDay: dayOfYear(19), period: days(365) },
    diffusivity: loadSoil.diffusivity,
    depth: metres(DEPTH),
    day: dayOfYear(244 + time),
  });

/** Change of the wall at the end of each half day [K]: steps of the exact response superposed. */
function superposedYear(): readonly number[] {
  const { riseAfter } = groundResponse(loadPipes);
  return superposedRise({ heat: halfDays.map((each) => wattsPerPipeMetre(each)), step: hours(12), riseAfter });
}

/** The same by exponentials, each with one number to remember. */
function steppedYear(): readonly number[] {
  const states = exponentialResponse(loadPipes).terms.map(({ timeConstant, rise }) => ({
    decay: Math.exp(-HALF_DAY / timeConstant),
    rise,
    state: 0,
  }));
  return halfDays.map((heat) => {
    for (const each of states) each.state = each.state * each.decay + each.rise * heat * (1 - each.decay);
    return states.reduce((sum, { state }) => sum + state, 0);
  });
}

const loadYearChecks = (): readonly PublishedCheck[] => {
  const label = (row: FixtureRow): string => `day ${row.text('day_from_1_Sep')}`;
  const walls = (id: string, how: string, changes: readonly number[]): readonly PublishedCheck[] =>
    [1, 2, 3].flatMap((year) =>
      (['noon', 'end_of_day'] as const).map((when) =>
        fromFixture(loadYear, {
          id,
          room,
          quantity: `wall of pipes under load, ${when === 'noon' ? 'noon' : 'end of day'}, year ${String(year)}, ${how}, against finite elements`,
          column: `Twall_${when}_year${String(year)}`,
          label,
          compute: (row) => {
            const ends = 2 * (365 * (year - 1) + row.number('day_from_1_Sep')) - (when === 'noon' ? 1 : 0);
            return undisturbedAfter(ends / 2) + (changes[ends - 1] ?? Number.NaN);
          },
        }),
      ),
    );
  return [
    fromFixture(loadYear, {
      id: 'FEM-h-ground',
      room,
      quantity: 'undisturbed ground at the pipes',
      column: 'T_undisturbed_mean_of_pipes_end_of_day_C',
      label,
      compute: (row) => undisturbedAfter(row.number('day_from_1_Sep')),
    }),
    ...walls('FEM-h', 'superposed steps', superposedYear()),
    ...walls('FEM-h-terms', 'sum of exponentials', steppedYear()),
  ];
};

/** Outside checks of circuits and of a year of load. */
export const operationYearChecks: readonly PublishedCheck[] = [...circuitChecks(), ...loadYearChecks()];
