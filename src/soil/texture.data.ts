/** What is typical of a texture class of the USDA triangle. */
export interface TextureRecord {
  /** Porosity of soil lying undisturbed [1]. */
  readonly porosity: number;
  /** Volume of quartz in the volume of the solids [1]. */
  readonly quartzFraction: number;
  /** Conducts like a coarse soil by the 40 % sand rule. */
  readonly coarse: boolean;
  /** Half or more of the fine earth is silt and clay, which takes Kersten's second equation. */
  readonly siltOrClay: boolean;
}

/**
 * Typical porosity and quartz by texture class: porosity from the soil table of a public weather model (`landModelSoils`), quartz
 * after Peters-Lidard and others (`petersLidard1998`).
 *
 * Dry densities of the 37 measured cores with a class here lie 0.7 % below 2650 kg/m³ · (1 − porosity) on the mean and scatter by 10 %
 * about it; the topsoil densities of farm tables lie 7 % below them.
 */
export const TEXTURES = {
  sand: { porosity: 0.339, quartzFraction: 0.92, coarse: true, siltOrClay: false },
  'loamy sand': { porosity: 0.421, quartzFraction: 0.82, coarse: true, siltOrClay: false },
  'sandy loam': { porosity: 0.434, quartzFraction: 0.6, coarse: true, siltOrClay: false },
  'silt loam': { porosity: 0.476, quartzFraction: 0.25, coarse: false, siltOrClay: true },
  silt: { porosity: 0.476, quartzFraction: 0.1, coarse: false, siltOrClay: true },
  loam: { porosity: 0.439, quartzFraction: 0.4, coarse: false, siltOrClay: true },
  'sandy clay loam': { porosity: 0.404, quartzFraction: 0.6, coarse: true, siltOrClay: false },
  'silty clay loam': { porosity: 0.464, quartzFraction: 0.1, coarse: false, siltOrClay: true },
  'clay loam': { porosity: 0.465, quartzFraction: 0.35, coarse: false, siltOrClay: true },
  'sandy clay': { porosity: 0.406, quartzFraction: 0.52, coarse: true, siltOrClay: false },
  'silty clay': { porosity: 0.468, quartzFraction: 0.1, coarse: false, siltOrClay: true },
  clay: { porosity: 0.468, quartzFraction: 0.25, coarse: false, siltOrClay: true },
} as const;
