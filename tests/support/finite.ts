/** The first number of a result that is not finite, with its place; nothing when every number is finite. */
export function notFinite(result: unknown, path = 'the result'): string | undefined {
  if (typeof result === 'number') return Number.isFinite(result) ? undefined : `${String(result)} in ${path}`;
  if (typeof result !== 'object' || result === null) return undefined;
  const parts: Iterable<readonly [unknown, unknown]> =
    result instanceof Map ? result : ArrayBuffer.isView(result) ? numbersOf(result) : Object.entries(result);
  for (const [key, part] of parts) {
    const off = notFinite(part, `${path}.${String(key)}`);
    if (off !== undefined) return off;
  }
  return undefined;
}

/** Whether every number of a result, at any depth, is finite. */
export function everyNumberFinite(result: unknown): boolean {
  return notFinite(result) === undefined;
}

const numbersOf = (view: ArrayBufferView): Iterable<readonly [unknown, unknown]> =>
  view instanceof DataView ? [] : Array.from(Object.entries(view));
