import { demand, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { MassFraction, Shape } from '../units/index.js';
import type { TextureClass } from './texture.js';

/** The fine earth of a soil, all that passes 2 mm, by size of grain; gravel and stones are counted apart. */
export interface FineEarth {
  /** Grains of 0.05 to 2 mm in the dry mass [kg/kg]. */
  readonly sand: MassFraction;
  /** Grains of 0.002 to 0.05 mm in the dry mass; the rest when left out [kg/kg]. */
  readonly silt?: MassFraction;
  /** Grains below 0.002 mm in the dry mass [kg/kg]. */
  readonly clay: MassFraction;
}

/** Class of a fine earth in the texture triangle. */
export interface TextureOfFineEarth {
  /** Its class. */
  readonly texture: TextureClass;
  /** Grains of 0.05 to 2 mm, scaled so that the three add up to 1 [kg/kg]. */
  readonly sand: MassFraction;
  /** Grains of 0.002 to 0.05 mm, scaled likewise [kg/kg]. */
  readonly silt: MassFraction;
  /** Grains below 0.002 mm, scaled likewise [kg/kg]. */
  readonly clay: MassFraction;
  /** What is possible but doubtful about the fractions. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link FineEarth}. */
export const fineEarthShape: Shape<FineEarth> = { sand: 'mass fraction', silt: { optional: 'mass fraction' }, clay: 'mass fraction' };

/** How far three fractions may miss their sum by rounding [kg/kg]. */
const ROUNDING = 0.01;

/** Fractions are compared in whole parts per billion, so that one that stands on a line stands on it however it was computed. */
const WHOLE = 1e9;
const PERCENT = 1e7;

/** When a class holds, in parts per billion; on every composition exactly one does. Source: `usdaTexture`. */
export const TEXTURE_RULES: readonly (readonly [texture: TextureClass, holds: (sand: number, silt: number, clay: number) => boolean])[] = [
  ['sand', (_, i, c) => 2 * i + 3 * c < 30 * PERCENT],
  ['loamy sand', (_, i, c) => 2 * i + 3 * c >= 30 * PERCENT && i + 2 * c < 30 * PERCENT],
  [
    'sandy loam',
    (s, i, c) => i + 2 * c >= 30 * PERCENT && ((c >= 7 * PERCENT && c < 20 * PERCENT && s > 52 * PERCENT) || (c < 7 * PERCENT && i < 50 * PERCENT)),
  ],
  ['loam', (s, i, c) => c >= 7 * PERCENT && c < 27 * PERCENT && i >= 28 * PERCENT && i < 50 * PERCENT && s <= 52 * PERCENT],
  ['silt loam', (_, i, c) => i >= 50 * PERCENT && ((c >= 12 * PERCENT && c < 27 * PERCENT) || (i < 80 * PERCENT && c < 12 * PERCENT))],
  ['silt', (_, i, c) => i >= 80 * PERCENT && c < 12 * PERCENT],
  ['sandy clay loam', (s, i, c) => c >= 20 * PERCENT && c < 35 * PERCENT && i < 28 * PERCENT && s > 45 * PERCENT],
  ['clay loam', (s, _, c) => c >= 27 * PERCENT && c < 40 * PERCENT && s > 20 * PERCENT && s <= 45 * PERCENT],
  ['silty clay loam', (s, _, c) => c >= 27 * PERCENT && c < 40 * PERCENT && s <= 20 * PERCENT],
  ['sandy clay', (s, _, c) => c >= 35 * PERCENT && s > 45 * PERCENT],
  ['silty clay', (_, i, c) => c >= 40 * PERCENT && i >= 40 * PERCENT],
  ['clay', (s, i, c) => c >= 40 * PERCENT && s <= 45 * PERCENT && i < 40 * PERCENT],
];

/**
 * Class of a fine earth in the USDA texture triangle.
 *
 * The fractions are of the dry mass that passes 2 mm; gravel does not count. Three fractions that miss their sum by no more than rounding are
 * scaled to it, with a finding.
 *
 * @param earth - sand, silt and clay [kg/kg]; silt may be left out
 * @returns class and the fractions that it is of [kg/kg]
 * @throws InputError when a fraction is impossible, or they do not add up to 1 within 0.01
 * @remarks
 * Inequalities of the Soil Survey Manual (`usdaTexture`), in whole parts per billion. Drawn versions of the triangle with corners
 * at half points differ on under 1 % of its area.
 *
 * Invariants: every composition has exactly one class; shares of the area as counted apart from this library.
 * @example
 * ```ts @import.meta.vitest
 * const { massPercent } = await import('../units/index.js');
 * expect(textureClass({ sand: massPercent(40), clay: massPercent(20) }).texture).toBe('loam');
 * ```
 */
export function textureClass({ sand, silt, clay }: FineEarth): TextureOfFineEarth {
  demand('sand', 'mass fraction', sand, { atLeast: 0, atMost: 1 });
  demand('clay', 'mass fraction', clay, { atLeast: 0, atMost: 1 });
  if (silt !== undefined) demand('silt', 'mass fraction', silt, { atLeast: 0, atMost: 1 });
  const sum = sand + clay + (silt ?? Math.max(1 - sand - clay, 0));
  const off = Math.abs(sum - 1);
  if (off > (silt === undefined ? 0 : ROUNDING) + 1 / WHOLE) refuseSum(sum);
  const scaled: Finding = { code: 'fine-earth-scaled', level: 'note', values: { sum: sum as MassFraction }, source: 'usdaTexture' };
  const shares = { sand: sand / sum, silt: Math.max(1 - sand / sum - clay / sum, 0), clay: clay / sum };
  const whole = shares as { readonly [Size in keyof typeof shares]: MassFraction };
  return { texture: textureAt(whole.sand, whole.clay), ...whole, findings: off > 1 / WHOLE ? [scaled] : [] };
}

/** The class whose rule holds; silt is the rest. */
export function textureAt(sand: number, clay: number): TextureClass {
  const s = Math.round(WHOLE * sand);
  const c = Math.round(WHOLE * clay);
  return TEXTURE_RULES.reduce<TextureClass>((found, [texture, holds]) => (holds(s, WHOLE - s - c, c) ? texture : found), 'clay');
}

function refuseSum(sum: number): never {
  throw new InputError({
    code: 'impossible',
    argument: 'sand',
    value: { kind: 'mass fraction', value: sum },
    allowed: 'sand, silt and clay together 1, to 0.01',
    hint: 'gravel does not count: give shares of what passes 2 mm',
  });
}
