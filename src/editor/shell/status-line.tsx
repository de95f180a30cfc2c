import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { Notices } from "./notices.tsx";
import { traceWords } from "./trace-words.ts";

/** The foot of the page: what the thing pointed at joins, how much there is, and in which units. */
export function StatusLine() {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const traced = useEditor((state) => state.derived.traced);
  const pointed = useEditor((state) => state.pointed);
  const selection = useEditor((state) => state.selection);
  const wireTable = useEditor((state) => state.wireTable);
  const words = traceWords(harness, traced, pointed, selection);
  const { systemVoltage_V, sizes } = harness.settings;
  const parts = Object.keys(harness.parts).length;
  const wires = Object.keys(harness.wires).length;
  return (
    <footer className="status">
      <p className="status-words" aria-live="off">
        {words || `${parts} ${parts === 1 ? "part" : "parts"}, ${wires} ${wires === 1 ? "wire" : "wires"}`}
      </p>
      <Notices />
      <span className="status-units wide-only">
        {systemVoltage_V} V, {sizes === "awg" ? "AWG" : "mm²"}
      </span>
      <button
        type="button"
        className="button quiet-button small-button wide-only"
        aria-pressed={wireTable}
        onClick={() => editor.getState().set({ wireTable: !wireTable })}
      >
        Wire table
      </button>
    </footer>
  );
}
