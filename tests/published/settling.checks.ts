import { customLayout, exponentialResponse } from '../../src/ground/index.js';
import { followSettling } from '../../src/operation/index.js';
import { diameterMillimetres, hours, metres, pipeMetreKelvinPerWatt, pipeMetres, wattsPerKelvin } from '../../src/units/index.js';
import type { FixtureRow } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';
import { elements, groundOf, meshed } from './soil-layers.checks.js';

const HOURS = 8760;
/** Times of the rows within the first year [h]; the first day is left out, as it is of the response: the fill counts before the heat has crossed it. */
const AT: Readonly<Record<string, number>> = { '7d': 168, '30d': 720, '120d': 2880, '365d': HOURS };

let followed: Float64Array | undefined;

/** The fluid through a year of one watt per metre in a filled trench, film and wall left out [degC]. */
function fluidsOf(row: FixtureRow): Float64Array {
  const { native, addedResistance } = meshed(row);
  const pipe = { outsideDiameter: diameterMillimetres(row.number('od_mm')) };
  const { firstWinter } = followSettling({
    step: hours(1),
    duty: { from: 'ground', loads: new Float64Array(HOURS).fill(100) },
    ground: new Float64Array(HOURS),
    response: exponentialResponse({
      layout: customLayout({ pipes: groundOf(row).pipes, trenches: 1, trenchSpacing: metres(10) }),
      pipe,
      soil: native,
    }),
    pipeLength: pipeMetres(100),
    resistanceAt: () => pipeMetreKelvinPerWatt(0),
    heatCapacityRate: wattsPerKelvin(1e9),
    firstWinterResistance: addedResistance,
    settledResistance: pipeMetreKelvinPerWatt(0),
    withCourse: true,
  });
  return firstWinter.simulation.yearOne.course?.enteringFluids ?? new Float64Array();
}

const check = fromFixture(elements, {
  id: 'SO-D fill followed',
  room: 'operation',
  quantity: 'fall of the fluid by one watt per metre in trench fill, followed by the hour',
  column: 'rise_mean_mK_W',
  label: (row) => `${row.text('case')} ${row.text('t')}`,
  compute: (row) => {
    followed ??= fluidsOf(row);
    return -(followed[(AT[row.text('t')] ?? Number.NaN) - 1] ?? Number.NaN);
  },
  where: (row) => row.text('case') === 'D10' && row.text('t') in AT,
});

/** Outside checks of a loop in loosened fill. */
export const settlingChecks: readonly PublishedCheck[] = [
  {
    ...check,
    tolerance: { relative: 0.03, reason: 'the resistance of the fill is counted as if it were steady; too much, on the safe side' },
  },
];
