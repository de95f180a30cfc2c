import type { Item } from "../../match/review/items.ts";

/** What a key does in the review. Letters act on the row that the keyboard stands on. */
export type ReviewAction =
  | { readonly do: "move"; readonly by: number }
  | { readonly do: "first" | "last" | "accept-all" | "next-question" | "undo" }
  | { readonly do: OnItem }
  | { readonly do: "choose"; readonly index: number };

type Press = Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "altKey" | "shiftKey">;

/** @returns `null` where the key means nothing here, so that it keeps its usual meaning */
export function actionOf(press: Press, item: Item | null): ReviewAction | null {
  const mod = press.ctrlKey || press.metaKey;
  if (press.altKey) return null;
  const key = press.key.length === 1 ? press.key.toLowerCase() : press.key;
  if (mod) return key === "z" && !press.shiftKey ? { do: "undo" } : null;
  switch (key) {
    case "ArrowDown":
      return { do: "move", by: 1 };
    case "ArrowUp":
      return { do: "move", by: -1 };
    case "Home":
      return { do: "first" };
    case "End":
      return { do: "last" };
    case "a":
      return { do: "accept-all" };
    case "n":
      return { do: "next-question" };
  }
  if (!item) return null;
  const can = actionsOn(item);
  if (/^[1-9]$/.test(key) && item.kind === "question") {
    const index = Number(key) - 1;
    return index < item.candidates.length ? { do: "choose", index } : null;
  }
  const meant = ACTION_KEYS.find(([keys]) => keys.includes(key))?.[1];
  return meant && can.includes(meant) ? { do: meant } : null;
}

type OnItem = "accept" | "undo-decision" | "cap" | "leave" | "swap" | "pick" | "joint";

const ACTION_KEYS: readonly (readonly [keys: readonly string[], action: OnItem])[] = [
  [["Enter", " "], "accept"],
  [["u", "Delete", "Backspace"], "undo-decision"],
  [["c"], "cap"],
  [["l"], "leave"],
  [["s"], "swap"],
  [["j"], "pick"],
  [["k"], "joint"],
];

/** What can be done with a row. */
export function actionsOn(item: Item): readonly OnItem[] {
  switch (item.kind) {
    case "offer":
      return ["accept", "undo-decision"];
    case "joined":
      return ["undo-decision", "swap", "joint"];
    case "question":
    case "missing":
    case "open":
    case "asked":
      return ["pick", "cap", "leave"];
    case "offer-cap":
      return ["accept", "pick", "leave"];
    case "capped":
    case "apart":
      return ["undo-decision", "pick"];
    case "unused":
      return ["pick", "cap"];
    case "elsewhere":
      return [];
  }
}
