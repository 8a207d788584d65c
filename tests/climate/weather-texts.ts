import { readFileSync } from 'node:fs';
import { loadFixture } from '../support/fixture.js';

/** The public files that the tests have hours and an excerpt of. */
export type PublicFile = 'chicago' | 'bologna' | 'pvgis' | 'greensboro';
export const PUBLIC_FILES: readonly PublicFile[] = ['chicago', 'bologna', 'pvgis', 'greensboro'];

/** The names under which the tables of checks have them. */
export const FILE_NAMES: Readonly<Record<PublicFile, string>> = {
  chicago: 'USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw',
  bologna: 'ITA_ER_Bologna-Marconi.AP.161400_TMYx.2004-2018.epw',
  pvgis: 'PVGIS_tmy_45.000_8.000_2005_2023.epw',
  greensboro: 'TMY3_723170TYA_Greensboro_NC.csv',
};

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const dryBulbs = loadFixture('weather-dry-bulbs');

/** The dry bulbs of a file as they are written. */
export const dryBulbsOf = (file: PublicFile): readonly string[] => dryBulbs.rows.map((row) => row.text(FILE_NAMES[file]));

/** Header and first day of a file, byte for byte. */
export function excerptOf(file: PublicFile): string {
  const name = `weather-excerpt-${file}.${file === 'greensboro' ? 'tmy3' : 'epw'}`;
  return readFileSync(new URL(`../fixtures/${name}`, import.meta.url), 'latin1');
}

export interface Hour {
  readonly month: number;
  readonly day: number;
  readonly hour: number;
}

/** Every hour of a year in order, hour 1 to 24. */
export function hoursOfYear(leap = false): readonly Hour[] {
  const days = MONTH_DAYS.map((each, month) => each + (leap && month === 1 ? 1 : 0));
  return days.flatMap((count, month) =>
    Array.from({ length: 24 * count }, (_, hour) => ({ month: month + 1, day: 1 + Math.floor(hour / 24), hour: 1 + (hour % 24) })),
  );
}

const two = (number: number): string => String(number).padStart(2, '0');

/** A whole year as the file has it: its header, its dry bulbs, and the rest of each row from the same hour of its first day. */
export function wholeYearOf(file: PublicFile): string {
  const lines = excerptOf(file).trimEnd().split('\n');
  const header = lines.slice(0, -24);
  const rows = lines.slice(-24).map((line) => line.split(','));
  const bulbs = dryBulbsOf(file);
  const body = hoursOfYear().map(({ month, day, hour }, index) => {
    const cells = [...(rows[hour - 1] ?? [])];
    if (file === 'greensboro') {
      cells[0] = `${two(month)}/${two(day)}/${(cells[0] ?? '').slice(6)}`;
      cells[31] = bulbs[index] ?? '';
    } else {
      [cells[1], cells[2], cells[3], cells[6]] = [String(month), String(day), String(hour), bulbs[index] ?? ''];
    }
    return cells.join(',');
  });
  return [...header, ...body, ''].join('\n');
}

/** The eight lines of a header without entries, for a year that begins on a day. */
export const bareHeader = (start = '1/1', end = '12/31'): readonly string[] => [
  'LOCATION,Nowhere,-,NIL,made,0,50,10,1,100',
  'DESIGN CONDITIONS,0',
  'TYPICAL/EXTREME PERIODS,0',
  'GROUND TEMPERATURES,0',
  'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
  'COMMENTS 1,',
  'COMMENTS 2,',
  `DATA PERIODS,1,1,Data,Sunday,${start},${end}`,
];

/** A row with one dry bulb and fixed values else. */
export const madeRow = ({ month, day, hour }: Hour, dryBulb: number | string, year = 2021): string =>
  `${String(year)},${String(month)},${String(day)},${String(hour)},60,?9,${String(dryBulb)},1.5,80,100000,0,0,300,0,0,0,0,0,0,0,180,3.5,5,5,20,1500,0,999999999,15,0.1,0,88,0.2,0,0`;

/** A whole made year: lines that can be changed one by one before they are joined; rows begin with index 8. */
export function madeLines(dryBulbAt: (hour: number) => number | string, { leap = false, year }: { leap?: boolean; year?: number } = {}): string[] {
  return [...bareHeader(), ...hoursOfYear(leap).map((hour, index) => madeRow(hour, dryBulbAt(index), year ?? (leap ? 2020 : 2021)))];
}
