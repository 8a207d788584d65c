import { describe, expect, it } from 'vitest';
import { meanTemperatureOverDepth, readWeatherFile, type WeatherFile } from '../../src/climate/index.js';
import { daysAfter, groundHeader, slabLag } from '../../src/climate/weather-ground-header.js';
import { celsius, dayOfYear, days, kelvinDifference, metres, squareFeetPerHour } from '../../src/units/index.js';
import { madeLines, wholeYearOf } from './weather-texts.js';

const MONTH_STARTS = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];
const TWELVE = [15, 46, 74, 95, 135, 166, 196, 227, 258, 288, 319, 349];
/** A yearly wave by hours, coldest on a day counted from 0, with one hour of a chosen month far colder. */
function yearWith(coldestMonth: number, ground: string, coldest = 17): WeatherFile {
  const cold = 24 * ((MONTH_STARTS[coldestMonth] ?? 0) + 10);
  const lines = madeLines((hour) => (hour === cold ? -30 : (10 - 12 * Math.cos((2 * Math.PI * ((hour + 0.5) / 24 - coldest)) / 365)).toFixed(2)));
  lines[3] = `GROUND TEMPERATURES,${ground}`;
  return readWeatherFile({ text: lines.join('\n') });
}
const flat = `1,2,,,,${Array.from({ length: 12 }, () => '10').join(',')}`;
const codesOf = ({ findings }: WeatherFile): readonly string[] => findings.map(({ code }) => code);
/** Header numbers of a surface that is coldest on a day counted from 0, printed as headers are. */
const printedFor = (surfaceColdest: number): string =>
  TWELVE.map((day) =>
    meanTemperatureOverDepth({
      wave: {
        of: 'ground surface',
        mean: celsius(10),
        amplitude: kelvinDifference(12),
        coldestDay: dayOfYear(1 + surfaceColdest),
        period: days(365),
      },
      diffusivity: squareFeetPerHour(0.025),
      top: metres(0),
      bottom: metres(2),
      day: dayOfYear(1 + day),
    }).toFixed(2),
  ).join(',');

describe('the ground of a header', () => {
  it.each([
    [0.5, 5.52],
    [2, 19.838],
    [4, 33.733],
  ])('lags by the days of a mean from the surface down to %s m: %s', (depth, lag) => {
    expect((slabLag(metres(depth)) * 365) / (2 * Math.PI)).toBeCloseTo(lag, 2);
  });

  it.each(['chicago', 'bologna'] as const)('of %s is what its own air gives by the rule, to the last printed digit', (name) => {
    const { groundHeaders } = readWeatherFile({ text: wholeYearOf(name) });
    expect(groundHeaders.map(({ depth }) => depth)).toEqual([0.5, 2, 4]);
    for (const { holds, rebuiltWithin } of groundHeaders) {
      expect(holds).toBe('means from the surface down');
      expect(rebuiltWithin).toBeLessThan(0.0051);
    }
  });

  it('turns by a month with one cold hour', () => {
    const rebuilt = MONTH_STARTS.map((_, month) => yearWith(month, flat).groundHeaders[0]?.rebuilt ?? []);
    const coldest = rebuilt.map((months) => months.indexOf(celsius(Math.min(...months))));
    // Coldest 0.6 rad after the first of the month and the lag of 2 m later; of the twelve days it is the nearest, which April's 95 is for February.
    const awayFrom = (day: number, start: number): number => Math.abs(((day - start - 34.855 - 19.838 + 912.5) % 365) - 182.5);
    const nearest = MONTH_STARTS.map((start) => {
      const away = TWELVE.map((day) => awayFrom(day, start));
      return away.indexOf(Math.min(...away));
    });
    expect(coldest).toEqual(nearest);
    expect(coldest.slice(0, 3)).toEqual([1, 3, 3]);
  });

  it('that follows from no rule is said to be unknown, with how far it is off', () => {
    const file = yearWith(0, flat);
    expect(file.groundHeaders[0]).toMatchObject({ holds: 'unknown' });
    expect(file.groundHeaders[0]?.rebuiltWithin).toBeGreaterThan(5);
    expect(file.groundHeaders[0]?.surfaceColdestDay).toBeUndefined();
    expect(codesOf(file)).toEqual(['ground-header-unknown']);
  });

  it('is known by the rule within the last printed digit, no further', () => {
    const holds = (april: string): string | undefined =>
      readWeatherFile({ text: wholeYearOf('bologna').replace(',4.69,', `,${april},`) }).groundHeaders[0]?.holds;
    expect([holds('4.69'), holds('4.70'), holds('4.71')]).toEqual(['means from the surface down', 'means from the surface down', 'unknown']);
  });

  it('is the same with 29 February and without, the coldest hour behind it', () => {
    const cold = 24 * 340;
    const lines = madeLines((hour) => (hour === cold ? -30 : (10 - 12 * Math.cos((2 * Math.PI * (hour / 24 - 18)) / 366)).toFixed(2)), {
      leap: true,
    });
    lines[3] = `GROUND TEMPERATURES,${flat}`;
    const text = lines.join('\n');
    const [kept, left] = (['kept', 'left out'] as const).map((leapDay) => readWeatherFile({ text, leapDay }).groundHeaders[0]?.rebuilt ?? []);
    // A day of shift would move them by up to 0.14 K; the means of February differ by 0.06 K, a twelfth of which comes through.
    expect(Math.max(...(kept ?? []).map((each, month) => Math.abs(each - (left?.[month] ?? Number.NaN))))).toBeLessThan(0.02);
  });

  it('is out of season from twenty days on, to either side and around the year', () => {
    const codes = (surface: number, air: number): readonly string[] => codesOf(yearWith(0, `1,2,,,,${printedFor(surface)}`, air));
    const out = 'ground-header-out-of-season';
    for (const air of [17, 200, 360]) {
      expect(codes((air + 19.5) % 365, air)).not.toContain(out);
      expect(codes((air + 20.5) % 365, air)).toContain(out);
      expect(codes((air + 345.5) % 365, air)).not.toContain(out);
      expect(codes((air + 344.5) % 365, air)).toContain(out);
    }
  });

  it('tells the day the surface would be coldest, whatever the depth it is printed for', () => {
    const [first] = yearWith(0, `1,2,,,,${printedFor(100)}`).groundHeaders;
    expect(first?.surfaceColdestDay).toBeCloseTo(101, 1);
  });

  it('keeps soil where it is given', () => {
    const file = yearWith(0, `1,2,1.2,1800,900,${printedFor(20)}`);
    expect(file.groundHeaders[0]).toMatchObject({ depth: 2, conductivity: 1.2, density: 1800, specificHeat: 900 });
  });

  it('is read the same by the function alone', () => {
    const file = readWeatherFile({ text: wholeYearOf('bologna') });
    const [first] = file.groundHeaders;
    if (first === undefined) throw new Error('no ground');
    const { depth, monthlyMeans } = first;
    expect(groundHeader({ depth, monthlyMeans }, { monthlyMeans: file.monthlyMeans, coldestMonthStart: 31 })).toEqual(first);
  });
});

it('days count the nearer way round the year', () => {
  expect([daysAfter(dayOfYear(5), dayOfYear(360)), daysAfter(dayOfYear(360), dayOfYear(5)), daysAfter(dayOfYear(60), dayOfYear(20))]).toEqual([
    10, -10, 40,
  ]);
});
