import { effectiveConductivity, latentHeat, resistanceShare, soilDiffusivity, stokesSettlingTime } from '../../src/soil/index.js';
import {
  celsius,
  diameterMillimetres,
  dryBasisFraction,
  kilogramsPerCubicMetre,
  megajoulesPerCubicMetreKelvin,
  metres,
  wattsPerMetreKelvin,
} from '../../src/units/index.js';
import type { SoilThermal } from '../../src/states/index.js';
import type { PublishedCheck } from '../support/published.js';

const room = 'soil';
const COMPUTED = { source: 'equations of the cited works evaluated in Python apart from this library', seen: 'computed independently' } as const;
const DIGITS = { relative: 1e-4, reason: 'expected values carry five digits' };

/* Grains that settle: size [mm], temperature [°C], column [m], velocity [m/s], time [s]. */
const SETTLING: readonly (readonly [id: string, size: number, temperature: number, column: number, velocity: number, time: number])[] = [
  ['S1', 0.05, 20, 0.1, 0.0022462, 44.52],
  ['S2', 0.002, 20, 0.1, 3.5939e-6, 27825],
  ['S3', 0.05, 10, 0.15, 0.0017212, 87.147],
];
const settling = (size: number, temperature: number, column: number): ReturnType<typeof stokesSettlingTime> =>
  stokesSettlingTime({
    particleSize: diameterMillimetres(size),
    temperature: celsius(temperature),
    columnHeight: metres(column),
    particleDensity: kilogramsPerCubicMetre(2650),
  });

/* Backfill of 1.0 out to 0.3 m about a pipe of 32 mm at 1.2 m, in native ground of 1.8 W/(m.K). */
const thermal = (k: number): SoilThermal => {
  const [conductivity, heatCapacity] = [wattsPerMetreKelvin(k), megajoulesPerCubicMetreKelvin(2)];
  return { conductivity, heatCapacity, diffusivity: soilDiffusivity({ conductivity, heatCapacity }) };
};
const share = (): number => resistanceShare({ depth: metres(1.2), outsideDiameter: diameterMillimetres(32), distance: metres(0.3) });
const ringed = (): number =>
  effectiveConductivity({
    layers: [{ top: metres(0), bottom: metres(3), thermal: thermal(1.8) }],
    pipes: [{ x: metres(0), depth: metres(1.2) }],
    outsideDiameter: diameterMillimetres(32),
    bedding: { thickness: metres(0.284), thermal: thermal(1) },
  }).thermal.conductivity;

/** Latent heat per volume in kilowatt-hours, by which the trade reckons. */
const inKilowattHours = (density: number, moisture: number, unfrozen: number): number =>
  latentHeat({
    dryDensity: kilogramsPerCubicMetre(density),
    moisture: { basis: 'dry', value: dryBasisFraction(moisture) },
    unfrozenMoisture: dryBasisFraction(unfrozen),
  }) / 3.6e6;

/** Worked cases of the soil room whose quantities have no table of their own. */
export const soilCasesChecks: readonly PublishedCheck[] = [
  {
    id: 'SO-S cases',
    room,
    quantity: 'velocity and time of settling after Stokes',
    unit: 'm/s and s',
    ...COMPUTED,
    tolerance: { relative: 0.002, reason: 'viscosity and density of water were tabled for the cases, and are computed here' },
    values: SETTLING.flatMap(([id, size, temperature, column, velocity, time]) => [
      { label: `${id} velocity`, expected: velocity, compute: () => settling(size, temperature, column).settlingVelocity },
      { label: `${id} time`, expected: time, compute: () => settling(size, temperature, column).settlingTime },
    ]),
  },
  {
    id: 'SO-Y5',
    room,
    quantity: 'backfill about a pipe: its share of the logarithm, and what ground with it is worth',
    unit: '1 and W/(m.K)',
    ...COMPUTED,
    tolerance: DIGITS,
    values: [
      { label: 'share', expected: 0.58499, compute: share },
      { label: 'conductivity by the share', expected: 1.2262, compute: () => 1 / (share() / 1 + (1 - share()) / 1.8) },
      { label: 'conductivity by the sum over the grounds', expected: 1.2262, compute: ringed },
    ],
  },
  {
    id: 'SO-F kWh',
    room,
    quantity: 'latent heat in kilowatt-hours',
    unit: 'kWh/m3',
    ...COMPUTED,
    tolerance: DIGITS,
    values: [
      { label: 'F1', expected: 22.267, compute: () => inKilowattHours(1600, 0.15, 0) },
      { label: 'F2', expected: 23.658, compute: () => inKilowattHours(1500, 0.2, 0.03) },
    ],
  },
];
