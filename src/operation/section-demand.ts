import { demand, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import type { Fraction, PipeLength } from '../units/index.js';
import { demandPlace, demandRepeating, demandRun, demandSeries } from './demand-simulation.js';
import { demandStore } from './fluid-store.js';
import type { FlowedSection, LoopSection, SectionsInput } from './section-input.js';

/** Endless pipe is asked for at this length [m]. */
const LONGEST = 1e6;

/** Refuses sections that cannot be followed. */
export function demandSections(input: SectionsInput): void {
  demandRun(input);
  const { sections, duty, years } = input;
  demandCount('sections', sections, 1, 50);
  for (const [index, section] of sections.entries()) {
    const path = `sections.${String(index)}`;
    demandObject(path, section);
    const { earlierWork, fluidStore } = section;
    locate(path, () => {
      demandPlace(section, duty.loads, 0.001);
      if (fluidStore !== undefined) demandStore('fluidStore', fluidStore);
      if (earlierWork === undefined) return;
      demandObject('earlierWork', earlierWork);
      demand('earlierWork.years', 'count', earlierWork.years, { atLeast: 1, atMost: 100 });
      demandSeries('earlierWork.groundHeats', 'power', earlierWork.groundHeats, { atLeast: -1e9, atMost: 1e9 });
      if (earlierWork.groundHeats.length === duty.loads.length) return;
      const value = { kind: 'count', value: earlierWork.groundHeats.length } as const;
      throw new InputError({
        code: 'impossible',
        argument: 'earlierWork.groundHeats',
        value,
        allowed: `as many as loads, ${String(duty.loads.length)}`,
      });
    });
    demandRepeating(section.response, years);
  }
}

/** Sections with their shares of the flow. */
export function flowedSections(sections: readonly LoopSection[], flows: SectionsInput['sectionFlows']): readonly FlowedSection[] {
  const lengths = sections.map(({ pipeLength }) => pipeLength);
  const given = typeof flows === 'function' ? flows(lengths.map((length) => Math.min(length, LONGEST) as PipeLength)) : flows;
  if (given === undefined) {
    const whole = lengths.reduce((sum, length) => sum + length, 0);
    return sections.map((section) => ({ ...section, flowFraction: (section.pipeLength / whole) as Fraction }));
  }
  demandCount('sectionFlows', given, 1, 50);
  if (given.length !== sections.length) {
    const allowed = `one flow for each section, ${String(sections.length)}`;
    throw new InputError({ code: 'impossible', argument: 'sectionFlows', value: { kind: 'count', value: given.length }, allowed });
  }
  given.forEach((flow, index) => {
    demand(`sectionFlows.${String(index)}`, 'ratio', flow, { above: 0, atMost: 1e9 }, 'a section without flow is none: leave it out');
  });
  const whole = given.reduce((sum, flow) => sum + flow, 0);
  return sections.map((section, index) => ({ ...section, flowFraction: ((given[index] ?? 0) / whole) as Fraction }));
}
