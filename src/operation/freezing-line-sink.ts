import { demand, demandObject, InputError } from '../errors/index.js';
import { exponentialIntegral } from '../numerics/index.js';
import type { ReferenceKey } from '../references/index.js';
import { type SoilThermal, soilThermalShape } from '../states/index.js';
import type { HeatPerPipeLength, LatentHeat, Length, Ratio, Shape, Temperature, Time } from '../units/index.js';

/** What {@link lineSinkFreezing} needs. */
export interface LineSinkInput {
  /** Heat taken from each metre of pipe since time zero, 0.01 to 1e4 [W/m]. */
  readonly extraction: HeatPerPipeLength;
  /** The soil without ice. */
  readonly thawed: SoilThermal;
  /** The soil with its ice. */
  readonly frozen: SoilThermal;
  /** Heat set free by freezing, 1e3 to 4e8 [J/m3]. */
  readonly latentHeat: LatentHeat;
  /** The ground at the start, above the freezing point, up to 60 [degC]. */
  readonly initial: Temperature;
  /** Temperature at which all the water freezes, −20 to 5; 0 when left out [degC]. */
  readonly freezingPoint?: Temperature;
  /** Since the heat began, 1 to 1e11 [s]. */
  readonly time: Time;
  /** Distance from the line, 1e-4 to 1e3 [m]. */
  readonly distance: Length;
}

/** Shape of {@link LineSinkInput}. */
export const lineSinkInputShape: Shape<LineSinkInput> = {
  extraction: 'heat per pipe length',
  thawed: soilThermalShape,
  frozen: soilThermalShape,
  latentHeat: 'latent heat',
  initial: 'temperature',
  freezingPoint: { optional: 'temperature' },
  time: 'time',
  distance: 'length',
};

/** Soil frozen by a line of constant heat. */
export interface LineSinkFreezing {
  /** Radius of the front over twice the root of frozen diffusivity and time [1]. */
  readonly frontParameter: Ratio;
  /** Distance of the front from the line [m]. */
  readonly frozenRadius: Length;
  /** Soil at the distance asked for [degC]. */
  readonly temperature: Temperature;
  /** What the numbers rest on. */
  readonly sources: readonly ReferenceKey[];
}

/** Shape of {@link LineSinkFreezing} without its sources. */
export const lineSinkFreezingShape: Shape<Omit<LineSinkFreezing, 'sources'>> = {
  frontParameter: 'ratio',
  frozenRadius: 'length',
  temperature: 'temperature',
};

/** No front parameter is greater, and none that can be told from 0 is smaller. */
const GREATEST = 26;
const SMALLEST = 1e-150;
const HALVINGS = 120;

/**
 * How far soil freezes around a line that takes constant heat, in ground without end, exactly.
 *
 * All water freezes at one temperature; no surface, no neighbour, no pipe. It tells what ice around a single pipe comes to in weeks, before the surface is
 * felt, and what a computation has to meet.
 *
 * @param input - see {@link LineSinkInput}
 * @returns front [m] and temperature [degC]
 * @throws InputError for a value out of its range, or ground that is frozen from the start
 * @remarks q/(4π) e^(−λ²) − k (T − Tf) e^(−aλ²)/E1(aλ²) = L λ² α frozen, with a = frozen over thawed diffusivity and front 2λ√(α frozen · t). Source: `paterson1952`.
 * Checked against values computed independently to 1e-8. Invariants tested: the front grows with the root of time and with heat, and falls with latent
 * heat; the temperature is continuous at the front, and tends to that of the start far out.
 * @example
 * ```ts @import.meta.vitest
 * const { celsius, days, joulesPerCubicMetreKelvin, megajoulesPerCubicMetre, metres, squareMetresPerSecond, wattsPerMetreKelvin, wattsPerPipeMetre } =
 *   await import('../units/index.js');
 * const soil = (conductivity: number, heatCapacity: number) => ({
 *   conductivity: wattsPerMetreKelvin(conductivity),
 *   heatCapacity: joulesPerCubicMetreKelvin(heatCapacity),
 *   diffusivity: squareMetresPerSecond(conductivity / heatCapacity),
 * });
 * const { frozenRadius } = lineSinkFreezing({
 *   extraction: wattsPerPipeMetre(20),
 *   thawed: soil(1.6, 2.8e6),
 *   frozen: soil(2.4, 2e6),
 *   latentHeat: megajoulesPerCubicMetre(60),
 *   initial: celsius(5),
 *   time: days(30),
 *   distance: metres(0.016),
 * });
 * expect(frozenRadius).toBeCloseTo(0.127, 3);
 * ```
 */
export function lineSinkFreezing(input: LineSinkInput): LineSinkFreezing {
  const { extraction, thawed, frozen, latentHeat, initial, freezingPoint = 0 as Temperature, time, distance } = demandLineSink(input);
  const warmth = thawed.conductivity * (initial - freezingPoint);
  const ratio = frozen.diffusivity / thawed.diffusivity;
  const line = extraction / (4 * Math.PI);
  const left = (front: number): number => {
    const square = front * front;
    const arriving = exponentialIntegral(ratio * square);
    // Where next to nothing comes from afar, e^(−x)/E1(x) is x + 1.
    const fromAfar = arriving > 0 ? Math.exp(-ratio * square) / arriving : ratio * square + 1;
    return line * Math.exp(-square) - warmth * fromAfar - latentHeat * square * frozen.diffusivity;
  };
  let low = Math.log(SMALLEST);
  let high = Math.log(GREATEST);
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (left(Math.exp(middle)) > 0) low = middle;
    else high = middle;
  }
  const front = Math.exp((low + high) / 2);
  const frozenRadius = 2 * front * Math.sqrt(frozen.diffusivity * time);
  const spread = (soil: SoilThermal): number => (distance * distance) / (4 * soil.diffusivity * time);
  const temperature =
    distance <= frozenRadius
      ? freezingPoint + (line / frozen.conductivity) * (exponentialIntegral(front * front) - exponentialIntegral(spread(frozen)))
      : initial - (initial - freezingPoint) * (exponentialIntegral(spread(thawed)) / exponentialIntegral(ratio * front * front));
  return {
    frontParameter: front as Ratio,
    frozenRadius: frozenRadius as Length,
    temperature: temperature as Temperature,
    sources: ['paterson1952', 'carslawJaeger1959'],
  };
}

function demandLineSink(input: LineSinkInput): LineSinkInput {
  const { extraction, latentHeat, initial, freezingPoint, time, distance } = input;
  demand('extraction', 'heat per pipe length', extraction, { atLeast: 0.01, atMost: 1e4 });
  for (const name of ['thawed', 'frozen'] as const) {
    demandObject(name, input[name]);
    demand(`${name}.conductivity`, 'conductivity', input[name].conductivity, { atLeast: 0.05, atMost: 10 });
    demand(`${name}.diffusivity`, 'diffusivity', input[name].diffusivity, { atLeast: 1e-8, atMost: 1e-4 });
    demand(`${name}.heatCapacity`, 'heat capacity', input[name].heatCapacity, { atLeast: 1e5, atMost: 1e7 });
  }
  demand('latentHeat', 'latent heat', latentHeat, { atLeast: 1e3, atMost: 4e8 });
  demand('initial', 'temperature', initial, { atLeast: -20, atMost: 60 });
  if (freezingPoint !== undefined) demand('freezingPoint', 'temperature', freezingPoint, { atLeast: -20, atMost: 5 });
  demand('time', 'time', time, { atLeast: 1, atMost: 1e11 });
  demand('distance', 'length', distance, { atLeast: 1e-4, atMost: 1e3 });
  if (initial <= (freezingPoint ?? 0)) {
    throw new InputError({
      code: 'impossible',
      argument: 'initial',
      value: { kind: 'temperature', value: initial },
      allowed: `above the freezing point, ${String(freezingPoint ?? 0)} degC`,
      hint: 'the front moves through ground that is not frozen',
    });
  }
  return input;
}
