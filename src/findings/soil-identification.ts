import type { Diameter, DryBasisMoisture, Length, MassFraction, Ratio, Shape } from '../units/index.js';

/** Values of the findings that identifying a soil raises, by code; a part of those of the soil room. */
export interface SoilIdentificationValues {
  /** Sand, silt and clay miss their sum by rounding. */
  'fine-earth-scaled': { readonly sum: MassFraction };
  /** A plasticity beyond all that soils are known to have. */
  'plasticity-beyond-soils': {
    readonly liquidLimit: DryBasisMoisture;
    readonly plasticityIndex: DryBasisMoisture;
    readonly uLine: DryBasisMoisture;
  };
  /** A grain that sinks faster than Stokes' law holds for. */
  'grain-too-coarse-for-stokes': { readonly particleSize: Diameter; readonly reynolds: Ratio };
  /** Layers of a jar so thin that reading them is the greater error. */
  'jar-layers-thin': { readonly settledHeight: Length; readonly least: Length };
  /** A reading of a jar that parted other sizes than those of the triangle. */
  'jar-reading-off-size': { readonly cut: Diameter; readonly sizeRatio: Ratio };
  /** Signs in the hand that no one group has. */
  'field-signs-disagree': { readonly signsAgainst: number };
  /** The water that was weighed and the word for it do not belong to one soil. */
  'moisture-against-word': { readonly moistureWord: 'dry' | 'moist' | 'wet'; readonly moisture: DryBasisMoisture };
}

/** Shapes of {@link SoilIdentificationValues}. */
export const soilIdentificationShapes: { readonly [C in keyof SoilIdentificationValues]: Shape<SoilIdentificationValues[C]> } = {
  'fine-earth-scaled': { sum: 'mass fraction' },
  'plasticity-beyond-soils': {
    liquidLimit: 'moisture on dry basis',
    plasticityIndex: 'moisture on dry basis',
    uLine: 'moisture on dry basis',
  },
  'grain-too-coarse-for-stokes': { particleSize: 'diameter', reynolds: 'ratio' },
  'jar-layers-thin': { settledHeight: 'length', least: 'length' },
  'jar-reading-off-size': { cut: 'diameter', sizeRatio: 'ratio' },
  'field-signs-disagree': { signsAgainst: 'count' },
  'moisture-against-word': { moistureWord: ['dry', 'moist', 'wet'], moisture: 'moisture on dry basis' },
};
