/** A file as it was read, before its shape has been checked. */
export type Raw = Record<string, unknown>;

/** What stands already goes before; what is no object is left for the schema to complain of. */
export function filled(missing: Raw, value: unknown): unknown {
  if (value === undefined) return missing;
  if (!isRaw(value)) return value;
  return {
    ...value,
    ...Object.fromEntries(Object.entries(missing).filter(([key]) => !Object.hasOwn(value, key))),
  };
}

export function each(section: unknown, change: (value: unknown) => unknown): unknown {
  if (!isRaw(section)) return section;
  return Object.fromEntries(Object.entries(section).map(([key, value]) => [key, change(value)]));
}

export function isRaw(value: unknown): value is Raw {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
