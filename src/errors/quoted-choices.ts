/**
 * Choices one after the other, each in marks, since some hold commas themselves: what is allowed, for a refusal.
 *
 * @param choices - the texts
 * @returns one text
 * @example
 * ```ts @import.meta.vitest
 * expect(quotedChoices(['natural', 'natural, frozen'])).toBe('"natural", "natural, frozen"');
 * ```
 */
export function quotedChoices(choices: readonly string[]): string {
  return choices.map((choice) => JSON.stringify(choice)).join(', ');
}
