import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boreArea,
  flowAtReynolds,
  flowAtVelocity,
  flowVelocity,
  pressureGradient,
  reynoldsNumber,
  type ReynoldsWanted,
  type VelocityWanted,
} from '../../src/pipe/index.js';
import {
  centipoise,
  diameterInches,
  diameterMetres,
  feetOfWaterPerHundredFeet,
  gallonsPerMinute,
  kilogramsPerCubicMetre,
  litresPerSecond,
  metresPerSecond,
  millipascalSeconds,
  poundsPerCubicFoot,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const fluid = { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) };
const bore = fc.double({ min: 0.005, max: 0.5, noNaN: true }).map((metres) => ({ insideDiameter: diameterMetres(metres) }));
const wanted = fc.double({ min: 1e-6, max: 1e5, noNaN: true });

describe('flow, bore and velocity', () => {
  it('go there and back', () => {
    fc.assert(
      fc.property(bore, fc.double({ min: 1e-6, max: 100, noNaN: true }), wanted, (pipe, speed, reynolds) => {
        const velocity = metresPerSecond(speed);
        const flow = flowAtVelocity({ pipe, velocity });
        expect(flowVelocity({ pipe, flow }) / velocity).toBeCloseTo(1, 12);
        expect(flow / (velocity * boreArea(pipe))).toBeCloseTo(1, 12);
        expect(2 * Math.sqrt(boreArea(pipe) / Math.PI)).toBeCloseTo(pipe.insideDiameter, 12);
        const atReynolds = flowAtReynolds({ pipe, fluid, reynolds: ratio(reynolds) });
        expect(reynoldsNumber({ pipe, fluid, flow: atReynolds }) / reynolds).toBeCloseTo(1, 12);
      }),
    );
  });

  it('give the same in US units as in metric ones', () => {
    const us = pressureGradient({
      pipe: { insideDiameter: diameterInches(0.86) },
      fluid: { density: poundsPerCubicFoot(poundsPerCubicFoot.of(fluid.density)), viscosity: centipoise(3.9) },
      flow: gallonsPerMinute(gallonsPerMinute.of(litresPerSecond(0.19))),
    });
    const metric = pressureGradient({ pipe: { insideDiameter: diameterMetres(0.021844) }, fluid, flow: litresPerSecond(0.19) });
    expect(us / metric).toBeCloseTo(1, 13);
    // Feet of water and metres of water in a hundred of pipe are the same number.
    expect(feetOfWaterPerHundredFeet.of(us)).toBeCloseTo((100 * metric) / 9806.65, 12);
  });

  it('refuse bad input', () => {
    const velocity: Shape<VelocityWanted> = { pipe: { insideDiameter: 'diameter' }, velocity: 'velocity' };
    const reynolds: Shape<ReynoldsWanted> = {
      pipe: { insideDiameter: 'diameter' },
      fluid: { density: 'density', viscosity: 'dynamic viscosity' },
      reynolds: 'ratio',
    };
    const pipe = { insideDiameter: diameterMetres(0.02) };
    refuses(flowAtVelocity, velocity, { pipe, velocity: metresPerSecond(0.6) });
    refuses(flowAtReynolds, reynolds, { pipe, fluid, reynolds: ratio(2300) });
    refuses(({ pipe: of }) => boreArea(of), { pipe: { insideDiameter: 'diameter' } }, { pipe });
  });
});
