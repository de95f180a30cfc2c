import { contactsOf } from "../../../graph/contacts.ts";
import type { Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { compareNames, sayList, sayWire } from "../../words.ts";

/** From this many stated sizes for each that is missing, the missing one was forgotten rather than not yet come to. */
const STATED_FOR_EACH = 3;

export default defineRule({
  meta: {
    id: "wire-size-unknown",
    group: "protection",
    severity: "weak",
    summary: "In a harness whose power leads have sizes, none is left without.",
    source:
      "common practice, no source: every figure of fuse, drop and heat behind it rests on a guess; a marine cable maker's table shows how far one gauge name may differ",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
  },
  *check(context) {
    const circuits = powerCircuits(context);
    let stated = 0;
    const missing: Wire[][] = [];
    for (const id of circuits) {
      const wires = context.points.circuits[id]!.circuit.wires.map((wire) => context.harness.wires[wire]!);
      const without = wires.filter((wire) => !hasSize(context, wire));
      stated += wires.filter(({ area_mm2 }) => area_mm2 !== "unknown").length;
      if (without.length) missing.push(without);
    }
    const count = missing.reduce((sum, wires) => sum + wires.length, 0);
    if (!count || stated < STATED_FOR_EACH * count) return;
    for (const wires of missing) {
      wires.sort((a, b) => compareNames(a.designation, b.designation));
      yield {
        message: `The size of ${sayList(wires.map(sayWire))} is not stated, while ${stated} other power leads have theirs.`,
        consequence: "Whether its fuse protects it, and what is lost along it, rests on a guess.",
        remedy:
          "Find out what is printed on the cable or stands on its drum, and enter it as it is written there, mm² or AWG.",
        about: wires.map(({ id }) => ({ wire: id })),
      };
    }
  },
});

/** Circuits that are fed from a source of power, not from one that only signals. */
function powerCircuits(context: Context): ReadonlySet<number> {
  const found = new Set<number>();
  for (const { source, circuits } of context.stretches.all)
    if (source.means.group === "feed") for (const id of circuits) found.add(id);
  return found;
}

function hasSize(context: Context, wire: Wire): boolean {
  if (wire.area_mm2 !== "unknown") return true;
  return wire.ends.some((end) => {
    const part = end === "loose" ? undefined : context.harness.parts[end.part];
    const lead = end !== "loose" && part ? contactsOf(part)[end.contact - 1]?.cavity?.lead : null;
    return lead !== null && lead !== undefined && lead.area_mm2 !== "unknown";
  });
}
