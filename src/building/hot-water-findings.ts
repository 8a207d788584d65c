import type { Finding } from '../findings/index.js';
import type { Fraction, Volume } from '../units/index.js';
import { SCALDS_ABOVE, STORED_AT_LEAST, STORED_COOL, USUAL_PER_PERSON } from './hot-water.data.js';
import type { HotWaterInput } from './hot-water-input.js';

/** What to look at in the hot water of a house. */
export function hotWaterFindings(input: HotWaterInput, meanCold: number): readonly Finding[] {
  return [...storageFindings(input), ...supplyFindings(input, meanCold), ...drawFindings(input)];
}

/** The two dangers of stored water pull in opposite directions, so that between 50 and 60 °C both are told. */
function storageFindings({ hotTemperature, storageTemperature = hotTemperature }: HotWaterInput): readonly Finding[] {
  const findings: Finding[] = [];
  if (storageTemperature < STORED_AT_LEAST) {
    const level = storageTemperature < STORED_COOL ? 'warning' : 'note';
    findings.push({ code: 'hot-water-stored-cool', level, values: { storageTemperature, guidance: STORED_AT_LEAST }, source: 'hseHsg274' });
  }
  if (storageTemperature > SCALDS_ABOVE) {
    const values = { storageTemperature, scaldsAbove: SCALDS_ABOVE };
    findings.push({ code: 'hot-water-scalds', level: 'warning', values, source: 'common practice' });
  }
  return findings;
}

/** Water is stored hotter than the unit can make it. */
function supplyFindings(input: HotWaterInput, meanCold: number): readonly Finding[] {
  const { hotTemperature, storageTemperature = hotTemperature, highestSupply } = input;
  if (highestSupply === undefined || storageTemperature <= highestSupply) return [];
  const shareAbove = ((storageTemperature - highestSupply) / (storageTemperature - meanCold)) as Fraction;
  const values = { storageTemperature, highestSupply, shareAbove };
  return [{ code: 'hot-water-above-supply', level: 'warning', values, source: 'common practice' }];
}

function drawFindings({ draw }: HotWaterInput): readonly Finding[] {
  if (draw.by !== 'persons') return [];
  const drawOfDay = (86_400 * draw.perPerson) as Volume;
  const { lowest, highest } = USUAL_PER_PERSON;
  if (drawOfDay >= lowest && drawOfDay <= highest) return [];
  const values = { drawOfDay, lowest: lowest as Volume, highest: highest as Volume };
  return [{ code: 'hot-water-draw-unusual', level: 'warning', values, source: 'common practice' }];
}
