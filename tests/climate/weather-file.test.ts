import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitAnnualWave, readWeatherFile, type WeatherColumnName, type WeatherFile, weatherFileInputShape } from '../../src/climate/index.js';
import { WEATHER_COLUMN_NAMES } from '../../src/findings/climate.js';
import { EPW_COLUMNS, WEATHER_QUANTITIES } from '../../src/climate/weather-columns.data.js';
import { refuses } from '../support/bad-input.js';
import { bareHeader, dryBulbsOf, excerptOf, hoursOfYear, madeLines, madeRow, PUBLIC_FILES, wholeYearOf } from './weather-texts.js';

const texts = new Map(PUBLIC_FILES.map((file) => [file, wholeYearOf(file)]));
const files = new Map([...texts].map(([file, text]) => [file, readWeatherFile({ text })]));
const fileOf = (file: (typeof PUBLIC_FILES)[number]): WeatherFile => files.get(file) ?? readWeatherFile({ text: '' });
const codesOf = ({ findings }: WeatherFile): readonly string[] => findings.map(({ code }) => code);
const firstOf = (file: WeatherFile, name: WeatherColumnName): readonly [number | undefined, string | undefined] => [
  file.columns[name]?.numbers[0],
  file.columns[name]?.unit,
];
const wavy = (hour: number): number =>
  Number((10 - 12 * Math.cos((2 * Math.PI * (hour - 400)) / 8760) - 4 * Math.cos((Math.PI * hour) / 12)).toFixed(1));
const join = (lines: readonly string[]): string => `${lines.join('\n')}\n`;
const made = madeLines(wavy);
const madeFile = readWeatherFile({ text: join(made) });

/** Asserts that two files are alike, long rows by their bytes. */
function expectSame(file: WeatherFile, other: WeatherFile): void {
  const long = ({ temperatures, years, columns, presentWeather, sourceFlags, ...rest }: WeatherFile): readonly [readonly Buffer[], object] => {
    const read = Object.values(columns);
    const arrays = [temperatures, years, ...read.flatMap(({ numbers, missing }) => [numbers, missing])];
    const texts = [presentWeather, sourceFlags].map((each) => Buffer.from(each.join('\n')));
    const counts = read.map(({ missingHours, doubtfulHours, unit }) => [missingHours, doubtfulHours, unit]);
    return [[...arrays.map((each) => Buffer.from(each.buffer)), ...texts], { ...rest, counts }];
  };
  const [[bytes, rest], [otherBytes, otherRest]] = [long(file), long(other)];
  expect(rest).toEqual(otherRest);
  expect(bytes.map((each, index) => each.equals(otherBytes[index] ?? Buffer.alloc(0)))).toEqual(otherBytes.map(() => true));
}

describe('public files', () => {
  it.each(PUBLIC_FILES)('of %s give every dry bulb as it is written', (name) => {
    const written = dryBulbsOf(name).map(Number);
    expect(written).toHaveLength(8760);
    expect(written.filter((each, hour) => fileOf(name).temperatures[hour] !== each)).toEqual([]);
  });

  it('give place and header', () => {
    expect(fileOf('chicago').header.place).toEqual({
      city: 'Chicago Ohare Intl Ap',
      region: 'IL',
      country: 'USA',
      origin: 'TMY3',
      station: '725300',
      latitude: 41.98,
      longitude: -87.92,
      aheadOfUniversalTime: -6 * 3600,
      elevation: 201,
    });
    expect(fileOf('chicago').header.designConditions[0]).toMatchObject({
      handbook: 'Climate Design Data 2009 ASHRAE Handbook',
      coldestMonth: 1,
      heating: [
        { exceeded: 0.996, temperature: -20 },
        { exceeded: 0.99, temperature: -16.6 },
      ],
      hottestMonth: 7,
      dailyRange: 10.5,
      cooling: [
        { exceeded: 0.004, temperature: 33.3 },
        { exceeded: 0.01, temperature: 31.6 },
        { exceeded: 0.02, temperature: 30.1 },
      ],
    });
    expect(fileOf('bologna').header.periods).toHaveLength(6);
    expect(fileOf('bologna').header.periods[0]).toEqual({
      title: 'Summer - Week Nearest Max Temperature For Period',
      sort: 'Extreme',
      firstDay: 215,
      lastDay: 221,
    });
    expect(fileOf('bologna').header.comments[0]).toMatch(/^NCEI ISD - #years=\[15\].*Dec=2016$/u);
    expect(fileOf('bologna').groundHeaders[2]).toMatchObject({ depth: 4, holds: 'means from the surface down' });
    expect(fileOf('bologna').groundHeaders[2]?.monthlyMeans[11]).toBe(16.58);
    expect(fileOf('pvgis').header).toMatchObject({ designConditions: [], periods: [], holidays: [], daylightSaving: [], startWeekday: 'Thursday' });
    expect(fileOf('pvgis').header.place.station).toBe('unknown');
    expect(fileOf('greensboro').header.place).toMatchObject({
      city: 'GREENSBORO PIEDMONT TRIAD INT',
      aheadOfUniversalTime: -5 * 3600,
      elevation: 273,
    });
  });

  it('give the first hour in the units of its columns', () => {
    const chicago = fileOf('chicago');
    expect(firstOf(chicago, 'dryBulb')).toEqual([-12.2, 'degC']);
    expect(firstOf(chicago, 'dewPoint')).toEqual([-16.1, 'degC']);
    expect(firstOf(chicago, 'relativeHumidity')).toEqual([73, '%']);
    expect(firstOf(chicago, 'pressure')).toEqual([99_500, 'Pa']);
    // The first row of the file, column by column; what it marks as missing holds 0.
    const row = excerptOf('chicago').split('\n')[8]?.split(',') ?? [];
    const written = [...row.slice(6, 26), row[26], ...row.slice(28)].map((cell) => Number(cell));
    const read = EPW_COLUMNS.map(({ name }) => chicago.columns[name]);
    expect(read).toHaveLength(written.length);
    expect(read.map((column, at) => (column?.missing[0] === 1 ? written[at] : column?.numbers[0]))).toEqual(written);
    expect(read.filter((column) => column?.missing[0] === 1)).toHaveLength(4);
    expect(chicago.years[0]).toBe(1986);
    expect(chicago.presentWeather[0]).toBe('999999999');
    expect(chicago.sourceFlags[0]).toBe('?9?9?9?9E0?9?9?9?9?9?9?9?9?9?9?9?9?9?9*_*9*9*9*9*9');
  });

  it('of either format agree on units: pressure, sight and water in the air as the heading of the other has them', () => {
    const greensboro = fileOf('greensboro');
    expect(firstOf(greensboro, 'pressure')).toEqual([99_300, 'Pa']);
    expect(firstOf(greensboro, 'visibility')).toEqual([16.1, 'km']);
    expect(firstOf(greensboro, 'precipitableWater')).toEqual([15, 'mm']);
    const noon = excerptOf('greensboro').split('\n')[2 + 11]?.split(',').map(Number) ?? [];
    expect(greensboro.columns.globalIlluminance?.numbers[11]).toBe(100 * (noon[13] ?? Number.NaN));
    // Daylight has 90 to 130 lm/W.
    const efficacy = (greensboro.columns.globalIlluminance?.numbers[11] ?? 0) / (greensboro.columns.globalHorizontal?.numbers[11] ?? 1);
    expect(efficacy).toBeGreaterThan(90);
    expect(efficacy).toBeLessThan(130);
    expect(greensboro.columns.snowDepth).toBeUndefined();
    expect(greensboro.sourceFlags).toEqual([]);
  });

  it('say what they lack and what cannot be', () => {
    expect(codesOf(fileOf('chicago'))).toEqual(['weather-values-missing', 'ground-header-means']);
    expect(codesOf(fileOf('bologna'))).toEqual(['weather-values-doubtful', 'ground-header-means', 'ground-header-out-of-season']);
    expect(codesOf(fileOf('pvgis'))).toEqual(['weather-values-missing']);
    expect(codesOf(fileOf('greensboro'))).toEqual([]);
    expect(fileOf('bologna').findings[0]?.values).toEqual({ columns: ['visibility'] });
    expect(fileOf('pvgis').columns.albedo?.missingHours).toBe(8760);
  });

  it('feed the wave of the air', () => {
    const { wave } = fitAnnualWave({ of: 'air', monthlyMeans: fileOf('chicago').monthlyMeans });
    expect(wave.amplitude).toBeCloseTo(14.128, 3);
    expect(fileOf('chicago')).toMatchObject({ lowest: -22.8, highest: 35, hasLeapDay: false, step: 3600 });
    expect(fileOf('chicago').temperatures[fileOf('chicago').lowestHour]).toBe(-22.8);
  });
});

describe('a year written and read', () => {
  it('comes back, whatever its hours', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -300, max: 300 }), { minLength: 24, maxLength: 400 }), (tenths) => {
        const hours = hoursOfYear().map((_, hour) => (tenths[hour % tenths.length] ?? 0) / 10);
        const { temperatures, monthlyMeans, mean } = readWeatherFile({ text: join(madeLines((hour) => hours[hour] ?? 0)) });
        expect(temperatures.every((each, hour) => each === hours[hour])).toBe(true);
        expect(temperatures).toHaveLength(8760);
        expect(mean).toBeCloseTo(hours.reduce((sum, each) => sum + each, 0) / 8760, 9);
        expect(monthlyMeans[1]).toBeCloseTo(hours.slice(744, 1416).reduce((sum, each) => sum + each, 0) / 672, 9);
      }),
      { numRuns: 8 },
    );
  });

  it.each<[string, (lines: readonly string[]) => string]>([
    ['lines ended by carriage return and line feed', (lines) => lines.join('\r\n')],
    ['lines ended by carriage return', (lines) => lines.join('\r')],
    ['a byte-order mark', (lines) => `\uFEFF${join(lines)}`],
    ['a byte-order mark read byte by byte', (lines) => `ï»¿${join(lines)}`],
    ['no end of the last line', (lines) => lines.join('\n')],
    ['blank lines and an end-of-file mark behind', (lines) => `${join(lines)}\n  \r\n\u001A`],
    ['blanks around cells', (lines) => join(lines.map((line, at) => (at < 8 ? line : line.replaceAll(',', ' , '))))],
    ['blank cells behind a row', (lines) => join(lines.map((line, at) => (at === 100 ? `${line},, ,` : line)))],
    ['a header padded with empty cells', (lines) => join(lines.map((line, at) => (at < 8 ? `${line},,,,` : line)))],
    ['zeros with a sign', (lines) => join(lines.map((line, at) => (at < 8 ? line : line.replace(/,0,0$/u, ',-0.00,-0'))))],
    ['the singular of saving', (lines) => join(lines.map((line) => line.replace('SAVINGS', 'SAVING')))],
    ['dates with blanks', (lines) => join(lines.map((line) => line.replace('Sunday,1/1', 'Sunday, 1/ 1')))],
    ['dates in words', (lines) => join(lines.map((line) => line.replace('Sunday,1/1,12/31', 'Sunday,1 January,Dec 31')))],
    ['dates by number', (lines) => join(lines.map((line) => line.replace('Sunday,1/1,12/31', 'Sunday,1,365')))],
    ['dates with years', (lines) => join(lines.map((line) => line.replace('Sunday,1/1,12/31', 'Sunday,1/1/2021,12/31/2021')))],
    ['a quoted city', (lines) => join(lines.map((line) => line.replace('Nowhere', '"Nowhere"')))],
  ])('is the same with %s', (_, write) => {
    expectSame(readWeatherFile({ text: write(made) }), madeFile);
  });

  it('is the same wherever it begins', () => {
    for (const start of [24, 4344, 8736]) {
      const { month, day } = hoursOfYear()[start] ?? { month: 0, day: 0 };
      const rows = made.slice(8);
      const lines = [...bareHeader(`${String(month)}/${String(day)}`, '1/1'), ...rows.slice(start), ...rows.slice(0, start)];
      expectSame(readWeatherFile({ text: join(lines) }), madeFile);
    }
  });

  it('keeps quoted commas, names of days and leap years of its header', () => {
    const lines = [...made];
    lines[0] = 'location,"Saint ""X"", North",-,NIL,made,0,50,10,1,100';
    lines[4] = 'HOLIDAYS/DAYLIGHT SAVINGS,Yes,Last Sunday in March,10/31,2,New Year,1/1,"Second, of May",5/2';
    lines[5] = 'COMMENTS 1,"one, and ""two"""';
    const { header } = readWeatherFile({ text: join(lines) });
    expect(header.place.city).toBe('Saint "X", North');
    expect(header).toMatchObject({ leapYearObserved: true, daylightSaving: ['Last Sunday in March', '10/31'] });
    expect(header.holidays).toEqual([
      { title: 'New Year', date: '1/1' },
      { title: 'Second, of May', date: '5/2' },
    ]);
    expect(header.comments[0]).toBe('one, and ""two""');
  });

  it.each([
    ['DESIGN CONDITIONS,1,1,1,1', [], 1],
    ['DESIGN CONDITIONS,1,Book,,Heating,13,cold,-4', [{ exceeded: 0.99, temperature: -4 }], 1],
    [
      'DESIGN CONDITIONS,0,Book,,Heating,1,-5,-4',
      [
        { exceeded: 0.996, temperature: -5 },
        { exceeded: 0.99, temperature: -4 },
      ],
      0,
    ],
  ])('leaves design conditions as written where it does not understand them: %s', (line, heating, designSets) => {
    const { header, findings } = readWeatherFile({ text: join(made.map((each, at) => (at === 1 ? line : each))) });
    expect(header.designConditions.flatMap((set) => set.heating)).toEqual(heating);
    expect(header.designConditions[0]?.coldestMonth).toBe(designSets === 0 ? 1 : undefined);
    expect(findings).toMatchObject([{ code: 'design-conditions-unread', values: { designSets, readSets: heating.length > 1 ? 1 : 0 } }]);
  });

  it('may have several sets of design conditions', () => {
    const line = 'DESIGN CONDITIONS,2,Old,,Heating,1,-5,-4,x,Cooling,7,9,31,20,30,19,29,New,,Heating,2,-6,-5';
    const { header, findings } = readWeatherFile({ text: join(made.map((each, at) => (at === 1 ? line : each))) });
    expect(header.designConditions).toMatchObject([
      { handbook: 'Old', coldestMonth: 1, hottestMonth: 7, dailyRange: 9, cooling: [{ temperature: 31 }, { temperature: 30 }, { temperature: 29 }] },
      {
        handbook: 'New',
        coldestMonth: 2,
        heating: [{ temperature: -6 }, { temperature: -5 }],
        cooling: [],
        written: ['New', '', 'Heating', '2', '-6', '-5'],
      },
    ]);
    expect(findings).toEqual([]);
  });

  it('may lack the columns that older writers had not', () => {
    const { columns, findings } = readWeatherFile({ text: join(made.map((line, at) => (at < 8 ? line : line.split(',').slice(0, 32).join(',')))) });
    expect(columns.daysSinceSnow?.missingHours).toBe(0);
    expect(columns.albedo?.missingHours).toBe(8760);
    expect(findings[0]?.values).toEqual({ columns: ['albedo', 'liquidPrecipitation', 'liquidPrecipitationTime'] });
  });
});

describe('29 February', () => {
  const leap = madeLines((hour) => (hour >= 1416 && hour < 1440 ? 21.5 : wavy(hour)), { leap: true });

  it('is left out unless kept', () => {
    const left = readWeatherFile({ text: join(leap) });
    const kept = readWeatherFile({ text: join(leap), leapDay: 'kept' });
    expect([left.temperatures.length, left.hasLeapDay, kept.temperatures.length, kept.hasLeapDay]).toEqual([8760, false, 8784, true]);
    expect([...left.temperatures]).toEqual([...kept.temperatures.slice(0, 1416), ...kept.temperatures.slice(1440)]);
    expect(left.findings).toEqual([{ code: 'weather-leap-day-left-out', level: 'note', values: { mean: 21.5 }, source: 'common practice' }]);
    expect(kept.findings).toEqual([]);
    expect(kept.monthlyMeans[1]).toBeCloseTo(((left.monthlyMeans[1] ?? 0) * 28 + 21.5) / 29, 9);
    expect(kept.columns.albedo?.missing).toHaveLength(8784);
    expect(left.sourceFlags).toHaveLength(8760);
  });

  it('is found wherever the file begins, on itself too', () => {
    for (const [start, date] of [
      [1416, '2/29'],
      [4368, '7/1'],
    ] as const) {
      const rows = leap.slice(8);
      const text = join([...bareHeader(date, '1/1'), ...rows.slice(start), ...rows.slice(0, start)]);
      expectSame(readWeatherFile({ text }), readWeatherFile({ text: join(leap) }));
    }
  });

  it('may be absent from leap years, as in typical years', () => {
    expect([...readWeatherFile({ text: join(madeLines(wavy, { year: 2020 })) }).temperatures]).toEqual([...madeFile.temperatures]);
  });
});

describe('missing values', () => {
  it('are told from values by the code of each column', () => {
    for (const { name, cell, missingFrom } of EPW_COLUMNS.filter((column) => column.name !== 'dryBulb')) {
      const lines = [...made];
      const put = (line: number, value: string): void => {
        const cells = (lines[line] ?? '').split(',');
        cells[cell] = value;
        lines[line] = cells.join(',');
      };
      put(8, String(missingFrom));
      put(9, String(1.5 * missingFrom));
      put(10, '');
      put(11, String(WEATHER_QUANTITIES[name].lowest));
      const { columns, findings } = readWeatherFile({ text: join(lines) });
      const column = columns[name];
      expect([...(column?.missing.slice(0, 4) ?? [])]).toEqual([1, 1, 1, 0]);
      expect([...(column?.numbers.slice(0, 4) ?? [])]).toEqual([0, 0, 0, WEATHER_QUANTITIES[name].lowest]);
      expect(column?.missingHours).toBe(3);
      expect(findings[0]).toMatchObject({ code: 'weather-values-missing' });
    }
  });

  it('of a TMY3 file are those from -9900 down', () => {
    const lines = wholeYearOf('greensboro').split('\n');
    const albedos = ['-9900', '-9999', '-9899', '', '0.2'];
    const text = join(
      lines.map((line, at) =>
        at < 2 || at > 6
          ? line
          : line
              .split(',')
              .map((cell, index) => (index === 61 ? albedos[at - 2] : cell))
              .join(','),
      ),
    );
    const { columns } = readWeatherFile({ text });
    expect([...(columns.albedo?.missing.slice(0, 5) ?? [])]).toEqual([1, 1, 0, 1, 0]);
    expect([...(columns.albedo?.numbers.slice(0, 5) ?? [])]).toEqual([0, 0, -9899, 0, 0.2]);
    expect([columns.albedo?.missingHours, columns.albedo?.doubtfulHours]).toEqual([3, 1]);
  });

  it('of the dry bulb are bridged by a straight line, over the turn of the year as well', () => {
    const gap = (hours: readonly number[]): WeatherFile =>
      readWeatherFile({ text: join(madeLines((hour) => (hours.includes(hour) ? 99.9 : hour < 4000 ? 10 : 17))) });
    const over = gap([3997, 3998, 3999, 4000, 4001, 4002]);
    expect([...over.temperatures.slice(3996, 4004)]).toEqual([10, 11, 12, 13, 14, 15, 16, 17].map((each): unknown => expect.closeTo(each, 9)));
    expect(over.findings).toEqual([
      { code: 'weather-hours-bridged', level: 'warning', values: { bridgedHours: 6, longestGap: 6 * 3600 }, source: 'common practice' },
    ]);
    expect(over.columns.dryBulb?.missingHours).toBe(6);
    const turn = gap([8758, 8759, 0, 1, 2, 500]);
    expect(turn.findings[0]?.values).toEqual({ bridgedHours: 6, longestGap: 5 * 3600 });
    expect(turn.temperatures[0]).toBeCloseTo(17 - (7 * 3) / 6, 9);
  });

  it('are named alike where they are found and where they are told', () => {
    expect([...WEATHER_COLUMN_NAMES].sort()).toEqual(Object.keys(WEATHER_QUANTITIES).sort());
  });
});

it('bad input is refused by name, a WeatherFileError for what stands in the text', () => {
  refuses(readWeatherFile, weatherFileInputShape, { text: join(made), leapDay: 'kept' });
});

it('a row is what the made file has', () => {
  expect(madeRow({ month: 1, day: 1, hour: 1 }, 5).split(',')).toHaveLength(35);
});
