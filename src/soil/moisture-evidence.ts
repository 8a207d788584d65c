import { demand, demandChoice, locate } from '../errors/index.js';
import type { DryBasisMoisture } from '../units/index.js';
import type { MoistureEvidence } from './evidence.js';
import { MOISTURE_WORDS, type MoistureWord, SATURATION_FROM } from './field-terms.data.js';
import { dryBasis, moistureFromDrying } from './moisture.js';
import type { SoilCase } from './soil-case.js';

/** Water to reckon with, and how well it is known. */
export interface ReadMoisture {
  readonly water: SoilCase['water'];
  /** Standard error of a moisture that was weighed or given; 0 where a word tells it [kg/kg]. */
  readonly error: number;
  /** Shares of the pores that a word leaves open, with their chances; none where the water was weighed or given. */
  readonly chances: readonly { readonly value: number; readonly share: number }[];
}

/** Standard error of a moisture that says nothing else, as weighed in a kitchen (`common practice`) [kg/kg]. */
const WEIGHED = 0.01 as DryBasisMoisture;

/**
 * Where soil called by a word lies between the middle of its saturations and their ends, in nine equal parts of a triangular distribution:
 * the middle is likelier than the ends, at which another word would do as well. On the moist cores this held better than all saturations of a
 * word being equally likely.
 */
const POINTS: readonly number[] = /* @__PURE__ */ [1, 3, 5, 7, 9, 11, 13, 15, 17].map((part) => {
  const beside = Math.abs(part - 9) / 9;
  return Math.sign(part - 9) * (1 - Math.sqrt(1 - beside));
});

/** Reads what is known of the water of a sample. */
export function readMoisture(evidence: MoistureEvidence, moistureError: DryBasisMoisture = WEIGHED): ReadMoisture {
  demandChoice('moisture.basis', evidence?.basis, ['dry', 'wet', 'weighed', 'word']);
  demand('moistureError', 'moisture on dry basis', moistureError, { atLeast: 1e-4, atMost: 1 });
  if (evidence.basis === 'word') {
    demandChoice('moisture.word', evidence.word, MOISTURE_WORDS);
    const [from, to] = saturationsOf(evidence.word);
    const middle = (from + to) / 2;
    const chances = POINTS.map((part) => ({ value: middle + part * (to - middle), share: 1 / POINTS.length }));
    return { water: { per: 'pores', value: middle }, error: 0, chances };
  }
  const moisture = evidence.basis === 'weighed' ? locate('moisture', () => moistureFromDrying(evidence)) : evidence;
  return { water: { per: 'solids', value: dryBasis(moisture) }, error: moistureError, chances: [] };
}

/** Saturations that a word holds for, up to those of the next. */
export function saturationsOf(word: MoistureWord): readonly [from: number, to: number] {
  const next = MOISTURE_WORDS[MOISTURE_WORDS.indexOf(word) + 1];
  return [SATURATION_FROM[word], next === undefined ? 1 : SATURATION_FROM[next]];
}
