import type { Connector } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { compareNames } from "../../words.ts";

export default defineRule({
  meta: {
    id: "plug-and-socket-same-view",
    group: "trailer",
    severity: "weak",
    summary: "Of a plug and its socket, seen from one side, the one is the mirror image of the other.",
    source: "habit of harness shops: mating face or wire side is the usual hole in a drawing; no source",
    reads: [...NAMES, "wiring", "housings", "functions"],
    fixable: true,
  },
  *check(context) {
    for (const [plug, socket] of matedPairs(context)) {
      const mirrored = same(
        plug.rows,
        socket.rows.map((row) => [...row].reverse()),
      );
      const equal = same(plug.rows, socket.rows);
      // A face that is its own mirror image fits both ways.
      if (equal === mirrored || (plug.view === socket.view) === mirrored) continue;
      const seen = plug.view === "wire-side" ? "from the wire side" : "from the mating face";
      yield {
        severity: isHanded(plug) || isHanded(socket) ? "fault" : "weak",
        message:
          plug.view === socket.view
            ? `${plug.designation} and ${socket.designation} are mated, both are drawn as seen ${seen}, and their faces are the same.`
            : `${plug.designation} and ${socket.designation} are mated and drawn from opposite sides, and yet their faces are mirror images.`,
        consequence:
          "One of the two pictures is mirrored: whoever fills that housing by it puts left for right, and stop for tail.",
        remedy:
          "Look at both housings in the hand, and set the view of the one that was looked at from the other side.",
        about: [{ part: plug.id }, { part: socket.id }],
        suggestions: [plug, socket].map((part) => {
          const view = part.view === "wire-side" ? "mating-face" : "wire-side";
          return {
            label: `${part.designation} is seen from ${view === "wire-side" ? "the wire side" : "the mating face"}`,
            edit: { kind: "change-part", part: part.id, changes: { view } },
          };
        }),
      };
    }
  },
});

function* matedPairs({ harness, parts }: Context): Iterable<readonly [Connector, Connector]> {
  const told = new Set<string>();
  for (const part of parts) {
    if (part.kind !== "connector" || !part.matedWith) continue;
    const other = harness.parts[part.matedWith];
    if (other?.kind !== "connector" || other === part || told.has(part.id) || told.has(other.id)) continue;
    told.add(part.id).add(other.id);
    const [plug, socket] = [part, other].sort((a, b) => compareNames(a.designation, b.designation)) as [
      Connector,
      Connector,
    ];
    const sexes = [plug.gender, socket.gender].sort().join();
    // Only faces that somebody has laid out can be compared; a list of cavities is no face.
    if (sexes !== "plug,receptacle" || plug.form !== "housing" || socket.form !== "housing") continue;
    if (plug.rows.length && socket.rows.length) yield [plug, socket];
  }
}

function same(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** Left and right in one housing: mirrored, they change places. */
function isHanded({ cavities }: Connector): boolean {
  const has = (side: string) => cavities.some((cavity) => cavity.function.endsWith(`-${side}`));
  return has("left") && has("right");
}
