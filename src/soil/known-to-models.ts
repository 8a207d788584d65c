import { demand, demandChoice, InputError } from '../errors/index.js';
import type { Conductivity, Fraction, MassFraction, VolumeFraction, VolumetricWater } from '../units/index.js';
import type { CoteKonradClass } from './cote-konrad.js';
import { mixedSolids } from './mixed-solids.js';
import { demandFlag, type FreezableSoil, poresOf } from './pores.js';
import { solidConductivity } from './solid-conductivity.js';
import { textureClass } from './texture-triangle.js';
import { type Grain, type KerstenSoil, TEXTURE_CLASSES, type TextureClass, typicalSoil } from './texture.js';

/** What is known of a soil whose conductivity is asked for; the more is known, the more models can be computed. */
export interface KnownSoil extends FreezableSoil {
  /** Class of the fine earth in the texture triangle, which follows from sand and clay; tells quartz and grain where they are not known better. */
  readonly texture?: TextureClass;
  /** Grains of 0.05 to 2 mm in the dry mass of fine earth, 0 to 1 [kg/kg]. */
  readonly sand?: MassFraction;
  /** Grains below 0.002 mm in the dry mass of fine earth, 0 to 1, with the sand no more than 1 [kg/kg]. */
  readonly clay?: MassFraction;
  /** Volume of quartz in the volume of mineral solids, 0 to 1; typical of the texture when left out [1]. */
  readonly quartzFraction?: Fraction;
  /** Organic matter per dry soil, 0 to 1; 0 when left out [kg/kg]. */
  readonly organicMatter?: MassFraction;
  /** Grains above 2 mm in the mass of mineral solids, 0 to 1; 0 when left out [kg/kg]. */
  readonly gravel?: MassFraction;
  /** Whether the soil is crushed rock; no when left out. */
  readonly crushed?: boolean;
}

/** What the models are computed from; nothing made up for what is not known. */
export interface Known {
  readonly soil: Required<FreezableSoil>;
  readonly porosity: number;
  /** Volume of water in the volume of soil. */
  readonly water: number;
  readonly sand: MassFraction | undefined;
  readonly clay: MassFraction | undefined;
  readonly quartzFraction: Fraction | undefined;
  readonly solid: Conductivity | undefined;
  readonly grain: Grain | undefined;
  readonly kerstenSoil: KerstenSoil | undefined;
  readonly coteKonradClass: CoteKonradClass | undefined;
  readonly organicMatter: number;
  readonly organicShare: VolumeFraction;
  readonly gravel: number;
  readonly crushed: boolean;
}

/** Sand from which a soil is coarse (`landModelSoils`), and beyond which less than half of it is silt and clay (`kersten1949`) [kg/kg]. */
const COARSE = 0.4;
const SANDY = 0.5;

/** Shares from which a soil is peat, with a quarter of ash at most, or gravel, by common practice [kg/kg]. */
const PEAT = 0.75;
const GRAVEL = 0.5;

/** Checks what is known of a soil and draws from it what the models ask for. */
export function knownToModels(given: KnownSoil): Known {
  const { sand, clay, organicMatter = 0 as MassFraction, gravel = 0 as MassFraction, crushed = false } = given;
  if (sand !== undefined) demand('sand', 'mass fraction', sand, { atLeast: 0, atMost: 1 });
  if (clay !== undefined)
    demand('clay', 'mass fraction', clay, { atLeast: 0, atMost: 1 - (sand ?? 0) + 1e-9 }, 'sand and clay are shares of one mass');
  demand('gravel', 'mass fraction', gravel, { atLeast: 0, atMost: 1 });
  demandFlag('crushed', crushed);
  const { organicShare, particleDensity: mixedDensity } = mixedSolids(organicMatter);
  const texture = textureOf(given);
  const typical = texture === undefined ? undefined : typicalSoil(texture);
  const { quartzFraction = typical?.quartzFraction } = given;
  if (quartzFraction !== undefined) demand('quartzFraction', 'fraction', quartzFraction, { atLeast: 0, atMost: 1 });
  const { dryDensity, saturation, particleDensity = mixedDensity, frozen = false, unfrozenWater = 0 as VolumetricWater } = given;
  const soil = { dryDensity, saturation, particleDensity, frozen, unfrozenWater };
  const { porosity, water } = poresOf(soil);
  const kerstenSoil = sand === undefined ? typical?.kerstenSoil : sand > SANDY ? 'sandy' : 'silt or clay';
  return {
    ...{ soil, porosity, water, sand, clay, quartzFraction, kerstenSoil, organicMatter, organicShare, gravel, crushed },
    solid: quartzFraction === undefined ? undefined : (solidConductivity(quartzFraction, organicShare) as Conductivity),
    grain: sand === undefined ? typical?.grain : sand >= COARSE ? 'coarse' : 'fine',
    coteKonradClass: coteKonradClassOf({ organicMatter, gravel, crushed, kerstenSoil }),
  };
}

/** Class of the fine earth: as given, as sand and clay have it, or both where they agree. */
function textureOf({ texture, sand, clay }: KnownSoil): TextureClass | undefined {
  if (texture !== undefined) demandChoice('texture', texture, TEXTURE_CLASSES);
  if (sand === undefined || clay === undefined) return texture;
  const { texture: found } = textureClass({ sand, clay });
  if (texture === undefined || texture === found) return found;
  const hint = 'fractions and class are not of one soil; give the one that is better known';
  throw new InputError({ code: 'impossible', argument: 'texture', value: texture, allowed: `${found}, as sand and clay have it`, hint });
}

/** Kind of soil as Côté and Konrad tell them apart. */
function coteKonradClassOf({
  organicMatter,
  gravel,
  crushed,
  kerstenSoil,
}: Pick<Known, 'organicMatter' | 'gravel' | 'crushed' | 'kerstenSoil'>): CoteKonradClass | undefined {
  if (organicMatter >= PEAT) return 'fibrous organic';
  if (crushed || gravel >= GRAVEL) return 'gravel or coarse sand';
  return kerstenSoil === 'sandy' ? 'medium or fine sand' : kerstenSoil;
}
