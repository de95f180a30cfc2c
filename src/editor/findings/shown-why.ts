import type { Why } from "../../rules/why/why.ts";
import type { Derived } from "../state/derive.ts";
import type { EditorState } from "../state/store.ts";

const remembered = new WeakMap<Derived, { readonly finding: string; readonly why: Why }>();

/** The ways of the finding of which a person has asked why; list and drawing show the same. `null` where none is asked of. */
export function shownWhy({ why: finding, book, derived }: EditorState): Why | null {
  if (finding === null || !book) return null;
  const known = remembered.get(derived);
  if (known?.finding === finding) return known.why;
  const asked = derived.findings.find(({ key }) => key === finding);
  if (!asked) return null;
  const why = book.whyOf(derived.harness, derived.traced, asked);
  remembered.set(derived, { finding, why });
  return why;
}
