import type { ExponentialTerm } from '../ground/index.js';

/** A term that decays to less than this share in one step is over before the next [1]. */
const FORGOTTEN = 1e-9;
/** Terms are taken by four with a sum each, so that no addition waits for the one before it. */
const ABREAST = 4;

/**
 * What the ground still knows of all heat so far: one temperature change for each term of its response, heat taken above 0 [K]. In a step of heat q each
 * decays by a = e^(−step/time constant) and gains rise · (1 − a) · q. A class for the reason of `LazyTable`.
 */
export class GroundMemory {
  /** One for each term that outlives a step; zeros fill up the last four. */
  readonly changes: Float64Array;
  /** Rise at the end of one step of heat [m.K/W]. */
  readonly stepRise: number;
  readonly #timeConstants: readonly number[];
  /** What a change decays to in one step, by terms [1]. */
  readonly #decays: Float64Array;
  /** What heat adds to a change in one step, by terms [m.K/W]. */
  readonly #gains: Float64Array;
  /** What is left of that after one step more [m.K/W]. */
  readonly #left: Float64Array;

  /**
   * A memory that knows of nothing yet.
   *
   * @param terms - of the response
   * @param step - [s]
   */
  constructor(terms: readonly ExponentialTerm[], step: number) {
    const decay = ({ timeConstant }: ExponentialTerm): number => Math.exp(-step / timeConstant);
    const gain = ({ rise, timeConstant }: ExponentialTerm): number => -rise * Math.expm1(-step / timeConstant);
    const lasting = terms.filter((term) => decay(term) > FORGOTTEN);
    const filled = (values: readonly number[]): Float64Array => {
      const all = new Float64Array(ABREAST * Math.ceil(values.length / ABREAST));
      all.set(values);
      return all;
    };
    this.stepRise = terms.reduce((sum, term) => sum + gain(term), 0);
    this.changes = filled(lasting.map(() => 0));
    this.#timeConstants = lasting.map(({ timeConstant }) => timeConstant);
    this.#decays = filled(lasting.map(decay));
    this.#gains = filled(lasting.map(gain));
    this.#left = filled(lasting.map((term) => decay(term) * gain(term)));
  }

  /**
   * Goes on by one step.
   *
   * @param heat - of the step before, per metre of pipe [W/m]
   * @returns all changes together at the end of the step, if nothing happened in it [K]
   */
  pass(heat: number): number {
    const changes = this.changes;
    const decays = this.#decays;
    const left = this.#left;
    let first = 0;
    let second = 0;
    let third = 0;
    let fourth = 0;
    for (let term = 0; term < changes.length; term += ABREAST) {
      const one = (decays[term] ?? 0) * (changes[term] ?? 0) + (left[term] ?? 0) * heat;
      const two = (decays[term + 1] ?? 0) * (changes[term + 1] ?? 0) + (left[term + 1] ?? 0) * heat;
      const three = (decays[term + 2] ?? 0) * (changes[term + 2] ?? 0) + (left[term + 2] ?? 0) * heat;
      const four = (decays[term + 3] ?? 0) * (changes[term + 3] ?? 0) + (left[term + 3] ?? 0) * heat;
      changes[term] = one;
      changes[term + 1] = two;
      changes[term + 2] = three;
      changes[term + 3] = four;
      first += one;
      second += two;
      third += three;
      fourth += four;
    }
    return first + second + (third + fourth);
  }

  /**
   * Takes up the heat of the last step of a year.
   *
   * @param heat - per metre of pipe [W/m]
   */
  close(heat: number): void {
    this.changes.forEach((change, term) => {
      this.changes[term] = change + (this.#gains[term] ?? 0) * heat;
    });
  }

  /**
   * Corrects the memory at the end of a year to the one it would have if the year repeated for ever: each term decays by a over a year, so
   * what it lacks is (change over the year)/(1 − a). Exact where the heat of the year stays as it is.
   *
   * @param before - the changes at the start of the year [K]
   * @param year - length of the year [s]
   */
  correctToRepeating(before: Float64Array, year: number): void {
    for (const [term, timeConstant] of this.#timeConstants.entries()) {
      const start = before[term] ?? 0;
      this.changes[term] = start + ((this.changes[term] ?? 0) - start) / -Math.expm1(-year / timeConstant);
    }
  }
}
