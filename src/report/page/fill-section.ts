import type { PlanSettling, SettlingResult } from '../../plan/index.js';
import { entry, paragraph, type Write } from './layout.js';
import { marginText, reachedText } from './reached.js';

function fluidEntries({ fluidOfYear, binding, exactLength }: SettlingResult, write: Write): string[] {
  const { coldestEntering, warmestEntering } = fluidOfYear;
  const fluid = [
    coldestEntering && `coldest fluid enters at ${reachedText(coldestEntering, write)}`,
    warmestEntering && `warmest at ${reachedText(warmestEntering, write)}`,
  ].filter((text) => text !== undefined);
  return [
    entry('', fluid.join(', ')),
    ...(binding === undefined || exactLength === undefined
      ? []
      : [entry('', `${marginText(binding.limitMargin, write)} its limits; ${write('pipe length', exactLength)} of pipe would just keep them`)]),
  ];
}

function stateEntry(label: string, { dryDensity, conductivity, addedResistance }: SettlingResult, write: Write): string {
  const change = addedResistance < 0 ? 'less' : 'more';
  return entry(
    label,
    `${write('density', dryDensity)} dry, ${write('conductivity', conductivity)}; ${write('pipe resistance', Math.abs(addedResistance))} ${change} between pipe and ground than native soil has`,
  );
}

/** The loop while its fill is loose and once it has settled. */
export function fillSection({ trenchDepth, followedLength, firstWinter, settled }: PlanSettling, write: Write): string[] {
  return [
    entry('Followed', `${write('pipe length', followedLength)} of pipe in trenches ${write('length', trenchDepth)} deep`),
    stateEntry('First winter, loose', firstWinter, write),
    ...fluidEntries(firstWinter, write),
    stateEntry('Settled, every year', settled, write),
    ...fluidEntries(settled, write),
    paragraph(
      'The loop above was found for native soil; these figures are for soil dug out and put back. How loose it lies is custom, not measurement: fill in lifts, break clods, tamp or wet it.',
    ),
  ];
}
