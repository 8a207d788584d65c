import type { BindingLimit } from '../../operation/index.js';
import type { LoopPlan } from '../../plan/index.js';
import { entry, type Write } from './layout.js';
import { isEnough } from './loop-section.js';
import { marginText, reachedText } from './reached.js';

const LIMITS: Readonly<Record<BindingLimit['limit'], string>> = {
  lowestEntering: 'the lowest entering fluid',
  lowestLeaving: 'the lowest leaving fluid',
  highestEntering: 'the highest entering fluid',
};

function bindingText({ limit, limitMargin }: BindingLimit, write: Write): string {
  return `${marginText(limitMargin, write)} ${LIMITS[limit]}`;
}

/** What the fluid does through the year, and what another length would have brought. */
export function hoursSection(plan: LoopPlan, write: Write): string[] {
  const { byHours, loop } = plan;
  const { weather, yearOne, lastYear, binding, smallerBinding, factors, followedLength, exactLength, regret } = byHours;
  const { coldSpell, hotSpell } = weather;
  const spells = [
    coldSpell && `a cold spell from ${write('day of year', coldSpell.day)}`,
    hotSpell && `a hot spell from ${write('day of year', hotSpell.day)}`,
  ];
  const added = spells.filter((spell) => spell !== undefined).join(' and ');
  return [
    entry(
      'Weather',
      `${plan.designWinter === undefined && plan.designSummer === undefined ? 'a usual year' : 'the year designed for'} in hours, ${write('temperature', weather.coldestOutdoor)} to ${write('temperature', weather.hottestOutdoor)}${added === '' ? '' : `, with ${added}`}`,
    ),
    ...(followedLength === loop.circuits.activePipe
      ? []
      : [entry('Followed', `${write('pipe length', followedLength)}, since with what fits the unit would stop long before the end of winter`)]),
    ...(lastYear.coldestEntering === undefined
      ? []
      : [
          entry(
            'Coldest fluid',
            `enters at ${reachedText(lastYear.coldestEntering, write)}, leaves at ${reachedText(lastYear.coldestLeaving, write)}`,
          ),
          entry('', `in the first year it enters at ${reachedText(yearOne.coldestEntering, write)}`),
        ]),
    ...(lastYear.warmestEntering === undefined ? [] : [entry('Warmest fluid', `enters at ${reachedText(lastYear.warmestEntering, write)}`)]),
    entry('Nearest limit', `${bindingText(binding, write)}, at the end of the hour; ${write('pipe length', exactLength)} of pipe would just keep it`),
    ...(smallerBinding === undefined || !isEnough(plan) ? [] : [entry('One size smaller', bindingText(smallerBinding, write))]),
    ...(factors === undefined
      ? []
      : [
          entry(
            'Beside the handbook',
            `${write('ratio', factors.ratioToHandbook)} of its length: heat ${write('ratio', factors.heatFactor)} × margin ${write('ratio', factors.marginFactor)} × film and ends ${write('ratio', factors.filmFactor)} × ground ${write('ratio', factors.groundFactor)}`,
          ),
        ]),
    ...regret.map(({ lengthRatio, pipe, coldestFluid, warmestFluid, limitMargin }, index) =>
      entry(
        index === 0 ? 'Other lengths' : '',
        `${write('pipe length', pipe)} (${(100 * lengthRatio).toFixed(0)} %): ${[
          coldestFluid === undefined ? [] : `coldest ${write('temperature', coldestFluid)}`,
          warmestFluid === undefined ? [] : `warmest ${write('temperature', warmestFluid)}`,
        ]
          .flat()
          .join(', ')}; ${marginText(limitMargin, write)} its limits`,
      ),
    ),
  ];
}
