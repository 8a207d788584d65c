import { demand, demandObject, InputError } from '../errors/index.js';
import type { Temperature } from '../units/index.js';
import { enteringCandidates, highestCandidates, leavingCandidates, leastLeaving } from './limit-candidates.js';
import { limitFindings } from './limit-findings.js';
import type { LimitCandidate, LimitName, SuggestedLimit, SuggestedLimits, SuggestLimitsInput } from './limits.js';

/**
 * The three limits of the loop fluid, suggested from ground, unit and fluid, each with the reason that binds, for the user to confirm.
 *
 * Lowest entering fluid, lowest leaving fluid (where the freeze-protection stop is set) and highest entering fluid. Each is the strictest of several things, all of
 * them listed. None holds until `confirmed` gives it: the unit's maker and the fluid really filled decide. The ground is that at the depth of the pipes in the
 * design month; its yearly mean would ask too much of a horizontal loop in winter.
 *
 * @param input - ground [degC], fall through the unit [K], limits of the unit and freezing point [degC]; see {@link SuggestLimitsInput}
 * @returns the limits with reasons and candidates, whether water would do, and findings
 * @throws InputError when a number is impossible, or limits contradict one another
 * @remarks
 * Sources: `horizontalLoopPractice`, `ashraeGroundDistance`, `vdi4640Fluid`, `freezeMarginPractice`, all recalled: that is why they are suggestions.
 *
 * Invariants: no suggestion goes beyond what the unit allows; the freezing point is 8 K below the suggested entering and 5 K below the suggested leaving fluid; the
 * leaving fluid at the suggested entering one is within its limit.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, kelvinDifference } = await import('../units/index.js');
 * const { limits, findings } = suggestLimits({
 *   coldestGround: celsius(5),
 *   heatingDrop: kelvinDifference(3),
 *   unitLowestEntering: celsius(-7),
 *   freezingPoint: celsius(-12),
 * });
 * expect(limits[0]).toMatchObject({ limit: 'lowestEntering', reason: 'practice of horizontal loops', confirmed: false });
 * expect(limits[0]?.temperature).toBeCloseTo(-3.89, 2);
 * expect(limits[1]).toMatchObject({ limit: 'lowestLeaving', reason: 'freezing point of the fluid', temperature: -7 });
 * expect(findings.map(({ code }) => code)).toEqual(['limit-unconfirmed', 'limit-unconfirmed']);
 * ```
 */
export function suggestLimits(input: SuggestLimitsInput): SuggestedLimits {
  demandInput(input);
  const { cooling, confirmed = {}, heatingDrop } = input;
  const leaving = limitOf('lowestLeaving', leavingCandidates(input), confirmed.lowestLeaving);
  const entering = limitOf('lowestEntering', enteringCandidates(input, leaving.temperature), confirmed.lowestEntering);
  const highest = cooling === undefined ? undefined : limitOf('highestEntering', highestCandidates(cooling), confirmed.highestEntering);
  refuseCrossed(entering, leaving, input);
  if (highest !== undefined) refuseCrossed(highest, entering, input);
  const limits = [entering, leaving, ...(highest === undefined ? [] : [highest])];
  const designLeaving = (entering.temperature - heatingDrop) as Temperature;
  const plainWater = designLeaving > leastLeaving(0);
  return { limits, designLeaving, plainWater, findings: limitFindings(input, limits, designLeaving) };
}

/** The strictest of the candidates, or what the user set. */
function limitOf(limit: LimitName, candidates: readonly LimitCandidate[], given?: Temperature): SuggestedLimit {
  const sign = limit === 'highestEntering' ? -1 : 1;
  const binding = candidates.reduce((strictest, each) => (sign * (each.temperature - strictest.temperature) > 0 ? each : strictest));
  const suggestion = binding.temperature;
  if (given === undefined) return { limit, ...binding, suggestion, confirmed: false, candidates };
  return { limit, reason: 'given by the user', temperature: given, source: 'common practice', suggestion, confirmed: true, candidates };
}

function demandInput({
  coldestGround,
  heatingDrop,
  unitLowestEntering,
  unitLowestLeaving,
  freezingPoint,
  cooling,
  confirmed,
}: SuggestLimitsInput): void {
  const kind = 'temperature';
  demand('coldestGround', kind, coldestGround, { atLeast: -15, atMost: 40 });
  demand('heatingDrop', 'temperature difference', heatingDrop, { atLeast: 0.5, atMost: 15 });
  demand('unitLowestEntering', kind, unitLowestEntering, { atLeast: -30, atMost: 25 });
  if (unitLowestLeaving !== undefined) demand('unitLowestLeaving', kind, unitLowestLeaving, { atLeast: -35, below: unitLowestEntering });
  demand('freezingPoint', kind, freezingPoint, { atLeast: -60, atMost: 0 });
  if (cooling !== undefined) {
    demandObject('cooling', cooling);
    demand('cooling.warmestGround', kind, cooling.warmestGround, { atLeast: Math.max(-10, coldestGround), atMost: 45 });
    demand('cooling.unitHighestEntering', kind, cooling.unitHighestEntering, { atLeast: 15, above: unitLowestEntering, atMost: 70 });
  }
  if (confirmed === undefined) return;
  demandObject('confirmed', confirmed);
  const { lowestEntering, lowestLeaving, highestEntering } = confirmed;
  if (lowestEntering !== undefined) demand('confirmed.lowestEntering', kind, lowestEntering, { atLeast: -40, atMost: 40 });
  if (lowestLeaving !== undefined) demand('confirmed.lowestLeaving', kind, lowestLeaving, { atLeast: -40, atMost: 40 });
  if (highestEntering === undefined) return;
  demand('confirmed.highestEntering', kind, highestEntering, { atLeast: 0, atMost: 70 });
  if (cooling !== undefined) return;
  const value = { kind, value: highestEntering } as const;
  throw new InputError({
    code: 'surplus',
    argument: 'confirmed.highestEntering',
    value,
    allowed: 'none without cooling',
    hint: 'give `cooling` as well',
  });
}

function refuseCrossed(above: SuggestedLimit, below: SuggestedLimit, { coldestGround }: SuggestLimitsInput): void {
  if (below.temperature < above.temperature) return;
  const wrong = [below, above].find(({ confirmed }) => confirmed);
  const apart = `${below.limit} below ${above.limit}, not ${String(below.temperature)} and ${String(above.temperature)} degC`;
  throw new InputError({
    code: 'impossible',
    argument: wrong === undefined ? 'coldestGround' : `confirmed.${wrong.limit}`,
    value: { kind: 'temperature', value: wrong?.temperature ?? coldestGround },
    allowed: apart,
    hint: 'in heating the fluid leaves colder than it enters; a wrong freezing point or fall through the unit also puts limits together',
  });
}
