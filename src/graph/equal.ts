/** Whether two plain values are alike all the way down. An own field that is missing differs from any value. */
export function alike(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const names = Object.keys(a);
  if (names.length !== Object.keys(b).length) return false;
  return names.every(
    (name) =>
      Object.hasOwn(b, name) &&
      alike((a as Readonly<Record<string, unknown>>)[name], (b as Readonly<Record<string, unknown>>)[name]),
  );
}

/**
 * An object with some fields changed. A field that is alike keeps its old value, and where every field does,
 * the object itself is given back: typing a value that already stands there is no change.
 */
export function changed<T extends object>(old: T, changes: Partial<T>): T {
  let next: T | null = null;
  for (const name of Object.keys(changes) as (keyof T)[]) {
    if (Object.hasOwn(old, name) && alike(old[name], changes[name])) continue;
    next ??= { ...old };
    next[name] = changes[name] as T[keyof T];
  }
  return next ?? old;
}
