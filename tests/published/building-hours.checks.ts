import { hourlyLoads, type HourlyLoads } from '../../src/building/index.js';
import { syntheticWeatherYear } from '../../src/climate/index.js';
import { celsius, hours, kelvinDifference, kilowattHours } from '../../src/units/index.js';
import { type FixtureRow, loadFixture, type Tolerance } from '../support/fixture.js';
import { fromFixture, type PublishedCheck, type PublishedValue } from '../support/published.js';
import { coolingLine, heatingLine } from './building-lines.js';

const may = loadFixture('load-weather-hours');
const weather = loadFixture('load-weather-checks');
const bins = loadFixture('load-scop-bins');
const seasons = loadFixture('load-scop-seasons');

const step = hours(1);
const LINES = {
  'Chicago OHare TMY3': { heating: heatingLine(12, -20, 16), cooling: coolingLine(8, 33, 20) },
  'Bologna TMYx': { heating: heatingLine(10, -4, 16), cooling: coolingLine(9, 34, 21) },
} as const;
const STATIONS = ['Chicago OHare TMY3', 'Bologna TMYx'] as const;
type Station = (typeof STATIONS)[number];
const rowsOf = (station: Station): readonly FixtureRow[] => weather.rows.filter((row) => row.text('station') === station);
const kilowattHoursOf = (loads: HourlyLoads, mode: 'heating' | 'cooling'): number =>
  kilowattHours.of(loads[mode]?.energy ?? kilowattHours(Number.NaN));

/** The hours of a real May. */
const mayLoads = hourlyLoads({ ...LINES['Chicago OHare TMY3'], temperatures: may.rows.map((row) => celsius(row.number('outdoor_C'))), step });
const mayRow = rowsOf('Chicago OHare TMY3')[4];
const inMay = (column: string, compute: () => number): PublishedValue => ({
  label: column,
  expected: mayRow?.number(column) ?? Number.NaN,
  compute,
});

/** A heating season of the standard, an hour at each of its bins for each hour it has there. */
const seasonLoads = (climate: string): HourlyLoads => {
  const design = seasons.rows.find((row) => row.text('climate') === climate)?.number('T_designh_C') ?? Number.NaN;
  const temperatures = bins.rows.flatMap((row) => Array.from({ length: row.number(`hours_${climate}`) }, () => celsius(row.number('outdoor_bin_C'))));
  return hourlyLoads({ heating: heatingLine(8, design, 16), temperatures, step });
};

/** A year made from the monthly means and spreads of a weather year. */
const madeYear = (station: Station): HourlyLoads => {
  const rows = rowsOf(station);
  const { temperatures } = syntheticWeatherYear({
    course: { from: 'monthly-air', monthlyMeans: rows.map((row) => celsius(row.number('mean_C'))) },
    spread: rows.map((row) => kelvinDifference(row.number('sigma_hourly_K'))),
  });
  return hourlyLoads({ ...LINES[station], temperatures, step });
};
const madeYearCheck = (mode: 'heating' | 'cooling', column: string, tolerance: Tolerance): PublishedCheck => ({
  id: `LD-made year, ${mode}`,
  room: 'building',
  quantity: `${mode === 'heating' ? 'heat' : 'cold'} of a year made from monthly means and spreads`,
  unit: 'kWh',
  source: `${weather.meta.source} (${weather.meta.at})`,
  seen: 'computed independently',
  tolerance,
  values: STATIONS.map((station) => ({
    label: station,
    expected: rowsOf(station).reduce((sum, row) => sum + row.number(column), 0),
    compute: () => kilowattHoursOf(madeYear(station), mode),
  })),
});

export const hourlyLoadChecks: readonly PublishedCheck[] = [
  fromFixture(may, {
    id: 'LD-hours load',
    room: 'building',
    quantity: 'load of each hour of a May',
    column: 'load_W',
    label: (row) => `hour ${row.text('hour')}`,
    compute: (row) => mayLoads.loads[row.number('hour')] ?? Number.NaN,
  }),
  {
    id: 'LD-hours May',
    room: 'building',
    quantity: 'heat, cold and degree days of a May by its hours',
    unit: 'kWh, K.d',
    source: `${weather.meta.source} (${weather.meta.at})`,
    seen: 'computed independently',
    tolerance: { absolute: 5.1e-7, reason: 'half a unit of the last printed digit' },
    values: [
      inMay('heat_load_kWh', () => kilowattHoursOf(mayLoads, 'heating')),
      inMay('cool_load_kWh', () => kilowattHoursOf(mayLoads, 'cooling')),
      inMay('HDD_hourly_integral', () => mayLoads.heating?.degreeDays ?? Number.NaN),
    ],
  },
  fromFixture(seasons, {
    id: 'LD-hours legal hours',
    room: 'building',
    quantity: 'legal hours at full load, an hour at a time',
    column: 'H_HE_h',
    label: (row) => row.text('climate'),
    compute: (row) => hours.of(seasonLoads(row.text('climate')).heating?.fullLoadHours ?? hours(Number.NaN)),
  }),
  madeYearCheck('heating', 'heat_load_kWh', { relative: 0.005, reason: 'stated error; real hours are not spread alike in all months' }),
  madeYearCheck('cooling', 'cool_load_kWh', { relative: 0.03, reason: 'stated error; the warm spell of one April is missing' }),
];
