import type { Quantity } from './quantity.js';

/** Length [m]. */
export type Length = Quantity<'length'>;
/** Pipe length [m]. */
export type PipeLength = Quantity<'pipe length'>;
/** Trench length [m]. */
export type TrenchLength = Quantity<'trench length'>;
/** Diameter [m]. */
export type Diameter = Quantity<'diameter'>;
/** Area [m2]. */
export type Area = Quantity<'area'>;
/** Volume [m3]. */
export type Volume = Quantity<'volume'>;
/** Volume per length [m3/m]. */
export type VolumePerLength = Quantity<'volume per length'>;
/** Mass [kg]. */
export type Mass = Quantity<'mass'>;
/** Time [s]. */
export type Time = Quantity<'time'>;
/** Day of year [d]. */
export type DayOfYear = Quantity<'day of year'>;
/** Temperature [degC]. */
export type Temperature = Quantity<'temperature'>;
/** Temperature difference [K]. */
export type TemperatureDifference = Quantity<'temperature difference'>;
/** Degree days [K.d]. */
export type DegreeDays = Quantity<'degree days'>;
/** Energy [J]. */
export type Energy = Quantity<'energy'>;
/** Electric energy [J]. */
export type ElectricEnergy = Quantity<'electric energy'>;
/** Power [W]. */
export type Power = Quantity<'power'>;
/** Electric power [W]. */
export type ElectricPower = Quantity<'electric power'>;
/** Heat flux [W/m2]. */
export type HeatFlux = Quantity<'heat flux'>;
/** Heat per pipe length [W/m]. */
export type HeatPerPipeLength = Quantity<'heat per pipe length'>;
/** Heat per trench length [W/m]. */
export type HeatPerTrenchLength = Quantity<'heat per trench length'>;
/** Conductance [W/K]. */
export type Conductance = Quantity<'conductance'>;
/** Conductivity [W/(m.K)]. */
export type Conductivity = Quantity<'conductivity'>;
/** Diffusivity [m2/s]. */
export type Diffusivity = Quantity<'diffusivity'>;
/** Kinematic viscosity [m2/s]. */
export type KinematicViscosity = Quantity<'kinematic viscosity'>;
/** Dynamic viscosity [Pa.s]. */
export type DynamicViscosity = Quantity<'dynamic viscosity'>;
/** Heat capacity [J/(m3.K)]. */
export type HeatCapacity = Quantity<'heat capacity'>;
/** Specific heat [J/(kg.K)]. */
export type SpecificHeat = Quantity<'specific heat'>;
/** Latent heat [J/m3]. */
export type LatentHeat = Quantity<'latent heat'>;
/** Density [kg/m3]. */
export type Density = Quantity<'density'>;
/** Pipe resistance [m.K/W]. */
export type PipeResistance = Quantity<'pipe resistance'>;
/** Trench resistance [m.K/W]. */
export type TrenchResistance = Quantity<'trench resistance'>;
/** Surface resistance [m2.K/W]. */
export type SurfaceResistance = Quantity<'surface resistance'>;
/** Surface coefficient [W/(m2.K)]. */
export type SurfaceCoefficient = Quantity<'surface coefficient'>;
/** Pressure [Pa]. */
export type Pressure = Quantity<'pressure'>;
/** Pressure gradient [Pa/m]. */
export type PressureGradient = Quantity<'pressure gradient'>;
/** Force per length [N/m]. */
export type ForcePerLength = Quantity<'force per length'>;
/** Head [m]. */
export type Head = Quantity<'head'>;
/** Flow [m3/s]. */
export type Flow = Quantity<'flow'>;
/** Mass flow [kg/s]. */
export type MassFlow = Quantity<'mass flow'>;
/** Flow per power [m3/(s.W)]. */
export type FlowPerPower = Quantity<'flow per power'>;
/** Length per power [m/W]. */
export type LengthPerPower = Quantity<'length per power'>;
/** Velocity [m/s]. */
export type Velocity = Quantity<'velocity'>;
/** Money [cur]. */
export type Money = Quantity<'money'>;
/** Energy price [cur/J]. */
export type EnergyPrice = Quantity<'energy price'>;
/** Power price [cur/W]. */
export type PowerPrice = Quantity<'power price'>;
/** Volume price [cur/m3]. */
export type VolumePrice = Quantity<'volume price'>;
/** Mass price [cur/kg]. */
export type MassPrice = Quantity<'mass price'>;
/** Length price [cur/m]. */
export type LengthPrice = Quantity<'length price'>;
/** Yearly rate [1/a]. */
export type YearlyRate = Quantity<'yearly rate'>;
/** Emission factor [kg/J]. */
export type EmissionFactor = Quantity<'emission factor'>;
/** Heating value by volume [J/m3]. */
export type HeatingValueByVolume = Quantity<'heating value by volume'>;
/** Heating value by mass [J/kg]. */
export type HeatingValueByMass = Quantity<'heating value by mass'>;
/** Electric current [A]. */
export type ElectricCurrent = Quantity<'electric current'>;
/** Voltage [V]. */
export type Voltage = Quantity<'voltage'>;
/** Moisture on dry basis [kg/kg]. */
export type DryBasisMoisture = Quantity<'moisture on dry basis'>;
/** Moisture on wet basis [kg/kg]. */
export type WetBasisMoisture = Quantity<'moisture on wet basis'>;
/** Volumetric water [m3/m3]. */
export type VolumetricWater = Quantity<'volumetric water'>;
/** Mass fraction [kg/kg]. */
export type MassFraction = Quantity<'mass fraction'>;
/** Volume fraction [m3/m3]. */
export type VolumeFraction = Quantity<'volume fraction'>;
/** Run fraction [h/h]. */
export type RunFraction = Quantity<'run fraction'>;
/** Fraction [1]. */
export type Fraction = Quantity<'fraction'>;
/** Ratio [1]. */
export type Ratio = Quantity<'ratio'>;
