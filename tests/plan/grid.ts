import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import { InputError } from '../../src/errors/index.js';
import { type LoopInput, type LoopPlan, planLoop } from '../../src/plan/index.js';
import { CLIMATES, FIELD, HOUSE, SOILS, UNIT } from './grid.data.js';

/** A soil of the grid, or one with another moisture. */
type Soil = Omit<(typeof SOILS)[number], 'moisture'> & { readonly moisture: string };
type Climate = (typeof CLIMATES)[number];

/** A cell of the grid: its job and what came of it. */
export interface Cell {
  readonly soil: Soil;
  readonly climate: Climate;
  readonly input: LoopInput;
  readonly outcome: LoopPlan | InputError;
}

/** The job of a cell as an input document, every number from the grid; the rating points are those of the invented demo unit. */
export function cellDocument(soil: Soil, climate: Climate): unknown {
  const { heating, cooling, label, ratingOrigin } = demoDocument.heatPump;
  return {
    format: 'loamloop-input-1',
    name: `${soil.name}, ${climate.name}`,
    building: {
      heating: { designLoad: HOUSE.heatLoss, designOutdoor: climate.heatingDesign, indoor: HOUSE.indoor, balancePoint: HOUSE.heatingBalance },
      cooling: { designLoad: HOUSE.heatGain, designOutdoor: climate.coolingDesign, indoor: HOUSE.coolingIndoor, balancePoint: HOUSE.coolingBalance },
    },
    heatPump: {
      label,
      ratingOrigin,
      heating,
      cooling,
      sourceFlow: UNIT.flow,
      lowestEntering: UNIT.lowestEntering,
      lowestLeaving: UNIT.lowestLeaving,
      highestEntering: UNIT.highestEntering,
    },
    climate: { from: 'monthly-air', monthlyMeans: climate.monthlyMeans.map((mean) => `${String(mean)} degC`), cover: 'grass' },
    soil: {
      layers: [
        {
          top: '0 m',
          bottom: '2.5 m',
          sample: {
            from: 'sample',
            moisture: { basis: 'dry', value: soil.moisture },
            density: { from: 'core', dryDensity: soil.dryDensity },
            texture: { from: 'laboratory', class: soil.texture },
          },
        },
      ],
    },
    field: {
      layout: { type: 'two-pipe-stacked', upperDepth: FIELD.upperDepth, lowerDepth: FIELD.lowerDepth, trenchSpacing: FIELD.trenchSpacing },
      longestTrench: FIELD.longestTrench,
      mostTrenches: 40,
    },
    pipe: { series: 'metric', size: '32', dimensionRatio: '11' },
    header: { series: 'metric', size: '50', dimensionRatio: '11' },
    circuits: { coilLengths: FIELD.coils, distanceToHouse: FIELD.header },
    fluid: 'propylene-glycol',
  };
}

/** All nine cells, each planned; a refusal is an outcome too. */
export function planGrid(): readonly Cell[] {
  const reader = inputDocument();
  return CLIMATES.flatMap((climate) =>
    SOILS.map((soil) => {
      const input = reader.read(cellDocument(soil, climate));
      return { soil, climate, input, outcome: planned(input) };
    }),
  );
}

function planned(input: LoopInput): LoopPlan | InputError {
  try {
    return planLoop(input);
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
}
