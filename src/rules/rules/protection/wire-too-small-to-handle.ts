import { digits } from "../../../electrical/figure.ts";
import type { WireId } from "../../../graph/harness.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { saySize } from "../../shared/bears.ts";
import { lengthOf } from "../../shared/lead-walk.ts";
import { mostsOf } from "../../shared/most.ts";
import { compareNames, sayWire } from "../../words.ts";

/** From here on a circuit is no longer one of electronics only. */
const POWER_A = 1;
/** A lead of at most 7 in may be thinner. */
const PIGTAIL_m = 0.178;
/** 18 AWG over 16 AWG: what a sheath is worth. */
const SHEATHED_SHARE = 0.8 / 1.3;

export default defineRule({
  meta: {
    id: "wire-too-small-to-handle",
    group: "protection",
    severity: "tidy",
    summary:
      "A single power lead is thick enough to be handled; in a sheath or a cable it may be a size thinner.",
    source:
      "33 CFR 183.425(d), (e) and (g): 16 AWG alone, 18 AWG in a sheath, not for circuits under 1 A nor pigtails under 7 in",
    reads: [...SOLVED, ...NAMES, "cables"],
    fixable: false,
  },
  *check(context) {
    const { harness } = context;
    const limit = context.profile.limits.smallestLead_mm2;
    const thin = Object.values(harness.wires).filter(
      ({ area_mm2 }) => area_mm2 !== "unknown" && area_mm2 < limit.value * 0.995,
    );
    if (!thin.length) return;
    const inCable = new Set<WireId>(Object.values(harness.cables).flatMap(({ wires }) => wires));
    const mosts = mostsOf(context);
    if (!mosts) return;
    for (const wire of thin.sort((a, b) => compareNames(a.designation, b.designation))) {
      const amps = mosts.wire(wire.id)?.amps ?? 0;
      if (amps < POWER_A || (lengthOf(harness, wire) ?? 1) <= PIGTAIL_m) continue;
      const isSheathed =
        inCable.has(wire.id) ||
        (wire.runs.length > 0 &&
          wire.runs.every((id) => COVERED.has(harness.runs[id]?.covering ?? "unknown")));
      const least_mm2 = limit.value * (isSheathed ? SHEATHED_SHARE : 1);
      if ((wire.area_mm2 as number) >= least_mm2 * 0.995) continue;
      yield {
        message: `${sayWire(wire)} has ${saySize(wire)} and carries ${digits(amps, 2)} A; ${digits(least_mm2, 2)} mm² is the least for a power lead${isSheathed ? " in a sheath" : ""} (${limit.book}).`,
        consequence: "It breaks when it is pulled through or pushed aside, mostly where nobody sees it.",
        remedy: "Use the next thicker wire, or lead it in a sheath.",
        about: [{ wire: wire.id }],
      };
    }
  },
});

const COVERED: ReadonlySet<string> = new Set(["split-loom", "braid", "conduit", "heat-sleeve"]);
