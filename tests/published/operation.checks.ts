import {
  fluidTemperatures,
  guidelineAreaExtraction,
  handbookPipeLength,
  monthlyPipeLength,
  plausibleLength,
  superposedRise,
  threePulsePipeLength,
  type GuidelineSoil,
  type HandbookLength,
  type RuleLayout,
  type ThreePulseLength,
} from '../../src/operation/index.js';
import {
  btuPerHourFahrenheit,
  btuPerHourFootFahrenheit,
  btuPerPoundFahrenheit,
  celsius,
  fahrenheit,
  feetPerTon,
  gallonsPerMinute,
  hours,
  inches,
  metresPerKilowatt,
  pipeFeet,
  pipeMetreKelvinPerWatt,
  poundsPerGallon,
  ratio,
  runFraction,
  seconds,
  squareFeetPerHour,
  tons,
  watts,
  wattsPerPipeMetre,
} from '../../src/units/index.js';
import { loadFixture, type FixtureRow } from '../support/fixture.js';
import { fromFixture, type PublishedCheck, type PublishedValue } from '../support/published.js';
import { MONTH, sectionResponse, YEAR } from '../support/sections.js';

const trenchLength = loadFixture('loop-oracle-trench-length');
const threePulse = loadFixture('loop-oracle-three-pulse');
const superposition = loadFixture('loop-oracle-superposition');
const soilResistance = loadFixture('loop-soil-resistance');
const rules = loadFixture('loop-rules-of-thumb');

const responseOf = (row: FixtureRow): ReturnType<typeof sectionResponse> =>
  sectionResponse(row.text('section'), row.number('ro'), row.number('k'), row.number('alpha'));

/** LS-20: the handbook equation at the inputs of a row. */
export function handbookOf(row: FixtureRow): HandbookLength {
  return handbookPipeLength({
    mode: row.text('mode') === 'heating' ? 'heating' : 'cooling',
    capacity: watts(row.number('capacity_W')),
    cop: ratio(row.number('COP')),
    pipeResistance: pipeMetreKelvinPerWatt(row.number('Rp_Km_W')),
    groundResistance: pipeMetreKelvinPerWatt(row.number('Rs_per_pipe_Km_W')),
    runFraction: runFraction(row.number('F')),
    groundTemperature: celsius(row.number('T_ground_design_C')),
    convention: 'mean fluid',
    fluidTemperature: celsius(row.number('T_mean_fluid_design_C')),
    pipePerTrench: ratio(row.number('n_pipes')),
  });
}

/** LS-22: three pulses at the inputs of a row, on the library's own ground response. */
export function threePulseOf(row: FixtureRow): ThreePulseLength {
  return threePulsePipeLength({
    mode: 'heating',
    seasonHeat: watts(row.number('q_annual_mean_W')),
    monthHeat: watts(row.number('q_month_mean_W')),
    peakHeat: watts(row.number('q_peak_W')),
    seasonTime: seconds(10 * YEAR),
    monthTime: seconds(MONTH),
    peakTime: hours(row.number('peak_hours')),
    riseAfter: responseOf(row).riseAfter,
    pipeResistance: pipeMetreKelvinPerWatt(row.number('Rp')),
    groundTemperature: celsius(row.number('T_ground_design_C')),
    fluidTemperature: celsius(row.number('T_mean_fluid_C')),
    pipePerTrench: ratio(Number(row.text('section').slice(0, 1))),
  });
}

/** The monthly course of LS-21 [W/m of pipe, extracted], read off the first year. */
export const COURSE: readonly number[] = superposition.rows.slice(0, 12).map((row) => row.number('q_extracted_W_per_m_pipe'));
const COURSE_YEARS = 20;
const courseResponse = sectionResponse('2-pipe over-under 1.2192/1.8288', 0.0167, 1.5, 6e-7);
const courseIndex = (row: FixtureRow): number => (row.number('year') - 1) * 12 + row.number('month') - 1;
const courseChanges = superposedRise({
  heat: Array.from({ length: 12 * COURSE_YEARS }, (_, index) => wattsPerPipeMetre(-(COURSE[index % 12] ?? Number.NaN))),
  step: seconds(MONTH),
  riseAfter: courseResponse.riseAfter,
});

const soilResponseOf = (row: FixtureRow): ReturnType<typeof sectionResponse> => {
  const outside = /OD ([\d.]+) in/u.exec(row.text('pipe'))?.[1];
  return sectionResponse(
    row.text('section'),
    inches(Number(outside)) / 2,
    btuPerHourFootFahrenheit(row.number('k_Btu_hftF')),
    squareFeetPerHour(row.number('alpha_ft2_h')),
  );
};
const soilRiseOf = (row: FixtureRow, column: string): number => {
  const response = soilResponseOf(row);
  if (column.startsWith('Rs_steady')) return response.steadyRise ?? Number.NaN;
  return response.riseAfter(seconds(column.startsWith('Rs_month') ? MONTH : YEAR));
};

const isArea = (row: FixtureRow): boolean => row.text('unit') === 'W/m2';
const ruleOf = (row: FixtureRow, end: 'low' | 'high'): number => {
  if (!isArea(row)) {
    const layout = row.text('key') as RuleLayout;
    return feetPerTon.of(plausibleLength({ layout, pipe: pipeFeet(500), nominalCapacity: tons(1) })[end]);
  }
  const soil = row.text('key') as GuidelineSoil;
  return guidelineAreaExtraction({ soil, fullLoadHours: hours(row.number('hours')), groundHeat: watts(1000) })[end];
};

const heatPerMetre = (mode: 'heating' | 'cooling', feetOfPipe: number): number => {
  const { groundHeat } = handbookPipeLength({
    mode,
    capacity: tons(1),
    cop: ratio(3.5),
    pipeResistance: pipeMetreKelvinPerWatt(0.1),
    groundResistance: pipeMetreKelvinPerWatt(0.8),
    runFraction: runFraction(1),
    groundTemperature: celsius(10),
    convention: 'mean fluid',
    fluidTemperature: celsius(mode === 'heating' ? 0 : 30),
    pipePerTrench: ratio(2),
  });
  return groundHeat / pipeFeet(feetOfPipe);
};
const printed = (label: string, expected: number, compute: () => number): PublishedValue => ({ label, expected, compute });

/** RT14 in metric. */
export const coilRule = (end: 'low' | 'high'): number =>
  metresPerKilowatt.of(plausibleLength({ layout: 'coil', pipe: pipeFeet(700), nominalCapacity: tons(1) })[end]);

const check20 = (quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(trenchLength, {
    id: 'LS-20',
    room: 'operation',
    quantity,
    column,
    label: (row) => `${row.text('mode')}, ${row.text('section')}, ${row.text('Rs_basis')}`,
    compute,
  });
const check22 = (quantity: string, column: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(threePulse, { id: 'LS-22', room: 'operation', quantity, column, label: (row) => row.text('section'), compute });
/** In SI only: the columns of the table in US units are the same responses again, and the conversion has its own check. */
const checkSoil = (column: string): PublishedCheck =>
  fromFixture(soilResistance, {
    id: 'LS-RS',
    room: 'operation',
    quantity: `soil resistance for the handbook equation, ${column}`,
    column,
    label: (row) => `${row.text('soil_class')}, ${row.text('section')}, ${row.text('pipe')}`,
    compute: (row) => soilRiseOf(row, column),
  });

export const operationChecks: readonly PublishedCheck[] = [
  check20('ground heat', 'q_ground_W', (row) => handbookOf(row).groundHeat),
  check20('handbook pipe length', 'pipe_length_m', (row) => handbookOf(row).pipe),
  check20('handbook trench length', 'trench_length_m', (row) => handbookOf(row).trench),
  check20('heat per metre of pipe', 'W_per_m_pipe', (row) => handbookOf(row).heatPerPipeLength),
  check20('pipe per ton of capacity', 'pipe_ft_per_ton', (row) => feetPerTon.of(handbookOf(row).pipePerCapacity)),
  check20('soil resistance', 'Rs_per_pipe_Km_W', (row) =>
    row.text('Rs_basis') === 'steady' ? (responseOf(row).steadyRise ?? Number.NaN) : responseOf(row).riseAfter(seconds(YEAR)),
  ),
  check22('season resistance', 'R_annual', (row) => threePulseOf(row).seasonResistance),
  check22('month resistance', 'R_month', (row) => threePulseOf(row).monthResistance),
  check22('peak resistance', 'R_peak', (row) => threePulseOf(row).peakResistance),
  check22('three-pulse pipe length', 'pipe_length_m', (row) => threePulseOf(row).pipe),
  check22('three-pulse trench length', 'trench_length_m', (row) => threePulseOf(row).trench),
  fromFixture(superposition, {
    id: 'LS-21',
    room: 'operation',
    quantity: 'step response at month ends',
    column: 'g_step_at_end_of_month(i+1)_Km_W',
    label: (row) => `year ${row.text('year')}, month ${row.text('month')}`,
    compute: (row) => courseResponse.riseAfter(seconds((courseIndex(row) + 1) * MONTH)),
  }),
  fromFixture(superposition, {
    id: 'LS-21',
    room: 'operation',
    quantity: 'wall temperature change over twenty years',
    column: 'wall_change_at_month_end_K(negative=colder)',
    label: (row) => `year ${row.text('year')}, month ${row.text('month')}`,
    compute: (row) => courseChanges[courseIndex(row)] ?? Number.NaN,
  }),
  {
    id: 'LS-21',
    room: 'operation',
    quantity: 'pipe length by monthly superposition',
    unit: 'm',
    source: 'the twenty-year course of LS-21 laid on 100 m of pipe, its coldest month end taken as the margin',
    seen: 'computed independently',
    tolerance: { relative: 1e-9, reason: 'direct sums in double precision on both sides' },
    values: superposition.rows
      .filter((row) => row.text('year') === '20' && row.text('month') === '1')
      .map((row) =>
        printed('January of year 20', 100, () => {
          const coldest = row.number('wall_change_at_month_end_K(negative=colder)');
          return monthlyPipeLength({
            mode: 'heating',
            months: COURSE.map((heat) => ({ meanHeat: watts(100 * heat), peakHeat: watts(100 * heat), groundTemperature: celsius(8) })),
            startMonth: 1,
            years: COURSE_YEARS,
            peakTime: hours(24),
            riseAfter: courseResponse.riseAfter,
            pipeResistance: pipeMetreKelvinPerWatt(0),
            fluidTemperature: celsius(8 + coldest),
            pipePerTrench: ratio(2),
          }).pipe;
        }),
      ),
  },
  checkSoil('Rs_month_Km_W'),
  checkSoil('Rs_1y_Km_W'),
  checkSoil('Rs_steady_Km_W'),
  fromFixture(rules, {
    id: 'RT',
    room: 'operation',
    quantity: 'rules of thumb, lower end: a table looked up',
    column: 'low',
    label: (row) => row.text('id'),
    compute: (row) => ruleOf(row, 'low'),
  }),
  fromFixture(rules, {
    id: 'RT',
    room: 'operation',
    quantity: 'rules of thumb, upper end: a table looked up',
    column: 'high',
    label: (row) => row.text('id'),
    compute: (row) => ruleOf(row, 'high'),
  }),
  {
    id: 'RT14',
    room: 'operation',
    quantity: 'pipe per cooling ton of coils, as printed in metric; the upper end, printed 86.6, does not reproduce and is left out',
    unit: 'm/kW',
    source: 'Energy-management handbook, chapter on spiral loops (copy on a commercial site, address withheld)',
    seen: 'quoted',
    tolerance: { absolute: 0.05, reason: 'half a unit of the last printed digit' },
    values: [printed('500 ft/ton', 43.3, () => coilRule('low'))],
  },
  {
    id: 'LS-40',
    room: 'operation',
    quantity: 'land by the area guideline',
    unit: 'm2',
    source: 'Worked example on a planner’s page (address withheld): 15 kW at COP 4.5, 11.7 kW from the ground at 20 W/m2, 585 m2',
    seen: 'quoted',
    tolerance: { absolute: 2.5, reason: 'the page rounds the electric power to 3.3 kW, hence the ground heat to 11.7 kW' },
    values: [
      printed('15 kW at COP 4.5', 585, () => {
        const groundHeat = watts((15_000 * 3.5) / 4.5);
        return guidelineAreaExtraction({ soil: 'damp cohesive', fullLoadHours: hours(1800), groundHeat }).largestArea;
      }),
    ],
  },
  {
    id: 'LS-41',
    room: 'operation',
    quantity: 'land by the area guideline, a plain division',
    unit: 'm2',
    source:
      'Worked example on a consumer page (address withheld): 6000 W at 25 W/m2, 240 m2; it divides the heat of the house, which is wrong, but the arithmetic is right',
    seen: 'quoted',
    tolerance: { relative: 1e-12, reason: 'exact division' },
    values: [
      printed(
        '6000 W',
        240,
        () => guidelineAreaExtraction({ soil: 'damp cohesive', fullLoadHours: hours(1800), groundHeat: watts(6000) }).typicalArea,
      ),
    ],
  },
  {
    id: 'LS-UNITS',
    room: 'operation',
    quantity: 'ground heat per metre of pipe at COP 3.5 for a given length per ton',
    unit: 'W/m',
    source: 'Hand calculation from 1 ton = 12 000 Btu/h',
    seen: 'computed independently',
    tolerance: { absolute: 0.051, reason: 'half a unit of the last printed digit' },
    values: [
      printed('400 ft/ton heating', 20.6, () => heatPerMetre('heating', 400)),
      printed('400 ft/ton cooling', 37.1, () => heatPerMetre('cooling', 400)),
      printed('500 ft/ton heating', 16.5, () => heatPerMetre('heating', 500)),
      printed('500 ft/ton cooling', 29.7, () => heatPerMetre('cooling', 500)),
      printed('600 ft/ton heating', 13.7, () => heatPerMetre('heating', 600)),
      printed('600 ft/ton cooling', 24.7, () => heatPerMetre('cooling', 600)),
    ],
  },
  {
    id: 'H-500',
    room: 'operation',
    quantity: 'heat carried by a US gallon of water a minute per °F',
    unit: 'Btu/(h.degF)',
    source: 'The trade’s site rule for water, 500 · gpm · °F; water at 60 °F, 8.338 lb/gal, 1.000 Btu/(lb.°F)',
    seen: 'quoted',
    tolerance: { absolute: 0.5, reason: 'the rule is printed as a whole number' },
    values: [
      printed('water', 500, () =>
        btuPerHourFahrenheit.of(
          fluidTemperatures({
            mode: 'heating',
            entering: fahrenheit(60),
            groundHeat: watts(1000),
            flow: gallonsPerMinute(1),
            fluid: { density: poundsPerGallon(8.338), specificHeat: btuPerPoundFahrenheit(1) },
          }).heatCapacityRate,
        ),
      ),
    ],
  },
];
