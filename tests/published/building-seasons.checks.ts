import { binRun, equivalentFullLoadHours, type BinRun, type WeatherBin } from '../../src/building/index.js';
import { celsius, hours, kilowatts } from '../../src/units/index.js';
import { loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';
import { heatingLine } from './building-lines.js';

const bins = loadFixture('load-scop-bins');
const seasons = loadFixture('load-scop-seasons');
const coverage = loadFixture('load-capacity-coverage');

const seasonBins = (climate: string): readonly WeatherBin[] =>
  bins.rows.map((row) => ({ outdoor: celsius(row.number('outdoor_bin_C')), time: hours(row.number(`hours_${climate}`)) }));
const designOf = (climate: string): number => seasons.rows.find((row) => row.text('climate') === climate)?.number('T_designh_C') ?? Number.NaN;
export const season = (climate: string, designLoad: number, capacity: number): BinRun =>
  binRun({ signature: heatingLine(designLoad, designOf(climate), 16), bins: seasonBins(climate), capacity: kilowatts(capacity) });
export const fullLoadHours = (climate: string): number =>
  hours.of(equivalentFullLoadHours({ energy: season(climate, 8, 8).energy, designLoad: kilowatts(8) }));

export const seasonChecks: readonly PublishedCheck[] = [
  fromFixture(seasons, {
    id: 'LD-season legal hours',
    room: 'building',
    quantity: 'legal hours at full load',
    column: 'H_HE_h',
    label: (row) => row.text('climate'),
    compute: (row) => fullLoadHours(row.text('climate')),
  }),
  fromFixture(seasons, {
    id: 'LD-season hours',
    room: 'building',
    quantity: 'hours of the season',
    column: 'bin_hours_total',
    label: (row) => row.text('climate'),
    compute: (row) => hours.of(season(row.text('climate'), 8, 8).time),
  }),
  ...(
    [
      ['balance_point_C', 'balance point of the capacity', (run) => run.capacityBalancePoint],
      ['hours_short', 'hours short of capacity', (run) => hours.of(run.shortTime)],
      ['energy_fraction_from_heat_pump', 'share covered', (run) => run.coveredShare],
      ['season_run_fraction', 'run fraction of the season', (run) => run.runFraction],
    ] as readonly (readonly [string, string, (run: BinRun, share: number) => number])[]
  ).map(([column, quantity, of]) =>
    fromFixture(coverage, {
      id: `LD-coverage ${column}`,
      room: 'building',
      quantity,
      column,
      label: (row) => `${row.text('climate')}, capacity ${row.text('capacity_over_design_load')} of the load`,
      compute: (row) => {
        const share = row.number('capacity_over_design_load');
        return of(season(row.text('climate'), 10, 10 * share), share);
      },
    }),
  ),
];
