import { nameOf } from "../files/files-model.ts";
import { useFilesState } from "../files/use-files.ts";
import { useEditor } from "../state/use-editor.ts";
import { CommandButton } from "./command-button.tsx";
import { CommandMenu } from "./command-menu.tsx";
import { openDialog } from "./dialogs.ts";
import { FindingsCount } from "./findings-count.tsx";

/** What the harness is called, whether it is kept, and what is done most. */
export function Header() {
  const harness = useEditor((state) => state.history.present);
  const fileName = useFilesState((state) => state.fileName);
  const name = nameOf(harness, fileName);
  return (
    <header className="header">
      <CommandMenu name="File" groups={["file"]} className="header-document">
        <span className="header-name">{name}</span>
        <span className="said-only">: file</span>
        <Chevron />
      </CommandMenu>
      <h1 className="said-only">{name}</h1>
      <KeptState />
      <div className="header-row">
        <CommandButton id="undo" className="icon-button">
          <Arrow back />
        </CommandButton>
        <CommandButton id="redo" className="icon-button">
          <Arrow />
        </CommandButton>
        <CommandMenu name="Add" groups={["add"]} className="wide-only">
          Add <Chevron />
        </CommandMenu>
        <CommandButton id="arrange" className="wide-only">
          Arrange
        </CommandButton>
        <CommandButton id="print" className="wide-only">
          Print
        </CommandButton>
      </div>
      <div className="header-row header-end">
        <FindingsCount />
        <button
          type="button"
          className="button"
          title="Everything that can be done, by name (/)"
          onClick={() => openDialog({ kind: "commands" })}
        >
          Do…
        </button>
      </div>
    </header>
  );
}

/** Whether the last edit is safe: in the browser at once, in a file when a person saves. */
function KeptState() {
  const keeping = useFilesState((state) => state.keeping);
  const why = useFilesState((state) => state.whyFailed);
  const inFile = useFilesState((state) => state.inFile);
  const fileName = useFilesState((state) => state.fileName);
  const present = useEditor((state) => state.history.present);
  const empty = Object.keys(present.parts).length === 0 && Object.keys(present.wires).length === 0;
  let words = "kept in this browser";
  if (keeping === "failed") words = `not kept: ${why}`;
  else if (keeping === "waiting") words = "keeping…";
  else if (keeping === "unedited") words = "";
  else if (fileName && inFile === present) words = "saved";
  else if (fileName) words = "kept in this browser, not yet in the file";
  else if (empty) words = "";
  return <span className={keeping === "failed" ? "kept kept-failed" : "kept"}>{words}</span>;
}

export function Chevron() {
  return (
    <svg viewBox="0 0 10 10" width="10" height="10" aria-hidden="true">
      <path d="M1.5 3.5 5 7l3.5-3.5" fill="none" stroke="currentColor" strokeWidth="1.5" />
    </svg>
  );
}

function Arrow(props: { readonly back?: boolean }) {
  return (
    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <path
        d="M3 6h7a3.5 3.5 0 0 1 0 7H6 M6 3 3 6l3 3"
        transform={props.back ? undefined : "matrix(-1 0 0 1 16 0)"}
        fill="none"
        stroke="currentColor"
        strokeWidth="1.5"
      />
    </svg>
  );
}
