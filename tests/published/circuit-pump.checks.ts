import { circuitHead, type OperatingPoint, pumpAtSpeed, pumpCurve, pumpOperatingPoint } from '../../src/circuit/index.js';
import {
  cubicMetresPerSecond,
  diameterMillimetres,
  headMetres,
  kilogramsPerCubicMetre,
  litresPerSecond,
  pascals,
  pascalSeconds,
  pipeFeet,
  ratio,
} from '../../src/units/index.js';
import type { PublishedCheck } from '../support/published.js';

/** Hydraulics 5.3: pump of 9 m − 4e6 · flow² on four circuits of 3/4 DR 11, header and heat pump; at full speed and at 80 % of it, as printed. */
const LOOPS = [
  { label: 'water', density: 999.97, viscosity: 1.5182e-3, flow: 0.75289, head: 6.7326, flowRatio: 0.7884, headRatio: 0.6462 },
  { label: 'glycol-like', density: 1022, viscosity: 3.9e-3, flow: 0.72261, head: 6.9113, flowRatio: 0.8359, headRatio: 0.6222 },
];
const PUMP = pumpCurve({
  form: 'parabola',
  points: [0, 0.0005, 0.001, 0.0014].map((flow) => ({ flow: cubicMetresPerSecond(flow), head: headMetres(9 - 4e6 * flow ** 2) })),
});

const pointOf = ({ density, viscosity }: { readonly density: number; readonly viscosity: number }, speed: number): OperatingPoint => {
  const fluid = { density: kilogramsPerCubicMetre(density), viscosity: pascalSeconds(viscosity) };
  return pumpOperatingPoint({
    curve: pumpAtSpeed({ curve: PUMP, speedRatio: ratio(speed) }),
    density: fluid.density,
    dropAt: (flow) =>
      circuitHead({
        circuit: { pipe: { insideDiameter: diameterMillimetres(21.844) }, length: pipeFeet(500) },
        circuits: 4,
        header: { pipe: { insideDiameter: diameterMillimetres(34.4932) }, length: pipeFeet(100), fittings: ratio(12) },
        equipmentDrop: pascals(25_000 * (flow / 0.00076) ** 2),
        flow,
        fluid,
      }).pressureDrop,
  });
};

type Loop = (typeof LOOPS)[number];
const check = (
  quantity: string,
  unit: string,
  digit: number,
  name: 'flow' | 'head' | 'flowRatio' | 'headRatio',
  compute: (of: Loop) => number,
): PublishedCheck => ({
  id: 'H-POINT',
  room: 'circuit',
  quantity,
  unit,
  source:
    'Pump curve 9 m − 4e6 · flow² on four circuits of 152.4 m of 3/4 DR 11, header 30.48 m with K 12, heat pump 25 kPa at 0.76 L/s: solved outside this library',
  seen: 'computed independently',
  tolerance: { absolute: 0.5001 * digit, reason: 'half a unit of the last printed digit' },
  values: LOOPS.map((of) => ({ label: of.label, expected: of[name], compute: () => compute(of) })),
});

export const circuitPumpChecks: readonly PublishedCheck[] = [
  check('operating flow', 'L/s', 1e-5, 'flow', (of) => litresPerSecond.of(pointOf(of, 1).flow)),
  check('operating head', 'm', 1e-4, 'head', (of) => pointOf(of, 1).head),
  check('flow at 80 % speed over that at full', '1', 1e-4, 'flowRatio', (of) => pointOf(of, 0.8).flow / pointOf(of, 1).flow),
  check('head at 80 % speed over that at full', '1', 1e-4, 'headRatio', (of) => pointOf(of, 0.8).head / pointOf(of, 1).head),
];
