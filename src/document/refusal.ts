import type * as z from 'zod/mini';
import { InputError, type InputErrorCode, quotedChoices } from '../errors/index.js';
import { KINDS, type ShapeNode } from '../units/index.js';
import { formOf, memberOf, nodeAt, valueAt } from './form.js';

/** Characters of a refused value that are shown; a whole log of soil layers would hide the reason. */
const SHOWN = 80;

/** A refused value as the writer of the document wrote it, cut to what a person reads. */
export function shown(value: unknown): string | undefined {
  const text = typeof value === 'string' ? value : written(value);
  return text === undefined || text.length <= SHOWN ? text : `${text.slice(0, SHOWN - 1)}…`;
}

// Whoever calls with a value instead of parsed JSON may give what JSON cannot hold; that is refused by name, too.
function written(value: unknown): string | undefined {
  if (value === undefined) return undefined;
  if (typeof value === 'bigint') return String(value);
  try {
    return JSON.stringify(value) ?? typeof value;
  } catch {
    return 'an object that JSON cannot hold';
  }
}

/**
 * The error for the first fault of a document, with its place and the value as it was written.
 *
 * @param shape - the shape of the whole document
 * @param document - the document as given
 * @param issue - the fault that the schema found
 * @returns the error to throw
 */
export function refusal(shape: ShapeNode, document: unknown, issue: z.core.$ZodIssue | undefined): InputError {
  const surplus = issue?.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : [];
  const path = [...(issue?.path ?? []).map(String), ...surplus];
  const value = valueAt(document, path);
  const argument = path.join('.');
  if (surplus.length > 0) {
    const node = nodeAt(shape, path.slice(0, -1), document);
    return new InputError({
      code: 'surplus',
      argument,
      value: shown(value),
      allowed: `no such field here; known: ${knownKeys(node, valueAt(document, path.slice(0, -1))).join(', ')}`,
    });
  }
  const node = nodeAt(shape, path, document);
  return new InputError({
    code: argument === 'format' && isOtherVersion(node, value) ? 'unknown-version' : codeOf(node, value, issue),
    argument,
    value: shown(value),
    allowed: node === undefined ? 'nothing here' : allowedAt(node),
  });
}

/** Whether a format is known under another number at its end. */
function isOtherVersion(node: ShapeNode | undefined, value: unknown): boolean {
  const form = node === undefined ? undefined : formOf(node);
  const name = (format: string): string => format.replace(/\d+$/u, '#');
  return form?.form === 'choice' && typeof value === 'string' && form.choices.some((known) => name(known) === name(value));
}

function codeOf(node: ShapeNode | undefined, value: unknown, issue: z.core.$ZodIssue | undefined): InputErrorCode {
  if (value === undefined) return 'missing';
  if (issue?.code === 'custom' && issue.message === 'unknown unit') return 'unknown-unit';
  if (issue?.code === 'custom' && issue.message === 'not finite') return 'not-finite';
  const form = node === undefined ? undefined : formOf(node);
  return form?.form === 'choice' && typeof value === 'string' ? 'unknown-choice' : 'wrong-type';
}

function allowedAt(node: ShapeNode): string {
  const form = formOf(node);
  switch (form.form) {
    case 'quantity': {
      const { kind } = form;
      return kind === 'ratio'
        ? `a ${kind}: a number written as text, for example "3.5"`
        : `a ${kind}: a text with number, space and one of ${Object.keys(KINDS[kind].units).join(', ')}; or { "value", "unit" }`;
    }
    case 'choice':
      return quotedChoices(form.choices);
    case 'count':
      return 'a whole number';
    case 'flag':
      return 'true or false';
    case 'text':
      return 'a text';
    case 'list':
      return 'a list';
    case 'optional':
      return allowedAt(form.of);
    case 'union':
      return `an object whose ${form.by} is one of ${quotedChoices(Object.keys(form.members))}`;
    case 'object':
      return `an object with ${Object.keys(form.fields).join(', ')}`;
  }
}

function knownKeys(node: ShapeNode | undefined, value: unknown): readonly string[] {
  const form = node === undefined ? undefined : formOf(node);
  if (form?.form === 'quantity') return ['value', 'unit'];
  if (form?.form === 'object') return Object.keys(form.fields);
  if (form?.form === 'union') return [form.by, ...Object.keys(memberOf(form, value) ?? {})];
  return [];
}
