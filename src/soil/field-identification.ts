import { demand, demandChoice, demandCount } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { MassFraction, Ratio, Shape } from '../units/index.js';
import {
  DILATANCIES,
  type Dilatancy,
  DRY_STRENGTHS,
  type DryStrength,
  GRAVELLY,
  GROUP_SIGNS,
  MOISTURE_WORDS,
  type MoistureWord,
  MOSTLY_GRAVEL,
  ORGANIC_SIGNS,
  type OrganicSign,
  PLASTICITIES,
  type Plasticity,
  SATURATION_FROM,
  TOUGHNESSES,
  type Toughness,
} from './field-terms.data.js';

/** What eye, nose and hand make of a soil in the field. */
export interface FieldObservation {
  /** How wet it is. */
  readonly moistureWord: MoistureWord;
  /** How hard a dried lump is; left out where it was not tried. */
  readonly dryStrength?: DryStrength;
  /** How soon a shaken wet pat shows water; left out where it was not tried. */
  readonly dilatancy?: Dilatancy;
  /** How firm a thread is; left out where it was not tried. */
  readonly toughness?: Toughness;
  /** How well it rolls; left out where it was not tried. */
  readonly plasticity?: Plasticity;
  /** Gravel by dry mass, as estimated; 0 when left out [kg/kg]. */
  readonly gravel?: MassFraction;
  /** Signs of organic matter; none when left out. */
  readonly organicSigns?: readonly OrganicSign[];
}

/** A group that the fines may belong to. */
export interface GroupCandidate {
  /** The group. */
  readonly group: 'ML' | 'CL' | 'MH' | 'CH';
  /** How many of the signs that were tried it does not usually have. */
  readonly signsAgainst: number;
}

/** What an observation in the field says. */
export interface FieldIdentification {
  /** Saturation from which the word holds; a judgement [1]. */
  readonly saturationFrom: Ratio;
  /** Saturation up to which the word holds; a judgement [1]. */
  readonly saturationTo: Ratio;
  /** Groups of the fines with the fewest signs against them; none where no sign was tried. */
  readonly candidates: readonly GroupCandidate[];
  /** What the observation changes in the work and the reckoning. */
  readonly consequences: readonly FieldConsequence[];
  /** What is doubtful about it. */
  readonly findings: readonly Finding[];
}

/** What gravel or organic matter changes: in the work, and in what can be computed. */
export type FieldConsequence = (typeof FIELD_CONSEQUENCES)[number];

/** Every consequence. */
export const FIELD_CONSEQUENCES = [
  'texture of the fine earth only',
  'larger sample',
  'take as gravel',
  'dry at low temperature',
  'measure organic matter',
  'take as peat',
] as const;

/** Shape of {@link FieldObservation}. */
export const fieldObservationShape: Shape<FieldObservation> = {
  moistureWord: MOISTURE_WORDS,
  dryStrength: { optional: DRY_STRENGTHS },
  dilatancy: { optional: DILATANCIES },
  toughness: { optional: TOUGHNESSES },
  plasticity: { optional: PLASTICITIES },
  gravel: { optional: 'mass fraction' },
  organicSigns: { optional: { list: ORGANIC_SIGNS } },
};

/** Scales of the signs, each from its weak to its strong end. */
const SCALES = { dryStrength: DRY_STRENGTHS, dilatancy: DILATANCIES, toughness: TOUGHNESSES, plasticity: PLASTICITIES } as const;
const GROUPS = ['ML', 'CL', 'MH', 'CH'] as const;
const SIGNS = ['dryStrength', 'dilatancy', 'toughness', 'plasticity'] as const;

/**
 * What eye, nose and hand make of a soil: a range of saturation, the groups its fines may belong to, and what gravel and organic matter change.
 *
 * A description, no measurement: it finds mistakes in samples and stands in for none.
 *
 * @param observation - the word for its moisture, signs of the fines as far as they were tried, gravel [kg/kg], signs of organic matter
 * @returns saturation [1], candidates for the group, consequences and findings
 * @throws InputError when a word is unknown or the gravel is no share
 * @remarks
 * Signs by group: `astmD2488`. The saturation of the words is a judgement (`common practice`).
 *
 * Invariants: each group is among the candidates for all signs that are usual of it; words of moisture tile the saturation.
 * @example
 * ```ts @import.meta.vitest
 * const { candidates } = identifyInField({ moistureWord: 'moist', dryStrength: 'very high', toughness: 'high' });
 * expect(candidates).toEqual([{ group: 'CH', signsAgainst: 0 }]);
 * ```
 */
export function identifyInField(observation: FieldObservation): FieldIdentification {
  const { gravel = 0 as MassFraction, organicSigns = [] } = observation;
  demandChoice('moistureWord', observation.moistureWord, MOISTURE_WORDS);
  for (const sign of SIGNS) if (observation[sign] !== undefined) demandChoice(sign, observation[sign], SCALES[sign]);
  demand('gravel', 'mass fraction', gravel, { atLeast: 0, atMost: 1 });
  demandCount('organicSigns', organicSigns, 0);
  organicSigns.forEach((sign, index) => {
    demandChoice(`organicSigns.${String(index)}`, sign, ORGANIC_SIGNS);
  });
  const next = MOISTURE_WORDS[MOISTURE_WORDS.indexOf(observation.moistureWord) + 1];
  const candidates = candidatesFor(observation);
  const signsAgainst = candidates[0]?.signsAgainst ?? 0;
  const contradiction: Finding = { code: 'field-signs-disagree', level: 'warning', values: { signsAgainst }, source: 'astmD2488' };
  return {
    saturationFrom: SATURATION_FROM[observation.moistureWord] as Ratio,
    saturationTo: (next === undefined ? 1 : SATURATION_FROM[next]) as Ratio,
    candidates,
    consequences: [...ofGravel(gravel), ...ofOrganic(new Set(organicSigns).size)],
    findings: signsAgainst > 0 ? [contradiction] : [],
  };
}

/** The groups with the fewest signs against them. */
function candidatesFor(observation: FieldObservation): readonly GroupCandidate[] {
  if (SIGNS.every((sign) => observation[sign] === undefined)) return [];
  const judged = GROUPS.map((group) => ({ group, signsAgainst: SIGNS.filter((sign) => isUnusual(observation, sign, group)).length }));
  const fewest = Math.min(...judged.map(({ signsAgainst }) => signsAgainst));
  return judged.filter(({ signsAgainst }) => signsAgainst === fewest);
}

function isUnusual(observation: FieldObservation, sign: (typeof SIGNS)[number], group: GroupCandidate['group']): boolean {
  const seen = observation[sign];
  if (seen === undefined) return false;
  const scale: readonly string[] = SCALES[sign];
  const [from, to] = GROUP_SIGNS[group][sign];
  return scale.indexOf(seen) < scale.indexOf(from) || scale.indexOf(seen) > scale.indexOf(to);
}

function ofGravel(gravel: number): readonly FieldConsequence[] {
  if (gravel < GRAVELLY) return [];
  return ['texture of the fine earth only', 'larger sample', ...(gravel > MOSTLY_GRAVEL ? (['take as gravel'] as const) : [])];
}

/** One sign asks for care; fibres with dark colour and smell are peat. */
function ofOrganic(signs: number): readonly FieldConsequence[] {
  if (signs === 0) return [];
  return ['dry at low temperature', 'measure organic matter', ...(signs === ORGANIC_SIGNS.length ? (['take as peat'] as const) : [])];
}
