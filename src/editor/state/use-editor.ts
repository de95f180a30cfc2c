import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { Editor, EditorActions, EditorState } from "./store.ts";

export const EditorContext = createContext<Editor | null>(null);

/** The store itself, for reading at the moment of an event. */
export function useEditorStore(): Editor {
  const editor = useContext(EditorContext);
  if (!editor) throw new Error("an editor component was rendered outside the editor");
  return editor;
}

/** A value picked out of the store; the component is drawn again only when that value changes. */
export function useEditor<T>(pick: (state: EditorState & EditorActions) => T): T {
  return useStore(useEditorStore(), pick);
}
