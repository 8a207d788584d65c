import {
  johansenConductivity,
  kerstenConductivity,
  soilThermalProperties,
  TEXTURE_CLASSES,
  typicalSoil,
  type SampleDensity,
  type SoilThermalPropertiesResult,
  type TextureClass,
} from '../../src/soil/index.js';
import { dryBasisPercent, kilogramsPerCubicMetre, ratio } from '../../src/units/index.js';
import { loadFixture, type FixtureRow } from '../support/fixture.js';

/** Readings of conductivity and heat capacity on undisturbed cores in several states of moisture. */
export const measuredCores: readonly FixtureRow[] = loadFixture('soil-measured').rows;

/** Whether a reading is fit to judge a model by; three cores hold far less water "saturated" than their pores would. */
export const scored = (row: FixtureRow): boolean => !row.text('flag').includes('do not score');

/** The texture class in a column of a row. */
export function classOf(row: FixtureRow, column = 'usda_texture'): TextureClass {
  const found = TEXTURE_CLASSES.find((texture) => texture === row.text(column));
  if (found === undefined) throw new Error(`line ${String(row.line)}: no texture class`);
  return found;
}

/** Johansen's equation with the core's own porosity and the quartz of its class. */
export function johansenOf(row: FixtureRow): number {
  const porosity = row.number('porosity');
  const dryDensity = row.number('dry_density_kg_m3');
  return johansenConductivity({
    dryDensity: kilogramsPerCubicMetre(dryDensity),
    particleDensity: kilogramsPerCubicMetre(dryDensity / (1 - porosity)),
    saturation: ratio(Math.min(1, row.number('theta_m3_m3') / porosity)),
    quartzFraction: typicalSoil(classOf(row)).quartzFraction,
    grain: row.number('sand_pct') >= 40 ? 'coarse' : 'fine',
  }).conductivity;
}

/** Kersten's equation of the core's grain size. */
export function kerstenOf(row: FixtureRow): number {
  return kerstenConductivity({
    dryDensity: kilogramsPerCubicMetre(row.number('dry_density_kg_m3')),
    moisture: { basis: 'dry', value: dryBasisPercent(row.number('water_dry_basis_pct')) },
    soil: row.number('silt_pct') + row.number('clay_pct') >= 50 ? 'silt or clay' : 'sandy',
  }).conductivity;
}

/** The core as a sample with a density of this origin; its grains as dense as its porosity tells. */
export function sampleOf(row: FixtureRow, from: SampleDensity['from'] = 'core'): SoilThermalPropertiesResult {
  const dryDensity = kilogramsPerCubicMetre(row.number('dry_density_kg_m3'));
  return soilThermalProperties({
    from: 'sample',
    moisture: { basis: 'dry', value: dryBasisPercent(row.number('water_dry_basis_pct')) },
    density: from === 'texture' ? { from } : { from, dryDensity },
    texture: { from: 'laboratory', class: classOf(row) },
    ...(from === 'core' ? { particleDensity: kilogramsPerCubicMetre(dryDensity / (1 - row.number('porosity'))) } : {}),
  });
}
