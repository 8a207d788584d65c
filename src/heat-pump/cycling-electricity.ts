import { demand } from '../errors/index.js';
import type { ElectricPower, Fraction, Power, Ratio, RunFraction, Shape } from '../units/index.js';
import { partLoadFactor } from './part-load.js';
import { GREATEST_COP } from './rating-point.js';

/** A unit that cycles, with what is drawn while it runs and while it stands. */
export interface CyclingElectricityInput {
  /** Capacity while it runs, 1 to 1e8 [W]. */
  readonly capacity: Power;
  /** Electric input of the unit while it runs steadily, a fiftieth of the capacity to 1e8 [W]. */
  readonly power: ElectricPower;
  /** Load over capacity, 1e-9 to 1 [1]. */
  readonly loadRatio: Fraction;
  /** Loss by cycling as `partLoadFactor` has it; 0.25 when left out [1]. */
  readonly degradation?: Fraction;
  /** Loop circulator while the unit runs; none when left out, 0 to 1e6 [W]. */
  readonly circulator?: ElectricPower;
  /** Circulator left on at low speed, controls and crankcase heater while the unit stands; none when left out, 0 to 1e6 [W]. */
  readonly idlePower?: ElectricPower;
}

/** What a cycling unit draws on the mean. */
export interface CyclingElectricity {
  /** Share of the time that the unit runs [1]. */
  readonly runFraction: RunFraction;
  /** Unit on the mean over all time [W]. */
  readonly unitMean: ElectricPower;
  /** Circulator on the mean over all time [W]. */
  readonly circulatorMean: ElectricPower;
  /** What is drawn while the unit stands, on the mean over all time [W]. */
  readonly idleMean: ElectricPower;
  /** Load over all electricity [1]. */
  readonly cop: Ratio;
  /** That COP over the one of a steady run with the circulator [1]. */
  readonly factor: Ratio;
}

/** Shape of {@link CyclingElectricityInput}. */
export const cyclingElectricityInputShape: Shape<CyclingElectricityInput> = {
  capacity: 'power',
  power: 'electric power',
  loadRatio: 'fraction',
  degradation: { optional: 'fraction' },
  circulator: { optional: 'electric power' },
  idlePower: { optional: 'electric power' },
};

/** Shape of {@link CyclingElectricity}. */
export const cyclingElectricityShape: Shape<CyclingElectricity> = {
  runFraction: 'run fraction',
  unitMean: 'electric power',
  circulatorMean: 'electric power',
  idleMean: 'electric power',
  cop: 'ratio',
  factor: 'ratio',
};

/**
 * Electricity of a unit that cycles, with a circulator and with what goes on while it stands.
 *
 * A circulator that never stops costs most where the load is small: 20 W on all year are 175 kWh. With `idlePower` told, the small `degradation` of a unit on a
 * ground loop is the right one, for the standard's 0.25 holds such losses already.
 *
 * @param input - see {@link CyclingElectricityInput}
 * @returns run fraction [1], mean electricity by part [W], COP and what is left of the steady one [1]
 * @throws InputError when a number is outside its range
 * @remarks
 * Run fraction and loss by {@link partLoadFactor}; `ahri210240`. Invariants: at full load nothing idles and the factor is 1; without idle power and circulator the
 * factor is that of {@link partLoadFactor}; more idle power never raises the COP.
 * @example
 * ```ts @import.meta.vitest
 * const { electricWatts, fraction, kilowatts } = await import('../units/index.js');
 * const unit = { capacity: kilowatts(8), power: electricWatts(2000), degradation: fraction(0.1), circulator: electricWatts(150) };
 * const tidy = cyclingElectricity({ ...unit, loadRatio: fraction(0.2) });
 * const idle = cyclingElectricity({ ...unit, loadRatio: fraction(0.2), idlePower: electricWatts(20) });
 * expect(tidy.cop).toBeCloseTo(3.42, 2);
 * expect(idle.cop).toBeCloseTo(3.312, 2);
 * ```
 */
export function cyclingElectricity(input: CyclingElectricityInput): CyclingElectricity {
  const { capacity, power, loadRatio, degradation, circulator, idlePower } = input;
  demand('capacity', 'power', capacity, { atLeast: 1, atMost: 1e8 });
  demand('power', 'electric power', power, { atLeast: capacity / GREATEST_COP, atMost: 1e8 });
  demand('loadRatio', 'fraction', loadRatio, { atLeast: 1e-9, atMost: 1 });
  if (circulator !== undefined) demand('circulator', 'electric power', circulator, { atLeast: 0, atMost: 1e6 });
  if (idlePower !== undefined) demand('idlePower', 'electric power', idlePower, { atLeast: 0, atMost: 1e6 });
  const { runFraction } = partLoadFactor({ loadRatio, ...(degradation !== undefined && { degradation }) });
  const unitMean = runFraction * power;
  const circulatorMean = runFraction * (circulator ?? 0);
  const idleMean = (1 - runFraction) * (idlePower ?? 0);
  const cop = (loadRatio * capacity) / (unitMean + circulatorMean + idleMean);
  return {
    runFraction,
    unitMean: unitMean as ElectricPower,
    circulatorMean: circulatorMean as ElectricPower,
    idleMean: idleMean as ElectricPower,
    cop: cop as Ratio,
    factor: ((cop * (power + (circulator ?? 0))) / capacity) as Ratio,
  };
}
