import { demand } from '../errors/index.js';
import type { Finding } from '../findings/index.js';
import type { Source } from '../references/index.js';
import type { Band } from '../states/index.js';
import type { Conductivity, Fraction, HeatCapacity } from '../units/index.js';
import { bandAround, COVERAGE, together } from './band-around.js';
import { ASSUMED_HEAT_CAPACITY } from './heat-capacity.data.js';
import { handbookConductivity, type HandbookConductivity } from './handbook.js';
import type { HandbookState } from './handbook-words.js';
import { thermalOf } from './heat-capacity.js';
import type { SoilThermalPropertiesResult } from './properties.js';
import type { HandbookSoil, MeasuredSoil } from './sample.js';

/** A survey of 12 to 16 readings by needle probe finds the mean conductivity of a site to about this (`needleSurvey2012`) [1]. */
export const SURVEY_ERROR = 0.15 as Fraction;

/** Beyond this only rock, or solid quartz full of water, conducts (`common practice`) [W/(m.K)]. */
const MOST_OF_SOIL = 4 as Conductivity;

/** Standard error of a heat capacity that was measured; cores scatter by as much about the sum of their constituents (`kansasCores2022`) [1]. */
const HEAT_CAPACITY_ERROR = 0.15;

/** Thermal properties of a soil whose conductivity was measured. */
export function measuredSoil({ conductivity, standardError = SURVEY_ERROR, heatCapacity }: MeasuredSoil): SoilThermalPropertiesResult {
  demand('conductivity', 'conductivity', conductivity, { atLeast: 0.01, atMost: 10 });
  demand('standardError', 'fraction', standardError, { atLeast: 0.01, atMost: 1 });
  if (heatCapacity !== undefined) demand('heatCapacity', 'heat capacity', heatCapacity, { atLeast: 1e5, atMost: 1e7 });
  const stored = heatCapacity === undefined ? assumedHeatCapacity('natural') : bandAround<'heat capacity'>(heatCapacity, HEAT_CAPACITY_ERROR);
  const high: Finding = {
    code: 'measured-conductivity-high',
    level: 'warning',
    values: { conductivity, most: MOST_OF_SOIL },
    source: 'common practice',
  };
  return {
    from: 'laboratory',
    ...banded(bandAround(conductivity, standardError), stored),
    models: [],
    findings: [...(conductivity > MOST_OF_SOIL ? [high] : []), ...(heatCapacity === undefined ? [assumed(stored.estimate)] : [])],
    sources: ['needleSurvey2012', heatCapacity === undefined ? 'common practice' : 'kansasCores2022'],
  };
}

/** Thermal properties of a soil known by a word. */
export function handbookSoil({ material, state }: HandbookSoil): SoilThermalPropertiesResult {
  const book = handbookConductivity({ material, state });
  const { low, recommended, high, values } = book;
  const conductivity = { low, estimate: recommended, high, coverage: COVERAGE } as Band<'conductivity'>;
  const stored = handbookHeatCapacity(book);
  const read: Finding = {
    code: 'conductivity-from-handbook',
    level: 'note',
    values: { low, estimate: recommended, high },
    source: 'common practice',
  };
  const peat: Finding = { code: 'peat-ground', level: 'warning', values: { conductivity: recommended }, source: 'kujala2008' };
  const sources: readonly Source[] = [...new Set(values.map(({ source }) => source)), 'common practice'];
  return {
    from: 'handbook',
    ...banded(conductivity, stored ?? assumedHeatCapacity(state)),
    models: [],
    findings: [read, ...(material === 'peat' ? [peat] : []), ...(stored === undefined ? [assumed(assumedHeatCapacity(state).estimate)] : [])],
    sources,
  };
}

type Banded = Pick<SoilThermalPropertiesResult, 'conductivity' | 'heatCapacity' | 'diffusivity' | 'thermal'>;

/** The diffusivity of a conductivity and a heat capacity that err on their own. */
function banded(conductivity: Band<'conductivity'>, heatCapacity: Band<'heat capacity'>): Banded {
  const thermal = thermalOf(conductivity.estimate, heatCapacity.estimate);
  const side = (k: Conductivity, c: HeatCapacity): number => together(Math.log(k / conductivity.estimate), Math.log(c / heatCapacity.estimate));
  const diffusivity = {
    low: thermal.diffusivity * Math.exp(-side(conductivity.low, heatCapacity.high)),
    estimate: thermal.diffusivity,
    high: thermal.diffusivity * Math.exp(side(conductivity.high, heatCapacity.low)),
    coverage: COVERAGE,
  } as Band<'diffusivity'>;
  return { conductivity, heatCapacity, diffusivity, thermal };
}

function handbookHeatCapacity({ heatCapacityLow, heatCapacityHigh }: HandbookConductivity): Band<'heat capacity'> | undefined {
  if (heatCapacityLow === undefined || heatCapacityHigh === undefined) return undefined;
  const estimate = Math.sqrt(heatCapacityLow * heatCapacityHigh);
  return { low: heatCapacityLow, estimate, high: heatCapacityHigh, coverage: COVERAGE } as Band<'heat capacity'>;
}

function assumedHeatCapacity(state: HandbookState): Band<'heat capacity'> {
  const [low, estimate, high] = ASSUMED_HEAT_CAPACITY[state];
  return { low, estimate, high, coverage: COVERAGE } as Band<'heat capacity'>;
}

function assumed(heatCapacity: HeatCapacity): Finding {
  return { code: 'heat-capacity-assumed', level: 'note', values: { heatCapacity }, source: 'common practice' };
}
