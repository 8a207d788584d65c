import { demand, demandObject, InputError, locate } from '../errors/index.js';
import type { GroundSurface, Layout } from '../ground/index.js';
import { exponentialIntegral } from '../numerics/index.js';
import type { ReferenceKey } from '../references/index.js';
import type { SoilThermal } from '../states/index.js';
import type { DayOfYear, Length, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';

/** What {@link rootZone} needs. */
export interface RootZoneInput {
  /** The pipes. */
  readonly layout: Layout;
  /** The soil without ice. */
  readonly soil: SoilThermal;
  /** The surface, open or behind a film; isothermal when left out. */
  readonly surface?: Exclude<GroundSurface, { readonly type: 'adiabatic' }>;
  /** Heat that a metre of pipe takes from afar, that of ice taken off: means of the 365 days of a year that repeats, plain numbers within ±1e4 [W/m]. */
  readonly dailyHeats: ArrayLike<number>;
  /** Undisturbed ground at the roots at the end of each of these days, plain numbers within −60 to 60 [degC]. */
  readonly rootGround: ArrayLike<number>;
  /** Depth of the roots, 0.01 to 2, above all pipes [m]. */
  readonly rootDepth: Length;
  /** Soil at the roots at which growth begins, −5 to 30; 5 when left out [degC]. */
  readonly growthTemperature?: Temperature;
}

/** Roots over a loop. */
export interface RootZone {
  /** Most that the loop cools the roots, over the middle of the field [K]. */
  readonly largestCooling: TemperatureDifference;
  /** When it does [d]. */
  readonly largestCoolingDay: DayOfYear;
  /** Coldest roots without the loop [degC]. */
  readonly coldestWithout: Temperature;
  /** Coldest roots with it [degC]. */
  readonly coldestWith: Temperature;
  /** When growth begins without the loop; absent where roots never are warm or cold enough for a spring [d]. */
  readonly springWithout?: DayOfYear;
  /** When growth begins with it [d]. */
  readonly springWith?: DayOfYear;
  /** How much later that is [s]. */
  readonly springDelay?: Time;
  /** What the numbers rest on. */
  readonly sources: readonly ReferenceKey[];
}

/** Shape of {@link RootZone} without its sources. */
export const rootZoneShape: Shape<Omit<RootZone, 'sources'>> = {
  largestCooling: 'temperature difference',
  largestCoolingDay: 'day of year',
  coldestWithout: 'temperature',
  coldestWith: 'temperature',
  springWithout: { optional: 'day of year' },
  springWith: { optional: 'day of year' },
  springDelay: { optional: 'time' },
};

const DAY = 86_400;
const DAYS = 365;
/** The heat of so many years is followed day by day; older heat is felt by its mean of the year. */
const YEARS = 4;

/**
 * How much a loop cools the roots of what grows over it, and how much later spring comes to them.
 *
 * Over the middle trench, half-way between the trenches' pipes as they lie: the place that is cooled most. The film of the surface acts as added soil. Ice within the
 * root zone itself is the climate's and left out. A loop is a cause of late grass, not of dead trees: roots may meet cold or frozen ground, and deep
 * roots may meet pipes.
 *
 * @param input - see {@link RootZoneInput}
 * @returns cooling [K], coldest roots [degC], spring [d] and its delay [s]
 * @throws InputError for a value out of its range, roots at the pipes, or series that are not of 365 days
 * @remarks Lines with mirror images, superposed day by day (`ingersoll1954`). Checked against 20 W/m² through a film and 0.2 m of soil, which is 4 K. Invariants tested:
 * proportional to the heat; no heat, no delay; deeper pipes cool less.
 * @example
 * ```ts @import.meta.vitest
 * const { joulesPerCubicMetreKelvin, metres, squareMetresPerSecond, wattsPerMetreKelvin } = await import('../units/index.js');
 * const { onePipe } = await import('../ground/index.js');
 * const wave = Array.from({ length: 365 }, (_, day) => Math.cos((2 * Math.PI * (day - 20)) / 365));
 * const { largestCooling, springDelay } = rootZone({
 *   layout: onePipe({ depth: metres(1.2), trenches: 8, trenchSpacing: metres(1) }),
 *   soil: {
 *     conductivity: wattsPerMetreKelvin(1.5),
 *     heatCapacity: joulesPerCubicMetreKelvin(2.5e6),
 *     diffusivity: squareMetresPerSecond(6e-7),
 *   },
 *   dailyHeats: wave.map((each) => 15 * Math.max(0, each)),
 *   rootGround: wave.map((each) => 10 - 9 * each),
 *   rootDepth: metres(0.2),
 * });
 * expect(largestCooling).toBeCloseTo(1.4, 0);
 * expect((springDelay ?? 0) / 86_400).toBeLessThan(14);
 * ```
 */
export function rootZone(input: RootZoneInput): RootZone {
  demandRoots(input);
  const { dailyHeats, rootGround, growthTemperature = 5 } = input;
  const gains = dailyGains(input);
  const coolings = Array.from({ length: DAYS }, (_, day) =>
    gains.reduce((sum, gain, ago) => sum + gain * (dailyHeats[(day - ago + DAYS) % DAYS] ?? 0), 0),
  );
  const without = Array.from({ length: DAYS }, (_, day) => rootGround[day] ?? 0);
  const withLoop = without.map((ground, day) => ground - (coolings[day] ?? 0));
  const largest = indexOfLeast(coolings.map((each) => -each));
  const springWithout = springOf(without, growthTemperature);
  const springWith = springOf(withLoop, growthTemperature);
  // The delay is the short way round the year.
  const later = (((springWith ?? 0) - (springWithout ?? 0) + 1.5 * DAYS) % DAYS) - DAYS / 2;
  return {
    largestCooling: (coolings[largest] ?? 0) as TemperatureDifference,
    largestCoolingDay: (largest + 2) as DayOfYear,
    coldestWithout: Math.min(...without) as Temperature,
    coldestWith: Math.min(...withLoop) as Temperature,
    ...(springWithout !== undefined && { springWithout: springWithout as DayOfYear }),
    ...(springWith !== undefined && { springWith: springWith as DayOfYear }),
    ...(springWithout !== undefined && springWith !== undefined && { springDelay: (later * DAY) as Time }),
    sources: ['ingersoll1954'],
  };
}

/** Cooling of the roots by the heat of a day, by how many days ago its end is, all years together [m.K/W]. */
function dailyGains({ layout: { pipes, trenches, trenchSpacing }, soil, surface, rootDepth }: RootZoneInput): readonly number[] {
  const { conductivity, diffusivity } = soil;
  const film = surface?.type === 'film' ? conductivity / surface.coefficient : 0;
  const middle = Math.floor((trenches - 1) / 2);
  const squares = Array.from({ length: trenches }, (_, trench) =>
    pipes.map(({ x, depth }) => {
      const across = (trench - middle) * trenchSpacing + x;
      return [across * across + (depth - rootDepth) ** 2, across * across + (depth + rootDepth + 2 * film) ** 2] as const;
    }),
  ).flat();
  const rise = (days: number): number => {
    if (days === 0) return 0;
    const spread = 4 * diffusivity * days * DAY;
    return squares.reduce((sum, [direct, mirrored]) => sum + exponentialIntegral(direct / spread) - exponentialIntegral(mirrored / spread), 0);
  };
  const rises = Array.from({ length: YEARS * DAYS + 1 }, (_, days) => rise(days) / (4 * Math.PI * conductivity));
  const steady = squares.reduce((sum, [direct, mirrored]) => sum + Math.log(mirrored / direct), 0) / (4 * Math.PI * conductivity);
  const older = (steady - (rises.at(-1) ?? steady)) / DAYS;
  return Array.from({ length: DAYS }, (_, ago) => {
    let gain = older;
    for (let days = ago; days < YEARS * DAYS; days += DAYS) gain += (rises[days + 1] ?? 0) - (rises[days] ?? 0);
    return gain;
  });
}

function indexOfLeast(values: readonly number[]): number {
  return values.reduce((best, value, index) => (value < (values[best] ?? Infinity) ? index : best), 0);
}

/** The day, with its part, on which roots that were colder become as warm as that for the first time after their coldest. */
function springOf(values: readonly number[], threshold: number): number | undefined {
  const coldest = indexOfLeast(values);
  if (!((values[coldest] ?? 0) < threshold)) return undefined;
  for (let after = 1; after <= DAYS; after += 1) {
    const now = values[(coldest + after) % DAYS] ?? 0;
    const before = values[(coldest + after - 1) % DAYS] ?? 0;
    if (now >= threshold) return ((coldest + after - 1 + (threshold - before) / (now - before)) % DAYS) + 2;
  }
  return undefined;
}

function demandRoots(input: RootZoneInput): void {
  const { layout, soil, surface, dailyHeats, rootGround, rootDepth, growthTemperature } = input;
  demandObject('layout', layout);
  locate('layout', () => {
    demand('pipes.length', 'count', layout.pipes.length, { atLeast: 1, atMost: 10_000 });
    demand('trenches', 'count', layout.trenches, { atLeast: 1, atMost: 10_000 });
    demand('trenchSpacing', 'length', layout.trenchSpacing, { atLeast: 0, atMost: 1e4 });
  });
  demandObject('soil', soil);
  demand('soil.conductivity', 'conductivity', soil.conductivity, { atLeast: 0.05, atMost: 10 });
  demand('soil.diffusivity', 'diffusivity', soil.diffusivity, { atLeast: 1e-8, atMost: 1e-4 });
  if (surface?.type === 'film') demand('surface.coefficient', 'surface coefficient', surface.coefficient, { atLeast: 0.05, atMost: 1000 });
  demand('rootDepth', 'length', rootDepth, { atLeast: 0.01, atMost: 2 });
  if (growthTemperature !== undefined) demand('growthTemperature', 'temperature', growthTemperature, { atLeast: -5, atMost: 30 });
  demandDays('dailyHeats', 'heat per pipe length', dailyHeats, 1e4);
  demandDays('rootGround', 'temperature', rootGround, 60);
  const shallowest = Math.min(...layout.pipes.map(({ depth }) => depth));
  if (!(rootDepth < shallowest - 0.05)) {
    throw new InputError({
      code: 'impossible',
      argument: 'rootDepth',
      value: { kind: 'length', value: rootDepth },
      allowed: `at least 0.05 m above the shallowest pipe, ${String(shallowest)} m`,
      hint: 'roots at the pipes have the temperature of the pipes',
    });
  }
}

function demandDays(name: string, kind: 'heat per pipe length' | 'temperature', series: ArrayLike<number>, most: number): void {
  if (!Array.isArray(series)) demandObject(name, series);
  demand(`${name}.length`, 'count', series.length, { atLeast: DAYS, atMost: DAYS });
  const values: readonly number[] = Array.from(series);
  for (const [day, value] of values.entries()) demand(`${name}.${String(day)}`, kind, value, { atLeast: -most, atMost: most });
}
