import type { SurfacePolynomial, Polynomial } from './polynomial.js';

/** The names of the fluids that there are records of. */
export type FluidName =
  | 'water'
  | 'propylene-glycol'
  | 'ethylene-glycol'
  | 'ethanol'
  | 'methanol'
  | 'glycerol'
  | 'potassium-carbonate'
  | 'potassium-formate'
  | 'potassium-acetate'
  | 'calcium-chloride';

/**
 * Where a fluid may go: `house`, what units for houses are made for; `check local code`, a poison that many places forbid; or
 * `written consent`, only where the maker of the heat pump agrees in writing, for metals, seals and the warranty. The local authority
 * has the last word on any of them.
 */
export type FluidUse = 'house' | 'check local code' | 'written consent';

/** Everything the room knows of one fluid: a further solution is one more record, no further code. */
export interface FluidRecord {
  /** What it is called. */
  readonly name: FluidName;
  /** Mass fraction that the fits are centred on [kg/kg]. */
  readonly centreMassFraction: number;
  /** Temperature that the fits are centred on [degC]. */
  readonly centreTemperature: number;
  /** Density [kg/m3], by powers of mass fraction and temperature off centre. */
  readonly density: SurfacePolynomial;
  /** Specific heat [J/(kg.K)], likewise. */
  readonly specificHeat: SurfacePolynomial;
  /** Thermal conductivity [W/(m.K)], likewise. */
  readonly conductivity: SurfacePolynomial;
  /** Natural logarithm of the dynamic viscosity in mPa.s, likewise. */
  readonly logViscosity: SurfacePolynomial;
  /** Freezing point [degC], by powers of mass fraction off centre. */
  readonly freezingPoint: Polynomial;
  /**
   * By how much the warmest of the sources compared freezes above the fit: mass fractions [kg/kg] in rising order, each with the
   * kelvin there; straight between them, the same beyond the last.
   */
  readonly warmestSource: readonly (readonly [massFraction: number, kelvin: number])[];
  /** Greatest mass fraction of the fits [kg/kg]. */
  readonly highestMassFraction: number;
  /** Highest temperature of the fits [degC]. */
  readonly highestTemperature: number;
  /** Density of the undiluted antifreeze at 20 °C; 0 for a salt, which is no liquid and is dosed by mass [kg/m3]. */
  readonly pureDensity: number;
  /** Least volume share at which the inhibitors work and nothing grows in the fluid; 0 where no such floor is known [m3/m3]. */
  readonly inhibitorFloor: number;
  /** Where it may be used without asking. */
  readonly use: FluidUse;
  /** How far the fits may lie from the fluid really bought. */
  readonly uncertainty: {
    /** Freezing point [K]. */
    readonly freezingPoint: number;
    /** Density, share of the value. */
    readonly density: number;
    /** Specific heat, share of the value. */
    readonly specificHeat: number;
    /** Conductivity, share of the value. */
    readonly conductivity: number;
    /** Viscosity at 20 °C and above, share of the value; straight from there to the cold. */
    readonly viscosity: number;
    /** Viscosity below 5 °C, share of the value. */
    readonly coldViscosity: number;
  };
}
