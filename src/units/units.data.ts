import { unit, type Unit } from './quantity.js';

/** Length in m. */
export const metres: Unit<'length'> = /* @__PURE__ */ unit('length', 'm');
/** Length in km. */
export const kilometres: Unit<'length'> = /* @__PURE__ */ unit('length', 'km');
/** Length in cm. */
export const centimetres: Unit<'length'> = /* @__PURE__ */ unit('length', 'cm');
/** Length in mm. */
export const millimetres: Unit<'length'> = /* @__PURE__ */ unit('length', 'mm');
/** Length in ft. */
export const feet: Unit<'length'> = /* @__PURE__ */ unit('length', 'ft');
/** Length in in. */
export const inches: Unit<'length'> = /* @__PURE__ */ unit('length', 'in');
/** Length in yd. */
export const yards: Unit<'length'> = /* @__PURE__ */ unit('length', 'yd');
/** Pipe length in m. */
export const pipeMetres: Unit<'pipe length'> = /* @__PURE__ */ unit('pipe length', 'm');
/** Pipe length in km. */
export const pipeKilometres: Unit<'pipe length'> = /* @__PURE__ */ unit('pipe length', 'km');
/** Pipe length in ft. */
export const pipeFeet: Unit<'pipe length'> = /* @__PURE__ */ unit('pipe length', 'ft');
/** Trench length in m. */
export const trenchMetres: Unit<'trench length'> = /* @__PURE__ */ unit('trench length', 'm');
/** Trench length in km. */
export const trenchKilometres: Unit<'trench length'> = /* @__PURE__ */ unit('trench length', 'km');
/** Trench length in ft. */
export const trenchFeet: Unit<'trench length'> = /* @__PURE__ */ unit('trench length', 'ft');
/** Diameter in m. */
export const diameterMetres: Unit<'diameter'> = /* @__PURE__ */ unit('diameter', 'm');
/** Diameter in cm. */
export const diameterCentimetres: Unit<'diameter'> = /* @__PURE__ */ unit('diameter', 'cm');
/** Diameter in mm. */
export const diameterMillimetres: Unit<'diameter'> = /* @__PURE__ */ unit('diameter', 'mm');
/** Diameter in in. */
export const diameterInches: Unit<'diameter'> = /* @__PURE__ */ unit('diameter', 'in');
/** Area in m2. */
export const squareMetres: Unit<'area'> = /* @__PURE__ */ unit('area', 'm2');
/** Area in ha. */
export const hectares: Unit<'area'> = /* @__PURE__ */ unit('area', 'ha');
/** Area in ft2. */
export const squareFeet: Unit<'area'> = /* @__PURE__ */ unit('area', 'ft2');
/** Area in in2. */
export const squareInches: Unit<'area'> = /* @__PURE__ */ unit('area', 'in2');
/** Area in yd2. */
export const squareYards: Unit<'area'> = /* @__PURE__ */ unit('area', 'yd2');
/** Area in acre. */
export const acres: Unit<'area'> = /* @__PURE__ */ unit('area', 'acre');
/** Volume in m3. */
export const cubicMetres: Unit<'volume'> = /* @__PURE__ */ unit('volume', 'm3');
/** Volume in L. */
export const litres: Unit<'volume'> = /* @__PURE__ */ unit('volume', 'L');
/** Volume in mL. */
export const millilitres: Unit<'volume'> = /* @__PURE__ */ unit('volume', 'mL');
/** Volume in cm3. */
export const cubicCentimetres: Unit<'volume'> = /* @__PURE__ */ unit('volume', 'cm3');
/** Volume in ft3. */
export const cubicFeet: Unit<'volume'> = /* @__PURE__ */ unit('volume', 'ft3');
/** Volume in in3. */
export const cubicInches: Unit<'volume'> = /* @__PURE__ */ unit('volume', 'in3');
/** Volume in yd3. */
export const cubicYards: Unit<'volume'> = /* @__PURE__ */ unit('volume', 'yd3');
/** Volume in gal. */
export const gallons: Unit<'volume'> = /* @__PURE__ */ unit('volume', 'gal');
/** Volume in imp-gal. */
export const imperialGallons: Unit<'volume'> = /* @__PURE__ */ unit('volume', 'imp-gal');
/** Volume per length in m3/m. */
export const cubicMetresPerMetre: Unit<'volume per length'> = /* @__PURE__ */ unit('volume per length', 'm3/m');
/** Volume per length in L/m. */
export const litresPerMetre: Unit<'volume per length'> = /* @__PURE__ */ unit('volume per length', 'L/m');
/** Volume per length in gal/100ft. */
export const gallonsPerHundredFeet: Unit<'volume per length'> = /* @__PURE__ */ unit('volume per length', 'gal/100ft');
/** Mass in kg. */
export const kilograms: Unit<'mass'> = /* @__PURE__ */ unit('mass', 'kg');
/** Mass in g. */
export const grams: Unit<'mass'> = /* @__PURE__ */ unit('mass', 'g');
/** Mass in t. */
export const tonnes: Unit<'mass'> = /* @__PURE__ */ unit('mass', 't');
/** Mass in lb. */
export const pounds: Unit<'mass'> = /* @__PURE__ */ unit('mass', 'lb');
/** Mass in oz. */
export const ounces: Unit<'mass'> = /* @__PURE__ */ unit('mass', 'oz');
/** Mass in short-ton. */
export const shortTons: Unit<'mass'> = /* @__PURE__ */ unit('mass', 'short-ton');
/** Time in s. */
export const seconds: Unit<'time'> = /* @__PURE__ */ unit('time', 's');
/** Time in min. */
export const minutes: Unit<'time'> = /* @__PURE__ */ unit('time', 'min');
/** Time in h. */
export const hours: Unit<'time'> = /* @__PURE__ */ unit('time', 'h');
/** Time in d. */
export const days: Unit<'time'> = /* @__PURE__ */ unit('time', 'd');
/** Day of year in d. */
export const dayOfYear: Unit<'day of year'> = /* @__PURE__ */ unit('day of year', 'd');
/** Temperature in degC. */
export const celsius: Unit<'temperature'> = /* @__PURE__ */ unit('temperature', 'degC');
/** Temperature in K. */
export const kelvin: Unit<'temperature'> = /* @__PURE__ */ unit('temperature', 'K');
/** Temperature in degF. */
export const fahrenheit: Unit<'temperature'> = /* @__PURE__ */ unit('temperature', 'degF');
/** Temperature in degR. */
export const rankine: Unit<'temperature'> = /* @__PURE__ */ unit('temperature', 'degR');
/** Temperature difference in K. */
export const kelvinDifference: Unit<'temperature difference'> = /* @__PURE__ */ unit('temperature difference', 'K');
/** Temperature difference in degC. */
export const celsiusDifference: Unit<'temperature difference'> = /* @__PURE__ */ unit('temperature difference', 'degC');
/** Temperature difference in degF. */
export const fahrenheitDifference: Unit<'temperature difference'> = /* @__PURE__ */ unit('temperature difference', 'degF');
/** Temperature difference in degR. */
export const rankineDifference: Unit<'temperature difference'> = /* @__PURE__ */ unit('temperature difference', 'degR');
/** Degree days in K.d. */
export const kelvinDays: Unit<'degree days'> = /* @__PURE__ */ unit('degree days', 'K.d');
/** Degree days in degF.d. */
export const fahrenheitDays: Unit<'degree days'> = /* @__PURE__ */ unit('degree days', 'degF.d');
/** Energy in J. */
export const joules: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'J');
/** Energy in kJ. */
export const kilojoules: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'kJ');
/** Energy in MJ. */
export const megajoules: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'MJ');
/** Energy in GJ. */
export const gigajoules: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'GJ');
/** Energy in kWh. */
export const kilowattHours: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'kWh');
/** Energy in MWh. */
export const megawattHours: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'MWh');
/** Energy in Btu. */
export const btu: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'Btu');
/** Energy in kBtu. */
export const thousandBtu: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'kBtu');
/** Energy in MMBtu. */
export const millionBtu: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'MMBtu');
/** Energy in therm. */
export const therms: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'therm');
/** Energy in ton.h. */
export const tonHours: Unit<'energy'> = /* @__PURE__ */ unit('energy', 'ton.h');
/** Electric energy in J. */
export const electricJoules: Unit<'electric energy'> = /* @__PURE__ */ unit('electric energy', 'J');
/** Electric energy in kWh. */
export const electricKilowattHours: Unit<'electric energy'> = /* @__PURE__ */ unit('electric energy', 'kWh');
/** Electric energy in MWh. */
export const electricMegawattHours: Unit<'electric energy'> = /* @__PURE__ */ unit('electric energy', 'MWh');
/** Power in W. */
export const watts: Unit<'power'> = /* @__PURE__ */ unit('power', 'W');
/** Power in kW. */
export const kilowatts: Unit<'power'> = /* @__PURE__ */ unit('power', 'kW');
/** Power in Btu/h. */
export const btuPerHour: Unit<'power'> = /* @__PURE__ */ unit('power', 'Btu/h');
/** Power in kBtu/h. */
export const thousandBtuPerHour: Unit<'power'> = /* @__PURE__ */ unit('power', 'kBtu/h');
/** Power in ton. */
export const tons: Unit<'power'> = /* @__PURE__ */ unit('power', 'ton');
/** Electric power in W. */
export const electricWatts: Unit<'electric power'> = /* @__PURE__ */ unit('electric power', 'W');
/** Electric power in kW. */
export const electricKilowatts: Unit<'electric power'> = /* @__PURE__ */ unit('electric power', 'kW');
/** Electric power in hp. */
export const horsepower: Unit<'electric power'> = /* @__PURE__ */ unit('electric power', 'hp');
/** Heat flux in W/m2. */
export const wattsPerSquareMetre: Unit<'heat flux'> = /* @__PURE__ */ unit('heat flux', 'W/m2');
/** Heat flux in Btu/(h.ft2). */
export const btuPerHourSquareFoot: Unit<'heat flux'> = /* @__PURE__ */ unit('heat flux', 'Btu/(h.ft2)');
/** Heat flux in W/ft2. */
export const wattsPerSquareFoot: Unit<'heat flux'> = /* @__PURE__ */ unit('heat flux', 'W/ft2');
/** Heat per pipe length in W/m. */
export const wattsPerPipeMetre: Unit<'heat per pipe length'> = /* @__PURE__ */ unit('heat per pipe length', 'W/m');
/** Heat per pipe length in Btu/(h.ft). */
export const btuPerHourPipeFoot: Unit<'heat per pipe length'> = /* @__PURE__ */ unit('heat per pipe length', 'Btu/(h.ft)');
/** Heat per pipe length in W/ft. */
export const wattsPerPipeFoot: Unit<'heat per pipe length'> = /* @__PURE__ */ unit('heat per pipe length', 'W/ft');
/** Heat per trench length in W/m. */
export const wattsPerTrenchMetre: Unit<'heat per trench length'> = /* @__PURE__ */ unit('heat per trench length', 'W/m');
/** Heat per trench length in Btu/(h.ft). */
export const btuPerHourTrenchFoot: Unit<'heat per trench length'> = /* @__PURE__ */ unit('heat per trench length', 'Btu/(h.ft)');
/** Heat per trench length in W/ft. */
export const wattsPerTrenchFoot: Unit<'heat per trench length'> = /* @__PURE__ */ unit('heat per trench length', 'W/ft');
/** Conductance in W/K. */
export const wattsPerKelvin: Unit<'conductance'> = /* @__PURE__ */ unit('conductance', 'W/K');
/** Conductance in kW/K. */
export const kilowattsPerKelvin: Unit<'conductance'> = /* @__PURE__ */ unit('conductance', 'kW/K');
/** Conductance in Btu/(h.degF). */
export const btuPerHourFahrenheit: Unit<'conductance'> = /* @__PURE__ */ unit('conductance', 'Btu/(h.degF)');
/** Conductivity in W/(m.K). */
export const wattsPerMetreKelvin: Unit<'conductivity'> = /* @__PURE__ */ unit('conductivity', 'W/(m.K)');
/** Conductivity in Btu/(h.ft.degF). */
export const btuPerHourFootFahrenheit: Unit<'conductivity'> = /* @__PURE__ */ unit('conductivity', 'Btu/(h.ft.degF)');
/** Conductivity in Btu.in/(h.ft2.degF). */
export const btuInchPerHourSquareFootFahrenheit: Unit<'conductivity'> = /* @__PURE__ */ unit('conductivity', 'Btu.in/(h.ft2.degF)');
/** Conductivity in kcal/(h.m.K). */
export const kilocaloriesPerHourMetreKelvin: Unit<'conductivity'> = /* @__PURE__ */ unit('conductivity', 'kcal/(h.m.K)');
/** Diffusivity in m2/s. */
export const squareMetresPerSecond: Unit<'diffusivity'> = /* @__PURE__ */ unit('diffusivity', 'm2/s');
/** Diffusivity in cm2/s. */
export const squareCentimetresPerSecond: Unit<'diffusivity'> = /* @__PURE__ */ unit('diffusivity', 'cm2/s');
/** Diffusivity in mm2/s. */
export const squareMillimetresPerSecond: Unit<'diffusivity'> = /* @__PURE__ */ unit('diffusivity', 'mm2/s');
/** Diffusivity in m2/d. */
export const squareMetresPerDay: Unit<'diffusivity'> = /* @__PURE__ */ unit('diffusivity', 'm2/d');
/** Diffusivity in ft2/h. */
export const squareFeetPerHour: Unit<'diffusivity'> = /* @__PURE__ */ unit('diffusivity', 'ft2/h');
/** Diffusivity in ft2/d. */
export const squareFeetPerDay: Unit<'diffusivity'> = /* @__PURE__ */ unit('diffusivity', 'ft2/d');
/** Kinematic viscosity in m2/s. */
export const kinematicSquareMetresPerSecond: Unit<'kinematic viscosity'> = /* @__PURE__ */ unit('kinematic viscosity', 'm2/s');
/** Kinematic viscosity in mm2/s. */
export const kinematicSquareMillimetresPerSecond: Unit<'kinematic viscosity'> = /* @__PURE__ */ unit('kinematic viscosity', 'mm2/s');
/** Kinematic viscosity in cSt. */
export const centistokes: Unit<'kinematic viscosity'> = /* @__PURE__ */ unit('kinematic viscosity', 'cSt');
/** Kinematic viscosity in ft2/s. */
export const kinematicSquareFeetPerSecond: Unit<'kinematic viscosity'> = /* @__PURE__ */ unit('kinematic viscosity', 'ft2/s');
/** Dynamic viscosity in Pa.s. */
export const pascalSeconds: Unit<'dynamic viscosity'> = /* @__PURE__ */ unit('dynamic viscosity', 'Pa.s');
/** Dynamic viscosity in mPa.s. */
export const millipascalSeconds: Unit<'dynamic viscosity'> = /* @__PURE__ */ unit('dynamic viscosity', 'mPa.s');
/** Dynamic viscosity in cP. */
export const centipoise: Unit<'dynamic viscosity'> = /* @__PURE__ */ unit('dynamic viscosity', 'cP');
/** Dynamic viscosity in lb/(ft.h). */
export const poundsPerFootHour: Unit<'dynamic viscosity'> = /* @__PURE__ */ unit('dynamic viscosity', 'lb/(ft.h)');
/** Dynamic viscosity in lb/(ft.s). */
export const poundsPerFootSecond: Unit<'dynamic viscosity'> = /* @__PURE__ */ unit('dynamic viscosity', 'lb/(ft.s)');
/** Heat capacity in J/(m3.K). */
export const joulesPerCubicMetreKelvin: Unit<'heat capacity'> = /* @__PURE__ */ unit('heat capacity', 'J/(m3.K)');
/** Heat capacity in kJ/(m3.K). */
export const kilojoulesPerCubicMetreKelvin: Unit<'heat capacity'> = /* @__PURE__ */ unit('heat capacity', 'kJ/(m3.K)');
/** Heat capacity in MJ/(m3.K). */
export const megajoulesPerCubicMetreKelvin: Unit<'heat capacity'> = /* @__PURE__ */ unit('heat capacity', 'MJ/(m3.K)');
/** Heat capacity in Btu/(ft3.degF). */
export const btuPerCubicFootFahrenheit: Unit<'heat capacity'> = /* @__PURE__ */ unit('heat capacity', 'Btu/(ft3.degF)');
/** Specific heat in J/(kg.K). */
export const joulesPerKilogramKelvin: Unit<'specific heat'> = /* @__PURE__ */ unit('specific heat', 'J/(kg.K)');
/** Specific heat in kJ/(kg.K). */
export const kilojoulesPerKilogramKelvin: Unit<'specific heat'> = /* @__PURE__ */ unit('specific heat', 'kJ/(kg.K)');
/** Specific heat in Btu/(lb.degF). */
export const btuPerPoundFahrenheit: Unit<'specific heat'> = /* @__PURE__ */ unit('specific heat', 'Btu/(lb.degF)');
/** Latent heat in J/m3. */
export const joulesPerCubicMetre: Unit<'latent heat'> = /* @__PURE__ */ unit('latent heat', 'J/m3');
/** Latent heat in MJ/m3. */
export const megajoulesPerCubicMetre: Unit<'latent heat'> = /* @__PURE__ */ unit('latent heat', 'MJ/m3');
/** Latent heat in Btu/ft3. */
export const btuPerCubicFoot: Unit<'latent heat'> = /* @__PURE__ */ unit('latent heat', 'Btu/ft3');
/** Density in kg/m3. */
export const kilogramsPerCubicMetre: Unit<'density'> = /* @__PURE__ */ unit('density', 'kg/m3');
/** Density in g/cm3. */
export const gramsPerCubicCentimetre: Unit<'density'> = /* @__PURE__ */ unit('density', 'g/cm3');
/** Density in t/m3. */
export const tonnesPerCubicMetre: Unit<'density'> = /* @__PURE__ */ unit('density', 't/m3');
/** Density in lb/ft3. */
export const poundsPerCubicFoot: Unit<'density'> = /* @__PURE__ */ unit('density', 'lb/ft3');
/** Density in lb/gal. */
export const poundsPerGallon: Unit<'density'> = /* @__PURE__ */ unit('density', 'lb/gal');
/** Pipe resistance in m.K/W. */
export const pipeMetreKelvinPerWatt: Unit<'pipe resistance'> = /* @__PURE__ */ unit('pipe resistance', 'm.K/W');
/** Pipe resistance in h.ft.degF/Btu. */
export const pipeHourFootFahrenheitPerBtu: Unit<'pipe resistance'> = /* @__PURE__ */ unit('pipe resistance', 'h.ft.degF/Btu');
/** Trench resistance in m.K/W. */
export const trenchMetreKelvinPerWatt: Unit<'trench resistance'> = /* @__PURE__ */ unit('trench resistance', 'm.K/W');
/** Trench resistance in h.ft.degF/Btu. */
export const trenchHourFootFahrenheitPerBtu: Unit<'trench resistance'> = /* @__PURE__ */ unit('trench resistance', 'h.ft.degF/Btu');
/** Surface resistance in m2.K/W. */
export const squareMetreKelvinPerWatt: Unit<'surface resistance'> = /* @__PURE__ */ unit('surface resistance', 'm2.K/W');
/** Surface resistance in h.ft2.degF/Btu. */
export const hourSquareFootFahrenheitPerBtu: Unit<'surface resistance'> = /* @__PURE__ */ unit('surface resistance', 'h.ft2.degF/Btu');
/** Surface coefficient in W/(m2.K). */
export const wattsPerSquareMetreKelvin: Unit<'surface coefficient'> = /* @__PURE__ */ unit('surface coefficient', 'W/(m2.K)');
/** Surface coefficient in Btu/(h.ft2.degF). */
export const btuPerHourSquareFootFahrenheit: Unit<'surface coefficient'> = /* @__PURE__ */ unit('surface coefficient', 'Btu/(h.ft2.degF)');
/** Pressure in Pa. */
export const pascals: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'Pa');
/** Pressure in kPa. */
export const kilopascals: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'kPa');
/** Pressure in MPa. */
export const megapascals: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'MPa');
/** Pressure in bar. */
export const bars: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'bar');
/** Pressure in psi. */
export const psi: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'psi');
/** Pressure in atm. */
export const atmospheres: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'atm');
/** Pressure in mH2O. */
export const metresOfWater: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'mH2O');
/** Pressure in ftH2O. */
export const feetOfWater: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'ftH2O');
/** Pressure in inH2O. */
export const inchesOfWater: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'inH2O');
/** Pressure in mmHg. */
export const millimetresOfMercury: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'mmHg');
/** Pressure in inHg. */
export const inchesOfMercury: Unit<'pressure'> = /* @__PURE__ */ unit('pressure', 'inHg');
/** Pressure gradient in Pa/m. */
export const pascalsPerMetre: Unit<'pressure gradient'> = /* @__PURE__ */ unit('pressure gradient', 'Pa/m');
/** Pressure gradient in kPa/m. */
export const kilopascalsPerMetre: Unit<'pressure gradient'> = /* @__PURE__ */ unit('pressure gradient', 'kPa/m');
/** Pressure gradient in ftH2O/100ft. */
export const feetOfWaterPerHundredFeet: Unit<'pressure gradient'> = /* @__PURE__ */ unit('pressure gradient', 'ftH2O/100ft');
/** Pressure gradient in psi/ft. */
export const psiPerFoot: Unit<'pressure gradient'> = /* @__PURE__ */ unit('pressure gradient', 'psi/ft');
/** Force per length in N/m. */
export const newtonsPerMetre: Unit<'force per length'> = /* @__PURE__ */ unit('force per length', 'N/m');
/** Force per length in kgf/m. */
export const kilogramsForcePerMetre: Unit<'force per length'> = /* @__PURE__ */ unit('force per length', 'kgf/m');
/** Force per length in lbf/ft. */
export const poundsForcePerFoot: Unit<'force per length'> = /* @__PURE__ */ unit('force per length', 'lbf/ft');
/** Head in m. */
export const headMetres: Unit<'head'> = /* @__PURE__ */ unit('head', 'm');
/** Head in ft. */
export const headFeet: Unit<'head'> = /* @__PURE__ */ unit('head', 'ft');
/** Flow in m3/s. */
export const cubicMetresPerSecond: Unit<'flow'> = /* @__PURE__ */ unit('flow', 'm3/s');
/** Flow in L/s. */
export const litresPerSecond: Unit<'flow'> = /* @__PURE__ */ unit('flow', 'L/s');
/** Flow in L/min. */
export const litresPerMinute: Unit<'flow'> = /* @__PURE__ */ unit('flow', 'L/min');
/** Flow in m3/h. */
export const cubicMetresPerHour: Unit<'flow'> = /* @__PURE__ */ unit('flow', 'm3/h');
/** Flow in gpm. */
export const gallonsPerMinute: Unit<'flow'> = /* @__PURE__ */ unit('flow', 'gpm');
/** Flow in L/d. */
export const litresPerDay: Unit<'flow'> = /* @__PURE__ */ unit('flow', 'L/d');
/** Flow in gal/d. */
export const gallonsPerDay: Unit<'flow'> = /* @__PURE__ */ unit('flow', 'gal/d');
/** Flow in cfm. */
export const cubicFeetPerMinute: Unit<'flow'> = /* @__PURE__ */ unit('flow', 'cfm');
/** Mass flow in kg/s. */
export const kilogramsPerSecond: Unit<'mass flow'> = /* @__PURE__ */ unit('mass flow', 'kg/s');
/** Mass flow in kg/h. */
export const kilogramsPerHour: Unit<'mass flow'> = /* @__PURE__ */ unit('mass flow', 'kg/h');
/** Mass flow in lb/h. */
export const poundsPerHour: Unit<'mass flow'> = /* @__PURE__ */ unit('mass flow', 'lb/h');
/** Flow per power in m3/(s.W). */
export const cubicMetresPerSecondWatt: Unit<'flow per power'> = /* @__PURE__ */ unit('flow per power', 'm3/(s.W)');
/** Flow per power in L/(s.kW). */
export const litresPerSecondKilowatt: Unit<'flow per power'> = /* @__PURE__ */ unit('flow per power', 'L/(s.kW)');
/** Flow per power in gpm/ton. */
export const gallonsPerMinuteTon: Unit<'flow per power'> = /* @__PURE__ */ unit('flow per power', 'gpm/ton');
/** Length per power in m/W. */
export const metresPerWatt: Unit<'length per power'> = /* @__PURE__ */ unit('length per power', 'm/W');
/** Length per power in m/kW. */
export const metresPerKilowatt: Unit<'length per power'> = /* @__PURE__ */ unit('length per power', 'm/kW');
/** Length per power in ft/ton. */
export const feetPerTon: Unit<'length per power'> = /* @__PURE__ */ unit('length per power', 'ft/ton');
/** Velocity in m/s. */
export const metresPerSecond: Unit<'velocity'> = /* @__PURE__ */ unit('velocity', 'm/s');
/** Velocity in ft/s. */
export const feetPerSecond: Unit<'velocity'> = /* @__PURE__ */ unit('velocity', 'ft/s');
/** Velocity in ft/min. */
export const feetPerMinute: Unit<'velocity'> = /* @__PURE__ */ unit('velocity', 'ft/min');
/** Velocity in km/h. */
export const kilometresPerHour: Unit<'velocity'> = /* @__PURE__ */ unit('velocity', 'km/h');
/** Velocity in mph. */
export const milesPerHour: Unit<'velocity'> = /* @__PURE__ */ unit('velocity', 'mph');
/** Money in cur. */
export const money: Unit<'money'> = /* @__PURE__ */ unit('money', 'cur');
/** Energy price in cur/J. */
export const perJoule: Unit<'energy price'> = /* @__PURE__ */ unit('energy price', 'cur/J');
/** Energy price in cur/kWh. */
export const perKilowattHour: Unit<'energy price'> = /* @__PURE__ */ unit('energy price', 'cur/kWh');
/** Energy price in cur/MWh. */
export const perMegawattHour: Unit<'energy price'> = /* @__PURE__ */ unit('energy price', 'cur/MWh');
/** Energy price in cur/GJ. */
export const perGigajoule: Unit<'energy price'> = /* @__PURE__ */ unit('energy price', 'cur/GJ');
/** Energy price in cur/therm. */
export const perTherm: Unit<'energy price'> = /* @__PURE__ */ unit('energy price', 'cur/therm');
/** Energy price in cur/MMBtu. */
export const perMillionBtu: Unit<'energy price'> = /* @__PURE__ */ unit('energy price', 'cur/MMBtu');
/** Power price in cur/W. */
export const perWatt: Unit<'power price'> = /* @__PURE__ */ unit('power price', 'cur/W');
/** Power price in cur/kW. */
export const perKilowatt: Unit<'power price'> = /* @__PURE__ */ unit('power price', 'cur/kW');
/** Volume price in cur/m3. */
export const perCubicMetre: Unit<'volume price'> = /* @__PURE__ */ unit('volume price', 'cur/m3');
/** Volume price in cur/L. */
export const perLitre: Unit<'volume price'> = /* @__PURE__ */ unit('volume price', 'cur/L');
/** Volume price in cur/gal. */
export const perGallon: Unit<'volume price'> = /* @__PURE__ */ unit('volume price', 'cur/gal');
/** Volume price in cur/100ft3. */
export const perHundredCubicFeet: Unit<'volume price'> = /* @__PURE__ */ unit('volume price', 'cur/100ft3');
/** Mass price in cur/kg. */
export const perKilogram: Unit<'mass price'> = /* @__PURE__ */ unit('mass price', 'cur/kg');
/** Mass price in cur/t. */
export const perTonne: Unit<'mass price'> = /* @__PURE__ */ unit('mass price', 'cur/t');
/** Mass price in cur/lb. */
export const perPound: Unit<'mass price'> = /* @__PURE__ */ unit('mass price', 'cur/lb');
/** Mass price in cur/short-ton. */
export const perShortTon: Unit<'mass price'> = /* @__PURE__ */ unit('mass price', 'cur/short-ton');
/** Length price in cur/m. */
export const perMetre: Unit<'length price'> = /* @__PURE__ */ unit('length price', 'cur/m');
/** Length price in cur/ft. */
export const perFoot: Unit<'length price'> = /* @__PURE__ */ unit('length price', 'cur/ft');
/** Yearly rate in 1/a. */
export const perYear: Unit<'yearly rate'> = /* @__PURE__ */ unit('yearly rate', '1/a');
/** Yearly rate in %/a. */
export const percentPerYear: Unit<'yearly rate'> = /* @__PURE__ */ unit('yearly rate', '%/a');
/** Emission factor in kg/J. */
export const kilogramsPerJoule: Unit<'emission factor'> = /* @__PURE__ */ unit('emission factor', 'kg/J');
/** Emission factor in kg/kWh. */
export const kilogramsPerKilowattHour: Unit<'emission factor'> = /* @__PURE__ */ unit('emission factor', 'kg/kWh');
/** Emission factor in g/kWh. */
export const gramsPerKilowattHour: Unit<'emission factor'> = /* @__PURE__ */ unit('emission factor', 'g/kWh');
/** Emission factor in kg/GJ. */
export const kilogramsPerGigajoule: Unit<'emission factor'> = /* @__PURE__ */ unit('emission factor', 'kg/GJ');
/** Emission factor in kg/MMBtu. */
export const kilogramsPerMillionBtu: Unit<'emission factor'> = /* @__PURE__ */ unit('emission factor', 'kg/MMBtu');
/** Emission factor in lb/MMBtu. */
export const poundsPerMillionBtu: Unit<'emission factor'> = /* @__PURE__ */ unit('emission factor', 'lb/MMBtu');
/** Emission factor in lb/MWh. */
export const poundsPerMegawattHour: Unit<'emission factor'> = /* @__PURE__ */ unit('emission factor', 'lb/MWh');
/** Heating value by volume in J/m3. */
export const heatingJoulesPerCubicMetre: Unit<'heating value by volume'> = /* @__PURE__ */ unit('heating value by volume', 'J/m3');
/** Heating value by volume in MJ/m3. */
export const heatingMegajoulesPerCubicMetre: Unit<'heating value by volume'> = /* @__PURE__ */ unit('heating value by volume', 'MJ/m3');
/** Heating value by volume in MJ/L. */
export const megajoulesPerLitre: Unit<'heating value by volume'> = /* @__PURE__ */ unit('heating value by volume', 'MJ/L');
/** Heating value by volume in kWh/m3. */
export const kilowattHoursPerCubicMetre: Unit<'heating value by volume'> = /* @__PURE__ */ unit('heating value by volume', 'kWh/m3');
/** Heating value by volume in kWh/L. */
export const kilowattHoursPerLitre: Unit<'heating value by volume'> = /* @__PURE__ */ unit('heating value by volume', 'kWh/L');
/** Heating value by volume in Btu/ft3. */
export const heatingBtuPerCubicFoot: Unit<'heating value by volume'> = /* @__PURE__ */ unit('heating value by volume', 'Btu/ft3');
/** Heating value by volume in Btu/gal. */
export const btuPerGallon: Unit<'heating value by volume'> = /* @__PURE__ */ unit('heating value by volume', 'Btu/gal');
/** Heating value by volume in MMBtu/gal. */
export const millionBtuPerGallon: Unit<'heating value by volume'> = /* @__PURE__ */ unit('heating value by volume', 'MMBtu/gal');
/** Heating value by mass in J/kg. */
export const heatingJoulesPerKilogram: Unit<'heating value by mass'> = /* @__PURE__ */ unit('heating value by mass', 'J/kg');
/** Heating value by mass in MJ/kg. */
export const megajoulesPerKilogram: Unit<'heating value by mass'> = /* @__PURE__ */ unit('heating value by mass', 'MJ/kg');
/** Heating value by mass in kWh/kg. */
export const kilowattHoursPerKilogram: Unit<'heating value by mass'> = /* @__PURE__ */ unit('heating value by mass', 'kWh/kg');
/** Heating value by mass in Btu/lb. */
export const heatingBtuPerPound: Unit<'heating value by mass'> = /* @__PURE__ */ unit('heating value by mass', 'Btu/lb');
/** Heating value by mass in MMBtu/short-ton. */
export const millionBtuPerShortTon: Unit<'heating value by mass'> = /* @__PURE__ */ unit('heating value by mass', 'MMBtu/short-ton');
/** Electric current in A. */
export const amperes: Unit<'electric current'> = /* @__PURE__ */ unit('electric current', 'A');
/** Voltage in V. */
export const volts: Unit<'voltage'> = /* @__PURE__ */ unit('voltage', 'V');
/** Voltage in kV. */
export const kilovolts: Unit<'voltage'> = /* @__PURE__ */ unit('voltage', 'kV');
/** Moisture on dry basis in kg/kg. */
export const dryBasisFraction: Unit<'moisture on dry basis'> = /* @__PURE__ */ unit('moisture on dry basis', 'kg/kg');
/** Moisture on dry basis in %. */
export const dryBasisPercent: Unit<'moisture on dry basis'> = /* @__PURE__ */ unit('moisture on dry basis', '%');
/** Moisture on wet basis in kg/kg. */
export const wetBasisFraction: Unit<'moisture on wet basis'> = /* @__PURE__ */ unit('moisture on wet basis', 'kg/kg');
/** Moisture on wet basis in %. */
export const wetBasisPercent: Unit<'moisture on wet basis'> = /* @__PURE__ */ unit('moisture on wet basis', '%');
/** Volumetric water in m3/m3. */
export const volumetricFraction: Unit<'volumetric water'> = /* @__PURE__ */ unit('volumetric water', 'm3/m3');
/** Volumetric water in %. */
export const volumetricPercent: Unit<'volumetric water'> = /* @__PURE__ */ unit('volumetric water', '%');
/** Mass fraction in kg/kg. */
export const massFraction: Unit<'mass fraction'> = /* @__PURE__ */ unit('mass fraction', 'kg/kg');
/** Mass fraction in %. */
export const massPercent: Unit<'mass fraction'> = /* @__PURE__ */ unit('mass fraction', '%');
/** Volume fraction in m3/m3. */
export const volumeFraction: Unit<'volume fraction'> = /* @__PURE__ */ unit('volume fraction', 'm3/m3');
/** Volume fraction in %. */
export const volumePercent: Unit<'volume fraction'> = /* @__PURE__ */ unit('volume fraction', '%');
/** Run fraction in h/h. */
export const runFraction: Unit<'run fraction'> = /* @__PURE__ */ unit('run fraction', 'h/h');
/** Run fraction in %. */
export const runPercent: Unit<'run fraction'> = /* @__PURE__ */ unit('run fraction', '%');
/** Fraction in 1. */
export const fraction: Unit<'fraction'> = /* @__PURE__ */ unit('fraction', '1');
/** Fraction in %. */
export const percent: Unit<'fraction'> = /* @__PURE__ */ unit('fraction', '%');
/** Ratio in 1. */
export const ratio: Unit<'ratio'> = /* @__PURE__ */ unit('ratio', '1');
