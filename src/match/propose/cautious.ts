import { isPower } from "./kin.ts";
import type { Join, Proposal } from "./proposal.ts";

/** From here on a power lead may be accepted together with all others, unread. */
const SURE = 0.8;

/**
 * A proposal as it is put before a person who accepts all at once: a feed or ground whose wording is open is asked
 * about, with its likely partner, rather than taken along silently.
 */
export function cautious(proposal: Proposal): Proposal {
  const isOpen = (join: Join): boolean => join.confidence < SURE && isPower(join.function);
  const open = proposal.joins.filter(isOpen);
  if (open.length === 0) return proposal;
  const asked = open.map(({ left, right, why }) => ({
    left: [left],
    right: [right],
    why: `probably: ${why}`,
  }));
  return {
    ...proposal,
    joins: proposal.joins.filter((join) => !isOpen(join)),
    ask: [...proposal.ask, ...asked],
  };
}
