import type { HardSeason, LoopPlan } from '../../plan/index.js';
import { entry, type Write } from './layout.js';

/** How warm the ground is where the pipes lie. */
export function groundSection({ ground, designWinter, designSummer }: LoopPlan, write: Write): string[] {
  const { surface, pipes } = ground;
  const hard = (label: string, season: HardSeason | undefined, than: string): string[] => {
    if (season === undefined) return [];
    const apart = write('temperature difference', season.departure);
    return [entry(label, `one in ${String(season.returnPeriod)}: three months ${apart} ${than} than usual, in the house and in the ground`)];
  };
  return [
    ...hard('Winter designed for', designWinter, 'colder'),
    ...hard('Summer designed for', designSummer, 'hotter'),
    entry(
      'At the surface',
      `${designWinter === undefined && designSummer === undefined ? '' : 'in a usual year '}${write('temperature', surface.mean)} on the mean, ${write('temperature difference', surface.amplitude)} up and down, coldest on ${write('day of year', surface.coldestDay)}`,
    ),
    entry(
      'At the pipes',
      `from ${write('temperature', pipes.lowest)} on ${write('day of year', pipes.coldestDay)} to ${write('temperature', pipes.highest)} on ${write('day of year', pipes.warmestDay)}, before the loop changes it`,
    ),
  ];
}
