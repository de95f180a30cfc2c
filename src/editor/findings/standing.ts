import { createStore } from "zustand/vanilla";
import { showOnCanvas } from "../canvas/show.ts";
import type { Editor } from "../state/store.ts";
import { partFindings, withFollowing } from "./findings-model.ts";

/** Which finding a person has stepped to. */
export const standing = createStore<{ readonly key: string | null }>()(() => ({ key: null }));

/** Goes to the next finding in the list, or the one before; past the end it begins anew. */
export function stepFinding(editor: Editor, by: 1 | -1): void {
  const { derived, set, say } = editor.getState();
  const roots = withFollowing(partFindings(derived.findings).open);
  if (!roots.length) {
    say("Nothing is found.");
    return;
  }
  const from = roots.findIndex(({ finding }) => finding.key === standing.getState().key);
  const next = from < 0 ? (by === 1 ? 0 : roots.length - 1) : (from + by + roots.length) % roots.length;
  const { finding } = roots[next]!;
  set({ panel: "findings" });
  standing.setState({ key: finding.key });
  showOnCanvas(editor, finding.about);
  // The list beside the drawing has all of it; what is said is enough to know whether to read on.
  const [first = finding.message] = finding.message.split(/(?<=\.) /);
  say(`${next + 1} of ${roots.length}, ${finding.severity}: ${first}`);
}

/** Puts the findings into order, and goes to the one that hurts most. */
export function toWorstFinding(editor: Editor): void {
  editor.getState().sortFindings();
  standing.setState({ key: null });
  stepFinding(editor, 1);
}
