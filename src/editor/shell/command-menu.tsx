import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef, useState } from "react";
import { allCommands, type Command, commandName, showKeys } from "../commands/command.ts";
import { useEditorStore } from "../state/use-editor.ts";

/** A button that opens a short list of commands. Arrows move, letters jump, Escape goes back to the button. */
export function CommandMenu(props: {
  readonly name: string;
  readonly children: ReactNode;
  readonly groups: readonly Command["group"][];
  readonly className?: string;
}) {
  const editor = useEditorStore();
  const [open, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const id = useId();
  useEffect(() => {
    if (!open) return;
    list.current?.querySelector<HTMLElement>("[role=menuitem]")?.focus();
    const elsewhere = (event: PointerEvent) => {
      const target = event.target as Node;
      if (!list.current?.contains(target) && !button.current?.contains(target)) setOpen(false);
    };
    window.addEventListener("pointerdown", elsewhere, true);
    return () => window.removeEventListener("pointerdown", elsewhere, true);
  }, [open]);
  const close = () => {
    setOpen(false);
    button.current?.focus();
  };
  const press = (event: KeyboardEvent) => {
    const items = [...(list.current?.querySelectorAll<HTMLElement>("[role=menuitem]") ?? [])];
    const at = items.indexOf(document.activeElement as HTMLElement);
    const go = (index: number) => items[(index + items.length) % items.length]?.focus();
    if (event.key === "ArrowDown") go(at + 1);
    else if (event.key === "ArrowUp") go(at - 1);
    else if (event.key === "Home") go(0);
    else if (event.key === "End") go(-1);
    else if (event.key === "Escape") close();
    else if (event.key === "Tab") return setOpen(false);
    else if (event.key.length === 1 && event.key !== " ") {
      const letter = event.key.toLowerCase();
      const next = [...items.slice(at + 1), ...items].find((item) =>
        item.textContent?.toLowerCase().startsWith(letter),
      );
      next?.focus();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div className={`menu-place ${props.className ?? ""}`}>
      <button
        ref={button}
        type="button"
        className="button"
        aria-haspopup="menu"
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
        onKeyDown={(event) => {
          if (event.key !== "ArrowDown") return;
          event.preventDefault();
          setOpen(true);
        }}
      >
        {props.children}
      </button>
      {open && (
        <div ref={list} id={id} role="menu" aria-label={props.name} className="menu" onKeyDown={press}>
          {props.groups.map((group, index) => (
            <div key={group} className={index > 0 ? "menu-group menu-group-next" : "menu-group"}>
              {allCommands()
                .filter((command) => command.group === group)
                .map((command) => (
                  <button
                    key={command.id}
                    type="button"
                    role="menuitem"
                    tabIndex={-1}
                    aria-disabled={!(command.enabled?.(editor) ?? true)}
                    onClick={() => {
                      if (!(command.enabled?.(editor) ?? true)) return;
                      close();
                      void command.run(editor);
                    }}
                  >
                    <span>{commandName(command, editor)}</span>
                    {command.keys[0] && <kbd>{showKeys(command.keys[0])}</kbd>}
                  </button>
                ))}
            </div>
          ))}
        </div>
      )}
    </div>
  );
}
