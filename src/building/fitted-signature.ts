import type { Finding } from '../findings/index.js';
import { type Band, bandShape } from '../states/index.js';
import type { Energy, Fraction, Power, Ratio, Shape, Temperature, TemperatureDifference, Time } from '../units/index.js';
import { type MeterPeriod, meterPeriodShape, type UsefulHeat, usefulHeatShape } from './meter-readings.js';
import { type EnergySignature, energySignatureShape } from './signature.js';

/** What {@link fitEnergySignature} needs. */
export interface SignatureFitInput {
  /** Periods in the order of time, up to 1000; five that end with a reading, with cold and mild ones among them, are the least. */
  readonly periods: readonly MeterPeriod[];
  /** What the heater makes of what the meter counts. */
  readonly usefulHeat: UsefulHeat;
  /** Outdoor temperature the house is designed for [degC]. */
  readonly designOutdoor: Temperature;
  /** Indoor temperature the house is designed for, at least 1 K above, 0 to 50 [degC]. */
  readonly indoor: Temperature;
  /** Design heat loss of the qualified calculation, to be held against the bills, 0.001 to 1e9 [W]. */
  readonly designLoad?: Power;
  /** Useful heat that does not hang on the weather, where it is known: 0 where the meter feeds heating alone; fitted when left out [W]. */
  readonly baseLoad?: Power;
  /** Balance point where it is known; fitted when left out [degC]. */
  readonly balancePoint?: Temperature;
  /** Probability that a band is to hold the true value, 0.5 to 0.99; 0.9 when left out [1]. */
  readonly coverage?: Fraction;
}

/** Standard errors of a fitted signature. */
export interface SignatureErrors {
  /** Of the slope, as a share of it [1]. */
  readonly slopeError: Fraction;
  /** Of the base load [W]. */
  readonly baseLoadError: Power;
  /** Of the balance point; 0 where it was held [K]. */
  readonly balancePointError: TemperatureDifference;
}

/** One period from reading to reading, and what the line says of it. */
export interface FittedPeriod {
  /** Length [s]. */
  readonly time: Time;
  /** Periods put together, 1 where each was read. */
  readonly merged: number;
  /** Useful heat by the meter [J]. */
  readonly usefulEnergy: Energy;
  /** Useful heat by the line [J]. */
  readonly fittedEnergy: Energy;
  /** By the meter less by the line [J]. */
  readonly residualEnergy: Energy;
}

/** A signature fitted to bills. */
export interface FittedSignature extends SignatureErrors {
  /** Heating per kelvin below the balance point [W/K]. */
  readonly slope: Band<'conductance'>;
  /** Useful heat that does not hang on the weather: hot water, cooking [W]. */
  readonly baseLoad: Band<'power'>;
  /** Outdoor temperature at which heating begins; its band is where the sum of squares stays small [degC]. */
  readonly balancePoint: Band<'temperature'>;
  /** Space heating at the design outdoor temperature, with gains as they were [W]. */
  readonly loadAtDesign: Band<'power'>;
  /** Heat loss at design without any gains, slope · (indoor − outdoor): what a design calculation gives [W]. */
  readonly designLoad: Band<'power'>;
  /** The line as other calculations take it; absent where the balance point came out above the indoor temperature. */
  readonly signature?: EnergySignature;
  /** Useful heat over energy by the meter that was used [1]. */
  readonly usefulRatio: Ratio;
  /** Its standard error as a share [1]. */
  readonly usefulRatioError: Fraction;
  /** Standard deviation of the residuals of a period of mean length, over the mean load [1]. */
  readonly residualShare: Fraction;
  /** Periods less the numbers fitted. */
  readonly degreesOfFreedom: number;
  /** From reading to reading. */
  readonly fitted: readonly FittedPeriod[];
}

/** {@link FittedSignature} with findings. */
export interface FittedSignatureResult extends FittedSignature {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link SignatureFitInput}. */
export const signatureFitInputShape: Shape<SignatureFitInput> = {
  periods: { list: meterPeriodShape },
  usefulHeat: usefulHeatShape,
  designOutdoor: 'temperature',
  indoor: 'temperature',
  designLoad: { optional: 'power' },
  baseLoad: { optional: 'power' },
  balancePoint: { optional: 'temperature' },
  coverage: { optional: 'fraction' },
};

/** Shape of {@link FittedSignature}. */
export const fittedSignatureShape: Shape<FittedSignature> = {
  slopeError: 'fraction',
  baseLoadError: 'power',
  balancePointError: 'temperature difference',
  slope: /* @__PURE__ */ bandShape('conductance'),
  baseLoad: /* @__PURE__ */ bandShape('power'),
  balancePoint: /* @__PURE__ */ bandShape('temperature'),
  loadAtDesign: /* @__PURE__ */ bandShape('power'),
  designLoad: /* @__PURE__ */ bandShape('power'),
  signature: { optional: energySignatureShape },
  usefulRatio: 'ratio',
  usefulRatioError: 'fraction',
  residualShare: 'fraction',
  degreesOfFreedom: 'count',
  fitted: {
    list: { time: 'time', merged: 'count', usefulEnergy: 'energy', fittedEnergy: 'energy', residualEnergy: 'energy' },
  },
};
