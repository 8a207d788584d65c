import { joinedShape } from '../states/index.js';
import type {
  Conductivity,
  DayOfYear,
  Density,
  Diameter,
  DryBasisMoisture,
  Fraction,
  HeatCapacity,
  Length,
  Mass,
  MassFraction,
  Ratio,
  Shape,
  Time,
} from '../units/index.js';
import { soilIdentificationShapes, type SoilIdentificationValues } from './soil-identification.js';

/** Values of the findings that the soil room raises, by code. */
export interface SoilFindingValues extends SoilIdentificationValues {
  /** The measurements give more water than the pores hold, within what errors explain. */
  'water-beyond-pores': { readonly saturation: Ratio };
  /** The pores are nearly full. */
  'soil-near-saturation': { readonly saturation: Ratio };
  /** The soil is dry to the touch, where models and cores part. */
  'soil-very-dry': { readonly saturation: Ratio; readonly moisture: DryBasisMoisture };
  /** A soil called mineral holds water like an organic one. */
  'moisture-of-organic-soil': { readonly moisture: DryBasisMoisture; readonly usual: DryBasisMoisture };
  /** Sand so dry that a warm pipe may drive its water away. */
  'sand-may-dry-out-in-cooling': { readonly moisture: DryBasisMoisture; readonly least: DryBasisMoisture };
  /** A density measured on disturbed soil; the typical one of the texture stands in. */
  'disturbed-sample-density': { readonly given: Density; readonly used: Density; readonly standardError: Fraction };
  /** No density was measured; the typical one of the texture stands in. */
  'density-not-measured': { readonly used: Density; readonly standardError: Fraction };
  /** A measured density that is unusual for the texture. */
  'density-outside-texture': { readonly dryDensity: Density; readonly low: Density; readonly high: Density };
  /** The typical density leaves no room for the measured water, so that the soil must be looser. */
  'density-limited-by-moisture': { readonly typical: Density; readonly used: Density; readonly moisture: DryBasisMoisture };
  /** A dry density that mineral soil hardly has, whatever its texture. */
  'density-beyond-usual': { readonly dryDensity: Density; readonly low: Density; readonly high: Density };
  /** A density measured no better than it is known from the texture alone. */
  'density-measured-poorly': { readonly standardError: Fraction; readonly typicalError: Fraction };
  /** The sample was dried in air or little warmer, which leaves water in it. */
  'dried-in-air': { readonly moisture: DryBasisMoisture; readonly added: DryBasisMoisture };
  /** The balance is too coarse for so little soil. */
  'moisture-weighed-poorly': { readonly moistureError: DryBasisMoisture; readonly solidsMass: Mass; readonly enough: Mass };
  /** So little soil that one stone more or less counts. */
  'sample-small-for-its-grains': { readonly soilMass: Mass; readonly leastMass: Mass; readonly largestParticle: Diameter };
  /** The sample still lost mass, or was weighed again too soon to tell. */
  'mass-not-constant': { readonly lostShare: Ratio; readonly lostLimit: Ratio };
  /** The sample was heavier after more time in the oven. */
  'mass-gained-in-drying': { readonly gainedShare: Ratio };
  /** The sample was in the oven for less time than is usual. */
  'drying-time-short': { readonly ovenTime: Time; readonly usualTime: Time };
  /** More organic matter than models of mineral soil can take. */
  'organic-outside-models': { readonly organicMatter: MassFraction; readonly limit: MassFraction };
  /** Peat: poor, and different from place to place. */
  'peat-ground': { readonly conductivity: Conductivity };
  /** Drier than the soils Kersten's equation was made from. */
  'kersten-outside-range': { readonly moisture: DryBasisMoisture; readonly least: DryBasisMoisture };
  /** Porosity beyond those a model's line of dry soil was drawn through. */
  'porosity-outside-model': {
    readonly model: 'lu-2007' | 'lu-2014';
    readonly porosity: Fraction;
    readonly low: Fraction;
    readonly high: Fraction;
  };
  /** So dry that the model takes the soil as without water. */
  'saturation-outside-model': { readonly model: 'johansen'; readonly saturation: Ratio; readonly low: Ratio };
  /** So loose that the model would have the soil conduct better the looser it is. */
  'density-outside-model': { readonly model: 'campbell'; readonly dryDensity: Density; readonly low: Density };
  /** A model of frozen soil is asked of soil whose water is mostly liquid. */
  'frozen-model-with-little-ice': { readonly liquidShare: Fraction; readonly high: Fraction };
  /** The model of peat lies above the peat that was measured. */
  'peat-model-reads-high': { readonly conductivity: Conductivity; readonly excess: Fraction };
  /** Quartz so near a step of the model that a little more or less moves the result much. */
  'quartz-near-step': { readonly quartzFraction: Fraction; readonly poorer: Conductivity; readonly richer: Conductivity };
  /** The conductivity comes from a table by a word. */
  'conductivity-from-handbook': { readonly low: Conductivity; readonly estimate: Conductivity; readonly high: Conductivity };
  /** A measured conductivity that soil hardly has. */
  'measured-conductivity-high': { readonly conductivity: Conductivity; readonly most: Conductivity };
  /** No heat capacity was given. */
  'heat-capacity-assumed': { readonly heatCapacity: HeatCapacity };
  /** Stones beyond the soils that the models were tried on. */
  'gravelly-soil-unmeasured': { readonly gravel: MassFraction; readonly limit: MassFraction };
  /** Where most of the error of a conductivity comes from, and its part of all. */
  'conductivity-error-mostly-by': {
    readonly cause: 'model' | 'texture' | 'quartz' | 'density' | 'moisture' | 'season' | 'place' | 'measurement';
    readonly share: Fraction;
  };
  /** Sampled in the wet half of the year; the dry season is to come. */
  'sampled-in-wet-season': {
    readonly sampledOn: DayOfYear;
    readonly moisture: DryBasisMoisture;
    readonly driestMoisture: DryBasisMoisture;
    readonly conductivity: Conductivity;
    readonly driestConductivity: Conductivity;
  };
  /** Moisture carried to other seasons by a rule. */
  'moisture-carried-by-rule': { readonly heldMoisture: DryBasisMoisture; readonly driestShare: Fraction };
  /** The soil log begins below the surface; its first layer is continued upward. */
  'soil-log-starts-deep': { readonly logTop: Length; readonly wanted: Length };
  /** The soil log ends too high; its last layer is continued downward. */
  'soil-log-too-shallow': { readonly logBottom: Length; readonly pipeDepth: Length; readonly wanted: Length };
  /** Peat in the log, where the pipes feel it. */
  'peat-in-log': { readonly top: Length; readonly bottom: Length; readonly conductivity: Conductivity };
  /** Ground that people filled in, where the pipes feel it. */
  'made-ground-in-log': { readonly top: Length; readonly bottom: Length };
  /** The trench cuts rock and the pipes have no bedding. */
  'rock-without-bedding': { readonly top: Length; readonly thickness: Length };
  /** A ring of bedding lies across the interface of two layers. */
  'bedding-across-layers': { readonly top: Length; readonly thickness: Length };
  /** The water table stands above the bottom of the trench. */
  'water-table-in-trench': { readonly waterTable: Length; readonly trenchDepth: Length };
  /** Layers differ so much that months and the long run feel other conductivities. */
  'layers-felt-late': { readonly least: Conductivity; readonly greatest: Conductivity };
  /** The rule of logarithms was applied, which is off by so much where it was tried. */
  'log-resistance-rule-rough': { readonly conductivity: Conductivity; readonly worstError: Fraction };
  /** What the trench is filled with, and what the pipes see with and without it. */
  'trench-fill-around-pipes': { readonly fillConductivity: Conductivity; readonly conductivity: Conductivity; readonly unfilled: Conductivity };
  /** The density of a fill is a share of the native one by custom. */
  'fill-density-assumed': { readonly firstWinterShare: Fraction; readonly settledShare: Fraction };
  /** How the ground is called by its conductivity, and by the ends of its band. */
  'ground-conductivity-class': {
    readonly class: 'poor' | 'fair' | 'good';
    readonly lowClass: 'poor' | 'fair' | 'good';
    readonly highClass: 'poor' | 'fair' | 'good';
    readonly low: Conductivity;
    readonly estimate: Conductivity;
    readonly high: Conductivity;
  };
}

/** Shapes of {@link SoilFindingValues}. */
export const soilFindingShapes: { readonly [C in keyof SoilFindingValues]: Shape<SoilFindingValues[C]> } = /* @__PURE__ */ joinedShape(
  soilIdentificationShapes,
  {
    'water-beyond-pores': { saturation: 'ratio' },
    'soil-near-saturation': { saturation: 'ratio' },
    'soil-very-dry': { saturation: 'ratio', moisture: 'moisture on dry basis' },
    'moisture-of-organic-soil': { moisture: 'moisture on dry basis', usual: 'moisture on dry basis' },
    'sand-may-dry-out-in-cooling': { moisture: 'moisture on dry basis', least: 'moisture on dry basis' },
    'disturbed-sample-density': { given: 'density', used: 'density', standardError: 'fraction' },
    'density-not-measured': { used: 'density', standardError: 'fraction' },
    'density-outside-texture': { dryDensity: 'density', low: 'density', high: 'density' },
    'density-limited-by-moisture': { typical: 'density', used: 'density', moisture: 'moisture on dry basis' },
    'density-beyond-usual': { dryDensity: 'density', low: 'density', high: 'density' },
    'density-measured-poorly': { standardError: 'fraction', typicalError: 'fraction' },
    'dried-in-air': { moisture: 'moisture on dry basis', added: 'moisture on dry basis' },
    'moisture-weighed-poorly': { moistureError: 'moisture on dry basis', solidsMass: 'mass', enough: 'mass' },
    'sample-small-for-its-grains': { soilMass: 'mass', leastMass: 'mass', largestParticle: 'diameter' },
    'mass-not-constant': { lostShare: 'ratio', lostLimit: 'ratio' },
    'mass-gained-in-drying': { gainedShare: 'ratio' },
    'drying-time-short': { ovenTime: 'time', usualTime: 'time' },
    'organic-outside-models': { organicMatter: 'mass fraction', limit: 'mass fraction' },
    'peat-ground': { conductivity: 'conductivity' },
    'kersten-outside-range': { moisture: 'moisture on dry basis', least: 'moisture on dry basis' },
    'porosity-outside-model': { model: ['lu-2007', 'lu-2014'], porosity: 'fraction', low: 'fraction', high: 'fraction' },
    'saturation-outside-model': { model: ['johansen'], saturation: 'ratio', low: 'ratio' },
    'density-outside-model': { model: ['campbell'], dryDensity: 'density', low: 'density' },
    'frozen-model-with-little-ice': { liquidShare: 'fraction', high: 'fraction' },
    'peat-model-reads-high': { conductivity: 'conductivity', excess: 'fraction' },
    'quartz-near-step': { quartzFraction: 'fraction', poorer: 'conductivity', richer: 'conductivity' },
    'conductivity-from-handbook': { low: 'conductivity', estimate: 'conductivity', high: 'conductivity' },
    'measured-conductivity-high': { conductivity: 'conductivity', most: 'conductivity' },
    'heat-capacity-assumed': { heatCapacity: 'heat capacity' },
    'gravelly-soil-unmeasured': { gravel: 'mass fraction', limit: 'mass fraction' },
    'conductivity-error-mostly-by': {
      cause: ['model', 'texture', 'quartz', 'density', 'moisture', 'season', 'place', 'measurement'],
      share: 'fraction',
    },
    'sampled-in-wet-season': {
      sampledOn: 'day of year',
      moisture: 'moisture on dry basis',
      driestMoisture: 'moisture on dry basis',
      conductivity: 'conductivity',
      driestConductivity: 'conductivity',
    },
    'moisture-carried-by-rule': { heldMoisture: 'moisture on dry basis', driestShare: 'fraction' },
    'soil-log-starts-deep': { logTop: 'length', wanted: 'length' },
    'soil-log-too-shallow': { logBottom: 'length', pipeDepth: 'length', wanted: 'length' },
    'peat-in-log': { top: 'length', bottom: 'length', conductivity: 'conductivity' },
    'made-ground-in-log': { top: 'length', bottom: 'length' },
    'rock-without-bedding': { top: 'length', thickness: 'length' },
    'bedding-across-layers': { top: 'length', thickness: 'length' },
    'water-table-in-trench': { waterTable: 'length', trenchDepth: 'length' },
    'layers-felt-late': { least: 'conductivity', greatest: 'conductivity' },
    'log-resistance-rule-rough': { conductivity: 'conductivity', worstError: 'fraction' },
    'trench-fill-around-pipes': { fillConductivity: 'conductivity', conductivity: 'conductivity', unfilled: 'conductivity' },
    'fill-density-assumed': { firstWinterShare: 'fraction', settledShare: 'fraction' },
    'ground-conductivity-class': {
      class: ['poor', 'fair', 'good'],
      lowClass: ['poor', 'fair', 'good'],
      highClass: ['poor', 'fair', 'good'],
      low: 'conductivity',
      estimate: 'conductivity',
      high: 'conductivity',
    },
  },
);
