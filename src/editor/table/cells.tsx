import { useEffect, useRef } from "react";
import type { ColourCode, Wire } from "../../graph/harness.ts";
import { Swatch } from "../shell/swatch.tsx";
import { COLUMNS, cellText, colourTitle, type Sheet } from "./table-model.ts";
import type { Grid } from "./use-grid.ts";
import { cellId } from "./wire-table.tsx";

/** One wire's row. */
export function Cells(props: {
  readonly wire: Wire;
  readonly sheet: Sheet;
  readonly index: number;
  readonly top: number;
  readonly template: string;
  readonly selected: boolean;
  readonly grid: Grid;
}) {
  const { wire, sheet, index, grid } = props;
  const { range, standing, editing } = grid;
  const inRows = range !== null && index >= range.top && index <= range.bottom;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a virtualised row cannot be a table row
    // biome-ignore lint/a11y/useFocusableInteractive: the grid keeps the focus
    <div
      role="row"
      aria-rowindex={index + 2}
      aria-selected={props.selected}
      className="table-row"
      style={{ gridTemplateColumns: props.template, transform: `translateY(${props.top}px)` }}
    >
      {COLUMNS.map((column, at) => {
        const isEdited = editing?.wire === wire.id && editing.column === column.id;
        const bad = grid.badAt(wire.id, column.id);
        const here = standing?.row === wire.id && standing.column === at;
        const inRange = inRows && range !== null && at >= range.left && at <= range.right;
        const text = bad?.text ?? cellText(sheet, wire, column.id);
        return (
          // biome-ignore lint/a11y/useSemanticElements: see above
          // biome-ignore lint/a11y/useFocusableInteractive: see above
          // biome-ignore lint/a11y/useKeyWithClickEvents: the grid has the keys
          <div
            key={column.id}
            id={cellId(wire.id, at)}
            role="gridcell"
            aria-colindex={at + 1}
            aria-selected={inRange}
            aria-readonly={column.derived === true}
            aria-invalid={bad !== undefined}
            aria-description={bad?.why}
            data-column={column.id}
            className={[
              "cell",
              column.derived && "cell-derived",
              (column.id === "size" || column.id === "length") && "cell-figure",
              inRange && "cell-range",
              here && "cell-here",
              bad && "cell-bad",
            ]
              .filter(Boolean)
              .join(" ")}
            title={bad?.why ?? (isColour(column.id) ? colourTitle(text) : text)}
            onPointerDown={(event) => {
              // A finger may be about to scroll: it presses with the click that follows.
              if (event.button !== 0 || isEdited || event.pointerType === "touch") return;
              event.preventDefault();
              grid.press(wire.id, at, {
                extend: event.shiftKey,
                add: event.ctrlKey || event.metaKey,
              });
            }}
            onPointerEnter={(event) => {
              if (event.buttons === 1 && event.pointerType === "mouse" && standing && !editing) {
                grid.stand({ ...standing, row: wire.id, column: at });
              }
            }}
            onClick={(event) => {
              const { pointerType } = event.nativeEvent as PointerEvent;
              if (pointerType === "touch" && !isEdited) {
                grid.press(wire.id, at, { extend: false, add: false });
              }
            }}
            onDoubleClick={() => grid.begin()}
          >
            {isEdited ? (
              <CellField
                grid={grid}
                text={editing.text}
                label={`${wire.designation} ${column.id}`}
                why={bad?.why}
              />
            ) : isColour(column.id) && text && !bad ? (
              <ColourCell text={text} />
            ) : (
              text
            )}
          </div>
        );
      })}
    </div>
  );
}

const isColour = (id: string): boolean => id === "base" || id === "tracer";

function ColourCell({ text }: { readonly text: string }) {
  return (
    <>
      <Swatch colour={{ base: text as ColourCode, tracer: null }} withoutLetters />
      {text}
    </>
  );
}

function CellField(props: {
  readonly grid: Grid;
  readonly text: string;
  readonly label: string;
  readonly why: string | undefined;
}) {
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const input = field.current;
    input?.focus();
    // Typing over replaces; opening to edit puts the caret at the end.
    input?.setSelectionRange(input.value.length, input.value.length);
  }, []);
  return (
    <>
      <input
        ref={field}
        className="cell-field"
        aria-label={props.label}
        aria-invalid={props.why !== undefined}
        defaultValue={props.text}
        autoComplete="off"
        spellCheck={false}
        onKeyDown={props.grid.fieldKey}
        onBlur={(event) => props.grid.blur(event.currentTarget.value)}
      />
      {props.why && (
        <span className="cell-why" role="alert">
          {props.why}
        </span>
      )}
    </>
  );
}
