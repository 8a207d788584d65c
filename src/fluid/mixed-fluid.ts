import { demand, demandObject, InputError, locate } from '../errors/index.js';
import type { Mass, MassFraction, Shape, Temperature, Volume, VolumeFraction } from '../units/index.js';
import { GREATEST_LOOP } from './charge.js';
import { type Concentrate, demandConcentrate } from './concentrate.js';
import { demandFluidChoice, type Fluid, type OfAnyFluid } from './fluids.js';
import { freezingPoint } from './freezing.js';
import { demandLiquid, densityOf, volumeFromMassFraction } from './volume-share.js';
import { warmestFreezingPoint } from './warmest-freezing-point.js';
import { WATER } from './water.data.js';

/** What was metered into a loop, and what was left in it before. */
export interface PouredParts {
  /** The antifreeze. */
  readonly fluid: Fluid;
  /** Concentrate poured in, 0 for none; at 20 °C [m3]. */
  readonly concentrateVolume: Volume;
  /** Water poured in, 0 for none; at 20 °C [m3]. */
  readonly waterVolume: Volume;
  /** What the drum held; undiluted antifreeze when left out. */
  readonly concentrate?: Concentrate;
  /** What was in the loop already, after any draining; nothing when left out. */
  readonly remaining?: {
    /** Mass share of antifreeze in it [kg/kg]. */
    readonly massFraction: MassFraction;
    /** How much of it, at 20 °C [m3]. */
    readonly solutionVolume: Volume;
  };
}

/** The mixture that came of it. */
export interface MixedFluid {
  /** Mass share of antifreeze [kg/kg]. */
  readonly massFraction: MassFraction;
  /** Volume share of antifreeze at 20 °C [m3/m3]. */
  readonly volumeFraction: VolumeFraction;
  /** Finished solution at 20 °C [m3]. */
  readonly solutionVolume: Volume;
  /** Its mass [kg]. */
  readonly solutionMass: Mass;
  /** Where it freezes [degC]. */
  readonly freezingPoint: Temperature;
  /** Where it freezes by the warmest of the sources compared [degC]. */
  readonly warmestFreezingPoint: Temperature;
}

/** Shape of {@link MixedFluid}. */
export const mixedFluidShape: Shape<MixedFluid> = {
  massFraction: 'mass fraction',
  volumeFraction: 'volume fraction',
  solutionVolume: 'volume',
  solutionMass: 'mass',
  freezingPoint: 'temperature',
  warmestFreezingPoint: 'temperature',
};

/**
 * What is in a loop after concentrate and water were metered into it, or after some was drained and something added.
 *
 * A balance of mass: litres do not add up, since antifreeze and water contract. Assumes that the pump has mixed it all; before that a
 * sample says little.
 *
 * @param parts - antifreeze, volumes poured [m3], what the drum held, what was in the loop before
 * @returns concentration, volume and freezing point of the whole
 * @throws InputError when a number is impossible, nothing at all is there, or the mixture is stronger than the fits go
 * @remarks
 * Source: `melinder2010` for densities. Inverts `antifreezeCharge`.
 *
 * Invariants: mass of antifreeze and of the whole are those of the parts; plain water never lowers the freezing point.
 * @example
 * ```ts @import.meta.vitest
 * const { litres, volumePercent } = await import('../units/index.js');
 * const mixed = mixedFluid({ fluid: 'propylene-glycol', concentrateVolume: litres(100), waterVolume: litres(304.8) });
 * expect(volumePercent.of(mixed.volumeFraction)).toBeCloseTo(25, 1);
 * expect(litres.of(mixed.solutionVolume)).toBeCloseTo(400, 1);
 * ```
 */
export function mixedFluid(parts: OfAnyFluid<PouredParts>): MixedFluid {
  const { fluid, concentrateVolume, waterVolume } = parts;
  const record = demandLiquid(fluid);
  demand('concentrateVolume', 'volume', concentrateVolume, { atLeast: 0, atMost: GREATEST_LOOP });
  demand('waterVolume', 'volume', waterVolume, { atLeast: 0, atMost: GREATEST_LOOP });
  const concentrate = demandConcentrate(record, parts.concentrate);
  const before = remainingMass(parts);
  const solutionMass = before.mass + concentrateVolume * concentrate.density + waterVolume * WATER.pureDensity;
  if (solutionMass === 0) {
    const allowed = 'something poured in, or something remaining';
    throw new InputError({ code: 'impossible', argument: 'waterVolume', value: { kind: 'volume', value: waterVolume }, allowed });
  }
  const massFraction = ((before.antifreeze + concentrateVolume * concentrate.antifreeze) / solutionMass) as MassFraction;
  if (massFraction > record.highestMassFraction) {
    const allowed = `a mixture of at most ${String(record.highestMassFraction)} by mass, where the fits of ${record.name} end`;
    const value = { kind: 'volume', value: concentrateVolume } as const;
    throw new InputError({ code: 'impossible', argument: 'concentrateVolume', value, allowed });
  }
  const choice = { fluid, massFraction };
  return {
    massFraction,
    volumeFraction: volumeFromMassFraction(choice),
    solutionVolume: solutionMass / densityOf(record, massFraction),
    solutionMass,
    freezingPoint: freezingPoint(choice),
    warmestFreezingPoint: warmestFreezingPoint(choice),
  } as MixedFluid;
}

/** Mass of what was in the loop, and of the antifreeze in it [kg]. */
function remainingMass({ fluid, remaining }: OfAnyFluid<PouredParts>): { readonly mass: number; readonly antifreeze: number } {
  if (remaining === undefined) return { mass: 0, antifreeze: 0 };
  demandObject('remaining', remaining);
  const { massFraction, solutionVolume } = remaining;
  const record = locate('remaining', () => demandFluidChoice({ fluid, massFraction }));
  demand('remaining.solutionVolume', 'volume', solutionVolume, { atLeast: 0, atMost: GREATEST_LOOP });
  const mass = solutionVolume * densityOf(record, massFraction);
  return { mass, antifreeze: mass * massFraction };
}
