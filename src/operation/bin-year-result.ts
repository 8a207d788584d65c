import type { Finding } from '../findings/index.js';
import { type SeasonalPerformance, seasonalPerformanceShape } from '../heat-pump/index.js';
import { joinedShape } from '../states/index.js';
import type { ElectricEnergy, ElectricPower, Energy, Fraction, Power, Ratio, RunFraction, Shape, Time } from '../units/index.js';
import { type FluidBin, fluidBinShape } from './bin-year-fluid.js';

/** Load of one bin and what the unit makes of it; powers are means over the time in the bin. */
export interface YearBin extends FluidBin {
  /** Load of the building [W]. */
  readonly load: Power;
  /** Load beyond the capacity [W]. */
  readonly unmet: Power;
  /** Share of the time that the unit runs. */
  readonly runFraction: RunFraction;
  /** Capacity at the entering fluid; absent where the unit has nothing to do, and of a unit of several levels [W]. */
  readonly capacity?: Power;
  /** COP while running steadily; absent where the unit has nothing to do [1]. */
  readonly cop?: Ratio;
  /** COP while cycling over that; absent where the unit has nothing to do [1]. */
  readonly factor?: Ratio;
  /** Electric input of the unit, with what cycling costs [W]. */
  readonly unitPower: ElectricPower;
  /** What cycling costs, the part of it that gives no heat [W]. */
  readonly cyclingPower: ElectricPower;
  /** Electric input of the loop pump [W]. */
  readonly circulator: ElectricPower;
  /** Heat from the ground in heating, to the ground in cooling [W]. */
  readonly groundHeat: Power;
}

/** A year, or a season, over bins. */
export interface BinYear {
  /** Bin by bin, as given. */
  readonly bins: readonly YearBin[];
  /** Heat or cold that the building needs [J]. */
  readonly energy: Energy;
  /** What the unit gives of it [J]. */
  readonly metEnergy: Energy;
  /** What it does not: heat of the auxiliary, or cold missed [J]. */
  readonly unmetEnergy: Energy;
  /** Share of the load that the unit meets; 1 where there is no load [1]. */
  readonly coveredShare: Fraction;
  /** Time that the unit runs [s]. */
  readonly runTime: Time;
  /** Electricity of the unit, compressor and fan as rated [J]. */
  readonly unitElectricity: ElectricEnergy;
  /** What cycling costs, the part of it that gives no heat [J]. */
  readonly cyclingElectricity: ElectricEnergy;
  /** Electricity of the loop pump [J]. */
  readonly circulatorElectricity: ElectricEnergy;
  /** Electricity of the auxiliary heater, 0 in cooling [J]. */
  readonly auxiliaryElectricity: ElectricEnergy;
  /** Heat from the ground in heating, to the ground in cooling [J]. */
  readonly groundEnergy: Energy;
  /** Seasonal performance at its boundaries; the load side is not in it. */
  readonly performance: SeasonalPerformance;
}

/** A {@link BinYear} with its findings. */
export interface BinYearResult extends BinYear {
  /** What to look at. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link YearBin}. */
export const yearBinShape: Shape<YearBin> = /* @__PURE__ */ joinedShape(fluidBinShape, {
  load: 'power',
  unmet: 'power',
  runFraction: 'run fraction',
  capacity: { optional: 'power' },
  cop: { optional: 'ratio' },
  factor: { optional: 'ratio' },
  unitPower: 'electric power',
  cyclingPower: 'electric power',
  circulator: 'electric power',
  groundHeat: 'power',
});

/** Shape of {@link BinYear}. */
export const binYearShape: Shape<BinYear> = {
  bins: { list: yearBinShape },
  energy: 'energy',
  metEnergy: 'energy',
  unmetEnergy: 'energy',
  coveredShare: 'fraction',
  runTime: 'time',
  unitElectricity: 'electric energy',
  cyclingElectricity: 'electric energy',
  circulatorElectricity: 'electric energy',
  auxiliaryElectricity: 'electric energy',
  groundEnergy: 'energy',
  performance: seasonalPerformanceShape,
};
