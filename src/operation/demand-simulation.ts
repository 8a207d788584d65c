import { demand, demandChoice, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import type { UnitModel } from '../heat-pump/index.js';
import type { TaggedQuantity } from '../units/index.js';
import type { SimulationInput } from './simulation.js';

const MOST_STEPS = 600_000;

/** Refuses what cannot be followed. */
export function demandSimulation(input: SimulationInput): void {
  demandRun(input);
  demandPlace(input, input.duty.loads, 1);
  demandRepeating(input.response, input.years);
}

/** Refuses duty and working of a loop that cannot be followed, wherever it lies. */
export function demandRun(input: Omit<SimulationInput, 'ground' | 'response' | 'resistanceAt' | 'pipeLength'>): void {
  const { step, duty, pump, cyclesPerHour, start, years } = input;
  demand('step', 'time', step, { atLeast: 60, atMost: 86_400 });
  demandObject('duty', duty);
  demandChoice('duty.from', duty.from, ['building', 'ground']);
  demandSeries('duty.loads', 'power', duty.loads, { atLeast: -1e9, atMost: 1e9 });
  if (duty.from === 'building') demandUnits(duty);
  demand('heatCapacityRate', 'conductance', input.heatCapacityRate, { atLeast: 1, atMost: 1e9 });
  if (pump !== undefined) {
    demandObject('pump', pump);
    if (pump.heatShare !== undefined) demand('pump.heatShare', 'fraction', pump.heatShare, { atLeast: 0, atMost: 1 });
  }
  if (cyclesPerHour !== undefined) demand('cyclesPerHour', 'ratio', cyclesPerHour, { atLeast: 0.1, atMost: 60 });
  if (start !== undefined) demand('start', 'day of year', start, { atLeast: 1, atMost: 366 });
  if (years !== undefined) demand('years', 'count', years, { atLeast: 1, atMost: 100 });
}

/** Refuses ground and pipe that cannot be. */
export function demandPlace(
  { ground, response, pipeLength }: Pick<SimulationInput, 'ground' | 'response' | 'pipeLength'>,
  loads: ArrayLike<number>,
  shortest: number,
): void {
  demandSeries('ground', 'temperature', ground, { atLeast: -60, atMost: 60 });
  if (ground.length !== loads.length) {
    throw new InputError({
      code: 'impossible',
      argument: 'ground',
      value: { kind: 'count', value: ground.length },
      allowed: `as many temperatures as loads, ${String(loads.length)}`,
    });
  }
  demandTerms(response);
  demand('pipeLength', 'pipe length', pipeLength, { atLeast: shortest, atMost: 1e9 });
}

/** Refuses to look for a year that repeats where none does. */
export function demandRepeating(response: SimulationInput['response'], years: number | undefined): void {
  if (years === undefined && response.steadyRise === undefined) {
    throw new InputError({
      code: 'missing',
      argument: 'years',
      value: undefined,
      allowed: 'a number of years',
      hint: 'below a sealed surface the ground warms or cools for ever, and no year repeats',
    });
  }
}

/** Refuses a unit in the wrong mode, and courses that are not one number for each load. */
function demandUnits(duty: Extract<SimulationInput['duty'], { from: 'building' }>): void {
  const { heating, cooling, supplyTemperatures, hotWater, loads } = duty;
  if (heating !== undefined) demandUnit('duty.heating', heating, 'heating');
  if (cooling !== undefined) demandUnit('duty.cooling', cooling, 'cooling');
  if (supplyTemperatures !== undefined) demandBeside('duty.supplyTemperatures', 'temperature', supplyTemperatures, SUPPLIED, loads);
  if (hotWater === undefined) return;
  demandObject('duty.hotWater', hotWater);
  demandBeside('duty.hotWater.loads', 'power', hotWater.loads, { atLeast: 0, atMost: 1e9 }, loads);
  demandUnit('duty.hotWater.heating', hotWater.heating, 'heating');
  if ('levels' in hotWater.heating) {
    const allowed = 'one map: hot water is made at full output';
    throw new InputError({ code: 'impossible', argument: 'duty.hotWater.heating', value: 'several levels', allowed });
  }
  if (hotWater.supplyTemperature !== undefined) demand('duty.hotWater.supplyTemperature', 'temperature', hotWater.supplyTemperature, SUPPLIED);
}

const SUPPLIED = { atLeast: -50, atMost: 150 } as const;

function demandUnit(argument: string, unit: Pick<UnitModel, 'mode'>, mode: UnitModel['mode']): void {
  demandObject(argument, unit);
  demandChoice(`${argument}.mode`, unit.mode, [mode]);
}

function demandBeside(
  argument: string,
  kind: TaggedQuantity['kind'],
  series: ArrayLike<number>,
  range: { readonly atLeast: number; readonly atMost: number },
  loads: ArrayLike<number>,
): void {
  demandSeries(argument, kind, series, range);
  if (series.length === loads.length) return;
  const allowed = `as many as loads, ${String(loads.length)}`;
  throw new InputError({ code: 'impossible', argument, value: { kind: 'count', value: series.length }, allowed });
}

/** Refuses a response that is none. */
function demandTerms(response: SimulationInput['response']): void {
  demandObject('response', response);
  const { terms, steadyRise, wallCondition } = response;
  locate('response', () => {
    demandCount('terms', terms, 1, 100);
    terms.forEach((term, index) => {
      demandObject(`terms.${String(index)}`, term);
      demand(`terms.${String(index)}.timeConstant`, 'time', term.timeConstant, { above: 0, atMost: 1e15 });
      demand(`terms.${String(index)}.rise`, 'pipe resistance', term.rise, { atLeast: 0, atMost: 1000 });
    });
    if (steadyRise !== undefined) demand('steadyRise', 'pipe resistance', steadyRise, { atLeast: 0, atMost: 1000 });
    if (wallCondition !== undefined) demandChoice('wallCondition', wallCondition, ['equal flux', 'equal temperature']);
  });
}

/** Refuses a course of numbers that is too short or long, or has one out of range. */
export function demandSeries(
  argument: string,
  kind: TaggedQuantity['kind'],
  series: ArrayLike<number>,
  range: { readonly atLeast: number; readonly atMost: number },
): void {
  if (!Array.isArray(series)) demandObject(argument, series);
  demand(`${argument}.length`, 'count', series.length, { atLeast: 2, atMost: MOST_STEPS });
  for (let index = 0; index < series.length; index += 1) {
    const value = series[index] ?? Number.NaN;
    // Naming the place of every number of a year would cost more than the year itself.
    if (!(value >= range.atLeast && value <= range.atMost)) demand(`${argument}.${String(index)}`, kind, value, range);
  }
}
