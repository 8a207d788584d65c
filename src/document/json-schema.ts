import { type Kind, KINDS, type ShapeNode } from '../units/index.js';
import type { Json } from './codec.js';
import { NUMBER_PATTERN, unitPattern } from './exact.js';
import { type Fields, formOf } from './form.js';

const SCOPE = 'Form and units. The ranges of numbers, the lengths of lists and what fits together are checked by the reader.';

/**
 * The JSON Schema (draft 2020-12) of the documents of a shape, as they are read: quantities as text or as value and unit.
 *
 * @param node - a shape
 * @returns the schema
 * @example
 * ```ts @import.meta.vitest
 * expect(jsonSchemaOf({ depth: 'length', note: { optional: 'text' } })).toMatchObject({ required: ['depth'], additionalProperties: false });
 * ```
 */
export function jsonSchemaOf(node: ShapeNode): Json {
  return { $schema: 'https://json-schema.org/draft/2020-12/schema', description: SCOPE, ...partOf(node) };
}

type Part = Readonly<Record<string, Json>>;

function partOf(node: ShapeNode): Part {
  const form = formOf(node);
  switch (form.form) {
    case 'quantity':
      return quantityPart(form.kind);
    case 'count':
      return { type: 'integer' };
    case 'flag':
      return { type: 'boolean' };
    case 'text':
      return { type: 'string' };
    case 'choice':
      return { enum: form.choices };
    case 'list':
      return { type: 'array', items: partOf(form.of) };
    case 'optional':
      return partOf(form.of);
    case 'object':
      return objectPart(form.fields);
    case 'union':
      return { oneOf: Object.entries(form.members).map(([name, fields]) => objectPart({ [form.by]: [name], ...fields })) };
  }
}

function quantityPart(kind: Kind): Part {
  const unit = unitPattern(kind);
  const text = kind === 'ratio' ? `( ${unit})?` : ` ${unit}`;
  const string = (pattern: string): Part => ({ type: 'string', pattern });
  return {
    description: `${kind}: a number, a space and one of ${Object.keys(KINDS[kind].units).join(', ')}`,
    anyOf: [
      string(`^\\s*${NUMBER_PATTERN}${text}\\s*$`),
      objectPart(
        { value: 'text', unit: 'text' },
        { value: { anyOf: [{ type: 'number' }, string(`^\\s*${NUMBER_PATTERN}$`)] }, unit: string(`^${unit}\\s*$`) },
      ),
    ],
  };
}

function objectPart(fields: Fields, given: Part = {}): Part {
  const required = Object.keys(fields).filter((key) => formOf(fields[key] ?? 'text').form !== 'optional');
  const properties = Object.fromEntries(Object.entries(fields).map(([key, node]) => [key, given[key] ?? partOf(node)]));
  return { type: 'object', properties, required, additionalProperties: false };
}
