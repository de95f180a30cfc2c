import { contactKey } from "../../../graph/contacts.ts";
import type { PartId, Splice, Wire, WireId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { cablesOf } from "../../shared/cables.ts";
import { compareNames, sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "coax-spliced",
    group: "signals",
    severity: "weak",
    summary: "Coaxial cable is joined by connectors made for it, never spliced as if it were wire.",
    source:
      "FAA AC 43.13-1B §11-120: coaxial cable is damaged inside without outward sign; no splices: common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "cables"],
    fixable: false,
  },
  *check(context) {
    const found = new Map<PartId, { joint: Splice; wires: Set<Wire> }>();
    const note = (joint: Splice, wire: Wire): void => {
      const one = found.get(joint.id) ?? { joint, wires: new Set() };
      found.set(joint.id, one);
      one.wires.add(wire);
    };
    for (const wire of coaxCores(context)) {
      for (const end of wire.ends) {
        const part = end === "loose" ? undefined : context.harness.parts[end.part];
        // A joint that holds nothing else is an end, which another rule tells.
        if (part?.kind === "splice" && wiresOn(context, part.id).length > 1) note(part, wire);
      }
    }
    for (const { joint, wires } of found.values()) {
      const names = [...wires].sort((a, b) => compareNames(a.designation, b.designation));
      yield {
        message: `${joint.designation} splices coaxial cable: ${sayList(names.map(sayWire))}.`,
        consequence:
          "At a plain joint the cable's shape is lost: signal is thrown back and leaks out, and reception or picture suffer, sometimes months later when damp gets in.",
        remedy: "Use one length of cable, or a pair of coaxial connectors.",
        about: [{ part: joint.id }],
      };
    }
  },
});

const ANTENNA = ["antenna-signal", "gps-antenna"];

/** Cores of coaxial cables, and leads from an antenna, which are coaxial whatever the drawing says. */
function coaxCores(context: Context): ReadonlySet<Wire> {
  const cores = new Set(cablesOf(context).flatMap((one) => (one.cable.kind === "coax" ? one.cores : [])));
  for (const point of context.withFunction(...ANTENNA))
    for (const id of context.circuitOf(point).circuit.wires) {
      const wire = context.harness.wires[id as WireId];
      if (wire) cores.add(wire);
    }
  return cores;
}

function wiresOn(context: Context, joint: PartId): readonly Wire[] {
  return [1, 2].flatMap((contact) => context.traced.wiresAt(contactKey(joint, contact)));
}
