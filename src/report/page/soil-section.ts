import type { LoopPlan } from '../../plan/index.js';
import type { Band } from '../../states/index.js';
import { entry, type Write } from './layout.js';

/** Conductivity under which heat moves poorly, and over which it moves well [W/(m.K)]; the trade's classes, with the band around them. */
const POOR = 0.9;
const GOOD = 1.3;

const verdict = ({ estimate }: Band<'conductivity'>): string => (estimate < POOR ? 'poor' : estimate > GOOD ? 'good' : 'fair');

const band = ({ low, estimate, high, coverage }: Band<'conductivity'>, write: Write): string => {
  const number = (value: number): string => write('conductivity', value).split(' ')[0] ?? '';
  return `${write('conductivity', estimate)}, ${write('fraction', coverage)} sure between ${number(low)} and ${number(high)}`;
};

/** What the soil is and how sure that is. */
export function soilSection({ soil }: LoopPlan, write: Write): string[] {
  return [
    ...soil.layers.map(({ top, bottom, properties: { conductivity } }) =>
      entry(`${write('length', top)} to ${write('length', bottom)}`, band(conductivity, write)),
    ),
    entry('As the pipes see it', `${band(soil.conductivity, write)}: ${verdict(soil.conductivity)}`),
    entry('Heat capacity', `${write('heat capacity', soil.effective.heatCapacity)}; diffusivity ${write('diffusivity', soil.effective.diffusivity)}`),
  ];
}
