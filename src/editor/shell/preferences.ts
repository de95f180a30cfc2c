import { createStore } from "zustand/vanilla";
import type { Editor, Panel, Theme } from "../state/store.ts";

/** How a person has set out their desk. It belongs to the browser, not to the harness. */
export type Preferences = {
  readonly sideWidth: number;
  readonly tableHeight: number;
  /** On a narrow screen one thing is shown at a time. */
  readonly phoneView: PhoneView;
  readonly theme: Theme;
  readonly panel: Panel;
  readonly wireTable: boolean;
  /** The drawing in small, in the corner. */
  readonly minimap: boolean;
};

export type PhoneView = "drawing" | "findings" | "wires" | "details" | "figures";

export const SIDE_WIDTH = { least: 240, most: 640, usual: 368 } as const;
export const TABLE_HEIGHT = { least: 120, most: 720, usual: 264 } as const;

const USUAL: Preferences = {
  sideWidth: SIDE_WIDTH.usual,
  tableHeight: TABLE_HEIGHT.usual,
  phoneView: "drawing",
  theme: "system",
  panel: "findings",
  wireTable: false,
  minimap: true,
};

const KEY = "pigtail.desk";

/**
 * Reads preferences as they were kept. Anything that is missing or not possible reads as the usual value, so
 * that an old or a spoilt record never stops the editor from opening.
 */
export function readPreferences(text: string | null): Preferences {
  const kept = parseObject(text);
  const oneOf = <T extends string>(value: unknown, known: readonly T[], usual: T): T =>
    known.find((item) => item === value) ?? usual;
  return {
    sideWidth: within(kept.sideWidth, SIDE_WIDTH),
    tableHeight: within(kept.tableHeight, TABLE_HEIGHT),
    phoneView: "drawing",
    theme: oneOf(kept.theme, ["paper", "workshop", "system"], USUAL.theme),
    panel: oneOf(kept.panel, ["inspector", "findings", "figures", "none"], USUAL.panel),
    wireTable: kept.wireTable === true,
    minimap: kept.minimap !== false,
  };
}

export function within(
  value: unknown,
  limits: { readonly least: number; readonly most: number; readonly usual: number },
): number {
  if (typeof value !== "number" || !Number.isFinite(value)) return limits.usual;
  return Math.round(Math.min(limits.most, Math.max(limits.least, value)));
}

function parseObject(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text ?? "{}");
    return value !== null && typeof value === "object" ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

/** The page's one desk. Panels and theme live in the editor's store, because commands change them. */
export const desk = createStore<Pick<Preferences, "sideWidth" | "tableHeight" | "phoneView" | "minimap">>()(
  () => ({
    sideWidth: USUAL.sideWidth,
    tableHeight: USUAL.tableHeight,
    phoneView: USUAL.phoneView,
    minimap: USUAL.minimap,
  }),
);

/** Puts the desk as it was left, and keeps it from now on. */
export function rememberPreferences(editor: Editor): void {
  const kept = readPreferences(take());
  desk.setState({ sideWidth: kept.sideWidth, tableHeight: kept.tableHeight, minimap: kept.minimap });
  editor.getState().set({ theme: kept.theme, panel: kept.panel, wireTable: kept.wireTable });
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  const keep = () => {
    const { theme, panel, wireTable } = editor.getState();
    const { sideWidth, tableHeight, minimap } = desk.getState();
    showTheme(theme, dark.matches);
    put(JSON.stringify({ sideWidth, tableHeight, theme, panel, wireTable, minimap }));
  };
  keep();
  dark.addEventListener("change", keep);
  desk.subscribe(keep);
  editor.subscribe((state, before) => {
    if (
      state.theme !== before.theme ||
      state.panel !== before.panel ||
      state.wireTable !== before.wireTable
    ) {
      keep();
    }
  });
}

function showTheme(theme: Theme, systemIsDark: boolean): void {
  const shown = theme === "system" ? (systemIsDark ? "workshop" : "paper") : theme;
  document.documentElement.dataset.theme = shown;
}

function take(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    // Storage is forbidden here: the desk is then as usual each time.
    return null;
  }
}

function put(text: string): void {
  try {
    localStorage.setItem(KEY, text);
  } catch {
    // Nothing of the harness is lost by this.
  }
}
