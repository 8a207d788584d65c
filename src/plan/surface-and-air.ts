import { fitAnnualWave } from '../climate/index.js';
import type { Finding } from '../findings/index.js';
import type { AnnualWave } from '../states/index.js';
import type { Temperature, TemperatureDifference, Time } from '../units/index.js';
import { atPlace } from './at-place.js';

const DAY = 86_400;

/** A surface lies about 1 K above its air, up to 5 K under lasting snow or a dark cover; more is another place's [K]. */
const MOST_OFFSET = 6 as TemperatureDifference;
/** Beyond twice the usual no cover explains it, and no length means anything [K]. */
const STOP_OFFSET = 12;
/** A surface follows its air within days; half a season apart one of both belongs to another place or hemisphere: 45 days [s]. */
const MOST_LAG = 3_888_000 as Time;
/** Below this swing the coldest day means little [K]. */
const LEAST_SWING = 3;

/**
 * Whether a ground surface can lie below the air that was given apart from it: the loop sees the one, the loads of the house the other.
 *
 * @param surface - wave of the ground surface
 * @param airMonths - twelve monthly means of the air, January first [degC]
 * @returns a warning for a mean that does not belong to the air, a stop beyond twice the usual; a stop for a season of another hemisphere
 */
export function surfaceAndAir(surface: AnnualWave, airMonths: readonly Temperature[]): readonly Finding[] {
  const { wave: air } = atPlace('airMonths', () => fitAnnualWave({ of: 'air', monthlyMeans: airMonths }));
  const findings: Finding[] = [];
  const meanOffset = (surface.mean - air.mean) as TemperatureDifference;
  if (Math.abs(meanOffset) > MOST_OFFSET) {
    const level = Math.abs(meanOffset) > STOP_OFFSET ? 'stop' : 'warning';
    findings.push({ code: 'surface-mean-off-air', level, values: { meanOffset, usual: MOST_OFFSET }, source: 'common practice' });
  }
  const lag = within(surface.coldestDay * DAY - air.coldestDay * DAY, surface.period);
  if (Math.min(surface.amplitude, air.amplitude) >= LEAST_SWING && Math.abs(lag) > MOST_LAG) {
    findings.push({ code: 'surface-season-off-air', level: 'stop', values: { lag, most: MOST_LAG }, source: 'common practice' });
  }
  return findings;
}

/** The same lag, counted to the nearer of both sides. */
const within = (lag: number, period: Time): Time => (lag - period * Math.round(lag / period)) as Time;
