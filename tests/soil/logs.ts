import fc from 'fast-check';
import type { LayeredGround, SoilLayer } from '../../src/soil/index.js';
import { metres, type Length } from '../../src/units/index.js';
import { log } from '../published/soil-layers.checks.js';

/** Pipes at places in metres: sideways and depth. */
export const pipes = (...places: readonly (readonly [x: number, depth: number])[]): LayeredGround['pipes'] =>
  places.map(([x, depth]) => ({ x: metres(x), depth: metres(depth) }));

/** Two levels of two pipes. */
export const FOUR: LayeredGround['pipes'] = pipes([-0.15, 1.5], [0.15, 1.5], [-0.15, 1.8], [0.15, 1.8]);

/** One pipe, two side by side, or four. */
export const arbitraryPipes: fc.Arbitrary<LayeredGround['pipes']> = fc.constantFrom(pipes([0, 1.5]), pipes([-0.2, 1.5], [0.2, 1.5]), FOUR);

/** A conductivity that differs at most fourfold from another such. */
export const arbitraryConductivity: fc.Arbitrary<number> = fc.double({ min: Math.log(0.6), max: Math.log(2.4), noNaN: true }).map(Math.exp);

/** Two to four layers, each 0.2 m thick at least. */
export const arbitraryLog: fc.Arbitrary<readonly SoilLayer[]> = fc
  .array(fc.tuple(arbitraryConductivity, fc.double({ min: 0.2, max: 1, noNaN: true })), { minLength: 2, maxLength: 4 })
  .map((layers) => {
    let bottom = 0;
    return log(
      ...layers.map(([conductivity, thickness]): readonly [number, number] => {
        bottom += thickness;
        return [conductivity, bottom];
      }),
    );
  });

/** The conductivity of each layer. */
export const conductivities = (layers: readonly SoilLayer[]): readonly number[] => layers.map(({ thermal }) => thermal.conductivity);

/** The depth of each interface. */
export const interfaces = (layers: readonly SoilLayer[]): readonly Length[] => layers.slice(0, -1).map(({ bottom }) => bottom);
