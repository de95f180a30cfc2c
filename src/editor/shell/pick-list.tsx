import {
  type KeyboardEvent,
  type ReactNode,
  useEffect,
  useId,
  useLayoutEffect,
  useRef,
  useState,
} from "react";
import { typedAhead } from "./dialogs.ts";
import "./pick-list.css";

export type Pick = {
  readonly id: string;
  readonly content: ReactNode;
  /** What cannot be picked is shown all the same. */
  readonly possible?: boolean;
};

/** A field to type in and the list of what fits: arrows move, Enter takes. Focus stays in the field. */
export function PickList(props: {
  readonly label: string;
  readonly hint: string;
  readonly none: string;
  readonly typed: string;
  readonly onType: (typed: string) => void;
  readonly picks: readonly Pick[];
  readonly onPick: (id: string) => void;
}) {
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const [at, setAt] = useState(0);
  const { picks, onType } = props;
  // Read when the field stands there, not when it is first thought of: React may show it some time later.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when it appears
  useLayoutEffect(() => {
    if (typedAhead() !== "") onType(typedAhead());
  }, []);
  const current = Math.min(at, picks.length - 1);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another text starts at the top again
  useEffect(() => setAt(0), [props.typed]);
  useEffect(() => {
    list.current?.children[current]?.scrollIntoView({ block: "nearest" });
  }, [current]);
  const take = (index: number) => {
    const pick = picks[index];
    if (pick && pick.possible !== false) props.onPick(pick.id);
  };
  const press = (event: KeyboardEvent) => {
    const last = picks.length - 1;
    if (event.key === "ArrowDown") setAt(current >= last ? 0 : current + 1);
    else if (event.key === "ArrowUp") setAt(current <= 0 ? last : current - 1);
    else if (event.key === "PageDown") setAt(Math.min(last, current + 8));
    else if (event.key === "PageUp") setAt(Math.max(0, current - 8));
    else if (event.key === "Enter") take(current);
    else return;
    event.preventDefault();
  };
  return (
    <div className="picker">
      <input
        data-first
        className="picker-field"
        type="text"
        role="combobox"
        aria-label={props.label}
        aria-expanded="true"
        aria-controls={id}
        aria-activedescendant={picks[current] ? `${id}-${current}` : undefined}
        aria-autocomplete="list"
        autoComplete="off"
        spellCheck={false}
        placeholder={props.hint}
        value={props.typed}
        onChange={(event) => props.onType(event.target.value)}
        onKeyDown={press}
      />
      <div ref={list} id={id} role="listbox" aria-label={props.label} className="picker-list">
        {picks.map((pick, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field above has the keys
          // biome-ignore lint/a11y/useFocusableInteractive: the field above keeps the focus
          <div
            key={pick.id}
            id={`${id}-${index}`}
            role="option"
            aria-selected={index === current}
            aria-disabled={pick.possible === false}
            className="picker-option"
            onClick={() => take(index)}
          >
            {pick.content}
          </div>
        ))}
      </div>
      <p className="picker-none" role="status">
        {picks.length === 0 ? props.none : ""}
      </p>
    </div>
  );
}
