import type { Finding } from '../findings/index.js';
import type { Situation } from '../safety/index.js';
import type { ElectricCurrent, ElectricPower, Fraction, Shape, Voltage } from '../units/index.js';

/** What the compressor draws while it runs: from the plate, or from its electric input. */
export type CompressorDraw =
  | {
      /** How it is told. */
      readonly by: 'running current';
      /** Running current of the compressor at its hardest duty, per line, 0.1 to 1000 [A]. */
      readonly runningCurrent: ElectricCurrent;
    }
  | {
      /** How it is told. */
      readonly by: 'electric input';
      /** Electric input at its hardest duty, 50 to 1e6 [W]. */
      readonly electricPower: ElectricPower;
      /** Power factor, 0.3 to 1; 0.85 when left out [1]. */
      readonly powerFactor?: Fraction;
    };

/** How the compressor starts. */
export type CompressorStart =
  | {
      /** How it starts. */
      readonly by: 'direct';
      /** Current with the rotor locked, from the plate, per line, 0.5 to 10 000 [A]. */
      readonly lockedRotorCurrent: ElectricCurrent;
    }
  | {
      /** How it starts. */
      readonly by: 'soft starter';
      /** Current with the rotor locked, from the plate, per line, 0.5 to 10 000 [A]. */
      readonly lockedRotorCurrent: ElectricCurrent;
      /** What the soft starter leaves of it, from its data sheet, 0.2 to 1 [1]. */
      readonly startShare: Fraction;
    }
  | {
      /** How it starts: it runs up from nothing and never draws more than running. */
      readonly by: 'inverter';
    };

/** A service and what is to be put on it. */
export interface ServiceCheckInput {
  /** Lines of the supply. On three, everything is taken as spread evenly. */
  readonly connection: 'single phase' | 'three phase';
  /** Voltage of the supply, between lines where it has three phases, 90 to 1000 [V]. */
  readonly voltage: Voltage;
  /** What the service may carry, per line, as its main protection says, 5 to 5000 [A]. */
  readonly serviceCurrent: ElectricCurrent;
  /** Largest current of everything else, per line, measured or from an electrician's calculation, 0 to 5000 [A]. */
  readonly existingCurrent: ElectricCurrent;
  /** The compressor while it runs. */
  readonly compressor: CompressorDraw;
  /** The compressor as it starts. */
  readonly starting: CompressorStart;
  /** Electric auxiliary heater, 0 to 1e6; none when left out [W]. */
  readonly auxiliaryHeater?: ElectricPower;
  /** Circulators and fan that the compressor's draw does not hold, 0 to 1e5; none when left out [W]. */
  readonly circulator?: ElectricPower;
  /** Power factor of circulators and fan, 0.3 to 1; 0.6 when left out [1]. */
  readonly circulatorPowerFactor?: Fraction;
}

/** Currents, each per line. */
export interface ServiceCurrents {
  /** Compressor while it runs [A]. */
  readonly compressorCurrent: ElectricCurrent;
  /** Auxiliary heater [A]. */
  readonly auxiliaryCurrent: ElectricCurrent;
  /** Circulators and fan [A]. */
  readonly circulatorCurrent: ElectricCurrent;
  /** All three at once, the worst that is added for longer [A]. */
  readonly addedCurrent: ElectricCurrent;
  /** Compressor as it starts, for a fraction of a second [A]. */
  readonly startingCurrent: ElectricCurrent;
  /** What the service has left before anything is added; negative where it is over already [A]. */
  readonly spareBefore: ElectricCurrent;
  /** What it has left with all of it running; negative where it does not suffice [A]. */
  readonly spareAfter: ElectricCurrent;
}

/** Currents against the service. */
export interface ServiceCheck extends ServiceCurrents {
  /** Whether all at once stays within what the service may carry. An electrician decides, not this. */
  readonly fits: boolean;
  /** Situations to ask `noticesFor` with. */
  readonly situations: readonly Situation[];
  /** What to look at; always that a licensed electrician decides. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link CompressorDraw}. */
export const compressorDrawShape: Shape<CompressorDraw> = {
  by: 'by',
  oneOf: {
    'running current': { runningCurrent: 'electric current' },
    'electric input': { electricPower: 'electric power', powerFactor: { optional: 'fraction' } },
  },
};

/** Shape of {@link CompressorStart}. */
export const compressorStartShape: Shape<CompressorStart> = {
  by: 'by',
  oneOf: {
    direct: { lockedRotorCurrent: 'electric current' },
    'soft starter': { lockedRotorCurrent: 'electric current', startShare: 'fraction' },
    inverter: {},
  },
};

/** Shape of {@link ServiceCheckInput}. */
export const serviceCheckInputShape: Shape<ServiceCheckInput> = {
  connection: ['single phase', 'three phase'],
  voltage: 'voltage',
  serviceCurrent: 'electric current',
  existingCurrent: 'electric current',
  compressor: compressorDrawShape,
  starting: compressorStartShape,
  auxiliaryHeater: { optional: 'electric power' },
  circulator: { optional: 'electric power' },
  circulatorPowerFactor: { optional: 'fraction' },
};

/** Shape of {@link ServiceCurrents}. */
export const serviceCurrentsShape: Shape<ServiceCurrents> = {
  compressorCurrent: 'electric current',
  auxiliaryCurrent: 'electric current',
  circulatorCurrent: 'electric current',
  addedCurrent: 'electric current',
  startingCurrent: 'electric current',
  spareBefore: 'electric current',
  spareAfter: 'electric current',
};
