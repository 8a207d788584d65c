import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { DegreeDays, Length, Ratio, Shape, SurfaceResistance, Temperature, Time } from '../units/index.js';
import { coefficient } from './berggren-coefficient.js';
import { frostFindings } from './frost-findings.js';
import { demandLayers, depthWhere, type FrostLayer, frostLayerShape, frozenTo } from './frost-layers.js';
import { DAY, demandDepth, demandMean, YEAR } from './limits.js';
import { FROST_SURFACES, type FrostSurface, nFactors } from './n-factors.js';
import { demandFreezing, demandSurfaceResistance } from './stefan-frost-depth.js';

/** What {@link computedFrostDepth} needs. */
export interface ComputedFrostDepthInput {
  /** Layers from the surface down. */
  readonly layers: readonly FrostLayer[];
  /** What covers the ground. */
  readonly surface: FrostSurface;
  /** Degree days of the surface over those of the air, 0.05 to 3; that of the surface when left out [1]. */
  readonly nFactor?: Ratio;
  /** What insulates on top of the ground, such as snow, 0 to 10; 0 when left out [m2.K/W]. */
  readonly surfaceResistance?: SurfaceResistance;
  /** Degree days of the air below freezing, of a design winter where the depth is to be safe, 0 to 20000 and at most 80 K over the duration [K.d]. */
  readonly freezingIndex: DegreeDays;
  /** Length of the freezing season, an hour to a year [s]. */
  readonly duration: Time;
  /** Mean temperature of the ground over the year, or of the air, −60 to 60 [degC]. */
  readonly mean: Temperature;
  /** The frost line that the local code asks for, where there is one; carried beside the computed depth, never replaced by it [m]. */
  readonly frostLine?: Length;
  /** Depth of the shallowest pipe [m]. */
  readonly pipeDepth?: Length;
}

/** How Stefan's depth was corrected. */
export interface BerggrenCorrection {
  /** Ground's mean above freezing over the mean frost of the surface [1]. */
  readonly thermalRatio: Ratio;
  /** Heat capacity times the mean frost of the surface, over latent heat, means down to the depth [1]. */
  readonly fusionParameter: Ratio;
  /** Corrected over Stefan depth in uniform ground [1]. */
  readonly berggrenCoefficient: Ratio;
}

/** A computed frost depth. It says what the ground does; what must be built to, the local authority says. */
export interface ComputedFrostDepth {
  /** Frost depth by the modified Berggren method [m]. */
  readonly depth: Length;
  /** Frost depth by Stefan, the sensible heat left out [m]. */
  readonly stefanDepth: Length;
  /** Frost depth were the surface as cold as the air and nothing on it, as on a swept or trodden place [m]. */
  readonly unshelteredDepth: Length;
  /** Degree days of the surface over those of the air [1]. */
  readonly nFactor: Ratio;
  /** Degree days of the surface below freezing [K.d]. */
  readonly surfaceIndex: DegreeDays;
  /** The correction; absent where nothing freezes. */
  readonly correction?: BerggrenCorrection;
  /** The frost line of the local code, as given [m]. */
  readonly frostLine?: Length;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link ComputedFrostDepthInput}. */
export const computedFrostDepthInputShape: Shape<ComputedFrostDepthInput> = {
  layers: { list: frostLayerShape },
  surface: FROST_SURFACES,
  nFactor: { optional: 'ratio' },
  surfaceResistance: { optional: 'surface resistance' },
  freezingIndex: 'degree days',
  duration: 'time',
  mean: 'temperature',
  frostLine: { optional: 'length' },
  pipeDepth: { optional: 'length' },
};

/** Shape of {@link ComputedFrostDepth}, its findings apart. */
export const computedFrostDepthShape: Shape<Omit<ComputedFrostDepth, 'findings'>> = {
  depth: 'length',
  stefanDepth: 'length',
  unshelteredDepth: 'length',
  nFactor: 'ratio',
  surfaceIndex: 'degree days',
  correction: { optional: { thermalRatio: 'ratio', fusionParameter: 'ratio', berggrenCoefficient: 'ratio' } },
  frostLine: { optional: 'length' },
};

/**
 * How deep the frost goes into layered ground under its cover.
 *
 * For judging pipes and heave, beside the frost line of the local code, which is a separate number and stands. A closed loop with antifreeze may lie above
 * either as far as heat is concerned; it freezes the ground around itself anyway, and that ice is not in here.
 *
 * @param input - layers, cover, freezing index [K.d] and length [s] of the season, yearly mean [degC], frost line and pipe depth [m]
 * @returns frost depth by the modified Berggren method and by Stefan [m], what it rests on, and findings
 * @throws InputError when a number is out of range
 * @remarks
 * Stefan's sum over the layers holds the share λ² of the surface's index, λ from `berggrenCoefficient` with means down to the depth; under a resistance, λ goes by
 * the frost that is left below it, which is the share that the sum has without it. Sources:
 * `aldrichPaynter1953`, `ufc313004` (n-factors), `ufc313006`. Checked against the worked example of the manual, 5.6 ft with a chart, 5.66 ft here, and against
 * runs of the enthalpy of thin cells: within 1 % in uniform ground, 3 % through two layers, 0.06 m below resistances of 0.3 to 4 m2.K/W, there mostly too shallow.
 *
 * Invariants: at most Stefan's depth and at most that under no cover; uniform ground gives λ times Stefan; cutting a layer in two changes nothing;
 * the frost line comes out as it went in.
 * @example
 * ```ts @import.meta.vitest
 * const units = await import('../units/index.js');
 * const { btuPerCubicFoot, btuPerCubicFootFahrenheit, btuPerHourFootFahrenheit, days, fahrenheit, fahrenheitDays, feet, ratio } = units;
 * const ground = {
 *   thickness: feet(10), frozenConductivity: btuPerHourFootFahrenheit(0.72),
 *   latentHeat: btuPerCubicFoot(2160), heatCapacity: btuPerCubicFootFahrenheit(28.25),
 * };
 * const winter = { freezingIndex: fahrenheitDays(2500), duration: days(160), mean: fahrenheit(37.2) };
 * const { depth, correction } = computedFrostDepth({ layers: [ground], surface: 'bare soil', nFactor: ratio(1), ...winter });
 * expect(feet.of(depth)).toBeCloseTo(5.66, 2);
 * expect(correction?.berggrenCoefficient).toBeCloseTo(0.8956, 3);
 * ```
 */
export function computedFrostDepth(input: ComputedFrostDepthInput): ComputedFrostDepth {
  const { layers, surface, surfaceResistance = 0 as SurfaceResistance, freezingIndex, duration, mean, frostLine, pipeDepth } = input;
  const { freezingFactor } = nFactors(surface);
  const { nFactor = freezingFactor } = input;
  demandLayers(layers);
  demandFreezing(freezingIndex, nFactor);
  demandSurfaceResistance(surfaceResistance);
  demand('duration', 'time', duration, { atLeast: 3600, atMost: 1.01 * YEAR }, 'seconds');
  demandMeanFrost(freezingIndex, duration);
  demandMean('mean', mean);
  if (frostLine !== undefined) demandDepth('frostLine', frostLine);
  if (pipeDepth !== undefined) demandDepth('pipeDepth', pipeDepth);
  const winter = { layers, duration, mean };
  const sheltered = depths(winter, nFactor * freezingIndex, surfaceResistance);
  const depth = sheltered.depth as Length;
  return {
    ...sheltered,
    depth,
    unshelteredDepth: Math.max(depth, depths(winter, freezingIndex, 0).depth) as Length,
    nFactor,
    surfaceIndex: (nFactor * freezingIndex) as DegreeDays,
    ...(frostLine === undefined ? {} : { frostLine }),
    findings: frostFindings({ depth, mean, frostLine, pipeDepth }),
  };
}

/** Frost less deep is none, and its ratios tell nothing [m]. */
const LEAST_DEPTH = 1e-6;

/** No season is colder than this below freezing on average [K]. */
const COLDEST_SEASON = 80;

/** Refuses a freezing index that its season is too short for. */
function demandMeanFrost(freezingIndex: DegreeDays, duration: Time): void {
  const most = (COLDEST_SEASON * duration) / DAY;
  const hint = `at most ${String(COLDEST_SEASON)} K below freezing on average over the duration, which may be too short or in another unit`;
  demand('freezingIndex', 'degree days', freezingIndex, { atLeast: 0, atMost: most }, hint);
}

type Depths = Pick<ComputedFrostDepth, 'stefanDepth' | 'correction'> & { readonly depth: number };

function depths({ layers, duration, mean }: Pick<ComputedFrostDepthInput, 'layers' | 'duration' | 'mean'>, index: number, top: number): Depths {
  if (index === 0) return { depth: 0, stefanDepth: 0 as Length };
  /** Thermal ratio and fusion parameter with the frost that is left below what lies on the ground: the share that Stefan's sum has without it. */
  const ratiosAt = (depth: number): readonly [thermalRatio: number, fusionParameter: number] => {
    const frozen = frozenTo(depth, layers, top);
    const share = frozen.index > 0 ? frozenTo(depth, layers, 0).index / frozen.index : 1;
    const frost = (share * index * DAY) / duration;
    // Ground that is frozen all year has nothing left to cool below freezing; a finding tells.
    return [Math.max(0, mean) / frost, frozen.latent > 0 ? (frozen.capacity * frost) / frozen.latent : 0];
  };
  const stefanDepth = depthWhere((depth) => index - frozenTo(depth, layers, top).index);
  const depth = depthWhere((to) => index * coefficient(...ratiosAt(to)) ** 2 - frozenTo(to, layers, top).index);
  if (depth < LEAST_DEPTH) return { depth: 0, stefanDepth: stefanDepth as Length };
  const [thermalRatio, fusionParameter] = ratiosAt(depth);
  const correction = { thermalRatio, fusionParameter, berggrenCoefficient: coefficient(thermalRatio, fusionParameter) };
  return { depth, stefanDepth: stefanDepth as Length, correction: correction as BerggrenCorrection };
}
