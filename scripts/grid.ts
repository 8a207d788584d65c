// The fixed grid of soils and climates as a Markdown table: node scripts/run.mjs scripts/grid.ts
import { InputError } from '../src/errors/index.js';
import { planGrid, type Cell } from '../tests/plan/grid.js';

const HEAD = [
  'climate',
  'soil',
  'k W/(m·K)',
  'ground °C',
  'mode',
  'needed m',
  'laid m',
  'trenches',
  'trench m',
  'W/m',
  'margin K',
  'months K',
  'peak K',
  'pipe K',
  'to handbook',
];

function row({ soil, climate, outcome }: Cell): readonly string[] {
  const start = [climate.name.split(' (')[0] ?? '', soil.name];
  if (outcome instanceof InputError) return [...start, `${outcome.code} at ${outcome.argument}: ${outcome.message}`];
  const { loop, ground, governing } = outcome;
  const mode = outcome[governing];
  if (mode === undefined) throw new Error('the governing mode is missing');
  const { monthly, ratioToHandbook } = mode.needed;
  return [
    ...start,
    outcome.soil.conductivity.estimate.toFixed(2),
    `${ground.pipes.lowest.toFixed(1)} … ${ground.pipes.highest.toFixed(1)}`,
    governing,
    `${loop.needed.estimate.toFixed(0)} (${loop.needed.low.toFixed(0)} … ${loop.needed.high.toFixed(0)})`,
    loop.circuits.activePipe.toFixed(0),
    `${String(loop.circuits.trenches)} × ${loop.circuits.trenchLength.toFixed(0)}`,
    loop.trench.toFixed(0),
    loop.heatPerPipeLength.toFixed(1),
    ...[monthly.margin, monthly.spent.months, monthly.spent.peak, monthly.spent.pipe, ratioToHandbook].map((value) => value.toFixed(2)),
  ];
}

const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
console.log([line(HEAD), line(HEAD.map(() => '---')), ...planGrid().map((cell) => line(row(cell)))].join('\n'));
