import * as z from 'zod/mini';
import { InputError } from '../errors/index.js';
import { type Kind, KINDS, type Shape, type ShapeNode } from '../units/index.js';
import type { UnitSystem } from './exact.js';
import { formOf, nodeAt, valueAt } from './form.js';
import { schemaOf } from './fold.js';
import { jsonSchemaOf } from './json-schema.js';
import { refusal, shown } from './refusal.js';

/** A JSON value. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** Reads documents of one shape and writes them in either unit system. */
export interface DocumentCodec<T> {
  /** The shape the codec was made from. */
  readonly shape: ShapeNode;
  /** Reads a document; throws an {@link InputError} that points at the first fault. */
  read(document: unknown): T;
  /** Writes a document; quantities become texts. */
  write(value: T, system: UnitSystem): Json;
  /** The JSON Schema (draft 2020-12) of the documents that are read. */
  jsonSchema(): Json;
  /** The kind of the quantity at a JSON Pointer, in a given document. */
  kindAt(pointer: string, document?: unknown): Kind | undefined;
  /** An error of a computation on what was read, with the value as the writer of the document wrote it. */
  explain(error: InputError, document: unknown): InputError;
}

/**
 * Makes the reader and writer of one shape.
 *
 * @param shape - the shape beside the interface
 * @returns the codec
 * @example
 * ```ts @import.meta.vitest
 * const codec = codecOf<{ readonly depth: import('../units/index.js').Length }>({ depth: 'length' });
 * expect(codec.write(codec.read({ depth: '6 ft' }), 'us')).toEqual({ depth: '6 ft' });
 * expect(() => codec.read({ depth: 6 })).toThrow('depth: 6 is not allowed');
 * expect(codec.kindAt('/depth')).toBe('length');
 * ```
 */
export function codecOf<T>(shape: Shape<T> & ShapeNode): DocumentCodec<T> {
  return codecOfNode<T>(shape);
}

/**
 * Makes the reader and writer of a shape that was put together at run time, so that no compiler has compared it with the interface.
 *
 * @param shape - the shape
 * @returns the codec
 */
export function codecOfNode<T>(shape: ShapeNode): DocumentCodec<T> {
  const schemas = new Map<UnitSystem, z.ZodMiniType>();
  const schema = (system: UnitSystem): z.ZodMiniType => {
    const known = schemas.get(system) ?? schemaOf(shape, system);
    schemas.set(system, known);
    return known;
  };
  const kindAt = (steps: readonly string[], document: unknown): Kind | undefined => {
    const node = nodeAt(shape, steps, document);
    const form = node === undefined ? undefined : formOf(node);
    return form?.form === 'quantity' ? form.kind : undefined;
  };
  return {
    shape,
    read(document) {
      const result = z.safeDecode(schema('metric'), document);
      if (result.success) return result.data as T;
      throw refusal(shape, document, result.error.issues[0]);
    },
    write: (value, system) => z.encode(schema(system), value) as Json,
    jsonSchema: () => jsonSchemaOf(shape),
    kindAt: (pointer, document = {}) => kindAt(stepsOf(pointer), document),
    explain(error, document) {
      const steps = error.argument.split('.');
      const written = valueAt(document, steps);
      if (written === undefined) return error;
      const hint = [error.hint, scaleOf(error.value, kindAt(steps, document))].filter((text) => text !== undefined).join('; ');
      return new InputError({
        code: error.code,
        argument: error.argument,
        value: shown(written),
        allowed: error.allowed,
        hint: hint === '' ? undefined : hint,
      });
    },
  };
}

/** The unit of the limits, and what a field of another kind comes to in it. */
function scaleOf(value: InputError['value'], given: Kind | undefined): string | undefined {
  if (typeof value !== 'object' || value.kind === 'count' || value.kind === 'ratio') return undefined;
  const limits = `limits in ${KINDS[value.kind].si}`;
  return given === value.kind ? limits : `this makes ${String(Number(value.value.toPrecision(6)))}; ${limits}`;
}

const stepsOf = (pointer: string): string[] =>
  pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
