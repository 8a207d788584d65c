import type { LoopPlan, ModeResult } from '../../plan/index.js';
import { monthName } from '../month-day.js';
import { show, showParts, type UnitSystem } from '../show.js';
import { entry } from './layout.js';

function modeEntries(label: string, { needed, resistance }: ModeResult, system: UnitSystem): string[] {
  const write = show(system);
  const { monthly, threePulse, handbookMeanFluid, handbookEnteringFluid, ratioToHandbook } = needed;
  const { spent } = monthly;
  const [months = '', peak = '', wall = ''] = showParts(system)('temperature difference', [spent.months, spent.peak, spent.pipe], monthly.margin);
  return [
    entry(
      label,
      `${write('pipe length', monthly.pipe)}; the end of ${monthName(monthly.bindingMonth)} of year ${String(monthly.bindingYear)} binds, with ${write('temperature difference', monthly.margin)} between ground and fluid`,
    ),
    entry('', `spent on the months so far ${months}, the unbroken running ${peak}, pipe and film ${wall} (${resistance.regime} flow)`),
    entry(
      '',
      `beside it: three pulses ${write('pipe length', threePulse.pipe)}; handbook ${write('pipe length', handbookMeanFluid.pipe)} with the mean fluid${handbookEnteringFluid === undefined ? '' : `, ${write('pipe length', handbookEnteringFluid.pipe)} with the entering fluid`}; plan/handbook ${write('ratio', ratioToHandbook)}`,
    ),
  ];
}

/** What asks for the pipe, and what other methods say. */
export function lengthSection({ heating, cooling, governing }: LoopPlan, system: UnitSystem): string[] {
  return [
    ...(heating === undefined ? [] : modeEntries('Heating asks for', heating, system)),
    ...(cooling === undefined ? [] : modeEntries('Cooling asks for', cooling, system)),
    entry('Governing', governing),
  ];
}
