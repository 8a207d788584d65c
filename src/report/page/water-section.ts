import type { LoopPlan } from '../../plan/index.js';
import { entry, type Write } from './layout.js';

const NAMES: Readonly<Record<LoopPlan['fluid']['fluid'], string>> = { water: 'water', 'propylene-glycol': 'propylene glycol' };

/** What to fill, how it flows, and what the pump has to do. */
export function waterSection({ fluid, hydraulics }: LoopPlan, write: Write): string[] {
  const { charge } = fluid;
  const mixture =
    fluid.fluid === 'water'
      ? [
          entry(
            'Fluid',
            `${write('volume', hydraulics.loopVolume)} of water, no antifreeze: it freezes at ${write('temperature', fluid.freezingPoint)}`,
          ),
        ]
      : [
          entry(
            'Fluid',
            `${NAMES[fluid.fluid]}, ${write('volume fraction', fluid.volumeFraction)} by volume; freezes at ${write('temperature', fluid.freezingPoint)}${fluid.protectTo === undefined ? '' : ` (asked for: ${write('temperature', fluid.protectTo)})`}`,
          ),
          entry(
            'Fill',
            `${write('volume', charge.concentrateVolume)} of antifreeze and ${write('volume', charge.waterVolume)} of water for about ${write('volume', hydraulics.loopVolume)} in the pipes (the mixture shrinks); meter what really goes in`,
          ),
        ];
  return [
    ...mixture,
    entry(
      'Flow',
      `${write('flow', hydraulics.circuitFlow)} in each circuit, Reynolds number ${String(Math.round(hydraulics.circuit.reynolds))} with the fluid at ${write('temperature', hydraulics.fluidTemperature)}`,
    ),
    entry(
      'Pump',
      `${write('head', hydraulics.head)} (${write('pressure', hydraulics.pressureDrop)}); the heat pump’s own water side comes on top; ${write('electric power', hydraulics.hydraulicPower)} into the fluid`,
    ),
  ];
}
