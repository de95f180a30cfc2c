import { NAMES } from "../../facets.ts";
import { defineRule, fixWith } from "../../rule.ts";
import { sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "solid-wire",
    group: "protection",
    severity: "weak",
    summary: "Every lead in a vehicle is stranded.",
    source: "33 CFR 183.425(a); NASA-STD-8739.4 (crimping solid wire is prohibited)",
    reads: [...NAMES, "wiring", "materials", "cables"],
    fixable: true,
  },
  *check({ harness }) {
    const solid = Object.values(harness.wires).filter(({ strands }) => strands === "solid");
    if (!solid.length) return;
    // The core of a coaxial cable is solid as it is made, and its jacket holds it still.
    const cores = new Set(
      Object.values(harness.cables).flatMap(({ kind, wires }) => (kind === "coax" ? wires : [])),
    );
    for (const wire of solid) {
      if (cores.has(wire.id)) continue;
      yield {
        message: `${sayWire(wire)} is solid wire.`,
        consequence: "It breaks by vibration, mostly where a terminal grips it.",
        remedy: "Use stranded copper wire of the same size.",
        about: [{ wire: wire.id }],
        fix: fixWith(`Make ${wire.designation} of stranded wire`, () => ({
          kind: "change-wire",
          wire: wire.id,
          changes: { strands: "stranded" },
        })),
      };
    }
  },
});
