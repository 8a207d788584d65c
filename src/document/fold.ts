// The small build of zod: the same schemas with functions in place of methods, a third of the weight.
import * as z from 'zod/mini';
import type { Kind, ShapeNode } from '../units/index.js';
import { readQuantity, type UnitSystem, type Unreadable, writeQuantity } from './exact.js';
import { type Fields, formOf } from './form.js';

// A quantity as people write it: "600 ft" or { "value": 600, "unit": "ft" }. A bare number says no unit and is refused.
function quantity(kind: Kind, system: UnitSystem): z.ZodMiniType {
  const pair = z.strictObject({ value: z.union([z.number(), z.string()]), unit: z.string() });
  return z.codec(z.union([z.string(), pair]), z.number(), {
    decode: (given, context) => {
      const read = typeof given === 'string' ? readQuantity(kind, given) : readPair(kind, String(given.value), given.unit);
      if (typeof read === 'number') return read;
      context.issues.push({ code: 'custom', input: given, message: read });
      return z.NEVER;
    },
    encode: (value) => writeQuantity(kind, value, system),
  });
}

// A unit of blanks would leave a value that brings its own.
const readPair = (kind: Kind, value: string, unit: string): number | Unreadable =>
  unit.trim() === '' ? 'unknown unit' : readQuantity(kind, `${value} ${unit}`);

/**
 * The schema of a shape: decodes a document into quantities, and encodes quantities into a document of the given unit
 * system.
 *
 * @param node - a shape
 * @param system - the unit system that is written
 * @returns the schema, both ways
 * @example
 * ```ts @import.meta.vitest
 * const { decode, encode } = await import('zod/mini');
 * const schema = schemaOf({ depth: 'length' }, 'us');
 * expect(decode(schema, { depth: '6 ft' })).toEqual({ depth: 1.8288 });
 * expect(encode(schema, { depth: 3.048 })).toEqual({ depth: '10 ft' });
 * ```
 */
export function schemaOf(node: ShapeNode, system: UnitSystem): z.ZodMiniType {
  const form = formOf(node);
  switch (form.form) {
    case 'quantity':
      return quantity(form.kind, system);
    case 'count':
      return z.int();
    case 'flag':
      return z.boolean();
    case 'text':
      return z.string();
    case 'choice':
      return z.enum(form.choices);
    case 'list':
      return z.array(schemaOf(form.of, system));
    case 'optional':
      return z.optional(schemaOf(form.of, system));
    case 'object':
      return z.strictObject(fieldsOf(form.fields, system));
    case 'union': {
      const { by } = form;
      const [first, ...others] = Object.entries(form.members).map(([name, fields]) =>
        z.strictObject({ [by]: z.literal(name), ...fieldsOf(fields, system) }),
      );
      return first === undefined ? z.never() : z.discriminatedUnion(by, [first, ...others]);
    }
  }
}

function fieldsOf(fields: Fields, system: UnitSystem): Record<string, z.ZodMiniType> {
  return Object.fromEntries(Object.entries(fields).map(([key, node]) => [key, schemaOf(node, system)]));
}
