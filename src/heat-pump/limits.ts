import type { Finding } from '../findings/index.js';
import type { Source } from '../references/index.js';
import type { Shape, Temperature, TemperatureDifference } from '../units/index.js';

/** Which of the three limits of the fluid. */
export type LimitName = 'lowestEntering' | 'lowestLeaving' | 'highestEntering';

/** Why a limit is where it is. */
export type LimitReason =
  | 'the unit allows no more'
  | 'practice of horizontal loops'
  | 'distance from the ground'
  | 'freezing point of the fluid'
  | 'water without antifreeze'
  | 'the leaving fluid and the fall through the unit'
  | 'given by the user';

/** The side of cooling, for a unit that cools. */
export interface CoolingLimitInput {
  /** Undisturbed ground at the depth of the pipes in the warmest month of the design year, −10 to 45 [degC]. */
  readonly warmestGround: Temperature;
  /** Highest entering fluid that the maker allows in cooling, 15 to 70 [degC]. */
  readonly unitHighestEntering: Temperature;
}

/** Limits that somebody who knows unit and fluid has set. */
export interface ConfirmedLimits {
  /** Lowest entering fluid, −40 to 40 [degC]. */
  readonly lowestEntering?: Temperature;
  /** Lowest leaving fluid, where the freeze-protection stop is set, −40 to 40 [degC]. */
  readonly lowestLeaving?: Temperature;
  /** Highest entering fluid, 0 to 70; for a unit that cools [degC]. */
  readonly highestEntering?: Temperature;
}

/** What limits are suggested from. */
export interface SuggestLimitsInput {
  /** Undisturbed ground at the depth of the pipes in the coldest month of the design year, −15 to 40; not the mean of the year [degC]. */
  readonly coldestGround: Temperature;
  /** Fall of the fluid through the unit at the design flow in heating, 0.5 to 15 [K]. */
  readonly heatingDrop: TemperatureDifference;
  /** Lowest entering fluid that the maker allows in heating, −30 to 25 [degC]. */
  readonly unitLowestEntering: Temperature;
  /** Lowest leaving fluid that the maker allows with antifreeze, where the data sheet has one, −35 to 25 [degC]. */
  readonly unitLowestLeaving?: Temperature;
  /** Freezing point of the fluid filled, −60 to 0, 0 for water [degC]. */
  readonly freezingPoint: Temperature;
  /** Ground and unit in cooling. */
  readonly cooling?: CoolingLimitInput;
  /** Limits already set; they stand in place of the suggestions. */
  readonly confirmed?: ConfirmedLimits;
}

/** One thing that asks for a limit. */
export interface LimitCandidate {
  /** Why. */
  readonly reason: LimitReason;
  /** Where it would put the limit [degC]. */
  readonly temperature: Temperature;
  /** What it rests on. */
  readonly source: Source;
}

/** A limit, and what speaks for it. */
export interface SuggestedLimit extends LimitCandidate {
  /** Which limit. */
  readonly limit: LimitName;
  /** Where sources and the leaving limit put it, whatever the user set for it [degC]. */
  readonly suggestion: Temperature;
  /** Whether the user has set it. A limit not confirmed is a proposal to be read, not one to build by. */
  readonly confirmed: boolean;
  /** All that was looked at, the one that binds among them. */
  readonly candidates: readonly LimitCandidate[];
}

/** Limits for a loop. */
export interface SuggestedLimits {
  /** Lowest entering and lowest leaving fluid, and highest entering fluid of a unit that cools. */
  readonly limits: readonly SuggestedLimit[];
  /** Leaving fluid at the lowest entering one [degC]. */
  readonly designLeaving: Temperature;
  /** Whether water without antifreeze would do at these limits. */
  readonly plainWater: boolean;
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link CoolingLimitInput}. */
export const coolingLimitInputShape: Shape<CoolingLimitInput> = { warmestGround: 'temperature', unitHighestEntering: 'temperature' };

/** Shape of {@link ConfirmedLimits}. */
export const confirmedLimitsShape: Shape<ConfirmedLimits> = {
  lowestEntering: { optional: 'temperature' },
  lowestLeaving: { optional: 'temperature' },
  highestEntering: { optional: 'temperature' },
};

/** Shape of {@link SuggestLimitsInput}. */
export const suggestLimitsInputShape: Shape<SuggestLimitsInput> = {
  coldestGround: 'temperature',
  heatingDrop: 'temperature difference',
  unitLowestEntering: 'temperature',
  unitLowestLeaving: { optional: 'temperature' },
  freezingPoint: 'temperature',
  cooling: { optional: coolingLimitInputShape },
  confirmed: { optional: confirmedLimitsShape },
};
