import { digits } from "../../../electrical/figure.ts";
import type { Context } from "../../context.ts";
import { NAMES } from "../../facets.ts";
import { type Joint, jointsOf, runNames } from "../../joints.ts";
import { defineRule } from "../../rule.ts";
import { compareNames, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "joints-at-one-place",
    group: "joints",
    severity: "tidy",
    summary: "Joints of one run are staggered, so that the loom keeps its shape.",
    source:
      "a vehicle maker's procedure for splices near airbags (50 mm apart); NASA Workmanship Standards, picture book 4.07 (stagger splices)",
    reads: [...NAMES, "wiring", "joints", "lengths", "runs"],
    fixable: false,
  },
  *check(context) {
    for (const group of groupsOf(context)) {
      if (group.length < 2 || !hasRoom(context, group)) continue;
      group.sort((a, b) => a.at_m - b.at_m || compareNames(a.name, b.name));
      let lump: Placed[] = [];
      for (const [index, one] of group.entries()) {
        const last = lump.at(-1);
        if (last && one.at_m - last.at_m >= APART_m - 1e-9) {
          if (lump.length > 1) yield tell(context, lump);
          lump = [];
        }
        lump.push(one);
        if (index === group.length - 1 && lump.length > 1) yield tell(context, lump);
      }
    }
  },
});

const APART_m = 0.05;

/** A joint that lies so far along a run from the housing that its lead comes from. */
type Placed = {
  readonly joint: Joint;
  readonly name: string;
  readonly at_m: number;
  /** From the housing through the joint to the far end of its longest lead. */
  readonly through_m: number;
  readonly circuit: number;
  readonly from: string;
  readonly runs: Joint["wires"][number]["runs"];
};

/** Joints of different circuits whose leads leave one housing and follow the same runs. */
function groupsOf(context: Context): readonly Placed[][] {
  const groups = new Map<string, Map<number, Placed>>();
  for (const joint of jointsOf(context)) {
    if (joint.part.method === "terminal-block") continue;
    for (const wire of joint.wires) {
      if (!wire.runs.length || wire.length_m === "unknown") continue;
      const far = wire.ends.find((end) => end !== "loose" && end.part !== joint.part.id);
      if (!far || far === "loose") continue;
      const housing = context.harness.parts[far.part];
      if (housing?.kind !== "connector" && housing?.kind !== "module") continue;
      const key = `${housing.id} ${wire.runs.join(" ")}`;
      const group = groups.get(key) ?? new Map<number, Placed>();
      groups.set(key, group);
      const circuit = context.traced.circuitAt(joint.part.id, 1)!.id;
      const onward = joint.wires.flatMap((other) =>
        other !== wire && typeof other.length_m === "number" ? [other.length_m] : [],
      );
      const at_m = wire.length_m;
      // Two joints of one circuit may lie side by side: the second would touch nothing foreign.
      if (!group.has(circuit))
        group.set(circuit, {
          joint,
          name: joint.part.designation,
          at_m,
          through_m: at_m + Math.max(0, ...onward),
          circuit,
          from: housing.designation,
          runs: wire.runs,
        });
    }
  }
  return [...groups.values()].map((group) => [...group.values()]);
}

/** On a short adapter with many leads the joints cannot all be apart; that is no fault of the work. */
function hasRoom(context: Context, group: readonly Placed[]): boolean {
  const { harness } = context;
  let room_m = Math.min(...group.map(({ through_m }) => through_m));
  const lengths = group[0]!.runs.map((id) => harness.runs[id]?.length_m ?? "unknown");
  if (lengths.every((length) => typeof length === "number"))
    room_m = Math.min(
      room_m,
      lengths.reduce<number>((sum, length) => sum + Number(length), 0),
    );
  const runs = new Set(group[0]!.runs);
  const inRuns = jointsOf(context).filter(({ wires }) =>
    wires.some((wire) => wire.runs.some((id) => runs.has(id))),
  );
  return (inRuns.length + 1) * APART_m <= room_m + 1e-9;
}

function tell(context: Context, lump: readonly Placed[]) {
  const { from, runs, at_m } = lump[0]!;
  const last_m = lump.at(-1)!.at_m;
  const names = lump.map(({ name }) => name).sort(compareNames);
  const where =
    last_m > at_m
      ? `between ${digits(at_m * 1000)} and ${digits(last_m * 1000)} mm`
      : `${digits(at_m * 1000)} mm`;
  return {
    message: `${sayList(names)} lie side by side in ${sayList(runNames(context, runs))}, ${where} from ${from}; 50 mm from one to the next keep a loom flat.`,
    consequence: "They make a lump that does not fit, and two joints that fail lie against each other.",
    remedy: "Cut one of the leads 50 mm shorter or longer, so that its joint lies beside the other.",
    about: lump
      .map(({ joint }) => joint.part)
      .sort((a, b) => compareNames(a.designation, b.designation))
      .map(({ id }) => ({ part: id })),
  };
}
