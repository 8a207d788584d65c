import type { Kind, TaggedQuantity } from './quantity.js';

type Literal<T> = T extends string ? (string extends T ? never : T) : never;

/** The keys that every member of a union has with a literal text, by which its members are told apart. */
type DiscriminatorOf<T> = { [P in keyof T]: [Literal<T[P]>] extends [never] ? never : [T[P]] extends [string] ? P : never }[keyof T];

type IsUnion<T, Whole = T> = T extends unknown ? ([Whole] extends [T] ? false : true) : never;

type FieldShape<T, P extends keyof T> =
  Record<never, never> extends Pick<T, P> ? { readonly optional: Shape<Exclude<T[P], undefined>> } : Shape<T[P]>;

/** The shape of an object, field by field; `Skipped` fields are supplied by the union the object belongs to. */
type FieldShapes<T, Skipped extends PropertyKey = never> = { readonly [P in Exclude<keyof T, Skipped>]-?: FieldShape<T, P> };

/** The shape of a union of objects: the key that tells them apart and one set of fields for each of its values. */
type UnionShape<T> = {
  [D in DiscriminatorOf<T>]: {
    readonly by: D;
    readonly oneOf: { readonly [V in T[D] & string]: FieldShapes<Extract<T, { readonly [K in D]: V }>, D> };
  };
}[DiscriminatorOf<T>];

/**
 * The run-time description that an interface demands of the constant beside it. A number forgets its kind at run time;
 * the shape remembers it, and a wrong kind, a missing key or a surplus key does not compile.
 *
 * A quantity becomes the name of its kind, a plain number `'count'`, a boolean `'flag'`, a text `'text'`, a set of
 * literal texts the list of them, a quantity whose kind is told at run time `'tagged'`, a list `{ list }`, an optional field `{ optional }`, an object its fields and a union
 * of objects `{ by, oneOf }`.
 */
export type Shape<T> = [T] extends [{ readonly '~si': `${infer K extends Kind} [${string}]` }]
  ? K
  : [T] extends [number]
    ? 'count'
    : [T] extends [boolean]
      ? 'flag'
      : [T] extends [string]
        ? string extends T
          ? 'text'
          : readonly T[]
        : [T] extends [readonly (infer E)[]]
          ? { readonly list: Shape<E> }
          : [T] extends [TaggedQuantity]
            ? 'tagged'
            : IsUnion<T> extends true
              ? UnionShape<T>
              : FieldShapes<T>;

/** Any shape, as a program that walks shapes sees it. */
export type ShapeNode =
  | Kind
  | 'count'
  | 'flag'
  | 'text'
  | 'tagged'
  | readonly string[]
  | { readonly list: ShapeNode }
  | { readonly optional: ShapeNode }
  | { readonly by: string; readonly oneOf: Readonly<Record<string, Readonly<Record<string, ShapeNode>>>> }
  | { readonly [field: string]: ShapeNode };
