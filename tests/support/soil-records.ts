import type { DatedTemperature, GroundReading } from '../../src/climate/index.js';
import { celsius, dayOfYear, metres } from '../../src/units/index.js';
import { type FixtureRow, loadFixture } from './fixture.js';

/** A measured record of a station, or a part of one. */
export interface SoilRecord {
  /** Readings at all depths. */
  readonly readings: readonly GroundReading[];
  /** Depths that were read [m]. */
  readonly depths: readonly number[];
  /** The air, where it was recorded. */
  readonly air: readonly DatedTemperature[];
}

const STATIONS: Readonly<Record<string, { readonly file: string; readonly first: number; readonly year?: string }>> = {
  'USCRN_KS_Manhattan 2010-2016': { file: 'soil-record-manhattan', first: 2010 },
  'USCRN_KS_Manhattan 2014 only': { file: 'soil-record-manhattan', first: 2014, year: '2014' },
  'USCRN_MN_Sandstone 2020': { file: 'soil-record-sandstone', first: 2020 },
  'USGS_MN_Princeton_MC11 1993 (1 Mar-30 Nov)': { file: 'soil-record-princeton', first: 1993 },
};

const FIVE = ['005', '010', '020', '050', '100'];
const DEEP = ['050', '100', '150', '200', '250'];
const AIR = 't_air_avg_c';

const records = new Map<string, SoilRecord>();

/** The record of a name, as the tables of fits name it; read once. */
export function soilRecord(name: string): SoilRecord {
  const known = records.get(name) ?? readRecord(name);
  records.set(name, known);
  return known;
}

function readRecord(name: string): SoilRecord {
  const station = STATIONS[name];
  if (station === undefined) throw new Error(`no record ${name}`);
  const rows = loadFixture(station.file).rows.filter((row) => row.text('date').startsWith(station.year ?? ''));
  const noon = (row: FixtureRow): number => (Date.parse(row.text('date')) - Date.UTC(station.first, 0, 1)) / 86_400_000 + 1.5;
  const deep = station.file === 'soil-record-princeton';
  const depths = deep ? DEEP : FIVE;
  const column = (row: FixtureRow, name: string): readonly DatedTemperature[] =>
    row.has(name) ? [{ day: dayOfYear(noon(row)), temperature: celsius(row.number(name)) }] : [];
  return {
    readings: depths.flatMap((depth) =>
      rows.flatMap((row) => column(row, `t_soil_${depth}cm_c`).map((reading) => ({ ...reading, depth: metres(Number(depth) / 100) }))),
    ),
    depths: depths.map((depth) => Number(depth) / 100),
    air: deep ? [] : rows.flatMap((row) => column(row, AIR)),
  };
}
