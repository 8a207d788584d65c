import { demand, demandObject, InputError, locate } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import { type Band, bandShape, joinedShape } from '../states/index.js';
import type { Diameter, Length, Ratio, Shape, Time } from '../units/index.js';
import { COVERAGE } from './band-around.js';
import { type SettlingColumn, settlingColumnShape, stokesCutSize, stokesSettlingTime } from './stokes-settling.js';
import { TEXTURE_CLASSES, type TextureClass } from './texture.js';
import { textureAt } from './texture-triangle.js';
import { texturesWithin, type TextureShare } from './textures-within.js';

/** When the layers of a jar are marked. */
export interface JarReadings {
  /** The sand has settled: mark what lies there [s]. */
  readonly sandReadAt: Time;
  /** The silt has settled on it: mark again; what settles later is clay [s]. */
  readonly siltReadAt: Time;
}

/** What was read off a jar of soil, water and a dispersant, shaken and left to stand. */
export interface JarTest {
  /** Thickness of the lowest layer, which settled first; 0 to 1 [m]. */
  readonly sandThickness: Length;
  /** Thickness of the layer on it, 0 to 1 [m]. */
  readonly siltThickness: Length;
  /** Thickness of what settled last, 0 to 1 [m]. */
  readonly clayThickness: Length;
  /** When it was read and in which water; with it the sizes that were parted are computed. */
  readonly reading?: SettlingColumn & JarReadings;
}

/** Fractions and texture by a jar. */
export interface JarTestResult {
  /** Sand in the fine earth [kg/kg]. */
  readonly sandBand: Band<'mass fraction'>;
  /** Silt in the fine earth [kg/kg]. */
  readonly siltBand: Band<'mass fraction'>;
  /** Clay in the fine earth; rather less, since clay settles loosely [kg/kg]. */
  readonly clayBand: Band<'mass fraction'>;
  /** Class of the three estimates. */
  readonly texture: TextureClass;
  /** Classes of all compositions within the bands, the most frequent first. */
  readonly possible: readonly TextureShare[];
  /** Size that the first reading parted; absent without a reading [m]. */
  readonly sandCut?: Diameter;
  /** Size that the second reading parted; absent without a reading [m]. */
  readonly siltCut?: Diameter;
  /** What is possible but doubtful about the jar. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link JarTest}. */
export const jarTestShape: Shape<JarTest> = {
  sandThickness: 'length',
  siltThickness: 'length',
  clayThickness: 'length',
  reading: { optional: /* @__PURE__ */ joinedShape(settlingColumnShape, { sandReadAt: 'time', siltReadAt: 'time' }) },
};

/** Shape of {@link JarTestResult} without its findings. */
export const jarTestResultShape: Shape<Omit<JarTestResult, 'findings'>> = {
  sandBand: /* @__PURE__ */ bandShape('mass fraction'),
  siltBand: /* @__PURE__ */ bandShape('mass fraction'),
  clayBand: /* @__PURE__ */ bandShape('mass fraction'),
  texture: TEXTURE_CLASSES,
  possible: { list: { texture: TEXTURE_CLASSES, share: 'fraction' } },
  sandCut: { optional: 'diameter' },
  siltCut: { optional: 'diameter' },
};

/** Sizes that part sand from silt and silt from clay in the texture triangle (`usdaTexture`) [m]. */
const SAND_FROM = 5e-5 as Diameter;
const SILT_FROM = 2e-6 as Diameter;

/** Layers tell fractions to 10 points at best: thickness is not mass, and clay lies looser than sand (`common practice`) [kg/kg]. */
const POINTS = 0.1;

/** Layers are read to about 1 mm, which is to be no more than the band [m]. */
const THIN = 0.01;

/** How far a reading may part sizes from those of the triangle before it is remarked, as a ratio. */
const OFF_SIZE = 1.25;

/**
 * When to mark the layers of a jar so that they are sand, silt and clay.
 *
 * @param water - height from the surface of the water to the soil that has settled [m], its temperature [degC]
 * @returns times since the end of shaking [s]
 * @throws InputError when a number is out of range
 * @remarks Times of {@link stokesSettlingTime} for 0.05 and 0.002 mm (`stokes1851`, `usdaTexture`). Invariant: both grow with the height.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, metres } = await import('../units/index.js');
 * expect(jarReadingTimes({ columnHeight: metres(0.1), temperature: celsius(20) }).sandReadAt).toBeCloseTo(44.5, 1);
 * ```
 */
export function jarReadingTimes(water: SettlingColumn): JarReadings {
  const timeOf = (particleSize: Diameter): Time => stokesSettlingTime({ ...water, particleSize }).settlingTime;
  return { sandReadAt: timeOf(SAND_FROM), siltReadAt: timeOf(SILT_FROM) };
}

/**
 * Sand, silt and clay from the layers of a jar, and the textures that they allow.
 *
 * The fractions are the shares of the layers, to 10 points at best; a band ends at 0 and 1. Clay and silt settle looser than sand, so that clay is
 * over-read. Holds for soil without gravel, shaken with a dispersant.
 *
 * @param jar - thickness of the layers [m] and, to check what they are, when they were read
 * @returns fractions with bands [kg/kg], the texture and those within the bands, the sizes parted [m]
 * @throws InputError when a number is impossible, hardly anything has settled, or the readings are interchanged
 * @remarks
 * Source of the band: `common practice`, a judgement. Sizes parted: `stokes1851`.
 *
 * Invariants: the estimates add up to 1; the texture is among the possible ones, whose shares add up to 1.
 * @example
 * ```ts @import.meta.vitest
 * const { metres } = await import('../units/index.js');
 * const jar = { sandThickness: metres(0.02), siltThickness: metres(0.02), clayThickness: metres(0.01) };
 * const { texture, possible } = jarTestFractions(jar);
 * expect(texture).toBe('loam');
 * expect(possible.map((each) => each.texture)).toContain('clay loam');
 * ```
 */
export function jarTestFractions({ sandThickness, siltThickness, clayThickness, reading }: JarTest): JarTestResult {
  const layers = { sandThickness, siltThickness, clayThickness };
  for (const [argument, thickness] of Object.entries(layers)) demand(argument, 'length', thickness, { atLeast: 0, atMost: 1 });
  const settledHeight = (sandThickness + siltThickness + clayThickness) as Length;
  const hint = 'hardly anything has settled; take a third of a jar of soil';
  demand('sandThickness', 'length', settledHeight, { atLeast: 0.001 }, hint);
  const sand = sandThickness / settledHeight;
  const silt = siltThickness / settledHeight;
  const clay = clayThickness / settledHeight;
  const cuts = reading === undefined ? undefined : locate('reading', () => cutsOf(reading));
  const thin: Finding = { code: 'jar-layers-thin', level: 'warning', values: { settledHeight, least: THIN as Length }, source: 'common practice' };
  return {
    sandBand: bandOf(sand),
    siltBand: bandOf(silt),
    clayBand: bandOf(clay),
    texture: textureAt(sand, clay),
    possible: texturesWithin({ sand, silt, clay }, POINTS),
    ...cuts,
    findings: [...(settledHeight < THIN ? [thin] : []), ...(cuts === undefined ? [] : offSize(cuts))],
  };
}

function bandOf(estimate: number): Band<'mass fraction'> {
  return { low: Math.max(estimate - POINTS, 0), estimate, high: Math.min(estimate + POINTS, 1), coverage: COVERAGE } as Band<'mass fraction'>;
}

interface Cuts {
  readonly sandCut: Diameter;
  readonly siltCut: Diameter;
}

function cutsOf(reading: SettlingColumn & JarReadings): Cuts {
  demandObject('', reading);
  const { sandReadAt, siltReadAt, ...water } = reading;
  demand('sandReadAt', 'time', sandReadAt, { atLeast: 1 });
  demand('siltReadAt', 'time', siltReadAt, { above: sandReadAt }, 'the second reading comes after the first');
  return { sandCut: cutAt('sandReadAt', sandReadAt, water), siltCut: cutAt('siltReadAt', siltReadAt, water) };
}

/** The size that a reading parts; a refusal of the time names the reading. */
function cutAt(argument: keyof JarReadings, settlingTime: Time, water: SettlingColumn): Diameter {
  try {
    return stokesCutSize({ ...water, settlingTime }).particleSize;
  } catch (error) {
    if (!(error instanceof InputError) || error.argument !== 'settlingTime') throw error;
    const { code, value, allowed, hint } = error;
    throw new InputError({ code, argument, value, allowed, hint });
  }
}

function offSize({ sandCut, siltCut }: Cuts): readonly Finding[] {
  const pairs = [
    [sandCut, SAND_FROM],
    [siltCut, SILT_FROM],
  ] as const;
  return pairs
    .filter(([cut, boundary]) => Math.max(cut / boundary, boundary / cut) > OFF_SIZE)
    .map(([cut, boundary]) => ({ cut, sizeRatio: (cut / boundary) as Ratio }))
    .map((values) => ({ code: 'jar-reading-off-size', level: 'warning', values, source: 'stokes1851' }) as const);
}
