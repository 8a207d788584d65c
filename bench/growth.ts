// How the time of a simulation and of a response grows, as the exponent of a power fitted to it: node scripts/run.mjs bench/growth.ts
import { exponentialResponse, groundResponse, type Layout, customLayout, onePipe } from 'loamloop/ground';
import { simulate } from 'loamloop/operation';
import {
  diameterMillimetres,
  hours,
  joulesPerCubicMetreKelvin,
  metres,
  pipeMetreKelvinPerWatt,
  pipeMetres,
  seconds,
  squareMetresPerSecond,
  wattsPerKelvin,
  wattsPerMetreKelvin,
} from 'loamloop/units';

const soil = { conductivity: wattsPerMetreKelvin(1.5), heatCapacity: joulesPerCubicMetreKelvin(2.5e6), diffusivity: squareMetresPerSecond(6e-7) };
const pipe = { outsideDiameter: diameterMillimetres(32) };
const times = Array.from({ length: 50 }, (_, i) => seconds(60 * 10 ** (i / 7)));
const rowOf = (trenches: number): Layout => onePipe({ depth: metres(1.5), trenches, trenchSpacing: metres(3) });
const wave = Float64Array.from({ length: 8760 }, (_, hour) => 10 - 8 * Math.cos((2 * Math.PI * hour) / 8760));
const loop = {
  step: hours(1),
  duty: { from: 'ground', loads: wave },
  ground: wave,
  response: exponentialResponse({ layout: rowOf(4), pipe, soil }),
  pipeLength: pipeMetres(1),
  resistanceAt: () => pipeMetreKelvinPerWatt(0.1),
  heatCapacityRate: wattsPerKelvin(1e6),
} as const;

/** The fastest of a few runs [ms]. */
function timeOf(work: () => unknown): number {
  return Math.min(
    ...Array.from({ length: 7 }, () => {
      const start = performance.now();
      work();
      return performance.now() - start;
    }),
  );
}

function report(what: string, sizes: readonly number[], work: (size: number) => unknown): void {
  const points = sizes.map((size) => ({ x: Math.log(size), y: Math.log(timeOf(() => work(size))) }));
  const mean = (of: (point: { x: number; y: number }) => number): number => points.reduce((sum, point) => sum + of(point), 0) / points.length;
  const [x, y] = [mean((point) => point.x), mean((point) => point.y)];
  const exponent = mean((point) => (point.x - x) * (point.y - y)) / mean((point) => (point.x - x) ** 2);
  const shown = points.map((point, index) => `${String(sizes[index])}: ${Math.exp(point.y).toPrecision(3)} ms`).join(', ');
  console.log(`${what}: exponent ${exponent.toFixed(2)} (${shown})`);
}

report('simulation over years', [2, 5, 10, 20, 50], (years) => simulate({ ...loop, years }));
report('response at 50 times over trenches', [5, 10, 20, 40, 80], (trenches) =>
  groundResponse({ layout: rowOf(trenches), pipe, soil }).risesAfter(times),
);
report('exponential fit over trenches', [5, 10, 20, 40, 80], (trenches) => exponentialResponse({ layout: rowOf(trenches), pipe, soil }));
report('response at 50 times over pipes in a trench', [2, 4, 8, 16], (count) =>
  groundResponse({
    layout: customLayout({
      pipes: Array.from({ length: count }, (_, i) => ({ x: metres(0.1 * i), depth: metres(1.2 + 0.05 * i) })),
      trenches: 4,
      trenchSpacing: metres(5),
    }),
    pipe,
    soil,
  }).risesAfter(times),
);
