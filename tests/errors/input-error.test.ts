import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError, type InputErrorCode, type InputErrorDetails } from '../../src/errors/index.js';

const CODES: Readonly<Record<InputErrorCode, true>> = {
  missing: true,
  surplus: true,
  'wrong-type': true,
  'unknown-unit': true,
  'unknown-choice': true,
  'unknown-version': true,
  'not-finite': true,
  'out-of-range': true,
  impossible: true,
  'too-few': true,
  'too-many': true,
  unreachable: true,
};
const details: InputErrorDetails = { code: 'out-of-range', argument: 'soil.depth', value: { kind: 'length', value: -1 }, allowed: 'above 0' };

describe('InputError', () => {
  it('is an error that a program can tell apart', () => {
    const error = new InputError(details);
    expect(error).toBeInstanceOf(Error);
    expect(error.name).toBe('InputError');
    expect(error.stack).toContain('input-error.test');
    expect(String(error)).toBe('InputError: soil.depth: -1 (length) is not allowed; allowed: above 0');
  });

  it.each(Object.keys(CODES) as InputErrorCode[])('keeps the details with code %s', (code) => {
    expect(new InputError({ ...details, code, hint: 'why' })).toMatchObject({ ...details, code, hint: 'why' });
  });

  it.each<[InputErrorDetails['value'], string | undefined, string]>([
    [{ kind: 'length', value: NaN }, undefined, 'd: NaN (length) is not allowed; allowed: y'],
    [{ kind: 'count', value: 0 }, 'dig more', 'd: 0 (count) is not allowed; allowed: y (dig more)'],
    ['furlong', undefined, 'd: furlong is not allowed; allowed: y'],
    [undefined, undefined, 'd: nothing is not allowed; allowed: y'],
  ])('says %o, %s as a sentence', (value, hint, message) => {
    expect(new InputError({ code: 'impossible', argument: 'd', value, allowed: 'y', hint }).message).toBe(message);
  });

  it.each([
    ['', ''],
    ['depth', '/depth'],
    ['layers.2.top', '/layers/2/top'],
    ['sizes.3/4', '/sizes/3~14'],
    ['a~b', '/a~0b'],
    ['~1', '/~01'],
  ])('points at %s with %s', (argument, pointer) => {
    expect(new InputError({ ...details, argument }).pointer).toBe(pointer);
  });

  it('lies within any larger input, level by level', () => {
    const path = fc.array(fc.stringMatching(/^[a-z0-9]+$/u), { minLength: 1, maxLength: 3 }).map((steps) => steps.join('.'));
    fc.assert(
      fc.property(path, path, path, (inner, middle, outer) => {
        const error = new InputError({ ...details, argument: inner, hint: 'h' });
        const placed = error.within(middle).within(outer);
        expect(placed.argument).toBe(`${outer}.${middle}.${inner}`);
        expect(placed.pointer).toBe(`/${placed.argument.replaceAll('.', '/')}`);
        expect(placed.message.startsWith(`${placed.argument}: `)).toBe(true);
        expect(placed).toMatchObject({ code: error.code, value: error.value, allowed: error.allowed, hint: 'h' });
        expect(error.argument).toBe(inner);
      }),
    );
  });

  it('has no empty step when it is the whole input that is refused', () => {
    expect(new InputError({ ...details, argument: '' }).within('soil').argument).toBe('soil');
    expect(new InputError(details).within('').argument).toBe('soil.depth');
  });
});
