import type { Finding } from '../findings/index.js';
import type { Fraction, Ratio } from '../units/index.js';
import type { SeasonalEnergies, SeasonalPerformance } from './seasonal-performance.js';

/** Factors of heating with auxiliary that plants have; field tests give 2.5 to 4.1 [1]. */
const USUAL = { low: 2, high: 5.5 } as const;

/** Share of the electricity that a source pump should stay within; 4 to 8 % is good, a judgement [1]. */
const PUMP_SHARE = 0.12;

/** What installed units were found to reach of what their rating points promise [1]. */
const INSTALLED = { low: 0.8, high: 0.9 } as const;

/** What to look at in the seasonal performance of a plant. */
export function seasonalFindings(performance: SeasonalPerformance, energies: SeasonalEnergies): readonly Finding[] {
  const whole = performance.boundaries.find(({ boundary }) => boundary === 'H3')?.performanceFactor;
  return [...(whole === undefined ? [] : wholeFindings(whole, energies.origin)), ...pumpFindings(performance.pumpShare, energies)];
}

function wholeFindings(performanceFactor: Ratio, origin: SeasonalEnergies['origin']): readonly Finding[] {
  const unusual: Finding = {
    code: 'performance-factor-unusual',
    level: 'warning',
    values: { boundary: 'H3', performanceFactor, low: USUAL.low as Ratio, high: USUAL.high as Ratio },
    source: 'common practice',
  };
  const installed: Finding = {
    code: 'installed-performance-lower',
    level: 'note',
    values: {
      boundary: 'H3',
      performanceFactor,
      low: (INSTALLED.low * performanceFactor) as Ratio,
      high: (INSTALLED.high * performanceFactor) as Ratio,
    },
    source: 'common practice',
  };
  const outside = performanceFactor < USUAL.low || performanceFactor > USUAL.high;
  return [...(outside ? [unusual] : []), ...(origin === 'rating points' ? [installed] : [])];
}

function pumpFindings(share: Fraction | undefined, { metEnergy, circulatorElectricity }: SeasonalEnergies): readonly Finding[] {
  if (share === undefined || share <= PUMP_SHARE || metEnergy === 0) return [];
  const values = { share, usual: PUMP_SHARE as Fraction, perHeat: ((circulatorElectricity ?? 0) / metEnergy) as Fraction };
  return [{ code: 'pump-share-high', level: 'warning', values, source: 'common practice' }];
}
