import type { Chart, Lead } from "../chart.ts";
import type { Proposal } from "../propose/proposal.ts";

export type SideName = "left" | "right";
export type LeadRef = { readonly side: SideName; readonly lead: string };

/** Leads that are decided to be one joint: one of each side as a rule, more where a feed has several takers. */
export type Group = {
  readonly left: readonly string[];
  readonly right: readonly string[];
  /** How this joint is made; `null` as the others are. */
  readonly joint: string | null;
  /** Who decided it: the proposal was accepted, the person chose it, or the harness has it so already. */
  readonly from: "proposal" | "person" | "harness";
};

/** What else can be decided of a lead. `apart`: a person leaves it as it is. */
export type Fate = "capped" | "apart";
type Fates = Readonly<Record<string, Fate>>;

/**
 * Two charts, what is proposed of them, and what a person has decided. Plain data: it is kept as it is.
 * A lead is in one group, or has one fate, or is joined elsewhere, or is open; never two of these.
 */
export type Review = {
  readonly charts: Readonly<Record<SideName, Chart>>;
  readonly proposal: Proposal;
  readonly groups: readonly Group[];
  readonly fates: Readonly<Record<SideName, Fates>>;
  /** Leads that the harness joins to something that is neither of the two: to what, in words. */
  readonly elsewhere: Readonly<Record<SideName, Readonly<Record<string, string>>>>;
  /** Pairs that a person took apart: they are not proposed again. */
  readonly refused: readonly string[];
  /** How joints are made that say nothing else. */
  readonly joint: string;
};

export type Decided = Pick<Review, "groups" | "fates" | "elsewhere">;

export const NOTHING_DECIDED: Decided = {
  groups: [],
  fates: { left: {}, right: {} },
  elsewhere: { left: {}, right: {} },
};

export const NO_PROPOSAL: Proposal = {
  joins: [],
  ask: [],
  splices: [],
  capLeft: [],
  capRight: [],
  missing: [],
};

export const SIDES: readonly SideName[] = ["left", "right"];
export const otherSide = (side: SideName): SideName => (side === "left" ? "right" : "left");
export const keyOf = (ref: LeadRef): string => `${ref.side}:${ref.lead}`;
export const pairKey = (left: string, right: string): string => JSON.stringify([left, right]);

export function startReview(
  charts: Review["charts"],
  proposal: Proposal,
  joint: string,
  decided: Decided = NOTHING_DECIDED,
): Review {
  return { charts, proposal, refused: [], joint, ...decided };
}

type Index = {
  readonly leads: Readonly<Record<SideName, ReadonlyMap<string, Lead>>>;
  readonly groups: Readonly<Record<SideName, ReadonlyMap<string, Group>>>;
};
const leadMaps = new WeakMap<Chart, ReadonlyMap<string, Lead>>();
const indexes = new WeakMap<Review, Index>();

function indexOf(review: Review): Index {
  const made = indexes.get(review);
  if (made) return made;
  const leads = (chart: Chart) => {
    const map = leadMaps.get(chart) ?? new Map(chart.leads.map((lead) => [lead.name, lead]));
    leadMaps.set(chart, map);
    return map;
  };
  const groups = { left: new Map<string, Group>(), right: new Map<string, Group>() };
  for (const group of review.groups) {
    for (const side of SIDES) for (const name of group[side]) groups[side].set(name, group);
  }
  const index = { leads: { left: leads(review.charts.left), right: leads(review.charts.right) }, groups };
  indexes.set(review, index);
  return index;
}

export function leadOf(review: Review, { side, lead }: LeadRef): Lead | undefined {
  return indexOf(review).leads[side].get(lead);
}

export type LeadState = "joined" | Fate | "elsewhere" | "open";

export function groupOf(review: Review, { side, lead }: LeadRef): Group | undefined {
  return indexOf(review).groups[side].get(lead);
}

export function stateOf(review: Review, ref: LeadRef): LeadState {
  if (Object.hasOwn(review.elsewhere[ref.side], ref.lead)) return "elsewhere";
  if (groupOf(review, ref)) return "joined";
  return Object.hasOwn(review.fates[ref.side], ref.lead) ? review.fates[ref.side][ref.lead]! : "open";
}

const known = (review: Review, ref: LeadRef): boolean => leadOf(review, ref) !== undefined;

/** May be decided: the lead is there, and the harness has not joined it to something else. */
export function isFree(review: Review, ref: LeadRef): boolean {
  return known(review, ref) && !Object.hasOwn(review.elsewhere[ref.side], ref.lead);
}

/** Takes a lead out of whatever was decided of it. A joint that it leaves with one side only is no joint. */
export function release(review: Review, ref: LeadRef): Review {
  const groups = review.groups
    .map((group) => {
      if (!group[ref.side].includes(ref.lead)) return group;
      return { ...group, [ref.side]: group[ref.side].filter((name) => name !== ref.lead) } as Group;
    })
    .filter((group) => group.left.length > 0 && group.right.length > 0);
  const { [ref.lead]: gone, ...left } = review.fates[ref.side];
  if (gone === undefined) return { ...review, groups };
  return { ...review, groups, fates: { ...review.fates, [ref.side]: left } };
}

/**
 * Joins a lead with one of the other side. The lead leaves whatever it was in; where the other one is in a
 * joint already, it comes to that joint, which is then a splice of more ends.
 */
export function join(review: Review, lead: LeadRef, partner: LeadRef): Review {
  if (lead.side === partner.side || !isFree(review, lead) || !isFree(review, partner)) return review;
  const before = groupOf(review, partner);
  if (before?.[lead.side].includes(lead.lead)) return review;
  const freed = release(review, lead);
  const target = groupOf(freed, partner);
  const alone = { left: [] as string[], right: [] as string[], joint: null };
  const cleared = target ? freed : release(freed, partner);
  const base = target ?? alone;
  const joined: Group = {
    ...base,
    from: "person",
    [lead.side]: [...base[lead.side], lead.lead],
    [partner.side]: target ? base[partner.side] : [partner.lead],
  } as Group;
  const groups = target
    ? cleared.groups.map((group) => (group === target ? joined : group))
    : [...cleared.groups, joined];
  const made = new Set(pairsOf(joined));
  return { ...cleared, groups, refused: review.refused.filter((pair) => !made.has(pair)) };
}

export function pairsOf(group: Pick<Group, "left" | "right">): string[] {
  return group.left.flatMap((left) => group.right.map((right) => pairKey(left, right)));
}

/** Takes a joint apart; its pairs are not proposed again. */
export function unjoin(review: Review, group: Group): Review {
  if (!review.groups.includes(group)) return review;
  return {
    ...review,
    groups: review.groups.filter((one) => one !== group),
    refused: [...new Set([...review.refused, ...pairsOf(group)])],
  };
}

/** Says no to something that was proposed. */
export function refuse(review: Review, pair: Pick<Group, "left" | "right">): Review {
  return { ...review, refused: [...new Set([...review.refused, ...pairsOf(pair)])] };
}

/** Exchanges what two joints have on the right: the cure for a crossed pair. */
export function swap(review: Review, a: Group, b: Group): Review {
  if (a === b || !review.groups.includes(a) || !review.groups.includes(b)) return review;
  return {
    ...review,
    groups: review.groups.map((group) => {
      if (group === a) return { ...a, right: b.right, from: "person" };
      return group === b ? { ...b, right: a.right, from: "person" } : group;
    }),
  };
}

/** Caps a lead as a spare, or leaves it as it is on purpose. */
export function decide(review: Review, ref: LeadRef, fate: Fate): Review {
  if (!isFree(review, ref)) return review;
  const group = groupOf(review, ref);
  const freed = release(review, ref);
  return {
    ...freed,
    fates: { ...freed.fates, [ref.side]: { ...freed.fates[ref.side], [ref.lead]: fate } },
    // A lead that a person takes out of a joint is not to be proposed for it again.
    refused: group
      ? [
          ...new Set([
            ...freed.refused,
            ...pairsOf(group).filter((pair) => {
              const [left, right] = JSON.parse(pair) as [string, string];
              return (ref.side === "left" ? left : right) === ref.lead;
            }),
          ]),
        ]
      : freed.refused,
  };
}

/** How one joint is made; `null` as the others are. */
export function setJoint(review: Review, group: Group, joint: string | null): Review {
  if (group.joint === joint) return review;
  return { ...review, groups: review.groups.map((one) => (one === group ? { ...one, joint } : one)) };
}

/** How all joints are made, those too that had a way of their own. */
export function setAllJoints(review: Review, joint: string): Review {
  return {
    ...review,
    joint,
    groups: review.groups.map((one) => (one.joint ? { ...one, joint: null } : one)),
  };
}

/**
 * One lead run through, without a joint: of two leads at most one has a colour or a size of its own, and nobody
 * has asked for a joint there.
 */
export function runsThrough(review: Review, group: Pick<Group, "left" | "right" | "joint">): boolean {
  if (group.joint !== null || group.left.length + group.right.length !== 2) return false;
  const charted = SIDES.filter((side) => {
    const lead = leadOf(review, { side, lead: group[side][0]! });
    return lead !== undefined && (lead.colour !== null || lead.area_mm2 !== null);
  });
  return charted.length < 2;
}

/** One joint made of what was proposed; nothing where a lead of it is decided otherwise by now. */
export function acceptGroup(review: Review, pair: Pick<Group, "left" | "right">): Review {
  const refs = SIDES.flatMap((side) => pair[side].map((lead): LeadRef => ({ side, lead })));
  if (pair.left.length === 0 || pair.right.length === 0) return review;
  if (refs.some((ref) => !known(review, ref) || stateOf(review, ref) !== "open")) return review;
  const made: Group = { left: pair.left, right: pair.right, joint: null, from: "proposal" };
  return { ...review, groups: [...review.groups, made] };
}

/**
 * Other charts, or another proposal of them: what was decided of leads that are still there stays.
 * @param renamed names that leads had before, to the names they have now
 */
export function withCharts(
  review: Review,
  charts: Review["charts"],
  proposal: Proposal,
  renamed: Readonly<Record<SideName, ReadonlyMap<string, string>>>,
): Review {
  const names = {
    left: new Set(charts.left.leads.map((lead) => lead.name)),
    right: new Set(charts.right.leads.map((lead) => lead.name)),
  };
  const nameNow = (side: SideName, name: string): string | null => {
    const now = renamed[side].get(name) ?? name;
    return names[side].has(now) ? now : null;
  };
  const still = (side: SideName, list: readonly string[]): string[] =>
    list.flatMap((name) => nameNow(side, name) ?? []);
  const record = <T>(side: SideName, old: Readonly<Record<string, T>>): Record<string, T> =>
    Object.fromEntries(
      Object.entries(old).flatMap(([name, value]) => {
        const now = nameNow(side, name);
        return now === null ? [] : [[now, value] as const];
      }),
    );
  const both = <T>(old: Readonly<Record<SideName, Readonly<Record<string, T>>>>) => ({
    left: record("left", old.left),
    right: record("right", old.right),
  });
  return {
    charts,
    proposal,
    joint: review.joint,
    groups: review.groups
      .map((group) => ({ ...group, left: still("left", group.left), right: still("right", group.right) }))
      .filter((group) => group.left.length > 0 && group.right.length > 0),
    fates: both(review.fates),
    elsewhere: both(review.elsewhere),
    refused: review.refused.flatMap((pair) => {
      const [left, right] = JSON.parse(pair) as [string, string];
      const now = [nameNow("left", left), nameNow("right", right)] as const;
      return now[0] === null || now[1] === null ? [] : [pairKey(now[0], now[1])];
    }),
  };
}

/**
 * What a person had decided of the same two charts earlier, put on top of what the harness says now: where the
 * two disagree the harness holds, unless the person had taken that very joint apart.
 */
export function carryOver(fresh: Review, old: Review): Review {
  const undone = new Set(old.refused);
  let next: Review = {
    ...fresh,
    joint: old.joint,
    refused: [...new Set([...fresh.refused, ...old.refused])],
    groups: fresh.groups.filter((group) => !pairsOf(group).every((pair) => undone.has(pair))),
  };
  for (const group of old.groups) {
    const added = acceptGroup(next, group);
    if (added !== next)
      next = { ...added, groups: added.groups.map((one, at) => (at === next.groups.length ? group : one)) };
  }
  for (const side of SIDES) {
    for (const [lead, fate] of Object.entries(old.fates[side])) {
      if (stateOf(next, { side, lead }) === "open") next = decide(next, { side, lead }, fate);
    }
  }
  return next;
}
