import type { Finding, FindingCode, FindingOf, FindingValues } from '../findings/index.js';
import { type UnitSystem, show } from './show.js';
import { buildingFindingTexts } from './text/building.js';
import { circuitFindingTexts } from './text/circuit.js';
import { climateFindingTexts } from './text/climate.js';
import { costFindingTexts } from './text/cost.js';
import type { FindingTexts } from './text/finding-texts.js';
import { fluidFindingTexts } from './text/fluid.js';
import { groundFindingTexts } from './text/ground.js';
import { heatPumpFindingTexts } from './text/heat-pump.js';
import { operationFindingTexts } from './text/operation.js';
import { pipeFindingTexts } from './text/pipe.js';
import { planFindingTexts } from './text/plan.js';
import { soilFindingTexts } from './text/soil.js';

const TEXTS: FindingTexts<FindingValues> = {
  ...soilFindingTexts,
  ...climateFindingTexts,
  ...fluidFindingTexts,
  ...pipeFindingTexts,
  ...groundFindingTexts,
  ...buildingFindingTexts,
  ...heatPumpFindingTexts,
  ...operationFindingTexts,
  ...circuitFindingTexts,
  ...planFindingTexts,
  ...costFindingTexts,
};

const textOf = <C extends FindingCode>({ code, values }: FindingOf<C>, system: UnitSystem): string => TEXTS[code](values, show(system));

/**
 * What a finding says, for a person, in the units he reads.
 *
 * @param finding - a finding of any room
 * @param system - metric or US units
 * @returns one or two sentences
 * @example
 * ```ts @import.meta.vitest
 * const { pipeMetres } = await import('../units/index.js');
 * const values = { trenches: 4, laid: pipeMetres(400), needed: pipeMetres(480) };
 * const finding = { code: 'field-too-small', level: 'stop', source: 'common practice', values } as const;
 * expect(describeFinding(finding, 'metric')).toContain('480 m');
 * expect(describeFinding(finding, 'us')).toContain('1575 ft');
 * ```
 */
export function describeFinding(finding: Finding, system: UnitSystem): string {
  return textOf(finding, system);
}
