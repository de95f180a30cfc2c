import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { jointsOf, METHOD_WORDS, runsAround } from "../../shared/joints.ts";
import { sayRun } from "../../shared/looms.ts";
import { compareNames, sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "joint-where-loom-flexes",
    group: "joints",
    severity: "weak",
    summary: "No joint lies where the loom bends or twists with a door or a lid.",
    source: "NASA Workmanship Standards, picture book 4.07 (no splice in a flexed area; ties on both sides)",
    reads: [...NAMES, "wiring", "joints", "runs"],
    fixable: false,
  },
  *check(context) {
    if (!Object.values(context.harness.runs).some(({ hinge }) => MOVES.has(hinge))) return;
    for (const joint of jointsOf(context)) {
      const runs = runsAround(context, joint);
      if (!runs.length || !runs.every(({ hinge }) => MOVES.has(hinge))) continue;
      const { part, wires } = joint;
      const names = [...runs].sort((a, b) => compareNames(a.designation, b.designation)).map(sayRun);
      yield {
        message: `${part.designation}, ${METHOD_WORDS[part.method]} of ${sayList(wires.map(sayWire))}, lies in ${sayList(names)}, which moves with a hinge.`,
        consequence: "The strands break beside the joint, where the stiff part ends.",
        remedy: "Move the joint to a part of the loom that lies still, and tie it on both sides.",
        about: [{ part: part.id }],
      };
    }
  },
});

const MOVES: ReadonlySet<string> = new Set(["twists-along", "bends-across"]);
