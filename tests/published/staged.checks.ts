import { type PerformanceMap, performanceMap, type StagedState, stagedUnit } from '../../src/heat-pump/index.js';
import { celsius, electricKilowatts, kilowatts, ratio } from '../../src/units/index.js';
import { caseChecks, type CaseInputs } from '../support/load-cases.js';
import type { PublishedCheck } from '../support/published.js';

/** A stage with the same capacity and COP at all entering temperatures, as the case has it. */
const stage = (given: unknown): PerformanceMap => {
  const of = (name: string): number => Number(Reflect.get(Object(given), name));
  const rated = { capacity: kilowatts(of('Q_kW')), cop: ratio(of('COP')) };
  return performanceMap({ mode: 'heating', points: [-5, 15].map((entering) => ({ enteringFluid: celsius(entering), ...rated })) });
};

const twoStage = ({ load_kW, low, high }: CaseInputs): StagedState =>
  stagedUnit({ levels: [stage(low), stage(high)], between: 'stages' }).at(celsius(5), kilowatts(Number(load_kW)));

export const stagedChecks: readonly PublishedCheck[] = caseChecks('heat-pump', [
  ['L15a', 'electric input between two stages', (inputs) => electricKilowatts.of(twoStage(inputs).power)],
  ['L15b', 'COP between two stages', (inputs) => twoStage(inputs).cop ?? Number.NaN],
  ['L15c', 'ground heat between two stages over that at full speed', (inputs) => twoStage(inputs).heatFraction],
]);
