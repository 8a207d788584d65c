import type { Finding } from '../findings/index.js';
import type { MassFraction, Shape, Temperature, TemperatureDifference, VolumeFraction } from '../units/index.js';
import type { FluidName } from './fluid-record.js';
import { type Fluid, FLUID_RECORD_NAMES, type OfAnyFluid } from './fluids.js';
import { freezingPoint } from './freezing.js';
import { type FreezingRule, leastMassFraction } from './least-mass-fraction.js';
import { demandLiquid, massFromVolumeFraction, volumeFromMassFraction } from './volume-share.js';
import { warmestFreezingPoint } from './warmest-freezing-point.js';

/** A fluid and the temperature at which it must still be free of ice. */
export interface ProtectionTarget {
  /** The fluid. */
  readonly fluid: Fluid;
  /** The freezing point must not lie above this; the margin is already in it, see {@link protectionTemperature} [degC]. */
  readonly protectTo: Temperature;
  /** Whose freezing point must reach it; `fit` when left out. */
  readonly freezingRule?: FreezingRule;
}

/** A mixture that can be ordered, and why it is this one. */
export interface AntifreezeProposal {
  /** The fluid. */
  readonly fluid: FluidName;
  /** Mass share of antifreeze in the finished solution [kg/kg]. */
  readonly massFraction: MassFraction;
  /** Volume share of antifreeze at 20 °C, in whole per cent: this is what is ordered and mixed [m3/m3]. */
  readonly volumeFraction: VolumeFraction;
  /** Where the proposed mixture freezes [degC]. */
  readonly freezingPoint: Temperature;
  /** Where it freezes by the warmest of the sources compared [degC]. */
  readonly warmestFreezingPoint: Temperature;
  /** How far the freezing point is below the temperature asked for [K]. */
  readonly reserve: TemperatureDifference;
  /** How far the computed freezing point may be off, either way [K]. */
  readonly freezingPointUncertainty: TemperatureDifference;
  /** Volume share that the protection alone asks for, before rounding [m3/m3]. */
  readonly neededVolumeFraction: VolumeFraction;
  /** Least volume share at which inhibitors work and nothing grows; 0 where no such floor is known [m3/m3]. */
  readonly inhibitorFloor: VolumeFraction;
  /** Which of the two sets the share. */
  readonly governedBy: 'protection' | 'inhibitor floor';
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link AntifreezeProposal}, its findings apart. */
export const antifreezeProposalShape: Shape<Omit<AntifreezeProposal, 'findings'>> = {
  fluid: FLUID_RECORD_NAMES,
  massFraction: 'mass fraction',
  volumeFraction: 'volume fraction',
  freezingPoint: 'temperature',
  warmestFreezingPoint: 'temperature',
  reserve: 'temperature difference',
  freezingPointUncertainty: 'temperature difference',
  neededVolumeFraction: 'volume fraction',
  inhibitorFloor: 'volume fraction',
  governedBy: ['protection', 'inhibitor floor'],
};

/** What rounding of a whole per cent may leave behind; a thousandth of what can be measured in. */
const ROUNDING = 1e-9;

/**
 * Proposes how much antifreeze to fill for a protection temperature.
 *
 * Takes what freezing at `protectTo` asks for, rounds up to whole per cent by volume, and never goes below the floor at which a
 * glycol's inhibitors work and bacteria stay out. Adds no margin of its own, unless the warmest source is to reach `protectTo`.
 *
 * @param target - fluid, protection temperature [degC], and whose freezing point must reach it
 * @returns the mixture, what sets it, and findings: that the warmest of the sources freezes above `protectTo` all the same
 * @throws InputError when the fluid is unknown or a salt, the temperature is not one the fluid can protect to, or is above its range
 * @remarks
 * Source: `melinder2010` for the freezing point, `inhibitedGlycolSheets` for the floor; for the warmest source see
 * {@link warmestFreezingPoint}.
 *
 * Invariants: the proposal never freezes above `protectTo` by its rule and is never below the floor; a colder target never asks for less.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, volumePercent } = await import('../units/index.js');
 * const proposal = antifreezeForProtection({ fluid: 'propylene-glycol', protectTo: celsius(-9.6) });
 * expect(volumePercent.of(proposal.volumeFraction)).toBe(25);
 * expect(proposal.governedBy).toBe('inhibitor floor');
 * expect(proposal.freezingPoint).toBeCloseTo(-10.0, 1);
 * ```
 */
export function antifreezeForProtection({ fluid, protectTo, freezingRule = 'fit' }: OfAnyFluid<ProtectionTarget>): AntifreezeProposal {
  const record = demandLiquid(fluid);
  const { name, inhibitorFloor, uncertainty } = record;
  const needed = volumeFromMassFraction({ fluid, massFraction: leastMassFraction(record, protectTo, freezingRule) });
  const volumeFraction = Math.max(Math.ceil(needed * 100 - ROUNDING) / 100, inhibitorFloor) as VolumeFraction;
  const massFraction = massFromVolumeFraction({ fluid, volumeFraction });
  const freezes = freezingPoint({ fluid, massFraction });
  const warmest = warmestFreezingPoint({ fluid, massFraction });
  return {
    fluid: name,
    massFraction,
    volumeFraction,
    freezingPoint: freezes,
    warmestFreezingPoint: warmest,
    reserve: protectTo - freezes,
    freezingPointUncertainty: uncertainty.freezingPoint,
    neededVolumeFraction: needed,
    inhibitorFloor,
    governedBy: needed < inhibitorFloor ? 'inhibitor floor' : 'protection',
    findings: sourceFindings(protectTo, warmest),
  } as AntifreezeProposal;
}

/** That the mixture falls short by the warmest source; where water would do there is nothing to fall short of. */
function sourceFindings(protectTo: Temperature, warmest: Temperature): readonly Finding[] {
  const above = (warmest - protectTo) as TemperatureDifference;
  if (protectTo >= 0 || above <= ROUNDING) return [];
  const values = { protectTo, warmestFreezingPoint: warmest, above };
  return [{ code: 'protection-short-by-a-source', level: 'warning', values, source: 'ashrae2001Coolants' }];
}
