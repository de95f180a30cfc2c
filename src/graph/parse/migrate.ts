import { FORMAT_VERSION } from "../schema/harness.ts";
import type { Raw } from "./raw.ts";
import { toVersion2 } from "./to-version-2.ts";
import { toVersion3 } from "./to-version-3.ts";

/**
 * Steps from each format version to the next: `migrations[n]` takes a file of version n to n + 1. A step may
 * add and rename; it never drops what a person typed, and it does not trust the shapes: they are checked after it. Every version has a kept file under tests/graph/versions.
 */
export const migrations: ReadonlyMap<number, (raw: Raw) => Raw> = new Map([
  [1, toVersion2],
  [2, toVersion3],
]);

/** Brings a raw file of an older version up to date; one of this or a newer version is left as it is. */
export function migrate(
  raw: Raw,
  steps: ReadonlyMap<number, (raw: Raw) => Raw> = migrations,
  upTo = FORMAT_VERSION,
): Raw {
  let current = raw;
  if (typeof raw.formatVersion !== "number") return raw;
  for (let version = raw.formatVersion; version < upTo; version++) {
    const step = steps.get(version);
    if (!step) break;
    current = { ...step(current), formatVersion: version + 1 };
  }
  return current;
}
