import { apply } from "../../graph/edits/apply.ts";
import type { Harness, WireId } from "../../graph/harness.ts";
import { type Traced, trace } from "../../graph/trace.ts";
import { keepPaths } from "../../layout/arrangement.ts";
import { makeScene, type Scene } from "../../layout/scene.ts";
import type { Checked } from "../../rules/check.ts";
import { inPlace } from "../../rules/order.ts";
import type { Finding } from "../../rules/rule.ts";
import type { Book } from "./book.ts";

/** What follows from a harness. Each value is kept until something it reads is another object. */
export type Derived = {
  readonly harness: Harness;
  readonly traced: Traced;
  /** In the order in which they stand before the person: what was there stays where it was. */
  readonly findings: readonly Finding[];
  /** What the rule book made of it; `null` until the book has been fetched. */
  readonly checked: Checked | null;
  readonly scene: Scene;
};

/**
 * Settles a harness for the editor: routes what has no path yet and writes the paths into it, so that what is
 * seen is what is saved and printed; then derives the rest. Reuses `before` where nothing it read has changed.
 * @param book `null` until it has been fetched: there are no findings yet
 */
export function settle(harness: Harness, before: Derived | null, book: Book | null): Derived {
  const sameGraph =
    before !== null && before.harness.parts === harness.parts && before.harness.wires === harness.wires;
  const traced = sameGraph ? before.traced : trace(harness);
  const sameScene =
    sameGraph &&
    before.harness.layout === harness.layout &&
    before.harness.cables === harness.cables &&
    before.harness.settings === harness.settings;
  const scene = sameScene ? before.scene : makeScene(harness, traced);
  const sameChecks = sameGraph && isCheckedAlike(before.harness, harness) && before.checked !== null;
  const checked = sameChecks
    ? before.checked
    : (book?.recheck(before?.checked ?? null, harness, traced) ?? null);
  const findings = sameChecks
    ? before.findings
    : inPlace(before?.findings.map(({ key }) => key) ?? [], checked?.findings ?? []);
  const keep = keepPaths(harness, scene.wires as ReadonlyMap<WireId, { readonly path: readonly number[] }>);
  const kept = keep ? apply(harness, keep) : null;
  return { harness: kept?.ok ? kept.harness : harness, traced, findings, checked, scene };
}

/** Everything but the drawing's layout and the photos is checked. */
function isCheckedAlike(before: Harness, after: Harness): boolean {
  return (
    before.cables === after.cables &&
    before.runs === after.runs &&
    before.settings === after.settings &&
    before.waivers === after.waivers &&
    before.titleBlock === after.titleBlock &&
    before.testRecord === after.testRecord
  );
}
