import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  coilCriticalReynolds,
  coiledFrictionFactor,
  coiledPressureGradient,
  coilHydraulics,
  deanNumber,
  DELIVERED_COILS,
  laminarFrictionFactor,
  churchillFrictionFactor,
  pressureGradient,
  type CoiledFlow,
  type CoiledFriction,
  type CoiledState,
  type CoilFlow,
  type CurvedState,
} from '../../src/pipe/index.js';
import { describeFinding } from '../../src/report/index.js';
import {
  diameterMillimetres,
  kilogramsPerCubicMetre,
  litresPerSecond,
  metres,
  millipascalSeconds,
  pipeFeet,
  pipeMetres,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const curvature = number(0, 0.067);
const reynolds = number(0, 5.5).map((exponent) => 10 ** exponent);
const rings = (re: number, bent: number, rough = 0): CoiledFriction =>
  coiledFrictionFactor({ reynolds: ratio(re), curvatureRatio: ratio(bent), relativeRoughness: ratio(rough) });
const coil: CoiledFlow = {
  pipe: { insideDiameter: diameterMillimetres(21.844) },
  fluid: { density: kilogramsPerCubicMetre(1022), viscosity: millipascalSeconds(3.9) },
  flow: litresPerSecond(0.19),
  ringDiameter: metres(0.9),
  roughness: metres(1.5e-6),
};

/** Mori and Nakayama's friction factors, laminar for Dean numbers from 100 to 2000, turbulent. */
const mori = {
  laminar: (re: number, bent: number): number => {
    const root = Math.sqrt(re * Math.sqrt(bent));
    return ((64 / re) * 0.108 * root) / (1 - 3.253 / root);
  },
  turbulent: (re: number, bent: number): number => {
    const term = (re * bent ** 2) ** -0.2;
    return 0.3 * Math.sqrt(bent) * term * (1 + 0.112 * term);
  },
};

describe('coiledFrictionFactor', () => {
  it('is continuous, and f·Re² rises strictly', () => {
    fc.assert(
      fc.property(reynolds, curvature, number(0, 1e-3), number(1e-5, 1), (re, bent, rough, step) => {
        expect(rings(re * (1 + step), bent, rough).frictionFactor * (1 + step) ** 2).toBeGreaterThan(rings(re, bent, rough).frictionFactor);
      }),
    );
    fc.assert(
      fc.property(curvature, (bent) => {
        const critical = coilCriticalReynolds(ratio(bent));
        for (const edge of [critical, (critical * 4000) / 2300]) {
          expect(rings(edge * (1 + 1e-9), bent).frictionFactor / rings(edge * (1 - 1e-9), bent).frictionFactor).toBeCloseTo(1, 6);
        }
      }),
    );
  });

  it('is the straight pipe’s without curvature, laminar friction rises with it', () => {
    fc.assert(
      fc.property(reynolds, curvature, curvature, (re, a, b) => {
        const straight = rings(re, 0);
        if (straight.regime === 'laminar') expect(straight.frictionFactor).toBe(laminarFrictionFactor({ reynolds: ratio(re) }));
        const [mild, tight] = [rings(re, Math.min(a, b)), rings(re, Math.max(a, b))];
        if (mild.regime === 'laminar') expect(tight.frictionFactor).toBeGreaterThanOrEqual(mild.frictionFactor * (1 - 1e-12));
      }),
    );
    const turbulent = churchillFrictionFactor({ reynolds: ratio(20_000), relativeRoughness: ratio(0) });
    expect(rings(20_000, 0).frictionFactor / turbulent).toBeCloseTo(1, 2);
    expect(rings(20_000, 0).frictionRatio).toBeGreaterThanOrEqual(1);
  });

  it('lies by Mori and Nakayama: 7.3 % laminar, 5.4 % turbulent in the rings that a loop has', () => {
    fc.assert(
      fc.property(number(600, 1e5), number(0.001, 0.067), (re, bent) => {
        const { regime, deanNumber: dean, frictionFactor } = rings(re, bent);
        if (regime === 'laminar' && dean > 100 && dean < 2000) expect(Math.abs(frictionFactor / mori.laminar(re, bent) - 1)).toBeLessThan(0.073);
        if (regime === 'turbulent' && re < 6.5e5 * Math.sqrt(bent))
          expect(Math.abs(frictionFactor / mori.turbulent(re, bent) - 1)).toBeLessThan(0.057);
      }),
    );
    // The formula that is compared with, by a value that a general library prints for it.
    expect(mori.laminar(250, 0.2)).toBeCloseTo(0.4222458285779544, 12);
    expect(mori.turbulent(1e4, 0.05)).toBeCloseTo(0.037311802071379796, 14);
  });

  it('and the numbers under it refuse bad input', () => {
    const curved: Shape<CurvedState> = { reynolds: 'ratio', curvatureRatio: 'ratio' };
    const coiled: Shape<CoiledState> = { ...curved, relativeRoughness: 'ratio' };
    refuses(deanNumber, curved, { reynolds: ratio(2000), curvatureRatio: ratio(0.02) });
    refuses(coiledFrictionFactor, coiled, { reynolds: ratio(2000), curvatureRatio: ratio(0.02), relativeRoughness: ratio(1e-4) });
    refuses(({ curvatureRatio }) => coilCriticalReynolds(curvatureRatio), { curvatureRatio: 'ratio' }, { curvatureRatio: ratio(0.02) });
    expect(() => rings(2000, 0.1)).toThrow('15 bores');
  });

  it('agrees with other authors on where turbulence begins: within a fifth of Ito and Srinivasan for the rings of a loop', () => {
    for (const bent of [0.015, 0.02, 0.025, 0.03]) {
      const critical = coilCriticalReynolds(ratio(bent));
      for (const other of [2e4 * bent ** 0.32, 2100 * (1 + 12 * Math.sqrt(bent))]) expect(Math.abs(critical / other - 1)).toBeLessThan(0.2);
    }
  });
});

describe('coiledPressureGradient', () => {
  it('has the straight pipe’s gradient beside it, and tends to it in wide rings', () => {
    const { gradient, straightGradient, frictionRatio } = coiledPressureGradient(coil);
    expect(straightGradient).toBeCloseTo(pressureGradient(coil), 9);
    expect(gradient / straightGradient).toBeCloseTo(frictionRatio, 12);
    const slow = { ...coil, flow: litresPerSecond(0.08), ringDiameter: metres(1000) };
    expect(coiledPressureGradient(slow).frictionRatio).toBeCloseTo(1, 1);
  });

  it('rises with the flow', () => {
    let before = 0;
    for (let step = 1; step <= 600; step += 1) {
      const { gradient } = coiledPressureGradient({ ...coil, flow: litresPerSecond(step / 400) });
      expect(gradient).toBeGreaterThan(before);
      before = gradient;
    }
  });

  it('says where rings keep the flow laminar that a straight pipe would not', () => {
    const codes = (flow: number): readonly string[] =>
      coiledPressureGradient({ ...coil, flow: litresPerSecond(flow) }).findings.map(({ code }) => code);
    expect([0.1, 0.19, 0.6].map(codes)).toEqual([[], ['coil-laminar'], []]);
    const [finding] = coiledPressureGradient(coil).findings;
    if (finding === undefined) throw new Error('a finding');
    expect(describeFinding(finding, 'metric')).toContain('1.37 times that of straight pipe');
  });

  it('refuses bad input', () => {
    const shape: Shape<CoiledFlow> = {
      pipe: { insideDiameter: 'diameter' },
      fluid: { density: 'density', viscosity: 'dynamic viscosity' },
      flow: 'flow',
      ringDiameter: 'length',
      roughness: { optional: 'length' },
    };
    refuses(coiledPressureGradient, shape, coil);
    expect(() => coiledPressureGradient({ ...coil, ringDiameter: metres(0.1) })).toThrow('ringDiameter');
  });
});

describe('coilHydraulics', () => {
  const { pipe, fluid, flow } = coil;

  it('is proportional to the length, and fills at the flow', () => {
    const all = coilHydraulics({ pipe, fluid, flow, coilLengths: DELIVERED_COILS.IPS });
    for (const { coilLength, coilVolume, transitTime, pressureDrop, head } of all) {
      expect(coilVolume / transitTime).toBeCloseTo(flow, 12);
      expect(pressureDrop).toBeCloseTo(pressureGradient({ pipe, fluid, flow }) * coilLength, 8);
      expect(head * fluid.density * 9.80665).toBeCloseTo(pressureDrop, 8);
    }
    expect(all.map(({ coilLength }) => coilLength)).toEqual([500, 600, 800].map((length) => pipeFeet(length)));
  });

  it('takes the lengths that the caller has', () => {
    expect(coilHydraulics({ pipe, fluid, flow, coilLengths: [pipeMetres(120)] })).toHaveLength(1);
    expect(DELIVERED_COILS.CTS).toEqual(DELIVERED_COILS.IPS);
  });

  it('refuses bad input', () => {
    const shape: Shape<CoilFlow> = {
      pipe: { insideDiameter: 'diameter' },
      fluid: { density: 'density', viscosity: 'dynamic viscosity' },
      flow: 'flow',
      roughness: { optional: 'length' },
      coilLengths: { list: 'pipe length' },
    };
    refuses<CoilFlow>(coilHydraulics, shape, { pipe, fluid, flow, roughness: metres(1.5e-6), coilLengths: [pipeMetres(100), pipeMetres(150)] });
  });
});
