import { type KeyboardEvent, useEffect, useLayoutEffect, useRef } from "react";
import { COLOUR_NAMES } from "../../catalogue/colours.ts";
import { FUNCTIONS } from "../../catalogue/functions.ts";
import { useEditorStore } from "../state/use-editor.ts";
import { canvasOf } from "./canvas-store.ts";
import { commitField, type Field, fieldBeside } from "./fields-model.ts";
import type { Sight } from "./sight.ts";

/** Smaller than this a text could not be read while it is typed. */
const LEAST_TEXT = 13;

/** A text of the drawing being edited where it stands. Enter keeps it, Escape restores it, Tab goes on to the next. */
export function FieldInput({ field, sight }: { readonly field: Field; readonly sight: Sight }) {
  const editor = useEditorStore();
  const canvas = canvasOf(editor);
  const input = useRef<HTMLInputElement>(null);
  const done = useRef(false);
  useLayoutEffect(() => {
    sight.reveal(field.box);
    input.current?.focus({ preventScroll: true });
    input.current?.select();
    const put = () => {
      const element = input.current;
      if (!element) return;
      const { zoom } = sight.view;
      const at = sight.toScreen(field.box);
      const height = Math.max(24, field.box.height * zoom);
      element.style.left = `${at.x - 1}px`;
      element.style.top = `${at.y - (height - field.box.height * zoom) / 2}px`;
      element.style.width = `${Math.max(64, field.box.width * zoom + 2)}px`;
      element.style.height = `${height}px`;
      element.style.fontSize = `${Math.max(LEAST_TEXT, field.size * zoom)}px`;
    };
    return sight.listen(put);
  }, [field, sight]);
  useEffect(() => {
    done.current = false;
  }, []);

  const commit = (step: -1 | 0 | 1): void => {
    if (done.current) return;
    const { history, dispatch } = editor.getState();
    const change = commitField(history.present, field, input.current?.value ?? field.text);
    if (change && !dispatch(change)) {
      // What was typed stays in the field: the reason has been said, and nobody types it twice.
      input.current?.focus();
      return;
    }
    done.current = true;
    const next = step === 0 ? null : fieldBeside(editor.getState().derived.scene, field, step);
    canvas.setState({ field: next });
    if (!next) sight.focus();
  };
  const leave = (): void => {
    done.current = true;
    canvas.setState({ field: null });
    sight.focus();
  };
  const press = (event: KeyboardEvent<HTMLInputElement>): void => {
    if (event.key === "Enter") commit(0);
    else if (event.key === "Escape") leave();
    else if (event.key === "Tab") commit(event.shiftKey ? -1 : 1);
    else {
      event.stopPropagation();
      return;
    }
    event.preventDefault();
    event.stopPropagation();
  };
  const { what } = field.at;
  const list =
    what === "function"
      ? "canvas-functions"
      : what === "lead" || what === "colour"
        ? "canvas-colours"
        : undefined;
  return (
    <>
      <input
        ref={input}
        className="field-input"
        aria-label={field.name}
        defaultValue={field.text}
        list={list}
        maxLength={400}
        style={{ fontWeight: field.bold ? 700 : 400 }}
        autoComplete="off"
        spellCheck={false}
        onKeyDown={press}
        onBlur={() => commitOnBlur()}
      />
      {list === "canvas-functions" && (
        <datalist id={list}>
          {FUNCTIONS.filter(({ id }) => id !== "unknown").map(({ id, name }) => (
            <option key={id} value={name} />
          ))}
        </datalist>
      )}
      {list === "canvas-colours" && (
        <datalist id={list}>
          {Object.entries(COLOUR_NAMES).map(([code, name]) => (
            <option key={code} value={code}>
              {name}
            </option>
          ))}
        </datalist>
      )}
    </>
  );

  /** A press elsewhere keeps what was typed where it can be kept, and never holds the person back. */
  function commitOnBlur(): void {
    if (done.current) return;
    done.current = true;
    const { history, dispatch } = editor.getState();
    const change = commitField(history.present, field, input.current?.value ?? field.text);
    if (change) dispatch(change);
    if (canvas.getState().field === field) canvas.setState({ field: null });
  }
}
