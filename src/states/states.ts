import type {
  Conductivity,
  DayOfYear,
  Density,
  Diameter,
  Diffusivity,
  DryBasisMoisture,
  DynamicViscosity,
  HeatCapacity,
  MassFraction,
  SpecificHeat,
  Temperature,
  TemperatureDifference,
  Time,
  WetBasisMoisture,
} from '../units/index.js';

/** Water content of a soil with the basis it was computed on; the two differ, and a bare share hides which it is. */
export type Moisture =
  | {
      /** Water over dry soil. */
      readonly basis: 'dry';
      /** Mass of water per mass of oven-dry soil [kg/kg]. */
      readonly value: DryBasisMoisture;
    }
  | {
      /** Water over moist soil. */
      readonly basis: 'wet';
      /** Mass of water per mass of moist soil [kg/kg]. */
      readonly value: WetBasisMoisture;
    };

/** What a ground computation needs to know of the soil. */
export interface SoilThermal {
  /** Thermal conductivity [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Volumetric heat capacity [J/(m3.K)]. */
  readonly heatCapacity: HeatCapacity;
  /** Thermal diffusivity, conductivity over heat capacity [m2/s]. */
  readonly diffusivity: Diffusivity;
}

/** A yearly temperature wave: mean − amplitude · cos(2π (day − coldest day) / period). */
export interface AnnualWave {
  /** Whether the wave is of the air or of the ground surface. */
  readonly of: 'air' | 'ground surface';
  /** Mean over the year [degC]. */
  readonly mean: Temperature;
  /** Half of the swing between the warmest and the coldest day [K]. */
  readonly amplitude: TemperatureDifference;
  /** Day on which the wave is lowest; 1.0 is 1 January 00:00 [d]. */
  readonly coldestDay: DayOfYear;
  /** Length of the year the wave repeats with [s]. */
  readonly period: Time;
}

/** A heat-carrying fluid at one temperature. */
export interface FluidState {
  /** Temperature the properties are for [degC]. */
  readonly temperature: Temperature;
  /** Mass share of antifreeze; 0 for water [kg/kg]. */
  readonly massFraction: MassFraction;
  /** Density [kg/m3]. */
  readonly density: Density;
  /** Dynamic viscosity [Pa.s]. */
  readonly viscosity: DynamicViscosity;
  /** Specific heat at constant pressure [J/(kg.K)]. */
  readonly specificHeat: SpecificHeat;
  /** Thermal conductivity [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** Temperature at which the first ice forms [degC]. */
  readonly freezingPoint: Temperature;
}

/** The bore and wall of a pipe. */
export interface PipeSection {
  /** Outside diameter [m]. */
  readonly outsideDiameter: Diameter;
  /** Inside diameter [m]. */
  readonly insideDiameter: Diameter;
  /** Thermal conductivity of the wall [W/(m.K)]. */
  readonly wallConductivity: Conductivity;
}
