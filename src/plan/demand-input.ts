import { planCircuits } from '../circuit/index.js';
import { demand, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import { layoutFrom } from '../ground/index.js';
import type { HandbookState, SoilSample } from '../soil/index.js';
import type { PipeLength, Ratio } from '../units/index.js';
import { demandHardSeason } from './design-seasons.js';
import type { LoopInput } from './loop-input.js';
import { demandPump } from './plant-input.js';

/** The parts that must be there before anything in them is looked at. */
const PARTS = ['building', 'heatPump', 'climate', 'soil', 'field', 'pipe', 'header', 'circuits'] as const;

/** Control characters, line breaks, marks that turn the writing direction, halves of characters: they would break or forge the page. */
const UNPRINTABLE = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]/gu;

/** States of the handbooks with ice in the soil. */
const FROZEN_STATES: readonly HandbookState[] = ['natural, frozen', 'saturated, frozen'];

/** More than any house, and more than a hundred trenches carry [W]. */
const MOST_LOAD = 1e7;

/**
 * Refuses what no room below would: the parts of the input that only the whole job has.
 *
 * @param input - the whole input
 * @throws InputError with the place in the input
 */
export function demandLoopInput(input: LoopInput): void {
  for (const part of PARTS) demandObject(part, input[part]);
  const { name, building, field, soil, circuits, heatPump, peakTimes = {} } = input;
  if (typeof name !== 'string' || name.trim() === '') {
    throw new InputError({ code: name === undefined ? 'missing' : 'wrong-type', argument: 'name', value: String(name), allowed: 'a text' });
  }
  const printable = name.replaceAll(UNPRINTABLE, '\uFFFD');
  if (printable !== name) {
    throw new InputError({ code: 'impossible', argument: 'name', value: printable, allowed: 'a text of one line without control characters' });
  }
  for (const mode of ['heating', 'cooling'] as const) {
    const designLoad = building[mode]?.designLoad;
    if (designLoad !== undefined) demand(`building.${mode}.designLoad`, 'power', designLoad, { above: 0, atMost: MOST_LOAD });
  }
  demand('field.longestTrench', 'trench length', field.longestTrench, { atLeast: 1, atMost: 10_000 });
  demand('field.mostTrenches', 'count', field.mostTrenches, { atLeast: 1, atMost: 100 });
  demandHardSeason('designWinter', input.designWinter);
  demandHardSeason('designSummer', input.designSummer);
  demandPump(input.pump);
  demandObject('peakTimes', peakTimes);
  for (const mode of ['heating', 'cooling'] as const) {
    const time = peakTimes[mode];
    if (time !== undefined) demand(`peakTimes.${mode}`, 'time', time, { atLeast: 3600, atMost: 10 * 86_400 });
  }
  demandCount('soil.layers', soil.layers, 1, 50);
  soil.layers.forEach((layer, index) => {
    const path = `soil.layers.${String(index)}`;
    demandObject(path, layer);
    const { top, bottom } = layer;
    demandObject(`${path}.sample`, layer.sample);
    locate(`${path}.sample`, () => demandThawed(layer.sample));
    demand(`${path}.top`, 'length', top, { atLeast: 0, atMost: 20 });
    demand(`${path}.bottom`, 'length', bottom, { above: top, atMost: 20 }, 'layers run from the top down');
  });
  demandObject('field.layout', field.layout);
  const { pipesPerTrench } = locate('field.layout', () => layoutFrom(field.layout, 1));
  demand('heatPump.sourceFlow', 'flow', heatPump.sourceFlow, { atLeast: 1e-6, atMost: 1 });
  locate('circuits', () =>
    planCircuits({ ...circuits, pipeLength: 1 as PipeLength, flow: heatPump.sourceFlow, pipePerTrench: pipesPerTrench as Ratio }),
  );
  if (circuits.distanceToHouse !== undefined) demand('circuits.distanceToHouse', 'length', circuits.distanceToHouse, { atLeast: 0, atMost: 1000 });
}

/** Soil is frozen for part of the year at most, and the plan takes no credit for ice. */
function demandThawed(sample: SoilSample): void {
  if (sample.from !== 'handbook' || !FROZEN_STATES.includes(sample.state)) return;
  const hint = 'the plan counts on no ice; name the state in which the soil is thawed';
  throw new InputError({ code: 'impossible', argument: 'state', value: sample.state, allowed: 'a state without ice', hint });
}
