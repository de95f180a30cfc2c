import { type RefObject, useEffect } from "react";
import type { Hand } from "./hand.ts";

/** What has its own answer to a press: buttons of ours that stand on the drawing. */
const OWN_ANSWER = ".finding-mark, .field-input, .popup-menu";

/**
 * Listens on the canvas before React Flow does: a press that the hand takes never reaches it, every other one
 * pans and zooms as it always does.
 */
export function usePointer(root: RefObject<HTMLElement | null>, hand: Hand): void {
  useEffect(() => {
    const element = root.current;
    if (!element) return;
    let ours = false;
    const own = (event: Event) => (event.target as HTMLElement).closest?.(OWN_ANSWER) !== null;
    const down = (event: PointerEvent) => {
      if (own(event)) {
        ours = true;
        return;
      }
      ours = hand.down(event);
      // The drawing keeps the focus, so that its keys work after a click as before.
      element.focus({ preventScroll: true });
    };
    const start = (event: Event) => {
      if (!ours) return;
      event.stopPropagation();
      if (event.type === "mousedown" && !own(event)) event.preventDefault();
    };
    const move = (event: PointerEvent) => hand.move(event);
    const up = (event: PointerEvent) => hand.up(event);
    const cancel = () => hand.cancel();
    const leave = () => hand.leave();
    const menu = (event: MouseEvent) => {
      event.preventDefault();
      if (!own(event) && event.button === 2) hand.openMenu({ x: event.clientX, y: event.clientY });
    };
    const twice = (event: MouseEvent) => hand.edit(event);
    const key = (event: KeyboardEvent) => {
      if (event.key === " ") hand.spaceHeld = event.type === "keydown";
    };
    element.addEventListener("pointerdown", down, true);
    element.addEventListener("mousedown", start, true);
    element.addEventListener("touchstart", start, true);
    element.addEventListener("pointermove", move);
    element.addEventListener("pointerleave", leave);
    element.addEventListener("contextmenu", menu);
    element.addEventListener("dblclick", twice);
    const outside = (event: PointerEvent) => {
      // While a button is down the drag goes on wherever the pointer is.
      if (!element.contains(event.target as Node)) hand.move(event);
    };
    window.addEventListener("pointermove", outside);
    window.addEventListener("pointerup", up);
    window.addEventListener("pointercancel", cancel);
    window.addEventListener("keydown", key);
    window.addEventListener("keyup", key);
    return () => {
      element.removeEventListener("pointerdown", down, true);
      element.removeEventListener("mousedown", start, true);
      element.removeEventListener("touchstart", start, true);
      element.removeEventListener("pointermove", move);
      element.removeEventListener("pointerleave", leave);
      element.removeEventListener("contextmenu", menu);
      element.removeEventListener("dblclick", twice);
      window.removeEventListener("pointermove", outside);
      window.removeEventListener("pointerup", up);
      window.removeEventListener("pointercancel", cancel);
      window.removeEventListener("keydown", key);
      window.removeEventListener("keyup", key);
    };
  }, [root, hand]);
}
