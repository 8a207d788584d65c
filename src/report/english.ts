import { describeAssumption } from './describe-assumption.js';
import { describeFinding } from './describe-finding.js';

/** The remarks of a plan in English, for the documents of the whole job. */
export const english: { readonly finding: typeof describeFinding; readonly assumption: typeof describeAssumption } = {
  finding: describeFinding,
  assumption: describeAssumption,
};
