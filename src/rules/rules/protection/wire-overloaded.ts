import { digits } from "../../../electrical/figure.ts";
import type { Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { type Bears, bears, saySize } from "../../shared/bears.ts";
import { type Most, mostsOf } from "../../shared/most.ts";
import { HAIR, sayWhen } from "../../shared/steady.ts";
import { compareNames, sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "wire-overloaded",
    group: "protection",
    severity: "danger",
    summary: "Every wire bears for good what its loads draw, where it lies.",
    source:
      "33 CFR 183.425 table 5, or the book of ampacity that the harness's settings name, with its factors for bundles and engine spaces",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["fuse-bigger-than-wire", "branch-thinner-than-fuse", "drop-too-great"],
  },
  *check(context) {
    for (const group of alike(hot(context))) {
      const [{ wire, bears: found, most, loaded }] = group as [Hot, ...Hot[]];
      const names = sayList(group.map((one) => sayWire(one.wire)));
      yield {
        message: `${names} ${group.length > 1 ? "carry" : "carries"} ${digits(most.amps, 3)} A ${sayWhen(most.view.state)}; ${saySize(wire)} bears ${digits(found.amps, 3)} A${
          loaded > 1 ? ` with ${loaded} loaded wires in its bundle` : ""
        } by ${found.book}.`,
        consequence:
          "The insulation gets hot, goes soft and wears through; then the bare feed lies against what is beside it.",
        remedy:
          "Use thicker wire, part the bundle, or put a relay near the load so that only a short thick lead carries the current.",
        about: group.map((one) => ({ wire: one.wire.id })),
      };
    }
  },
});

type Hot = { readonly wire: Wire; readonly bears: Bears; readonly most: Most; readonly loaded: number };

/** No book takes back more than to this share for a bundle. */
const LEAST_SHARE = 0.3;

function hot(context: Context): readonly Hot[] {
  const { harness } = context;
  const found: Hot[] = [];
  for (const [id, most] of mostsOf(context)?.wiresFrom(1) ?? []) {
    const wire = harness.wires[id]!;
    const alone = bears(harness, wire);
    const inBundle = wire.runs.length > 0;
    if (!alone || most.amps <= alone.amps * (inBundle ? LEAST_SHARE : 1)) continue;
    const loaded = inBundle ? most.view.loadedBeside(id) : 1;
    const here = loaded > 1 ? bears(harness, wire, loaded)! : alone;
    if (most.amps > here.amps * HAIR) found.push({ wire, bears: here, most, loaded });
  }
  return found.sort((a, b) => compareNames(a.wire.designation, b.wire.designation));
}

/** Wires of one size one after the other, through which the same current flows. */
function alike(all: readonly Hot[]): readonly (readonly Hot[])[] {
  const groups = new Map<string, Hot[]>();
  for (const one of all) {
    const key = `${digits(one.most.amps, 3)} ${one.bears.amps} ${one.loaded} ${one.wire.area_mm2}`;
    const known = groups.get(key);
    if (known) known.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()];
}
