import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { superposedRise } from '../../src/operation/index.js';
import { hours, pipeMetreKelvinPerWatt, type Shape, type HeatPerPipeLength, type Time, wattsPerPipeMetre } from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';
import { loadSource, rooms, sourceFiles } from '../support/sources.js';

/** Rooms whose functions compute with what a caller gives. */
const BELOW_COMPUTATION = ['units', 'states', 'errors', 'findings', 'references', 'safety', 'numerics'];
const TEXT_ONLY = ['document', 'report'];
const sources = new Set(sourceFiles().map(({ path }) => path));
const doors = await Promise.all(
  rooms()
    .filter((room) => !BELOW_COMPUTATION.includes(room) && !TEXT_ONLY.includes(room) && sources.has(`${room}/index.ts`))
    .map(async (room) => ({
      room,
      functions: Object.entries(await loadSource(`${room}/index.ts`)).flatMap(([name, value]) => (typeof value === 'function' ? [name] : [])),
    })),
);

/** Public functions that no test feeds generated faults, and why not. */
const EXCUSED: Readonly<Record<string, string>> = {};

const folder = new URL('../', import.meta.url);
const tests = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.test.ts'))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'))
  .filter((text) => /\brefuses\b|\bfaultsOf\b/u.test(text));

describe('every public function', () => {
  it.each(doors)('of $room is fed the faults of its input by some test, or says why not', ({ functions }) => {
    expect(functions.length).toBeGreaterThan(0);
    const unfed = functions.filter((name) => !tests.some((text) => new RegExp(`\\b${name}\\b`, 'u').test(text)));
    expect(unfed.filter((name) => EXCUSED[name] === undefined)).toEqual([]);
  });

  it('that is excused exists and is not fed after all', () => {
    const all = doors.flatMap(({ functions }) => functions);
    expect(Object.keys(EXCUSED).filter((name) => !all.includes(name))).toEqual([]);
  });
});

describe('superposedRise', () => {
  const shape: Shape<{ readonly heat: readonly HeatPerPipeLength[]; readonly step: Time }> = { heat: { list: 'heat per pipe length' }, step: 'time' };
  const riseAfter = (time: Time): ReturnType<typeof pipeMetreKelvinPerWatt> => pipeMetreKelvinPerWatt(Math.log1p(time) / 10);

  it('refuses bad input by name', () => {
    refuses((input) => superposedRise({ ...input, riseAfter }), shape, { heat: [wattsPerPipeMetre(10), wattsPerPipeMetre(-4)], step: hours(6) });
  });
});
