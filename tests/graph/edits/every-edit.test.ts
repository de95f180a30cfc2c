import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Edit } from "../../../src/graph/edits/edit.ts";
import { edit, record, redo, redoName, startHistory, undo, undoName } from "../../../src/graph/history.ts";
import { emptyHarness } from "../../../src/graph/make.ts";
import { checkEdit, deepFreeze } from "../check-edit.ts";
import { Dice, randomEdit, randomHarness } from "../random.ts";

const RUNS = { numRuns: 400, seed: 81346 };

describe("every edit on every harness", () => {
  test("leaves what it was given, shares what it did not touch, travels as JSON, and can be saved", () => {
    const made = new Map<string, number>();
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const dice = new Dice(seed);
        const harness = deepFreeze(randomHarness(dice));
        for (let i = 0; i < 6; i++) {
          const change = randomEdit(dice, harness);
          if ("ok" in change) expect(change.why).toMatch(/\S/);
          else {
            const result = checkEdit(harness, change);
            const key = `${change.kind} ${typeof result === "string" ? "refused" : "made"}`;
            made.set(key, (made.get(key) ?? 0) + 1);
          }
        }
      }),
      RUNS,
    );
    // The property is worth what it met: each kind of edit was made, and refused where it can be.
    const kinds = ["add-part", "change-part", "change-cavity", "remove", "add-wire", "change-wire"];
    const more = ["put-entry", "drop-entry", "change-settings", "change-title-block", "lay-out"];
    for (const kind of [...kinds, ...more]) {
      expect(made.get(`${kind} made`), `${kind} made`).toBeGreaterThan(0);
      expect(made.get(`${kind} refused`), `${kind} refused`).toBeGreaterThan(0);
    }
    expect(made.get("group made")).toBeGreaterThan(100);
  });

  test("undone one by one gives every earlier harness itself; redone, the last one", () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const dice = new Dice(seed);
        let history = startHistory(randomHarness(dice, 8));
        const passed = [history.present];
        const names: (string | null)[] = [];
        for (let i = 0; i < 25; i++) {
          const change = randomEdit(dice, history.present);
          if ("ok" in change) continue;
          const result = edit(history, change);
          if (!result.ok || result.history === history) continue;
          history = result.history;
          passed.push(history.present);
          names.push(undoName(history));
        }
        const last = history.present;
        for (let i = passed.length - 1; i >= 0; i--) {
          expect(history.present).toBe(passed[i]);
          expect(undoName(history)).toBe(names[i - 1] ?? null);
          expect(redoName(history)).toBe(names[i] ?? null);
          history = undo(history);
        }
        expect(undo(history)).toBe(history);
        for (let i = 1; i < passed.length; i++) {
          history = redo(history);
          expect(history.present).toBe(passed[i]);
        }
        expect(history.present).toBe(last);
        expect(redo(history)).toBe(history);
      }),
      { numRuns: 100, seed: 72552 },
    );
  });
});

describe("steps", () => {
  const titled = (title: string): Edit => ({ kind: "change-title-block", changes: { title } });
  const typed = (words: readonly string[], keys: readonly (string | null)[]) => {
    let history = startHistory(emptyHarness());
    for (const [index, word] of words.entries()) {
      const result = edit(history, titled(word), keys[index] ?? null);
      if (!result.ok) throw new Error(result.why);
      history = result.history;
    }
    return history;
  };

  test("edits under one key are one step with the first one's start", () => {
    const history = typed(["W", "Wr", "Wren"], ["title", "title", "title"]);
    expect(history.past).toHaveLength(1);
    expect(history.present.titleBlock.title).toBe("Wren");
    expect(undo(history).present.titleBlock.title).toBe("");
    expect(redo(undo(history)).present).toBe(history.present);
  });

  test("another key, no key, undo, or closing the step begin a new one", () => {
    expect(typed(["a", "b"], ["one", "two"]).past).toHaveLength(2);
    expect(typed(["a", "b"], [null, null]).past).toHaveLength(2);
    const undone = undo(typed(["a", "b"], ["one", "two"]));
    const again = edit(undone, titled("c"), "one");
    expect(again.ok && again.history.past).toHaveLength(2);
  });

  test("a new edit forgets what could have been redone", () => {
    const undone = undo(typed(["a"], [null]));
    expect(redoName(undone)).toBe("change title block");
    const result = edit(undone, titled("b"));
    expect(result.ok && redoName(result.history)).toBeNull();
  });

  test("a refused edit and one that changes nothing leave the history as it is", () => {
    const history = typed(["a"], [null]);
    const result = edit(history, titled("x".repeat(500)));
    expect(result).toMatchObject({ ok: false, why: expect.stringContaining("title cannot be") });
    expect(record(history, "arrange", history.present)).toBe(history);
  });
});
