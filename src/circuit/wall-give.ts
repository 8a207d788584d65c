import { demand, demandObject, InputError } from '../errors/index.js';
import { type Band, bandShape, type PipeSection } from '../states/index.js';
import type { Shape } from '../units/index.js';

/** A pipe by its two diameters. */
export type PipeRing = Pick<PipeSection, 'outsideDiameter' | 'insideDiameter'>;

/** How a polyethylene wall gives, where it is known better than by default. */
export interface WallGive {
  /** Linear thermal expansion of the wall per kelvin; 1.3e-4 to 2.0e-4 with 1.5e-4 as the estimate when left out [1/K]. */
  readonly linearExpansion?: Band<'ratio'>;
  /** Modulus of the wall for as long as the load lasts; by default of the case at hand [Pa]. */
  readonly modulus?: Band<'pressure'>;
}

/** Shape of {@link WallGive}. */
export const wallGiveShape: Shape<WallGive> = {
  linearExpansion: { optional: /* @__PURE__ */ bandShape('ratio') },
  modulus: { optional: /* @__PURE__ */ bandShape('pressure') },
};

/** Poisson's ratio of polyethylene [1]. */
export const POISSON = 0.45;
/** Compressibility of water; that of antifreeze is near it and weighs a twentieth of the wall [1/Pa]. */
export const WATER_COMPRESSIBILITY = 4.6e-10;

/** By how much the volume of a bore grows with the pressure in it, the wall held lengthwise by the soil (Lamé's thick ring, plane strain) [1/Pa]. */
export function boreCompliance({ outsideDiameter, insideDiameter }: PipeRing, modulus: number): number {
  const square = (outsideDiameter / insideDiameter) ** 2;
  return ((2 * (1 + POISSON)) / modulus) * ((1 - 2 * POISSON + square) / (square - 1));
}

/** By how much the volume of a bore grows per kelvin, the wall held lengthwise by the soil and free across [1/K]. */
export const boreExpansion = (linearExpansion: number): number => 2 * linearExpansion * (1 + POISSON);

/** Refuses an impossible ring. */
export function demandRing(pipe: PipeRing): void {
  demandObject('pipe', pipe);
  demand('pipe.outsideDiameter', 'diameter', pipe.outsideDiameter, { atLeast: 0.001, atMost: 2 });
  demand('pipe.insideDiameter', 'diameter', pipe.insideDiameter, { atLeast: 0.0005, atMost: 2 });
  if (pipe.insideDiameter <= 0.99 * pipe.outsideDiameter) return;
  throw new InputError({
    code: 'impossible',
    argument: 'pipe.insideDiameter',
    value: { kind: 'diameter', value: pipe.insideDiameter },
    allowed: `at most 0.99 of the outside diameter, ${String(pipe.outsideDiameter)} m`,
    hint: 'the two diameters may be interchanged',
  });
}

/** A modulus within limits, refused where it is impossible. */
export function demandModulus(given: Band<'pressure'> | undefined, usual: Band<'pressure'>): Band<'pressure'> {
  const modulus = given === undefined ? usual : given;
  demandBand('modulus', 'pressure', modulus, 1e7, 1e10);
  return modulus;
}

/** An expansion within limits, refused where it is impossible. */
export function demandExpansion(expansion: Band<'ratio'> = EXPANSION): Band<'ratio'> {
  demandBand('linearExpansion', 'ratio', expansion, 1e-6, 1e-3);
  return expansion;
}

/** Weeks to months at ground temperature; the limits are those of months and hours. */
export const MONTHS = { low: 200e6, estimate: 400e6, high: 800e6, coverage: 0.9 } as Band<'pressure'>;
/** Minutes to hours. */
export const MINUTES = { low: 600e6, estimate: 800e6, high: 1200e6, coverage: 0.9 } as Band<'pressure'>;
/** Of polyethylene as listed and as commonly used. */
const EXPANSION = { low: 1.3e-4, estimate: 1.5e-4, high: 2e-4, coverage: 0.9 } as Band<'ratio'>;

function demandBand<K extends 'pressure' | 'ratio'>(argument: string, kind: K, band: Band<K>, atLeast: number, atMost: number): void {
  demandObject(argument, band);
  demand(`${argument}.low`, kind, band.low, { atLeast, atMost });
  demand(`${argument}.estimate`, kind, band.estimate, { atLeast: band.low, atMost });
  demand(`${argument}.high`, kind, band.high, { atLeast: band.estimate, atMost });
  demand(`${argument}.coverage`, 'fraction', band.coverage, { above: 0, atMost: 1 });
}
