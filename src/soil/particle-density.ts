/** Density of the grains of most mineral soils [kg/m3]; source `soilMechanicsTexts`. */
export const DEFAULT_PARTICLE_DENSITY = 2650;

/** Density of the grains of organic matter [kg/m3]; source `soilMechanicsTexts`. */
export const ORGANIC_DENSITY = 1300;

/** Density of the water in a soil [kg/m3]. */
export const WATER_DENSITY = 1000;

/** Density of the solids of peat, which are not organic alone [kg/m3]; source `soilMechanicsTexts`, 1400 to 1600. */
export const PEAT_PARTICLE_DENSITY = 1500;
