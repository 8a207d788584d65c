import { demand, InputError } from '../errors/index.js';
import type { AnnualWave, Band } from '../states/index.js';
import type { DayOfYear, Kind, Quantity, SurfaceCoefficient, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { offsetFindings } from './climate-findings.js';
import type { CoveredResponse, CoveredSurface, CoveredSurfaceInput } from './covered-surface-result.js';
import { demandConductivity } from './ground-heat-flux.js';
import { DAY, demandDiffusivity } from './limits.js';
import { coveredCourse, type OpenSurface, steadyResistance, STEPS } from './snow-covered-course.js';
import { snowFindings } from './snow-findings.js';
import { type Snow, snowResistances, snowThroughYear } from './snow-months.js';
import { COVERAGE, SNOW_SPREAD, SURFACE_COVERS } from './surface-covers.data.js';
import type { SurfaceOffsets } from './surface-offsets.js';
import { surfaceWaveFromAir } from './surface-wave-from-air.js';
import { type Sines, sinesOf } from './two-sines.js';
import { wrapDay } from './wave-at-depth.js';

/**
 * The yearly wave of a ground surface that snow covers for a part of the year, and the same cover for the loop's own disturbance.
 *
 * Snow keeps the winter out and the summer in: the surface is warmer on average, swings less, and its winter is flat. It insulates the loop from
 * the air just as well, so that whoever takes this wave must take a response below a film too; the two that hold the truth between them are given.
 * Below closed snow the surface is at most at 0 °C, since a warmer one melts the snow. Not in here: freezing and thawing of the ground itself,
 * heat stored in the snow, meltwater. A surface that is swept, or `pavement`, has no snow.
 *
 * @param input - wave of the air, cover without snow, snow by month (0.05 m count as closed), conductivity [W/(m.K)] and diffusivity [m2/s] of the ground
 * @returns the wave with its second harmonic, unfavourable sides and offsets, the snow's resistance [m2.K/W], the films for the response, findings
 * @throws InputError when a number is impossible, the air does not swing, or the cover is `lasting snow`, which would count the snow twice
 * @remarks
 * Periodic conduction at 73 equally spaced times of the year, the flux by its harmonics; mean and first two harmonics of the result. The limits are those of the cover
 * with half and one and a half of the snow, at their four corners. Sources: `sturm1997`, `carslawJaeger1959`; the bound of 0 °C is `common practice`. Checked against a
 * finite-volume run, within 0.06 K and three quarters of a day. On the one snowy record (`climateReferenceNetwork`; grass, usual snow of the region, since none was measured) mean
 * offset +2.2 K (2.25 measured), amplitude ratio 0.74 (0.73), lag 6.9 days (7.2); at 1 m 1.1 K off through the year with the second harmonic.
 *
 * Invariants: without snow the wave is that of `surfaceWaveFromAir`; more air or cover warmth never cools the surface.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, dayOfYear, days, kelvinDifference, metres, squareMetresPerDay, wattsPerMetreKelvin } = await import('../units/index.js');
 * const air = { of: 'air', mean: celsius(6.1), amplitude: kelvinDifference(14.8), coldestDay: dayOfYear(18.7), period: days(365) } as const;
 * const snow = [0.2, 0.25, 0.15, 0.02, 0, 0, 0, 0, 0, 0, 0.03, 0.12].map((depth) => ({ depth: metres(depth) }));
 * const ground = { conductivity: wattsPerMetreKelvin(1.5), diffusivity: squareMetresPerDay(0.05) };
 * const { offsets, response } = coveredSurface({ air, cover: 'grass', snow, ...ground });
 * expect(offsets.meanOffset.estimate).toBeCloseTo(2.2, 1);
 * expect(offsets.amplitudeRatio.estimate).toBeCloseTo(0.74, 2);
 * expect(response.covered.coefficient).toBeLessThan(response.open.coefficient / 30);
 * ```
 */
export function coveredSurface({ snow, conductivity, diffusivity, ...knowledge }: CoveredSurfaceInput): CoveredSurface {
  const { air } = knowledge;
  const { offsets: open } = surfaceWaveFromAir(knowledge);
  demand('air.amplitude', 'temperature difference', air.amplitude, { above: 0 }, 'air that does not swing brings no snow');
  demandConductivity(conductivity);
  demandDiffusivity(diffusivity);
  const resistances = snowResistances(snow);
  const most = Math.max(...resistances);
  if (most > 0 && open.cover === 'lasting snow') {
    const hint = 'snow would count twice; name the cover below the snow, such as grass';
    throw new InputError({
      code: 'impossible',
      argument: 'cover',
      value: open.cover,
      allowed: 'any cover but lasting snow beside snow by month',
      hint,
    });
  }
  const year = snowThroughYear(snow, resistances, STEPS);
  const surface = (offset: number, ratio: number): OpenSurface => ({
    mean: air.mean + offset,
    amplitude: air.amplitude * ratio,
    coldest: ((air.coldestDay - 1) * DAY + open.lag.estimate) / air.period,
    effusivity: conductivity / Math.sqrt(diffusivity),
    period: air.period,
  });
  const { meanOffset, amplitudeRatio } = open;
  const likely = surface(meanOffset.estimate, amplitudeRatio.estimate);
  const course = coveredCourse(likely, year);
  const sines = sinesOf(course.temperatures);
  const { little, much } = SNOW_SPREAD;
  const corners = [
    [meanOffset.low, amplitudeRatio.high, little],
    [meanOffset.high, amplitudeRatio.high, little],
    [meanOffset.low, amplitudeRatio.low, much],
    [meanOffset.high, amplitudeRatio.low, much],
  ] as const;
  const sides = corners.map(([offset, ratio, factor]) => sinesOf(coveredCourse(surface(offset, ratio), scaled(year, factor)).temperatures));
  const offsets = most === 0 ? open : offsetsOf(air, open, sines, sides);
  const meanGain = (offsets.meanOffset.estimate - meanOffset.estimate) as TemperatureDifference;
  const day = (share: number): DayOfYear => wrapDay(1 + (share * air.period) / DAY, air.period) as DayOfYear;
  const wave = (offset: TemperatureDifference, ratio: number): AnnualWave => ({
    of: 'ground surface',
    mean: (air.mean + offset) as Temperature,
    amplitude: (air.amplitude * ratio) as TemperatureDifference,
    coldestDay: wrapDay(air.coldestDay + offsets.lag.estimate / DAY, air.period) as DayOfYear,
    period: air.period,
  });
  return {
    wave: wave(offsets.meanOffset.estimate, offsets.amplitudeRatio.estimate),
    secondHarmonic: { amplitude: sines.second.amplitude as TemperatureDifference, coldestDay: day(sines.second.coldest) },
    coldSide: wave(offsets.meanOffset.low, offsets.amplitudeRatio.high),
    warmSide: wave(offsets.meanOffset.high, offsets.amplitudeRatio.high),
    offsets,
    openOffsets: open,
    snowResistances: resistances,
    meltingTime: ((course.melting * air.period) / STEPS) as Time,
    remainder: sines.remainder as TemperatureDifference,
    response: responseOf(SURFACE_COVERS[open.cover].coefficient, steadyResistance(likely, year), most),
    findings: [...offsetFindings(offsets), ...snowFindings({ air, snow, resistances, meanGain })],
  };
}

const scaled = (year: readonly Snow[], factor: number): readonly Snow[] =>
  year.map(({ resistance, closed }) => ({ resistance: factor * resistance, closed }));

/** Offsets of the surface below snow, with the limits of cover and snow together. */
function offsetsOf(air: AnnualWave, open: SurfaceOffsets, sines: Sines, sides: readonly Sines[]): SurfaceOffsets {
  const all = [sines, ...sides];
  const band = <K extends Kind>(estimate: number, values: readonly number[]): Band<K> => {
    const [low, high] = [Math.min(...values) as Quantity<K>, Math.max(...values) as Quantity<K>];
    return { low, estimate: estimate as Quantity<K>, high, coverage: COVERAGE } as Band<K>;
  };
  const means = all.map(({ mean }) => mean - air.mean);
  const ratios = all.map(({ first }) => first.amplitude / air.amplitude);
  const turn = sines.first.coldest - ((air.coldestDay - 1) * DAY) / air.period;
  const lag = (turn - Math.round(turn)) * air.period;
  return {
    cover: open.cover,
    meanOffset: band(means[0] ?? 0, means),
    amplitudeRatio: band(ratios[0] ?? 0, ratios),
    lag: band(lag, [lag + open.lag.low - open.lag.estimate, lag + open.lag.high - open.lag.estimate]),
    assumed: open.assumed,
  };
}

function responseOf(coefficient: number, steady: number, most: number): CoveredResponse {
  const film = (resistance: number): CoveredResponse['open'] => ({
    type: 'film',
    coefficient: (1 / (1 / coefficient + resistance)) as SurfaceCoefficient,
  });
  return { open: film(0), steady: film(steady), covered: film(most) };
}
