import { demand, InputError } from '../errors/index.js';
import type { Band } from '../states/index.js';
import type { MassFraction, Temperature } from '../units/index.js';
import type { FluidRecord } from './fluid-record.js';
import { freezingPoint } from './freezing.js';
import { invertIncreasing } from './invert.js';
import { volumeFromMassFraction } from './volume-share.js';
import { warmestFreezingPoint } from './warmest-freezing-point.js';

/** What a reading says of the mixture. */
export interface ReadConcentration {
  /** Mass share of antifreeze, as far as the reading and the fit are uncertain; ends at water and where the fits end [kg/kg]. */
  readonly massFraction: Band<'mass fraction'>;
  /** Volume share of antifreeze at 20 °C, likewise; absent for salts [m3/m3]. */
  readonly volumeFraction?: Band<'volume fraction'>;
  /** Freezing point; the upper limit holds the warmest of the sources compared [degC]. */
  readonly freezingPoint: Band<'temperature'>;
}

/** Share of cases that the stated errors of a reading are taken to hold. */
const COVERAGE = 0.9;

/** Coldest fluid that a reading is taken in: below it thin mixtures freeze [degC]. */
const COLDEST = 1;

/**
 * Refuses a temperature at which not every mixture is liquid.
 *
 * @param record - the fluid
 * @param temperature - of the sample [degC]
 * @throws InputError when it is outside the fits or near freezing
 */
export function demandMeasuringTemperature(record: FluidRecord, temperature: number): void {
  demand('temperature', 'temperature', temperature, { atLeast: COLDEST, atMost: record.highestTemperature }, 'bring the sample indoors');
}

/**
 * The mixture that gives a reading, with its error on either side.
 *
 * @param record - the fluid
 * @param of - the name and value of the reading, its error, and what a mixture reads, rising or falling all the way with its mass fraction
 * @returns concentration and freezing point as bands
 * @throws InputError when no mixture of the fits gives the reading
 */
export function readConcentration(
  record: FluidRecord,
  of: { readonly argument: string; readonly reading: number; readonly error: number; readonly readingOf: (massFraction: number) => number },
): ReadConcentration {
  const { argument, reading, error, readingOf } = of;
  const { name, highestMassFraction, pureDensity, uncertainty } = record;
  const ends = [readingOf(0), readingOf(highestMassFraction)] as const;
  const side = Math.sign(ends[1] - ends[0]);
  const [least, greatest] = [Math.min(...ends), Math.max(...ends)];
  if (!(reading >= least && reading <= greatest)) {
    const allowed = `${least.toFixed(4)} to ${greatest.toFixed(4)}, what ${name} from none to the end of its fits reads at this temperature`;
    throw new InputError({ code: 'unreachable', argument, value: { kind: 'ratio', value: reading }, allowed });
  }
  const at = (value: number): MassFraction => {
    const within = Math.min(Math.max(value, least), greatest);
    return invertIncreasing((share) => side * readingOf(share), side * within, 0, highestMassFraction) as MassFraction;
  };
  const shares = [at(reading - side * error), at(reading), at(reading + side * error)] as const;
  const [thin, estimate, strong] = shares;
  const freezing = (massFraction: MassFraction): number => freezingPoint({ fluid: record, massFraction });
  const warmest = Math.max(warmestFreezingPoint({ fluid: record, massFraction: thin }), freezing(thin) + uncertainty.freezingPoint);
  const volumes = pureDensity > 0 ? shares.map((massFraction) => volumeFromMassFraction({ fluid: record, massFraction })) : undefined;
  return {
    massFraction: { low: thin, estimate, high: strong, coverage: COVERAGE },
    ...(volumes && { volumeFraction: { low: volumes[0], estimate: volumes[1], high: volumes[2], coverage: COVERAGE } }),
    freezingPoint: {
      low: (freezing(strong) - uncertainty.freezingPoint) as Temperature,
      estimate: freezing(estimate) as Temperature,
      high: warmest as Temperature,
      coverage: COVERAGE,
    },
  } as ReadConcentration;
}
