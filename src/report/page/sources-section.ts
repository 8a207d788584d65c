import type { LoopPlan } from '../../plan/index.js';
import { REFERENCES, type Reference } from '../../references/index.js';
import { paragraph } from './layout.js';

const SEEN: Readonly<Record<Reference['seen'], string>> = {
  original: 'seen in the original',
  quoted: 'as quoted elsewhere',
  'from memory': 'recalled, not read again',
};

/** What the numbers rest on, and whether the works themselves were read. */
export function sourcesSection({ sources }: LoopPlan): string[] {
  return sources.map((source) => {
    if (source === 'common practice') return paragraph('Common practice of the trade, without a work to name.');
    const { cite, seen } = REFERENCES[source];
    return paragraph(`${cite} (${SEEN[seen]})`);
  });
}
