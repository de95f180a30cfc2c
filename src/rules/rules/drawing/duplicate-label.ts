import type { Wire } from "../../../graph/harness.ts";
import { defineRule } from "../../rule.ts";
import { compareNames, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "duplicate-label",
    group: "drawing",
    severity: "fault",
    summary: "No two wires of different circuits bear one label, and none bears another wire's designation.",
    source: "ASME Y14.44: no duplicate reference designations in one set (through a summary); IEC 62491",
    reads: ["parts", "wiring", "labels", "designations"],
    fixable: false,
  },
  *check(context) {
    const printed = new Map<string, Wire[]>();
    for (const wire of Object.values(context.harness.wires)) {
      const text = wire.label === "" ? wire.designation : wire.label;
      const same = printed.get(text);
      if (same) same.push(wire);
      else printed.set(text, [wire]);
    }
    for (const [text, wires] of printed) {
      // Two stretches of one circuit may share the circuit's name; two wires without labels are told by their designation.
      if (wires.length < 2 || wires.every(({ label }) => label === "")) continue;
      const circuits = new Set(wires.map(({ id }) => context.traced.circuitOfWire(id)?.id));
      if (circuits.size < 2) continue;
      const sorted = [...wires].sort((a, b) => compareNames(a.designation, b.designation));
      yield {
        message: `${sayList(sorted.map(({ designation }) => designation))} are all labelled “${text}”, and are not joined.`,
        consequence: "Somebody cuts or meters the wrong wire.",
        remedy: "Give each its own label; stretches of one circuit may share one.",
        about: sorted.map(({ id }) => ({ wire: id })),
      };
    }
  },
});
