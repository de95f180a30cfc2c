import { functionOf, isGround } from "../../catalogue/functions.ts";
import type { InContext } from "./context.ts";
import { kinship } from "./kin.ts";
import type { Pair } from "./pairs.ts";
import type { Splice } from "./proposal.ts";
import type { Made, Sides } from "./propose.ts";
import type { Roles } from "./role.ts";

/** Functions of which one lead may go to several takers: a signal that is read, a supply that is shared. */
function mayBranch(name: string): boolean {
  const { group } = functionOf(name);
  return (
    group === "feed" || group === "ground" || group === "lighting" || group === "control" || group === "data"
  );
}

/**
 * Leads that found no partner of their own and belong to one that is joined already: two accessories on one
 * switched feed, three grounds on one. Of several feeds to one taker only one is used, for joining two feeds ties two
 * fuses together; where it is not known which side gives, a person is asked.
 */
export function moreTakers(
  pairs: readonly Pair[],
  made: readonly Made[],
  sides: Sides,
  roles: Roles,
): { readonly joined: readonly Made[]; readonly asked: readonly Pair[] } {
  const takenLeft = new Map(made.map(({ pair }) => [pair.left, pair]));
  const takenRight = new Map(made.map(({ pair }) => [pair.right, pair]));
  const joined: Made[] = [];
  const asked: Pair[] = [];
  const best = new Map<string, Pair>();
  for (const pair of pairs) {
    if (pair.veto !== null || !mayBranch(pair.function)) continue;
    const leftFree = !takenLeft.has(pair.left);
    const rightFree = !takenRight.has(pair.right);
    if (leftFree === rightFree) continue;
    const key = leftFree ? `l${pair.left}` : `r${pair.right}`;
    const old = best.get(key);
    if (!old || pair.score > old.score + 1e-9) best.set(key, pair);
  }
  for (const [key, pair] of best) {
    const free = key.startsWith("l") ? "left" : "right";
    const one = sides[free][pair[free]]!;
    const shared = sides[free === "left" ? "right" : "left"][pair[free === "left" ? "right" : "left"]]!;
    if (!one.reading.certain || !shared.reading.certain) continue;
    const [a] = one.reading.candidates;
    const [b] = shared.reading.candidates;
    const near = kinship(a!.function, b!.function);
    // Its own general ground may be left over; a particular one takes what the general one has to give.
    if (near < 0.79 || (near < 1 && isGround(a!.function) && b!.function !== "ground")) continue;
    const verdict = branchVerdict(pair.function, one, shared, roles[free]);
    if (verdict === "join") joined.push({ pair, confidence: near === 1 ? 0.92 : 0.82 });
    else if (verdict === "ask") asked.push(pair);
  }
  return { joined, asked };
}

/** Whether a further lead is a taker of the shared one. */
function branchVerdict(
  name: string,
  one: InContext,
  shared: InContext,
  role: "vehicle" | "equipment" | null,
): "join" | "ask" | "apart" {
  if (isGround(name) || functionOf(name).group === "data") return "join";
  if (one.lead.direction === "takes" || shared.lead.direction === "gives") return "join";
  if (one.lead.direction === "gives" || shared.lead.direction === "takes") return "apart";
  const { givenBy } = functionOf(name);
  if (role === null || givenBy === "either") return functionOf(name).group === "feed" ? "ask" : "join";
  return role === givenBy ? "apart" : "join";
}

/** Every lead that is joined to more than one, with its ends and what its takers draw together. */
export function splicesOf(made: readonly Made[], sides: Sides): readonly Splice[] {
  const groups: { lefts: Set<number>; rights: Set<number>; function: string }[] = [];
  for (const { pair } of made) {
    const near = groups.find((group) => group.lefts.has(pair.left) || group.rights.has(pair.right));
    if (!near) {
      groups.push({ lefts: new Set([pair.left]), rights: new Set([pair.right]), function: pair.function });
      continue;
    }
    near.lefts.add(pair.left);
    near.rights.add(pair.right);
  }
  return groups
    .filter(({ lefts, rights }) => lefts.size + rights.size > 2)
    .map(({ lefts, rights, function: name }) => {
      const left = [...lefts].map((index) => sides.left[index]!);
      const right = [...rights].map((index) => sides.right[index]!);
      return {
        function: name,
        left: left.map((one) => one.lead.name),
        right: right.map((one) => one.lead.name),
        ends: left.length + right.length,
        current_A: drawOf(left.length >= right.length ? left : right),
      };
    });
}

/** What several takers draw together; `null` as soon as one does not say. */
function drawOf(takers: readonly InContext[]): number | null {
  let sum = 0;
  for (const { lead } of takers) {
    if (lead.current_A === null) return null;
    sum += lead.current_A;
  }
  return Math.round(sum * 1000) / 1000;
}
