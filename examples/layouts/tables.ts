// The comparison as tables, in the units of the reader.
import { show, type UnitSystem } from 'loamloop/report';
import { cubicMetres, cubicYards, pipeHourFootFahrenheitPerBtu, type Volume } from 'loamloop/units';
import type { Compared } from './compared.js';
import type { Kind } from './every-layout.js';
import { explained } from './explained.js';

export const title = (system: UnitSystem, { name, pitch }: Kind): string =>
  pitch === undefined ? name : `${name}, ${show(system)('length', pitch)} pitch`;

const line = (first: string, cells: readonly string[], width: number): string =>
  `  ${first.padEnd(26)}${cells.map((cell) => cell.padStart(width)).join('')}`;
export const earthOf = (system: UnitSystem, volume: Volume): string =>
  system === 'us' ? `${cubicYards.of(volume).toFixed(0)} yd³` : `${cubicMetres.of(volume).toFixed(0)} m³`;

/** What each layout takes, and how cold its fluid gets; least pipe first. */
export function costTable(rows: readonly Compared[], system: UnitSystem): readonly string[] {
  const write = show(system);
  return [
    line('', ['needs', 'needs', 'needs', '', '', '', '', 'settled', 'settled', '1st winter', '1st winter'], 11),
    line('', ['settled', '1st winter', 'with ice', 'coils', 'trench', 'land', 'earth', 'no ice', 'with ice', 'no ice', 'with ice'], 11),
    ...rows.map((row) =>
      line(
        title(system, row.kind),
        [
          write('pipe length', row.needed),
          write('pipe length', row.neededLoose),
          write('pipe length', row.neededIced),
          String(row.coils),
          write('trench length', row.trench),
          write('area', row.land),
          earthOf(system, row.earth),
          ...[row.settled.withoutIce, row.settled.withIce, row.firstWinter.withoutIce, row.firstWinter.withIce].map((each) =>
            write('temperature', each),
          ),
        ],
        11,
      ),
    ),
  ];
}

/** What makes the difference, each by itself, beside the first row. */
export function reasonTable(rows: readonly Compared[], system: UnitSystem): readonly string[] {
  const write = show(system);
  const [first] = rows;
  if (first === undefined) return [];
  return [
    line('', ['coldest', 'neighbours', 'surface', 'fill', 'resistance', 'ground', 'together', 'by hours'], 12),
    ...rows.map((row) => {
      const { coldestGround, byNeighbours, bySurface, fill } = row.makings;
      const { byResistance, byGround, together, hourByHour } = explained(row, first);
      return line(
        title(system, row.kind),
        [
          write('temperature', coldestGround),
          ...[byNeighbours, bySurface].map((each) => `× ${each.toFixed(2)}`),
          (system === 'us' ? pipeHourFootFahrenheitPerBtu.of(fill.settled) : fill.settled).toFixed(3),
          ...[byResistance, byGround, together, hourByHour].map((each) => `× ${each.toFixed(2)}`),
        ],
        12,
      );
    }),
  ];
}
