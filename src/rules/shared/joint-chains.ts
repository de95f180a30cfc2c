import { nameContact } from "../../catalogue/describe.ts";
import { contactKey } from "../../graph/contacts.ts";
import type { Harness, PartId, Splice } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { compareNames } from "../words.ts";

/** A lead that goes through several joints, from one contact to another. */
export type Chain = { readonly from: string; readonly to: string; readonly joints: readonly Splice[] };

/** A terminal block is made to be opened and measured at; it is an end of a lead more than a joint in it. */
const isCounted = ({ method }: Splice): boolean => method !== "terminal-block";

/**
 * The lead of one circuit that goes through the most joints. Two walks, each to the farthest joint that a contact
 * hangs on: exact for leads that branch, and near enough where they close to a ring.
 * @param joints those of the circuit
 * @returns `null` where no two contacts hang on them
 */
export function longestChain(context: Context, joints: readonly Splice[]): Chain | null {
  const ordered = joints.filter(isCounted).sort((a, b) => compareNames(a.designation, b.designation));
  const nodes = new Map(ordered.map((joint) => [joint.id, nodeOf(context, joint)]));
  const starts = ordered.filter(({ id }) => nodes.get(id)!.ends.length > 0);
  let best: readonly Splice[] = [];
  const walked = new Set<PartId>();
  for (const start of starts) {
    if (walked.has(start.id)) continue;
    const there = farthest(nodes, start);
    for (const { id } of there.reached) walked.add(id);
    const back = farthest(nodes, there.way.at(-1)!);
    if (back.way.length > best.length) best = back.way;
  }
  const [first, last] = [best[0], best.at(-1)];
  if (!first || !last || first === last) return null;
  const ways = compareNames(first.designation, last.designation) <= 0 ? best : [...best].reverse();
  return {
    from: nodes.get(ways[0]!.id)!.ends[0]!,
    to: nodes.get(ways.at(-1)!.id)!.ends[0]!,
    joints: ways,
  };
}

type Node = {
  readonly joint: Splice;
  /** The contacts that its wires come from, by name. */
  readonly ends: readonly string[];
  readonly neighbours: readonly PartId[];
};

function nodeOf({ harness, traced }: Context, joint: Splice): Node {
  const ends: string[] = [];
  const neighbours: Splice[] = [];
  for (const contact of [1, 2]) {
    for (const wire of traced.wiresAt(contactKey(joint.id, contact))) {
      for (const end of wire.ends) {
        if (end === "loose" || end.part === joint.id) continue;
        const part = harness.parts[end.part];
        if (part?.kind === "splice" && isCounted(part)) neighbours.push(part);
        else ends.push(nameEnd(harness, end));
      }
    }
  }
  neighbours.sort((a, b) => compareNames(a.designation, b.designation));
  return { joint, ends: ends.sort(compareNames), neighbours: neighbours.map(({ id }) => id) };
}

function nameEnd(harness: Harness, end: { readonly part: PartId; readonly contact: number }): string {
  const part = harness.parts[end.part];
  return part?.kind === "splice" ? part.designation : nameContact(harness, end);
}

/** The way to the joint with a contact on it that is most joints away. */
function farthest(nodes: ReadonlyMap<PartId, Node>, start: Splice) {
  const before = new Map<PartId, PartId | null>([[start.id, null]]);
  const reached: Splice[] = [start];
  let last = start;
  for (const { id } of reached) {
    const node = nodes.get(id)!;
    if (node.ends.length) last = node.joint;
    for (const next of node.neighbours) {
      if (before.has(next)) continue;
      before.set(next, id);
      reached.push(nodes.get(next)!.joint);
    }
  }
  const way: Splice[] = [];
  for (let at: PartId | null = last.id; at; at = before.get(at) ?? null) way.unshift(nodes.get(at)!.joint);
  return { reached, way };
}
