import { demand, InputError, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Source } from '../references/index.js';
import type { Band, SoilThermal } from '../states/index.js';
import type { Conductivity, Density, Fraction } from '../units/index.js';
import { COVERAGE } from './band-around.js';
import { demandThermal } from './layers.js';

/** Soil that is dug out and filled in again. */
export interface RefilledSoil {
  /** Dry density in the ground, before it was dug, 100 to 2800 [kg/m3]. */
  readonly nativeDensity: Density;
  /** Properties of that soil, at the moisture it is filled in with, at another dry density; any model will do. */
  readonly thermalAt: (dryDensity: Density) => SoilThermal;
  /** Share of the native dry density in the first winter, 0.5 to 1.2; 85 % when left out. */
  readonly firstWinterShare?: Fraction;
  /** Share of it once the fill has settled, no less than in the first winter, up to 1.2; 95 % when left out. */
  readonly settledShare?: Fraction;
}

/** A fill in one state. */
export interface FillState {
  /** Dry density with its band [kg/m3]. */
  readonly dryDensity: Band<'density'>;
  /** Conductivity at those densities; the error of the model comes on top [W/(m.K)]. */
  readonly conductivity: Band<'conductivity'>;
  /** Properties at the estimate of the density. */
  readonly thermal: SoilThermal;
}

/** A fill as it is loosened, and as it has settled. */
export interface LoosenedFill {
  /** In the first winter, before rain and its own weight have settled it. */
  readonly firstWinter: FillState;
  /** After a wet season or two; in dry ground later, or never. */
  readonly settled: FillState;
  /** That the densities are custom. */
  readonly findings: readonly Finding[];
  /** What it rests on. */
  readonly sources: readonly Source[];
}

/** Shares of the native dry density (`common practice`), and how far either way they go [1]. */
const FIRST_WINTER = 0.85 as Fraction;
const SETTLED = 0.95 as Fraction;
const EITHER_WAY = 0.05;

/**
 * Trench fill in its first winter and settled: the native soil at a part of its density.
 *
 * Soil that was dug takes more room than before: at 80 to 90 % of its native dry density in the first winter, 90 to 100 % after a wet season
 * or two. So the first winter is as a rule the worst for the loop. Lifts worked in with a foot or a plate come nearer to the settled state,
 * clods tipped in do not reach the loose one.
 *
 * @param soil - native dry density [kg/m3], and its properties as a function of the dry density
 * @returns density, conductivity and properties in both states
 * @throws InputError when a number is impossible, or the function gives properties that are
 * @remarks
 * The shares are `common practice` and weak; nothing was measured for them. Moisture is what the function makes of it: models at equal
 * moisture on dry basis lose water per volume with the density, as a fill does before the rain comes.
 *
 * Invariants: a soil that conducts better when denser is never better loosened than settled; shares of one give the native soil back.
 * @example
 * ```ts @import.meta.vitest
 * const { kilogramsPerCubicMetre, megajoulesPerCubicMetreKelvin, squareMillimetresPerSecond, wattsPerMetreKelvin } = await import(
 *   '../units/index.js'
 * );
 * const thermalAt = (dryDensity: number) => ({
 *   conductivity: wattsPerMetreKelvin(dryDensity / 1000),
 *   heatCapacity: megajoulesPerCubicMetreKelvin(2),
 *   diffusivity: squareMillimetresPerSecond(dryDensity / 2000),
 * });
 * const { firstWinter, settled } = loosenedFill({ nativeDensity: kilogramsPerCubicMetre(1600), thermalAt });
 * expect(firstWinter.thermal.conductivity).toBeCloseTo(1.36, 6);
 * expect(settled.thermal.conductivity).toBeCloseTo(1.52, 6);
 * ```
 */
export function loosenedFill({ nativeDensity, thermalAt, firstWinterShare = FIRST_WINTER, settledShare = SETTLED }: RefilledSoil): LoosenedFill {
  demand('nativeDensity', 'density', nativeDensity, { atLeast: 100, atMost: 2800 });
  demand('firstWinterShare', 'fraction', firstWinterShare, { atLeast: 0.5, atMost: 1.2 });
  demand('settledShare', 'fraction', settledShare, { atLeast: firstWinterShare, atMost: 1.2 }, 'a fill does not grow looser as it settles');
  if (typeof thermalAt !== 'function') {
    throw new InputError({ code: 'wrong-type', argument: 'thermalAt', value: undefined, allowed: 'a function of the dry density' });
  }
  const state = (share: number): FillState => fillAt(share, nativeDensity, thermalAt);
  const assumed: Finding = { code: 'fill-density-assumed', level: 'note', values: { firstWinterShare, settledShare }, source: 'common practice' };
  return { firstWinter: state(firstWinterShare), settled: state(settledShare), findings: [assumed], sources: ['common practice'] };
}

function fillAt(share: number, nativeDensity: Density, thermalAt: RefilledSoil['thermalAt']): FillState {
  const at = (part: number): { readonly density: Density; readonly thermal: SoilThermal } => {
    const density = (part * nativeDensity) as Density;
    return { density, thermal: checked(density, thermalAt) };
  };
  const [loose, middle, dense] = [at(share - EITHER_WAY), at(share), at(share + EITHER_WAY)];
  const each = [loose, middle, dense].map(({ thermal }) => thermal.conductivity);
  return {
    dryDensity: { low: loose.density, estimate: middle.density, high: dense.density, coverage: COVERAGE as Fraction },
    conductivity: {
      low: Math.min(...each) as Conductivity,
      estimate: middle.thermal.conductivity,
      high: Math.max(...each) as Conductivity,
      coverage: COVERAGE as Fraction,
    },
    thermal: middle.thermal,
  };
}

/** What the function gives, refused in its name where it is impossible. */
function checked(density: Density, thermalAt: RefilledSoil['thermalAt']): SoilThermal {
  const thermal = thermalAt(density);
  locate('thermalAt', () => {
    demandThermal('result', thermal);
  });
  return thermal;
}
