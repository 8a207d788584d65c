import { InputError, type InputErrorDetails } from '../errors/index.js';

/** Where in a weather file something is; lines and columns count from 1, columns by the commas before them. */
export interface WeatherFilePlace {
  /** Line of the text. */
  readonly line: number;
  /** Column of the line; absent where the whole line is meant. */
  readonly column?: number | undefined;
}

/**
 * A weather file that cannot be read, with the line and column at fault.
 *
 * @example
 * ```ts @import.meta.vitest
 * const details = { code: 'wrong-type', argument: 'text', value: 'warm', allowed: 'a number' } as const;
 * const error = new WeatherFileError(details, { line: 9, column: 7 });
 * expect(error.message).toBe('text.line 9.column 7: warm is not allowed; allowed: a number');
 * expect([error.line, error.column, error instanceof Error]).toEqual([9, 7, true]);
 * ```
 */
export class WeatherFileError extends InputError implements WeatherFilePlace {
  /** Line of the text, from 1. */
  readonly line: number;
  /** Column of the line, from 1; absent where the whole line is at fault. */
  readonly column: number | undefined;
  readonly #details: InputErrorDetails;

  /**
   * Makes the refusal.
   *
   * @param details - what was refused; its argument is the name of the text, and gets line and column behind it
   * @param place - line and column at fault
   */
  constructor(details: InputErrorDetails, { line, column }: WeatherFilePlace) {
    super({ ...details, argument: `${details.argument}.line ${line}${column === undefined ? '' : `.column ${column}`}` });
    this.line = line;
    this.column = column;
    this.#details = details;
  }

  /**
   * The same error with the text placed inside a larger input.
   *
   * @param path - where the text lies, with dots between the levels; empty for the input itself
   * @returns a new error whose argument starts with the path
   */
  override within(path: string): WeatherFileError {
    const argument = [path, this.#details.argument].filter((part) => part !== '').join('.');
    return new WeatherFileError({ ...this.#details, argument }, this);
  }
}

/** No longer part of a file than this is repeated in a message. */
const MOST_SHOWN = 40;

/** The refusal of a place in the text of a weather file. */
export function refusal(place: WeatherFilePlace, details: Omit<InputErrorDetails, 'argument'>): WeatherFileError {
  const { value } = details;
  const shown = typeof value === 'string' && value.length > MOST_SHOWN ? `${value.slice(0, MOST_SHOWN)}…` : value;
  return new WeatherFileError({ ...details, argument: 'text', value: shown === '' ? 'an empty cell' : shown }, place);
}
