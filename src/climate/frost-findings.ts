import type { Finding } from '../findings/index.js';
import type { Length, Temperature } from '../units/index.js';

/** What frost findings are made from. */
interface FrostFacts {
  readonly depth: Length;
  readonly mean: Temperature;
  readonly frostLine: Length | undefined;
  readonly pipeDepth: Length | undefined;
}

/** What to know about a computed frost depth, the frost line of the local code and the pipes: three things that are not one another. */
export function frostFindings({ depth, mean, frostLine, pipeDepth }: FrostFacts): readonly Finding[] {
  const findings: Finding[] = [];
  if (mean <= 0) findings.push({ code: 'ground-frozen-all-year', level: 'stop', values: { mean }, source: 'common practice' });
  if (frostLine === undefined) findings.push({ code: 'frost-line-not-given', level: 'note', values: { depth }, source: 'common practice' });
  else if (frostLine < depth) {
    findings.push({ code: 'frost-deeper-than-code', level: 'warning', values: { depth, frostLine }, source: 'aldrichPaynter1953' });
  }
  if (pipeDepth !== undefined && pipeDepth < depth) {
    findings.push({ code: 'frost-reaches-pipes', level: 'note', values: { depth, pipeDepth }, source: 'aldrichPaynter1953' });
  }
  if (pipeDepth !== undefined && frostLine !== undefined && pipeDepth < frostLine) {
    findings.push({ code: 'pipes-above-frost-line', level: 'warning', values: { pipeDepth, frostLine }, source: 'common practice' });
  }
  return findings;
}
