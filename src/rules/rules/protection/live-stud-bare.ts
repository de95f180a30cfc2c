import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { compareNames, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "live-stud-bare",
    group: "protection",
    severity: "danger",
    summary: "A stud that is always live and has no fuse before it has a boot or a cover.",
    source: "33 CFR 183.445(b)",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind === "supply") {
        if (part.cover !== "none") continue;
        const post = context.points.pointAt(part.id, 1)!;
        if (context.points.wiresAt(post).length)
          yield {
            ...bare(`${sayPoint(context, post)} is a live post without a boot`),
            about: [{ part: part.id }],
          };
        continue;
      }
      if (part.kind !== "splice" || part.method !== "terminal-block" || part.cover !== "none") continue;
      const source = unfusedSource(context, context.traced.circuitAt(part.id, 1)!.id);
      if (source)
        yield {
          ...bare(
            `${part.designation} is a bare terminal, live at all times from ${sayPoint(context, source)} with no fuse between`,
          ),
          about: [{ part: part.id }],
        };
    }
  },
});

function bare(what: string) {
  return {
    message: `${what}.`,
    consequence: "A spanner that falls across it and the body welds itself on: burns, and fire.",
    remedy: "Put a boot over it, or a cover; or put a fuse between it and the battery.",
  };
}

function unfusedSource(context: Context, circuit: number): Point | undefined {
  return context.stretches
    .at(circuit)
    .filter(
      ({ guard, source }) =>
        guard.kind === "none" && source.means.group === "feed" && source.means.liveIn.includes("off"),
    )
    .map(({ source }) => source)
    .sort((a, b) => compareNames(a.part.designation, b.part.designation))[0];
}
