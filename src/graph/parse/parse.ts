import type * as z from "zod/mini";
import type { Harness } from "../harness.ts";
import { type Dangling, danglingOfCable, danglingOfPart, danglingOfWire } from "../references.ts";
import * as schema from "../schema/harness.ts";
import { partId, wireId } from "../schema/values.ts";
import { migrate } from "./migrate.ts";
import { type Found, placed } from "./place.ts";
import { MAX_PROBLEMS, type Problem, showValue } from "./problem.ts";
import { type FileKind, isObject, readJson } from "./read-json.ts";
import { readValue } from "./read-value.ts";

export type Parsed =
  | { readonly ok: true; readonly harness: Harness; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const HARNESS_FILE: FileKind = {
  format: "pigtail-harness",
  notThis: "not-a-harness",
  name: "harness file",
  looks: "a harness file, which is flat and has some hundred thousand values at most",
  ending: ".harness.json",
  // About 64 MB of text; a harness of 10 000 wires is under 5 MB.
  maxCharacters: 64_000_000,
  whatIsLarge: "large photos",
};
const MAX_ENTRIES = 100_000;

/**
 * Reads the text of a `.harness.json` file. Never throws on bad input; the time is bounded by the text's length.
 * Unknown fields are kept. A file of a newer version is read as far as it is understood, with a note.
 * @returns the harness, or at most 100 problems, each with its place, what was found and what to do
 */
export function parse(text: string): Parsed {
  const read = readJson(text, HARNESS_FILE);
  return read.ok ? readRaw(read.raw, read.body) : read;
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
