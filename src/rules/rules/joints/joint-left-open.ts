import { contactKey } from "../../../graph/contacts.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";

export default defineRule({
  meta: {
    id: "joint-left-open",
    group: "joints",
    severity: "tidy",
    summary: "Every joint on the drawing joins something.",
    source: "common practice, no source",
    reads: [...NAMES, "wiring"],
    fixable: true,
  },
  *check({ parts, traced }) {
    for (const part of parts) {
      if (part.kind !== "splice") continue;
      // One with a single wire is told as that lead's open end.
      if ([1, 2].some((contact) => traced.wiresAt(contactKey(part.id, contact)).length)) continue;
      yield {
        message: `${part.designation} joins nothing: no wire ends in it.`,
        consequence: "It stands in the parts list, and whoever builds the harness looks for what it is for.",
        remedy: `Bring to it the leads that it is for, or remove ${part.designation}.`,
        about: [{ part: part.id }],
        suggestions: [
          { label: `Remove ${part.designation}`, edit: { kind: "remove", parts: [part.id], wires: [] } },
        ],
      };
    }
  },
});
