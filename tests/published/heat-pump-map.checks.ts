import { type ConditionMap, conditionMap, emitterOutput, requiredSupply } from '../../src/heat-pump/index.js';
import { celsius, electricKilowatts, kelvinDifference, kilowatts, ratio } from '../../src/units/index.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { caseChecks, type CaseInputs } from '../support/load-cases.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

type Mode = 'heating' | 'cooling';
const unit = loadFixture('load-example-unit');
const corrections = loadFixture('emitter-corrections');
const modeOf = (row: FixtureRow): Mode => (row.text('mode') === 'heating' ? 'heating' : 'cooling');
const pointOf = (row: FixtureRow) => ({
  enteringFluid: celsius(row.number('entering_fluid_C')),
  flowRatio: ratio(row.number('flow_ratio')),
  capacity: kilowatts(row.number('capacity_kW')),
  power: electricKilowatts(row.number('power_kW')),
});

/** The invented unit over entering fluid and flow, from all rows of a mode or from some of them. */
const mapOf = (mode: Mode, kept: (row: FixtureRow) => boolean = () => true): ConditionMap =>
  conditionMap({ mode, points: unit.rows.filter((row) => modeOf(row) === mode && kept(row)).map(pointOf) });
const at = (map: ConditionMap, row: FixtureRow) => {
  const { enteringFluid, flowRatio } = pointOf(row);
  return map.at({ enteringFluid, flowRatio });
};
const label = (row: FixtureRow): string => `${row.text('mode')} ${row.text('entering_fluid_C')} degC, flow ${row.text('flow_ratio')}`;

/** Between three flows the factor of the unit is a parabola, which comes back: worked cases at flows that the table does not have. */
const atFlow = (mode: Mode) => (inputs: CaseInputs) => {
  const { capacity, power, cop, groundHeat } = mapOf(mode).at({
    enteringFluid: celsius(Number(inputs.EFT_C)),
    flowRatio: ratio(Number(inputs.flow_ratio)),
  });
  return [kilowatts.of(capacity), electricKilowatts.of(power), cop, kilowatts.of(groundHeat)];
};

/**
 * The cases are exact, the table that they are told from is rounded to 0.0001 kW; two interpolations weigh its points up to 1.67 times each. Electric input in heating changes with the flow by
 * secants that differ by more than a factor of 1/0.6, so that its parabola comes back to 1e-5 only, which is within that.
 */
const FROM_TABLE = {
  relative: 5e-5,
  reason: 'half a unit of the last printed digit of the points that the case is told from, in capacity, power and their ratio',
};

const emitters = {
  emitter: 'radiator',
  exponent: ratio(1.3),
  ratedOutput: kilowatts(1),
  ratedWater: { supplyTemperature: celsius(75), returnTemperature: celsius(65), indoor: celsius(20), excessMean: 'arithmetic' },
} as const;
const factorAt = (excess: number): number =>
  emitterOutput({ emitters, emitterWater: { supplyTemperature: celsius(20 + excess), returnTemperature: celsius(20 + excess), indoor: celsius(20) } })
    .ratedRatio;
const factorOf = (supply: number, back: number): number =>
  emitterOutput({
    emitters: { ...emitters, ratedWater: { ...emitters.ratedWater, excessMean: 'logarithmic' } },
    emitterWater: { supplyTemperature: celsius(supply), returnTemperature: celsius(back), indoor: celsius(20) },
  }).ratedRatio;

export const heatPumpMapChecks: readonly PublishedCheck[] = [
  fromFixture(unit, {
    id: 'LD-unit flow COP',
    room: 'heat-pump',
    quantity: 'COP of the invented unit over entering fluid and flow',
    column: 'COP_or_EER_W_per_W',
    label,
    compute: (row) => at(mapOf(modeOf(row)), row).cop,
  }),
  fromFixture(corrections, {
    id: 'EM-corrections',
    room: 'heat-pump',
    quantity: 'heat of a radiator over that at an excess of 50 K',
    column: 'factor',
    label: (row) => `${row.text('excess_K')} K`,
    compute: (row) => factorAt(row.number('excess_K')),
  }),
  fromFixture(corrections, {
    id: 'EM-required',
    room: 'heat-pump',
    quantity: 'mean excess that a radiator needs for a share of its rated heat',
    column: 'excess_K',
    label: (row) => `factor ${row.text('factor')}`,
    compute: (row) => {
      const load = kilowatts(row.number('factor'));
      return requiredSupply({ emitters, load, indoor: celsius(20), waterSpread: kelvinDifference(0) }).requiredSupply - 20;
    },
  }),
  {
    id: 'EM-log',
    room: 'heat-pump',
    quantity: 'heat of a radiator over that at 75/65/20, logarithmic mean',
    unit: '1',
    source: 'Conversion factors of radiator tables for 55/45/20 and 45/35/20',
    seen: 'from memory',
    tolerance: { absolute: 0.00501, reason: 'half a unit of the last printed digit' },
    values: [
      { label: '55/45/20', expected: 0.51, compute: () => factorOf(55, 45) },
      { label: '45/35/20', expected: 0.3, compute: () => factorOf(45, 35) },
    ],
  },
  ...caseChecks('heat-pump', [
    ['L16h3', 'invented unit in heating at a flow between those of its table', atFlow('heating')],
    ['L16c1', 'invented unit in cooling at a flow between those of its table', atFlow('cooling')],
  ]).map((check) => ({ ...check, id: `${check.id} map`, tolerance: FROM_TABLE })),
];
