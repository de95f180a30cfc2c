import {
  acceptGroup,
  decide,
  type Group,
  groupOf,
  isFree,
  type LeadRef,
  leadOf,
  otherSide,
  pairKey,
  type Review,
  SIDES,
  type SideName,
  stateOf,
} from "./review.ts";

/** A joint that is proposed: a pair, or a splice of more ends. */
export type Offer = {
  readonly kind: "offer";
  readonly left: readonly string[];
  readonly right: readonly string[];
  readonly function: string;
  /** 0 to 1; `null` for a splice, whose proposal states none. */
  readonly confidence: number | null;
  readonly why: string;
  readonly traps: readonly string[];
  /** What the takers of a splice draw together, where the charts say. */
  readonly current_A: number | null;
};

export type Candidate = LeadRef & {
  /** It is in a joint already: choosing it makes a splice of more ends. */
  readonly taken: boolean;
};

/** One thing that the review shows, in one row. `key` stays the same while it is the same thing. */
export type Item = { readonly key: string } & (
  | { readonly kind: "missing"; readonly ref: LeadRef; readonly why: string }
  | {
      readonly kind: "question";
      readonly ref: LeadRef;
      readonly candidates: readonly Candidate[];
      readonly why: string;
    }
  | Offer
  | { readonly kind: "joined"; readonly group: Group; readonly offer: Offer | null }
  | { readonly kind: "offer-cap" | "capped" | "open" | "asked" | "apart" | "unused"; readonly ref: LeadRef }
  | { readonly kind: "elsewhere"; readonly ref: LeadRef; readonly words: string }
);

export type SectionName = "missing" | "questions" | "joins" | "caps" | "rest";
export type Sections = Readonly<Record<SectionName, readonly Item[]>>;
export const SECTIONS: readonly SectionName[] = ["missing", "questions", "joins", "caps", "rest"];

/**
 * Everything that the review shows, by section. Each lead of both charts stands in exactly one item as its
 * subject; as a candidate of a question it may stand in more.
 */
export function sectionsOf(review: Review): Sections {
  const sections: Record<SectionName, Item[]> = { missing: [], questions: [], joins: [], caps: [], rest: [] };
  const shown = new Set<string>();
  const show = (section: SectionName, item: Item, refs: readonly LeadRef[]) => {
    sections[section].push(item);
    for (const ref of refs) shown.add(`${ref.side}:${ref.lead}`);
  };
  const offers = offersOf(review);
  const proposed = allOffers(review);
  for (const group of review.groups) {
    const offer = proposed.find((one) => sameLeads(one, group)) ?? null;
    show("joins", { kind: "joined", key: joinKey(group), group, offer }, refsOf(group));
  }
  for (const offer of offers) show("joins", { ...offer, key: joinKey(offer) }, refsOf(offer));
  const free = (ref: LeadRef) => !shown.has(`${ref.side}:${ref.lead}`) && stateOf(review, ref) === "open";
  const asked = new Set<string>();
  for (const { ref, candidates, why } of questionsOf(review)) {
    if (!free(ref)) continue;
    for (const one of candidates) asked.add(`${one.side}:${one.lead}`);
    show("questions", { kind: "question", key: `?${ref.side}:${ref.lead}`, ref, candidates, why }, [ref]);
  }
  for (const { side, lead, why } of review.proposal.missing) {
    const ref: LeadRef = { side, lead };
    if (leadOf(review, ref) && free(ref))
      show("missing", { kind: "missing", key: `!${side}:${lead}`, ref, why }, [ref]);
  }
  for (const side of SIDES) {
    const offered = sparesOf(review, side);
    for (const { name, isUnused } of review.charts[side].leads) {
      const ref: LeadRef = { side, lead: name };
      if (shown.has(`${side}:${name}`)) continue;
      const key = `.${side}:${name}`;
      const state = stateOf(review, ref);
      if (state === "elsewhere") {
        const words = review.elsewhere[side][name]!;
        sections.rest.push({ kind: "elsewhere", key, ref, words });
      } else if (state === "capped") sections.caps.push({ kind: "capped", key, ref });
      else if (state === "apart") sections.rest.push({ kind: "apart", key, ref });
      else if (asked.has(`${side}:${name}`)) sections.rest.push({ kind: "asked", key, ref });
      else if (offered.has(name)) sections.caps.push({ kind: "offer-cap", key, ref });
      else sections.rest.push({ kind: isUnused ? "unused" : "open", key, ref });
    }
  }
  return inChartOrder(review, sections);
}

/** The order of a chart is the order of a housing: rows stand where a person with the chart in hand looks. */
function inChartOrder(review: Review, sections: Record<SectionName, Item[]>): Sections {
  const places = new Map<string, number>();
  for (const side of SIDES) {
    for (const [index, { name }] of review.charts[side].leads.entries()) {
      places.set(`${side}:${name}`, side === "left" ? index : 100_000 + index);
    }
  }
  const placeOf = (item: Item): number => {
    const [first] = subjectsOf(item);
    return first ? (places.get(`${first.side}:${first.lead}`) ?? 0) : 0;
  };
  for (const name of SECTIONS) sections[name].sort((a, b) => placeOf(a) - placeOf(b));
  return sections;
}

/** The leads that an item is about; for a question the one that is asked about. */
export function subjectsOf(item: Item): readonly LeadRef[] {
  if (item.kind === "joined") return refsOf(item.group);
  return item.kind === "offer" ? refsOf(item) : [item.ref];
}

export function refsOf(pair: Pick<Group, "left" | "right">): readonly LeadRef[] {
  return SIDES.flatMap((side) => pair[side].map((lead): LeadRef => ({ side, lead })));
}

/** One key for a joint while it is proposed and when it is made, so that the row stays where it is. */
export function joinKey(pair: Pick<Group, "left" | "right">): string {
  return `=${JSON.stringify([pair.left, pair.right])}`;
}

function sameLeads(a: Pick<Group, "left" | "right">, b: Pick<Group, "left" | "right">): boolean {
  return SIDES.every((side) => {
    const names = new Set(a[side]);
    return names.size === b[side].length && b[side].every((name) => names.has(name));
  });
}

function allOffers({ proposal }: Review): readonly Offer[] {
  return [
    ...proposal.splices.map(
      ({ left, right, function: name, current_A }): Offer => ({
        kind: "offer",
        left,
        right,
        function: name,
        confidence: null,
        why: "One lead goes to several.",
        traps: [],
        current_A,
      }),
    ),
    ...proposal.joins.map(
      ({ left, right, ...rest }): Offer => ({
        kind: "offer",
        left: [left],
        right: [right],
        current_A: null,
        ...rest,
      }),
    ),
  ];
}

/**
 * What is proposed and still possible: every lead of it open, and no pair of it refused. A lead that is part
 * of a splice and of a join is offered once, with the splice.
 */
export function offersOf(review: Review): readonly Offer[] {
  const refused = new Set(review.refused);
  const used = new Set<string>();
  const offers: Offer[] = [];
  for (const offer of allOffers(review)) {
    const refs = refsOf(offer);
    if (offer.left.length === 0 || offer.right.length === 0) continue;
    if (refs.some((ref) => !leadOf(review, ref) || stateOf(review, ref) !== "open")) continue;
    if (refs.some((ref) => used.has(`${ref.side}:${ref.lead}`))) continue;
    if (offer.left.some((left) => offer.right.some((right) => refused.has(pairKey(left, right))))) continue;
    for (const ref of refs) used.add(`${ref.side}:${ref.lead}`);
    offers.push(offer);
  }
  return offers;
}

type Asked = { readonly ref: LeadRef; readonly candidates: readonly Candidate[]; readonly why: string };

/**
 * The questions that are still open, one for each lead that is asked about: the side with fewer leads. A
 * candidate that is joined by now comes after those that are free.
 */
export function questionsOf(review: Review): readonly Asked[] {
  const asked: Asked[] = [];
  const seen = new Set<string>();
  for (const { left, right, why } of review.proposal.ask) {
    const side: SideName =
      left.length > 0 && (right.length === 0 || left.length <= right.length) ? "left" : "right";
    const [subjects, others] = side === "left" ? [left, right] : [right, left];
    for (const lead of subjects) {
      const ref: LeadRef = { side, lead };
      if (!leadOf(review, ref) || stateOf(review, ref) !== "open" || seen.has(`${side}:${lead}`)) continue;
      const candidates = others
        .map((name): Candidate => {
          const other = { side: otherSide(side), lead: name };
          return { ...other, taken: groupOf(review, other) !== undefined };
        })
        .filter((one) => isFree(review, one) && (one.taken || stateOf(review, one) === "open"));
      if (candidates.length === 0) continue;
      seen.add(`${side}:${lead}`);
      asked.push({ ref, why, candidates: candidates.sort((a, b) => Number(a.taken) - Number(b.taken)) });
    }
  }
  return asked;
}

/** Leads that are to be capped unless something is found for them: what is left over, and what a question left. */
function sparesOf({ proposal }: Review, side: SideName): ReadonlySet<string> {
  const needed = new Set(proposal.missing.filter((one) => one.side === side).map((one) => one.lead));
  const left = side === "left" ? proposal.capLeft : proposal.capRight;
  const asked = proposal.ask.flatMap((question) => question[side]);
  return new Set([...left, ...asked].filter((name) => !needed.has(name)));
}

/** How much there is of each, for buttons that say what they will do. */
export function countOf(sections: Sections) {
  const of = (kind: Item["kind"]) =>
    SECTIONS.reduce((sum, name) => sum + sections[name].filter((item) => item.kind === kind).length, 0);
  return {
    missing: sections.missing.length,
    questions: sections.questions.length,
    offers: of("offer"),
    offeredCaps: of("offer-cap"),
    joined: of("joined"),
    capped: of("capped"),
    apart: of("apart"),
    open: of("open"),
  };
}

/** Accepts every joint that is proposed and every cap; questions and needed leads without a partner stay. */
export function acceptCertain(review: Review): Review {
  let next = review;
  for (const offer of offersOf(review)) next = acceptGroup(next, offer);
  for (const item of sectionsOf(next).caps) {
    if (item.kind === "offer-cap") next = decide(next, item.ref, "capped");
  }
  return next;
}
