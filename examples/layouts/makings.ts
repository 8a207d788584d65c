// What makes a layout what it is, each cause by itself.
import { customLayout, exponentialResponse, onePipe, pipeGround } from 'loamloop/ground';
import { effectiveConductivity } from 'loamloop/soil';
import type { SoilThermal } from 'loamloop/states';
import { celsius, days, type Length, metres, pipeMetreKelvinPerWatt, type PipeResistance, ratio, type Ratio, type Temperature } from 'loamloop/units';
import type { Kind, Laid } from './every-layout.js';
import { pipe, soil, wave } from './house.js';

/** Over so long a part of the winter what the ground does is told apart. */
export const SEASON = days(90);

/** What makes a layout what it is, each by itself. */
export interface Makings {
  /** Coldest that the ground at the pipes comes to without the loop, over all pipes. */
  readonly coldestGround: Temperature;
  readonly meanDepth: Length;
  /** Rise of the wall after a season, per heat per metre, of one such pipe alone at the depths of the layout. */
  readonly alone: PipeResistance;
  /** The same rise in the layout over that alone: what neighbours cost. */
  readonly byNeighbours: Ratio;
  /** The same rise below a surface that lets no heat through over that below the open one: what the surface gives. */
  readonly bySurface: Ratio;
  /** Pipe wall and film in the cold, and what the ends of a circuit cost. */
  readonly wallAndFilm: PipeResistance;
  readonly circuitEnds: PipeResistance;
  /** What fill adds. */
  readonly fill: { readonly firstWinter: PipeResistance; readonly settled: PipeResistance };
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** What a fill adds to each metre of pipe, the mean over the trenches of a group. */
export function addedByFill({ sections, trenchWidth, trenchDepth }: Kind, thermal: SoilThermal): PipeResistance {
  const layers = [{ top: metres(0), bottom: metres(5), thermal: soil }];
  const added = sections.map((pipes) => {
    const outermost = Math.max(...pipes.map(({ x }) => Math.abs(x)));
    const width = metres(Math.max(trenchWidth, 2 * outermost + trenchWidth / pipes.length));
    return effectiveConductivity({ layers, pipes, outsideDiameter: pipe.outsideDiameter, fill: { width, depth: trenchDepth, thermal } })
      .addedResistance;
  });
  return pipeMetreKelvinPerWatt(mean(added));
}

/** The undisturbed ground that all pipes of a layout feel on the mean. */
export function groundOf({ sections }: Kind): ReturnType<typeof pipeGround> {
  const pipes = sections.flatMap((section, trench) => section.map(({ x, depth }) => ({ x: metres(x + 8 * trench), depth })));
  return pipeGround({ layout: customLayout({ pipes, trenches: 1, trenchSpacing: metres(40) }), pipe, soil, wave });
}

/** The causes of a layout, with what wall, film, ends and fill came to. */
export function makingsOf(kind: Kind, laid: Laid, circuitEnds: PipeResistance, film: PipeResistance, fill: Makings['fill']): Makings {
  const depths = kind.sections.flat().map(({ depth }) => depth);
  const alone = mean(
    depths.map((depth) => exponentialResponse({ layout: onePipe({ depth, trenches: 1, trenchSpacing: metres(4) }), pipe, soil }).riseAfter(SEASON)),
  );
  const { loop } = groundOf(kind);
  const rise = laid.response.riseAfter(SEASON);
  return {
    coldestGround: celsius(loop.mean - loop.amplitude),
    meanDepth: metres(mean(depths)),
    alone: pipeMetreKelvinPerWatt(alone),
    byNeighbours: ratio(rise / alone),
    bySurface: ratio(laid.sealedAfter(SEASON) / rise),
    wallAndFilm: film,
    circuitEnds,
    fill,
  };
}
