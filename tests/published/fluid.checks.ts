import {
  CALCIUM_CHLORIDE,
  ETHANOL,
  ETHYLENE_GLYCOL,
  fluidProperties,
  fluidTransport,
  freezingPoint,
  GLYCEROL,
  METHANOL,
  POTASSIUM_ACETATE,
  POTASSIUM_CARBONATE,
  POTASSIUM_FORMATE,
  PROPYLENE_GLYCOL,
  refractiveIndex,
  volumeFromMassFraction,
  WATER,
  type FluidRecord,
} from '../../src/fluid/index.js';
import { celsius, diameterMillimetres, litresPerMinute, massFraction, massPercent, volumePercent } from '../../src/units/index.js';
import { loadFixture, type FixtureRow, type Tolerance } from '../support/fixture.js';
import { fromFixture, type PublishedCheck, type PublishedValue } from '../support/published.js';
import { fluidMixtureChecks } from './fluid-mixtures.checks.js';

const check = loadFixture('fluids-check');
const library = loadFixture('fluids-library');
const water = loadFixture('fluids-water');
const freeze = loadFixture('fluids-freeze');
const handbook = loadFixture('fluids-handbook');
const turbulence = loadFixture('fluids-turbulence');

/** The nine solutions. */
export const SOLUTIONS: readonly FluidRecord[] = [
  PROPYLENE_GLYCOL,
  ETHYLENE_GLYCOL,
  ETHANOL,
  METHANOL,
  GLYCEROL,
  POTASSIUM_CARBONATE,
  POTASSIUM_FORMATE,
  POTASSIUM_ACETATE,
  CALCIUM_CHLORIDE,
];
const RECORDS: ReadonlyMap<string, FluidRecord> = new Map([WATER, ...SOLUTIONS].map((record) => [record.name, record]));

/** The record that a row is about. */
export function recordOf(row: FixtureRow): FluidRecord {
  const record = RECORDS.get(row.text('fluid'));
  if (record === undefined) throw new Error(`no record of ${row.text('fluid')}`);
  return record;
}

const share = (row: FixtureRow): ReturnType<typeof massFraction> => massFraction(row.number('mass_fraction'));
const label = (row: FixtureRow): string =>
  [row.text('fluid'), row.text('mass_fraction'), row.has('t_C') ? `${row.text('t_C')} degC` : ''].filter((text) => text !== '').join(' ');
const stateOf = (row: FixtureRow): ReturnType<typeof fluidProperties> =>
  fluidProperties({ fluid: recordOf(row), massFraction: share(row), temperature: celsius(row.number('t_C')) });
const stateOfWater = (row: FixtureRow): ReturnType<typeof fluidProperties> =>
  fluidProperties({ fluid: 'water', massFraction: massFraction(0), temperature: celsius(row.number('t_C')) });

/**
 * The library goes from mPa.s to Pa.s by subtracting 6.907755 from the logarithm, which is ln 1000 cut after six decimals, so its
 * viscosities are all 2.79e-7 of their value high; taken back here, and asserted in the tests of the room.
 */
export const LIBRARY_MILLI: number = Math.exp(-6.907755);

const COLUMNS = [
  ['density_kg_m3', 'density', 1],
  ['viscosity_mPa_s', 'viscosity', 1e6 * LIBRARY_MILLI],
  ['viscosity_Pa_s', 'viscosity', 1000 * LIBRARY_MILLI],
  ['specific_heat_J_kgK', 'specificHeat', 1],
  ['conductivity_W_mK', 'conductivity', 1],
] as const;
const SPOKEN = { density: 'density', viscosity: 'viscosity', specificHeat: 'specific heat', conductivity: 'conductivity' } as const;

const tabulated = (id: string, fixture: typeof check): PublishedCheck[] =>
  COLUMNS.filter(([column]) => fixture.meta.columns[column] !== undefined).map(([column, property, factor]) =>
    fromFixture(fixture, {
      id: `${id} ${SPOKEN[property].replace(' ', '_')}`,
      room: 'fluid',
      quantity: `${SPOKEN[property]} of ${fixture === water ? 'water' : 'solutions'}`,
      column,
      where: (row) => fixture !== water || row.number('t_C') >= 0,
      label: (row) => (fixture === water ? `${row.text('p_bar_abs')} bar, ${row.text('t_C')} degC` : label(row)),
      compute: (row) => factor * (fixture === water ? stateOfWater(row) : stateOf(row))[property],
    }),
  );

const freezingOf = (row: FixtureRow): number => freezingPoint({ fluid: recordOf(row), massFraction: share(row) });

const freezing = (id: string, fixture: typeof check): PublishedCheck =>
  fromFixture(fixture, { id, room: 'fluid', quantity: 'freezing point of solutions', column: 't_freeze_C', label, compute: freezingOf });

const tableChoice = (row: FixtureRow): { readonly fluid: FluidRecord; readonly massFraction: ReturnType<typeof massFraction> } => ({
  fluid: recordOf(row),
  massFraction: massPercent(row.number('mass_percent')),
});
const densityAt = (row: FixtureRow, t: number): number => fluidProperties({ ...tableChoice(row), temperature: celsius(t) }).density;
const waterAt = (t: number): number => fluidProperties({ fluid: 'water', massFraction: massFraction(0), temperature: celsius(t) }).density;

const table = (column: string, quantity: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(freeze, {
    id: `FL-table ${column}`,
    room: 'fluid',
    quantity,
    column,
    label: (row) => `${row.text('fluid')} ${row.text('mass_percent')} % by mass`,
    compute,
  });

/** A handbook has 10 % methanol liquid at −7.5 °C and 20 % at −16.5 °C, where the fit has frozen and answers nothing: left out, and asserted in the tests. */
export const frozenByFit = (row: FixtureRow): boolean => row.has('t_C') && row.number('t_C') < freezingOf(row);

/** Handbook rows of one property; each row brings its own tolerance. */
function handbookCheck(
  property: string,
  unit: string,
  compute: (row: FixtureRow) => number,
  { stated, where = () => true }: { readonly stated?: Tolerance; readonly where?: (row: FixtureRow) => boolean } = {},
): PublishedCheck {
  const toleranceOf = (row: FixtureRow): Tolerance => {
    const size = row.number('tolerance');
    const reason = 'scatter between this source and the fits, set after comparing them: guards the coding, does not prove the fits';
    return row.text('tolerance_unit') === '%' ? { relative: size / 100, reason } : { absolute: size, reason };
  };
  const rows = handbook.rows.filter((row) => row.text('property') === property && !frozenByFit(row) && where(row));
  const values = rows.map((row): PublishedValue & { readonly tolerance: Tolerance } => ({
    label: `${row.text('source')} ${label(row)}`,
    expected: row.number('value'),
    compute: () => compute(row),
    tolerance: stated ?? toleranceOf(row),
  }));
  const [first] = values;
  if (first === undefined) throw new Error(`no handbook rows of ${property}`);
  return {
    id: `FL-handbook ${property}`,
    room: 'fluid',
    quantity: `${property.replaceAll('_', ' ')} of solutions`,
    unit,
    source: `${handbook.meta.source} (${handbook.meta.at})`,
    seen: handbook.meta.seen,
    tolerance: first.tolerance,
    values,
  };
}

/** Stated for the fit itself, for all fluids alike; handbooks need not keep to it. */
const FREEZING: Tolerance = { absolute: 0.5, reason: 'stated uncertainty of the freezing points of the fit up to 30 % by mass, held beyond it too' };
const handbookId = (row: FixtureRow): string => `${row.text('source')} ${row.text('fluid')} ${row.text('mass_fraction')}`;
/** Freezing points that differ from the fit by more than that [K]; the tests hold by how much. */
export const FREEZING_LEFT_OUT: ReadonlyMap<string, number> = new Map([
  ['ASHRAE2001 ethylene-glycol 0.3500', -0.94],
  ['ASHRAE2001 ethylene-glycol 0.4000', -1.51],
  ['ASHRAE2001 propylene-glycol 0.4000', 0.53],
  ['VDI methanol 0.2000', 1.42],
  ['LANGE15 ethanol 0.1380', -0.501],
  ['LANGE15 ethanol 0.1640', -0.86],
  ['LANGE15 ethanol 0.1880', -0.76],
  ['LANGE15 ethanol 0.2030', -0.76],
  ['LANGE15 ethanol 0.2210', -0.67],
  ['LANGE15 ethanol 0.2670', -1.01],
  ['LANGE15 ethanol 0.2990', -1.14],
  ['LANGE15 propylene-glycol 0.1029', -0.77],
  ['LANGE15 propylene-glycol 0.1538', -1.14],
  ['LANGE15 propylene-glycol 0.2041', -0.67],
  ['LANGE15 glycerol 0.2000', -0.75],
]);
/** Fit less handbook at a freezing point [K]. */
export function freezingDisagreement(id: string): number {
  const row = handbook.rows.find((each) => each.text('property') === 't_freeze' && handbookId(each) === id);
  return row === undefined ? Number.NaN : freezingOf(row) - row.number('value');
}

const fromTurbulence = (column: string, quantity: string, compute: (row: FixtureRow) => number): PublishedCheck =>
  fromFixture(turbulence, { id: `FL-turbulence ${column}`, room: 'fluid', quantity, column, label, compute });

const BORES = [
  ['IPS_3/4_DR11_id21.82mm', 21.82],
  ['IPS_1_DR11_id27.33mm', 27.33],
  ['IPS_1-1/4_DR11_id34.50mm', 34.5],
  ['DN25x2.3_id20.40mm', 20.4],
  ['DN32x2.9_id26.20mm', 26.2],
  ['DN32x3.0_id26.00mm', 26],
  ['DN40x3.7_id32.60mm', 32.6],
] as const;

const transportOf = (row: FixtureRow, bore = 26): ReturnType<typeof fluidTransport> =>
  fluidTransport({
    fluid: recordOf(row),
    massFraction: share(row),
    temperature: celsius(row.number('t_C')),
    insideDiameter: diameterMillimetres(bore),
  });

export const fluidChecks: readonly PublishedCheck[] = [
  ...tabulated('FL-library', library),
  freezing('FL-library freezing', library),
  ...tabulated('FL-check', check),
  freezing('FL-check freezing', check),
  ...tabulated('FL-water', water),
  table('vol_percent_20C', 'volume per cent', (row) => volumePercent.of(volumeFromMassFraction(tableChoice(row)))),
  table('t_freeze_C', 'freezing point', (row) => freezingPoint(tableChoice(row))),
  table('density_20C_kg_m3', 'density at 20 °C', (row) => densityAt(row, 20)),
  table('SG_20_20', 'specific gravity at 20 °C', (row) => densityAt(row, 20) / waterAt(20)),
  table('n_D20_lorentz_lorenz', 'refractive index at 20 °C', (row) => refractiveIndex({ ...tableChoice(row), temperature: celsius(20) })),
  handbookCheck('density', 'kg/m3', (row) => stateOf(row).density),
  handbookCheck('viscosity', 'mPa.s', (row) => stateOf(row).viscosity * 1000),
  handbookCheck('specific_heat', 'J/(kg.K)', (row) => stateOf(row).specificHeat),
  handbookCheck('conductivity', 'W/(m.K)', (row) => stateOf(row).conductivity),
  handbookCheck('t_freeze', 'degC', freezingOf, { stated: FREEZING, where: (row) => !FREEZING_LEFT_OUT.has(handbookId(row)) }),
  handbookCheck('volume_fraction', 'm3/m3', (row) => volumeFromMassFraction({ fluid: recordOf(row), massFraction: share(row) })),
  fromTurbulence('t_freeze_C', 'freezing point', (row) => stateOf(row).freezingPoint),
  fromTurbulence('viscosity_mPa_s', 'viscosity', (row) => stateOf(row).viscosity * 1e3),
  fromTurbulence('kin_viscosity_mm2_s', 'kinematic viscosity', (row) => transportOf(row).kinematicViscosity * 1e6),
  fromTurbulence('rho_cp_MJ_m3K', 'volumetric heat capacity', (row) => transportOf(row).heatCapacity / 1e6),
  fromTurbulence('Prandtl', 'Prandtl number', (row) => transportOf(row).prandtl),
  ...BORES.flatMap(([bore, diameter]) => [
    fromTurbulence(`L_per_min_Re2300_${bore}`, 'flow at Re 2300', (row) => litresPerMinute.of(transportOf(row, diameter).laminarBelow)),
    fromTurbulence(`L_per_min_Re4000_${bore}`, 'flow at Re 4000', (row) => litresPerMinute.of(transportOf(row, diameter).turbulentFrom)),
  ]),
  ...fluidMixtureChecks,
];
