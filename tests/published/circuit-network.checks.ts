import { type FlowSplit, type PipeRun, solveFlowNetwork, solveFlowSplit } from '../../src/circuit/index.js';
import { colebrookFrictionFactor } from '../../src/pipe/index.js';
import {
  cubicMetresPerHour,
  cubicMetresPerSecond,
  diameterMillimetres,
  kilogramsPerCubicMetre,
  litresPerSecond,
  metres,
  pascals,
  pascalSeconds,
  pipeMetres,
  ratio,
} from '../../src/units/index.js';
import { loadFixture, type FixtureRow } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const network = loadFixture('hydraulics-network');

const listOf = (row: FixtureRow, column: string): readonly number[] =>
  row
    .text(column)
    .split(';')
    .filter((cell) => cell !== '')
    .map(Number);
const runsOf = (row: FixtureRow, part: string): readonly PipeRun[] => {
  const lengths = listOf(row, `${part}_length_m`);
  return listOf(row, `${part}_ID_mm`).map((bore, index) => ({
    pipe: { insideDiameter: diameterMillimetres(bore) },
    length: pipeMetres(lengths[index] ?? Number.NaN),
  }));
};
const ARRANGEMENTS = { 'direct-return': 'direct return', 'reverse-return': 'reverse return', 'common-manifold': 'common manifold' } as const;
const splitOf = (row: FixtureRow): FlowSplit =>
  solveFlowSplit({
    arrangement: ARRANGEMENTS[row.text('topology') as keyof typeof ARRANGEMENTS],
    circuits: runsOf(row, 'circuit').map((run) => ({ ...run, fittings: ratio(row.number('circuit_K')) })),
    supply: runsOf(row, 'supply_seg'),
    return: runsOf(row, 'return_seg'),
    flow: litresPerSecond(row.number('total_flow_L_s')),
    fluid: { density: kilogramsPerCubicMetre(row.number('rho_kg_m3')), viscosity: pascalSeconds(row.number('mu_Pa_s')) },
    roughness: metres(row.number('roughness_mm') / 1000),
  });

/** Hydraulics 4.5: nodes A, B, C, D and links of drop K · q^n; the flows as printed, C to D negative. */
const DIAGONAL = [
  { link: 'AB', from: 0, to: 1, factor: 2, square: 30.20689, smooth: 29.19357 },
  { link: 'AD', from: 0, to: 3, factor: 4, square: 23.5605, smooth: 22.69402 },
  { link: 'AC', from: 0, to: 2, factor: 1, square: 46.23261, smooth: 48.11241 },
  { link: 'BC', from: 1, to: 2, factor: 3, square: 10.20689, smooth: 9.19357 },
  { link: 'DC', from: 3, to: 2, factor: 2, square: -6.4395, smooth: -7.30598 },
];
const diagonal = (power: number): ReturnType<typeof solveFlowNetwork> =>
  solveFlowNetwork({
    inflows: [100, -20, -50, -30].map((inflow) => cubicMetresPerSecond(inflow)),
    links: DIAGONAL.map(({ from, to, factor }) => ({ from, to, dropAt: (flow) => pascals(factor * flow ** power) })),
  });
const ofDiagonal = (name: 'square' | 'smooth', power: number, total: number): PublishedCheck => ({
  id: `H-NET diagonal ${String(power)}`,
  room: 'circuit',
  quantity: `flows of a network with a diagonal, drop as flow^${String(power)}, and its drop over the hundredfold`,
  unit: '1',
  source: 'Four nodes, five links, solved by Newton and by Hardy Cross',
  seen: 'computed independently',
  tolerance: { absolute: 5.001e-6, reason: 'half a unit of the last printed digit' },
  values: [
    ...DIAGONAL.map((link, index) => ({ label: link.link, expected: link[name], compute: () => diagonal(power).flows[index] ?? Number.NaN })),
    { label: '(A − C)/100', expected: total / 100, compute: () => (diagonal(power).nodeDrops[2] ?? Number.NaN) / 100 },
  ],
});

/** White, Fluid Mechanics, Example 6.18: bore [mm], length [m], roughness [mm], flow [m3/h]; all three in parallel drop 20.3 m of water. */
const WHITE = [
  { bore: 80, length: 100, roughness: 0.24, flow: 62.5 },
  { bore: 60, length: 150, roughness: 0.12, flow: 25.9 },
  { bore: 40, length: 80, roughness: 0.2, flow: 11.4 },
];
/** By Colebrook, as in the book; links of the general network, since a loop has one roughness. */
function white(total: number): { readonly flows: readonly number[]; readonly head: number } {
  const viscosity = 1.02e-6;
  const { flows, drops } = solveFlowNetwork({
    inflows: [cubicMetresPerHour(total), cubicMetresPerHour(-total)],
    links: WHITE.map(({ bore, length, roughness }) => ({
      from: 0,
      to: 1,
      dropAt: (flow) => {
        const velocity = flow / ((Math.PI / 4) * (bore / 1000) ** 2);
        const reynolds = (velocity * bore) / 1000 / viscosity;
        const state = { reynolds: ratio(reynolds), relativeRoughness: ratio(roughness / bore) };
        const factor = reynolds < 4000 ? 64 / Math.max(reynolds, 1e-9) : colebrookFrictionFactor(state);
        return pascals((factor * length * 1000 * 998 * velocity ** 2) / bore / 2);
      },
    })),
  });
  return { flows: flows.map((flow) => cubicMetresPerHour.of(flow)), head: (drops[0] ?? Number.NaN) / (998 * 9.81) };
}

export const circuitNetworkChecks: readonly PublishedCheck[] = [
  ...[0, 1, 2, 3, 4, 5].map(
    (index): PublishedCheck => ({
      id: `H-NET flow ${String(index + 1)}`,
      room: 'circuit',
      quantity: `flow of circuit ${String(index + 1)}`,
      unit: 'L/s',
      source: `${network.meta.source} (${network.meta.at})`,
      seen: network.meta.seen,
      tolerance: { absolute: 5.001e-7, reason: 'half a unit of the last printed digit' },
      values: network.rows
        .filter((row) => listOf(row, 'circuit_flow_L_s').length > index)
        .map((row) => ({
          label: row.text('case'),
          expected: listOf(row, 'circuit_flow_L_s')[index] ?? Number.NaN,
          compute: () => litresPerSecond.of(splitOf(row).circuits[index]?.flow ?? litresPerSecond(0)),
        })),
    }),
  ),
  fromFixture(network, {
    id: 'H-NET drop',
    room: 'circuit',
    quantity: 'drop of circuits and headers',
    column: 'total_dp_Pa',
    label: (row) => row.text('case'),
    compute: (row) => splitOf(row).fieldDrop,
  }),
  fromFixture(network, {
    id: 'H-NET spread',
    room: 'circuit',
    quantity: 'spread of the flows',
    column: 'spread_pct_of_mean',
    label: (row) => row.text('case'),
    compute: (row) => 100 * splitOf(row).flowSpread,
  }),
  ofDiagonal('square', 2, 2137.454),
  ofDiagonal('smooth', 1.75, 878.921),
  {
    id: 'H-NET White 6.18',
    room: 'circuit',
    quantity: 'split of 99.8 m3/h over three pipes in parallel',
    unit: 'm3/h',
    source: 'F. M. White, Fluid Mechanics, Example 6.18',
    seen: 'quoted',
    tolerance: { absolute: 0.0501, reason: 'half a unit of the last printed digit' },
    values: WHITE.map(({ bore, flow }, index) => ({
      label: `${String(bore)} mm`,
      expected: flow,
      compute: () => white(99.8).flows[index] ?? Number.NaN,
    })),
  },
  {
    id: 'H-NET White 6.18 h',
    room: 'circuit',
    quantity: 'head of three pipes in parallel',
    unit: 'm',
    source: 'F. M. White, Fluid Mechanics, Example 6.18',
    seen: 'quoted',
    tolerance: { absolute: 0.0501, reason: 'half a unit of the last printed digit' },
    values: [{ label: 'all', expected: 20.3, compute: () => white(99.8).head }],
  },
];
