import type { Point } from "../../../electrical/points.ts";
import type { Fuse, Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { walkLeads, wiresOf } from "../../shared/lead-walk.ts";
import { fuseContactsIn, isPassed } from "../../shared/thin-wires.ts";
import { nameOf, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "fuse-too-far",
    group: "protection",
    severity: "danger",
    summary: "A fuse stands close to its source.",
    source:
      "33 CFR 183.455(b): 7 in, or 40 in where the lead is sheathed all the way; FCS 1362:2010 §4.6.3: as close as possible; 18 in is car-audio practice, no source",
    reads: [...CIRCUITS, ...NAMES, "lengths", "runs", "settings"],
    fixable: false,
  },
  *check(context) {
    for (const stretch of context.stretches.all) {
      const { guard, source, above } = stretch;
      if (guard.kind !== "fuse" || !above || above.guard.kind !== "none") continue;
      if (source.means.group !== "feed") continue;
      const found = judge(context, source, guard.fuse);
      if (found) yield found;
    }
  },
});

function judge(context: Context, source: Point, fuse: Fuse): Found | null {
  const reached = walkLeads(context, source.landings, isPassed);
  const contacts = [1, 2].flatMap((number) => {
    const circuit = context.traced.circuitAt(fuse.id, number);
    return circuit ? fuseContactsIn(context, fuse, circuit.id) : [];
  });
  const ways = contacts.flatMap((key) => reached.get(key) ?? []).sort((a, b) => a.length_m - b.length_m);
  const [way] = ways;
  if (!way) return null;
  const wires = wiresOf(way);
  const { fuseDistance_mm, fuseDistanceSheathed_mm } = context.profile.limits;
  const sheathed = wires.length > 0 && wires.every((wire) => isSheathed(context, wire));
  const limit =
    sheathed && fuseDistanceSheathed_mm.value > fuseDistance_mm.value
      ? fuseDistanceSheathed_mm
      : fuseDistance_mm;
  const length_mm = Math.round(way.length_m * 1e4) / 10;
  if (length_mm <= limit.value) return null;
  const least = way.isKnown ? "" : "at least ";
  return {
    message: `${fuse.designation} stands ${least}${length_mm} mm from ${sayPoint(context, source)}; ${limit.value} mm is the most${sheathed ? " for a lead that is sheathed all the way" : ""} (${limit.book}).`,
    consequence:
      "Nothing protects the stretch before the fuse: where it chafes through, the wire glows and what is around it burns.",
    remedy: `Move ${fuse.designation} towards ${nameOf(source)}, or put a second fuse there.${
      sheathed || length_mm > fuseDistanceSheathed_mm.value
        ? ""
        : ` In conduit or split loom all the way, ${fuseDistanceSheathed_mm.value} mm are allowed (${fuseDistanceSheathed_mm.book}).`
    }`,
    about: [{ part: fuse.id }, source.at],
  };
}

const SHEATHS = new Set(["conduit", "split-loom", "heat-sleeve"]);

function isSheathed({ harness }: Context, wire: Wire): boolean {
  return (
    wire.runs.length > 0 && wire.runs.every((id) => SHEATHS.has(harness.runs[id]?.covering ?? "unknown"))
  );
}
