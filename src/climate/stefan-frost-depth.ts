import { demand } from '../errors/index.js';
import type { Conductivity, DegreeDays, LatentHeat, Length, Ratio, Shape, SurfaceResistance } from '../units/index.js';
import { demandFrozenConductivity, demandLatentHeat, demandLayers, depthWhere, type FrostLayer, frostLayerShape, frozenTo } from './frost-layers.js';
import { DAY } from './limits.js';

/** What {@link stefanFrostDepth} needs. */
export interface StefanFrostDepthInput {
  /** Conductivity of the frozen ground, 0.01 to 10 [W/(m.K)]. */
  readonly frozenConductivity: Conductivity;
  /** Heat set free in freezing, 1e5 to 3.4e8 [J/m3]. */
  readonly latentHeat: LatentHeat;
  /** Degree days of the air below freezing, 0 to 20000 [K.d]. */
  readonly freezingIndex: DegreeDays;
  /** Degree days of the surface over those of the air, 0.05 to 3; 1 when left out [1]. */
  readonly nFactor?: Ratio;
}

/** What {@link layeredStefanFrostDepth} needs. */
export interface LayeredStefanInput {
  /** Layers from the surface down. */
  readonly layers: readonly FrostLayer[];
  /** Degree days of the air below freezing, 0 to 20000 [K.d]. */
  readonly freezingIndex: DegreeDays;
  /** Degree days of the surface over those of the air, 0.05 to 3; 1 when left out [1]. */
  readonly nFactor?: Ratio;
  /** What insulates on top of the ground, such as snow, 0 to 10; 0 when left out [m2.K/W]. */
  readonly surfaceResistance?: SurfaceResistance;
}

/** Shape of {@link StefanFrostDepthInput}. */
export const stefanFrostDepthInputShape: Shape<StefanFrostDepthInput> = {
  frozenConductivity: 'conductivity',
  latentHeat: 'latent heat',
  freezingIndex: 'degree days',
  nFactor: { optional: 'ratio' },
};

/** Shape of {@link LayeredStefanInput}. */
export const layeredStefanInputShape: Shape<LayeredStefanInput> = {
  layers: { list: frostLayerShape },
  freezingIndex: 'degree days',
  nFactor: { optional: 'ratio' },
  surfaceResistance: { optional: 'surface resistance' },
};

/** Refuses a freezing index that no winter has, and a factor that no surface has. */
export function demandFreezing(freezingIndex: DegreeDays, nFactor: Ratio): void {
  demand('freezingIndex', 'degree days', freezingIndex, { atLeast: 0, atMost: 20_000 }, 'positive degree days below freezing');
  demand('nFactor', 'ratio', nFactor, { atLeast: 0.05, atMost: 3 });
}

/**
 * Stefan's frost depth in uniform ground.
 *
 * The frost reaches deeper than this nowhere: the heat that cools the ground itself is left out.
 *
 * @param input - conductivity of frozen ground [W/(m.K)], latent heat [J/m3], freezing index of the air [K.d], n-factor [1]
 * @returns frost depth [m]
 * @throws InputError when a number is out of range
 * @remarks
 * √(2 k n F/L). Source: `wsdotFrost`. Checked against three cases computed independently, one in US units; a constant frost freezes the
 * ground of a finite-volume run as deep where sensible heat is small.
 *
 * Invariants: as the root of conductivity and index; the layered form gives the same for layers that are alike.
 * @example
 * ```ts @import.meta.vitest
 * const { btuPerHourFootFahrenheit, btuPerCubicFoot, fahrenheitDays, feet } = await import('../units/index.js');
 * const ground = { frozenConductivity: btuPerHourFootFahrenheit(0.72), latentHeat: btuPerCubicFoot(2160) };
 * expect(feet.of(stefanFrostDepth({ ...ground, freezingIndex: fahrenheitDays(2500) }))).toBeCloseTo(6.324555, 6);
 * ```
 */
export function stefanFrostDepth({ frozenConductivity, latentHeat, freezingIndex, nFactor = 1 as Ratio }: StefanFrostDepthInput): Length {
  demandFrozenConductivity('frozenConductivity', frozenConductivity);
  demandLatentHeat('latentHeat', latentHeat, 1e5);
  demandFreezing(freezingIndex, nFactor);
  return Math.sqrt((2 * frozenConductivity * nFactor * freezingIndex * DAY) / latentHeat) as Length;
}

/**
 * Stefan's frost depth through layers, under snow or insulation.
 *
 * @param input - layers, freezing index of the air [K.d], n-factor [1] and resistance on the ground [m2.K/W]
 * @returns frost depth below the ground surface [m]
 * @throws InputError when a number is out of range or the last layer has no water to freeze
 * @remarks
 * Each layer takes L d (ΣR above + d/2k) of the index. Source: `wsdotFrost`. Checked against {@link stefanFrostDepth} and a stepped sum.
 *
 * Invariants: cutting a layer in two changes nothing; resistance on top never makes it deeper.
 * @example
 * ```ts @import.meta.vitest
 * const { joulesPerCubicMetre, joulesPerCubicMetreKelvin, kelvinDays, metres, squareMetreKelvinPerWatt, wattsPerMetreKelvin } = await import('../units/index.js');
 * const layer = {
 *   thickness: metres(3), frozenConductivity: wattsPerMetreKelvin(1.5),
 *   latentHeat: joulesPerCubicMetre(1.0688e8), heatCapacity: joulesPerCubicMetreKelvin(2e6),
 * };
 * const winter = { layers: [layer], freezingIndex: kelvinDays(386.1) };
 * expect(layeredStefanFrostDepth(winter)).toBeCloseTo(0.9677, 3);
 * expect(layeredStefanFrostDepth({ ...winter, surfaceResistance: squareMetreKelvinPerWatt(1) })).toBeCloseTo(0.2847, 3);
 * ```
 */
export function layeredStefanFrostDepth(input: LayeredStefanInput): Length {
  const { layers, freezingIndex, nFactor = 1 as Ratio, surfaceResistance = 0 as SurfaceResistance } = input;
  demandLayers(layers);
  demandFreezing(freezingIndex, nFactor);
  demandSurfaceResistance(surfaceResistance);
  return depthWhere((depth) => nFactor * freezingIndex - frozenTo(depth, layers, surfaceResistance).index) as Length;
}

/** Refuses a resistance on the ground that no cover has. */
export function demandSurfaceResistance(surfaceResistance: SurfaceResistance): void {
  demand('surfaceResistance', 'surface resistance', surfaceResistance, { atLeast: 0, atMost: 10 });
}
