import type { Density, DryBasisMoisture, Fraction, MassFraction, Temperature, VolumeFraction, VolumetricWater } from '../units/index.js';
import { volumetricHeatCapacity } from './heat-capacity.js';
import { type Known, type KnownSoil, knownToModels } from './known-to-models.js';
import { MODEL_ATTEMPTS } from './model-attempts.js';
import type { SoilModel } from './model-refusals.js';
import { mixedSolids } from './mixed-solids.js';
import { WATER_DENSITY } from './particle-density.js';
import { surfaceOf } from './specific-surface.js';
import { TEXTURE_MIDDLES } from './texture-middles.data.js';
import { type TextureClass, typicalSoil } from './texture.js';
import { andersonTiceUnfrozenWater } from './unfrozen-water.js';
import { fullestDensity, saturatedMoisture } from './zero-air-voids.js';

/** A soil as it is reckoned with, all checks made; one of its parts is changed at a time to see what depends on it. */
export interface SoilCase {
  readonly texture: TextureClass;
  readonly sand: number;
  readonly clay: number;
  /** Quartz as measured; typical of the texture when left out. */
  readonly quartzFraction?: number | undefined;
  /** Dry density as measured in place; typical of the texture, with room for the water, when left out. */
  readonly dryDensity?: number | undefined;
  /** Denser or looser than that, as a ratio. */
  readonly packing: number;
  /** Water over solids, or where it is known by a word its share of the pores. */
  readonly water: { readonly per: 'solids' | 'pores'; readonly value: number };
  readonly organicMatter: number;
  readonly gravel: number;
  readonly particleDensity?: number | undefined;
  /** Temperature of a case that is frozen [degC]. */
  readonly frozenAt?: number | undefined;
}

/** A case as it lies. */
export interface Laid {
  readonly soil: KnownSoil & Required<Pick<KnownSoil, 'texture' | 'particleDensity' | 'organicMatter' | 'gravel' | 'frozen'>>;
  /** Water over solids, no more than there is room for. */
  readonly moisture: DryBasisMoisture;
  /** What of it is liquid. */
  readonly liquid: DryBasisMoisture;
  readonly organicShare: VolumeFraction;
}

/** Densest soil, as a share of its grains: a pile of plates has that few pores, soil never. */
const DENSEST = 0.98;

/** Density, saturation and solids of a case. */
export function lay(of: SoilCase): Laid {
  const { organicShare, particleDensity: mixed } = mixedSolids(of.organicMatter as MassFraction);
  const particleDensity = (of.particleDensity ?? mixed) as Density;
  const known = of.dryDensity ?? typicalDensity(of, particleDensity);
  const dryDensity = Math.min(known * of.packing, DENSEST * particleDensity) as Density;
  const most = saturatedMoisture({ dryDensity, particleDensity });
  const saturation = of.water.per === 'pores' ? of.water.value : Math.min(1, of.water.value / most);
  const { texture, sand, clay, organicMatter, gravel } = of;
  const quartzFraction = (of.quartzFraction ?? typicalSoil(texture).quartzFraction) as Fraction;
  const moisture = (saturation * most) as DryBasisMoisture;
  const liquid = liquidOf(of, moisture);
  const frozen = of.frozenAt !== undefined;
  const unfrozenWater = frozen && moisture > 0 ? saturation * (1 - dryDensity / particleDensity) * (liquid / moisture) : 0;
  const solids = { particleDensity, texture, sand, clay, quartzFraction, organicMatter, gravel };
  return { soil: { dryDensity, saturation, ...solids, frozen, unfrozenWater } as Laid['soil'], moisture, liquid, organicShare };
}

function typicalDensity({ texture, water }: SoilCase, particleDensity: Density): number {
  const typical = typicalSoil(texture).dryDensity;
  if (water.per === 'pores') return typical;
  return Math.min(typical, fullestDensity({ moisture: { basis: 'dry', value: water.value as DryBasisMoisture }, particleDensity }));
}

function liquidOf({ sand, clay, frozenAt }: SoilCase, moisture: DryBasisMoisture): DryBasisMoisture {
  if (frozenAt === undefined || moisture === 0) return moisture;
  const specificSurface = surfaceOf(sand, clay);
  const water = { temperature: frozenAt as Temperature, moisture: { basis: 'dry', value: moisture }, specificSurface } as const;
  return andersonTiceUnfrozenWater(water).unfrozenMoisture;
}

/** A case as another class of the triangle would have it; a class stands for itself by its middle. */
export function asTexture(of: SoilCase, texture: TextureClass): SoilCase {
  return { ...of, texture, ...TEXTURE_MIDDLES[texture] };
}

/** A case with other water, no less than none and no more than full pores. */
export function withWater(of: SoilCase, value: number): SoilCase {
  const { per } = of.water;
  return { ...of, water: { per, value: Math.max(0, per === 'pores' ? Math.min(1, value) : value) } };
}

/** Models that an estimate rests on, the first that applies; `lu-2007` meets the cores of `kansasCores2022` best and knows no ice. */
const ORDER: readonly SoilModel[] = ['lu-2007', 'johansen', 'cote-konrad', 'balland-arp'];

/** Conductivity by the first model that applies, the given one before all others. */
export function estimateOf({ soil }: Pick<Laid, 'soil'>, first?: SoilModel): { readonly model: SoilModel; readonly conductivity: number } {
  const known: Known = knownToModels(soil);
  for (const model of first === undefined ? ORDER : [first, ...ORDER]) {
    const outcome = MODEL_ATTEMPTS[model](known);
    if (typeof outcome !== 'string') return { model, conductivity: outcome.conductivity };
  }
  throw new Error('no model applies'); // Balland and Arp take every mixture of minerals and organic matter, sand and quartz known.
}

/** Heat capacity of a case, liquid water and ice each as they are. */
export function heatCapacityOfCase({ soil, moisture, liquid, organicShare }: Laid): number {
  const solids = soil.dryDensity / soil.particleDensity;
  const volume = (water: number): VolumetricWater => ((water * soil.dryDensity) / WATER_DENSITY) as VolumetricWater;
  return volumetricHeatCapacity({
    mineral: (solids * (1 - organicShare)) as VolumeFraction,
    organic: (solids * organicShare) as VolumeFraction,
    water: volume(liquid),
    ice: volume(moisture - liquid),
  });
}
