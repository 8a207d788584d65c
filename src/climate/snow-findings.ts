import type { Finding } from '../findings/index.js';
import type { AnnualWave } from '../states/index.js';
import type { SurfaceCoefficient, SurfaceResistance, Temperature, TemperatureDifference } from '../units/index.js';
import { DAY } from './limits.js';
import { CLOSED, monthMiddles, type SnowMonth } from './snow-months.js';

/** Closed snow does not last where the mean of the air is above this [degC]. */
const MILD = 5;

/** What to know about a surface below snow. */
export function snowFindings(found: {
  readonly air: AnnualWave;
  readonly snow: readonly SnowMonth[];
  readonly resistances: readonly SurfaceResistance[];
  readonly meanGain: TemperatureDifference;
}): readonly Finding[] {
  const { air, snow, resistances, meanGain } = found;
  const most = Math.max(...resistances);
  if (most === 0) return [];
  const findings: Finding[] = [
    { code: 'snow-relied-on', level: 'note', values: { meanGain, coefficient: (1 / most) as SurfaceCoefficient }, source: 'sturm1997' },
  ];
  const warmest = monthMiddles()
    .map((middle, month) => ({
      month: month + 1,
      outdoor: (air.mean - air.amplitude * Math.cos((2 * Math.PI * (middle + 1 - air.coldestDay) * DAY) / air.period)) as Temperature,
    }))
    .filter(({ month, outdoor }) => (snow[month - 1]?.depth ?? 0) >= CLOSED && outdoor > MILD)
    .sort((a, b) => b.outdoor - a.outdoor)[0];
  if (warmest !== undefined) findings.push({ code: 'snow-in-mild-air', level: 'warning', values: warmest, source: 'common practice' });
  return findings;
}
