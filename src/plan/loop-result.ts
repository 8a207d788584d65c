import type { LayoutName } from '../ground/index.js';
import { plausibleLength, type PlausibleLengthResult, type RuleLayout } from '../operation/index.js';
import type { Band } from '../states/index.js';
import type { Area, HeatPerPipeLength, LengthPerPower, Power, TrenchLength } from '../units/index.js';
import type { LoopPlan, TrialResult } from './loop-plan.js';
import type { ModeResults } from './mode-results.js';
import type { Solved, Trial } from './solve.js';

/**
 * The loop to build as the plan reports it.
 *
 * @param solved - the loop chosen and the trials around it
 * @param needed - pipe needed, with its band
 * @param results - the modes; the governing one gives the figures per length
 * @returns lengths, figures, and the loops beside it
 */
export function loopOf({ chosen, others, nextSmaller }: Solved, needed: Band<'pipe length'>, results: ModeResults): Omit<LoopPlan['loop'], 'usual'> {
  const { option, layout } = chosen;
  const groundHeat = results.modes[results.governing]?.unit.performance.groundHeat ?? 0;
  return {
    layout,
    circuits: option,
    trench: (option.trenches * option.trenchLength) as TrenchLength,
    needed,
    heatPerPipeLength: (groundHeat / option.activePipe) as HeatPerPipeLength,
    pipePerGroundHeat: (option.activePipe / groundHeat) as LengthPerPower,
    spare: option.spareShare,
    land: (option.trenches * layout.trenchSpacing * (option.trenchLength + layout.trenchSpacing)) as Area,
    others: others.map(trialResult),
    ...(nextSmaller === undefined ? {} : { nextSmaller: trialResult(nextSmaller) }),
  };
}

/** The rule of thumb that fits each way to lay pipe. */
const RULE_OF: Readonly<Record<LayoutName, RuleLayout>> = {
  'one-pipe': 'one-pipe',
  'two-pipe-stacked': 'two-pipe',
  'two-pipe-side-by-side': 'two-pipe',
  'four-pipe': 'four-pipe',
  'six-pipe': 'straight',
  custom: 'straight',
};

/**
 * The loop beside what is usual for pipe laid like it, per capacity in cooling, or in heating where the unit only heats.
 *
 * @param chosen - the loop chosen
 * @param results - the modes
 * @returns the band and a finding where the loop lies outside
 */
export function besideUsual({ option, layout }: Trial, { modes }: ModeResults): PlausibleLengthResult {
  const nominalCapacity = (modes.cooling ?? modes.heating)?.unit.performance.capacity ?? (1 as Power);
  return plausibleLength({ layout: RULE_OF[layout.name], pipe: option.activePipe, nominalCapacity });
}

function trialResult({ option, asked, enough }: Trial): TrialResult {
  const { trenches, trenchLength, coilLength, activePipe } = option;
  return { trenches, trenchLength, coilLength, pipe: activePipe, needed: asked, enough };
}
