import { enthalpyLayer } from './enthalpy-layer.js';
import { evenlyFreezing } from './ice-runs.js';

const DAYS = 365;
const COLDEST = 20;
const WATER = 0.3;

/** An area collector as a guideline has it, in damp cohesive soil. */
export const collector = {
  days: DAYS,
  coldest: COLDEST,
  depth: 1.3,
  spacing: 0.6,
  outside: 32,
  soil: evenlyFreezing({ thawed: [1.5, 2.8e6], frozen: [1.95, 2.8e6 - WATER * 2.09e6], water: WATER, range: 0.5 }),
};

/** 45 kWh/m² a year, the mean of each day on half a cosine: 16 W/m² in the coldest days, when a unit that takes 25 W/m² while it runs does so 15 hours a day [W/m2]. */
const half = Array.from({ length: DAYS }, (_, day) => Math.max(0, Math.cos((2 * Math.PI * (day - COLDEST)) / DAYS)));
export const collectorHeats = half.map((share) => (share * 45_000) / 24 / half.reduce((sum, each) => sum + each, 0));

const layer = {
  conductivity: 1.5,
  heatCapacity: 2.8e6,
  surface: [10, 9.5, COLDEST] as const,
  depth: collector.depth,
  heats: collectorHeats,
  years: 3,
};
const frozen = { conductivity: 1.95, heatCapacity: collector.soil.frozen.heatCapacity, latentHeat: collector.soil.latentHeat, range: 0.5 };

/** The plane of that collector by layers of enthalpy, without ice and with it. */
export const layeredCollector = (): Readonly<Record<'plain' | 'iced', ReturnType<typeof enthalpyLayer>>> => ({
  plain: enthalpyLayer(layer),
  iced: enthalpyLayer({ ...layer, frozen }),
});
