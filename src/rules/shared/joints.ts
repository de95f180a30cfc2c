import { contactKey } from "../../graph/contacts.ts";
import type { Run, RunId, Splice, Wire } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { type Fix, fixWith } from "../rule.ts";
import { compareNames } from "../words.ts";

/** A joint with what it holds. */
export type Joint = {
  readonly part: Splice;
  /** The wires of either side, by designation. */
  readonly sides: readonly [readonly Wire[], readonly Wire[]];
  /** All of them, each once. */
  readonly wires: readonly Wire[];
};

const remembered = new WeakMap<Context, readonly Joint[]>();

/** The joints that hold at least two wires: one with fewer joins nothing, which other rules tell. */
export function jointsOf(context: Context): readonly Joint[] {
  let found = remembered.get(context);
  if (!found) {
    found = context.parts.flatMap((part) => (part.kind === "splice" ? jointOf(context, part) : []));
    remembered.set(context, found);
  }
  return found;
}

function jointOf(context: Context, part: Splice): readonly Joint[] {
  const [left, right] = [1, 2].map((contact) => context.traced.wiresAt(contactKey(part.id, contact)));
  if (left!.length + right!.length < 2) return [];
  const wires = [...new Set([...left!, ...right!])];
  if (wires.length < 2) return [];
  return [{ part, sides: [sorted(left!), sorted(right!)], wires: sorted(wires) }];
}

const sorted = (wires: readonly Wire[]): readonly Wire[] =>
  [...wires].sort((a, b) => compareNames(a.designation, b.designation));

/**
 * The runs of which one surely holds the joint: those that its wires have in common. A wire of which no run is
 * stated says nothing, and a single wire that says something may have left its run before it comes to the joint.
 */
export function runsAround({ harness }: Context, { wires }: Pick<Joint, "wires">): readonly Run[] {
  const stated = wires.filter(({ runs }) => runs.length > 0);
  if (stated.length < 2) return [];
  return stated[0]!.runs
    .filter((id) => stated.every(({ runs }) => runs.includes(id)))
    .flatMap((id) => harness.runs[id] ?? []);
}

/** Where water comes, in words. */
export const WET_PLACES: Readonly<Partial<Record<Run["zone"], string>>> = {
  outside: "outside",
  "engine-bay": "in the engine bay",
  door: "in a door",
};

/** "outside", "in a door": where water comes to a joint, as its zone or its runs say; `null` where it is dry or unknown. */
export function wetPlaceOf(context: Context, joint: Joint): string | null {
  const { zone } = joint.part;
  if (zone !== "unknown") return WET_PLACES[zone] ?? null;
  const runs = runsAround(context, joint);
  const words = runs.map((run) => WET_PLACES[run.zone]);
  return words.length && words.every((word) => word !== undefined) ? words[0]! : null;
}

export const METHOD_WORDS: Readonly<Record<Splice["method"], string>> = {
  "solder-and-sleeve": "a soldered joint",
  "crimped-butt": "a crimped joint",
  "bullet-pair": "a pair of bullets",
  tap: "a tap that pierces the insulation",
  "terminal-block": "a terminal block",
  twisted: "a twisted joint",
  "twist-on-nut": "a twist-on nut",
  unknown: "a joint",
};

/** A joint that is made anew, in either of the ways that the harness's book allows. */
export function madeAnew({ profile }: Context, { part }: Joint): readonly Fix[] {
  const { choice } = profile.joints;
  const ways: Fix[] = [];
  if (choice !== "crimp-only")
    ways.push(
      changed(part, `Solder ${part.designation} in an adhesive-lined sleeve`, {
        method: "solder-and-sleeve",
        cover: "adhesive-sleeve",
      }),
    );
  if (choice !== "solder-only")
    ways.push(
      changed(part, `Crimp ${part.designation} in an adhesive-lined sleeve`, {
        method: "crimped-butt",
        cover: "adhesive-sleeve",
      }),
    );
  return ways;
}

/** The cure of a soldered or crimped joint that lacks its sleeve; of other joints there is no single one. */
export function sleeved({ part }: Joint): Fix | null {
  if (part.method !== "solder-and-sleeve" && part.method !== "crimped-butt") return null;
  return changed(part, `Cover ${part.designation} with an adhesive-lined sleeve`, {
    cover: "adhesive-sleeve",
  });
}

export function changed(
  part: Splice,
  label: string,
  changes: Partial<Pick<Splice, "method" | "cover" | "liveHalf" | "barrel">>,
): Fix {
  return fixWith(label, () => ({ kind: "change-part", part: part.id, changes }));
}

/** Names of runs, for a message: "B1 and B2". */
export function runNames({ harness }: Context, ids: readonly RunId[]): readonly string[] {
  return ids.flatMap((id) => harness.runs[id]?.designation ?? []).sort(compareNames);
}
