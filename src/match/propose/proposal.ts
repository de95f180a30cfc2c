/** Leads are named by `Lead.name` throughout. */
export type Join = {
  readonly left: string;
  readonly right: string;
  /** The function of the vocabulary that both carry; "unknown" where only the wording agrees. */
  readonly function: string;
  /** 0 to 1. */
  readonly confidence: number;
  /** In words, for a person: "both are the switched feed; the charts' colours differ: RD here, YE there". */
  readonly why: string;
  /** Warnings a person must see with it: a colour that means something else on the other side, an overload. */
  readonly traps: readonly string[];
};

/** Leads that may belong together; a person decides. One side may have several candidates, or both. */
export type Question = {
  readonly left: readonly string[];
  readonly right: readonly string[];
  readonly why: string;
};

/** One lead that is joined to several: a splice of so many ends. */
export type Splice = {
  readonly function: string;
  readonly left: readonly string[];
  readonly right: readonly string[];
  readonly ends: number;
  /** What the takers draw together; `null` where a chart does not say. */
  readonly current_A: number | null;
};

/** A lead that something needs and that has found no partner. */
export type Missing = { readonly side: "left" | "right"; readonly lead: string; readonly why: string };

export type Proposal = {
  readonly joins: readonly Join[];
  readonly ask: readonly Question[];
  readonly splices: readonly Splice[];
  readonly capLeft: readonly string[];
  readonly capRight: readonly string[];
  readonly missing: readonly Missing[];
};
