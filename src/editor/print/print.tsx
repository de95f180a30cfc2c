import { useEffect, useMemo, useState } from "react";
import type { Harness } from "../../graph/harness.ts";
import { PAPER_KINDS, type PaperKind, type PaperOptions } from "../../sheets/papers.ts";
import { nameOf } from "../files/files-model.ts";
import { useFilesState } from "../files/use-files.ts";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog } from "../shell/dialogs.ts";
import type { Derived } from "../state/derive.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { type Made, makePdf, makePng, makeSvg, preview } from "./make-files.ts";
import { FirstPage } from "./preview.tsx";
import { fileStem, KIND_NAMES, type Sheet, sayPlan } from "./print-model.ts";
import "./print.css";

/** Chooses the paper and what goes on it, shows the first page, and saves. */
export default function Print() {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const derived = useEditor((state) => state.derived);
  const fileName = useFilesState((state) => state.fileName);
  const { sheet } = harness.settings;
  const [theme, setTheme] = useState<PaperOptions["theme"]>("print");
  const [which, setWhich] = useState<ReadonlySet<PaperKind>>(new Set(PAPER_KINDS));
  const [busy, setBusy] = useState("");
  const [said, setSaid] = useState("");
  const options: PaperOptions = useMemo(
    () => ({ ...sheet, theme, which: [...which], date: new Date() }),
    [sheet, theme, which],
  );
  const shown = usePreview(harness, derived, options);
  const setSheet = (changes: Partial<Sheet>) =>
    editor.getState().dispatch({ kind: "change-settings", changes: { sheet: { ...sheet, ...changes } } });
  const save = async (words: string, make: () => Promise<Made>) => {
    setBusy(words);
    setSaid("");
    try {
      const { blob, extension, warning } = await make();
      const name = `${fileStem(harness, nameOf(harness, fileName))}.${extension}`;
      download(blob, name);
      setSaid(`Saved ${name}. ${warning}`);
    } catch (error) {
      setSaid(`That could not be saved: ${(error as Error).message}`);
    } finally {
      setBusy("");
    }
  };
  const toggle = (kind: PaperKind) => {
    const next = new Set(which);
    if (!next.delete(kind)) next.add(kind);
    setWhich(next);
  };
  const none = which.size === 0;
  return (
    <Dialog heading="Print or save the diagram" onClose={closeDialog} wide>
      <div className="print">
        <div>
          <div className="print-fields">
            <Select
              name="Paper"
              value={sheet.size}
              values={["A4", "A3", "Letter", "Tabloid"]}
              onPick={(size) => setSheet({ size })}
              first
            />
            <Select
              name="Lies"
              value={sheet.orientation}
              values={["landscape", "portrait"]}
              onPick={(orientation) => setSheet({ orientation })}
            />
            <Select
              name="Diagram"
              value={sheet.fit}
              values={["one-page", "tiles"]}
              names={{ "one-page": "on one page", tiles: "over several pages" }}
              onPick={(fit) => setSheet({ fit })}
            />
            <Select
              name="Ink"
              value={theme}
              values={["print", "print-grey"]}
              names={{ print: "colour", "print-grey": "black and white" }}
              onPick={setTheme}
            />
          </div>
          <fieldset className="print-kinds">
            <legend>Papers</legend>
            {PAPER_KINDS.map((kind) => (
              <label key={kind} className="print-kind">
                <input type="checkbox" checked={which.has(kind)} onChange={() => toggle(kind)} />
                {KIND_NAMES[kind]}
              </label>
            ))}
          </fieldset>
          <p className="print-said" role="status">
            {none && "Choose at least one paper."}
            {shown && which.has("diagram") && sayPlan(shown.plan)}
            {shown && !none && ` ${shown.pageCount} ${shown.pageCount === 1 ? "page" : "pages"} in all.`}
          </p>
        </div>
        <div className="print-preview">{shown?.first && !none && <FirstPage page={shown.first} />}</div>
      </div>
      <p role="status" className="print-said">
        {busy || said}
      </p>
      <div className="sheet-buttons">
        <button
          type="button"
          className="button strong-button"
          disabled={busy !== "" || none}
          onClick={() =>
            save("Writing the papers…", () =>
              makePdf(harness, derived, options, (done) =>
                setBusy(`Writing the papers, ${Math.round(done * 100)} %…`),
              ),
            )
          }
        >
          Save PDF
        </button>
        <button
          type="button"
          className="button"
          disabled={busy !== ""}
          onClick={() => save("Drawing…", () => makeSvg(harness, derived, options))}
        >
          Save SVG
        </button>
        <button
          type="button"
          className="button"
          disabled={busy !== ""}
          onClick={() => save("Drawing…", () => makePng(harness, derived, options))}
        >
          Save PNG
        </button>
        <span className="print-words">SVG and PNG hold the diagram alone, at its own size.</span>
      </div>
    </Dialog>
  );
}

/** To the downloads: asking where would need the click that is long past when large papers are written. */
function download(blob: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Makes the preview after the dialog has been drawn, so that opening it never waits. */
function usePreview(harness: Harness, derived: Derived, options: PaperOptions) {
  const [shown, setShown] = useState<ReturnType<typeof preview> | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setShown(preview(harness, derived, options)), 30);
    return () => clearTimeout(timer);
  }, [harness, derived, options]);
  return shown;
}

function Select<T extends string>(props: {
  readonly name: string;
  readonly value: T;
  readonly values: readonly T[];
  readonly names?: Partial<Record<T, string>>;
  readonly onPick: (value: T) => void;
  readonly first?: boolean;
}) {
  return (
    <label className="print-field">
      {props.name}
      <select
        data-first={props.first ? "" : undefined}
        value={props.value}
        onChange={(event) => props.onPick(event.target.value as T)}
      >
        {props.values.map((value) => (
          <option key={value} value={value}>
            {props.names?.[value] ?? value}
          </option>
        ))}
      </select>
    </label>
  );
}
