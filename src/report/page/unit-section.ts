import type { EmittersAtDesign, LoopPlan, ModeResult } from '../../plan/index.js';
import { coveredText, nearlyAll } from '../covered.js';
import { monthName } from '../month-day.js';
import { entry, type Write } from './layout.js';

function modeEntries(label: string, { unit, run }: ModeResult, write: Write): string[] {
  const { fluid, performance } = unit;
  return [
    entry(
      label,
      `fluid enters at ${write('temperature', fluid.entering)} and leaves at ${write('temperature', fluid.leaving)} (the ${fluid.boundBy} binds); ${write('power', performance.capacity)} from ${write('electric power', performance.power)}, COP ${write('ratio', performance.cop)}`,
    ),
    entry(
      '',
      `${write('power', performance.groundHeat)} ${unit.mode === 'heating' ? 'from' : 'to'} the ground while running; runs ${write('run fraction', run.designRunFraction)} of ${monthName(run.designMonth)}`,
    ),
    entry(
      '',
      `covers ${coveredText(run.coveredShare, write)} of the year’s ${unit.mode}${nearlyAll(run.coveredShare) ? '' : `; about ${write('energy', run.unmetEnergy)} a year ${unit.mode === 'heating' ? 'is left to auxiliary heat' : 'stays uncooled'}`}`,
    ),
  ];
}

function emitterEntry({ requiredSupply, availableSupply, metShare }: EmittersAtDesign, write: Write): string {
  const met = metShare < 1 ? `, which gives ${write('fraction', metShare)} of the heat` : '';
  return entry(
    'Emitters',
    `need water of ${write('temperature', requiredSupply)} at design; the unit supplies ${write('temperature', availableSupply)}${met}`,
  );
}

/** The unit at the fluid temperatures the loop is made for. */
export function unitSection({ heating, cooling, emitters }: LoopPlan, write: Write): string[] {
  return [
    ...(heating === undefined ? [] : modeEntries('Heating', heating, write)),
    ...(cooling === undefined ? [] : modeEntries('Cooling', cooling, write)),
    ...(emitters === undefined ? [] : [emitterEntry(emitters, write)]),
  ];
}
