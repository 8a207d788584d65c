import type { Finding } from '../findings/index.js';
import type { Temperature, TemperatureDifference } from '../units/index.js';
import { FREEZE_MARGIN, isWater, leastLeaving } from './limit-candidates.js';
import type { SuggestedLimit, SuggestLimitsInput } from './limits.js';

/** Closer to the ground than this, the drive is so small that the loop gets absurdly long [K]. */
const LEAST_DRIVE = { heating: 3, cooling: 5 } as const;

/** What to look at in a set of limits. */
export function limitFindings(input: SuggestLimitsInput, limits: readonly SuggestedLimit[], designLeaving: Temperature): readonly Finding[] {
  const leaving = limits.find(({ limit }) => limit === 'lowestLeaving');
  const stopsEarly = leaving !== undefined && designLeaving < leaving.temperature - 1e-9;
  return [
    ...limits.filter(({ confirmed }) => !confirmed).map(unconfirmed),
    ...limits.flatMap((limit) => beyondUnit(input, limit)),
    ...limits.flatMap((limit) => nearGround(input, limit)),
    ...limits.flatMap((limit) => freezes(input.freezingPoint, limit)),
    ...(stopsEarly ? [stops(designLeaving, leaving.temperature)] : []),
    ...(designLeaving > leastLeaving(0) && !isWater(input.freezingPoint) ? [water(designLeaving)] : []),
  ];
}

const unconfirmed = ({ limit, temperature, reason }: SuggestedLimit): Finding => ({
  code: 'limit-unconfirmed',
  level: 'warning',
  values: { limit, temperature, reason },
  source: 'common practice',
});

/** The user may not allow what the maker does not. */
function beyondUnit(
  { unitLowestEntering, unitLowestLeaving, cooling }: SuggestLimitsInput,
  { limit, temperature }: SuggestedLimit,
): readonly Finding[] {
  const unitLimit = { lowestEntering: unitLowestEntering, lowestLeaving: unitLowestLeaving, highestEntering: cooling?.unitHighestEntering }[limit];
  if (unitLimit === undefined || (limit === 'highestEntering' ? temperature <= unitLimit : temperature >= unitLimit)) return [];
  return [{ code: 'limit-beyond-unit', level: 'stop', values: { limit, temperature, unitLimit }, source: 'common practice' }];
}

function nearGround({ coldestGround, cooling }: SuggestLimitsInput, { limit, temperature }: SuggestedLimit): readonly Finding[] {
  const groundTemperature = limit === 'highestEntering' ? cooling?.warmestGround : coldestGround;
  if (limit === 'lowestLeaving' || groundTemperature === undefined) return [];
  const drive = limit === 'highestEntering' ? temperature - groundTemperature : groundTemperature - temperature;
  const needed = limit === 'highestEntering' ? LEAST_DRIVE.cooling : LEAST_DRIVE.heating;
  if (drive >= needed) return [];
  const values = { limit, temperature, groundTemperature, needed: needed as TemperatureDifference };
  return [{ code: 'limit-near-ground', level: 'warning', values, source: 'common practice' }];
}

function freezes(freezingPoint: Temperature, { limit, temperature }: SuggestedLimit): readonly Finding[] {
  if (limit === 'highestEntering') return [];
  const least = { lowestEntering: freezingPoint + FREEZE_MARGIN.entering, lowestLeaving: leastLeaving(freezingPoint) }[limit];
  // Water is judged by the leaving fluid alone.
  if (temperature >= least - 1e-9 || (limit === 'lowestEntering' && isWater(freezingPoint))) return [];
  const values = { limit, temperature, freezingPoint, needed: (least - freezingPoint) as TemperatureDifference };
  return [{ code: 'limit-freezes', level: 'stop', values, source: 'freezeMarginPractice' }];
}

const stops = (designLeaving: Temperature, lowestLeaving: Temperature): Finding => ({
  code: 'unit-stops-before-limit',
  level: 'warning',
  values: { designLeaving, lowestLeaving },
  source: 'common practice',
});

const water = (designLeaving: Temperature): Finding => ({
  code: 'plain-water-possible',
  level: 'note',
  values: { designLeaving, least: leastLeaving(0) as Temperature },
  source: 'freezeMarginPractice',
});
