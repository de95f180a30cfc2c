import type { Fragment } from "../../graph/edits/copy.ts";

/** More text than any harness has; the rest of a page's clipboard is not worth reading. */
const MOST_CHARACTERS = 20_000_000;

/**
 * Reads a piece of a harness from pasted text. Every entry is judged by the document's own schema; a text that
 * is anything else, or that was tampered with, gives `null`.
 */
export async function readFragment(text: string): Promise<Fragment | null> {
  if (text.length > MOST_CHARACTERS || !text.includes('"pigtailFragment"')) return null;
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  const [{ z }, { part }, { cable, place, wire }, { partId }] = await Promise.all([
    import("zod"),
    import("../../graph/schema/parts.ts"),
    import("../../graph/schema/harness.ts"),
    import("../../graph/schema/values.ts"),
  ]);
  const fragment = z.object({
    pigtailFragment: z.literal(1),
    parts: z.array(part).max(20_000),
    wires: z.array(wire).max(50_000),
    cables: z.array(cable).max(10_000),
    places: z.record(partId, place),
  });
  const read = fragment.safeParse(value);
  return read.success ? read.data : null;
}
