import type { Point } from "../../../electrical/points.ts";
import type { Connector } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { compareNames, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "same-shell-mated-wrongly",
    group: "data",
    severity: "fault",
    summary: "Two housings of one shape and one keying carry the same functions.",
    source:
      "FCS 1362:2010 §4.6.2 (a supply lead is made so that its poles cannot be exchanged); otherwise common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "housings"],
    fixable: false,
  },
  *check(context) {
    for (const alike of sameShells(context.parts.filter(isHousing))) {
      const clash = worstClash(context, alike);
      if (!clash) continue;
      const names = sayList(alike.map((part) => part.designation));
      yield {
        severity: clash.feedMeetsSignal ? "danger" : "fault",
        message: `${names} have one shell, ${alike[0]!.shell?.trim()}, and nothing keeps them apart. In cavity ${clash.label}, ${clash.a.part.designation} has ${clash.a.means.name} and ${clash.b.part.designation} has ${clash.b.means.name}.`,
        consequence: clash.feedMeetsSignal
          ? `Mated the wrong way round, a feed meets ${clash.b.means.group === "ground" ? "a ground" : "a signal"}: something is destroyed, at the next service if not today.`
          : "Mated the wrong way round, nothing works as it should, at the next service if not today.",
        remedy:
          "Set them apart by a key, the other sex, a colour or a tag, or leads of unequal length; state it under keying.",
        about: alike.map((part) => ({ part: part.id })),
      };
    }
  },
});

function isHousing(part: { readonly kind: string }): part is Connector {
  const connector = part as Connector;
  return part.kind === "connector" && connector.form === "housing" && (connector.shell ?? "").trim() !== "";
}

/** Two people write one name in two ways. */
function plain(text: string | null): string {
  return (text ?? "").trim().replace(/\s+/g, " ").toLowerCase();
}

function sameShells(parts: readonly Connector[]): Connector[][] {
  const groups = new Map<string, Connector[]>();
  for (const part of parts) {
    const name = JSON.stringify([plain(part.shell), plain(part.keying), part.gender]);
    const group = groups.get(name);
    if (group) group.push(part);
    else groups.set(name, [part]);
  }
  return [...groups.values()]
    .filter((group) => group.length > 1)
    .map((group) => group.sort((a, b) => compareNames(a.designation, b.designation)));
}

type Clash = {
  readonly label: string;
  readonly a: Point;
  readonly b: Point;
  readonly feedMeetsSignal: boolean;
};

/** The worst of the cavities whose functions differ, cavity by cavity; `null` where all are alike. */
function worstClash(context: Context, alike: readonly Connector[]): Clash | null {
  let found: Clash | null = null;
  const most = Math.max(...alike.map((part) => part.cavities.length));
  for (let number = 1; number <= most; number++) {
    const known = alike.flatMap((part) => {
      const point = context.points.pointAt(part.id, number);
      return point && point.part === part && point.means.group !== "none" ? [point] : [];
    });
    const first = known[0];
    if (!first) continue;
    for (const other of known) {
      if (other.means === first.means) continue;
      const clash = { label: first.contact.label, a: first, b: other, feedMeetsSignal: hurts(known) };
      if (clash.feedMeetsSignal) {
        const feed = known.find((point) => point.means.group === "feed")!;
        const signal = known.find((point) => !HARMLESS.has(point.means.group))!;
        return { ...clash, a: feed, b: signal };
      }
      found ??= clash;
    }
  }
  return found;
}

const HARMLESS = new Set(["feed", "none"]);

function hurts(points: readonly Point[]): boolean {
  return (
    points.some((point) => point.means.group === "feed") &&
    points.some((point) => !HARMLESS.has(point.means.group))
  );
}
