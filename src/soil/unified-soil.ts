import type { Finding } from '../findings/index.js';
import type { Diameter, DryBasisMoisture, MassFraction, Ratio, Shape } from '../units/index.js';

/** A group of the Unified Soil Classification System. */
export type UnifiedGroup = (typeof UNIFIED_GROUPS)[number];

/** Every group, dual symbols included. */
export const UNIFIED_GROUPS = [
  'GW',
  'GP',
  'GM',
  'GC',
  'GC-GM',
  'GW-GM',
  'GW-GC',
  'GP-GM',
  'GP-GC',
  'SW',
  'SP',
  'SM',
  'SC',
  'SC-SM',
  'SW-SM',
  'SW-SC',
  'SP-SM',
  'SP-SC',
  'CL',
  'ML',
  'CL-ML',
  'OL',
  'CH',
  'MH',
  'OH',
  'PT',
] as const;

/** A group of mineral fines. */
export type FinesGroup = (typeof FINES_GROUPS)[number];

/** Every group of mineral fines. */
export const FINES_GROUPS = ['CL', 'ML', 'CL-ML', 'CH', 'MH'] as const;

/** How evenly the sizes of a coarse soil are spread: from its curve, or as coefficients. */
export type Grading =
  | {
      /** Read off the curve of the sieves. */
      readonly from: 'curve';
      /** Size that 10 % by mass pass [m]. */
      readonly d10: Diameter;
      /** Size that 30 % by mass pass [m]. */
      readonly d30: Diameter;
      /** Size that 60 % by mass pass [m]. */
      readonly d60: Diameter;
    }
  | {
      /** Worked out already. */
      readonly from: 'coefficients';
      /** Coefficient of uniformity, d60/d10, 1 or more [1]. */
      readonly uniformity: Ratio;
      /** Coefficient of curvature, d30²/(d10·d60), between 1/uniformity and uniformity [1]. */
      readonly curvature: Ratio;
    };

/** How the fines, all that pass 0.075 mm, behave with water. */
export type Fines =
  | {
      /** Liquid and plastic limit were measured on what passes 0.425 mm. */
      readonly from: 'limits';
      /** Water content at the liquid limit, 0 to 10 [kg/kg]. */
      readonly liquidLimit: DryBasisMoisture;
      /** Liquid limit less plastic limit, at most the liquid limit [kg/kg]. */
      readonly plasticityIndex: DryBasisMoisture;
      /** Liquid limit of soil that was dried in the oven first; tells organic soil, and is left out where nothing hints at it [kg/kg]. */
      readonly ovenDriedLiquidLimit?: DryBasisMoisture;
    }
  | {
      /** No thread can be rolled. */
      readonly from: 'nonplastic';
    }
  | {
      /** Named beforehand. */
      readonly from: 'group';
      /** Their group. */
      readonly group: FinesGroup;
    };

/** A soil as a laboratory describes it for the Unified Soil Classification System: peat, or a soil by its sizes and its fines. */
export type UnifiedSoil =
  | {
      /** Mostly organic: dark, smelling, fibrous to amorphous. */
      readonly type: 'peat';
    }
  | {
      /** Anything else, organic silt and clay included. */
      readonly type: 'soil';
      /** Dry mass of 4.75 to 75 mm [kg/kg]. */
      readonly gravel: MassFraction;
      /** Dry mass of 0.075 to 4.75 mm, coarser than the sand of the texture triangle at either end [kg/kg]. */
      readonly sand: MassFraction;
      /** Dry mass that passes 0.075 mm [kg/kg]. */
      readonly fines: MassFraction;
      /** Spread of the sizes; needed with up to 12 % of fines. */
      readonly grading?: Grading;
      /** Behaviour of the fines; needed from 5 % of fines on. */
      readonly plasticity?: Fines;
    };

/** Group of a soil in the Unified Soil Classification System, and what decided it. */
export interface UnifiedSoilGroup {
  /** The group, with a dual symbol where two apply. */
  readonly group: UnifiedGroup;
  /** Coefficient of uniformity; absent where it does not matter [1]. */
  readonly uniformity?: Ratio;
  /** Coefficient of curvature; absent where it does not matter [1]. */
  readonly curvature?: Ratio;
  /** Plasticity index on the A-line at this liquid limit, above which clay lies; absent without limits [kg/kg]. */
  readonly aLine?: DryBasisMoisture;
  /** Whether the fines are organic by their limits; with coarse soil this goes into its name, not its symbol. */
  readonly organicFines: boolean;
  /** What is possible but doubtful about the data. */
  readonly findings: readonly Finding[];
}

/** Shape of {@link UnifiedSoil}. */
export const unifiedSoilShape: Shape<UnifiedSoil> = {
  by: 'type',
  oneOf: {
    peat: {},
    soil: {
      gravel: 'mass fraction',
      sand: 'mass fraction',
      fines: 'mass fraction',
      grading: {
        optional: {
          by: 'from',
          oneOf: { curve: { d10: 'diameter', d30: 'diameter', d60: 'diameter' }, coefficients: { uniformity: 'ratio', curvature: 'ratio' } },
        },
      },
      plasticity: {
        optional: {
          by: 'from',
          oneOf: {
            limits: {
              liquidLimit: 'moisture on dry basis',
              plasticityIndex: 'moisture on dry basis',
              ovenDriedLiquidLimit: { optional: 'moisture on dry basis' },
            },
            nonplastic: {},
            group: { group: FINES_GROUPS },
          },
        },
      },
    },
  },
};
