import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  circuitHead,
  type PumpCurve,
  pumpAtSpeed,
  pumpCurve,
  type PumpCurveInput,
  pumpCurveInputShape,
  type PumpedSystem,
  pumpOperatingPoint,
  pumpSeasons,
  type PumpSeasonsInput,
  pumpsInParallel,
  pumpsInSeries,
  type PumpSpeed,
} from '../../src/circuit/index.js';
import {
  diameterMillimetres,
  electricWatts,
  type Flow,
  headMetres,
  kilogramsPerCubicMetre,
  litresPerSecond,
  millipascalSeconds,
  pascals,
  percent,
  pipeMetres,
  type Pressure,
  ratio,
  type Shape,
} from '../../src/units/index.js';
import { refuses } from '../support/bad-input.js';

const points = (heads: readonly (readonly [number, number, number?])[]): PumpCurveInput['points'] =>
  heads.map(([flow, head, power]) => ({
    flow: litresPerSecond(flow),
    head: headMetres(head),
    ...(power === undefined ? {} : { electricPower: electricWatts(power) }),
  }));
const sheet: PumpCurveInput = {
  points: points([
    [0, 9, 90],
    [0.6, 7.6, 140],
    [1, 5.1, 160],
    [1.4, 1.2, 165],
  ]),
};
const curve = pumpCurve(sheet);
const fluid = (density: number, viscosity: number): PumpSeasonsInput['coldest'] => ({
  density: kilogramsPerCubicMetre(density),
  viscosity: millipascalSeconds(viscosity),
});
const water = fluid(999.7, 1.306);
const circuit = { pipe: { insideDiameter: diameterMillimetres(21.844) }, length: pipeMetres(152.4) };
const dropAt = (flow: Flow, of = water): Pressure => circuitHead({ circuit, circuits: 4, flow, fluid: of }).pressureDrop;
const system: PumpedSystem = { curve, density: water.density, dropAt };
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
/** Falling points from no flow on. */
const pumps: fc.Arbitrary<PumpCurve> = fc.array(fc.tuple(between(0.1, 0.5), between(0.1, 3)), { minLength: 1, maxLength: 6 }).map((steps) => {
  const falls = steps.map(([, fall]) => fall);
  const rest = (k: number): number => falls.slice(k).reduce((sum, fall) => sum + fall, 0.5);
  const reach = (k: number): number => steps.slice(0, k).reduce((sum, [wide]) => sum + wide, 0);
  return pumpCurve({ points: points([...steps.keys(), steps.length].map((k) => [reach(k), rest(k), 50 + 10 * k])) });
});

describe('pumpCurve', () => {
  it('passes through its points by lines, in whatever order they come', () => {
    const shuffled = pumpCurve({ points: [...sheet.points].reverse() });
    for (const { flow, head, electricPower = NaN } of sheet.points) {
      expect(shuffled.headAt(flow)).toBeCloseTo(head, 12);
      expect(shuffled.electricPowerAt?.(flow)).toBeCloseTo(electricPower, 9);
    }
    expect(shuffled).toMatchObject({ leastFlow: 0, residual: 0 });
  });

  it('gives a parabola back, and says how far the points lie off one', () => {
    const exact = pumpCurve({ form: 'parabola', points: points([0, 0.5, 0.9, 1.3].map((flow) => [flow, 9 - 4 * flow ** 2] as const)) });
    expect(exact.residual).toBeLessThan(1e-12);
    expect(exact.headAt(litresPerSecond(0.7))).toBeCloseTo(9 - 4 * 0.49, 12);
    const fitted = pumpCurve({ ...sheet, form: 'parabola' });
    expect(fitted.residual).toBeGreaterThan(0.01);
    // The best of all rises at first, so the best that falls has its summit at no flow.
    expect(fitted.headAt(litresPerSecond(0.7)) - fitted.headAt(litresPerSecond(0))).toBeCloseTo(
      (fitted.headAt(litresPerSecond(1.4)) - fitted.headAt(litresPerSecond(0))) / 4,
      9,
    );
    const off = sheet.points.map(({ flow, head }) => Math.abs(fitted.headAt(flow) - head));
    expect(fitted.residual).toBe(Math.max(...off));
  });

  it('falls everywhere, in either form', () => {
    const falling = fc.array(fc.tuple(between(0.05, 1), between(0.01, 5)), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(falling, fc.constantFrom('lines' as const, 'parabola' as const), (steps, form) => {
        let [flow, head] = [0, 60];
        const given = steps.map(([wide, fall]) => [(flow += wide), (head -= fall)] as const);
        const pump = pumpCurve({ form, points: points([[0, 60], ...given]) });
        const at = (share: number): number => pump.headAt((share * pump.greatestFlow) as Flow);
        for (let share = 0.05; share < 1; share += 0.05) expect(at(share) - at(share - 0.05)).toBeLessThan(1e-9);
      }),
    );
  });

  it('refuses what no loop has one answer for, and bad input by name', () => {
    const refusal = (input: PumpCurveInput): unknown => {
      try {
        return pumpCurve(input);
      } catch (error) {
        return Reflect.get(Object(error), 'code');
      }
    };
    const code = (form: 'lines' | 'parabola', ...given: readonly (readonly [number, number, number?])[]): unknown =>
      refusal({ form, points: points(given) });
    expect(code('lines', [0, 5], [0.5, 6])).toBe('impossible');
    expect(code('lines', [0, 5], [0, 4], [0.5, 3])).toBe('impossible');
    expect(code('lines', [0, 5, 80], [0.5, 4])).toBe('impossible');
    expect(code('parabola', [0, 5], [0.5, 1])).toBe('too-few');
    expect(() => curve.headAt(litresPerSecond(1.5))).toThrow('beyond its outer points');
    refuses(pumpCurve, pumpCurveInputShape, { ...sheet, form: 'lines' });
  });
});

describe('pumpOperatingPoint', () => {
  it('lies where head is drop, and nowhere else', () => {
    fc.assert(
      fc.property(pumps, between(1.01, 100), between(1, 2), (pump, times, exponent) => {
        const most = times * pump.headAt(pump.greatestFlow) * 999.7 * 9.80665;
        const drop = (flow: Flow): Pressure => pascals(most * (flow / pump.greatestFlow) ** exponent);
        const { flow, head, pressureDrop } = pumpOperatingPoint({ curve: pump, density: water.density, dropAt: drop });
        expect(Math.abs(pressureDrop / drop(flow) - 1)).toBeLessThan(1e-9);
        expect(head).toBeCloseTo(pump.headAt(flow), 12);
        const surplus = (at: number): number => pump.headAt(at as Flow) * 999.7 * 9.80665 - drop(at as Flow);
        for (const share of [0.1, 0.5, 0.9, 0.99]) {
          expect(surplus(share * flow)).toBeGreaterThan(0);
          expect(surplus(flow + share * (pump.greatestFlow - flow))).toBeLessThan(0);
        }
      }),
    );
  });

  it('gives power by the curve’s own input or by an efficiency: 0.75 L/s at 8.5 m is 62.5 W in the fluid, 250 W at 25 %', () => {
    const flat = pumpCurve({
      points: points([
        [0, 9],
        [0.75, 8.5],
        [1, 8],
      ]),
    });
    const through = (flow: Flow): Pressure => pascals(((999.7 * 9.80665 * 8.5) / 0.75) * flow * 1000);
    const { flow, hydraulicPower, electricPower } = pumpOperatingPoint({
      curve: flat,
      density: water.density,
      dropAt: through,
      pumpEfficiency: percent(25),
    });
    expect(litresPerSecond.of(flow)).toBeCloseTo(0.75, 9);
    expect(hydraulicPower).toBeCloseTo(62.5, 1);
    expect(electricPower).toBeCloseTo(250, 0);
    const own = pumpOperatingPoint(system);
    expect(own.electricPower).toBeCloseTo(curve.electricPowerAt?.(own.flow) ?? NaN, 12);
    expect((own.electricPower ?? NaN) * (own.pumpEfficiency ?? NaN)).toBeCloseTo(own.hydraulicPower, 9);
    expect(pumpOperatingPoint({ ...system, curve: flat, dropAt: through }).electricPower).toBeUndefined();
  });

  it('refuses a loop that never meets the pump, and bad input by name', () => {
    expect(() => pumpOperatingPoint({ ...system, dropAt: () => pascals(1e6) })).toThrow('a stronger pump');
    expect(() => pumpOperatingPoint({ ...system, dropAt: () => pascals(1) })).toThrow('a valve that throttles');
    for (const wrong of [() => pascals(NaN), 'x', undefined]) {
      expect(() => pumpOperatingPoint({ ...system, dropAt: wrong as never })).toThrow(expect.objectContaining({ argument: 'dropAt' }));
    }
    const inKilowatts = sheet.points.map((point) => ({ ...point, electricPower: electricWatts((point.electricPower ?? 0) / 1000) }));
    expect(() => pumpOperatingPoint({ ...system, curve: pumpCurve({ points: inKilowatts }) })).toThrow(
      expect.objectContaining({ argument: 'curve.points.*.electricPower', code: 'out-of-range' }),
    );
    type Bare = Omit<PumpedSystem, 'curve' | 'dropAt'>;
    const shape: Shape<Bare> = { density: 'density', pumpEfficiency: { optional: 'fraction' } };
    const bare: Bare = { density: water.density, pumpEfficiency: percent(30) };
    refuses((given: Bare) => pumpOperatingPoint({ curve, dropAt, ...given }), shape, bare);
  });
});

describe('pumpSeasons', () => {
  const seasons: Omit<PumpSeasonsInput, 'curve' | 'dropAt'> = {
    coldest: fluid(1026, 5.5),
    summer: fluid(1018, 2.2),
    testDay: water,
    pumpEfficiency: percent(30),
  };

  it('is the operating point of each fluid', () => {
    const all = pumpSeasons({ curve, dropAt, ...seasons });
    for (const season of ['coldest', 'summer'] as const) {
      const of = seasons[season];
      const alone = pumpOperatingPoint({ curve, density: of.density, dropAt: (flow) => dropAt(flow, of), pumpEfficiency: percent(30) });
      expect(all[season]).toEqual(alone);
    }
    expect(all.testDay?.flow).toBeGreaterThan(all.summer.flow);
  });

  it('refuses bad input by name', () => {
    const fluidShape = { density: 'density', viscosity: 'dynamic viscosity' } as const;
    const shape: Shape<typeof seasons> = {
      coldest: fluidShape,
      summer: fluidShape,
      testDay: { optional: fluidShape },
      pumpEfficiency: { optional: 'fraction' },
    };
    refuses((bare: typeof seasons) => pumpSeasons({ curve, dropAt, ...bare }), shape, seasons);
  });
});

describe('pumps together and at other speeds', () => {
  it('follow the affinity laws on the curve itself, and compose', () => {
    fc.assert(
      fc.property(pumps, between(0.5, 1.3), between(0.5, 1.2), between(0, 1), (pump, first, second, share) => {
        const once = pumpAtSpeed({ curve: pump, speedRatio: ratio(first * second) });
        const twice = pumpAtSpeed({ curve: pumpAtSpeed({ curve: pump, speedRatio: ratio(first) }), speedRatio: ratio(second) });
        const flow = litresPerSecond(share * 0.999 * litresPerSecond.of(once.greatestFlow));
        expect(twice.headAt(flow)).toBeCloseTo(once.headAt(flow), 9);
        expect(once.headAt(flow)).toBeCloseTo((first * second) ** 2 * pump.headAt((flow / (first * second)) as Flow), 9);
        expect(twice.electricPowerAt?.(flow)).toBeCloseTo(once.electricPowerAt?.(flow) ?? NaN, 6);
      }),
    );
  });

  it('give more flow in series and in parallel than alone, less at less speed', () => {
    const flowOf = (of: PumpCurve): number => pumpOperatingPoint({ ...system, curve: of }).flow;
    expect(flowOf(pumpsInSeries([curve, curve]))).toBeGreaterThan(flowOf(curve));
    expect(flowOf(pumpsInParallel([curve, curve]))).toBeGreaterThan(flowOf(curve));
    expect(flowOf(pumpAtSpeed({ curve, speedRatio: ratio(0.8) }))).toBeLessThan(flowOf(curve));
  });

  it('double head and input in series, flow in parallel', () => {
    fc.assert(
      fc.property(pumps, between(0, 0.999), (pump, share) => {
        const flow = (share * pump.greatestFlow) as Flow;
        const series = pumpsInSeries([pump, pump]);
        expect(series.headAt(flow)).toBeCloseTo(2 * pump.headAt(flow), 12);
        expect(series.electricPowerAt?.(flow)).toBeCloseTo(2 * (pump.electricPowerAt?.(flow) ?? NaN), 9);
        expect(pumpsInParallel([pump, pump]).headAt((2 * flow) as Flow)).toBeCloseTo(pump.headAt(flow), 8);
      }),
    );
  });

  it('leave the weaker one standing at a head that it cannot lift', () => {
    const weak = pumpCurve({
      points: points([
        [0, 4, 60],
        [1, 1, 80],
      ]),
    });
    const both = pumpsInParallel([curve, weak]);
    expect(both.headAt(litresPerSecond(0.6))).toBeCloseTo(7.6, 9);
    expect(both.electricPowerAt?.(litresPerSecond(0.6))).toBeCloseTo(200, 6);
    expect(both.headAt(both.greatestFlow)).toBeCloseTo(1.2, 12);
  });

  it('refuse none, curves that share nothing, and bad input by name', () => {
    const late = pumpCurve({
      points: points([
        [2, 5],
        [3, 1],
      ]),
    });
    expect(() => pumpsInSeries([])).toThrow(expect.objectContaining({ argument: 'curves', code: 'too-few' }));
    expect(() => pumpsInSeries([curve, late])).toThrow(expect.objectContaining({ code: 'impossible' }));
    expect(() => pumpsInParallel([curve, late])).toThrow(expect.objectContaining({ code: 'impossible' }));
    expect(() => pumpsInParallel([undefined as never])).toThrow(expect.objectContaining({ argument: 'curves.0' }));
    const shape: Shape<Omit<PumpSpeed, 'curve'>> = { speedRatio: 'ratio' };
    refuses((bare: Omit<PumpSpeed, 'curve'>) => pumpAtSpeed({ curve, ...bare }), shape, { speedRatio: ratio(0.8) });
  });
});
