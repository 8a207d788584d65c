import type { ReferenceKey } from '../references/index.js';
import type { HandbookMaterial, HandbookState } from './handbook-words.js';

/** One line of a handbook's table. */
export interface HandbookRow {
  readonly materials: readonly HandbookMaterial[];
  readonly state: HandbookState;
  /** Least, recommended and greatest conductivity, as far as the handbook has them [W/(m.K)]. */
  readonly low?: number;
  readonly recommended?: number;
  readonly high?: number;
  /** Least and greatest volumetric heat capacity [MJ/(m3.K)]. */
  readonly heatCapacity?: readonly [low: number, high: number];
  readonly source: ReferenceKey;
}

/**
 * Conductivities of soils in handbooks, in W/(m·K).
 *
 * `salomoneMarlowe1989` recommends its low column for heat exchangers in the ground; its high design value is left out.
 * `busby2016` are medians in place through the year; the heat capacity they imply holds other ways of heat too and is left out.
 */
export const HANDBOOK_ROWS: readonly HandbookRow[] = [
  { materials: ['gravel'], state: 'dry', low: 0.4, recommended: 0.4, high: 0.5, heatCapacity: [1.4, 1.58], source: 'vdi4640of2000' },
  { materials: ['gravel'], state: 'saturated', recommended: 1.8, heatCapacity: [2.41, 2.41], source: 'vdi4640of2000' },
  { materials: ['sand'], state: 'dry', low: 0.3, recommended: 0.4, high: 0.8, heatCapacity: [1.3, 1.6], source: 'vdi4640of2000' },
  { materials: ['sand'], state: 'saturated', low: 1.7, recommended: 2.4, high: 5, heatCapacity: [2.2, 2.92], source: 'vdi4640of2000' },
  { materials: ['clay', 'silt'], state: 'dry', low: 0.4, recommended: 0.5, high: 1, heatCapacity: [1.51, 1.58], source: 'vdi4640of2000' },
  { materials: ['clay', 'silt'], state: 'saturated', low: 0.9, recommended: 1.7, high: 2.3, heatCapacity: [1.58, 3.38], source: 'vdi4640of2000' },
  { materials: ['gravel'], state: 'dry', low: 0.4, recommended: 0.4, high: 0.9, heatCapacity: [1.3, 1.6], source: 'vdi4640of2010' },
  { materials: ['gravel'], state: 'saturated', low: 1.6, recommended: 1.8, high: 2.5, heatCapacity: [2.2, 2.6], source: 'vdi4640of2010' },
  { materials: ['sand'], state: 'dry', low: 0.3, recommended: 0.4, high: 0.9, heatCapacity: [1.3, 1.6], source: 'vdi4640of2010' },
  { materials: ['sand'], state: 'moist', low: 1, recommended: 1.4, high: 1.9, heatCapacity: [1.6, 2.2], source: 'vdi4640of2010' },
  { materials: ['sand'], state: 'saturated', low: 2, recommended: 2.4, high: 3, heatCapacity: [2.2, 2.8], source: 'vdi4640of2010' },
  { materials: ['clay', 'silt'], state: 'dry', low: 0.4, recommended: 0.5, high: 1, heatCapacity: [1.5, 1.6], source: 'vdi4640of2010' },
  { materials: ['clay', 'silt'], state: 'saturated', low: 1.1, recommended: 1.8, high: 3.1, heatCapacity: [2, 2.8], source: 'vdi4640of2010' },
  { materials: ['loam', 'till'], state: 'natural', low: 1.1, recommended: 2.4, high: 2.9, heatCapacity: [1.5, 2.5], source: 'vdi4640of2010' },
  { materials: ['peat'], state: 'natural', low: 0.2, recommended: 0.4, high: 0.7, heatCapacity: [0.5, 3.8], source: 'vdi4640of2010' },
  { materials: ['sand'], state: 'natural', low: 0.606, recommended: 0.779, high: 2.51, source: 'salomoneMarlowe1989' },
  { materials: ['silt'], state: 'natural', low: 0.865, recommended: 1.644, high: 2.51, source: 'salomoneMarlowe1989' },
  { materials: ['clay'], state: 'natural', low: 0.865, recommended: 1.125, high: 1.644, source: 'salomoneMarlowe1989' },
  { materials: ['loam'], state: 'natural', low: 0.865, recommended: 0.952, high: 2.51, source: 'salomoneMarlowe1989' },
  { materials: ['heavy clay'], state: '15 % water', low: 1.385, high: 1.904, source: 'ashraeSoils' },
  { materials: ['heavy clay'], state: '5 % water', low: 1.038, high: 1.385, source: 'ashraeSoils' },
  { materials: ['light clay'], state: '15 % water', low: 0.692, high: 1.038, source: 'ashraeSoils' },
  { materials: ['light clay'], state: '5 % water', low: 0.519, high: 0.865, source: 'ashraeSoils' },
  { materials: ['heavy sand'], state: '15 % water', low: 2.769, high: 3.808, source: 'ashraeSoils' },
  { materials: ['heavy sand'], state: '5 % water', low: 2.077, high: 3.288, source: 'ashraeSoils' },
  { materials: ['light sand'], state: '15 % water', low: 1.038, high: 2.077, source: 'ashraeSoils' },
  { materials: ['light sand'], state: '5 % water', low: 0.865, high: 1.904, source: 'ashraeSoils' },
  { materials: ['sand'], state: 'natural', recommended: 1.56, source: 'busby2016' },
  { materials: ['loam'], state: 'natural', recommended: 1.15, source: 'busby2016' },
  { materials: ['clay'], state: 'natural', recommended: 1.81, source: 'busby2016' },
  { materials: ['peat'], state: 'natural', low: 0.23, high: 0.28, source: 'kujala2008' },
  { materials: ['peat'], state: 'natural, frozen', low: 0.43, high: 0.67, source: 'kujala2008' },
  { materials: ['peat'], state: 'saturated', low: 0.41, high: 0.5, source: 'kujala2008' },
  { materials: ['peat'], state: 'saturated, frozen', low: 1.48, high: 1.49, source: 'kujala2008' },
];

/** A conductivity of codes for the heat loss of buried pipes. */
export interface HeatLossRow {
  readonly material: HandbookMaterial | 'sandy loam';
  readonly state: HandbookState;
  readonly conductivity: number;
}

/** Conductivities chosen high, to be safe for the loss of heat (`heatLossPractice278`): never to size a loop by [W/(m.K)]. */
export const HEAT_LOSS_ROWS: readonly HeatLossRow[] = [
  { material: 'sand', state: 'dry', conductivity: 1.1 },
  { material: 'sandy loam', state: 'dry', conductivity: 1.1 },
  { material: 'loam', state: 'dry', conductivity: 1.74 },
  { material: 'clay', state: 'dry', conductivity: 1.74 },
  { material: 'gravel', state: 'dry', conductivity: 2.03 },
  { material: 'sand', state: 'moist', conductivity: 1.92 },
  { material: 'sandy loam', state: 'moist', conductivity: 1.92 },
  { material: 'loam', state: 'moist', conductivity: 2.56 },
  { material: 'clay', state: 'moist', conductivity: 2.56 },
  { material: 'gravel', state: 'moist', conductivity: 2.73 },
  { material: 'sand', state: 'saturated', conductivity: 2.44 },
  { material: 'sandy loam', state: 'saturated', conductivity: 2.44 },
  { material: 'loam', state: 'saturated', conductivity: 2.67 },
  { material: 'clay', state: 'saturated', conductivity: 2.67 },
  { material: 'gravel', state: 'saturated', conductivity: 3.37 },
];
