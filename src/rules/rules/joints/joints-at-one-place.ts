import { digits } from "../../../electrical/figure.ts";
import type { RunId, Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { type Joint, jointsOf, runNames } from "../../shared/joints.ts";
import { sumOfRuns } from "../../shared/lead-runs.ts";
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
    const groups = groupsOf(context);
    if (!groups.length) return;
    const joints = jointsByRun(context);
    const roomy = groups.filter((group) => hasRoom(context, group, joints));
    const told = new Set<string>();
    for (const group of roomy) {
      for (const lump of lumpsOf(group, groups)) {
        const key = lump.map(({ joint }) => joint.part.id).join(" ");
        if (told.has(key)) continue;
        told.add(key);
        yield tell(context, lump);
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
  readonly from: string;
  readonly runs: Wire["runs"];
};
/** By circuit: two joints of one circuit may lie side by side, for the second touches nothing foreign. */
type Group = ReadonlyMap<number, Placed>;

/** Joints of different circuits whose leads leave one housing and follow the same runs; by the housing's name. */
function groupsOf(context: Context): readonly Group[] {
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
      const placed: Placed = {
        joint,
        name: joint.part.designation,
        at_m: wire.length_m,
        through_m: wire.length_m + Math.max(0, ...onward),
        from: housing.designation,
        runs: wire.runs,
      };
      const known = group.get(circuit);
      if (!known || compareNames(placed.name, known.name) < 0) group.set(circuit, placed);
    }
  }
  return [...groups.values()]
    .filter(({ size }) => size > 1)
    .sort((a, b) => compareNames(firstOf(a).from, firstOf(b).from));
}

const firstOf = (group: Group): Placed => [...group.values()][0]!;

/** On a short adapter with many leads the joints cannot all be apart; that is no fault of the work. */
function hasRoom(
  { harness }: Context,
  group: Group,
  joints: ReadonlyMap<RunId, ReadonlySet<Joint>>,
): boolean {
  const ids = firstOf(group).runs;
  let room_m = Math.min(...[...group.values()].map(({ through_m }) => through_m));
  const { sum_m, isKnown } = sumOfRuns(harness, ids);
  if (isKnown) room_m = Math.min(room_m, sum_m);
  const inRuns = new Set(ids.flatMap((id) => [...(joints.get(id) ?? [])]));
  return (inRuns.size + 1) * APART_m <= room_m + 1e-9;
}

function jointsByRun(context: Context): ReadonlyMap<RunId, ReadonlySet<Joint>> {
  const byRun = new Map<RunId, Set<Joint>>();
  for (const joint of jointsOf(context)) {
    for (const id of joint.wires.flatMap(({ runs }) => runs)) {
      const known = byRun.get(id);
      if (known) known.add(joint);
      else byRun.set(id, new Set([joint]));
    }
  }
  return byRun;
}

/** Joints less than 50 mm from one another, measured from whichever housing both can be measured from. */
function lumpsOf(group: Group, groups: readonly Group[]): readonly (readonly Placed[])[] {
  const ordered = [...group].sort(([, a], [, b]) => a.at_m - b.at_m || compareNames(a.name, b.name));
  const lumps: (readonly Placed[])[] = [];
  let lump: [number, Placed][] = [];
  for (const one of ordered) {
    const last = lump.at(-1);
    if (last && !isBeside(last[0], one[0], groups)) {
      if (lump.length > 1) lumps.push(lump.map(([, placed]) => placed));
      lump = [];
    }
    lump.push(one);
  }
  if (lump.length > 1) lumps.push(lump.map(([, placed]) => placed));
  return lumps;
}

function isBeside(one: number, other: number, groups: readonly Group[]): boolean {
  return groups.every((group) => {
    const [a, b] = [group.get(one), group.get(other)];
    return !a || !b || Math.abs(a.at_m - b.at_m) < APART_m - 1e-9;
  });
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
