import type * as z from "zod/mini";
import type { Harness } from "../harness.ts";
import { type Dangling, danglingOfCable, danglingOfPart, danglingOfWire } from "../references.ts";
import * as schema from "../schema/harness.ts";
import { partId, wireId } from "../schema/values.ts";
import { asFound } from "./expect.ts";
import { migrate } from "./migrate.ts";
import { type Found, placed } from "./place.ts";
import { MAX_PROBLEMS, type Problem, showValue } from "./problem.ts";
import { findBadKeys, lineAndColumn, syntaxErrorAt, unfitAt } from "./scan.ts";

export type Parsed =
  | { readonly ok: true; readonly harness: Harness; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** About 64 MB of text; a harness of 10 000 wires is under 5 MB. */
const MAX_CHARACTERS = 64_000_000;
const MAX_ENTRIES = 100_000;
/** In one entry, however nested. A connector of 2 000 cavities, all filled in, has about 40 000. */
const MAX_VALUES = 200_000;

/**
 * Reads the text of a `.harness.json` file. Never throws on bad input; the time is bounded by the text's length.
 * Unknown fields are kept. A file of a newer version is read as far as it is understood, with a note.
 * @returns the harness, or at most 100 problems, each with its place, what was found and what to do
 */
export function parse(text: string): Parsed {
  // A byte order mark is no character of the file: columns are counted without it, as editors do.
  const body = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  const whole = (problem: Omit<Problem, "where" | "line" | "column">, offset: number | null): Parsed => {
    const at = offset === null ? { line: null, column: null } : lineAndColumn(body, offset);
    return { ok: false, problems: [{ ...problem, where: "", ...at }] };
  };
  if (body.length > MAX_CHARACTERS) {
    return whole(
      {
        code: "too-large",
        found: `${Math.round(body.length / 1e6)} million characters`,
        expected: `at most ${MAX_CHARACTERS / 1e6} million`,
        next: "Check that this is a harness file; take large photos out of it.",
      },
      null,
    );
  }
  const unfit = unfitAt(body);
  if (unfit) {
    return whole(
      {
        code: unfit.code,
        found: unfit.code === "too-deep" ? "brackets nested over 64 deep" : "over 4 million values",
        expected: "a harness file, which is flat and has some hundred thousand values at most",
        next: "Check that this is a harness file.",
      },
      unfit.offset,
    );
  }
  let raw: unknown;
  try {
    raw = JSON.parse(body);
  } catch {
    const empty = !/\S/.test(body);
    const wrong = empty ? null : syntaxErrorAt(body);
    const here = wrong ? body.slice(wrong.offset, wrong.offset + 20) : "";
    return whole(
      {
        code: "not-json",
        found: empty ? "an empty file" : here === "" ? "the end of the file" : showValue(here),
        expected: wrong?.expected ?? "JSON",
        next: "Open the file that Pigtail saved; if it was edited by hand, mend it at this place.",
      },
      wrong?.offset ?? null,
    );
  }
  if (!isObject(raw) || raw.format !== "pigtail-harness") {
    return whole(
      {
        code: "not-a-harness",
        found: isObject(raw) ? `"format": ${showValue(raw.format)}` : showValue(raw),
        expected: 'an object with "format": "pigtail-harness"',
        next: "Choose a file that ends in .harness.json.",
      },
      0,
    );
  }
  const badKeys = findBadKeys(body);
  if (badKeys.length) return { ok: false, problems: badKeys };
  return readRaw(raw, body);
}

function readRaw(raw: Record<string, unknown>, body: string): Parsed {
  const found: Found[] = [];
  const harness = readHarness(migrate(raw), found);
  const version = raw.formatVersion;
  const newer = typeof version === "number" && version > schema.FORMAT_VERSION;
  if (found.length || !harness) {
    const hint = newer
      ? ` Or open it with a newer Pigtail: the file is of format version ${version}, this one knows ${schema.FORMAT_VERSION}.`
      : "";
    return {
      ok: false,
      problems: placed(found.slice(0, MAX_PROBLEMS), body).map((one) => ({ ...one, next: one.next + hint })),
    };
  }
  const notes = newer
    ? [
        `This file is of format version ${version}; this Pigtail knows version ${schema.FORMAT_VERSION}. What it does not know is kept as it is.`,
      ]
    : [];
  return { ok: true, harness, notes };
}

/** Checks a value that is already an object, as `parse` does a text. Lines and columns are not known. */
export function parseValue(value: unknown): Parsed {
  const parsed = parse(JSON.stringify(value) ?? "");
  if (parsed.ok) return parsed;
  return { ok: false, problems: parsed.problems.map((one) => ({ ...one, line: null, column: null })) };
}

/** The file's text: two-space JSON with a final line feed, keys in their document order. */
export function serialise(harness: Harness): string {
  return `${JSON.stringify(harness, null, 2)}\n`;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function readHarness(raw: Record<string, unknown>, found: Found[]): Harness | null {
  const result: Record<string, unknown> = { ...raw };
  for (const name of ["format", "formatVersion", "settings", "titleBlock"] as const) {
    result[name] = readValue(schema.harness.shape[name], raw[name], [name], found);
  }
  for (const [name, shape] of Object.entries(schema.sections)) {
    result[name] = readSection(raw[name], [name], found, (id, entry) => {
      const read = readValue(shape, entry, [name, id], found);
      if (isObject(entry) && typeof entry.id === "string" && entry.id !== id) {
        found.push({
          path: [name, id, "id"],
          code: "wrong-id",
          found: showValue(entry.id),
          expected: `${showValue(id)}, the key it stands under`,
          next: "Make the two the same.",
        });
      }
      return read;
    });
  }
  result.layout = readLayout(raw.layout, found);
  if (found.length) return null;
  const harness = result as unknown as Harness;
  findDangling(harness, found);
  return harness;
}

/** Entry by entry, so that a file of nothing but nonsense costs a hundred complaints and not millions. */
function readSection(
  raw: unknown,
  path: readonly PropertyKey[],
  found: Found[],
  read: (id: string, entry: unknown) => unknown,
): unknown {
  if (!isObject(raw)) {
    const missing = raw === undefined;
    found.push({
      path,
      code: missing ? "missing-field" : "wrong-value",
      found: showValue(raw),
      expected: "an object from id to entry",
      next: missing ? `Add "${String(path[path.length - 1])}": {}.` : "Write an object here.",
    });
    return null;
  }
  const ids = Object.keys(raw);
  if (ids.length > MAX_ENTRIES) {
    found.push({
      path,
      code: "too-many",
      found: `${ids.length} entries`,
      expected: `at most ${MAX_ENTRIES}`,
      next: "Split the harness.",
    });
    return null;
  }
  const result: Record<string, unknown> = {};
  for (const id of ids) {
    if (found.length >= MAX_PROBLEMS) return null;
    result[id] = read(id, raw[id]);
  }
  return result;
}

function readLayout(raw: unknown, found: Found[]): unknown {
  if (!isObject(raw)) return readValue(schema.layout, raw, ["layout"], found);
  const keyed = (name: "places" | "paths", key: z.ZodMiniType, shape: z.ZodMiniType) =>
    readSection(raw[name], ["layout", name], found, (id, entry) => {
      if (key.safeParse(id).success) return readValue(shape, entry, ["layout", name, id], found);
      found.push({
        path: ["layout", name, id],
        code: "wrong-id",
        found: `the key ${showValue(id)}`,
        expected: name === "places" ? 'a part\'s id, like "p:1"' : 'a wire\'s id, like "w:1"',
        next: "Correct the key, or remove the entry.",
      });
      return null;
    });
  return {
    ...raw,
    places: keyed("places", partId, schema.place),
    paths: keyed("paths", wireId, schema.path),
  };
}

function readValue(
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

/** Ends and references that name something the file does not have. */
function findDangling(harness: Harness, found: Found[]): void {
  const take = (path: readonly PropertyKey[], problems: Iterable<Dangling>) => {
    for (const problem of problems) {
      if (found.length < MAX_PROBLEMS) found.push({ ...problem, path: [...path, ...problem.path] });
    }
  };
  for (const wire of Object.values(harness.wires)) take(["wires", wire.id], danglingOfWire(harness, wire));
  for (const cable of Object.values(harness.cables))
    take(["cables", cable.id], danglingOfCable(harness, cable));
  for (const part of Object.values(harness.parts)) take(["parts", part.id], danglingOfPart(harness, part));
}
