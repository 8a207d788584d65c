import { demand, InputError } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Density, DryBasisMoisture, Fraction, Mass, Volume } from '../units/index.js';
import type { DugSoil, InPlaceDensityResult, InPlaceMethod } from './dug-soil.js';
import { likelyCauses, MASS_SLIPS, unitSlips, type Slip } from './likely-cause.js';
import { dryBasis } from './moisture.js';
import { DEFAULT_PARTICLE_DENSITY } from './particle-density.js';
import { soilPhases } from './phases.js';
import { asRead, relativeError, type Reading, type Take } from './propagated-error.js';
import { believable, densestWith, hasRoom, type SoilWithWater } from './room-for-water.js';
import { TYPICAL_DENSITY_ERROR } from './sample-density.js';
import { demandParticleDensity } from './zero-air-voids.js';

/** What cutting, pressing and crumbling adds to the errors of the readings, as a share; source `common practice`. */
const HANDLING = 0.02;

/** Loosest and densest soil that is computed with [kg/m3]. */
const LOOSEST = 20;
const DENSEST = 2800;

/** Readings of the soil itself. */
export interface DugReadings {
  readonly moist: Reading;
  readonly tare: Reading;
  readonly water: Reading;
  /** Standard error of one weighing [kg]. */
  readonly balanceError: number;
}

/** How the volume follows from readings, and which mistakes in it are usual. */
export interface MeasuredVolume {
  readonly of: (take: Take) => number;
  readonly readings: readonly Reading[];
  /** Mistakes with the volume as it would be without them [m3]. */
  readonly slips: readonly Slip<number>[];
}

/** Checks what was weighed and reads it. */
export function readDug({ moistMass, tareMass = 0 as Mass, moisture, moistureError = 0.01 as DryBasisMoisture, balanceError }: DugSoil): DugReadings {
  demandMass('moistMass', moistMass);
  demand('tareMass', 'mass', tareMass, { atLeast: 0, below: moistMass }, 'the mass may be without the container already');
  demand('moistureError', 'moisture on dry basis', moistureError, { above: 0, atMost: 1 });
  const ofBalance = demandBalanceError(balanceError);
  return {
    moist: { value: moistMass, error: ofBalance },
    // A container that was not weighed has no error either.
    tare: { value: tareMass, error: tareMass === 0 ? 0 : ofBalance },
    water: { value: dryBasis(moisture), error: moistureError },
    balanceError: ofBalance,
  };
}

/** Refuses a mass that is no mass of a sample. */
export function demandMass(argument: string, mass: Mass): void {
  demand(argument, 'mass', mass, { above: 0, atMost: 1000 }, mass > 1000 ? 'it may be in grams, given as kilograms' : undefined);
}

/** The standard error of one reading of the balance, a gram where nothing is said. */
export function demandBalanceError(balanceError: Mass = 0.001 as Mass): Mass {
  demand('balanceError', 'mass', balanceError, { above: 0, atMost: 10 });
  return balanceError;
}

/** Density of soil from its readings and those of the volume it took up. */
export function inPlaceDensity<From extends InPlaceMethod>(
  from: From,
  soil: DugSoil,
  { moist, tare, water, balanceError }: DugReadings,
  volume: MeasuredVolume,
): InPlaceDensityResult<From> {
  const { moisture, particleDensity = DEFAULT_PARTICLE_DENSITY as Density } = soil;
  demandParticleDensity(particleDensity);
  const mass = asRead(moist) - asRead(tare);
  const packed = { dryDensity: mass / volume.of(asRead) / (1 + asRead(water)), water: asRead(water), particleDensity };
  demandPossible(soil, packed, mass, volume);
  const density = (take: Take): number => (take(moist) - take(tare)) / volume.of(take) / (1 + take(water));
  const readingError = relativeError(density, [moist, tare, water, ...volume.readings]);
  // Asked this way round, an error that is itself no number refuses too.
  if (!(readingError <= 0.5)) throw tooVague(balanceError);
  const standardError = Math.hypot(readingError, HANDLING) as Fraction;
  const phases = soilPhases({ dryDensity: packed.dryDensity as Density, moisture, particleDensity });
  const poor = { standardError, typicalError: TYPICAL_DENSITY_ERROR };
  const vague: Finding = { code: 'density-measured-poorly', level: 'warning', values: poor, source: 'common practice' };
  return {
    from,
    dryDensity: phases.dryDensity,
    standardError,
    readingError: readingError as Fraction,
    moistDensity: phases.moistDensity,
    volume: volume.of(asRead) as Volume,
    soilMass: mass as Mass,
    saturation: phases.saturation,
    findings: [...phases.findings, ...(standardError >= TYPICAL_DENSITY_ERROR ? [vague] : [])],
  };
}

function tooVague(balanceError: number): InputError {
  const allowed = 'errors of the readings that leave the density known to a half';
  const hint = 'weigh and measure a larger sample, or by finer means';
  return new InputError({ code: 'impossible', argument: 'balanceError', value: { kind: 'mass', value: balanceError }, allowed, hint });
}

/** Refuses a density that no soil has; the hint tells which slip of mass, volume or basis would explain it. */
function demandPossible({ moistMass, tareMass = 0 as Mass, moisture }: DugSoil, packed: SoilWithWater, mass: number, volume: MeasuredVolume): void {
  if (packed.dryDensity >= LOOSEST && packed.dryDensity <= DENSEST && hasRoom(packed)) return;
  const size = volume.of(asRead);
  const having = (soilMass: number, took: number, water = packed.water): SoilWithWater => ({
    ...packed,
    water,
    dryDensity: soilMass / took / (1 + water),
  });
  const most = Math.min(DENSEST, densestWith(packed));
  const container = mass - Math.min(USUAL, 0.9 * most) * (1 + packed.water) * size;
  const weighedIn = `the container, of about ${container.toPrecision(2)} kg, may not have been taken off`;
  const swapped = moisture.value;
  const slips: readonly Slip<SoilWithWater>[] = [
    ...(moisture.basis === 'wet' ? [{ cause: 'the moisture may be on dry basis instead of wet', undone: having(mass, size, swapped) }] : []),
    ...(tareMass === 0 && container > 0 && container < 0.6 * mass ? [{ cause: weighedIn, undone: having(mass - container, size) }] : []),
    ...volume.slips.map(({ cause, undone }) => ({ cause, undone: having(mass, undone) })),
    ...unitSlips('the mass', moistMass, MASS_SLIPS, (each) => having(each - tareMass, size)),
    { cause: 'the mass may be in pounds, given as kilograms', undone: having(mass * POUND, size) },
  ];
  throw new InputError({
    code: 'impossible',
    argument: 'moistMass',
    value: { kind: 'mass', value: moistMass },
    allowed: `a mass and a volume of which the dry density is ${LOOSEST} to ${most.toFixed(0)} kg/m3; it is ${packed.dryDensity.toPrecision(4)} kg/m3`,
    hint: likelyCauses(slips, believable) ?? (packed.dryDensity < LOOSEST ? 'the volume may be too large' : 'the volume may be too small'),
  });
}

/** A dry density that soil often has [kg/m3]. */
const USUAL = 1600;

/** A pound [kg]. */
const POUND = 0.45359237;
