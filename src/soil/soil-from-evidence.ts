import { demand, demandChoice } from '../errors/index.js';
import type { Temperature } from '../units/index.js';
import { bestRead } from './best-read.js';
import type { SampleEvidence, SoilEvidence } from './evidence.js';
import type { EvidencePropertiesResult } from './evidence-properties.js';
import { measuredEvidence, probedEvidence, wordEvidence } from './measured-evidence.js';
import { sampledProperties } from './sampled-evidence.js';

/** Where frozen soil is reckoned unless another temperature is asked for [degC]. */
const FROZEN_AT = -4 as Temperature;

/**
 * Thermal properties of a soil from whatever is known of it, each with the band it lies in by four chances in five, and what the band is made of.
 *
 * Texture, water and density of a sample are each known in their own way: by the hand, a jar or a laboratory; by a word or weighings; in place, out
 * of a bag or not at all. The estimate rests on the first of Lu 2007, Johansen, Côté and Konrad, Balland and Arp that applies; all eight
 * models stand beside it. What the soil may be instead, by another texture or within the word for its water, is gone through one by one with its
 * chance, and the errors of the models, of quartz, density, moisture, season and place are added to each as squares. Errors are told by cause,
 * the greatest first, which is what to measure next.
 *
 * `soilThermalProperties` does with less: it takes what the document of a plan can hold, rests on Johansen's equation, which reads 4 % lower
 * on measured cores, and carries two models.
 *
 * @param evidence - a sample in parts, readings of a probe, a measured conductivity or a word
 * @returns conductivity, heat capacity and diffusivity with bands, causes of the error, frozen state, models, findings and sources
 * @throws InputError when a number is impossible, alone or together, or a word unknown; when the density of organic soil is left to a texture
 * @remarks
 * Sources: `lu2007`, `johansen1975`, `coteKonrad2005`, `ballandArp2005`, `deVries1963`, `andersonTice1972`; errors against `kansasCores2022`,
 * `textureByFeel2017`, `needleSurvey2012` and `common practice`; docs/soil-uncertainty.md tells how they combine. On the moist cores the band held
 * another core of the site in 78 % of cases, with moisture weighed and density and sizes of grain measured.
 *
 * Invariants: the estimate lies in its band; the same soil known better in one respect never has a wider band; a density out of a disturbed sample
 * is never used; the shares of the causes add up to 1.
 * @example
 * ```ts @import.meta.vitest
 * const { conductivity, errors } = soilFromEvidence({
 *   from: 'sample',
 *   texture: { from: 'feel path', answers: ['ball', 'ribbon under 25 mm', 'smooth'] },
 *   moisture: { basis: 'word', word: 'moist' },
 *   density: { from: 'texture' },
 * });
 * expect(conductivity.low).toBeLessThan(1);
 * expect(conductivity.high).toBeGreaterThan(1.4);
 * expect(errors[0]?.cause).toBe('texture');
 * ```
 */
export function soilFromEvidence(evidence: SoilEvidence): EvidencePropertiesResult {
  demandChoice('from', evidence?.from, ['sample', 'probe', 'laboratory', 'handbook']);
  switch (evidence.from) {
    case 'sample':
      return sampledProperties(bestRead(evidence), frozenTemperature(evidence));
    case 'probe':
      return probedEvidence(evidence);
    case 'laboratory':
      return measuredEvidence(evidence);
    case 'handbook':
      return wordEvidence(evidence);
  }
}

/** Temperature of the frozen state: the one asked for, or about the mean of Kersten's frozen soils. */
export function frozenTemperature({ frozenAt = FROZEN_AT }: SampleEvidence): Temperature {
  demand('frozenAt', 'temperature', frozenAt, { atLeast: -60, atMost: -0.1 });
  return frozenAt;
}
