import { demandChoice } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { DryBasisMoisture } from '../units/index.js';
import { SIGMAS } from './band-around.js';
import { type BandedCase, bandedCase } from './banded-case.js';
import type { SampleEvidence } from './evidence.js';
import { MOISTURE_WORDS, type MoistureWord } from './field-terms.data.js';
import { saturationsOf } from './moisture-evidence.js';
import { type ReadSample, readSample } from './sample-case.js';
import { lay, withWater } from './soil-case.js';

/** A sample that was read, and its bands. */
export interface BestRead {
  readonly read: ReadSample;
  readonly banded: BandedCase;
}

/**
 * Reads a sample, by the water that was weighed or by the word beside it, whichever tells more. Where the density was not measured weighed
 * water does not tell how full the pores are, and the word does. Where neither errors of water and density nor the word leave
 * them room to agree, one of both is wrong, and the poorer soil counts.
 */
export function bestRead(sample: SampleEvidence): BestRead {
  const { moistureWord, moisture } = sample;
  if (moistureWord !== undefined) demandChoice('moistureWord', moistureWord, MOISTURE_WORDS);
  const weighed = banded(readSample(sample));
  if (moistureWord === undefined || moisture.basis === 'word') return weighed;
  const seen = banded(readSample({ ...sample, moisture: { basis: 'word', word: moistureWord } }));
  if (!agree(weighed.read, moistureWord)) {
    return withFinding(estimate(seen) < estimate(weighed) ? seen : weighed, contradicted(weighed, moistureWord));
  }
  return width(seen) < width(weighed) ? seen : weighed;
}

function banded(read: ReadSample): BestRead {
  return { read, banded: bandedCase(read.soil, read.known) };
}

/** Whether the saturations that the weighed water may stand for meet those of the word. */
function agree({ soil, known }: ReadSample, word: MoistureWord): boolean {
  const at = (side: 1 | -1): number => {
    const water = withWater(soil, soil.water.value + side * SIGMAS * known.moisture.error);
    return lay({ ...water, packing: Math.exp(side * SIGMAS * known.densityError) }).soil.saturation;
  };
  const [from, to] = saturationsOf(word);
  return at(-1) <= to && at(1) >= from;
}

function estimate({ banded: { conductivity } }: BestRead): number {
  return conductivity.estimate;
}

function contradicted({ read: { soil } }: BestRead, moistureWord: MoistureWord): Finding {
  const values = { moistureWord, moisture: soil.water.value as DryBasisMoisture };
  return { code: 'moisture-against-word', level: 'warning', values, source: 'common practice' };
}

function withFinding({ read, banded: of }: BestRead, finding: Finding): BestRead {
  return { read: { ...read, findings: [finding, ...read.findings] }, banded: of };
}

function width({ banded: { conductivity } }: BestRead): number {
  return conductivity.high / conductivity.low;
}
