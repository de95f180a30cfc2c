import { type KeyboardEvent, useEffect, useLayoutEffect, useRef } from "react";
import type { Spot } from "./canvas-store.ts";

export type MenuItem = {
  readonly id: string;
  readonly name: string;
  readonly keys?: string;
  readonly disabled?: boolean;
  /** A rule is drawn above it. */
  readonly first?: boolean;
  readonly run: () => void;
};

/** A short list at a spot of the page. Arrows and letters move, Enter chooses, Escape and a press elsewhere close. */
export function PopupMenu(props: {
  readonly name: string;
  readonly at: Spot;
  readonly items: readonly MenuItem[];
  readonly onClose: () => void;
}) {
  const { name, at, items, onClose } = props;
  const list = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = list.current;
    if (!element) return;
    // Kept whole on the page, whichever corner it was opened in.
    const { width, height } = element.getBoundingClientRect();
    element.style.left = `${Math.max(4, Math.min(at.x, window.innerWidth - width - 4))}px`;
    element.style.top = `${Math.max(4, Math.min(at.y, window.innerHeight - height - 4))}px`;
    element.querySelector<HTMLElement>("[role=menuitem]:not([aria-disabled=true])")?.focus();
  }, [at]);
  useEffect(() => {
    const elsewhere = (event: PointerEvent) => {
      if (!list.current?.contains(event.target as Node)) onClose();
    };
    window.addEventListener("pointerdown", elsewhere, true);
    return () => window.removeEventListener("pointerdown", elsewhere, true);
  }, [onClose]);
  const press = (event: KeyboardEvent) => {
    const all = [...(list.current?.querySelectorAll<HTMLElement>("[role=menuitem]") ?? [])];
    const here = all.indexOf(document.activeElement as HTMLElement);
    const go = (index: number) => all[(index + all.length) % all.length]?.focus();
    if (event.key === "ArrowDown") go(here + 1);
    else if (event.key === "ArrowUp") go(here - 1);
    else if (event.key === "Home") go(0);
    else if (event.key === "End") go(-1);
    else if (event.key === "Escape" || event.key === "Tab") onClose();
    else if (event.key.length === 1 && event.key !== " ") {
      const letter = event.key.toLowerCase();
      [...all.slice(here + 1), ...all]
        .find((item) => item.textContent?.toLowerCase().startsWith(letter))
        ?.focus();
    } else if (event.key !== "Enter" && event.key !== " ") return;
    event.stopPropagation();
    if (event.key !== "Enter" && event.key !== " ") event.preventDefault();
  };
  return (
    <div ref={list} role="menu" tabIndex={-1} aria-label={name} className="popup-menu" onKeyDown={press}>
      {items.map((item) => (
        <button
          key={item.id}
          type="button"
          role="menuitem"
          tabIndex={-1}
          className={item.first ? "popup-item popup-item-first" : "popup-item"}
          aria-disabled={item.disabled ?? false}
          onClick={() => {
            if (item.disabled) return;
            onClose();
            item.run();
          }}
        >
          <span>{item.name}</span>
          {item.keys && <kbd>{item.keys}</kbd>}
        </button>
      ))}
    </div>
  );
}
