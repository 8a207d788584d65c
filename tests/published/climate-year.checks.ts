import { syntheticWeatherYear } from '../../src/climate/index.js';
import { celsius, kelvinDifference } from '../../src/units/index.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const means = loadFixture('ground-temperature-epw-monthly');
const course = loadFixture('weather-year-course');

/** The course of a year through the monthly means of a weather file, without days or weather. */
const courseOf = (row: FixtureRow | undefined): Float64Array =>
  syntheticWeatherYear({
    course: {
      from: 'monthly-air',
      monthlyMeans: Array.from({ length: 12 }, (_, month) => celsius(row?.number(`m${String(month + 1).padStart(2, '0')}_C`) ?? Number.NaN)),
    },
    dailySwing: { amplitude: kelvinDifference(0) },
  }).temperatures;

export const weatherYearChecks: readonly PublishedCheck[] = [
  fromFixture(course, {
    id: 'GT-year course',
    room: 'climate',
    quantity: 'course through monthly means against the derivative of a periodic spline',
    column: 'course_C',
    label: (row) => `${row.text('file')} hour ${row.text('hour')}`,
    compute: (row) => courseOf(means.rows.find((each) => each.text('file') === row.text('file')))[row.number('hour')] ?? Number.NaN,
  }),
];
