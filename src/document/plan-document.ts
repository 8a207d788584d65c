import { type Finding, findingShapes } from '../findings/index.js';
import { type Assumption, type LoopPlan, loopPlanShape, type PlanRemarks } from '../plan/index.js';
import type { ShapeNode } from '../units/index.js';
import { codecOfNode, type DocumentCodec } from './codec.js';
import type { UnitSystem } from './exact.js';

/** A plan as a document: the numbers as text in one unit system, the remarks with a text for people where one was asked for. */
export interface PlanDocument extends Omit<LoopPlan, PlanRemarks> {
  /** Name and version of the format. */
  readonly format: 'loamloop-plan-1';
  /** Unit system of the document. */
  readonly units: UnitSystem;
  /** What to look at. */
  readonly findings: readonly (Finding & {
    /** Text for people in the units of the document. */
    readonly message?: string;
  })[];
  /** What was taken for granted. */
  readonly assumptions: readonly (Assumption & {
    /** Text for people in the units of the document. */
    readonly message?: string;
  })[];
  /** Safety notices that the job calls for. */
  readonly notices: LoopPlan['notices'];
  /** The sources the numbers rest on. */
  readonly sources: LoopPlan['sources'];
}

/** Shape of a finding in a document: its values by code, with its text where one was made. */
const findingNode: ShapeNode = {
  by: 'code',
  oneOf: Object.fromEntries(
    Object.entries<ShapeNode>(findingShapes).map(([code, values]) => [
      code,
      { level: ['note', 'warning', 'stop'], message: { optional: 'text' }, values, source: 'text' },
    ]),
  ),
};

/** Shape of {@link PlanDocument}. */
export const planDocumentNode: ShapeNode = {
  format: ['loamloop-plan-1'],
  units: ['metric', 'us'],
  ...loopPlanShape,
  findings: { list: findingNode },
  assumptions: { list: { code: 'text', assumed: 'tagged', message: { optional: 'text' }, source: 'text' } },
  notices: { list: { code: 'text', situation: 'text', text: 'text', source: 'text' } },
  sources: { list: 'text' },
};

/**
 * The reader and writer of plan documents.
 *
 * @returns a codec; made anew at each call, so keep it for many documents
 * @example
 * ```ts @import.meta.vitest
 * expect(planDocument().kindAt('/loop/trench')).toBe('trench length');
 * ```
 */
export function planDocument(): DocumentCodec<PlanDocument> {
  return codecOfNode<PlanDocument>(planDocumentNode);
}
