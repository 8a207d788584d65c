import type { Finding, FindingValues } from '../findings/index.js';
import type { Diffusivity, Ratio } from '../units/index.js';
import { diffusivityFindings } from './ground-probe-findings.js';

/** From this relative error on a diffusivity is worth little more than a value from the soil. */
const WEAK = 0.25;

/** Two diffusivities further apart than this, as a logarithm, are not of one even ground: half as much again. */
const APART = 0.4054651081081644;

/** What to know about a diffusivity by one of the explicit methods. */
export function methodFindings(
  method: FindingValues['diffusivity-method-weak']['method'],
  diffusivity: Diffusivity,
  relativeError: Ratio,
): readonly Finding[] {
  const level = relativeError > WEAK ? 'warning' : 'note';
  return [
    { code: 'diffusivity-method-weak', level, values: { method, relativeError }, source: 'hortonWierengaNielsen1983' },
    ...diffusivityFindings(diffusivity),
  ];
}

/** That two methods disagree by more than their errors. */
export function disagreementFindings(diffusivity: Diffusivity, otherDiffusivity: Diffusivity, relativeError: Ratio): readonly Finding[] {
  if (Math.abs(Math.log(diffusivity / otherDiffusivity)) <= Math.max(APART, 2 * Math.SQRT2 * relativeError)) return [];
  return [{ code: 'diffusivities-disagree', level: 'warning', values: { diffusivity, otherDiffusivity }, source: 'hortonWierengaNielsen1983' }];
}
