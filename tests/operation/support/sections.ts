import { exponentialResponse, onePipe } from '../../../src/ground/index.js';
import type { LoopSection, SectionsInput, SimulatedYear } from '../../../src/operation/index.js';
import { diameterMillimetres, metres, type PipeLength, pipeMetres } from '../../../src/units/index.js';
import { soilOf } from '../../ground/support.js';
import { knownFilm } from './levels.js';
import { house, response, wave } from './plant.js';

/** The loop of the house, or a part of it, as a section. */
export const clay = (pipe: number = house.pipeLength): LoopSection => ({
  pipeLength: pipeMetres(pipe),
  ground: house.ground,
  response,
  resistanceAt: knownFilm,
});

/** Single pipes less deep in drier ground. */
export const sand = (pipe: number): LoopSection => ({
  pipeLength: pipeMetres(pipe),
  ground: wave(9.4, 7, 50),
  response: exponentialResponse({
    layout: onePipe({ depth: metres(1.2), trenches: 3, trenchSpacing: metres(3) }),
    pipe: { outsideDiameter: diameterMillimetres(32) },
    soil: soilOf(0.8, 5e-7),
  }),
  resistanceAt: knownFilm,
});

const { step, duty, heatCapacityRate } = house;
/** The house on sections. */
export const onSections = (sections: readonly LoopSection[], more: Partial<SectionsInput> = {}): SectionsInput => ({
  step,
  duty,
  heatCapacityRate,
  sections,
  ...more,
});

/** The extremes of a year. */
export const extremes = (year: SimulatedYear): readonly (number | undefined)[] => [
  year.coldestEntering?.temperature,
  year.coldestLeaving?.temperature,
  year.warmestEntering?.temperature,
  year.warmestLeaving?.temperature,
];

/** A length that is given as a number. */
export const lengthOf = ({ pipeLength }: LoopSection): PipeLength => pipeLength;
