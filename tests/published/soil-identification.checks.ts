import {
  jarReadingTimes,
  stokesCutSize,
  stokesSettlingTime,
  TEXTURE_CLASSES,
  textureClass,
  UNIFIED_GROUPS,
  unifiedSoilGroup,
  type Fines,
  type Grading,
} from '../../src/soil/index.js';
import { celsius, diameterMillimetres, dryBasisPercent, massPercent, metres, ratio, seconds } from '../../src/units/index.js';
import { classOf, measuredCores } from '../soil/cores.js';
import { loadFixture, type FixtureRow } from '../support/fixture.js';
import { fromFixture, type PublishedCheck } from '../support/published.js';

const room = 'soil';
const triangle = loadFixture('soil-texture-checks');
const unified = loadFixture('soil-unified');
const times = loadFixture('soil-stokes');
const cuts = loadFixture('soil-stokes-cuts');

const triangleClass = (row: FixtureRow): number =>
  TEXTURE_CLASSES.indexOf(
    textureClass({ sand: massPercent(row.number('sand_pct')), silt: massPercent(row.number('silt_pct')), clay: massPercent(row.number('clay_pct')) })
      .texture,
  );

/** A class or group is compared by its place in the list; within no tolerance but its own. */
const place = (list: readonly string[], name: string): number => {
  const index = list.indexOf(name);
  if (index < 0) throw new Error(`${name} is in no list`);
  return index;
};

function finesOf(row: FixtureRow): Fines | undefined {
  if (row.text('fines_group') === 'CL') return { from: 'group', group: 'CL' };
  if (!row.has('liquid_limit_pct')) return undefined;
  return {
    from: 'limits',
    liquidLimit: dryBasisPercent(row.number('liquid_limit_pct')),
    plasticityIndex: dryBasisPercent(row.number('plasticity_index_pct')),
    ...(row.has('oven_dried_liquid_limit_pct') ? { ovenDriedLiquidLimit: dryBasisPercent(row.number('oven_dried_liquid_limit_pct')) } : {}),
  };
}

function groupOf(row: FixtureRow): number {
  const plasticity = finesOf(row);
  const grading: Grading | undefined = row.has('uniformity')
    ? { from: 'coefficients', uniformity: ratio(row.number('uniformity')), curvature: ratio(row.number('curvature')) }
    : undefined;
  return UNIFIED_GROUPS.indexOf(
    unifiedSoilGroup({
      type: 'soil',
      gravel: massPercent(row.number('gravel_pct')),
      sand: massPercent(row.number('sand_pct')),
      fines: massPercent(row.number('fines_pct')),
      ...(grading === undefined ? {} : { grading }),
      ...(plasticity === undefined ? {} : { plasticity }),
    }).group,
  );
}

const water = (row: FixtureRow): { readonly columnHeight: ReturnType<typeof metres>; readonly temperature: ReturnType<typeof celsius> } => ({
  columnHeight: metres(row.number('column_mm') / 1000),
  temperature: celsius(row.number('temperature_C')),
});

const cores = [...new Map(measuredCores.map((row) => [row.text('core_id'), row])).values()];
const WHOLE_MICROMETRES = { absolute: 0.5, reason: 'half a unit of the last digit' };

/** Outside checks of identifying a soil. */
export const soilIdentificationChecks: readonly PublishedCheck[] = [
  {
    id: 'SO-X triangle',
    room,
    quantity: 'texture class of compositions on and beside the lines, by place in the list',
    unit: 'place',
    source: `${triangle.meta.source} (${triangle.meta.at})`,
    seen: triangle.meta.seen,
    tolerance: { absolute: 0, reason: 'a class is the same or another' },
    values: triangle.rows.map((row) => ({
      label: `${row.text('sand_pct')}/${row.text('silt_pct')}/${row.text('clay_pct')}`,
      expected: place(TEXTURE_CLASSES, row.text('usda_class')),
      compute: () => triangleClass(row),
    })),
  },
  {
    id: 'SO-X cores',
    room,
    quantity: 'texture class of measured cores, by place in the list',
    unit: 'place',
    source: 'classes that the authors of doi:10.1002/saj2.20465 give for their cores',
    seen: 'original',
    tolerance: { absolute: 0, reason: 'a class is the same or another' },
    values: cores.map((row) => ({
      label: row.text('core_id'),
      expected: place(TEXTURE_CLASSES, classOf(row)),
      compute: () => triangleClass(row),
    })),
  },
  {
    id: 'SO-U',
    room,
    quantity: 'group of the Unified Soil Classification System, by place in the list',
    unit: 'place',
    source: `${unified.meta.source} (${unified.meta.at})`,
    seen: unified.meta.seen,
    tolerance: { absolute: 0, reason: 'a group is the same or another' },
    values: unified.rows.map((row) => ({
      label: `${row.text('id')} ${row.text('group')}`,
      expected: place(UNIFIED_GROUPS, row.text('group')),
      compute: () => groupOf(row),
    })),
  },
  fromFixture(times, {
    id: 'SO-S time',
    room,
    quantity: 'time of settling after Stokes',
    column: 'time_s',
    label: (row) => `${row.text('particle_size_um')} um at ${row.text('temperature_C')} °C`,
    compute: (row) => stokesSettlingTime({ particleSize: diameterMillimetres(row.number('particle_size_um') / 1000), ...water(row) }).settlingTime,
  }),
  fromFixture(times, {
    id: 'SO-S jar',
    room,
    quantity: 'readings of a jar',
    column: 'time_s',
    where: (row) => row.text('particle_size_um') !== '63',
    label: (row) => `${row.text('particle_size_um')} um at ${row.text('temperature_C')} °C`,
    compute: (row) => jarReadingTimes(water(row))[row.text('particle_size_um') === '50' ? 'sandReadAt' : 'siltReadAt'],
  }),
  ...(() => {
    const check = fromFixture(cuts, {
      id: 'SO-S cut',
      room,
      quantity: 'size parted after a time',
      column: 'particle_size_um',
      label: (row) => `${row.text('time_s')} s`,
      compute: (row) => 1000 * diameterMillimetres.of(stokesCutSize({ settlingTime: seconds(row.number('time_s')), ...water(row) }).particleSize),
    });
    return [{ ...check, values: check.values.map((value) => (value.expected > 10 ? { ...value, tolerance: WHOLE_MICROMETRES } : value)) }];
  })(),
];
