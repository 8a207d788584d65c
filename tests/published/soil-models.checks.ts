import {
  airConductivity,
  andersonTiceUnfrozenWater,
  ballandArpConductivity,
  campbellConductivity,
  coteKonradConductivity,
  iceConductivity,
  lu2014Conductivity,
  luConductivity,
  waterConductivity,
  type CoteKonradClass,
} from '../../src/soil/index.js';
import {
  celsius,
  dryBasisPercent,
  fraction,
  gramsPerCubicCentimetre,
  kilogramsPerCubicMetre,
  massFraction,
  ratio,
  volumeFraction,
  volumetricFraction,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import { modelOf, scoreOf, type Score, type Solids } from '../soil/core-models.js';
import { measuredCores, scored } from '../soil/cores.js';
import { loadFixture, type FixtureRow } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';
import { soilCasesChecks } from './soil-cases.checks.js';

const room = 'soil';
const id = (row: FixtureRow): string => row.text('id');
const optional = (row: FixtureRow, column: string): number => (row.has(column) ? row.number(column) : 0);

/** A soil of a porosity and saturation, of whatever density that takes. */
const filled = (porosity: number, saturation: number) =>
  ({
    dryDensity: kilogramsPerCubicMetre((1 - porosity) * 2650),
    particleDensity: kilogramsPerCubicMetre(2650),
    saturation: ratio(saturation),
  }) as const;

/** Grains so dense that a density has a porosity. */
const dense = (row: FixtureRow, porosity: number) => {
  const dryDensity = gramsPerCubicCentimetre(row.number('dry_density_g_cm3'));
  return {
    dryDensity,
    particleDensity: kilogramsPerCubicMetre(dryDensity / (1 - porosity)),
    saturation: ratio(row.number('theta') / porosity),
  } as const;
};

const CLASSES: Readonly<Record<string, CoteKonradClass>> = {
  gravel_coarse_sand: 'gravel or coarse sand',
  medium_fine_sand: 'medium or fine sand',
  silt_clay: 'silt or clay',
  peat: 'fibrous organic',
};
const coteKonradAt = (row: FixtureRow): ReturnType<typeof coteKonradConductivity> =>
  coteKonradConductivity({
    ...filled(row.number('porosity'), row.number('saturation')),
    solid: wattsPerMetreKelvin(row.number('k_solid')),
    soil: CLASSES[row.text('soil')] ?? 'fibrous organic',
    crushed: row.text('dry_class') === 'crushed',
    frozen: row.text('frozen') === 'yes',
    unfrozenWater: volumetricFraction(row.number('theta_unfrozen')),
  });
const luAt = (row: FixtureRow): ReturnType<typeof luConductivity> =>
  luConductivity({
    ...filled(row.number('porosity'), row.number('saturation')),
    quartzFraction: fraction(row.number('quartz')),
    grain: row.number('sand_percent') >= 40 ? 'coarse' : 'fine',
  });
// Campbell's equation knows no porosity; any that holds the water will do.
const campbellAt = (row: FixtureRow): ReturnType<typeof campbellConductivity> =>
  campbellConductivity({ ...dense(row, 0.6), clay: massFraction(row.number('clay')) });
const ballandArpAt = (row: FixtureRow): ReturnType<typeof ballandArpConductivity> =>
  ballandArpConductivity({
    dryDensity: kilogramsPerCubicMetre(row.has('dry_density_kg_m3') ? row.number('dry_density_kg_m3') : 1500),
    particleDensity: kilogramsPerCubicMetre(row.has('particle_density_kg_m3') ? row.number('particle_density_kg_m3') : 2650),
    saturation: ratio(optional(row, 'saturation')),
    solid: wattsPerMetreKelvin(row.has('k_solid') ? row.number('k_solid') : 3),
    organicShare: volumeFraction(optional(row, 'organic_share')),
    sandShare: volumeFraction(optional(row, 'sand_share')),
    gravelShare: volumeFraction(optional(row, 'gravel_share')),
  });

interface Columns {
  readonly fixture: string;
  readonly as: string;
  readonly of: string;
  readonly columns: Readonly<Record<string, (row: FixtureRow) => number>>;
}
const CASES: readonly Columns[] = [
  {
    fixture: 'soil-cote-konrad',
    as: 'SO-C',
    of: 'Côté and Konrad',
    columns: {
      k_dry: (row) => coteKonradAt(row).dry,
      kersten_number: (row) => coteKonradAt(row).kerstenNumber,
      k: (row) => coteKonradAt(row).conductivity,
    },
  },
  {
    fixture: 'soil-lu-2007',
    as: 'SO-L',
    of: 'Lu 2007',
    columns: { k_dry: (row) => luAt(row).dry, kersten_number: (row) => luAt(row).kerstenNumber, k: (row) => luAt(row).conductivity },
  },
  {
    fixture: 'soil-lu-2014',
    as: 'SO-L14',
    of: 'Lu 2014',
    columns: {
      k: (row) =>
        lu2014Conductivity({ ...dense(row, row.number('porosity')), sand: massFraction(row.number('sand')), clay: massFraction(row.number('clay')) })
          .conductivity,
    },
  },
  {
    fixture: 'soil-campbell',
    as: 'SO-G',
    of: 'Campbell',
    columns: { intercept: (row) => campbellAt(row).moistIntercept, k: (row) => campbellAt(row).conductivity },
  },
  {
    fixture: 'soil-balland-arp',
    as: 'SO-BA',
    of: 'Balland and Arp',
    columns: { kersten_number: (row) => ballandArpAt(row).kerstenNumber, k_dry: (row) => ballandArpAt(row).dry },
  },
  {
    fixture: 'soil-unfrozen-water',
    as: 'SO-U',
    of: 'Anderson and Tice',
    columns: {
      w_unfrozen_percent: (row) =>
        dryBasisPercent.of(
          andersonTiceUnfrozenWater({
            temperature: celsius(row.number('temperature_C')),
            specificSurface: ratio(row.number('specific_surface_m2_g')),
            moisture: { basis: 'dry', value: dryBasisPercent(40) },
          }).unfrozenMoisture,
        ),
    },
  },
];
const QUANTITIES: Readonly<Record<string, string>> = {
  k: 'conductivity',
  k_dry: 'conductivity of dry soil',
  kersten_number: 'Kersten number',
  intercept: 'start of the line of moist soil',
  w_unfrozen_percent: 'water that stays liquid',
};

/* Numbers of the models that no case tries */

/** Sharpness of the Kersten number of Côté and Konrad, without and with ice; it is what the Kersten number of half-full pores shows. */
const SHARPNESS: readonly (readonly [soil: CoteKonradClass, unfrozen: number, frozen: number])[] = [
  ['gravel or coarse sand', 4.6, 1.7],
  ['medium or fine sand', 3.55, 0.95],
  ['silt or clay', 1.9, 0.85],
  ['fibrous organic', 0.6, 0.25],
];
const sharpnessOf = (soil: CoteKonradClass, frozen: boolean): number => {
  const { kerstenNumber } = coteKonradConductivity({ ...filled(0.6, 0.5), soil, frozen });
  return kerstenNumber / (1 - kerstenNumber);
};
/** Conductivity of dry soil at two porosities: without pores, and decades lost to all pores. */
const DRY: readonly (readonly [label: string, soil: CoteKonradClass, crushed: boolean, without: number, decades: number])[] = [
  ['crushed rock', 'gravel or coarse sand', true, 1.7, 1.8],
  ['natural mineral soil', 'silt or clay', false, 0.75, 1.2],
  ['fibrous organic', 'fibrous organic', false, 0.3, 0.87],
];
const dryAt = (porosity: number, soil: CoteKonradClass, crushed: boolean): number =>
  Math.log10(coteKonradConductivity({ ...filled(porosity, 0), soil, crushed }).dry);

/** Kersten numbers of Balland and Arp with gravel, with humus and frozen: saturation, shares of organic matter, sand and gravel. */
const BALLAND_ARP: readonly (readonly [number, number, number, number, unfrozen: number, frozen: number])[] = [
  [0.5, 0.1, 0.3, 0.2, 0.73974, 0.46652],
  [0.3, 0.6, 0.1, 0, 0.37842, 0.14568],
  [0.05, 0, 0.9, 0.1, 0.091081, 0.05],
  [0.7, 0, 0, 0.6, 0.928, 0.7],
];
const ballandArpNumber = ([saturation, organic, sand, gravel]: (typeof BALLAND_ARP)[number], frozen: boolean): number =>
  ballandArpConductivity({
    ...filled(0.45, saturation),
    solid: wattsPerMetreKelvin(3),
    organicShare: volumeFraction(organic),
    sandShare: volumeFraction(sand),
    gravelShare: volumeFraction(gravel),
    frozen,
  }).kerstenNumber;

/* Scores on measured cores */

const scores = loadFixture('soil-model-scores');
const moist = measuredCores.filter((row) => scored(row) && row.number('saturation') >= 0.3);
const STATES: Readonly<Record<string, readonly FixtureRow[]>> = {
  moist,
  sandy: moist.filter((row) => row.number('sand_pct') >= 40),
  dry: measuredCores.filter((row) => scored(row) && row.number('saturation') < 0.1),
};
const statesOf = (name: string): readonly FixtureRow[] => STATES[name] ?? [];
const SOLIDS: readonly Solids[] = ['typical', 'sand', 'half sand', 'default', ''];
const scoreAt = (row: FixtureRow): Score => {
  const solids = SOLIDS.find((each) => each === row.text('solids'));
  const rows = STATES[row.text('states')];
  if (solids === undefined || rows === undefined) throw new Error(`line ${String(row.line)}: no such solids or states`);
  return scoreOf(modelOf(row.text('model'), solids), rows);
};
const SCORES: readonly (readonly [column: string, quantity: string, of: (score: Score) => number])[] = [
  ['rmse', 'root mean square error', ({ rmse }) => rmse],
  ['mean_error', 'mean error', ({ mean }) => mean],
  ['within_quarter_percent', 'share within a quarter', ({ withinQuarterPercent }) => withinQuarterPercent],
  ['log_scatter', 'scatter of the logarithm', ({ logScatter }) => logScatter],
];

/* Components */

const water = loadFixture('fluids-water');
/** The tables of steam lie 0.16 % about the equation up to 35 °C and 0.3 % below it at 60 °C. */
const WATER = { relative: 0.007, reason: 'uncertainty that the authors of the equation state, recalled' };

/** Outside checks of the models of conductivity, of what they are made of and of how they score on measured cores. */
export const soilModelChecks: readonly PublishedCheck[] = [
  ...CASES.flatMap(({ fixture, as, of, columns }) => {
    const loaded = loadFixture(fixture);
    return Object.entries(columns).map(([column, compute]) =>
      fromFixture(loaded, { id: `${as} ${column}`, room, quantity: `${QUANTITIES[column] ?? column} after ${of}`, column, label: id, compute }),
    );
  }),
  {
    id: 'SO-C numbers',
    room,
    quantity: 'sharpness of the Kersten number and dry soil of Côté and Konrad',
    unit: '1 and W/(m.K)',
    source: 'table of coteKonrad2005 as two public codes carry it',
    seen: 'quoted',
    tolerance: { relative: 1e-9, reason: 'the same numbers but for rounding' },
    values: [
      ...SHARPNESS.flatMap(([soil, unfrozen, frozen]) => [
        { label: soil, expected: unfrozen, compute: () => sharpnessOf(soil, false) },
        { label: `${soil}, frozen`, expected: frozen, compute: () => sharpnessOf(soil, true) },
      ]),
      ...DRY.flatMap(([label, soil, crushed, without, decades]) => [
        { label: `${label}, decades`, expected: decades, compute: () => 10 * (dryAt(0.3, soil, crushed) - dryAt(0.4, soil, crushed)) },
        { label: `${label}, no pores`, expected: without, compute: () => 10 ** (dryAt(0.3, soil, crushed) + 0.3 * decades) },
      ]),
    ],
  },
  {
    id: 'SO-BA numbers',
    room,
    quantity: 'Kersten number of Balland and Arp with gravel, humus and ice',
    unit: '1',
    source: 'equation of ballandArp2005 evaluated apart from this library',
    seen: 'computed independently',
    tolerance: { relative: 1e-4, reason: 'expected values carry five digits' },
    values: BALLAND_ARP.flatMap((each) => [
      { label: each.slice(0, 4).join(' '), expected: each[4], compute: () => ballandArpNumber(each, false) },
      { label: `${each.slice(0, 4).join(' ')}, frozen`, expected: each[5], compute: () => ballandArpNumber(each, true) },
    ]),
  },
  ...SCORES.map(([column, quantity, of]) =>
    fromFixture(scores, {
      id: `SO-M ${column}`,
      room,
      quantity: `${quantity} of the models on measured cores`,
      column,
      label: (row) => [row.text('model'), row.text('solids'), row.text('states')].filter((text) => text !== '').join(', '),
      compute: (row) => of(scoreAt(row)),
    }),
  ),
  {
    id: 'SO-M in words',
    room,
    quantity: 'errors of the models on 25 dry states, and on 23 sandy ones with half of the sand taken for quartz',
    unit: 'W/(m.K)',
    source: `${scores.meta.source}, and 25 states with a saturation below 0.1 (${scores.meta.at})`,
    seen: scores.meta.seen,
    tolerance: { absolute: 0.005, reason: 'two digits are carried' },
    values: [
      { label: 'Lu 2007, dry, mean', expected: -0.18, compute: () => scoreOf(modelOf('lu-2007', 'typical'), statesOf('dry')).mean },
      { label: 'Côté and Konrad, dry, mean', expected: -0.15, compute: () => scoreOf(modelOf('cote-konrad', 'sand'), statesOf('dry')).mean },
      {
        label: 'Johansen, sandy, root mean square',
        expected: 0.38,
        compute: () => scoreOf(modelOf('johansen', 'half sand'), statesOf('sandy')).rmse,
      },
      { label: 'Johansen, sandy, mean', expected: -0.31, compute: () => scoreOf(modelOf('johansen', 'half sand'), statesOf('sandy')).mean },
    ],
  },
  {
    ...fromFixture(water, {
      id: 'SO-N water',
      room,
      quantity: 'conductivity of water after Ramires',
      column: 'conductivity_W_mK',
      label: (row) => `${row.text('t_C')} °C`,
      compute: (row) => waterConductivity(celsius(row.number('t_C'))),
      where: (row) => row.number('t_C') >= 0,
    }),
    tolerance: WATER,
  },
  {
    id: 'SO-N water, recomputed',
    room,
    quantity: 'conductivity of water after Ramires, in the temperatures of soil',
    unit: 'W/(m.K)',
    source: 'equation of ramires1995 evaluated apart from this library',
    seen: 'computed independently',
    tolerance: { absolute: 0.0005, reason: 'half a unit of the last digit carried' },
    values: (
      [
        [0, 0.556],
        [10, 0.578],
        [15, 0.588],
        [20, 0.598],
        [25, 0.606],
      ] as const
    ).map(([at, expected]) => ({ label: `${String(at)} °C`, expected, compute: () => waterConductivity(celsius(at)) })),
  },
  {
    id: 'SO-N air',
    room,
    quantity: 'conductivity of dry air',
    unit: 'W/(m.K)',
    source: 'tables of dry air at the pressure of the atmosphere, as in textbooks of heat transfer',
    seen: 'from memory',
    tolerance: { relative: 0.015, reason: 'textbooks differ by 1 %, and the recalled values by half a unit more' },
    values: [
      { label: '0 °C', expected: 0.0243, compute: () => airConductivity(celsius(0)) },
      { label: '20 °C', expected: 0.0257, compute: () => airConductivity(celsius(20)) },
      { label: '60 °C', expected: 0.0285, compute: () => airConductivity(celsius(60)) },
    ],
  },
  {
    id: 'SO-N ice',
    room,
    quantity: 'conductivity of ice',
    unit: 'W/(m.K)',
    source: 'the numbers that models of soil take, coteKonrad2005 and johansen1975',
    seen: 'quoted',
    tolerance: { relative: 0.035, reason: 'sources lie 3 % apart, and say of no temperature' },
    values: [
      { label: 'Johansen', expected: 2.2, compute: () => iceConductivity(celsius(-1)) },
      { label: 'Côté and Konrad', expected: 2.24, compute: () => iceConductivity(celsius(-1)) },
    ],
  },
  ...soilCasesChecks,
];
