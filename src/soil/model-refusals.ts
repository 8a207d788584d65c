import type { Known } from './known-to-models.js';

/** The models of the conductivity of soil, the classical ones first. */
export const SOIL_MODELS = ['johansen', 'kersten', 'cote-konrad', 'lu-2007', 'lu-2014', 'balland-arp', 'campbell', 'ewen-thomas'] as const;

/** A model of the conductivity of soil. */
export type SoilModel = (typeof SOIL_MODELS)[number];

/** Why a model may not apply to a soil: it was not made for such a soil, something it needs is not known, or its equation fails there. */
export const MODEL_REFUSALS = [
  'organic soil',
  'partly organic soil',
  'gravelly soil',
  'crushed rock',
  'no form for frozen soil',
  'texture not known',
  'quartz not known',
  'sand not known',
  'clay not known',
  'no clay',
  'too dry',
  'too loose',
  'too dense',
] as const;

/** Why a model does not apply to a soil. */
export type ModelRefusal = (typeof MODEL_REFUSALS)[number];

/** What a model was made for. */
interface MadeFor {
  /** Whether it has a form for frozen soil. */
  readonly frozen: boolean;
  /** Grains above 2 mm that the soil stays below [kg/kg]. */
  readonly gravelBelow: number;
}

/** Organic matter that a model of mineral soil still takes, by judgement [kg/kg]. */
export const MINERAL = 0.2;

/** A model of fine earth, up to what is called gravelly by common practice. */
export const FINE_EARTH: MadeFor = { frozen: false, gravelBelow: 0.15 };

/** A model of whole soils, up to what is gravel by common practice. */
export const WHOLE_SOIL: MadeFor = { frozen: true, gravelBelow: 0.5 };

/** What keeps a model of mineral soil from a soil, whatever else is known of it. */
export function notMadeFor({ frozen, gravelBelow }: MadeFor, known: Known): ModelRefusal | undefined {
  if (known.crushed) return 'crushed rock';
  if (organicBeyondMineral(known)) return 'organic soil';
  if (known.gravel >= gravelBelow) return 'gravelly soil';
  return known.soil.frozen && !frozen ? 'no form for frozen soil' : undefined;
}

/** Whether a soil holds more organic matter than a model of mineral soil takes. */
export function organicBeyondMineral({ organicMatter }: Known): boolean {
  return organicMatter > MINERAL;
}
