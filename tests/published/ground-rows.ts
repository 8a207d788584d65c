import type { GroundResponse } from '../../src/ground/index.js';
import { seconds } from '../../src/units/index.js';
import type { FixtureRow } from '../support/fixture.js';

/** The cross-sections of the tables, as [x, depth] in metres. */
export const SECTIONS: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  '1-pipe 1.2192 m': [[0, 1.2192]],
  '1-pipe 1.8288 m': [[0, 1.8288]],
  '2-pipe over-under 1.2192/1.8288': [
    [0, 1.2192],
    [0, 1.8288],
  ],
  '2-pipe side 0.6096 apart 1.2192': [
    [-0.3048, 1.2192],
    [0.3048, 1.2192],
  ],
  '4-pipe 2x2 0.6096 wide 1.2192/1.8288': [1.2192, 1.8288].flatMap((depth): [number, number][] => [
    [-0.3048, depth],
    [0.3048, depth],
  ]),
  '6-pipe 2x3 0.6096 wide 0.9144/1.2192/1.524': [0.9144, 1.2192, 1.524].flatMap((depth): [number, number][] => [
    [-0.3048, depth],
    [0.3048, depth],
  ]),
};

/** The cross-section that a row names. */
export const sectionOf = (row: FixtureRow): readonly (readonly [number, number])[] => SECTIONS[row.text('section')] ?? [];
/** Pipe radius and soil of a row. */
export const soilOfRow = (row: FixtureRow): { radius: number; conductivity: number; diffusivity: number } => ({
  radius: row.number('ro_m'),
  conductivity: row.number('k_W_mK'),
  diffusivity: row.number('alpha_m2_s'),
});

/** Mean, least and greatest rise at the time of a row, which may be `inf`. */
export const risesAt = (response: GroundResponse, row: FixtureRow): { mean: number; min: number; max: number } => {
  const steady = row.text('t_s') === 'inf';
  const time = (): ReturnType<typeof seconds> => seconds(row.number('t_s'));
  const each = (steady ? response.steadyPipeRises : response.pipeRisesAfter(time()))?.flat() ?? [];
  return { mean: (steady ? response.steadyRise : response.riseAfter(time())) ?? Number.NaN, min: Math.min(...each), max: Math.max(...each) };
};

/** A row by its section and time. */
export const timed = (row: FixtureRow): string => `${row.text('section')} ${row.text('label')}`;

/** The pipes of a row that lists them as x:depth. */
export const pipesOf = (row: FixtureRow): readonly (readonly [x: number, depth: number])[] =>
  row
    .text('pipes_x:depth_m')
    .split(';')
    .map((place) => {
      const [x = Number.NaN, depth = Number.NaN] = place.split(':').map(Number);
      return [x, depth];
    });
