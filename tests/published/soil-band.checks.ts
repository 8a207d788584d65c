import { dryBasis, kerstenConductivity, soilFromEvidence } from '../../src/soil/index.js';
import { bothTogether, even } from '../../src/soil/two-sided.js';
import { dryBasisPercent, kilogramsPerCubicMetre, wetBasisPercent } from '../../src/units/index.js';
import { CORES, fullEvidence, groundTrials } from '../soil/evidence-cores.js';
import { coverage } from '../soil/scoring.js';
import { loadFixture } from '../support/fixture.js';
import type { PublishedCheck } from '../support/published.js';

const room = 'soil';
const measured = loadFixture('soil-measured');
const source = `${measured.meta.source} (${measured.meta.at})`;
const { seen } = measured.meta;

const STATES = [
  ['sat', 'saturated', 0.9],
  ['33kPa', 'at 33 kPa', 1],
  ['70kPa', 'at 70 kPa', 0.93],
  ['airdry2d', 'dried in air', 1.09],
  ['od40', 'dried at 40 °C', 1.25],
] as const;
const inState = (state: string): typeof CORES => CORES.filter((row) => row.text('state') === state);

/** Half of the 95 % interval of a share of 0.8 among so many cores. */
const byChance = (cores: number): number => 1.96 * Math.sqrt((0.8 * 0.2) / cores);

/** Median of what was measured over what the constituents add up to. */
function heatCapacityRatio(state: string): number {
  const ratios = inState(state)
    .map((row) => (row.number('C_MJ_m3K') * 1e6) / soilFromEvidence(fullEvidence(row, 'sample')).heatCapacity.estimate)
    .sort((a, b) => a - b);
  return ((ratios[Math.floor((ratios.length - 1) / 2)] ?? NaN) + (ratios[Math.floor(ratios.length / 2)] ?? NaN)) / 2;
}

const clay = (percent: number, soil: 'sandy' | 'silt or clay' = 'silt or clay'): number =>
  kerstenConductivity({ dryDensity: kilogramsPerCubicMetre(1600), moisture: { basis: 'dry', value: dryBasisPercent(percent) }, soil }).conductivity;

/** Outside checks of the bands of a soil and of what mistakes do to its conductivity. */
export const soilBandChecks: readonly PublishedCheck[] = [
  {
    id: 'SO-EV cover',
    room,
    quantity: 'share of other cores of the site that the 80 % band of the ground holds',
    unit: '1',
    source,
    seen,
    tolerance: { absolute: byChance(35), reason: 'what chance leaves open with so many cores, 95 %' },
    values: STATES.map(([state, label]) => ({
      label,
      expected: 0.8,
      compute: () => coverage(groundTrials(inState(state), 'ours')),
      tolerance: { absolute: byChance(inState(state).length), reason: 'what chance leaves open with so many cores, 95 %' },
    })),
  },
  {
    id: 'SO-EV C',
    room,
    quantity: 'median of the measured heat capacity over that of the constituents',
    unit: '1',
    source: `${source}; medians over all 55 cores, of which 37 are carried here`,
    seen: 'computed independently',
    tolerance: { absolute: 0.015, reason: 'medians of a part of the cores, and half a unit of the last digit told' },
    values: STATES.map(([state, label, expected]) => ({ label, expected, compute: () => heatCapacityRatio(state) })),
  },
  {
    id: 'SO-EV slip',
    room,
    quantity: 'conductivity after Kersten with moisture or kind of soil mistaken, 1600 kg/m³',
    unit: 'W/(m.K)',
    source: 'worked apart from this library',
    seen: 'computed independently',
    tolerance: { absolute: 0.0006, reason: 'half a unit of the last digit told' },
    values: [
      { label: 'clay, 12 %', expected: 1.109, compute: () => clay(12) },
      { label: 'clay, 15 %', expected: 1.235, compute: () => clay(15) },
      { label: 'clay, 18 %', expected: 1.337, compute: () => clay(18) },
    ],
  },
  {
    id: 'SO-EV slip ratio',
    room,
    quantity: 'conductivity after Kersten with a mistake, over that without',
    unit: '1',
    source: 'worked apart from this library',
    seen: 'computed independently',
    tolerance: { absolute: 0.0055, reason: 'told to a hundredth' },
    values: [
      {
        label: 'wet basis taken for dry, 20 % for 25 %',
        expected: 0.92,
        compute: () => clay(20) / clay(100 * dryBasis({ basis: 'wet', value: wetBasisPercent(20) })),
      },
      { label: 'equation of sand for clay, 15 %', expected: 1.42, compute: () => clay(15, 'sandy') / clay(15) },
    ],
  },
  {
    id: 'SO-EV quadrature',
    room,
    quantity: 'errors of a conductivity added as squares',
    unit: '1',
    source: 'a worked example of 0.12, 0.15, 0.05, 0.10 and 0.10, told as 0.24',
    seen: 'computed independently',
    tolerance: { absolute: 0.005, reason: 'told to a hundredth' },
    values: [{ label: 'five errors', expected: 0.24, compute: () => bothTogether([0.12, 0.15, 0.05, 0.1, 0.1].map(even)).downward }],
  },
];
