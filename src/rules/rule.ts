import type { Edit, Refused } from "../graph/edits/edit.ts";
import type { Waiver } from "../graph/harness.ts";
import type { Context } from "./context.ts";
import type { Facet } from "./facets.ts";
import type { GroupId } from "./groups.ts";

/**
 * What hurts most first. Danger: fire, injury, the law. Fault: will not work, or something breaks.
 * Weak: works badly, or not for long. Tidy: works; the next person will curse.
 */
export const SEVERITIES = ["danger", "fault", "weak", "tidy"] as const;
export type Severity = (typeof SEVERITIES)[number];

/** What a finding is about: a contact, a wire or a part. The same shape as a waiver's. */
export type About = Waiver["about"][number];

/** An ordinary edit that cures the finding; `label` says what will happen. */
export type Fix = { readonly label: string; readonly edit: Edit };

/** What a rule yields. */
export type Found = {
  /** What is wrong, with designations, colours and numbers; where books disagree, by which of them. */
  readonly message: string;
  /** What will happen if it stays. */
  readonly consequence: string;
  /** What to do. */
  readonly remedy: string;
  /** The first of them is the place that the finding is shown at. */
  readonly about: readonly About[];
  /** Only where one cure is certain. */
  readonly fix?: Fix | null;
  /** Cures of which a person has to choose, or that rest on a guess; shown on the drawing before they are taken. */
  readonly suggestions?: readonly Fix[];
  /** Where a finding is better or worse than the rule's own word for it. */
  readonly severity?: Severity;
};

export type RuleMeta = {
  /** The name of its file, its test and its row in a waiver. */
  readonly id: string;
  readonly group: GroupId;
  readonly severity: Severity;
  /** What is so in a sound harness, one sentence. */
  readonly summary: string;
  /** The published source; a habit of the trade says "common practice, no source", recollection "from memory". */
  readonly source: string;
  /** What of the document it reads. Where none of it has changed, it is not asked again. */
  readonly reads: readonly Facet[];
  /** Whether it ever offers a fix or a suggestion. */
  readonly fixable: boolean;
  /**
   * Rules whose findings follow from one of this rule's where both touch a circuit or a box in common: they are
   * shown under it, for its cure cures them too.
   */
  readonly brings?: readonly string[];
};

export type Rule = {
  readonly meta: RuleMeta;
  readonly check: (context: Context) => Iterable<Found>;
  /** What there is to say of the findings themselves, when all rules have been asked. */
  readonly review?: (context: Context, findings: readonly Finding[]) => Iterable<Found>;
};

export type Finding = Required<Found> & {
  readonly rule: string;
  readonly group: GroupId;
  /** The same for the same trouble, whatever else is edited: the rule and what it is about. */
  readonly key: string;
  /** The waiver that a person has given it, with its reason. */
  readonly waiver: Waiver | null;
  /** The key of the finding that this one follows from; `null` where it stands by itself. */
  readonly under: string | null;
};

export function defineRule(rule: Rule): Rule {
  return rule;
}

/**
 * A fix whose edit is made when somebody first asks for it: a harness with a thousand spares would otherwise
 * pay for a thousand edits at every check. Offer one only where the edit cannot be refused.
 */
export function fixWith(label: string, make: () => Edit | Refused): Fix {
  let made: Edit | null = null;
  return {
    label,
    get edit() {
      if (made) return made;
      const edit = make();
      if ("ok" in edit) throw new Error(`the fix "${label}" cannot be made: ${edit.why}`);
      made = edit;
      return made;
    },
  };
}
