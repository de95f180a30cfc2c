import { type ClipboardEvent, type KeyboardEvent, type RefObject, useMemo, useRef, useState } from "react";
import type { Edit } from "../../graph/edits/edit.ts";
import type { WireId } from "../../graph/harness.ts";
import type { Editor } from "../state/store.ts";
import { fromTsv, isHeadRow, rangeText, toTsv } from "./clipboard.ts";
import { moved, moveOf, type Range, rangeOf, type Standing, standAt } from "./range-model.ts";
import { COLUMNS, type ColumnId, type Sheet } from "./table-model.ts";
import { type BadCell, type Block, writeCell, writeCells } from "./write-cells.ts";

export type Editing = { readonly wire: WireId; readonly column: ColumnId; readonly text: string };
export type Grid = ReturnType<typeof useGrid>;

const badKey = (wire: WireId, column: ColumnId): string => `${wire}/${column}`;

/** What the keyboard, the pointer and the clipboard do to the table. */
export function useGrid(props: {
  readonly editor: Editor;
  readonly sheet: Sheet;
  readonly rows: readonly WireId[];
  readonly scroller: RefObject<HTMLDivElement | null>;
}) {
  const { editor, sheet, rows, scroller } = props;
  const [standing, setStanding] = useState<Standing | null>(null);
  const [editing, setEditing] = useState<Editing | null>(null);
  const [bad, setBad] = useState<ReadonlyMap<string, BadCell>>(new Map());
  /** The selection this table made itself: it does not have to follow it. */
  const ownSelection = useRef<ReadonlySet<WireId> | null>(null);
  /** The field is being left on purpose: its blur says nothing new. */
  const leaving = useRef(false);
  const indexOf = useMemo(() => new Map(rows.map((id, index) => [id, index])), [rows]);
  const range: Range | null = standing ? rangeOf(standing, indexOf) : null;

  const selectRows = (wires: ReadonlySet<WireId>) => {
    ownSelection.current = wires;
    editor.getState().select({ wires });
  };

  /** Stands on a cell; `own` also selects the wires of the range. */
  const stand = (next: Standing, own = true) => {
    setStanding(next);
    if (!own) return;
    const covered = rangeOf(next, indexOf);
    if (covered) selectRows(new Set(rows.slice(covered.top, covered.bottom + 1)));
  };

  const forget = (wire: WireId, column: ColumnId) => {
    if (!bad.has(badKey(wire, column))) return;
    const left = new Map(bad);
    left.delete(badKey(wire, column));
    setBad(left);
  };

  const make = (edit: Edit | null): boolean => edit === null || editor.getState().dispatch(edit);

  const begin = (text?: string) => {
    const column = standing && COLUMNS[standing.column];
    if (!standing || !column || column.derived) return;
    const held = bad.get(badKey(standing.row, column.id));
    const wire = sheet.harness.wires[standing.row];
    if (!wire) return;
    const shown =
      held?.text ??
      rangeText(sheet, [standing.row], {
        top: 0,
        bottom: 0,
        left: standing.column,
        right: standing.column,
      })[0]![0]!;
    setEditing({ wire: standing.row, column: column.id, text: text ?? shown });
  };

  const toGrid = () => {
    leaving.current = true;
    scroller.current?.focus({ preventScroll: true });
    leaving.current = false;
  };

  /** Takes what was typed. A bad value stays in its cell with why. Returns whether it was taken. */
  const commit = (text: string): boolean => {
    if (!editing) return true;
    const { wire, column } = editing;
    const result = writeCell(sheet, wire, column, text);
    if (result !== null && "ok" in result) {
      setBad(new Map(bad).set(badKey(wire, column), { wire, column, text, why: result.why }));
      return false;
    }
    forget(wire, column);
    setEditing(null);
    return make(result);
  };

  const leave = () => {
    if (editing) forget(editing.wire, editing.column);
    setEditing(null);
    toGrid();
  };

  const write = (top: number, left: number, block: Block, name: string) => {
    const { edit, bad: refused, added } = writeCells(sheet, rows, top, left, block, name);
    if (!make(edit)) return;
    const next = new Map(bad);
    for (const cell of refused) next.set(badKey(cell.wire, cell.column), cell);
    setBad(next);
    const [first] = added;
    if (first && !standing) setStanding(standAt(first, 0));
    if (refused.length) {
      const words =
        refused.length === 1
          ? "One value was not taken and stays in its cell"
          : `${refused.length} values were not taken and stay in their cells`;
      editor.getState().say(`${words}: ${refused[0]!.why}`, "refused");
    }
  };

  const clear = () => {
    if (!range) return;
    const block = Array.from({ length: range.bottom - range.top + 1 }, () =>
      COLUMNS.slice(range.left, range.right + 1).map(({ id, derived }) =>
        derived || id === "number" ? null : "",
      ),
    );
    const kept = rangeText(sheet, rows, range);
    const texts = block.map((row, y) => row.map((text, x) => text ?? kept[y]![x]!));
    write(range.top, range.left, texts, "clear cells");
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (editing || event.target !== scroller.current) return;
    const mod = event.ctrlKey || event.metaKey;
    if (mod && ["c", "x", "v"].includes(event.key.toLowerCase())) return event.stopPropagation();
    const [first] = rows;
    if (!standing || !indexOf.has(standing.row)) {
      if (first && moveOf(event.key, mod, 1, 1)) {
        event.preventDefault();
        event.stopPropagation();
        stand(standAt(first, 0));
      }
      return;
    }
    const shown = scroller.current;
    const rowHeight = shown?.querySelector("[role=row]")?.clientHeight || 28;
    const page = Math.max(1, Math.floor((shown?.clientHeight ?? 280) / rowHeight) - 2);
    const move = moveOf(event.key, mod, page, rows.length);
    if (move) stand(moved(standing, rows, indexOf, move[0], move[1], event.shiftKey));
    else if (mod && event.key.toLowerCase() === "a") {
      stand({ row: rows[rows.length - 1]!, column: COLUMNS.length - 1, fromRow: first!, fromColumn: 0 });
    } else if (mod || event.altKey) return;
    else if (event.key === "Enter" || event.key === "F2") begin();
    else if (event.key === "Delete" || event.key === "Backspace") clear();
    else if (event.key === "Escape") {
      const column = COLUMNS[standing.column]!.id;
      if (!bad.has(badKey(standing.row, column))) return;
      forget(standing.row, column);
    } else if (event.key === "Tab") {
      const across = event.shiftKey ? -1 : 1;
      const column = standing.column + across;
      // At a row's end Tab goes on to what follows the table.
      if (column < 0 || column >= COLUMNS.length) return;
      stand(standAt(standing.row, column));
    } else if (event.key === " " && event.shiftKey) {
      stand({ ...standing, column: COLUMNS.length - 1, fromColumn: 0 });
    } else if (event.key.length === 1) begin(event.key);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  const fieldKey = (event: KeyboardEvent<HTMLInputElement>) => {
    if (!editing || !standing) return;
    event.stopPropagation();
    const { value } = event.currentTarget;
    if (event.key === "Escape") leave();
    else if (event.key === "Enter" || event.key === "Tab") {
      if (commit(value)) {
        const down = event.key === "Enter" ? (event.shiftKey ? -1 : 1) : 0;
        const across = event.key === "Tab" ? (event.shiftKey ? -1 : 1) : 0;
        stand(moved(standing, rows, indexOf, down, across, false));
        toGrid();
      }
    } else return;
    event.preventDefault();
  };

  const onCopy = (event: ClipboardEvent) => {
    if (editing || !range || event.target !== scroller.current) return false;
    event.preventDefault();
    event.clipboardData.setData("text/plain", toTsv(rangeText(sheet, rows, range)));
    return true;
  };

  const onCut = (event: ClipboardEvent) => {
    if (onCopy(event)) clear();
  };

  const onPaste = (event: ClipboardEvent) => {
    if (editing || event.target !== scroller.current) return;
    event.preventDefault();
    event.stopPropagation();
    let block = fromTsv(event.clipboardData.getData("text/plain"));
    const left = range?.left ?? 0;
    if (block[0] && isHeadRow(block[0], left)) block = block.slice(1);
    if (!block.length) return;
    const [only] = block.length === 1 && block[0]!.length === 1 ? block[0]! : [];
    if (only !== undefined && range) {
      // One value fills the whole range, as in a spreadsheet.
      const width = range.right - range.left + 1;
      block = Array.from({ length: range.bottom - range.top + 1 }, () => Array<string>(width).fill(only));
    }
    write(range?.top ?? rows.length, left, block, "paste into the wire table");
  };

  return {
    standing,
    editing,
    range,
    indexOf,
    ownSelection,
    badCount: bad.size,
    badAt: (wire: WireId, column: ColumnId) => bad.get(badKey(wire, column)),
    stand,
    fieldKey,
    onKeyDown,
    onCopy: (event: ClipboardEvent) => void onCopy(event),
    onCut,
    onPaste,
    onFocus: () => {
      const [first] = rows;
      if (!first) return;
      // A press on a cell, or a wire just added, focuses the grid as well: both are newer than this closure.
      const { wires } = editor.getState().history.present;
      setStanding((now) => (now && now.row in wires ? now : standAt(first, 0)));
    },
    /** A pointer pressed on a cell. */
    press(wire: WireId, column: number, how: { readonly extend: boolean; readonly add: boolean }) {
      if (editing?.wire === wire && editing.column === COLUMNS[column]?.id) return;
      // Before anything moves, the cell being edited takes its value or keeps it with why.
      if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
      if (how.add) {
        const wires = new Set(editor.getState().selection.wires);
        if (!wires.delete(wire)) wires.add(wire);
        setStanding(standAt(wire, column));
        selectRows(wires);
      } else if (how.extend && standing) stand({ ...standing, row: wire, column });
      else stand(standAt(wire, column));
      toGrid();
    },
    begin,
    /** The field lost the focus: what was typed is taken, or stays in the cell with why. */
    blur(text: string) {
      if (!leaving.current && !commit(text)) setEditing(null);
    },
    addWire() {
      const { edit, added } = writeCells(sheet, [], 0, 0, [["", "", "loose"]], "add wire");
      if (!make(edit)) return;
      const [wire] = added;
      if (wire) setStanding(standAt(wire, 2));
      toGrid();
    },
  };
}
