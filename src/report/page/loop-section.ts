import type { LoopPlan, TrialResult } from '../../plan/index.js';
import { count, entry, type Write } from './layout.js';

const PIPES: Readonly<Record<LoopPlan['loop']['layout']['name'], string>> = {
  'one-pipe': 'one pipe in each',
  'two-pipe-stacked': 'two pipes over one another',
  'two-pipe-side-by-side': 'two pipes side by side',
  'four-pipe': 'four pipes, two over two',
  'six-pipe': 'six pipes, three layers of two',
  custom: 'pipes as drawn',
};

const coilsOf = ({ trenches, coilLength }: TrialResult, write: Write): string =>
  `${count(trenches, 'trench')} with coils of ${write('pipe length', coilLength)}`;

/** Whether the loop chosen is as much as is needed. */
export const isEnough = ({ loop }: LoopPlan): boolean => loop.spare >= 0;

/** Whether an end of the soil's band asks for more than any pipe gives. */
const isOpen = ({ findings }: LoopPlan): boolean => findings.some(({ code }) => code === 'band-end-unreachable');

const circuitsOf = ({ circuits, coilsPerCircuit, coilLength }: LoopPlan['loop']['circuits'], write: Write): string => {
  const coils = `${count(circuits * coilsPerCircuit, 'coil')} of ${write('pipe length', coilLength)}`;
  if (coilsPerCircuit > 1) return `${coils}, ${String(coilsPerCircuit)} joined to ${circuits === 1 ? 'one circuit' : 'each circuit'}`;
  return `${coils}, ${circuits === 1 ? 'one circuit' : 'each one circuit'} without a joint in the ground`;
};

/** What to dig and lay, or how much is missing where the land does not hold enough. */
export function loopSection(plan: LoopPlan, write: Write): string[] {
  const { loop, pipe } = plan;
  const { circuits, layout, needed } = loop;
  const depths = [...new Set(layout.pipes.map(({ depth }) => depth))].sort((a, b) => a - b).map((depth) => write('length', depth));
  const size = pipe.series === 'metric' ? `${pipe.size} mm` : `${pipe.size} in ${pipe.series}`;
  return [
    entry(
      'Trenches',
      `${count(circuits.trenches, 'trench')} of ${write('trench length', circuits.trenchLength)}, ${write('length', layout.trenchSpacing)} apart, together ${write('trench length', loop.trench)}`,
    ),
    entry('Pipes', `${PIPES[layout.name]}, at ${depths.join(' and ')}`),
    entry(
      'Pipe',
      `${size} polyethylene, DR ${pipe.dimensionRatio}: ${circuitsOf(circuits, write)}; ${write('pipe length', circuits.activePipe)} in the trenches`,
    ),
    entry(
      'Needed',
      `${write('pipe length', needed.estimate)}; between ${write('pipe length', needed.low)} and ${isOpen(plan) ? 'more than any pipe gives' : write('pipe length', needed.high)} as far as the soil is uncertain (${write('fraction', needed.coverage)} band)`,
    ),
    entry(
      isEnough(plan) ? 'Spare' : 'Short by',
      `${isEnough(plan) ? `${write('fraction', loop.spare)} over the estimate` : `${write('pipe length', needed.estimate - circuits.activePipe)}, ${write('fraction', -loop.spare)} of the estimate`}; ${write('length per power', loop.pipePerGroundHeat)} of ground heat, ${write('heat per pipe length', loop.heatPerPipeLength)} of pipe while running`,
    ),
    ...loop.others.map((other) => entry('Or', `${coilsOf(other, write)}, ${write('pipe length', other.pipe)} in the trenches`)),
    ...(loop.nextSmaller === undefined || !isEnough(plan)
      ? []
      : [
          entry(
            'One size smaller',
            `${coilsOf(loop.nextSmaller, write)}, ${write('pipe length', loop.nextSmaller.pipe)} in the trenches: not enough, ${write('pipe length', loop.nextSmaller.needed)} would be needed there`,
          ),
        ]),
    entry('Land', `about ${write('area', loop.land)}`),
  ];
}
