import { type HotWaterInput, hotWaterInputShape } from '../building/index.js';
import { demand, demandObject } from '../errors/index.js';
import {
  type ConditionRatingPoint,
  conditionRatingPointShape,
  type EmitterRating,
  emitterRatingShape,
  type RatingPoint,
  ratingPointShape,
} from '../heat-pump/index.js';
import { joinedShape } from '../states/index.js';
import type { ElectricPower, Fraction, Shape, Temperature, TemperatureDifference } from '../units/index.js';

/** The circulator of the loop, which runs while the unit runs. */
export interface PumpInput {
  /** Electric input, 0 to 1e5 [W]. */
  readonly power: ElectricPower;
  /** Share of it that ends as heat in the fluid, 0 to 1; all when left out [1]. */
  readonly heatShare?: Fraction;
}

/** Hot water that the unit makes, and how it does so: at a supply temperature of its rating points, or by points of its own. */
export interface PlanHotWater extends HotWaterInput {
  /** Water leaving the unit while it makes hot water, at least as hot as the draw; of a unit rated over the supply temperature [degC]. */
  readonly supplyTemperature?: Temperature;
  /** Rating points of the unit while it makes hot water; of a unit that is not rated over the supply temperature. */
  readonly points?: readonly RatingPoint[];
}

/** Lower stages or speeds of a unit in heating, beside its highest, which is `heatPump.heating`. */
export interface LowerLevels {
  /** Whether the unit switches between its levels, or runs at any speed between them. */
  readonly between: 'stages' | 'speeds';
  /** The levels, the least output first, 1 to 19. */
  readonly levels: readonly {
    /** Rating points of the level, over the same conditions as those of the highest. */
    readonly points: readonly ConditionRatingPoint[];
  }[];
}

/** The emitters of the house with the water that flows through them. */
export interface PlanEmitters extends EmitterRating {
  /** Supply minus return at the design load, 0 to 40 [K]. */
  readonly waterSpread: TemperatureDifference;
}

/** Shape of {@link PumpInput}. */
export const pumpInputShape: Shape<PumpInput> = { power: 'electric power', heatShare: { optional: 'fraction' } };

/** Shape of {@link PlanHotWater}. */
export const planHotWaterShape: Shape<PlanHotWater> = /* @__PURE__ */ joinedShape(hotWaterInputShape, {
  supplyTemperature: { optional: 'temperature' },
  points: { optional: { list: ratingPointShape } },
});

/** Shape of {@link LowerLevels}. */
export const lowerLevelsShape: Shape<LowerLevels> = {
  between: ['stages', 'speeds'],
  levels: { list: { points: { list: conditionRatingPointShape } } },
};

/** Shape of {@link PlanEmitters}. */
export const planEmittersShape: Shape<PlanEmitters> = /* @__PURE__ */ joinedShape(emitterRatingShape, { waterSpread: 'temperature difference' });

/** Refuses a circulator that no house has. */
export function demandPump(pump: PumpInput | undefined): void {
  if (pump === undefined) return;
  demandObject('pump', pump);
  demand('pump.power', 'electric power', pump.power, { atLeast: 0, atMost: 1e5 });
  if (pump.heatShare !== undefined) demand('pump.heatShare', 'fraction', pump.heatShare, { atLeast: 0, atMost: 1 });
}
