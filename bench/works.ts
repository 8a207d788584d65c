// The work that is timed, by the names that floors.json gives it. Each returns a number that depends on all it computed.
import { demoDocument, inputDocument, planLoop } from 'loamloop';
import { readWeatherFile } from 'loamloop/climate';
import { exponentialGeometry, exponentialResponse, groundResponse, twoPipeStacked } from 'loamloop/ground';
import { performanceMap } from 'loamloop/heat-pump';
import { handbookPipeLength, simulate, sizeLoop } from 'loamloop/operation';
import {
  celsius,
  days,
  electricWatts,
  diameterMillimetres,
  feet,
  hours,
  joulesPerCubicMetreKelvin,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  ratio,
  runFraction,
  squareMetresPerSecond,
  tons,
  watts,
  wattsPerKelvin,
  wattsPerMetreKelvin,
} from 'loamloop/units';

const layout = twoPipeStacked({ upperDepth: feet(4), lowerDepth: feet(6), trenches: 4, trenchSpacing: feet(10) });
const soil = { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) };
const pipe = { outsideDiameter: diameterMillimetres(33.4) };
/** From an hour to 20 years, evenly on a logarithmic scale. */
const times = Array.from({ length: 50 }, (_, i) => days((1 / 24) * (24 * 365.25 * 20) ** (i / 49)));

const reader = inputDocument();

const response = exponentialResponse({ layout, pipe, soil });
const hoursOfYear = Array.from({ length: 8760 }, (_, hour) => Math.cos((2 * Math.PI * (hour / 24 - 20)) / 365));
const unit = performanceMap({
  mode: 'heating',
  points: [-5, 0, 5, 10, 20].map((entering) => ({
    enteringFluid: celsius(entering),
    capacity: watts(8000 + 220 * entering),
    power: electricWatts(2350 + 15 * entering),
  })),
});
/** A house of 9 kW in January that needs no heat in July, with a daily swing. */
const loads = Float64Array.from(hoursOfYear, (wave, hour) => Math.max(0, 4000 + 4000 * wave + 1000 * Math.cos((2 * Math.PI * (hour - 5)) / 24)));
const loop = {
  step: hours(1),
  duty: { from: 'building', loads, heating: unit },
  ground: Float64Array.from(hoursOfYear, (wave) => 10 - 5 * wave),
  response,
  resistanceAt: () => pipeMetreKelvinPerWatt(0.25),
  heatCapacityRate: wattsPerKelvin(2000),
} as const;
/** The recurrence alone, and one evaluation of the map, for 20 years of hours: what following the loop is measured by. */
const decays = response.terms.map(({ timeConstant }) => Math.exp(-3600 / timeConstant));
const gains = response.terms.map(({ rise }, term) => rise * (1 - (decays[term] ?? 0)));
const bare = (): number => {
  const changes = new Float64Array(decays.length);
  let heat = 1;
  let sum = 0;
  for (let hour = 0; hour < 20 * 8760; hour += 1) {
    let wall = 0;
    for (let term = 0; term < changes.length; term += 1) {
      const change = (decays[term] ?? 0) * ((changes[term] ?? 0) + (gains[term] ?? 0) * heat);
      changes[term] = change;
      wall += change;
    }
    heat = unit.continuedAt(celsius(5 - wall)).groundHeat / 400;
    sum += wall;
  }
  return sum;
};

/** A weather file of 8760 hours with rows as long as those of public files. */
const weatherText = [
  'LOCATION,Nowhere,-,NIL,made,0,50,10,1,100',
  'DESIGN CONDITIONS,0',
  'TYPICAL/EXTREME PERIODS,0',
  'GROUND TEMPERATURES,0',
  'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
  'COMMENTS 1,made',
  'COMMENTS 2,made',
  'DATA PERIODS,1,1,Data,Sunday,1/1,12/31',
  ...[31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].flatMap((length, month) =>
    Array.from({ length: 24 * length }, (_, hour) => {
      const time = `1986,${String(month + 1)},${String(1 + Math.floor(hour / 24))},${String(1 + (hour % 24))},60`;
      const flags = '?9?9?9?9E0?9?9?9?9?9?9?9?9?9?9?9?9?9?9*_*9*9*9*9*9';
      return `${time},${flags},${(10 - 12 * Math.cos(month)).toFixed(1)},-16.1,73,99500,1234,1324,218,389,400,188,40800,40000,20600,4030,270,2.6,9,9,24.1,2740,9,999999999,40,0.2780,0,88,999.000,999.0,99.0`;
    }),
  ),
].join('\n');

export const WORKS: Readonly<Record<string, () => number>> = {
  'a thousand quantities made and read': () => {
    let sum = 0;
    for (let i = 0; i < 1000; i += 1) sum += feet.of(feet(i));
    return sum;
  },
  'ground response, 4 trenches of 2 pipes, 50 times': () =>
    groundResponse({ layout, pipe, soil })
      .risesAfter(times)
      .reduce<number>((sum, rise) => sum + rise, 0),
  'ground response fitted by exponentials, 4 trenches of 2 pipes': () => exponentialGeometry({ layout, pipe }).inSoil(soil).terms.length,
  'twenty years of hours, bare recurrence with one evaluation of the map each': bare,
  'twenty years of hours, 4 trenches of 2 pipes': () => simulate({ ...loop, pipeLength: pipeMetres(450), years: 20 }).lastYear.year,
  'the year that repeats': () => simulate({ ...loop, pipeLength: pipeMetres(450) }).lastYear.year,
  'one topology sized by the hour': () => sizeLoop({ ...loop, limits: { lowestEntering: celsius(-4) }, guess: pipeMetres(450) }).exactLength,
  'handbook pipe length': () =>
    handbookPipeLength({
      mode: 'heating',
      capacity: tons(3),
      cop: ratio(3.3),
      pipeResistance: pipeMetreKelvinPerWatt(0.1),
      groundResistance: pipeMetreKelvinPerWatt(0.82),
      runFraction: runFraction(0.55),
      groundTemperature: celsius(7.2),
      convention: 'mean fluid',
      fluidTemperature: celsius(-1.1),
      pipePerTrench: ratio(2),
    }).pipe,
  'an input document read': () => reader.read(demoDocument).soil.layers.length,
  'a weather file of 8760 hours read': () => readWeatherFile({ text: weatherText }).mean,
  'the whole plan, document to document': () => Object.keys(planLoop(demoDocument, { units: 'us' }) as object).length,
};
