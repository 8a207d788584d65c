import {
  ballandArpConductivity,
  campbellConductivity,
  coteKonradConductivity,
  ewenThomasConductivity,
  johansenConductivity,
  lu2014Conductivity,
  luConductivity,
  solidsConductivity,
  typicalSoil,
  type Grain,
  type PackedSoil,
} from '../../src/soil/index.js';
import { fraction, kilogramsPerCubicMetre, massPercent, ratio, volumeFraction, type Fraction } from '../../src/units/index.js';
import type { FixtureRow } from '../support/fixture.js';
import { classOf, kerstenOf } from './cores.js';

/** How the solids of a core are come by: quartz typical of its texture, the sand, half of it, or the model's own default. */
export type Solids = 'typical' | 'sand' | 'half sand' | 'default' | '';

/** The core as it was packed, its grains as dense as its porosity tells; swollen cores as full. */
const packed = (row: FixtureRow): Required<PackedSoil> => {
  const dryDensity = row.number('dry_density_kg_m3');
  const porosity = row.number('porosity');
  return {
    dryDensity: kilogramsPerCubicMetre(dryDensity),
    particleDensity: kilogramsPerCubicMetre(dryDensity / (1 - porosity)),
    saturation: ratio(Math.min(1, row.number('theta_m3_m3') / porosity)),
  };
};
const sandOf = (row: FixtureRow): number => row.number('sand_pct') / 100;
const grainOf = (row: FixtureRow): Grain => (row.number('sand_pct') >= 40 ? 'coarse' : 'fine');
const quartzOf = (row: FixtureRow, solids: Solids): Fraction => {
  if (solids === 'typical') return typicalSoil(classOf(row)).quartzFraction;
  return fraction(solids === 'half sand' ? sandOf(row) / 2 : sandOf(row));
};
const johansenOf = (row: FixtureRow, solids: Solids): ReturnType<typeof johansenConductivity> =>
  johansenConductivity({ ...packed(row), quartzFraction: quartzOf(row, solids), grain: grainOf(row) });

/** Each model on a core, by the conventions of the independent scores. */
const MODELS: Readonly<Record<string, (row: FixtureRow, solids: Solids) => number>> = {
  johansen: (row, solids) => johansenOf(row, solids).conductivity,
  kersten: kerstenOf,
  'cote-konrad': (row, solids) =>
    coteKonradConductivity({
      ...packed(row),
      soil: row.number('sand_pct') >= 50 ? 'medium or fine sand' : 'silt or clay',
      ...(solids === 'default' ? {} : { solid: solidsConductivity({ quartzFraction: quartzOf(row, solids) }) }),
    }).conductivity,
  'lu-2007': (row, solids) => luConductivity({ ...packed(row), quartzFraction: quartzOf(row, solids), grain: grainOf(row) }).conductivity,
  'lu-2014': (row) =>
    lu2014Conductivity({ ...packed(row), sand: massPercent(row.number('sand_pct')), clay: massPercent(row.number('clay_pct')) }).conductivity,
  campbell: (row) => campbellConductivity({ ...packed(row), clay: massPercent(row.number('clay_pct')) }).conductivity,
  'ewen-thomas': (row, solids) => ewenThomasConductivity({ ...packed(row), quartzFraction: quartzOf(row, solids) }).conductivity,
  'balland-arp': (row, solids) => ballandArpOf(row, solids).conductivity,
  'balland-arp between johansen ends': (row, solids) => {
    const { dry, saturated } = johansenOf(row, solids);
    return dry + (saturated - dry) * ballandArpOf(row, solids).kerstenNumber;
  },
};

const ballandArpOf = (row: FixtureRow, solids: Solids): ReturnType<typeof ballandArpConductivity> =>
  ballandArpConductivity({
    ...packed(row),
    solid: solidsConductivity({ quartzFraction: quartzOf(row, solids) }),
    sandShare: volumeFraction(sandOf(row)),
  });

/** What a model makes of a core. */
export function modelOf(model: string, solids: Solids): (row: FixtureRow) => number {
  const run = MODELS[model];
  if (run === undefined) throw new Error(`no model ${model}`);
  return (row) => run(row, solids);
}

/** How well a model meets measured cores. */
export interface Score {
  readonly rmse: number;
  readonly mean: number;
  readonly withinQuarterPercent: number;
  readonly logScatter: number;
}

/** Scores a model on cores. */
export function scoreOf(run: (row: FixtureRow) => number, rows: readonly FixtureRow[]): Score {
  const pairs = rows.map((row) => [run(row), row.number('k_W_mK')] as const);
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const errors = pairs.map(([computed, measured]) => computed - measured);
  const logs = pairs.map(([computed, measured]) => Math.log(computed / measured));
  return {
    rmse: Math.sqrt(mean(errors.map((error) => error ** 2))),
    mean: mean(errors),
    withinQuarterPercent: 100 * mean(pairs.map(([computed, measured]) => (Math.abs(computed / measured - 1) <= 0.25 ? 1 : 0))),
    logScatter: Math.sqrt(logs.reduce((sum, log) => sum + (log - mean(logs)) ** 2, 0) / (logs.length - 1)),
  };
}
