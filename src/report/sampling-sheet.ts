import { noticesFor } from '../safety/index.js';
import type { SamplingPlan } from '../soil/index.js';
import { count, entry, paragraph, section } from './page/layout.js';
import { show, type UnitSystem } from './show.js';
import { DRYING_RULE_WORDS, PIT_NOTE_WORDS, PURPOSE_WORDS, SAMPLING_RULE_WORDS, TOOL_WORDS } from './text/soil-words.js';

/**
 * A sheet to take along to the pits: safety first, where to dig, which depths to sample, what to write down, how to dry.
 *
 * @param plan - a plan of `samplingPlan`
 * @param system - metric or US units
 * @returns lines of at most 96 characters
 * @throws InputError for another system, or a plan with a number that is not finite
 * @example
 * ```ts @import.meta.vitest
 * const { samplingPlan } = await import('../soil/index.js');
 * const { metres, trenchMetres } = await import('../units/index.js');
 * const sheet = samplingSheet(samplingPlan({ pipeDepths: [metres(1.5)], trenches: 2, trenchLength: trenchMetres(40) }), 'metric');
 * expect(sheet).toContain('Never climb into a test pit');
 * ```
 */
export function samplingSheet(plan: SamplingPlan, system: UnitSystem): string {
  const write = show(system);
  const { drying } = plan;
  return [
    section(
      'Before anything else',
      noticesFor(plan.situations).map(({ text }) => paragraph(text)),
    ),
    section('Where to dig', [
      ...plan.pits.map(({ alongTrench, acrossField }, index) =>
        entry(
          `Pit ${String(index + 1)}`,
          `${write('trench length', alongTrench)} along the trenches, ${write('length', acrossField)} across from the first one`,
        ),
      ),
      entry('Depth', write('length', plan.pitDepth)),
    ]),
    section('What to take from each pit', [
      ...plan.depths.map(({ depth, purpose, tool }) => entry(write('length', depth), `${PURPOSE_WORDS[purpose]}; ${TOOL_WORDS[tool]}`)),
      entry('Each bag', `at least ${write('mass', plan.sampleMass)} of moist soil`),
      entry('In all', count(plan.sampleCount, 'bag')),
    ]),
    section(
      'How to go about it',
      plan.rules.map((rule) => paragraph(SAMPLING_RULE_WORDS[rule])),
    ),
    section(
      'What to write down at each pit',
      plan.notes.map((note) => paragraph(PIT_NOTE_WORDS[note])),
    ),
    section('How to dry', [
      entry('Oven', `${write('temperature', drying.ovenTemperature)}; gypsum and peat ${write('temperature', drying.gentleTemperature)}`),
      entry('First dry weighing', `after ${write('time', drying.shortestDrying)}`),
      entry('Dry when', `${write('time', drying.reweighAfter)} more take less than ${(100 * drying.lostLimit).toFixed(1)} % of the dry soil`),
      ...drying.rules.map((rule) => paragraph(DRYING_RULE_WORDS[rule])),
    ]),
  ].join('\n\n');
}
