import { type Kind, KINDS, type ShapeNode } from '../units/index.js';

/** The fields of an object, by name. */
export type Fields = Readonly<Record<string, ShapeNode>>;

/** What a shape node is, told apart once for every program that walks shapes. */
export type Form =
  | { readonly form: 'quantity'; readonly kind: Kind }
  | { readonly form: 'count' | 'flag' | 'text' }
  | { readonly form: 'choice'; readonly choices: readonly string[] }
  | { readonly form: 'list' | 'optional'; readonly of: ShapeNode }
  | { readonly form: 'union'; readonly by: string; readonly members: Readonly<Record<string, Fields>> }
  | { readonly form: 'object'; readonly fields: Fields };

const isKind = (name: string): name is Kind => Object.hasOwn(KINDS, name);
const isChoice = (node: ShapeNode): node is readonly string[] => Array.isArray(node);
const isListNode = (node: ShapeNode): node is { readonly list: ShapeNode } => typeof node === 'object' && 'list' in node;
const isOptionalNode = (node: ShapeNode): node is { readonly optional: ShapeNode } => typeof node === 'object' && 'optional' in node;
const isUnionNode = (node: ShapeNode): node is { readonly by: string; readonly oneOf: Readonly<Record<string, Fields>> } =>
  typeof node === 'object' && 'oneOf' in node;
const isFields = (node: ShapeNode): node is Fields => typeof node === 'object' && !isChoice(node);

/** A quantity that carries its kind: the kinds are the members, told apart by `kind`. */
const TAGGED: Form = {
  form: 'union',
  by: 'kind',
  members: Object.fromEntries([...Object.keys(KINDS).filter(isKind), 'count' as const].map((kind) => [kind, { value: kind }])),
};

/**
 * Tells what a shape node is.
 *
 * @param node - a shape or a part of one
 * @returns its form with its parts
 * @example
 * ```ts @import.meta.vitest
 * expect(formOf('length')).toEqual({ form: 'quantity', kind: 'length' });
 * expect(formOf({ list: 'count' })).toEqual({ form: 'list', of: 'count' });
 * ```
 */
export function formOf(node: ShapeNode): Form {
  if (node === 'count' || node === 'flag' || node === 'text') return { form: node };
  if (node === 'tagged') return TAGGED;
  if (typeof node === 'string') {
    if (!isKind(node)) throw new TypeError(`${JSON.stringify(node)} is no kind`);
    return { form: 'quantity', kind: node };
  }
  if (isChoice(node)) return { form: 'choice', choices: node };
  if (isListNode(node)) return { form: 'list', of: node.list };
  if (isOptionalNode(node)) return { form: 'optional', of: node.optional };
  if (isUnionNode(node)) return { form: 'union', by: node.by, members: node.oneOf };
  return { form: 'object', fields: isFields(node) ? node : {} };
}

/**
 * The part of a shape that a path leads to, with the choice of each union taken from the document.
 *
 * @param node - the shape of the whole document
 * @param path - the keys and positions, from the outside in
 * @param document - the document as given, to tell which member of a union is meant
 * @returns the shape node, or nothing where the path leads out of the shape
 * @example
 * ```ts @import.meta.vitest
 * expect(nodeAt({ layers: { list: { top: 'length' } } }, ['layers', '0', 'top'], {})).toBe('length');
 * expect(nodeAt({ layers: { list: { top: 'length' } } }, ['bottom'], {})).toBeUndefined();
 * ```
 */
export function nodeAt(node: ShapeNode, path: readonly string[], document: unknown): ShapeNode | undefined {
  const form = formOf(node);
  if (form.form === 'optional') return nodeAt(form.of, path, document);
  const [step, ...rest] = path;
  if (step === undefined) return node;
  const next =
    form.form === 'list'
      ? form.of
      : form.form === 'object'
        ? own(form.fields, step)
        : form.form === 'union'
          ? step === form.by
            ? Object.keys(form.members)
            : own(memberOf(form, document) ?? {}, step)
          : undefined;
  return next === undefined ? undefined : nodeAt(next, rest, valueAt(document, [step]));
}

/**
 * The fields of the member of a union that a document chooses.
 *
 * @param union - the form of the union
 * @param document - the part of the document that stands in its place
 * @returns the fields, or nothing where the document chooses none of the members
 */
export function memberOf({ by, members }: Extract<Form, { form: 'union' }>, document: unknown): Fields | undefined {
  const chosen = valueAt(document, [by]);
  return typeof chosen === 'string' ? own(members, chosen) : undefined;
}

/**
 * The value that a path leads to in a document.
 *
 * @param document - any JSON value
 * @param path - the keys and positions, from the outside in
 * @returns the value, or nothing where the path leads out of the document
 * @example
 * ```ts @import.meta.vitest
 * expect(valueAt({ layers: [{ top: '1 ft' }] }, ['layers', '0', 'top'])).toBe('1 ft');
 * expect(valueAt({}, ['constructor'])).toBeUndefined();
 * ```
 */
export function valueAt(document: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (value, step) => (typeof value === 'object' && value !== null ? own(Object.fromEntries(Object.entries(value)), step) : undefined),
    document,
  );
}

function own<T>(record: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}
