import fc from 'fast-check';
import { formOf } from '../../src/document/form.js';
import type { Kind, ShapeNode } from '../../src/units/index.js';

/** Any number a kind may take: temperatures of weather and fluids, everything else over fifteen decades of either sign. */
export function arbitraryQuantity(kind: Kind): fc.Arbitrary<number> {
  if (kind === 'temperature') return fc.double({ min: -60, max: 100, noNaN: true });
  return fc.oneof(fc.double({ min: 1e-6, max: 1e9, noNaN: true }), fc.double({ min: -1e9, max: -1e-6, noNaN: true }), fc.constant(0));
}

/** Any value of a shape. */
export function arbitraryOf(node: ShapeNode): fc.Arbitrary<unknown> {
  const form = formOf(node);
  const fieldsOf = (fields: Readonly<Record<string, ShapeNode>>): fc.Arbitrary<Record<string, unknown>> => {
    const optional = Object.entries(fields).filter(([, field]) => formOf(field).form === 'optional');
    return fc.record(Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, arbitraryOf(field)])), {
      requiredKeys: Object.keys(fields).filter((key) => !optional.some(([name]) => name === key)),
      noNullPrototype: true,
    });
  };
  switch (form.form) {
    case 'quantity':
      return arbitraryQuantity(form.kind);
    case 'count':
      return fc.integer({ min: 0, max: 1000 });
    case 'flag':
      return fc.boolean();
    case 'text':
      return fc.string();
    case 'choice':
      return fc.constantFrom(...form.choices);
    case 'list':
      return fc.array(arbitraryOf(form.of), { maxLength: 4 });
    case 'optional':
      return arbitraryOf(form.of);
    case 'object':
      return fieldsOf(form.fields);
    case 'union':
      return fc.oneof(...Object.entries(form.members).map(([name, fields]) => fieldsOf(fields).map((rest) => ({ [form.by]: name, ...rest }))));
  }
}
