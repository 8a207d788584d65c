import { demand, demandCount } from '../errors/index.js';
import { type Complex, times } from '../numerics/index.js';
import { joinedShape } from '../states/index.js';
import type { HeatPerPipeLength, Shape, SurfaceCoefficient, SurfaceResistance, TemperatureDifference, Time } from '../units/index.js';
import { type FilmResponseInput, filmResponseInputShape } from './film-response.js';
import { foldedRise, foldedSteps } from './folded-steps.js';
import { groundResponse } from './ground-response.js';
import { groundPipes } from './ground-pipes.js';
import { changingSurface, constantSurface, HARMONICS, type SurfaceAnswer, surfacePart, TIMES } from './seasonal-surface.js';

/** What a loop below snow of a season is computed from; `coefficient` is that of the surface without snow. */
export interface SeasonalFilmInput extends FilmResponseInput {
  /** Resistance of the snow in the middle of each month, January first, 0 to 9.9; 0 where there is none or it is cleared [m2.K/W]. */
  readonly snowResistances: readonly SurfaceResistance[];
  /** Heat that each pipe gives to the ground in each month of a year that repeats, January first; negative where taken, within ±1e4 [W/m]. */
  readonly heat: readonly HeatPerPipeLength[];
}

/** Shape of {@link SeasonalFilmInput}. */
export const seasonalFilmInputShape: Shape<SeasonalFilmInput> = /* @__PURE__ */ joinedShape(filmResponseInputShape, {
  snowResistances: { list: 'surface resistance' },
  heat: { list: 'heat per pipe length' },
});

/** A loop below snow of a season. */
export interface SeasonalFilm {
  /** Change of the mean wall that the loop makes, at the end of each month, January first [K]. */
  readonly wallChanges: readonly TemperatureDifference[];
  /** The same below the surface without snow all year [K]. */
  readonly openChanges: readonly TemperatureDifference[];
  /** The same below the most snow all year [K]. */
  readonly coveredChanges: readonly TemperatureDifference[];
  /** Month at the end of which the wall has changed most, 1 is January. */
  readonly month: number;
  /**
   * The coefficient of the constant film below which the wall changes as much by the end of that month, for {@link filmResponse} [W/(m2.K)]; absent where none between
   * the two extremes does, as may be with heat of both signs.
   */
  readonly equivalentCoefficient: SurfaceCoefficient | undefined;
}

/** A year of 365 days [s]. */
const YEAR = 31_536_000;
const MONTHS = 12;
const HALVINGS = 22;

/**
 * What a loop does to its walls below snow that comes and goes, in a year that repeats: with the wave of a covered surface belongs the response below that cover.
 *
 * Snow insulates the loop from the air for its season, bare ground lets in the summer's heat the rest of the year. No constant film does both; the one given does as much in the
 * month that counts, and the open and the covered one hold the truth between them wherever heat is taken or given all year. A cleared surface is one without snow.
 * Snow is taken as a resistance without heat of its own.
 *
 * @param input - pipes, soil, coefficient of the open surface, snow and heat by month; months are twelfths of 365 days
 * @returns changes below the seasonal, the open and the covered surface, and the constant film that stands for the season
 * @throws InputError as {@link filmResponse} does, and for snow or heat out of its range
 * @remarks Conduction into uniform ground under a resistance that changes with time, by 24 harmonics of the year and waves across the field; the isothermal part by steps. Checked
 * against finite differences in two dimensions (within 1 % of the greatest change, cells of 0.15 m). Invariants tested: without snow that of {@link filmResponse}; linear in the heat;
 * for heat of one sign between open and covered.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, joulesPerCubicMetreKelvin, metres, squareMetreKelvinPerWatt, squareMetresPerSecond, wattsPerMetreKelvin, wattsPerPipeMetre, wattsPerSquareMetreKelvin } =
 *   await import('../units/index.js');
 * const { twoPipeStacked } = await import('./layout-makers.js');
 * const { wallChanges, openChanges, month, equivalentCoefficient } = seasonalFilm({
 *   layout: twoPipeStacked({ upperDepth: metres(1.2), lowerDepth: metres(1.8), trenches: 2, trenchSpacing: metres(3) }),
 *   pipe: { outsideDiameter: diameterMillimetres(33.4) },
 *   soil: { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) },
 *   coefficient: wattsPerSquareMetreKelvin(15),
 *   snowResistances: [3, 3.5, 2, 0, 0, 0, 0, 0, 0, 0, 0.5, 2].map((each) => squareMetreKelvinPerWatt(each)),
 *   heat: [-12, -11, -8, -4, 0, 0, 0, 0, 0, -4, -8, -11].map((each) => wattsPerPipeMetre(each)),
 * });
 * expect(month).toBe(2);
 * expect(wallChanges[1]).toBeLessThan(openChanges[1] ?? 0);
 * expect(equivalentCoefficient).toBeLessThan(1);
 * ```
 */
export function seasonalFilm({ coefficient, snowResistances, heat, ...input }: SeasonalFilmInput): SeasonalFilm {
  demand('coefficient', 'surface coefficient', coefficient, { atLeast: 0.1, atMost: 1e10 });
  demandMonths('snowResistances', 'surface resistance', snowResistances, { atLeast: 0, atMost: 9.9 });
  demandMonths('heat', 'heat per pipe length', heat, { atLeast: -1e4, atMost: 1e4 });
  const { places } = groundPipes(input);
  const response = groundResponse(input);
  const [folded] = foldedSteps((time: Time) => [response.riseAfter(time)], { steps: MONTHS, step: YEAR / MONTHS, walls: 1 });
  const isothermal = heat.map((_, end) => (folded === undefined ? NaN : foldedRise(folded, heat, end, response.steadyRise ?? NaN)));
  const { conductivity, diffusivity } = input.soil;
  const ground = { places, conductivity, diffusivity, period: YEAR, heat: harmonicsOf(heat) };
  const below = (answer: SurfaceAnswer): readonly TemperatureDifference[] => {
    const parts = surfacePart(ground, answer);
    return isothermal.map((rise, end) => {
      const surface = parts.reduce((sum, part, n) => sum + times(part, turn((n * (end + 1)) / MONTHS)).re, 0);
      return (rise + surface) as TemperatureDifference;
    });
  };
  const open = 1 / coefficient;
  const covered = open + Math.max(...snowResistances);
  const wallChanges = below(changingSurface(resistancesThroughYear(snowResistances).map((snow) => open + snow)));
  const sizes = wallChanges.map((each) => Math.abs(each));
  const most = sizes.indexOf(Math.max(...sizes));
  const wanted = wallChanges[most] ?? NaN;
  const changeBelow = (resistance: number): number => below(constantSurface(resistance))[most] ?? NaN;
  return {
    wallChanges,
    openChanges: below(constantSurface(open)),
    coveredChanges: below(constantSurface(covered)),
    month: most + 1,
    equivalentCoefficient: equivalent(changeBelow, wanted, { open, covered }),
  };
}

function demandMonths(
  name: string,
  kind: 'surface resistance' | 'heat per pipe length',
  values: readonly number[],
  range: { atLeast: number; atMost: number },
): void {
  demandCount(name, values, MONTHS, MONTHS);
  values.forEach((value, month) => {
    demand(`${name}.${String(month)}`, kind, value, range);
  });
}

/** The constant film with the change wanted, by halving between the extremes on a logarithmic scale. */
function equivalent(
  changeBelow: (resistance: number) => number,
  wanted: number,
  { open, covered }: { readonly open: number; readonly covered: number },
): SurfaceCoefficient | undefined {
  if (open === covered) return (1 / open) as SurfaceCoefficient;
  const [least, most] = [changeBelow(open) - wanted, changeBelow(covered) - wanted];
  if (least * most > 0) return undefined;
  let [low, high] = [open, covered];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = Math.sqrt(low * high);
    if ((changeBelow(middle) - wanted) * least > 0) low = middle;
    else high = middle;
  }
  return (1 / Math.sqrt(low * high)) as SurfaceCoefficient;
}

function turn(share: number): Complex {
  return { re: Math.cos(2 * Math.PI * share), im: Math.sin(2 * Math.PI * share) };
}

/** Heat that is even within months, by harmonics. */
function harmonicsOf(heat: readonly number[]): readonly Complex[] {
  return Array.from({ length: HARMONICS + 1 }, (_, n) => {
    const half = (Math.PI * n) / MONTHS;
    const scale = n === 0 ? 1 / MONTHS : (2 * Math.sin(half)) / half / MONTHS;
    return heat.reduce<Complex>(
      (sum, each, month) => {
        const { re, im } = turn((n * (month + 0.5)) / MONTHS);
        return { re: sum.re + scale * each * re, im: sum.im - scale * each * im };
      },
      { re: 0, im: 0 },
    );
  });
}

/** Snow at the equal times of the year; between the middles of the months it changes evenly. */
function resistancesThroughYear(snow: readonly number[]): readonly number[] {
  return Array.from({ length: TIMES }, (_, time) => {
    const place = (time / TIMES) * MONTHS - 0.5 + MONTHS;
    const before = Math.floor(place);
    const share = place - before;
    return (1 - share) * (snow[before % MONTHS] ?? NaN) + share * (snow[(before + 1) % MONTHS] ?? NaN);
  });
}
