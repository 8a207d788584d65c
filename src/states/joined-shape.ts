/**
 * The shape of an interface that extends another: the fields of the one it extends and those it adds.
 *
 * The compiler takes the interface from where the result goes, and refuses a wrong kind, a missing key or a surplus key as it does in a shape
 * written out. Marked pure, the call can be left out by a bundler, which takes a spread for something that might be felt elsewhere.
 *
 * @param part - shape of what is extended
 * @param rest - the further fields
 * @returns both in one shape
 * @example
 * ```ts @import.meta.vitest
 * const single = { depth: 'length', outsideDiameter: 'diameter' } as const;
 * expect(joinedShape(single, { spacing: 'length' })).toEqual({ depth: 'length', outsideDiameter: 'diameter', spacing: 'length' });
 * ```
 */
export function joinedShape<S extends object, P extends Partial<S>>(part: P, rest: Omit<S, keyof P>): S;
export function joinedShape(part: object, rest: object): object {
  return { ...part, ...rest };
}
