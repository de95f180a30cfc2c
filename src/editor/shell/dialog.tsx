import { type ReactNode, useId, useLayoutEffect, useRef } from "react";
import "./dialog.css";

/**
 * A dialog over the page: focus stays in it, Escape closes it, and focus goes back to where it was. The
 * browser's own element does all three.
 */
export function Dialog(props: {
  readonly heading: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly wide?: boolean;
  readonly quietHeading?: boolean;
}) {
  const element = useRef<HTMLDialogElement>(null);
  const id = useId();
  // Before anything else can happen: a key pressed between its appearing and its opening would be lost, and so would
  // one between its going and the focus coming back.
  useLayoutEffect(() => {
    const dialog = element.current;
    if (!dialog) return;
    const from = document.activeElement;
    if (!dialog.open) dialog.showModal();
    dialog.querySelector<HTMLElement>("[data-first]")?.focus();
    return () => {
      dialog.close();
      if (from instanceof HTMLElement && from.isConnected) from.focus();
    };
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape closes it; the click is on the ground around it
    <dialog
      ref={element}
      className={["sheet", props.wide && "sheet-wide", props.quietHeading && "sheet-top"]
        .filter(Boolean)
        .join(" ")}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        props.onClose();
      }}
      onClick={(event) => {
        if (event.target === element.current && startedOutside(event)) props.onClose();
      }}
    >
      <div className="sheet-body">
        <div className={props.quietHeading ? "sheet-head said-only" : "sheet-head"}>
          <h2 id={id}>{props.heading}</h2>
          <button type="button" className="button quiet-button" aria-label="Close" onClick={props.onClose}>
            <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
              <path d="M3 3 13 13 M13 3 3 13" stroke="currentColor" strokeWidth="1.5" fill="none" />
            </svg>
          </button>
        </div>
        {props.children}
      </div>
    </dialog>
  );
}

/** A press that began on the ground, not a selection of text that ended there. */
function startedOutside(event: React.MouseEvent): boolean {
  return window.getSelection()?.isCollapsed !== false && event.detail === 1;
}
