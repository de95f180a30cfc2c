import { mendAll } from "../findings/mend-all.ts";
import { stepFinding, toWorstFinding } from "../findings/standing.ts";
import { openDialog } from "../shell/dialogs.ts";
import type { Editor } from "../state/store.ts";
import { register } from "./command.ts";

const certain = (editor: Editor): number =>
  editor.getState().derived.findings.filter(({ fix, waiver }) => fix && !waiver).length;
const isAnyOpen = (editor: Editor): boolean =>
  editor.getState().derived.findings.some(({ waiver }) => !waiver);

/** What can be done with the findings as a whole. */
export function registerFindingsCommands(): void {
  register(
    {
      id: "next-finding",
      name: "Go to the next finding",
      group: "check",
      keys: ["."],
      enabled: isAnyOpen,
      run: (editor) => stepFinding(editor, 1),
    },
    {
      id: "finding-before",
      name: "Go to the finding before",
      group: "check",
      keys: [","],
      enabled: isAnyOpen,
      run: (editor) => stepFinding(editor, -1),
    },
    {
      id: "worst-finding",
      name: "Go to the worst finding",
      group: "check",
      keys: [],
      enabled: isAnyOpen,
      run: toWorstFinding,
    },
    {
      id: "mend-all",
      name: (editor) => `Mend what is certain (${certain(editor)})`,
      group: "check",
      keys: [],
      enabled: (editor) => certain(editor) > 0,
      run: mendAll,
    },
    {
      id: "rule-book",
      name: "Open the rule book…",
      group: "check",
      keys: [],
      run: () => openDialog({ kind: "rules", rule: null }),
    },
    {
      id: "profile",
      name: "Choose by which books it is checked…",
      group: "check",
      keys: [],
      run: () => openDialog({ kind: "profile" }),
    },
  );
}
