import { isGround } from "../../../catalogue/functions.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Connector, PartId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";

export default defineRule({
  meta: {
    id: "unused-line-plug-uncovered",
    group: "spares",
    severity: "weak",
    summary: "A line or video plug that is not plugged in is covered, shell and all.",
    source:
      "Basic Car Audio Electronics (bcae1.com), repair of the shield ground of line plugs; to cover the shell: common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    const plugs = context.parts.filter(isLinePlug);
    if (!plugs.length) return;
    const mated = matedParts(context);
    for (const plug of plugs) {
      if (plug.cover === "whole" || mated.has(plug.id)) continue;
      const points = plug.cavities.map((_, index) => context.points.pointAt(plug.id, index + 1));
      if (!points.some((point) => point && CARRIES.has(point.means.group))) continue;
      if (points.some((point) => point && CARRIES.has(point.means.group) && isUsed(context, point))) continue;
      yield {
        message: `${plug.designation} is not plugged in, and ${
          plug.cover === "none"
            ? "nothing covers it"
            : "only its middle contact is covered; the shell is bare"
        }.`,
        consequence:
          "The shell on the frame brings hum; on a live contact it burns the shield track inside the unit, and every channel whines until that is repaired.",
        remedy:
          "Put a cap over the whole plug, shell included, each plug by itself, and tie it back from metal.",
        about: [{ part: plug.id }],
        fix: {
          label: `Cover ${plug.designation}, shell and all`,
          edit: { kind: "change-part", part: plug.id, changes: { cover: "whole" } },
        },
      };
    }
  },
});

const CARRIES = new Set(["line-level", "video"]);

function isLinePlug(part: { readonly kind: string }): part is Connector {
  return part.kind === "connector" && (part as Connector).form === "line-plug";
}

function matedParts(context: Context): ReadonlySet<PartId> {
  const mated = new Set<PartId>();
  for (const part of context.parts) {
    if (part.kind === "connector" && part.matedWith && context.harness.parts[part.matedWith]) {
      mated.add(part.id).add(part.matedWith);
    }
  }
  return mated;
}

/** Its conductor goes on to another box: the plug stands for its mate in this harness. Its own box's tail, or
 * a ground on its shell, leaves it as bare as it was. */
function isUsed(context: Context, point: Point): boolean {
  return context.points
    .partners(point)
    .some((other) => other.unit !== point.unit && !isGround(other.means.id));
}
