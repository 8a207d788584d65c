import { demand, demandChoice, demandCount, demandObject, InputError, locate } from '../errors/index.js';
import type { FlowSplitInput } from './flow-split.js';
import { demandHydraulic, demandRated } from './rated-drop.js';
import { type PipeRun, runLoss } from './run-loss.js';

/** Refuses what cannot be, and fills in the return header. */
export function demandSplit(input: FlowSplitInput): { readonly supply: readonly PipeRun[]; readonly back: readonly PipeRun[] } {
  const { arrangement, circuits, supply, flow, fluid, roughness } = input;
  demandChoice('arrangement', arrangement, ['direct return', 'reverse return', 'common manifold']);
  demandCount('circuits', circuits, 1, 100);
  demand('flow', 'flow', flow, { atLeast: 1e-6, atMost: 1 });
  demandHydraulic('fluid', fluid);
  if (roughness !== undefined) demand('roughness', 'length', roughness, { atLeast: 0, atMost: 0.001 });
  const manifold = arrangement === 'common manifold';
  const sections = manifold ? 0 : circuits.length - 1;
  const listed = (argument: string, runs: readonly PipeRun[] | undefined): readonly PipeRun[] => {
    const given = runs === undefined ? [] : runs;
    if (runs === undefined && sections > 0) throw unsectioned(argument, sections);
    demandCount(argument, given, sections, sections);
    return given;
  };
  const header = { supply: listed('supply', supply), back: listed('return', input.return === undefined ? supply : input.return) };
  const named = { circuits, supply: header.supply, return: input.return ?? [], ...(input.header === undefined ? {} : { header: [input.header] }) };
  for (const [list, runs] of Object.entries(named)) {
    for (const [index, run] of runs.entries()) {
      const path = list === 'header' ? list : `${list}.${String(index)}`;
      demandObject(path, run);
      locate(path, () => runLoss({ run, fluid, flow, roughness }));
    }
  }
  for (const [index, { valve, blocked }] of circuits.entries()) {
    if (valve !== undefined) demandRated(`circuits.${String(index)}.valve`, valve);
    if (blocked === undefined || typeof blocked === 'boolean') continue;
    throw new InputError({ code: 'wrong-type', argument: `circuits.${String(index)}.blocked`, value: String(blocked), allowed: 'true or false' });
  }
  if (circuits.some(({ blocked = false }) => !blocked)) return header;
  throw new InputError({ code: 'impossible', argument: 'circuits', value: 'all blocked', allowed: 'at least one open circuit' });
}

const unsectioned = (argument: string, sections: number): InputError =>
  new InputError({
    code: 'missing',
    argument,
    value: undefined,
    allowed: `the ${sections === 1 ? 'section' : `${String(sections)} sections`} of header between the circuits, in order`,
    hint: 'headers so short that they drop nothing are a `common manifold`',
  });
