import { type LoopInput, loopInputShape } from '../plan/index.js';
import type { Shape } from '../units/index.js';
import { codecOf, type DocumentCodec } from './codec.js';

/** The format name that an input document of this version carries. */
export type InputFormat = 'loamloop-input-1';

/** An input document: a {@link LoopInput} with the name of its format. */
export interface InputDocument extends LoopInput {
  /** Name and version of the format. */
  readonly format: InputFormat;
}

/** Shape of {@link InputDocument}. */
export const inputDocumentShape: Shape<InputDocument> = { format: ['loamloop-input-1'], ...loopInputShape };

/**
 * The reader and writer of input documents.
 *
 * @returns a codec; made anew at each call, so keep it for many documents
 * @example
 * ```ts @import.meta.vitest
 * expect(() => inputDocument().read({ format: 'loamloop-input-9' })).toThrow('loamloop-input-1');
 * ```
 */
export function inputDocument(): DocumentCodec<InputDocument> {
  return codecOf<InputDocument>(inputDocumentShape);
}
