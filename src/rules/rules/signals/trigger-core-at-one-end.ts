import { nameContact } from "../../../catalogue/describe.ts";
import { keyOfEnd } from "../../../graph/contacts.ts";
import type { End, Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { cablesOf, circuitOfWire, copperFrom } from "../../shared/cables.ts";
import { sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "trigger-core-at-one-end",
    group: "signals",
    severity: "weak",
    summary: "The trigger lead in a video cable is joined at both ends, or capped at both.",
    source:
      "an audio forum's question on the short red lead that comes out of a video plug; common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "cables"],
    fixable: false,
  },
  *check(context) {
    for (const { cable, cores } of cablesOf(context)) {
      if (cores.length < 2 || !cores.some((core) => isPicture(context, core))) continue;
      for (const core of cores) {
        if (isPicture(context, core)) continue;
        const joined = core.ends.map((end) => isJoined(context, core, end));
        if (joined[0] === joined[1]) continue;
        const [used, open] = joined[0] ? core.ends : [core.ends[1], core.ends[0]];
        yield {
          message: `${sayWire(core)}, the extra core of video cable ${cable.designation}, is joined at ${nameEnd(context, used)} and ${open === "loose" ? "hangs loose" : `ends in ${nameEnd(context, open)}`} at its other end.`,
          consequence: "The display does not change to the picture by itself when reverse is engaged.",
          remedy:
            "Join both ends, to the reverse feed at the back and to the trigger input in front; or cap both and run a trigger lead of its own.",
          about: [{ wire: core.id }],
        };
      }
    }
  },
});

function isPicture(context: Context, core: Wire): boolean {
  return circuitOfWire(context, core)?.points.some(({ means }) => means.group === "video") ?? false;
}

/** It leads to a contact of something, other than a joint, a cap or a cavity that a person has left out. */
function isJoined(context: Context, core: Wire, end: End): boolean {
  const key = keyOfEnd(end);
  if (key === null) return false;
  return copperFrom(context, key, new Set([core.id])).some((one) => {
    const part = context.traced.partOf(one);
    if (!part || part.kind === "splice" || part.kind === "cap") return false;
    const cavity = context.traced.contact(one)?.cavity;
    return !cavity || (cavity.function !== "not-used" && cavity.use !== "spare" && cavity.use !== "plugged");
  });
}

function nameEnd(context: Context, end: End): string {
  if (end === "loose") return "nothing";
  const part = context.harness.parts[end.part];
  return part && (part.kind === "splice" || part.kind === "cap")
    ? part.designation
    : nameContact(context.harness, end);
}
