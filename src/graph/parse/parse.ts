import { findNodeAtLocation, type Node, parseTree } from "jsonc-parser";
import type { z } from "zod";
import { contactsOf } from "../contacts.ts";
import type { Harness } from "../harness.ts";
import * as schema from "../schema/harness.ts";
import { migrate } from "./migrate.ts";
import { MAX_PROBLEMS, type Problem, showValue } from "./problem.ts";
import { findBadKeys, lineAndColumn, sayPath, tooDeepAt } from "./scan.ts";

export type Parsed =
  | { readonly ok: true; readonly harness: Harness; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** About 64 MB of text; a harness of 10 000 wires is under 5 MB. */
const MAX_CHARACTERS = 64_000_000;
const MAX_ENTRIES = 100_000;

type Found = Omit<Problem, "where" | "line" | "column"> & { readonly path: readonly PropertyKey[] };

/**
 * Reads the text of a `.harness.json` file. Never throws on bad input; the time is bounded by the text's length.
 * Unknown fields are kept. A file of a newer version is read as far as it is understood, with a note.
 * @returns the harness, or at most 100 problems, each with its place, what was found and what to do
 */
export function parse(text: string): Parsed {
  const whole = (problem: Omit<Problem, "where" | "line" | "column">, offset: number | null): Parsed => {
    const at = offset === null ? { line: null, column: null } : lineAndColumn(text, offset);
    return { ok: false, problems: [{ ...problem, where: "", ...at }] };
  };
  if (text.length > MAX_CHARACTERS) {
    return whole(
      {
        code: "too-large",
        found: `${Math.round(text.length / 1e6)} million characters`,
        expected: `at most ${MAX_CHARACTERS / 1e6} million`,
        next: "Check that this is a harness file; take large photos out of it.",
      },
      null,
    );
  }
  const deep = tooDeepAt(text);
  if (deep >= 0) {
    return whole(
      {
        code: "too-deep",
        found: "brackets nested over 64 deep",
        expected: "a harness file, which is flat",
        next: "Check that this is a harness file.",
      },
      deep,
    );
  }
  let raw: unknown;
  try {
    raw = JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
  } catch (error) {
    return whole(
      {
        code: "not-json",
        found:
          text.trim() === ""
            ? "an empty file"
            : `text that is not JSON (${(error as Error).message.slice(0, 120)})`,
        expected: "JSON",
        next: "Open the file that Pigtail saved; if it was edited by hand, mend it at this place.",
      },
      syntaxErrorAt(error as Error, text),
    );
  }
  if (
    typeof raw !== "object" ||
    raw === null ||
    Array.isArray(raw) ||
    (raw as { format?: unknown }).format !== "pigtail-harness"
  ) {
    return whole(
      {
        code: "not-a-harness",
        found: showValue(raw),
        expected: 'an object with "format": "pigtail-harness"',
        next: "Choose a file that ends in .harness.json.",
      },
      0,
    );
  }
  const badKeys = findBadKeys(text);
  if (badKeys.length) return { ok: false, problems: badKeys };
  const found: Found[] = [];
  const harness = readHarness(migrate(raw as Record<string, unknown>), found);
  if (found.length || !harness) return { ok: false, problems: placed(found, text) };
  const notes =
    harness.formatVersion > schema.FORMAT_VERSION
      ? [
          `This file is of format version ${harness.formatVersion}; this Pigtail knows version ${schema.FORMAT_VERSION}. What it does not know is kept as it is.`,
        ]
      : [];
  return { ok: true, harness, notes };
}

/** Checks a value that is already an object, as `parse` does a text. Lines and columns are not known. */
export function parseValue(value: unknown): Parsed {
  return parse(JSON.stringify(value) ?? "");
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
    result[name] = readSection(shape, raw[name], name, found);
  }
  result.layout = readValue(schema.layout, raw.layout, ["layout"], found);
  if (found.length) return null;
  const harness = result as unknown as Harness;
  findDangling(harness, found);
  return harness;
}

function readSection(shape: z.ZodType, raw: unknown, name: string, found: Found[]): unknown {
  if (typeof raw !== "object" || raw === null || Array.isArray(raw)) {
    found.push({
      path: [name],
      code: raw === undefined ? "missing-field" : "wrong-value",
      found: showValue(raw),
      expected: "an object from id to entry",
      next: raw === undefined ? `Add "${name}": {}.` : "Write an object here.",
    });
    return null;
  }
  const entries = Object.entries(raw);
  if (entries.length > MAX_ENTRIES) {
    found.push({
      path: [name],
      code: "too-many",
      found: `${entries.length} entries`,
      expected: `at most ${MAX_ENTRIES}`,
      next: "Split the harness.",
    });
    return null;
  }
  const read: Record<string, unknown> = {};
  for (const [id, entry] of entries) {
    if (found.length >= MAX_PROBLEMS) return null;
    read[id] = readValue(shape, entry, [name, id], found);
    const own = (entry as { id?: unknown } | null)?.id;
    if (typeof own === "string" && own !== id) {
      found.push({
        path: [name, id, "id"],
        code: "wrong-id",
        found: showValue(own),
        expected: `"${id}", the key it stands under`,
        next: "Make the two the same.",
      });
    }
  }
  return read;
}

function readValue(shape: z.ZodType, raw: unknown, path: readonly PropertyKey[], found: Found[]): unknown {
  const result = shape.safeParse(raw);
  if (result.success) return result.data;
  for (const issue of result.error.issues) {
    if (found.length >= MAX_PROBLEMS) break;
    const value = issue.path.reduce<unknown>(
      (at, step) => (at as Record<PropertyKey, unknown> | undefined)?.[step],
      raw,
    );
    found.push({
      path: [...path, ...issue.path],
      code: value === undefined ? "missing-field" : "wrong-value",
      found: showValue(value),
      expected: expectation(issue),
      next: value === undefined ? "Add the field." : "Correct the value.",
    });
  }
  return null;
}

function expectation(issue: z.core.$ZodIssue): string {
  if (issue.code === "invalid_value")
    return `one of ${issue.values.map((value) => showValue(value)).join(", ")}`;
  if (issue.code === "invalid_type") return `a ${issue.expected}`;
  if (issue.code === "too_big") return `at most ${issue.maximum}`;
  if (issue.code === "too_small")
    return issue.origin === "string" ? "some text" : `at least ${issue.minimum}`;
  if (issue.code === "invalid_format")
    return `text of the form ${"pattern" in issue ? issue.pattern : issue.format}`;
  if (issue.code === "invalid_union") return "one of the forms that the published schema lists";
  return issue.message;
}

/** Ends and references that name something the file does not have. */
function findDangling(harness: Harness, found: Found[]): void {
  const say = (
    path: readonly PropertyKey[],
    code: Problem["code"],
    what: string,
    expected: string,
    next: string,
  ) => {
    if (found.length < MAX_PROBLEMS) found.push({ path, code, found: what, expected, next });
  };
  for (const wire of Object.values(harness.wires)) {
    for (const [index, end] of wire.ends.entries()) {
      if (end === "loose") continue;
      const part = harness.parts[end.part];
      const path = ["wires", wire.id, "ends", index];
      const next = `Correct it, or set that end of ${wire.designation} to "loose".`;
      if (!part) say(path, "dangling-end", `part "${end.part}"`, "a part of this file", next);
      else if (!contactsOf(part)[end.contact - 1]) {
        say(
          path,
          "dangling-end",
          `contact ${end.contact}`,
          `1 to ${contactsOf(part).length}, the contacts of ${part.designation}`,
          next,
        );
      }
    }
    for (const [index, run] of wire.runs.entries()) {
      if (!harness.runs[run])
        say(
          ["wires", wire.id, "runs", index],
          "dangling-reference",
          `run "${run}"`,
          "a run of this file",
          "Remove it from the wire's runs.",
        );
    }
  }
  for (const cable of Object.values(harness.cables)) {
    for (const [index, id] of cable.wires.entries()) {
      if (!harness.wires[id])
        say(
          ["cables", cable.id, "wires", index],
          "dangling-reference",
          `wire "${id}"`,
          "a wire of this file",
          "Remove it from the cable.",
        );
    }
    if (cable.shield && !harness.wires[cable.shield]) {
      say(
        ["cables", cable.id, "shield"],
        "dangling-reference",
        `wire "${cable.shield}"`,
        "a wire of this file",
        "Set it to null.",
      );
    }
  }
  for (const part of Object.values(harness.parts)) {
    if (part.kind !== "connector") continue;
    const module = part.belongsTo.module;
    if (module && harness.parts[module]?.kind !== "module") {
      say(
        ["parts", part.id, "belongsTo", "module"],
        "dangling-reference",
        `"${module}"`,
        "a module of this file",
        "Set it to null.",
      );
    }
    if (part.matedWith && harness.parts[part.matedWith]?.kind !== "connector") {
      say(
        ["parts", part.id, "matedWith"],
        "dangling-reference",
        `"${part.matedWith}"`,
        "a connector of this file",
        "Set it to null.",
      );
    }
  }
}

/** The line and column of each problem; the tree is only built when there is something to place. */
function placed(found: readonly Found[], text: string): Problem[] {
  const tree = text.length < 8_000_000 ? parseTree(text) : undefined;
  return found.map(({ path, ...rest }) => {
    const offset = tree ? offsetOf(tree, path) : null;
    const at = offset === null ? { line: null, column: null } : lineAndColumn(text, offset);
    return { ...rest, where: sayPath(path), ...at };
  });
}

/** Where the value stands, or the nearest thing around it that does. */
function offsetOf(tree: Node, path: readonly PropertyKey[]): number | null {
  for (let length = path.length; length >= 0; length--) {
    const node = findNodeAtLocation(tree, path.slice(0, length) as (string | number)[]);
    if (node) return node.offset;
  }
  return null;
}

function syntaxErrorAt(error: Error, text: string): number | null {
  const position = /position (\d+)/.exec(error.message);
  if (position) return Number(position[1]);
  return text.length ? text.length : null;
}
