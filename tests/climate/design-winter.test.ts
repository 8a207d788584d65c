import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { erbsSpread } from '../../src/building/index.js';
import {
  type DailyAir,
  type DesignSeason,
  type DesignSeasonInput,
  designGroundWave,
  designSeasonInputShape,
  designSummer,
  designWinter,
  fitAnnualWave,
  groundTemperatureRange,
  type SeasonMeans,
  seasonMeans,
  syntheticWeatherYear,
} from '../../src/climate/index.js';
import { seasonFindings } from '../../src/climate/design-season-findings.js';
import { dailyMeans, hardestDays } from '../../src/climate/season-of-hours.js';
import { type AnnualWave, MONTH_DAYS } from '../../src/states/index.js';
import { celsius, dayOfYear, days, hours, kelvinDifference, metres, ratio, squareMetresPerDay, type Temperature } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loadFixture } from '../support/fixture.js';
import { airDays, jointWave, type JointWave, runningMeans, type SoilDay, soilDays } from './records.js';
import { temperate } from './waves.js';

const ROWS = ['fiveDays', 'thirtyDays', 'ninetyDays'] as const;
const record = airDays('uscrn-manhattan-daily');
const recorded = seasonMeans({ season: 'winter', days: record });

/** Winter that a day belongs to, by the year of its end. */
const winterOf = ({ year, day }: DailyAir): number => (day > 182 ? year + 1 : year);
/** The month of a day, 0 to 11; 29 February counts as March, which moves no mean by more than 0.05 K. */
const monthOf = ({ day }: DailyAir): number => {
  let rest: number = day;
  const month = MONTH_DAYS.findIndex((length) => (rest -= length) <= 0);
  return month < 0 ? 11 : month;
};
/** Monthly means of all years of a record. */
const monthsOf = (days: readonly DailyAir[]): readonly Temperature[] =>
  MONTH_DAYS.map((_, month) => {
    const own = days.filter((day) => monthOf(day) === month);
    return celsius(own.reduce((sum, { mean }) => sum + mean, 0) / own.length);
  });

describe('one winter in ten at a station, with each of its six winters left out in turn', () => {
  const cases = recorded.flatMap(({ year }) => {
    const monthlyMeans = monthsOf(record.filter((day) => winterOf(day) !== year));
    const seasons = recorded.filter((winter) => winter.year !== year);
    const spread = erbsSpread(monthlyMeans).withinMonth;
    return [
      { name: `${String(year)}, five winters known`, design: designWinter({ monthlyMeans, seasons }) },
      { name: `${String(year)}, five winters known, hours with weather`, design: designWinter({ monthlyMeans, seasons, spread }) },
      { name: `${String(year)}, months alone`, design: designWinter({ monthlyMeans }) },
      { name: `${String(year)}, months alone, hours with weather`, design: designWinter({ monthlyMeans, spread }) },
    ];
  });

  it.each(cases)('$name: its 5, 30 and 90 days are below five of the six at least, and at most 2 K below the coldest', ({ design: { madeDays } }) => {
    for (const row of ROWS) {
      expect(recorded.filter((winter) => madeDays[row] < winter[row]).length).toBeGreaterThanOrEqual(5);
      expect(Math.min(...recorded.map((winter) => winter[row])) - madeDays[row]).toBeLessThanOrEqual(2);
    }
  });

  it('is made as cold as it is wanted, in every row', () => {
    for (const { design } of cases) for (const row of ROWS) expect(Math.abs(design.madeDays[row] - design.wantedDays[row])).toBeLessThan(0.05);
  });

  it('says what it rests on', () => {
    const [known, , alone] = cases;
    expect(known?.design.assumed).toEqual([]);
    expect(known?.design.findings.map(({ code }) => code)).toEqual(['few-seasons-recorded']);
    expect(known?.design.levels?.ninetyDayLevel.seasonLevel).toBe(known?.design.wantedDays.ninetyDays);
    expect(alone?.design.assumed).toEqual(['deviation of seasons', 'spread of hours']);
    expect(alone?.design.findings.map(({ code }) => code)).toEqual(['season-spread-assumed']);
  });
});

describe('the ground after one winter in ten at that station, with each winter left out in turn', () => {
  const soil = soilDays(loadFixture('uscrn-manhattan-daily'), [0.05, 0.1, 0.2, 0.5, 1]);
  const firstDay = (year: number): number => (Date.UTC(year, 0, 1) - Date.UTC(2010, 0, 1)) / 864e5;
  const isOf = (winter: number, { time }: SoilDay): boolean => time > firstDay(winter) - 92 && time < firstDay(winter) + 181;

  it.each([
    [0.5, 6],
    [1, 4],
  ])('is colder at %s m than the coldest thirty days of all %s winters that were read there, and at most 2 K below the coldest', (depth, read) => {
    const means = runningMeans(
      soil.map(({ readings }) => readings.get(depth)),
      30,
    );
    const coldest = recorded.flatMap(({ year }) => {
      // January to mid-April, when it is coldest there.
      const season = soil.filter(({ time, readings }) => time > firstDay(year) && time < firstDay(year) + 105 && readings.has(depth));
      return season.length < 90
        ? []
        : [
            Math.min(
              ...means.flatMap((mean, index) =>
                mean !== undefined && isOf(year, soil[index] ?? { year, time: NaN, readings: new Map() }) ? [mean] : [],
              ),
            ),
          ];
    });
    expect(coldest).toHaveLength(read);
    for (const { year } of recorded) {
      const joint = jointWave(soil.filter((day) => !isOf(year, day)));
      const monthlyMeans = monthsOf(record.filter((day) => winterOf(day) !== year));
      const { wave } = designWinter({
        monthlyMeans,
        seasons: recorded.filter((winter) => winter.year !== year),
        wave: surfaceOf(joint),
        amplitudeRatio: ratio(0.94),
      });
      if (wave === undefined) throw new Error('the wave was given');
      const { lowest } = groundTemperatureRange({ wave, depth: metres(depth), diffusivity: squareMetresPerDay(joint.diffusivity) });
      expect(coldest.every((each) => lowest < each)).toBe(true);
      expect(Math.min(...coldest) - lowest).toBeLessThan(2);
    }
  });
});

/** The wave of the surface out of a joint fit, from its lowest and highest day. */
function surfaceOf({ at }: JointWave): AnnualWave {
  const year = Array.from({ length: 3653 }, (_, tenth) => at(0, tenth / 10));
  const [lowest, highest] = [Math.min(...year), Math.max(...year)];
  return {
    of: 'ground surface',
    mean: celsius((lowest + highest) / 2),
    amplitude: kelvinDifference((highest - lowest) / 2),
    coldestDay: dayOfYear(1 + year.indexOf(lowest) / 10),
    period: days(365.25),
  };
}

const chicago = [-4.6, -2.5, 3.8, 10, 15.3, 21.1, 24.1, 21.8, 18.1, 11, 4.7, -3.7].map((mean) => celsius(mean));
const flipped = (list: readonly Temperature[]): readonly Temperature[] => list.map((mean) => celsius(20 - mean));
/** Hardest days of the year that a design makes, by the hours. */
function madeBy({ monthlyMeans, spell }: DesignSeason, input: DesignSeasonInput): SeasonMeans {
  const { dailySwing, spread } = input;
  const year = syntheticWeatherYear({
    course: { from: 'monthly-air', monthlyMeans },
    ...(dailySwing && { dailySwing }),
    ...(spread && { spread }),
    ...(spell && { coldSpell: spell }),
  });
  const daily = dailyMeans(year.temperatures);
  const coldest = (length: number): Temperature => celsius(hardestDays(daily, length, -1).mean);
  return { fiveDays: coldest(5), thirtyDays: coldest(30), ninetyDays: coldest(90) };
}

describe('a design winter', () => {
  it('is made by its months, hours and spell', () => {
    const inputs: readonly DesignSeasonInput[] = [
      { monthlyMeans: chicago },
      { monthlyMeans: chicago, spread: erbsSpread(chicago).withinMonth },
      { monthlyMeans: chicago, dailySwing: { amplitude: kelvinDifference(5), warmestHour: hours(14) }, returnPeriod: 30 },
    ];
    for (const input of inputs) {
      const design = designWinter(input);
      const made = madeBy(design, input);
      for (const row of ROWS) expect(made[row]).toBeCloseTo(design.madeDays[row], 9);
      design.monthlyMeans.forEach((mean, month) => expect(mean - (chicago[month] ?? NaN)).toBeCloseTo(design.monthlyShifts[month] ?? NaN, 9));
    }
  });

  it('leaves all but three months alone, and has its spell in the coldest weeks', () => {
    const { monthlyShifts, spell, departure } = designWinter({ monthlyMeans: chicago });
    expect(monthlyShifts.slice(2, 11).every((shift) => shift === 0)).toBe(true);
    expect(spell?.day).toBeGreaterThanOrEqual(15);
    expect(spell?.day).toBeLessThan(42);
    const [january = NaN, february = NaN] = monthlyShifts;
    const taken = (-31 * (january + (monthlyShifts[11] ?? NaN)) - 28 * february + 6 * (spell?.departure ?? NaN)) / 90;
    expect(departure).toBeCloseTo(taken, 9);
  });

  it('comes half a year later on the other half of the earth, and where February is coldest around February', () => {
    const turned = (by: number): readonly Temperature[] => chicago.map((_, month) => chicago[(month + by) % 12] ?? celsius(NaN));
    for (const by of [6, 11, 1]) {
      const design = designWinter({ monthlyMeans: turned(by) });
      const coldest = (12 - by) % 12;
      expect(design.monthlyShifts[coldest]).toBe(Math.min(...design.monthlyShifts));
      const start = MONTH_DAYS.slice(0, coldest).reduce((sum, each) => sum + each, 0);
      expect(((design.spell?.day ?? NaN) - start - 1 + 365) % 365).toBeGreaterThanOrEqual(12);
      expect(((design.spell?.day ?? NaN) - start - 1 + 365) % 365).toBeLessThan(42);
      for (const row of ROWS) expect(Math.abs(design.madeDays[row] - designWinter({ monthlyMeans: chicago }).madeDays[row])).toBeLessThan(0.2);
    }
  });

  it('is colder with a longer return period, in every row', () => {
    const rows = [2, 5, 10, 30, 100].map((returnPeriod) => designWinter({ monthlyMeans: chicago, returnPeriod }).madeDays);
    for (const row of ROWS) rows.slice(1).forEach((madeDays, index) => expect(madeDays[row]).toBeLessThan(rows[index]?.[row] ?? NaN));
  });

  it('shifts with its months, and takes the wave of the ground along', () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 15, noNaN: true }), (by) => {
        const at = designWinter({ monthlyMeans: chicago, wave: temperate, amplitudeRatio: ratio(0.8) });
        const moved = designWinter({ monthlyMeans: chicago.map((mean) => celsius(mean + by)) });
        for (const row of ROWS) expect(moved.madeDays[row] - by).toBeCloseTo(at.madeDays[row], 2);
        expect(moved.departure).toBeCloseTo(at.departure, 2);
        expect(at.wave).toEqual(designGroundWave({ season: 'winter', wave: temperate, departure: at.departure, amplitudeRatio: ratio(0.8) }));
        expect(moved.wave).toBeUndefined();
      }),
      { numRuns: 10 },
    );
    expect(designWinter({ monthlyMeans: chicago, wave: temperate }).assumed).toContain('amplitude ratio');
  });

  it('lowers the ground by its months nearly as by its wave', () => {
    // A wave fitted to the lowered months keeps some of the winter all year, and less of it in the cold season.
    const { monthlyMeans, departure } = designWinter({ monthlyMeans: chicago });
    const [usual, hard] = [chicago, monthlyMeans].map((months) => fitAnnualWave({ of: 'air', monthlyMeans: months }).wave);
    if (usual === undefined || hard === undefined) throw new Error('two waves');
    const lowered = (depth: number): number => (usual.mean - hard.mean + Math.exp(-depth) * (hard.amplitude - usual.amplitude)) / departure;
    const own = designGroundWave({ season: 'winter', wave: { ...usual, of: 'ground surface' }, departure, amplitudeRatio: ratio(1) });
    const byWave = (depth: number): number => (usual.mean - own.mean + Math.exp(-depth) * (own.amplitude - usual.amplitude)) / departure;
    for (const depth of [0.5, 0.75, 1]) {
      expect(byWave(depth) - lowered(depth)).toBeGreaterThan(0);
      expect(byWave(depth) - lowered(depth)).toBeLessThan(0.25);
    }
  });

  it('without a spread between winters is as cold as its course, its thirty days and its spell', () => {
    const { madeDays, usualDays } = designWinter({ monthlyMeans: chicago, seasonDeviation: kelvinDifference(0) });
    expect(madeDays.ninetyDays).toBeCloseTo(usualDays.ninetyDays, 0);
    expect(Math.abs(usualDays.thirtyDays - madeDays.thirtyDays)).toBeLessThan(0.25);
    expect(madeDays.thirtyDays - madeDays.fiveDays).toBeCloseTo(0.85 * 6, 1);
  });

  it('assumes less where the year swings less', () => {
    const departure = (scale: number): number => designWinter({ monthlyMeans: chicago.map((mean) => celsius(10 + scale * (mean - 10))) }).departure;
    expect(departure(1)).toBeCloseTo(1.2816 * 2, 2);
    expect(departure(0.5)).toBeCloseTo(1.2816 * 0.2 * 0.5 * 14.35, 1);
    expect(departure(0)).toBeCloseTo(0, 6);
  });

  it('says so where hours spread so widely that they go further than wanted by themselves', () => {
    const seasons = [-6, -6.4, -6.2].map((mean) => ({ fiveDays: celsius(mean), thirtyDays: celsius(mean + 0.4), ninetyDays: celsius(mean + 2) }));
    const { spell, findings } = designWinter({ monthlyMeans: chicago, spread: erbsSpread(chicago).withinMonth, seasons });
    expect(spell).toBeUndefined();
    expect(findings.map(({ code }) => code)).toEqual(['few-seasons-recorded', 'design-season-missed']);
  });

  it('refuses seasons whose short rows of days are milder than their long ones, up to what missing days may do', () => {
    const days = (five: number, thirty: number, ninety: number, sign = 1): readonly SeasonMeans[] =>
      Array.from({ length: 5 }, () => ({ fiveDays: celsius(sign * five), thirtyDays: celsius(sign * thirty), ninetyDays: celsius(sign * ninety) }));
    const winter = (five: number, thirty: number, ninety: number) => () =>
      designWinter({ monthlyMeans: chicago, seasons: days(five, thirty, ninety) });
    expect(winter(-2, -5, -10)).toThrow(expect.objectContaining({ code: 'impossible', argument: 'seasons.0.fiveDays' }));
    expect(winter(-12, -5, -10)).toThrow(expect.objectContaining({ code: 'impossible', argument: 'seasons.0.thirtyDays' }));
    expect(winter(-12, -12.5, -10)).not.toThrow();
    const summer = (five: number, thirty: number, ninety: number) => () =>
      designSummer({ monthlyMeans: chicago, seasons: days(five, thirty, ninety) });
    expect(summer(24, 27, 30)).toThrow(expect.objectContaining({ code: 'impossible', argument: 'seasons.0.fiveDays' }));
    expect(summer(30, 27, 24)).not.toThrow();
  });

  it('tells of the row that came out mildest, before one that came out too hard', () => {
    const wantedDays = { fiveDays: celsius(-20), thirtyDays: celsius(-12), ninetyDays: celsius(-8) };
    const told = (five: number, thirty: number, ninety: number): unknown => {
      const madeDays = { fiveDays: celsius(five), thirtyDays: celsius(thirty), ninetyDays: celsius(ninety) };
      const found = { madeDays, monthlyShifts: [], departure: kelvinDifference(0) };
      const [finding] = seasonFindings('winter', { monthlyMeans: chicago, returnPeriod: 10 }, { wantedDays, assumed: [] }, found);
      return finding?.values;
    };
    expect(told(-23, -11.5, -7)).toMatchObject({ duration: 90 * 86_400, wanted: -8, reached: -7 });
    expect(told(-23, -12, -8.5)).toMatchObject({ duration: 5 * 86_400, reached: -23 });
    expect(told(-20.1, -12, -8)).toBeUndefined();
  });

  it('has its mirror image in the design summer of the mirrored year', () => {
    const seasons = recorded.map((winter) => ({
      fiveDays: celsius(20 - winter.fiveDays),
      thirtyDays: celsius(20 - winter.thirtyDays),
      ninetyDays: celsius(20 - winter.ninetyDays),
    }));
    const winter = designWinter({ monthlyMeans: chicago, seasons: recorded });
    const summer = designSummer({ monthlyMeans: flipped(chicago), seasons });
    for (const row of ROWS) expect(20 - summer.madeDays[row]).toBeCloseTo(winter.madeDays[row], 1);
    expect(summer.departure).toBeCloseTo(winter.departure, 1);
  });
});

describe('one summer in ten', () => {
  it('has 5, 30 and 90 days above five of seven summers, and at most 1.5 K above the hottest', () => {
    const summers = seasonMeans({ season: 'summer', days: record });
    for (const { year } of summers) {
      const monthlyMeans = monthsOf(record.filter((day) => day.year !== year));
      const { madeDays } = designSummer({ monthlyMeans, seasons: summers.filter((summer) => summer.year !== year) });
      for (const row of ROWS) {
        expect(summers.filter((summer) => madeDays[row] > summer[row]).length).toBeGreaterThanOrEqual(5);
        expect(madeDays[row] - Math.max(...summers.map((summer) => summer[row]))).toBeLessThanOrEqual(1.5);
      }
    }
  });
});

describe('bad input', () => {
  const [first, second, third] = recorded.map(({ fiveDays, thirtyDays, ninetyDays }) => ({ fiveDays, thirtyDays, ninetyDays }));
  const seasons = [first, second, third].flatMap((each) => (each === undefined ? [] : [each]));
  const common = {
    monthlyMeans: chicago,
    dailySwing: { amplitude: kelvinDifference(4), warmestHour: hours(15) },
    spread: erbsSpread(chicago).withinMonth,
    returnPeriod: 10,
    wave: temperate,
    amplitudeRatio: ratio(0.9),
  };

  it.each([
    ['winter', designWinter],
    ['summer', designSummer],
  ] as const)('of a %s is refused by name', (_, design) => {
    const hot = seasons.map(({ fiveDays, thirtyDays, ninetyDays }) => ({
      fiveDays: celsius(20 - fiveDays),
      thirtyDays: celsius(20 - thirtyDays),
      ninetyDays: celsius(20 - ninetyDays),
    }));
    const known = design === designWinter ? seasons : hot;
    refuses<DesignSeasonInput>(
      design,
      designSeasonInputShape,
      { ...common, seasons: known },
      { more: [{ ...common, seasonDeviation: kelvinDifference(2) }] },
    );
  });

  it('that does not go together is refused', () => {
    expect(() => designWinter({ ...common, seasons, seasonDeviation: kelvinDifference(2) })).toThrow('seasonDeviation');
    expect(() => designWinter({ ...common, seasons: seasons.slice(1) })).toThrow('seasons');
    const elsewhere = seasons.map((each) => ({ ...each, ninetyDays: celsius(each.ninetyDays + 40) }));
    expect(() => designWinter({ ...common, seasons: elsewhere })).toThrow('two places');
    expect(() => designSummer({ monthlyMeans: chicago.map(() => celsius(50)), spread: chicago.map(() => kelvinDifference(20)) })).toThrow(
      'monthlyMeans',
    );
  });
});
