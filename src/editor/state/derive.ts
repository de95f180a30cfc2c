import { apply } from "../../graph/edits/apply.ts";
import type { Harness, WireId } from "../../graph/harness.ts";
import { type Traced, trace } from "../../graph/trace.ts";
import { keepPaths } from "../../layout/arrangement.ts";
import { makeScene, type Scene } from "../../layout/scene.ts";
import { check } from "../../rules/check.ts";
import type { Finding } from "../../rules/rule.ts";

/** What follows from a harness. Each value is kept until something it reads is another object. */
export type Derived = {
  readonly harness: Harness;
  readonly traced: Traced;
  readonly findings: readonly Finding[];
  readonly scene: Scene;
};

/**
 * Settles a harness for the editor: routes what has no path yet and writes the paths into it, so that what is
 * seen is what is saved and printed; then derives the rest. Reuses `before` where nothing it read has changed.
 */
export function settle(harness: Harness, before: Derived | null): Derived {
  const sameGraph =
    before !== null && before.harness.parts === harness.parts && before.harness.wires === harness.wires;
  const traced = sameGraph ? before.traced : trace(harness);
  const sameScene =
    sameGraph &&
    before.harness.layout === harness.layout &&
    before.harness.cables === harness.cables &&
    before.harness.settings === harness.settings;
  const scene = sameScene ? before.scene : makeScene(harness, traced);
  const sameChecks =
    sameGraph &&
    before.harness.cables === harness.cables &&
    before.harness.runs === harness.runs &&
    before.harness.settings === harness.settings &&
    before.harness.waivers === harness.waivers;
  const findings = sameChecks ? before.findings : check(harness, traced);
  const keep = keepPaths(harness, scene.wires as ReadonlyMap<WireId, { readonly path: readonly number[] }>);
  const kept = keep ? apply(harness, keep) : null;
  return { harness: kept?.ok ? kept.harness : harness, traced, findings, scene };
}
