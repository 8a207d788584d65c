import { fitUnitCurves, fluidTemperatureDrop, ratedPumpPower, type UnitFit } from '../../src/heat-pump/index.js';
import {
  btuPerHour,
  btuPerPoundFahrenheit,
  celsius,
  electricKilowatts,
  fahrenheitDifference,
  feetOfWater,
  gallonsPerMinute,
  joulesPerCubicMetreKelvin,
  kilowatts,
  litresPerSecond,
  pascals,
  poundsPerCubicFoot,
  ratio,
} from '../../src/units/index.js';
import { type FixtureRow, loadFixture } from '../support/fixture.js';
import { caseChecks, type CaseInputs } from '../support/load-cases.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const table = loadFixture('load-example-unit');
type Mode = 'heating' | 'cooling';

/** The invented unit fitted to its whole table at once, three flows of it. */
const fitOf = (mode: Mode): UnitFit =>
  fitUnitCurves({
    mode,
    ratingOrigin: 'invented',
    form: 'quadratic',
    points: table.rows
      .filter((row) => row.text('mode') === mode)
      .map((row) => ({
        enteringFluid: celsius(row.number('entering_fluid_C')),
        flowRatio: ratio(row.number('flow_ratio')),
        capacity: kilowatts(row.number('capacity_kW')),
        power: electricKilowatts(row.number('power_kW')),
      })),
  });
const fits = { heating: fitOf('heating'), cooling: fitOf('cooling') };

const atFlow = (mode: Mode, inputs: CaseInputs): readonly number[] => {
  const { capacity, power, cop, groundHeat } = fits[mode].at(celsius(Number(inputs.EFT_C)), ratio(Number(inputs.flow_ratio)));
  return [kilowatts.of(capacity), electricKilowatts.of(power), cop, kilowatts.of(groundHeat)];
};

/** The table is rounded to four decimals of a kilowatt, so a fit to it is off by part of half of one; the case itself prints six. */
const ROUNDED_TABLE = { absolute: 5.01e-5, reason: 'the table that is fitted is rounded to four decimals of a kilowatt; the case to six' };

const between = (id: 'L16h3' | 'L16c1', mode: Mode): readonly PublishedCheck[] =>
  caseChecks('heat-pump', [[id, `invented unit fitted over entering fluid and flow, ${mode}`, (inputs) => atFlow(mode, inputs)]]).map((check) => ({
    ...check,
    id: `LD-fit ${id}`,
    tolerance: ROUNDED_TABLE,
  }));

const modeOf = (row: FixtureRow): Mode => (row.text('mode') === 'heating' ? 'heating' : 'cooling');
const fitted = (row: FixtureRow): ReturnType<UnitFit['at']> =>
  fits[modeOf(row)].at(celsius(row.number('entering_fluid_C')), ratio(row.number('flow_ratio')));
const fromTable = (id: string, column: string, quantity: string, compute: (row: FixtureRow) => number): PublishedCheck => ({
  ...fromFixture(table, {
    id: `LD-fit ${id}`,
    room: 'heat-pump',
    quantity,
    column,
    label: (row) => `${row.text('mode')} ${row.text('entering_fluid_C')} degC, flow ${row.text('flow_ratio')}`,
    compute,
  }),
  tolerance: { absolute: 1e-4, reason: 'rounding of the row to four decimals, and of those that the fit is drawn through' },
});

const drop = ({ Q_Btuh, gpm, rho_lb_per_ft3, cp }: CaseInputs): number => {
  const heatCapacity = joulesPerCubicMetreKelvin(poundsPerCubicFoot(Number(rho_lb_per_ft3)) * btuPerPoundFahrenheit(Number(cp)));
  return fahrenheitDifference.of(fluidTemperatureDrop({ groundHeat: btuPerHour(Number(Q_Btuh)), flow: gallonsPerMinute(Number(gpm)), heatCapacity }));
};

const penalty = ({ gpm, head_ft }: CaseInputs): number =>
  ratedPumpPower({ convention: 'closed loop before 2000', flow: gallonsPerMinute(Number(gpm)), pressureDrop: feetOfWater(Number(head_ft)) })
    .electricPower;

/** The efficiency that a number of watts per gallon a minute and foot stands for, out of the power of such a flow. */
const impliedEfficiency = ({ W_per_gpm_ft }: CaseInputs): number => {
  const [flow, pressureDrop] = [gallonsPerMinute(1), feetOfWater(1)];
  const { electricPower, pumpEfficiency } = ratedPumpPower({ convention: 'closed loop before 2000', flow, pressureDrop });
  return (pumpEfficiency * electricPower) / Number(W_per_gpm_ft);
};

const isoPump = ({ L_per_s, dp_Pa }: CaseInputs): number =>
  ratedPumpPower({ convention: 'ISO 13256', flow: litresPerSecond(Number(L_per_s)), pressureDrop: pascals(Number(dp_Pa)) }).electricPower;

/** Checks of fitted forms, of what ratings count of pumps, and of the fall of the fluid temperature. */
export const heatPumpFormChecks: readonly PublishedCheck[] = [
  ...between('L16h3', 'heating'),
  ...between('L16c1', 'cooling'),
  fromTable('capacity', 'capacity_kW', 'capacity of the fitted unit', (row) => kilowatts.of(fitted(row).capacity)),
  fromTable('power', 'power_kW', 'electric power of the fitted unit', (row) => electricKilowatts.of(fitted(row).power)),
  ...caseChecks('heat-pump', [
    ['L20', 'fall of the fluid temperature', drop],
    ['L21a', 'pump power by the rating before 2000', penalty],
    ['L21b', 'pump efficiency that the rating before 2000 stands for', impliedEfficiency],
    ['L21c', 'pump power by ISO 13256', isoPump],
  ]),
];
