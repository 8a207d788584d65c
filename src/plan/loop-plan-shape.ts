import { monthlyLoadsShape, runFractionsShape } from '../building/index.js';
import { antifreezeChargeShape } from '../fluid/index.js';
import { circuitHeadShape, circuitOptionShape } from '../circuit/index.js';
import { plausibleLengthShape } from '../operation/index.js';
import { layoutShape } from '../ground/index.js';
import { pipeDimensionsShape, pipeResistancePartsShape } from '../pipe/index.js';
import { soilSampleShape, soilThermalPropertiesShape } from '../soil/index.js';
import { annualWaveShape, bandShape, fluidStateShape, joinedShape, soilThermalShape } from '../states/index.js';
import { hardSeasonShape } from './design-seasons.js';
import { groundAtPipesShape } from './ground-at-pipes.js';
import { emittersAtDesignShape } from './emitters.js';
import { loopByHoursShape } from './loop-by-hours.js';
import { loopFluidShape } from './fluid-plan.js';
import { unitAtDesignShape } from './mode-design.js';
import { pipeNeededShape } from './pipe-needed.js';
import { planIceShape } from './plan-ice.js';
import { planSeasonShape } from './plan-season.js';
import { planSettlingShape } from './plan-settling.js';
import type { Shape } from '../units/index.js';
import type { LoopPlan, ModeResult, PlanRemarks, TrialResult } from './loop-plan.js';

const modeShape: Shape<ModeResult> = {
  unit: unitAtDesignShape,
  loads: monthlyLoadsShape,
  run: runFractionsShape,
  fluid: fluidStateShape,
  resistance: pipeResistancePartsShape,
  needed: pipeNeededShape,
};

const trialShape: Shape<TrialResult> = {
  trenches: 'count',
  trenchLength: 'trench length',
  coilLength: 'pipe length',
  pipe: 'pipe length',
  needed: 'pipe length',
  enough: 'flag',
};

/** Shape of the numbers of a {@link LoopPlan}. */
export const loopPlanShape: Shape<Omit<LoopPlan, PlanRemarks>> = {
  name: 'text',
  soil: {
    layers: { list: { top: 'length', bottom: 'length', sample: soilSampleShape, properties: soilThermalPropertiesShape } },
    effective: soilThermalShape,
    conductivity: /* @__PURE__ */ bandShape('conductivity'),
  },
  ground: { surface: annualWaveShape, pipes: groundAtPipesShape },
  designWinter: { optional: hardSeasonShape },
  designSummer: { optional: hardSeasonShape },
  heating: { optional: modeShape },
  cooling: { optional: modeShape },
  governing: ['heating', 'cooling'],
  pipe: pipeDimensionsShape,
  fluid: /* @__PURE__ */ joinedShape(loopFluidShape, { charge: antifreezeChargeShape }),
  loop: {
    layout: layoutShape,
    circuits: circuitOptionShape,
    trench: 'trench length',
    needed: /* @__PURE__ */ bandShape('pipe length'),
    heatPerPipeLength: 'heat per pipe length',
    pipePerGroundHeat: 'length per power',
    spare: 'fraction',
    land: 'area',
    usual: plausibleLengthShape,
    others: { list: trialShape },
    nextSmaller: { optional: trialShape },
  },
  byHours: loopByHoursShape,
  season: planSeasonShape,
  settling: { optional: planSettlingShape },
  iceAround: { optional: planIceShape },
  emitters: { optional: emittersAtDesignShape },
  hydraulics: /* @__PURE__ */ joinedShape(circuitHeadShape, { loopVolume: 'volume', fluidTemperature: 'temperature' }),
};
