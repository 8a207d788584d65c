// The demo's house, meadow and unit, all of it invented, made ready for loops of any layout.
import { demoDocument, inputDocument } from 'loamloop';
import { erbsSpread, hourlyLoads, readBuilding } from 'loamloop/building';
import { groundWave, syntheticWeatherYear } from 'loamloop/climate';
import { antifreezeForProtection, fluidProperties, protectionTemperature } from 'loamloop/fluid';
import { readHeatPump } from 'loamloop/heat-pump';
import type { FluidLimits, IceSoil, SimulatedDuty } from 'loamloop/operation';
import { minimumBendRadius, pipeDimensions, pipeResistance } from 'loamloop/pipe';
import { frozenSoil, johansenConductivity, loosenedFill, soilThermalProperties } from 'loamloop/soil';
import type { SoilThermal } from 'loamloop/states';
import {
  celsius,
  dayOfYear,
  type Flow,
  grams,
  hours,
  kilogramsPerCubicMetre,
  type PipeResistance,
  ratio,
  type Temperature,
  type Time,
  squareMetresPerSecond,
  wattsPerKelvin,
} from 'loamloop/units';

const job = inputDocument().read(demoDocument);
export const { name } = job;
const unit = readHeatPump(job.heatPump);
export const { sourceFlow } = unit;

/** The unit with the coldest fluid that may enter it. */
export const atLimit = unit.heating.at(unit.lowestEntering);
/** Limits of the unit, which every layout is sized to. */
export const limits: FluidLimits = {
  lowestEntering: unit.lowestEntering,
  ...(unit.lowestLeaving === undefined ? {} : { lowestLeaving: unit.lowestLeaving }),
  ...(unit.cooling && { highestEntering: unit.cooling.highestEntering }),
};

/** One soil for all depths, so that the layouts alone differ: the middle layer of the demo. */
const sampleAt = (dryDensity: number): ReturnType<typeof soilThermalProperties> =>
  soilThermalProperties({
    from: 'sample',
    moisture: { basis: 'weighed', moistMass: grams(438), dryMass: grams(368), tareMass: grams(53) },
    density: { from: 'core', dryDensity: kilogramsPerCubicMetre(dryDensity) },
    texture: { from: 'feel', class: 'clay loam' },
  });
const NATIVE_DENSITY = 1520;
const native = sampleAt(NATIVE_DENSITY);
export const soil: SoilThermal = native.thermal;
/** What was dug out and filled in again, in its first winter and when it has settled. */
const { firstWinter, settled } = loosenedFill({
  nativeDensity: kilogramsPerCubicMetre(NATIVE_DENSITY),
  thermalAt: (dryDensity) => sampleAt(kilogramsPerCubicMetre.of(dryDensity)).thermal,
});
export const fills = { firstWinter: firstWinter.thermal, settled: settled.thermal };
const { phases, quartzFraction } = native;
if (phases === undefined || quartzFraction === undefined) throw new Error('a sample has its phases');
/** Clay keeps part of its water liquid on the faces of its grains: as much surface as a clay loam has, in m²/g. */
const freezing = { type: 'surfaces', totalMoisture: phases.moisture, specificSurface: ratio(50), frozenAt: celsius(-4) } as const;
const { unfrozenWater, latentHeat, heatCapacity } = frozenSoil({
  dryDensity: phases.dryDensity,
  moisture: { basis: 'dry', value: phases.moisture },
  specificSurface: freezing.specificSurface,
  temperature: freezing.frozenAt,
});
const { conductivity } = johansenConductivity({
  dryDensity: phases.dryDensity,
  saturation: phases.saturation,
  quartzFraction,
  grain: 'fine',
  frozen: true,
  unfrozenWater,
});
export const iceSoil: IceSoil = {
  thawed: soil,
  frozen: { conductivity, heatCapacity, diffusivity: squareMetresPerSecond(conductivity / heatCapacity) },
  latentHeat,
  waterByVolume: phases.volumetricWater,
  freezing,
};

const { wave: surfaceWave } = groundWave(job.climate);
export const wave = surfaceWave;

/** A usual year by the hour, colder than the design temperature in some of them, and what the house asks for in it. */
const { heatingForSizing: heating, cooling } = readBuilding(job.building);
if (job.climate.from !== 'monthly-air') throw new Error('the demo has months');
const { monthlyMeans } = job.climate;
const course = { course: { from: 'monthly-air', monthlyMeans }, spread: erbsSpread(monthlyMeans).withinMonth } as const;
const weather = syntheticWeatherYear(course);
const { loads } = hourlyLoads({ heating, ...(cooling && { cooling }), temperatures: weather.temperatures, step: weather.step });
export const duty: SimulatedDuty = { from: 'building', loads, heating: unit.heating, ...(unit.cooling && { cooling: unit.cooling.map }) };
export const step: Time = hours(1);
/** A new loop goes to work at the beginning of the heating season. */
export const start = dayOfYear(274);

/** Fluid that stays free of ice, read at the cold end for what the flow carries. */
const protection = protectionTemperature({ lowestEntering: unit.lowestEntering, lowestLeaving: unit.lowestLeaving ?? unit.lowestEntering });
const { massFraction, freezingPoint } = antifreezeForProtection({
  fluid: job.fluid === 'water' ? 'propylene-glycol' : job.fluid,
  protectTo: protection.protectTo,
  freezingRule: 'warmest source',
});
const fluidAt = (temperature: Temperature): ReturnType<typeof fluidProperties> =>
  fluidProperties({ fluid: 'propylene-glycol', massFraction, temperature: celsius(Math.max(temperature, freezingPoint + 0.05)) });
const coldFluid = fluidAt(unit.lowestEntering);
export const heatCapacityRate = wattsPerKelvin(sourceFlow * coldFluid.density * coldFluid.specificHeat);

/** Pipe of one size in every layout, small enough for rings, in coils that are whole circuits. */
export const pipe = pipeDimensions({ series: 'metric', size: '25', dimensionRatio: '11' });
export const { leastBendRadius } = minimumBendRadius(pipe);

/** Wall and film where so many circuits share the flow [m·K/W]. */
export const wallAndFilm = (circuits: number): ((meanFluid: Temperature) => PipeResistance) => {
  const flow = (sourceFlow / circuits) as Flow;
  const known = new Map<number, PipeResistance>();
  return (meanFluid) => {
    const found = known.get(meanFluid) ?? pipeResistance({ pipe, fluid: fluidAt(meanFluid), flow }).total;
    known.set(meanFluid, found);
    return found;
  };
};
