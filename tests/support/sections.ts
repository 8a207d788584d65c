import { customLayout, groundResponse, type GroundResponse } from '../../src/ground/index.js';
import { diameterMetres, joulesPerCubicMetreKelvin, metres, squareMetresPerSecond, wattsPerMetreKelvin } from '../../src/units/index.js';
import type { Point } from './line-source.js';

/** The cross-sections of one trench by the names that the tables of outside values use. */
export const SECTIONS: Readonly<Record<string, readonly Point[]>> = {
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
  '4-pipe 2x2 0.6096 wide 1.2192/1.8288': [1.2192, 1.8288].flatMap((depth): Point[] => [
    [-0.3048, depth],
    [0.3048, depth],
  ]),
  '6-pipe 2x3 0.6096 wide 0.9144/1.2192/1.524': [0.9144, 1.2192, 1.524].flatMap((depth): Point[] => [
    [-0.3048, depth],
    [0.3048, depth],
  ]),
};

/** Pipes of one trench by the name of its section. */
export function sectionPipes(name: string): readonly Point[] {
  const pipes = SECTIONS[name];
  if (pipes === undefined) throw new Error(`no section ${name}`);
  return pipes;
}

/** The library's response of one trench, the pipes' own heat as line sources, as the tables were made. */
export function sectionResponse(name: string, radius: number, conductivity: number, diffusivity: number): GroundResponse {
  return groundResponse({
    layout: customLayout({
      pipes: sectionPipes(name).map(([x, depth]) => ({ x: metres(x), depth: metres(depth) })),
      trenches: 1,
      trenchSpacing: metres(3),
    }),
    pipe: { outsideDiameter: diameterMetres(2 * radius) },
    soil: {
      conductivity: wattsPerMetreKelvin(conductivity),
      heatCapacity: joulesPerCubicMetreKelvin(conductivity / diffusivity),
      diffusivity: squareMetresPerSecond(diffusivity),
    },
    selfTerm: 'line',
  });
}

/** A year and a month of the tables: 365.25 d and a twelfth of it [s]. */
export const YEAR: number = 365.25 * 86_400;
export const MONTH: number = YEAR / 12;
