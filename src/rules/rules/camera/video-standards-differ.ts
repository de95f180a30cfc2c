import { nameContact } from "../../../catalogue/describe.ts";
import type { Point } from "../../../electrical/points.ts";
import { contactsOf, refOfKey } from "../../../graph/contacts.ts";
import type { Module } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { byName } from "../../words.ts";

export default defineRule({
  meta: {
    id: "video-standards-differ",
    group: "camera",
    severity: "fault",
    summary: "A camera gives a kind of picture that its display shows.",
    source: "a workshop manual names composite NTSC for its camera; the rest from memory",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
  },
  *check(context) {
    const told = new Set<string>();
    for (const point of [...context.withFunction("video-signal")].sort(byName)) {
      const ends = context.circuitOf(point).points.flatMap((one) => endsAt(context, one));
      for (const from of ends) {
        if (!from.isSource || !isOneKind(from.box)) continue;
        for (const to of ends) {
          const pair = `${from.box.id} ${to.box.id}`;
          if (to.isSource || to.box === from.box || told.has(pair)) continue;
          if (!isOneKind(to.box) || to.box.video === from.box.video) continue;
          told.add(pair);
          yield tell(from, to);
        }
      }
    }
  },
});

/** A box that has a part in a picture lead. */
type End = { readonly box: Module; readonly name: string; readonly isSource: boolean };

/** The boxes behind a contact: two where plugs are mated that call it the same. */
function endsAt(context: Context, point: Point): readonly End[] {
  if (point.means.id !== "video-signal") return [];
  return point.landings.flatMap((key): End[] => {
    const { part: id, contact } = refOfKey(key);
    const part = context.harness.parts[id];
    const owner =
      part?.kind === "connector" && part.belongsTo.module
        ? context.harness.parts[part.belongsTo.module]
        : part;
    if (!part || owner?.kind !== "module") return [];
    const own = contactsOf(part)[contact - 1];
    if (!own) return [];
    const isSource = own.direction === "gives" || (own.direction !== "takes" && owner.role === "camera");
    return [{ box: owner, name: nameContact(context.harness, { part: id, contact }), isSource }];
  });
}

function tell(from: End, to: End): Found {
  const [given, shown] = [KINDS[from.box.video], KINDS[to.box.video]];
  return {
    message: `${from.box.designation} gives ${given}, at ${from.name}; ${to.box.designation} shows ${shown} only, at ${to.name}.`,
    consequence: "The screen stays blue, or the picture rolls or is torn.",
    remedy: `Set ${to.box.designation} to ${given} in its menu where it can be set, and say so in its sheet; or fit a camera of the other kind.`,
    about: [{ part: from.box.id }, { part: to.box.id }],
  };
}

const KINDS: Readonly<Record<Module["video"], string>> = {
  ntsc: "NTSC",
  pal: "PAL",
  "high-definition": "high definition",
  several: "several kinds",
  none: "no picture",
  unknown: "an unknown kind",
};

function isOneKind({ video }: Module): boolean {
  return video === "ntsc" || video === "pal" || video === "high-definition";
}
