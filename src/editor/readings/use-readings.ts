import { useStore } from "zustand";
import { useEditorStore } from "../state/use-editor.ts";
import { type ReadingsActions, type ReadingsState, readingsOf } from "./readings-store.ts";

/** A value picked out of the readings; the component is drawn again only when that value changes. */
export function useReadings<T>(pick: (state: ReadingsState & ReadingsActions) => T): T {
  return useStore(readingsOf(useEditorStore()), pick);
}
