import { joinedShape } from '../states/index.js';
import type { ElectricEnergy, Energy, Power, Ratio, Shape, Temperature } from '../units/index.js';
import { CLIMATES, type En14825Climate, en14825Season, loadRatioAt, type SeasonBin, seasonBinShape } from './en14825-season.js';

/** Load of one outdoor temperature of the season and how it is met. */
export interface SeasonalBin extends SeasonBin {
  /** Load of the building [W]. */
  readonly load: Power;
  /** Capacity of the unit there, 0 where it is off [W]. */
  readonly capacity: Power;
  /** Load beyond the capacity, met by electric back-up [W]. */
  readonly unmet: Power;
  /** COP of the unit there, the loss by part load included; absent where it is off [1]. */
  readonly cop?: Ratio;
}

/** COP over the heating hours of a season. */
export interface SeasonalCop {
  /** The season. */
  readonly climate: En14825Climate;
  /** Design load [W]. */
  readonly designLoad: Power;
  /** Degree by degree, coldest first. */
  readonly bins: readonly SeasonalBin[];
  /** Heat of all bins [J]. */
  readonly energy: Energy;
  /** Electric back-up, heat and electricity alike [J]. */
  readonly unmetEnergy: Energy;
  /** Electricity of the unit [J]. */
  readonly unitElectricity: ElectricEnergy;
  /** Heat over electricity with back-up, the SCOPon of the standard [1]. */
  readonly activeCop: Ratio;
  /** Heat of the unit over its electricity, the SCOPnet of the standard [1]. */
  readonly netCop: Ratio;
}

/** Shape of {@link SeasonalBin}. */
export const seasonalBinShape: Shape<SeasonalBin> = /* @__PURE__ */ joinedShape(seasonBinShape, {
  load: 'power',
  capacity: 'power',
  unmet: 'power',
  cop: { optional: 'ratio' },
});

/** Shape of {@link SeasonalCop}. */
export const seasonalCopShape: Shape<SeasonalCop> = {
  climate: CLIMATES,
  designLoad: 'power',
  bins: { list: seasonalBinShape },
  energy: 'energy',
  unmetEnergy: 'energy',
  unitElectricity: 'electric energy',
  activeCop: 'ratio',
  netCop: 'ratio',
};

/** The unit at an outdoor temperature with a load to meet: capacity, and COP with the loss by part load, absent where the unit is off. */
export type UnitInBin = (outdoor: Temperature, load: number) => { readonly capacity: number; readonly cop?: number };

/** Weighs the degrees of a season. */
export function weighBins(climate: En14825Climate, designLoad: Power, unitIn: UnitInBin): SeasonalCop {
  const season = en14825Season(climate);
  let energy = 0;
  let unmetEnergy = 0;
  let unitElectricity = 0;
  const bins = season.bins.map(({ outdoor, time }): SeasonalBin => {
    const load = designLoad * loadRatioAt(season.designOutdoor, outdoor);
    const { capacity, cop } = unitIn(outdoor, load);
    const met = Math.min(load, capacity);
    energy += time * load;
    unmetEnergy += time * (load - met);
    if (cop !== undefined) unitElectricity += (time * met) / cop;
    const state = { load: load as Power, capacity: capacity as Power, unmet: (load - met) as Power };
    return { outdoor, time, ...state, ...(cop === undefined ? {} : { cop: cop as Ratio }) };
  });
  return {
    climate,
    designLoad,
    bins,
    energy: energy as Energy,
    unmetEnergy: unmetEnergy as Energy,
    unitElectricity: unitElectricity as ElectricEnergy,
    activeCop: (energy / (unitElectricity + unmetEnergy)) as Ratio,
    netCop: ((energy - unmetEnergy) / unitElectricity) as Ratio,
  };
}
