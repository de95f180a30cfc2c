import { useVirtualizer } from "@tanstack/react-virtual";
import { type CSSProperties, useDeferredValue, useEffect, useMemo, useRef, useState } from "react";
import type { WireId } from "../../graph/harness.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { Cells } from "./cells.tsx";
import { standAt } from "./range-model.ts";
import { arrangeRows, COLUMNS, columnName, nextSort, type Sort, sheetOf } from "./table-model.ts";
import { useGrid } from "./use-grid.ts";
import "./table.css";

/** A finger needs more room than a pointer. */
const rowHeight = (): number => (window.matchMedia("(pointer: coarse)").matches ? 44 : 28);
const TEMPLATE = COLUMNS.map(({ width }) => `${width}px`).join(" ");

/** Every wire of the harness, edited like a spreadsheet and always in step with the drawing. */
export default function WireTable() {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const traced = useEditor((state) => state.derived.traced);
  const selected = useEditor((state) => state.selection.wires);
  const [filter, setFilter] = useState("");
  const [sort, setSort] = useState<Sort>(null);
  const asked = useDeferredValue(filter);
  const sheet = useMemo(() => sheetOf(harness, traced), [harness, traced]);
  const rows = useMemo(() => arrangeRows(sheet, asked, sort), [sheet, asked, sort]);
  const [row] = useState(rowHeight);
  const scroller = useRef<HTMLDivElement>(null);
  const grid = useGrid({ editor, sheet, rows, scroller });
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => row,
    overscan: 12,
    // The head lies over the first row's place when a row is scrolled to.
    scrollPaddingStart: row + 4,
    scrollPaddingEnd: row,
  });
  const { standing, indexOf } = grid;
  const at = standing ? indexOf.get(standing.row) : undefined;
  useEffect(() => {
    if (at !== undefined) virtual.scrollToIndex(at, { align: "auto" });
  }, [at, virtual]);
  useSelectionFromOutside(selected, grid.ownSelection, indexOf, (wire) =>
    grid.stand(standAt(wire, standing?.column ?? 0), false),
  );
  const { sizes } = harness.settings;
  const all = Object.keys(harness.wires).length;
  return (
    <div className="table" style={{ "--row": `${row}px` } as CSSProperties}>
      <div className="table-bar">
        <input
          type="search"
          aria-label="Show only wires that hold"
          placeholder="Filter: X1, blue, feed…"
          value={filter}
          onChange={(event) => setFilter(event.target.value)}
        />
        <span className="table-count" role="status">
          {rows.length === all ? `${all} ${all === 1 ? "wire" : "wires"}` : `${rows.length} of ${all} wires`}
          {grid.badCount > 0 && `, ${grid.badCount} ${grid.badCount === 1 ? "cell" : "cells"} to put right`}
        </span>
        <button type="button" className="button small-button" onClick={grid.addWire}>
          Add a wire
        </button>
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: a virtualised grid cannot be a table element */}
      <div
        ref={scroller}
        className="table-scroll"
        role="grid"
        tabIndex={0}
        aria-label="Wires"
        aria-rowcount={rows.length + 1}
        aria-colcount={COLUMNS.length}
        aria-multiselectable="true"
        aria-activedescendant={
          standing && at !== undefined ? cellId(standing.row, standing.column) : undefined
        }
        onKeyDown={grid.onKeyDown}
        onFocus={grid.onFocus}
        onCopy={grid.onCopy}
        onCut={grid.onCut}
        onPaste={grid.onPaste}
      >
        {/* biome-ignore lint/a11y/useSemanticElements: see above */}
        <div role="rowgroup" className="table-head">
          {/* biome-ignore lint/a11y/useSemanticElements: see above */}
          {/* biome-ignore lint/a11y/useFocusableInteractive: the grid keeps the focus */}
          <div role="row" aria-rowindex={1} className="table-row" style={{ gridTemplateColumns: TEMPLATE }}>
            {COLUMNS.map((column, index) => (
              // biome-ignore lint/a11y/useSemanticElements: see above
              // biome-ignore lint/a11y/useFocusableInteractive: its button takes the focus
              <div
                key={column.id}
                role="columnheader"
                aria-colindex={index + 1}
                aria-sort={sort?.column !== column.id ? "none" : sort.down ? "descending" : "ascending"}
              >
                <button
                  type="button"
                  tabIndex={-1}
                  title={`Sort by ${columnName(column.id, sizes).toLowerCase()}`}
                  onClick={() => setSort(nextSort(sort, column.id))}
                >
                  {columnName(column.id, sizes)}
                  {sort?.column === column.id && <span aria-hidden="true">{sort.down ? " ↓" : " ↑"}</span>}
                </button>
              </div>
            ))}
          </div>
        </div>
        {/* biome-ignore lint/a11y/useSemanticElements: see above */}
        <div role="rowgroup" className="table-body" style={{ height: virtual.getTotalSize() }}>
          {virtual.getVirtualItems().map((item) => {
            const wire = harness.wires[rows[item.index]!];
            if (!wire) return null;
            return (
              <Cells
                key={wire.id}
                wire={wire}
                sheet={sheet}
                index={item.index}
                top={item.start}
                template={TEMPLATE}
                selected={selected.has(wire.id)}
                grid={grid}
              />
            );
          })}
        </div>
        {rows.length === 0 && (
          <p className="table-none">
            {all === 0
              ? "No wires yet. Drag from contact to contact on the drawing, or paste rows from a spreadsheet here."
              : "No wire holds that."}
          </p>
        )}
      </div>
    </div>
  );
}

export function cellId(wire: WireId, column: number): string {
  return `cell-${wire.replace(":", "-")}-${column}`;
}

/** Wires that were selected elsewhere bring their first row into sight. */
function useSelectionFromOutside(
  selected: ReadonlySet<WireId>,
  own: { readonly current: ReadonlySet<WireId> | null },
  indexOf: ReadonlyMap<WireId, number>,
  go: (wire: WireId) => void,
): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new selection moves the table
  useEffect(() => {
    if (selected.size === 0 || own.current === selected) return;
    for (const wire of selected) {
      if (indexOf.has(wire)) return go(wire);
    }
  }, [selected]);
}
