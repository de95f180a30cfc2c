import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { Files, FilesState } from "./files.ts";

export const FilesContext = createContext<Files | null>(null);

export function useFiles(): Files {
  const files = useContext(FilesContext);
  if (!files) throw new Error("a files component was rendered outside the editor");
  return files;
}

export function useFilesState<T>(pick: (state: FilesState) => T): T {
  return useStore(useFiles().store, pick);
}
