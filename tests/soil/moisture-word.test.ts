import { describe, expect, it } from 'vitest';
import { bandedCase } from '../../src/soil/banded-case.js';
import { HELD_MOISTURE } from '../../src/soil/held-moisture.data.js';
import { saturatedMoisture, typicalSoil, type TextureClass } from '../../src/soil/index.js';
import { readSample } from '../../src/soil/sample-case.js';
import { classOf } from './cores.js';
import { CORES, wordOf } from './evidence-cores.js';
import { bootstrapOfSites, intervalScore, type Limits, logLimits } from './scoring.js';

/**
 * Where within the saturations of "moist" a soil is taken to lie, three ways: all alike, the middle likelier than the ends (triangular, nothing
 * fitted), or likeliest at what the texture holds against gravity, which is a median of such cores. Tried on the other cores, the class known.
 */
const FROM = 0.2;
const TO = 0.85;
const PARTS = [1, 3, 5, 7, 9, 11, 13, 15, 17].map((part) => part / 18);
const MOIST = CORES.filter((row) => wordOf(row) === 'moist');
const round = (value: number): number => Number(value.toFixed(3));

function triangular(mode: number): readonly number[] {
  const peak = (mode - FROM) / (TO - FROM);
  return PARTS.map((part) => FROM + (TO - FROM) * (part < peak ? Math.sqrt(part * peak) : 1 - Math.sqrt((1 - part) * (1 - peak))));
}

const found = new Map<string, { readonly limits: Limits; readonly middle: number }>();
function bandOf(texture: TextureClass, saturations: readonly number[]): { readonly limits: Limits; readonly middle: number } {
  const key = `${texture}${String(saturations)}`;
  const { soil, known } = readSample({
    from: 'sample',
    texture: { from: 'laboratory', class: texture },
    moisture: { basis: 'word', word: 'moist' },
    density: { from: 'texture' },
  });
  const chances = saturations.map((value) => ({ value, share: 1 / saturations.length }));
  const make = (): { readonly limits: Limits; readonly middle: number } => {
    const { conductivity } = bandedCase(soil, { ...known, moisture: { ...known.moisture, chances } });
    return { limits: logLimits(conductivity), middle: Math.log(conductivity.estimate) };
  };
  const result = found.get(key) ?? make();
  found.set(key, result);
  return result;
}

/** Median water of the cores of a class at 33 kPa, those of one site left out; the chapter's where none is left. */
function heldWithout(site: string, texture: TextureClass): number {
  const water = CORES.filter((row) => row.text('state') === '33kPa' && row.text('site') !== site && classOf(row) === texture)
    .map((row) => row.number('water_dry_basis_pct') / 100)
    .sort((a, b) => a - b);
  const [low, high] = [water[Math.floor((water.length - 1) / 2)], water[Math.floor(water.length / 2)]];
  return low === undefined || high === undefined ? HELD_MOISTURE[texture] : (low + high) / 2;
}

const alike = PARTS.map((part) => FROM + part * (TO - FROM));
const middle = triangular((FROM + TO) / 2);
const held = (texture: TextureClass, site: string): readonly number[] => {
  const saturation = heldWithout(site, texture) / saturatedMoisture({ dryDensity: typicalSoil(texture).dryDensity });
  return triangular(Math.min(TO, Math.max(FROM, saturation)));
};

/** By how much one way scores better than all alike, cores of the site and state aside, with limits when sites are drawn again. */
function gain(way: (texture: TextureClass, site: string) => readonly number[]): readonly number[] {
  const trials = MOIST.flatMap((row) => {
    const texture = classOf(row);
    const site = row.text('site');
    const [even, other] = [bandOf(texture, alike), bandOf(texture, way(texture, site))];
    return MOIST.filter(
      (beside) => beside.text('site') === site && beside.text('state') === row.text('state') && beside.text('core_id') !== row.text('core_id'),
    ).map((beside) => {
      const value = Math.log(beside.number('k_W_mK'));
      return { site, gain: intervalScore(even.limits, value) - intervalScore(other.limits, value) };
    });
  });
  const mean = (of: readonly { readonly gain: number }[]): number => of.reduce((sum, each) => sum + each.gain, 0) / of.length;
  return [mean(trials), ...bootstrapOfSites(trials, mean)].map(round);
}

describe('soil called moist', () => {
  it('is judged better with the middle likelier than the ends, by more than chance', () => {
    expect(gain(() => middle)).toEqual([0.08, 0.037, 0.151]);
  });

  it('is not judged better by more than chance with what the texture holds, each site left out of it, so that this is not done', () => {
    expect(gain(held)).toEqual([0.059, -0.037, 0.215]);
  });

  it('is taken as the first of these has it', () => {
    const { known } = readSample({
      from: 'sample',
      texture: { from: 'unknown' },
      moisture: { basis: 'word', word: 'moist' },
      density: { from: 'texture' },
    });
    known.moisture.chances.forEach(({ value }, index) => {
      expect(value).toBeCloseTo(middle[index] ?? NaN, 12);
    });
    expect(known.moisture.chances).toHaveLength(9);
  });
});
