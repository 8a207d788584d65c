import { describe, expect, it } from 'vitest';
import { demoDocument } from '../../src/demo.data.js';
import { inputDocument } from '../../src/document/index.js';
import { antifreezeForProtection, warmestFreezingPoint } from '../../src/fluid/index.js';
import { readHeatPump } from '../../src/heat-pump/index.js';
import { loopFluid } from '../../src/plan/fluid-plan.js';
import { celsius } from '../../src/units/index.js';

const { heatPump } = inputDocument().read(demoDocument);

describe('the fluid of a loop', () => {
  it('is free of ice down to the temperature asked for by the warmest source, also where the fit asks for less', () => {
    const fluid = loopFluid('propylene-glycol', readHeatPump({ ...heatPump, lowestEntering: celsius(-1), lowestLeaving: celsius(-4) }));
    const { protectTo = celsius(NaN) } = fluid;
    expect(warmestFreezingPoint(fluid)).toBeLessThanOrEqual(protectTo);
    expect(fluid.volumeFraction).toBeGreaterThan(antifreezeForProtection({ fluid: 'propylene-glycol', protectTo }).volumeFraction);
  });
});
