import { useEffect, useRef } from "react";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import type { Take } from "../../inspector/field-row.tsx";
import { FieldsList, makeEdit } from "../../inspector/fields-list.tsx";
import type { Editor } from "../../state/store.ts";
import { useEditor, useEditorStore } from "../../state/use-editor.ts";
import { basisEdit, basisFields, type Stater } from "./basis-model.ts";
import { Disclosure } from "./disclosure.tsx";
import { panelView } from "./panel-view.ts";

/** The field that somebody asked to be taken to; each asking is another object. */
const wanted = createStore<{ readonly field: string | null; readonly open: boolean }>()(() => ({
  field: null,
  open: false,
}));

/** Selects what states a value, opens its fields in the panel and puts the cursor in the one meant. */
export function goToField(editor: Editor, of: Stater, field: string): void {
  panelView.setState({ view: "selection" });
  editor
    .getState()
    .select(
      of === "harness" ? {} : "wire" in of ? { wires: new Set([of.wire]) } : { parts: new Set([of.part]) },
    );
  wanted.setState({ field, open: true });
}

/** What the figures of a thing rest on, to be stated here. */
export function Basis({ of }: { readonly of: Stater }) {
  const editor = useEditorStore();
  const harness = useEditor((state) => state.history.present);
  const { field, open } = useStore(wanted);
  const list = useRef<HTMLDivElement>(null);
  const fields = basisFields(harness, of);
  const place = fields.findIndex(({ key }) => key === field);
  useEffect(() => {
    if (field === null || place < 0) return;
    const inputs = list.current?.querySelectorAll<HTMLElement>("input, select");
    inputs?.[place]?.focus();
    wanted.setState({ field: null });
  }, [field, place]);
  if (fields.length === 0) return null;
  const take: Take = (one, value) => makeEdit(editor, basisEdit(harness, of, one.key, value));
  return (
    <Disclosure
      name="What they rest on"
      open={open}
      onOpen={(opened) => wanted.setState({ open: opened, field: null })}
    >
      <div ref={list}>
        <FieldsList owner={JSON.stringify(of)} fields={fields} take={take} />
      </div>
    </Disclosure>
  );
}
