import { expect } from "vitest";
import { apply } from "../../src/graph/edits/apply.ts";
import { type Edit, nameOfEdit, type Refused } from "../../src/graph/edits/edit.ts";
import type { Harness } from "../../src/graph/harness.ts";
import { parse, serialise } from "../../src/graph/parse/parse.ts";
import { sections } from "../../src/graph/schema/harness.ts";

/** Freezes a value and all inside it: whoever writes to it throws. */
export function deepFreeze<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  for (const inner of Object.values(value)) deepFreeze(inner);
  return Object.freeze(value);
}

/**
 * What holds of every edit on every harness: the harness given is not changed; what stayed equal stayed the
 * same object; the edit is plain data; what comes out can be saved and read again; a refusal says why.
 * @returns the harness after it, or the reason of the refusal
 */
export function checkEdit(before: Harness, edit: Edit): Harness | string {
  deepFreeze(before);
  deepFreeze(edit);
  const result = apply(before, edit);
  expect(nameOfEdit(edit)).toMatch(/^\S.*[^.\s]$/);
  if (!result.ok) {
    expect(result.why).toMatch(/\S/);
    return result.why;
  }
  const after = result.harness;
  expectShared(before, after);
  if (isPlain(edit)) {
    const again = apply(before, JSON.parse(JSON.stringify(edit)) as Edit);
    expect(again).toEqual(result);
  }
  const text = serialise(after);
  const read = parse(text);
  expect(read.ok ? [] : read.problems).toEqual([]);
  expect(read.ok && serialise(read.harness)).toBe(text);
  return after;
}

/** JSON has no NaN: an edit that holds one is only ever refused. */
function isPlain(value: unknown): boolean {
  return (
    JSON.stringify(value, (_key, inner) =>
      typeof inner === "number" && !Number.isFinite(inner) ? "§" : inner,
    ).includes("§") === false
  );
}

/** Entries, sections and settings that are equal are the same object. */
export function expectShared(before: Harness, after: Harness): void {
  for (const name of Object.keys(sections) as (keyof typeof sections)[]) {
    const old: Readonly<Record<string, unknown>> = before[name];
    const now: Readonly<Record<string, unknown>> = after[name];
    let changed = Object.keys(old).length !== Object.keys(now).length;
    for (const id of Object.keys(now)) {
      if (now[id] === old[id]) continue;
      changed = true;
      expect(now[id], `${id} is equal but another object`).not.toEqual(old[id]);
    }
    if (!changed) expect(now, `${name} is another object with the same entries`).toBe(old);
  }
  for (const name of ["settings", "titleBlock"] as const) {
    if (JSON.stringify(after[name]) === JSON.stringify(before[name])) continue;
    expect(after[name]).not.toBe(before[name]);
  }
  for (const name of ["places", "paths"] as const) {
    if (JSON.stringify(after.layout[name]) !== JSON.stringify(before.layout[name])) continue;
    expect(after.layout[name], `layout.${name}`).toBe(before.layout[name]);
  }
}

/** The harness after an edit that has to be possible. */
export function done(harness: Harness, edit: Edit | Refused): Harness {
  if (!("kind" in edit)) throw new Error(`refused: ${edit.why}`);
  const result = checkEdit(harness, edit);
  if (typeof result === "string") throw new Error(`refused: ${result}`);
  return result;
}

/** Why an edit is not possible. */
export function refusal(edit: Edit | Refused | object): string {
  if ("why" in edit && typeof edit.why === "string") return edit.why;
  throw new Error(`was not refused: ${JSON.stringify(edit)}`);
}
