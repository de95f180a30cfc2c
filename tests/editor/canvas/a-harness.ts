import { apply } from "../../../src/graph/edits/apply.ts";
import type { Edit } from "../../../src/graph/edits/edit.ts";
import type { Harness, PartId } from "../../../src/graph/harness.ts";
import { makePlace } from "../../../src/graph/make.ts";
import { makeScene, type Scene } from "../../../src/layout/scene.ts";
import { type Build, build } from "../../build.ts";

/** Two connectors of the van Wren on one row: X1 at the left, X2 900 units to its right, and a few leads. */
export function adapter(): Build {
  return build()
    .vehicle("X1", {
      A4: "constant-feed RD 1.5",
      A7: "switched-feed YE",
      A8: "ground BK",
      A1: "speed GN/WH",
    })
    .unit("X2", { "1": "constant-feed YE", "2": "switched-feed RD", "3": "ground BK" });
}

export function placedHarness(
  harness: Harness,
  places: Readonly<Record<string, readonly [number, number]>>,
): Harness {
  const entries = Object.entries(places).map(([name, [x, y]]) => [`p:${name}` as PartId, makePlace(x, y)]);
  return { ...harness, layout: { ...harness.layout, places: Object.fromEntries(entries) } };
}

export function adapterAt(): { harness: Harness; scene: Scene } {
  const harness = placedHarness(adapter().harness, { X1: [0, 0], X2: [900, 0] });
  return { harness, scene: makeScene(harness) };
}

/** The harness after an edit that must not be refused. */
export function edited(
  harness: Harness,
  change: Edit | { readonly ok: false; readonly why: string } | null,
): Harness {
  if (!change || "ok" in change) throw new Error(change ? change.why : "nothing was changed");
  const result = apply(harness, change);
  if (!result.ok) throw new Error(result.why);
  return result.harness;
}
