import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  churchillFrictionFactor,
  flowVelocity,
  pressureGradient,
  reynoldsNumber,
  type BoreFlow,
  type FrictionFlow,
  type FrictionState,
  type PipeFlow,
} from '../../src/pipe/index.js';
import {
  cubicMetresPerSecond,
  diameterMillimetres,
  kilogramsPerCubicMetre,
  litresPerSecond,
  metres,
  millipascalSeconds,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const pipe = { insideDiameter: diameterMillimetres(21.844) };
const fluid = { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) };
const gradient = (flow: number): number => pressureGradient({ pipe, fluid, flow: cubicMetresPerSecond(flow) });
const friction = (reynolds: number, roughness = 0): number =>
  churchillFrictionFactor({ reynolds: ratio(reynolds), relativeRoughness: ratio(roughness) });

/** Colebrook's friction factor by iteration. */
function colebrook(reynolds: number, roughness: number): number {
  let root = 8;
  for (let round = 0; round < 60; round += 1) root = -2 * Math.log10(roughness / 3.7 + (2.51 * root) / reynolds);
  return root ** -2;
}

const reynolds: fc.Arbitrary<number> = fc.double({ min: 0, max: 6, noNaN: true }).map((exponent) => 10 ** exponent);
const roughness: fc.Arbitrary<number> = fc.double({ min: 0, max: 0.05, noNaN: true });

describe('churchillFrictionFactor', () => {
  it('is continuous', () => {
    fc.assert(
      fc.property(reynolds, roughness, (re, rough) => {
        expect(Math.abs(friction(re * (1 + 1e-9), rough) / friction(re, rough) - 1)).toBeLessThan(1e-8);
      }),
    );
  });

  it('times Reynolds squared rises strictly through every regime', () => {
    fc.assert(
      fc.property(reynolds, fc.double({ min: 1e-6, max: 1, noNaN: true }), roughness, (re, step, rough) => {
        const more = re * (1 + step);
        expect(friction(more, rough) * more ** 2).toBeGreaterThan(friction(re, rough) * re ** 2);
      }),
    );
  });

  it('never falls as the pipe gets rougher once the flow is turbulent', () => {
    fc.assert(
      fc.property(fc.double({ min: 4000, max: 1e6, noNaN: true }), roughness, roughness, (re, one, other) => {
        expect(friction(re, Math.max(one, other))).toBeGreaterThanOrEqual(friction(re, Math.min(one, other)));
      }),
    );
  });

  it('lies by Colebrook where plastic pipe is turbulent', () => {
    fc.assert(
      fc.property(fc.double({ min: 5000, max: 1e5, noNaN: true }), fc.double({ min: 0, max: 1e-4, noNaN: true }), (re, rough) => {
        expect(Math.abs(friction(re, rough) / colebrook(re, rough) - 1)).toBeLessThan(0.014);
      }),
    );
  });

  it('refuses bad input', () => {
    const shape: Shape<FrictionState> = { reynolds: 'ratio', relativeRoughness: 'ratio' };
    refuses(churchillFrictionFactor, shape, { reynolds: ratio(5000), relativeRoughness: ratio(1e-4) });
    expect(() => friction(0)).toThrow('reynolds');
    expect(() => friction(5000, -1e-9)).toThrow('relativeRoughness');
  });
});

describe('pressureGradient', () => {
  it('is Hagen–Poiseuille in laminar flow, 0 at standstill', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 9.8e-5, noNaN: true }), (flow) => {
        const poiseuille = (128 * fluid.viscosity * flow) / (Math.PI * pipe.insideDiameter ** 4);
        expect(Math.abs(gradient(flow) - poiseuille)).toBeLessThanOrEqual(1e-6 * poiseuille + 1e-300);
      }),
    );
    expect(gradient(0)).toBe(0);
    expect(gradient(5e-324)).toBeGreaterThanOrEqual(0);
  });

  it('is Darcy–Weisbach with the friction factor', () => {
    const flow = litresPerSecond(0.3);
    const velocity = flowVelocity({ pipe, flow });
    const re = reynoldsNumber({ pipe, fluid, flow });
    const factor = friction(re, 1.5e-6 / pipe.insideDiameter);
    expect(pressureGradient({ pipe, fluid, flow })).toBeCloseTo((factor * fluid.density * velocity ** 2) / (2 * pipe.insideDiameter), 9);
  });

  it('rises strictly with the flow through the transition', () => {
    let before = 0;
    for (let step = 1; step <= 4000; step += 1) {
      const now = gradient(step * 1e-7);
      expect(now).toBeGreaterThan(before);
      before = now;
    }
  });

  it('loses 6.6 % more in the average-wall bore of 3/4 in DR 11 than in the nominal one', () => {
    const water = { density: kilogramsPerCubicMetre(999.97), viscosity: millipascalSeconds(1.5182) };
    const at = (bore: number): number =>
      pressureGradient({ pipe: { insideDiameter: diameterMillimetres(bore) }, fluid: water, flow: litresPerSecond(0.19) });
    expect(at(0.8486 * 25.4) / at(0.86 * 25.4)).toBeCloseTo(1.066, 2);
  });

  it('scales with diameter as similarity asks', () => {
    const twice = pressureGradient({
      pipe: { insideDiameter: diameterMillimetres(43.688) },
      fluid,
      flow: litresPerSecond(0.6),
      roughness: metres(3e-6),
    });
    expect(twice * 8).toBeCloseTo(pressureGradient({ pipe, fluid, flow: litresPerSecond(0.3) }), 9);
  });

  it('and the numbers under it refuse bad input', () => {
    const bore: Shape<BoreFlow> = { pipe: { insideDiameter: 'diameter' }, flow: 'flow' };
    const flowing: Shape<PipeFlow> = { ...bore, fluid: { density: 'density', viscosity: 'dynamic viscosity' } };
    const rubbing: Shape<FrictionFlow> = { ...flowing, roughness: { optional: 'length' } };
    const example = { pipe, fluid, flow: litresPerSecond(0.19), roughness: metres(1.5e-6) };
    refuses(flowVelocity, bore, { pipe, flow: litresPerSecond(0.19) });
    refuses(reynoldsNumber, flowing, { pipe, fluid, flow: litresPerSecond(0.19) });
    refuses<FrictionFlow>(pressureGradient, rubbing, example);
    expect(() => gradient(-1e-9)).toThrow('flow');
  });
});
