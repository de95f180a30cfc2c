import { createStore } from "zustand/vanilla";

/** Which page of the figures is open. */
export type PanelPage = "selection" | "sizes" | "whole";

export const panelView = createStore<{ readonly view: PanelPage }>()(() => ({ view: "selection" }));
