import { useStore } from "zustand";
import { useEditor } from "../state/use-editor.ts";
import { desk, type PhoneView } from "./preferences.ts";

const VIEWS: readonly (readonly [PhoneView, string])[] = [
  ["drawing", "Drawing"],
  ["findings", "Findings"],
  ["wires", "Wires"],
  ["details", "Details"],
  ["figures", "Figures"],
];

/** On a phone one thing is shown at a time; this says which. */
export function PhoneSwitch() {
  const view = useStore(desk, (state) => state.phoneView);
  const found = useEditor((state) => state.derived.findings.length);
  return (
    <nav className="phone-switch" aria-label="What is shown">
      {VIEWS.map(([value, name]) => (
        <button
          key={value}
          type="button"
          aria-current={view === value ? "page" : undefined}
          onClick={() => desk.setState({ phoneView: value })}
        >
          {name}
          {value === "findings" && found > 0 && <span className="phone-count"> {found}</span>}
        </button>
      ))}
    </nav>
  );
}
