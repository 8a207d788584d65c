import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  flowVelocity,
  frictionFactor,
  pressureDropBand,
  reynoldsNumber,
  type PressureDropBandResult,
  type UncertainFlow,
} from '../../src/pipe/index.js';
import { describeFinding } from '../../src/report/index.js';
import { bandShape } from '../../src/states/index.js';
import {
  diameterMillimetres,
  fraction,
  kilogramsPerCubicMetre,
  litresPerSecond,
  metres,
  millipascalSeconds,
  pipeMetres,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const bore = diameterMillimetres(21.844);
const density = kilogramsPerCubicMetre(1022);

const flowing = (viscosity: number, flow: number, below = 0.15, above = below): UncertainFlow => ({
  pipe: { insideDiameter: bore },
  fluid: {
    density,
    viscosity: {
      low: millipascalSeconds(viscosity * (1 - below)),
      estimate: millipascalSeconds(viscosity),
      high: millipascalSeconds(viscosity * (1 + above)),
      coverage: fraction(0.9),
    },
  },
  flow: litresPerSecond(flow),
  length: pipeMetres(152.4),
  roughness: metres(1.5e-6),
});
const banded = (viscosity: number, flow: number, spread?: number): PressureDropBandResult => pressureDropBand(flowing(viscosity, flow, spread));

/** Least and greatest head of many viscosities in the band, each with the least and the greatest friction that its regime leaves. */
function scanned(viscosity: number, flow: number, spread: number): readonly [number, number] {
  const pipe = { insideDiameter: bore };
  const velocity = flowVelocity({ pipe, flow: litresPerSecond(flow) });
  const [thin, thick] = [viscosity * (1 - spread), viscosity * (1 + spread)];
  // The viscosities on either side of which the regime changes, and many between.
  const edges = [2300, 4000].flatMap((reynolds) => [1 - 1e-9, 1 + 1e-9].map((side) => (side * 1e3 * density * velocity * bore) / reynolds));
  const inside = Array.from({ length: 201 }, (_, step) => thin + ((thick - thin) * step) / 200);
  const heads = [...inside, ...edges.filter((edge) => edge >= thin && edge <= thick)].flatMap((at) => {
    const reynolds = reynoldsNumber({ pipe, fluid: { density, viscosity: millipascalSeconds(at) }, flow: litresPerSecond(flow) });
    return bounds(reynolds).map((factor) => (factor * 152.4 * velocity ** 2) / (2 * bore * 9.80665));
  });
  return [Math.min(...heads), Math.max(...heads)];
}

/** Friction factors between which the truth lies. In laminar flow 64/Re is exact; that Churchill's line begins to rise before 2300 is its own. */
function bounds(reynolds: ReturnType<typeof ratio>): readonly number[] {
  const { regime, leastFriction, greatestFriction, applicable } = frictionFactor({ reynolds, relativeRoughness: ratio(1.5e-6 / bore) });
  if (regime === 'laminar') return [64 / reynolds];
  if (regime === 'transitional') return [leastFriction, greatestFriction];
  return applicable.filter(({ correlation }) => ['Colebrook', 'Churchill'].includes(correlation)).map((each) => each.frictionFactor);
}

describe('pressureDropBand', () => {
  it('is what a scan of the band finds', () => {
    fc.assert(
      fc.property(number(0.8, 12), number(0.05, 0.6), number(0, 0.4), (viscosity, flow, spread) => {
        const { head } = banded(viscosity, flow, spread);
        const [low, high] = scanned(viscosity, flow, spread);
        const estimated = head.estimate;
        // The edge of a regime is met from a half of a millionth beside it.
        expect(head.low / Math.min(low, estimated)).toBeCloseTo(1, 5);
        expect(head.high / Math.max(high, estimated)).toBeCloseTo(1, 5);
      }),
      { numRuns: 40 },
    );
  });

  it('holds the estimate, and widens with the viscosity’s', () => {
    fc.assert(
      fc.property(number(0.8, 12), number(0.05, 0.6), number(0, 0.4), number(0, 0.4), (viscosity, flow, a, b) => {
        const [narrow, wide] = [banded(viscosity, flow, Math.min(a, b)), banded(viscosity, flow, Math.max(a, b))];
        expect(narrow.head.low).toBeLessThanOrEqual(narrow.head.estimate);
        expect(narrow.head.high).toBeGreaterThanOrEqual(narrow.head.estimate);
        expect(wide.head.low).toBeLessThanOrEqual(narrow.head.low * (1 + 1e-12));
        expect(wide.head.high).toBeGreaterThanOrEqual(narrow.head.high * (1 - 1e-12));
        expect(wide.regimes).toEqual(expect.arrayContaining([...narrow.regimes]));
        expect(narrow.pressureDrop.high / narrow.head.high).toBeCloseTo(density * 9.80665, 6);
        expect(narrow.reynolds.low).toBeLessThanOrEqual(narrow.reynolds.high);
      }),
    );
  });

  it('rises with the flow at both limits while the regime stays', () => {
    for (const [slow, fast] of [
      [0.05, 0.06],
      [0.5, 0.55],
    ] as const) {
      expect(banded(4, fast).head.low).toBeGreaterThan(banded(4, slow).head.low);
      expect(banded(4, fast).head.high).toBeGreaterThan(banded(4, slow).head.high);
    }
  });

  it('leaves little open in laminar and turbulent flow, a factor of two between', () => {
    expect(banded(6, 0.1).regimes).toEqual(['laminar']);
    expect(banded(6, 0.1).head.high / banded(6, 0.1).head.low).toBeCloseTo(1.15 / 0.85, 3);
    expect(banded(1.5, 0.3).regimes).toEqual(['turbulent']);
    expect(banded(1.5, 0.3).head.high / banded(1.5, 0.3).head.low).toBeLessThan((1.15 / 0.85) ** 0.25 * 1.018);
    const open = banded(3.9, 0.16);
    expect(open.head.high / open.head.low).toBeGreaterThan(2);
    expect(open.findings.map(({ code, level }) => `${code} ${level}`)).toEqual(['flow-regime-open warning']);
    const [finding] = open.findings;
    if (finding === undefined) throw new Error('a finding');
    expect(describeFinding(finding, 'metric')).toContain('between 2125 and 2875');
    expect(banded(1.5, 0.3).findings).toEqual([]);
    expect(banded(3.2, 0.2).regimes).toEqual(['transitional', 'turbulent']);
    expect([banded(3.2, 0.16).regimes, banded(3.2, 0.16, 0.01).findings.length]).toEqual([['transitional'], 1]);
  });

  it('refuses limits out of order and bad input', () => {
    const shape: Shape<UncertainFlow> = {
      pipe: { insideDiameter: 'diameter' },
      fluid: { density: 'density', viscosity: bandShape('dynamic viscosity') },
      flow: 'flow',
      length: 'pipe length',
      roughness: { optional: 'length' },
    };
    refuses(pressureDropBand, shape, flowing(3.9, 0.16));
    expect(() => pressureDropBand(flowing(3.9, 0.16, -0.1, 0.1))).toThrow('fluid.viscosity.estimate');
    expect(() => pressureDropBand(flowing(3.9, 0.16, 0.1, -0.1))).toThrow('fluid.viscosity.high');
    expect(() => pressureDropBand(flowing(3.9, 0))).toThrow('at standstill');
  });
});
