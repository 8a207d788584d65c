import type { Finding } from '../findings/index.js';
import type { Source } from '../references/index.js';
import type { Conductivity, Diameter, Fraction, Shape } from '../units/index.js';
import { type BuriedPipe, buriedPipeShape, demandPipes, USUAL_DIAMETER } from './buried-pipes.js';
import { groundAtPipe, type GroundLayer, groundLayers, onInterface } from './ground-at-pipe.js';
import { demandLayers, type SoilLayer, soilLayerShape } from './layers.js';

/** Native layers and pipes for the rule of logarithms. */
export interface LayersAboutPipes {
  /** Layers of the log from the top down. */
  readonly layers: readonly SoilLayer[];
  /** The pipes of one trench, 1 to 20 of them. */
  readonly pipes: readonly BuriedPipe[];
  /** Outside diameter of the pipes, 0.005 to 0.5; 32 mm when left out [m]. */
  readonly outsideDiameter?: Diameter;
}

/** Shape of {@link LayersAboutPipes}. */
export const layersAboutPipesShape: Shape<LayersAboutPipes> = {
  layers: { list: soilLayerShape },
  pipes: { list: buriedPipeShape },
  outsideDiameter: { optional: 'diameter' },
};

/** What the rule of logarithms makes of layers. */
export interface LogResistance {
  /** Effective conductivity by the rule [W/(m.K)]. */
  readonly conductivity: Conductivity;
  /** The most that the rule was off where it was tried in ground that differs as much, as a share of the conductivity [1]. */
  readonly worstError: Fraction;
  /** That it is a rule. */
  readonly findings: readonly Finding[];
  /** What it rests on. */
  readonly sources: readonly Source[];
}

/** Depths of interfaces closer than this are one depth, rounded [m]. */
const SAME = 1e-6;

/** How far the rule was off for every doubling from the poorest to the best layer, and where an interface is near a pipe. */
const WORST = 0.16;
const WORST_NEAR = 0.22;

/** An interface is near when it lies within this share of the depth of a pipe from it. */
const NEAR = 0.2;

/** From here on that is told as a warning [1]. */
const MUCH = 0.05;

/**
 * Effective conductivity of layers by a rule that fits on paper: steady resistance by the logarithm of the distance from the pipe.
 *
 * The layer of the pipe counts up to twice the distance to the next interface, the harmonic mean of the outermost layers reached above and
 * below from there on, up to twice the depth. It is there to check {@link effectiveConductivity} by hand, not to size by.
 *
 * Where it fails: it takes each pipe alone, so that with several in a trench the far layers weigh too little; where the best layer conducts
 * twice as well as the poorest, it was up to 10 % off with two pipes and 12 % with four. With one pipe and a poorer layer under a better one it
 * was 6 to 12 % off. An interface a hand's breadth from the pipe throws it off by up to 20 %, since there the two layers share the heat and the
 * poorer does not stand in the way. All of it doubles where conductivities differ fourfold. Fill and bedding it does not know.
 *
 * @param input - layers, pipes and their diameter
 * @returns conductivity [W/(m.K)], with how far the rule is off
 * @throws InputError when layers overlap or leave a gap, or a number is impossible
 * @remarks
 * 1/k = [ln(2b/r)/k_own + ln(z/b)/k_far] / ln(2z/r), b from the pipe to the interface and not over the depth z, k_far = 2 k₁k₂/(k₁ + k₂)
 * (`logResistanceRule`); for more layers the same with each interface in its turn. Checked against finite elements of two layers: +0.9, +2.2,
 * −0.6 and −5.5 % of the effective conductivity with one pipe, +7.4 % with two, as stated for the rule. For two pipes on either side of an
 * interface the rule is stated as −4.7 %, reckoned at their mean depth; pipe by pipe, as here, it is 0.1 % off. `worstError` is held by
 * thousands of random logs of two to four layers that differ up to fourfold, against {@link effectiveConductivity}.
 *
 * Invariants: lies between the least and the greatest conductivity; equal layers come back; scales with the conductivities.
 * @example
 * ```ts @import.meta.vitest
 * const { diameterMillimetres, megajoulesPerCubicMetreKelvin, metres, squareMillimetresPerSecond, wattsPerMetreKelvin } = await import(
 *   '../units/index.js'
 * );
 * const soil = (k: number) => ({
 *   conductivity: wattsPerMetreKelvin(k),
 *   heatCapacity: megajoulesPerCubicMetreKelvin(2),
 *   diffusivity: squareMillimetresPerSecond(k / 2),
 * });
 * const { conductivity } = logResistanceConductivity({
 *   layers: [
 *     { top: metres(0), bottom: metres(1.2), thermal: soil(0.9) },
 *     { top: metres(1.2), bottom: metres(3), thermal: soil(1.9) },
 *   ],
 *   pipes: [{ x: metres(0), depth: metres(1.5) }],
 *   outsideDiameter: diameterMillimetres(33.4),
 * });
 * expect(conductivity).toBeCloseTo(1.607 * 1.009, 2);
 * ```
 */
export function logResistanceConductivity({ layers, pipes, outsideDiameter = USUAL_DIAMETER }: LayersAboutPipes): LogResistance {
  demandLayers(layers);
  demandPipes(pipes, outsideDiameter);
  const ground = groundLayers(layers);
  const radius = outsideDiameter / 2;
  const depths = pipes.map(({ depth }) => onInterface(ground, depth, radius));
  const spans = depths.map((depth) => Math.log((2 * depth) / radius));
  const resistances = depths.map((depth) => resistance(ground, depth, radius));
  const conductivity = (sum(spans) / sum(resistances)) as Conductivity;
  const worstError = errorOf(ground, depths) as Fraction;
  const rough: Finding = {
    code: 'log-resistance-rule-rough',
    level: worstError > MUCH ? 'warning' : 'note',
    values: { conductivity, worstError },
    source: 'logResistanceRule',
  };
  return { conductivity, worstError, findings: worstError === 0 ? [] : [rough], sources: ['logResistanceRule'] };
}

/** Steady resistance about one pipe, times 2π. */
function resistance(ground: readonly GroundLayer[], depth: number, radius: number): number {
  const faces = ground.map(({ bottom }) => bottom).filter((bottom) => bottom !== depth && Math.abs(bottom - depth) < depth);
  const distances = faces.map((face) => Math.abs(face - depth)).sort((a, b) => a - b);
  const ends = [radius, ...distances.map((distance) => Math.max(radius, 2 * distance)), 2 * depth];
  return sum(
    ends.slice(1).map((end, index) => {
      const reached = index === 0 ? 0 : (distances[index - 1] ?? 0);
      return Math.log(end / (ends[index] ?? NaN)) / reachedConductivity(ground, depth, reached);
    }),
  );
}

/** Harmonic mean of the outermost layers when everything up to a distance is reached. */
function reachedConductivity(ground: readonly GroundLayer[], depth: number, distance: number): number {
  if (distance === 0) return groundAtPipe(ground, depth).conductivity;
  const above = ground.findLast(({ top }) => top < depth - distance - SAME) ?? ground[0];
  const below = ground.find(({ bottom }) => bottom > depth + distance + SAME) ?? ground.at(-1);
  return 2 / (1 / (above?.conductivity ?? NaN) + 1 / (below?.conductivity ?? NaN));
}

/** How far the rule was off in ground and with pipes like these. */
function errorOf(ground: readonly GroundLayer[], depths: readonly number[]): number {
  const each = ground.map(({ conductivity }) => conductivity);
  const doublings = Math.log2(Math.max(...each) / Math.min(...each));
  const near = ground.some(({ bottom }) => depths.some((depth) => Math.abs(bottom - depth) < NEAR * depth));
  return Math.min(1, doublings * (near ? WORST_NEAR : WORST));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
