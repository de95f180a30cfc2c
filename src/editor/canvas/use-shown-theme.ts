import { useSyncExternalStore } from "react";
import type { PaintTheme } from "./wire-painter.ts";

function read(): PaintTheme {
  return document.documentElement.dataset.theme === "workshop" ? "workshop" : "paper";
}

function watch(changed: () => void): () => void {
  const observer = new MutationObserver(changed);
  observer.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme"] });
  return () => observer.disconnect();
}

/** The theme that the page shows now; what is painted on a canvas cannot follow custom properties by itself. */
export function useShownTheme(): PaintTheme {
  return useSyncExternalStore(watch, read);
}
