import type { Finding } from '../findings/index.js';
import type { Fraction } from '../units/index.js';
import { balancePointFindings } from './findings.js';
import type { FittedSignature, SignatureFitInput } from './fitted-signature.js';

/** Scatter beyond which a line tells little of a house: own judgement; a building simulation counts as calibrated by its months below 0.15, from memory [1]. */
const POOR_FIT = 0.2 as Fraction;

/** What to look at in a signature fitted to bills. */
export function signatureFitFindings(
  { usefulHeat, designLoad: stated }: SignatureFitInput,
  fit: FittedSignature,
  leftOut: number,
  free: readonly [baseLoad: boolean, slope: boolean, balancePoint: boolean],
): readonly Finding[] {
  const findings: Finding[] = [];
  const { usefulRatio, usefulRatioError, residualShare, designLoad, loadAtDesign, baseLoad, balancePoint } = fit;
  if (usefulHeat.from === 'assumed') {
    const values = { heater: usefulHeat.heater, usefulRatio, usefulRatioError };
    findings.push({ code: 'useful-heat-assumed', level: 'note', values, source: 'common practice' });
  }
  if (leftOut > 0) findings.push({ code: 'readings-left-out', level: 'note', values: { leftOut }, source: 'common practice' });
  if (!(free[0] && free[2])) {
    const values = { baseLoadHeld: !free[0], balancePointHeld: !free[2] };
    findings.push({ code: 'line-partly-held', level: 'note', values, source: 'changePointModels' });
  }
  if (residualShare > POOR_FIT) {
    findings.push({ code: 'bills-fit-poorly', level: 'warning', values: { residualShare, highest: POOR_FIT }, source: 'common practice' });
  }
  if (free[0] && baseLoad.estimate < 0) {
    const values = { baseLoad: baseLoad.estimate, baseLoadError: fit.baseLoadError };
    findings.push({ code: 'base-load-below-nothing', level: 'warning', values, source: 'changePointModels' });
  }
  // Between the load with all gains and the loss without any: sun that comes with mild weather makes the slope, and with it the loss, too steep.
  if (stated !== undefined && (stated < loadAtDesign.low || stated > designLoad.high)) {
    const values = { stated, fitted: designLoad.estimate, fittedLow: loadAtDesign.low, fittedHigh: designLoad.high, coverage: designLoad.coverage };
    findings.push({ code: 'heat-loss-disagrees', level: 'warning', values, source: 'changePointModels' });
  }
  return [...findings, ...balancePointFindings({ mode: 'heating', balancePoint: balancePoint.estimate })];
}
