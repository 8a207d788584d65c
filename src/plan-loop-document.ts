import {
  type DocumentCodec,
  inputDocument,
  type InputDocument,
  type Json,
  planDocument,
  type PlanDocument,
  type UnitSystem,
} from './document/index.js';
import { demandChoice, InputError } from './errors/index.js';
import type { Finding } from './findings/index.js';
import { type Assumption, type LoopPlan, planLoop as planLoopInSi } from './plan/index.js';

/** The remarks of a plan in somebody's language. */
export interface PlanWords {
  /** What a finding says, in the units of the reader. */
  readonly finding: (finding: Finding, units: UnitSystem) => string;
  /** What an assumption says, in the units of the reader. */
  readonly assumption: (assumption: Assumption, units: UnitSystem) => string;
}

/** How the answer is to be written. */
export interface PlanOptions {
  /** Unit system of the answer; input is read in any unit. */
  readonly units: UnitSystem;
  /** Puts a message beside each finding and assumption, `english` of `loamloop/report` or your own; codes and values alone when left out. */
  readonly words?: PlanWords;
}

/** Made at the first call and kept: building the reader of a document costs more than a plan. */
const codecs: { input?: DocumentCodec<InputDocument>; plan?: DocumentCodec<PlanDocument> } = {};

/**
 * The whole job, document in and document out: from soil samples, climate, house and rating points to a buildable loop.
 *
 * @param document - an input document as parsed JSON; quantities are texts such as `"600 ft"` or `{ "value": 600, "unit": "ft" }`
 * @param options - unit system and words of the answer
 * @returns a plan document as JSON: quantities as texts that read back as the same double, findings by code and values
 * @throws InputError that points at the first fault, with the value as it was written; or names `units` when no unit system is given
 * @example
 * ```ts @import.meta.vitest
 * const { demoDocument } = await import('./demo.data.js');
 * const { planDocument } = await import('./document/index.js');
 * const plan = planDocument().read(planLoop(demoDocument, { units: 'us' }));
 * expect(plan.governing).toBe('heating');
 * const { english } = await import('./report/index.js');
 * const told = planDocument().read(planLoop(demoDocument, { units: 'us', words: english }));
 * expect(told.findings[0]?.message).toContain('ft');
 * expect(() => planLoop({ ...demoDocument, fluid: 'tea' }, { units: 'us' })).toThrow('fluid: tea is not allowed');
 * ```
 */
export function planLoop(document: unknown, options: PlanOptions): Json {
  // Asked without options, as plain JavaScript can, the refusal names the choice that is missing.
  const units = options?.units;
  demandChoice('units', units, ['metric', 'us']);
  const input = (codecs.input ??= inputDocument());
  const output = (codecs.plan ??= planDocument());
  return output.write(asDocument(computed(input, document), options), units);
}

function computed(input: DocumentCodec<InputDocument>, document: unknown): LoopPlan {
  const { format: _, ...job } = input.read(document);
  try {
    return planLoopInSi(job);
  } catch (error) {
    throw error instanceof InputError ? input.explain(error, document) : error;
  }
}

function asDocument({ findings, assumptions, ...plan }: LoopPlan, { units, words }: PlanOptions): PlanDocument {
  return {
    format: 'loamloop-plan-1',
    units,
    ...plan,
    findings: findings.map((finding) => ({ ...finding, ...(words && { message: words.finding(finding, units) }) })),
    assumptions: assumptions.map((assumption) => ({ ...assumption, ...(words && { message: words.assumption(assumption, units) }) })),
  };
}
