import type { Finding } from '../findings/index.js';
import type { Conductivity, MassFraction } from '../units/index.js';
import { knownToModels } from './known-to-models.js';
import { MODEL_ATTEMPTS } from './model-attempts.js';
import { FINE_EARTH, MINERAL, type SoilModel } from './model-refusals.js';
import { waterFindings } from './sample-findings.js';
import type { Laid, SoilCase } from './soil-case.js';

/** Organic matter from which a soil is peat (`common practice`) [kg/kg]. */
const PEAT = 0.75;

/** What is doubtful about a soil to lay pipes in. */
export function caseFindings(soil: SoilCase, laid: Laid, model: SoilModel): readonly Finding[] {
  const { organicMatter, gravel, texture } = soil;
  const outcome = MODEL_ATTEMPTS[model](knownToModels(laid.soil));
  const ofModel = typeof outcome === 'string' ? [] : outcome.findings;
  const conductivity = (typeof outcome === 'string' ? 0 : outcome.conductivity) as Conductivity;
  const limit = MINERAL as MassFraction;
  const peat: Finding = { code: 'peat-ground', level: 'warning', values: { conductivity }, source: 'kujala2008' };
  const organic: Finding = {
    code: 'organic-outside-models',
    level: 'warning',
    values: { organicMatter: organicMatter as MassFraction, limit },
    source: 'common practice',
  };
  const stones: Finding = {
    code: 'gravelly-soil-unmeasured',
    level: 'warning',
    values: { gravel: gravel as MassFraction, limit: FINE_EARTH.gravelBelow as MassFraction },
    source: 'common practice',
  };
  const mineral = organicMatter <= MINERAL;
  return [
    ...ofModel,
    ...(mineral ? waterFindings(texture, { moisture: laid.moisture, saturation: laid.soil.saturation }) : []),
    ...(organicMatter >= PEAT ? [peat] : mineral ? [] : [organic]),
    ...(gravel >= FINE_EARTH.gravelBelow ? [stones] : []),
  ];
}
