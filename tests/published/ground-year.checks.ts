import { groundResponse, type GroundResponseInput, periodicResponse, pipeGround, type PipeGround } from '../../src/ground/index.js';
import { celsius, dayOfYear, days, diameterMillimetres, kelvinDifference } from '../../src/units/index.js';
import { layoutOf, soilOf } from '../ground/support.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';
import { pipesOf } from './ground-rows.js';

const room = 'ground';
const annual = loadFixture('fem-e-annual');
const amplitudes = loadFixture('fem-e-annual-amplitudes');
const PERIOD = days(365);
const turn = (daysOn: number): number => (2 * Math.PI * daysOn) / 365;

const inputOf = (row: FixtureRow, selfTerm: 'cylinder' | 'line' = 'cylinder'): GroundResponseInput => ({
  layout: layoutOf(pipesOf(row)),
  pipe: { outsideDiameter: diameterMillimetres(row.number('od_mm')) },
  soil: soilOf(row.number('k_W_mK'), row.number('k_W_mK') / row.number('C_J_m3K')),
  selfTerm,
});
// Day 0 of the tables is the beginning of 1 January, and the surface is warmest on day 200.
const wave = {
  of: 'ground surface',
  mean: celsius(10),
  amplitude: kelvinDifference(12),
  coldestDay: dayOfYear(201 - 182.5),
  period: PERIOD,
} as const;
const groundOf = (row: FixtureRow): PipeGround => pipeGround({ ...inputOf(row), wave });
const undisturbed = (row: FixtureRow): number => groundOf(row).loop.temperatureOn(dayOfYear(1 + row.number('day_mid')));
const wall = (row: FixtureRow, selfTerm?: 'line'): number => {
  const { amplitude, lag } = periodicResponse({ ...inputOf(row, selfTerm), period: PERIOD });
  const swing = row.number('q_amp_W_m') * amplitude * Math.cos(turn(row.number('day_mid') - row.number('q_peak_day') - days.of(lag)));
  return undisturbed(row) - row.number('q_mean_W_m') * (groundResponse(inputOf(row)).steadyRise ?? Number.NaN) - swing;
};

const label = (row: FixtureRow): string => `${row.text('case')} load ${row.text('q_mean_W_m')} month ${row.text('month')}`;
const yearly = (id: string, quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(annual, { id, room, quantity, column, label, compute });
/** The pipes of a case of the table of amplitudes stand in the other table. */
const caseOf = (row: FixtureRow): FixtureRow => {
  const found = annual.rows.find((each) => each.text('case') === row.text('case'));
  if (found === undefined) throw new Error(`no pipes for ${row.text('case')}`);
  return found;
};
const swing = (id: string, quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(amplitudes, { id, room, quantity, column, label: (row) => row.text('case'), compute: (row) => compute(caseOf(row)) });
const part =
  (of: (angle: number) => number, selfTerm?: 'line') =>
  (row: FixtureRow): number => {
    const { amplitude, lag } = periodicResponse({ ...inputOf(row, selfTerm), period: PERIOD });
    return amplitude * of(-turn(days.of(lag)));
  };
const gain = (row: FixtureRow): number => groundOf(row).loop.amplitude / wave.amplitude;
const lag = (row: FixtureRow): number => groundOf(row).loop.coldestDay - wave.coldestDay;
const inTheEnd = (row: FixtureRow): number => groundResponse(inputOf(row)).steadyRise ?? Number.NaN;

/** Outside checks of pipes under a yearly wave and a yearly load. */
export const groundYearChecks: readonly PublishedCheck[] = [
  yearly('FEM-e', 'wall of pipes under a yearly wave and load against finite elements', 'Twall_fem_C', (row) => wall(row)),
  yearly('FEM-e-line', 'the same by lines', 'Twall_superposition_C', (row) => wall(row, 'line')),
  yearly('FEM-e-ground', 'undisturbed ground, mean over the pipes', 'Tundisturbed_exact_C', undisturbed),
  swing('FEM-e-gain', 'yearly wave at the pipes over that of the surface against finite elements', 'surface_gain_abs_fem', gain),
  swing('FEM-e-lag', 'how late it is against finite elements', 'surface_lag_days_fem', lag),
  swing('FEM-e-gain-exact', 'yearly wave at the pipes over that of the surface', 'surface_gain_abs_exact', gain),
  swing('FEM-e-lag-exact', 'how late it is', 'surface_lag_days_exact', lag),
  swing('FEM-e-real', 'swing of the wall in step with its heat against finite elements', 'Gper_re_fem', part(Math.cos)),
  swing('FEM-e-imaginary', 'swing of the wall a quarter year off against finite elements', 'Gper_im_fem', part(Math.sin)),
  swing('FEM-e-real-line', 'swing of the wall in step with its heat, by lines', 'Gper_re_line', part(Math.cos, 'line')),
  swing('FEM-e-imaginary-line', 'swing of the wall a quarter year off, by lines', 'Gper_im_line', part(Math.sin, 'line')),
  swing('FEM-e-steady', 'rise in the end against finite elements', 'Gsteady_fem', inTheEnd),
  swing('FEM-e-steady-line', 'rise in the end, by lines', 'Gsteady_line', inTheEnd),
];
