import type * as z from "zod/mini";
import { asFound } from "./expect.ts";
import type { Found } from "./place.ts";
import { MAX_PROBLEMS } from "./problem.ts";

/** In one entry, however nested. A connector of 2 000 cavities, all filled in, has about 40 000. */
const MAX_VALUES = 200_000;

/**
 * Checks one value against its shape.
 * @param path where the value stands in the file
 * @param found what is wrong is added to this, up to as many problems as are worth reading
 * @returns what was read, or `null` where something was wrong
 */
export function readValue(
  shape: z.ZodMiniType,
  raw: unknown,
  path: readonly PropertyKey[],
  found: Found[],
): unknown {
  if (countValues(raw, 0) > MAX_VALUES) {
    found.push({
      path,
      code: "too-many",
      found: `over ${MAX_VALUES} values in one entry`,
      expected: "what one part, wire or setting can have",
      next: "Remove the entry, or restore it from an earlier copy of the file.",
    });
    return null;
  }
  const result = shape.safeParse(raw);
  if (result.success) return result.data;
  for (const issue of result.error.issues) {
    if (found.length >= MAX_PROBLEMS) break;
    found.push(asFound(issue, raw, path));
  }
  return null;
}

/** How many values hang together, counted no further than the limit. Nesting was bounded before. */
function countValues(value: unknown, before: number): number {
  let count = before + 1;
  if (typeof value !== "object" || value === null) return count;
  const inner: Readonly<Record<string, unknown>> = value as Readonly<Record<string, unknown>>;
  for (const name in inner) {
    count = countValues(inner[name], count);
    if (count > MAX_VALUES) break;
  }
  return count;
}
