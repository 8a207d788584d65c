import type { Finding } from '../findings/index.js';
import type { Energy, TemperatureDifference } from '../units/index.js';
import { closedFormErrors } from './closed-form-errors.js';
import { LEAST_COVERED, MILD_OVER_YEAR, USUAL_BALANCE_POINT, USUAL_DESIGN_DISTANCE } from './defaults.data.js';
import type { MonthLoad } from './monthly-loads.js';
import type { RunFractions } from './run-fractions.js';
import type { EnergySignature } from './signature.js';
import type { ErbsSpread } from './spread.js';

/** What to know where the spread was told from monthly means: a warning where the sea keeps the weather even. */
export function spreadFindings({ overYear }: ErbsSpread): readonly Finding[] {
  const level = overYear < MILD_OVER_YEAR ? 'warning' : 'note';
  return [{ code: 'spread-told-from-means', level, values: { overYear, mildBelow: MILD_OVER_YEAR as TemperatureDifference }, source: 'erbs1983' }];
}

/** Whether the design outdoor temperature fits the months it is the extreme of. */
export function designFindings({ mode, designOutdoor }: EnergySignature, months: readonly MonthLoad[]): readonly Finding[] {
  const sign = mode === 'heating' ? 1 : -1;
  const distances = months.map(({ month, meanOutdoor, spread }) => ({ month, meanOutdoor, spread, distance: sign * (meanOutdoor - designOutdoor) }));
  const [extreme] = distances.sort((a, b) => a.distance - b.distance);
  if (extreme === undefined) return [];
  const { month, meanOutdoor, spread, distance } = extreme;
  const { least, most } = USUAL_DESIGN_DISTANCE;
  if (distance >= least * spread && distance <= most * spread) return [];
  const values = { mode, designOutdoor, month, meanOutdoor, spread };
  return [{ code: 'design-outdoor-doubtful', level: 'warning', values, source: 'common practice' }];
}

/** Whether the balance point is one that houses have. */
export function balancePointFindings({ mode, balancePoint }: Pick<EnergySignature, 'mode' | 'balancePoint'>): readonly Finding[] {
  const { lowest, highest } = USUAL_BALANCE_POINT[mode];
  if (balancePoint >= lowest && balancePoint <= highest) return [];
  return [{ code: 'balance-point-unusual', level: 'warning', values: { mode, balancePoint, lowest, highest }, source: 'common practice' }];
}

/** Whether the unit carries the building alone: a note while the rest is small, a warning beyond, a stop where it carries less than half. */
export function capacityFindings({ mode, loadAtDesign }: EnergySignature, run: RunFractions): readonly Finding[] {
  const { capacity, capacityBalancePoint, unmetEnergy, coveredShare } = run;
  if (capacity >= loadAtDesign) return [];
  const level = coveredShare < 0.5 ? 'stop' : coveredShare < LEAST_COVERED ? 'warning' : 'note';
  const { unmetEnergyLow, unmetEnergyHigh } = closedFormErrors('normal');
  const unmetLow = (unmetEnergy * (1 + unmetEnergyLow)) as Energy;
  const unmetHigh = (unmetEnergy * (1 + unmetEnergyHigh)) as Energy;
  const values = { mode, capacity, designLoad: loadAtDesign, capacityBalancePoint, unmetEnergy, unmetLow, unmetHigh, coveredShare };
  return [{ code: 'capacity-short', level, values, source: 'common practice' }];
}
