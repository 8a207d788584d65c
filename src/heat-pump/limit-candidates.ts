import type { Source } from '../references/index.js';
import type { Temperature } from '../units/index.js';
import type { CoolingLimitInput, LimitCandidate, LimitReason, SuggestLimitsInput } from './limits.js';

/** Freezing point below the lowest entering and the lowest leaving fluid, and what water must keep above; practice [K] and [degC]. */
export const FREEZE_MARGIN = { entering: 8, leaving: 5, water: 7 } as const;

/** A solution that freezes above this is taken as water [degC]. */
const WATER_FREEZES_ABOVE = -0.5;

/** 25 and 95 °F, the ends that trade manuals name for horizontal loops in the north [degC]. */
const HORIZONTAL = { coldest: -3.888888888888889, warmest: 35 } as const;

/** How far the fluid may be from the undisturbed ground: entering as for vertical loops, leaving at peak [K]. */
const FROM_GROUND = { enteringBelow: 11, enteringAbove: 17, leavingBelow: 17 } as const;

const candidate = (reason: LimitReason, temperature: number, source: Source): LimitCandidate => ({
  reason,
  temperature: temperature as Temperature,
  source,
});

/** Whether the fluid is water. */
export const isWater = (freezingPoint: number): boolean => freezingPoint > WATER_FREEZES_ABOVE;

/** Lowest leaving fluid that keeps clear of ice in the evaporator [degC]. */
export const leastLeaving = (freezingPoint: number): number => (isWater(freezingPoint) ? FREEZE_MARGIN.water : freezingPoint + FREEZE_MARGIN.leaving);

/** What asks for a lowest leaving fluid. */
export function leavingCandidates({ coldestGround, unitLowestLeaving, freezingPoint }: SuggestLimitsInput): readonly LimitCandidate[] {
  return [
    ...(unitLowestLeaving === undefined ? [] : [candidate('the unit allows no more', unitLowestLeaving, 'common practice')]),
    candidate(
      isWater(freezingPoint) ? 'water without antifreeze' : 'freezing point of the fluid',
      leastLeaving(freezingPoint),
      'freezeMarginPractice',
    ),
    candidate('distance from the ground', coldestGround - FROM_GROUND.leavingBelow, 'vdi4640Fluid'),
  ];
}

/** What asks for a lowest entering fluid, once the leaving one is known. */
export function enteringCandidates(input: SuggestLimitsInput, lowestLeaving: number): readonly LimitCandidate[] {
  const { coldestGround, heatingDrop, unitLowestEntering, freezingPoint } = input;
  return [
    candidate('the unit allows no more', unitLowestEntering, 'common practice'),
    candidate('practice of horizontal loops', HORIZONTAL.coldest, 'horizontalLoopPractice'),
    candidate('distance from the ground', coldestGround - FROM_GROUND.enteringBelow, 'ashraeGroundDistance'),
    ...(isWater(freezingPoint) ? [] : [candidate('freezing point of the fluid', freezingPoint + FREEZE_MARGIN.entering, 'freezeMarginPractice')]),
    candidate('the leaving fluid and the fall through the unit', lowestLeaving + heatingDrop, 'common practice'),
  ];
}

/** What asks for a highest entering fluid. */
export function highestCandidates({ warmestGround, unitHighestEntering }: CoolingLimitInput): readonly LimitCandidate[] {
  return [
    candidate('the unit allows no more', unitHighestEntering, 'common practice'),
    candidate('practice of horizontal loops', HORIZONTAL.warmest, 'horizontalLoopPractice'),
    candidate('distance from the ground', warmestGround + FROM_GROUND.enteringAbove, 'ashraeGroundDistance'),
  ];
}
