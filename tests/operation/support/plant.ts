import { fluidProperties } from '../../../src/fluid/index.js';
import { exponentialResponse, type ExponentialResponse, twoPipeStacked } from '../../../src/ground/index.js';
import { performanceMap, type RatingPoint } from '../../../src/heat-pump/index.js';
import type { SimulationInput } from '../../../src/operation/index.js';
import { pipeDimensions, pipeResistance } from '../../../src/pipe/index.js';
import {
  celsius,
  diameterMillimetres,
  electricKilowatts,
  hours,
  joulesPerCubicMetreKelvin,
  kilowatts,
  litresPerSecond,
  massPercent,
  metres,
  pipeMetres,
  type PipeResistance,
  squareMetresPerSecond,
  type Temperature,
  wattsPerKelvin,
  wattsPerMetreKelvin,
} from '../../../src/units/index.js';

const points = (rows: readonly (readonly [entering: number, capacity: number, power: number])[]): readonly RatingPoint[] =>
  rows.map(([entering, capacity, power]) => ({
    enteringFluid: celsius(entering),
    capacity: kilowatts(capacity),
    power: electricKilowatts(power),
  }));

/** An invented unit. */
export const heating = performanceMap({
  mode: 'heating',
  points: points([
    [-5, 6.9, 2.29],
    [0, 8, 2.35],
    [5, 9.1, 2.42],
    [10, 10.2, 2.5],
    [20, 12.4, 2.7],
  ]),
});

/** The same unit in cooling. */
export const cooling = performanceMap({
  mode: 'cooling',
  points: points([
    [5, 10, 1.5],
    [10, 9.9, 1.6],
    [20, 9.5, 1.9],
    [30, 9, 2.3],
    [38, 8.5, 2.8],
  ]),
});

/** Four trenches of two pipes in moist loam. */
export const response: ExponentialResponse = exponentialResponse({
  layout: twoPipeStacked({ upperDepth: metres(1.4), lowerDepth: metres(2), trenches: 4, trenchSpacing: metres(4) }),
  pipe: { outsideDiameter: diameterMillimetres(32) },
  soil: {
    conductivity: wattsPerMetreKelvin(1.5),
    heatCapacity: joulesPerCubicMetreKelvin(2.5e6),
    diffusivity: squareMetresPerSecond(6e-7),
  },
});

export const HOURS = 8760;

/** A course through a year of 365 days, coldest on a day, of the value at the end of each hour. */
export const wave = (mean: number, amplitude: number, coldestDay: number): Float64Array =>
  Float64Array.from({ length: HOURS }, (_, hour) => mean - amplitude * Math.cos((2 * Math.PI * ((hour + 1) / 24 + 1 - coldestDay)) / 365));

const outdoor = wave(9, 11, 20).map((mean, hour) => mean + 4 * Math.cos((2 * Math.PI * (hour - 15)) / 24));

/** Load of a house of 9 kW at −10 °C and 7 kW of cooling at 32 °C. */
export const loads: Float64Array = outdoor.map((each) => (each < 16 ? (9000 * (16 - each)) / 26 : each > 20 ? (-7000 * (each - 20)) / 12 : 0));

const pipe = pipeDimensions({ series: 'metric', size: '32', dimensionRatio: '11' });

/** Film and wall with 33 % propylene glycol at 0.17 L/s, laminar in winter. */
export const resistanceAt = (meanFluid: Temperature): PipeResistance =>
  pipeResistance({
    pipe,
    fluid: fluidProperties({ fluid: 'propylene-glycol', massFraction: massPercent(33), temperature: celsius(Math.max(-12, meanFluid)) }),
    flow: litresPerSecond(0.17),
  }).total;

/** A loop that heats and cools. */
export const house: SimulationInput = {
  step: hours(1),
  duty: { from: 'building', loads, heating, cooling },
  ground: wave(9.4, 5, 60),
  response,
  pipeLength: pipeMetres(432),
  resistanceAt,
  heatCapacityRate: wattsPerKelvin(1950),
};
