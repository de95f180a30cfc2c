import { withUsed } from "./command-list-model.ts";

const KEY = "pigtail.used";

/** The commands used last in this browser, newest first. */
export function usedLast(): readonly string[] {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(KEY) ?? "[]");
    return Array.isArray(value) ? value.filter((item) => typeof item === "string") : [];
  } catch {
    return [];
  }
}

export function rememberUse(id: string): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(withUsed(usedLast(), id)));
  } catch {
    // Without storage the list keeps its own order.
  }
}
