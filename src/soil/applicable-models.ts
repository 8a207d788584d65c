import type { Finding, FindingCode } from '../findings/index.js';
import type { Conductivity, Fraction, Shape } from '../units/index.js';
import { type Known, type KnownSoil, knownToModels } from './known-to-models.js';
import { MODEL_ATTEMPTS } from './model-attempts.js';
import { MODEL_REFUSALS, type ModelRefusal, SOIL_MODELS, type SoilModel } from './model-refusals.js';

/** A work that a model comes from. */
export type ModelSource =
  | 'johansen1975'
  | 'kersten1949'
  | 'coteKonrad2005'
  | 'lu2007'
  | 'lu2014'
  | 'ballandArp2005'
  | 'campbell1985'
  | 'ewenThomas1987';

/** Share of the water from which it counts as mostly liquid, by judgement [1]. */
const MOSTLY_LIQUID = 0.5;

/** The work each model comes from. */
const MODEL_SOURCES: Readonly<Record<SoilModel, ModelSource>> = {
  johansen: 'johansen1975',
  kersten: 'kersten1949',
  'cote-konrad': 'coteKonrad2005',
  'lu-2007': 'lu2007',
  'lu-2014': 'lu2014',
  'balland-arp': 'ballandArp2005',
  campbell: 'campbell1985',
  'ewen-thomas': 'ewenThomas1987',
};

/** What a model that applies makes of a soil. */
export interface ApplicableModel {
  /** The model. */
  readonly model: SoilModel;
  /** Conductivity of the soil as it is, frozen or not [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Whether the soil lies in the range of the model; what does not stands in the findings. */
  readonly inRange: boolean;
  /** The work it comes from. */
  readonly source: ModelSource;
}

/** A model that does not apply, and why. */
export interface InapplicableModel {
  /** The model. */
  readonly model: SoilModel;
  /** The first thing that keeps it from the soil. */
  readonly refusal: ModelRefusal;
}

/** Every model, with its value or the reason why it has none. */
export interface ModelsOfSoil {
  /** Models that apply, each with its value. */
  readonly applicable: readonly ApplicableModel[];
  /** Models that do not apply, each with the reason. */
  readonly inapplicable: readonly InapplicableModel[];
}

/** {@link ModelsOfSoil} with findings. */
export interface ModelsOfSoilResult extends ModelsOfSoil {
  /** What lies outside the range of a model that was computed all the same. */
  readonly findings: readonly Finding[];
}

/** Shape of the models that apply. */
export const applicableShape: Shape<ModelsOfSoil['applicable']> = {
  list: { model: SOIL_MODELS, conductivity: 'conductivity', inRange: 'flag', source: /* @__PURE__ */ Object.values(MODEL_SOURCES) },
};

/** Shape of the models that do not. */
export const inapplicableShape: Shape<ModelsOfSoil['inapplicable']> = { list: { model: SOIL_MODELS, refusal: MODEL_REFUSALS } };

/** Shape of {@link ModelsOfSoil}. */
export const modelsOfSoilShape: Shape<ModelsOfSoil> = { applicable: applicableShape, inapplicable: inapplicableShape };

/** Findings that put a soil outside the range of a model. */
const OUT_OF_RANGE: readonly FindingCode[] = ['porosity-outside-model', 'saturation-outside-model', 'density-outside-model', 'kersten-outside-range'];

/**
 * Which models of conductivity apply to what is known of a soil, what each makes of it, and why the others do not.
 *
 * Nothing is made up for what is not known, but for the quartz and the grain that are typical of a texture. Models of mineral soil end at a
 * fifth of organic matter; peat, from three quarters on, is left to Côté and Konrad, what lies between to Balland and Arp. Four of the eight
 * have a form for frozen soil, with a Kersten number of its own: while most of the water is liquid it may read below both the unfrozen and the
 * frozen soil, of which a finding tells. Where several apply their spread is part of what is not known; moist mineral soil is met best by `lu-2007`
 * and `johansen`. Whoever wants one model calls it by name, and loads no other.
 *
 * @param soil - dry density [kg/m3], saturation, and whatever else is known; frozen or not
 * @returns models that apply with their conductivities [W/(m.K)], models that do not with the reason, and what is out of a model's range
 * @throws InputError when a number is impossible, alone or together
 * @remarks
 * Limits of organic matter and gravel are judgement (`common practice`); those of each equation are its own. Sources: those of the models.
 *
 * Invariants: every model is on one of the two lists; each value is that of the model called by name.
 * @example
 * ```ts @import.meta.vitest
 * const { kilogramsPerCubicMetre, ratio } = await import('../units/index.js');
 * const loam = { dryDensity: kilogramsPerCubicMetre(1500), saturation: ratio(0.6), texture: 'loam' } as const;
 * const { applicable, inapplicable } = applicableModels(loam);
 * expect(applicable.map(({ model }) => model)).toEqual(['johansen', 'kersten', 'cote-konrad', 'lu-2007', 'ewen-thomas']);
 * expect(inapplicable).toContainEqual({ model: 'campbell', refusal: 'clay not known' });
 * ```
 */
export function applicableModels(soil: KnownSoil): ModelsOfSoilResult {
  const known = knownToModels(soil);
  const applicable: ApplicableModel[] = [];
  const inapplicable: InapplicableModel[] = [];
  const findings: Finding[] = [...iceFindings(known)];
  for (const model of SOIL_MODELS) {
    const outcome = MODEL_ATTEMPTS[model](known);
    if (typeof outcome === 'string') inapplicable.push({ model, refusal: outcome });
    else {
      const { conductivity, findings: found } = outcome;
      applicable.push({ model, conductivity, inRange: !found.some(({ code }) => OUT_OF_RANGE.includes(code)), source: MODEL_SOURCES[model] });
      findings.push(...found);
    }
  }
  return { applicable, inapplicable, findings };
}

/** Where the two forms of a model part, since most of the water has not frozen. */
function iceFindings({ soil: { frozen, unfrozenWater, saturation }, water }: Known): readonly Finding[] {
  if (!frozen || saturation === 1 || unfrozenWater <= MOSTLY_LIQUID * water) return [];
  const values = { liquidShare: (unfrozenWater / water) as Fraction, high: MOSTLY_LIQUID as Fraction };
  return [{ code: 'frozen-model-with-little-ice', level: 'warning', values, source: 'common practice' }];
}
