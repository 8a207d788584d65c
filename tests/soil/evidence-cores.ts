import {
  soilFromEvidence,
  TEXTURE_CLASSES,
  type EvidencePropertiesResult,
  type MoistureWord,
  type SampleEvidence,
  type TextureClass,
} from '../../src/soil/index.js';
import { TEXTURE_NEIGHBOURS } from '../../src/soil/texture-neighbours.data.js';
import { dryBasisFraction, dryBasisPercent, fraction, kilogramsPerCubicMetre, massPercent } from '../../src/units/index.js';
import type { FixtureRow } from '../support/fixture.js';
import { classOf, measuredCores, scored } from './cores.js';
import { type Limits, logLimits, type Trial } from './scoring.js';

/** Readings that are fit to judge by, and those of the states that soil at pipe depth has. */
export const CORES: readonly FixtureRow[] = measuredCores.filter(scored);
export const saturationOf = (row: FixtureRow): number => row.number('saturation');
export const isMoist = (row: FixtureRow): boolean => saturationOf(row) >= 0.3;
const logOf = (row: FixtureRow): number => Math.log(row.number('k_W_mK'));

/** All that was measured of a core: sizes of grain, water, density of the core and of its grains. */
export function fullEvidence(row: FixtureRow, extent: 'ground' | 'sample' = 'ground'): SampleEvidence {
  const dryDensity = row.number('dry_density_kg_m3');
  return {
    from: 'sample',
    texture: { from: 'fractions', sand: massPercent(row.number('sand_pct')), clay: massPercent(row.number('clay_pct')) },
    moisture: { basis: 'dry', value: dryBasisPercent(row.number('water_dry_basis_pct')) },
    moistureError: dryBasisFraction(0.005),
    density: { from: 'core', dryDensity: kilogramsPerCubicMetre(dryDensity), standardError: fraction(0.01) },
    particleDensity: kilogramsPerCubicMetre(dryDensity / (1 - row.number('porosity'))),
    extent,
  };
}

/** The word for the water of a core. */
export function wordOf(row: FixtureRow): MoistureWord {
  const saturation = saturationOf(row);
  if (saturation < 0.2) return 'dry';
  return saturation < 0.85 ? 'moist' : 'wet';
}

/** Who names textures by hand, and how often rightly and within one class, as the study has it (`textureByFeel2017`). */
export const HANDS = { professional: [0.66, 0.91], 'seasonal staff': [0.38, 0.71] } as const;
export type Hand = keyof typeof HANDS;

/** Chance that soil of a class is given a name. */
function chanceOf(hand: Hand, texture: TextureClass, name: TextureClass): number {
  const [right, near] = HANDS[hand];
  const neighbours = TEXTURE_NEIGHBOURS[texture];
  if (name === texture) return right;
  return neighbours.includes(name) ? (near - right) / neighbours.length : (1 - near) / (TEXTURE_CLASSES.length - 1 - neighbours.length);
}

const known = new Map<string, EvidencePropertiesResult>();
function byWords(hand: Hand, name: TextureClass, word: MoistureWord): EvidencePropertiesResult {
  const key = [hand, name, word].join();
  const found =
    known.get(key) ??
    soilFromEvidence({
      from: 'sample',
      texture: { from: 'feel', class: name, observer: hand },
      moisture: { basis: 'word', word },
      density: { from: 'texture' },
    });
  known.set(key, found);
  return found;
}

/** What may be made of a soil as a band. */
export type Banding = 'ours' | 'thirty percent' | 'models';
export const BANDINGS: Readonly<Record<Banding, (soil: EvidencePropertiesResult) => Limits>> = {
  ours: ({ conductivity }) => logLimits(conductivity),
  'thirty percent': ({ conductivity: { estimate } }) => [Math.log(0.7 * estimate), Math.log(1.3 * estimate)],
  models: ({ sample }) => {
    const logs = (sample?.models ?? []).map(({ conductivity }) => Math.log(conductivity));
    return [Math.min(...logs), Math.max(...logs)];
  },
};

/** Other cores of the site in the same state, which is what a band of the ground is for. */
const asideOf = (row: FixtureRow): readonly FixtureRow[] =>
  CORES.filter(
    (other) => other.text('core_id') !== row.text('core_id') && other.text('site') === row.text('site') && other.text('state') === row.text('state'),
  );

const full = new Map<FixtureRow, EvidencePropertiesResult>();
function inFull(row: FixtureRow): EvidencePropertiesResult {
  const found = full.get(row) ?? soilFromEvidence(fullEvidence(row));
  full.set(row, found);
  return found;
}

/** The band from all that was measured of each core, tried on the core itself. */
export const ownTrials = (rows: readonly FixtureRow[], banding: Banding): readonly Trial[] =>
  rows.map((row) => ({
    limits: BANDINGS[banding](soilFromEvidence(fullEvidence(row, 'sample'))),
    value: logOf(row),
    site: row.text('site'),
    weight: 1,
  }));

/** The band for the ground from all that was measured of each core, tried on the other cores of its site. */
export const groundTrials = (rows: readonly FixtureRow[], banding: Banding): readonly Trial[] =>
  rows.flatMap((row) => {
    const limits = BANDINGS[banding](inFull(row));
    return asideOf(row).map((other) => ({ limits, value: logOf(other), site: row.text('site'), weight: 1 }));
  });

/** The band for the ground from two words about each core, by every name that a hand may give it, tried on the other cores of its site. */
export const wordTrials = (rows: readonly FixtureRow[], hand: Hand, banding: Banding): readonly Trial[] =>
  rows.flatMap((row) =>
    TEXTURE_CLASSES.flatMap((name) => {
      const limits = BANDINGS[banding](byWords(hand, name, wordOf(row)));
      const weight = chanceOf(hand, classOf(row), name);
      return asideOf(row).map((other) => ({ limits, value: logOf(other), site: row.text('site'), weight }));
    }),
  );
