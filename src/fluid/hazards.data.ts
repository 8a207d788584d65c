import type { FluidName } from './fluid-record.js';

/** What is known of the dangers of an antifreeze; texts are made on the top floor. */
export interface HazardRecord {
  /** Closed-cup flash point of the undiluted liquid, the lowest stated [degC]; absent where it does not burn. */
  readonly pureFlashPoint?: number;
  /** Flash points of mixtures: mass fractions in rising order, each with degC. */
  readonly flashPoints?: readonly (readonly [massFraction: number, celsius: number])[];
  /** How far those may be off [K]. */
  readonly flashPointError?: number;
  /** Lethal dose by mouth for half of the rats [g per kg of body]. */
  readonly ratOralDose: number;
  /** Hazard statements of the concentrate by the globally harmonised system. */
  readonly statements: readonly string[];
  /** Oxygen that its decay takes out of water, mass per mass. */
  readonly oxygenDemand: number;
  /** German class of danger to water, 1 slight to 3 severe. */
  readonly waterHazardClass: 1 | 2 | 3;
}

/**
 * Dangers by fluid. Doses, statements and classes are recalled (`fluidHazardTables`), but for the water class of the two glycols;
 * oxygen demands follow from the formulas. Flash points of ethanol mixtures: read, their per cent taken as mass; elsewhere the same numbers stand
 * as per cent by volume. Those of methanol mixtures: computed by the rule of partial pressures, not measured.
 */
export const HAZARDS: Readonly<Record<Exclude<FluidName, 'water'>, HazardRecord>> = {
  'propylene-glycol': { pureFlashPoint: 99, ratOralDose: 20, statements: [], oxygenDemand: 1.68, waterHazardClass: 1 },
  'ethylene-glycol': { pureFlashPoint: 111, ratOralDose: 4.7, statements: ['H302', 'H373'], oxygenDemand: 1.29, waterHazardClass: 1 },
  ethanol: {
    pureFlashPoint: 13,
    flashPoints: [
      [0.05, 62],
      [0.1, 49],
      [0.2, 36],
      [0.3, 29],
      [0.4, 26],
      [0.5, 24],
    ],
    flashPointError: 4,
    ratOralDose: 7,
    statements: ['H225', 'H319'],
    oxygenDemand: 2.08,
    waterHazardClass: 1,
  },
  methanol: {
    pureFlashPoint: 11,
    flashPoints: [
      [0.1, 55],
      [0.15, 46],
      [0.2, 41],
      [0.25, 37],
      [0.3, 34],
    ],
    flashPointError: 5,
    ratOralDose: 5.6,
    statements: ['H225', 'H301', 'H311', 'H331', 'H370'],
    oxygenDemand: 1.5,
    waterHazardClass: 2,
  },
  glycerol: { pureFlashPoint: 160, ratOralDose: 12.6, statements: [], oxygenDemand: 1.22, waterHazardClass: 1 },
  'potassium-acetate': { ratOralDose: 3, statements: [], oxygenDemand: 0.65, waterHazardClass: 1 },
  'potassium-formate': { ratOralDose: 5.5, statements: [], oxygenDemand: 0.19, waterHazardClass: 1 },
  'potassium-carbonate': { ratOralDose: 1.9, statements: ['H315', 'H319', 'H335'], oxygenDemand: 0, waterHazardClass: 1 },
  'calcium-chloride': { ratOralDose: 1, statements: ['H319'], oxygenDemand: 0, waterHazardClass: 1 },
};
