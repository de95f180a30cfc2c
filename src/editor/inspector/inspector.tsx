import { FUNCTIONS } from "../../catalogue/functions.ts";
import { useEditor } from "../state/use-editor.ts";
import { HarnessDetails } from "./harness-details.tsx";
import { PartDetails } from "./part-details.tsx";
import { SeveralDetails } from "./several-details.tsx";
import { WireDetails } from "./wire-details.tsx";
import "./inspector.css";

/** What is known of the selection, and may be changed: a part, a wire, several, or the harness itself. */
export default function Inspector() {
  const harness = useEditor((state) => state.history.present);
  const selection = useEditor((state) => state.selection);
  const parts = [...selection.parts].flatMap((id) => harness.parts[id] ?? []);
  const wires = [...selection.wires].flatMap((id) => harness.wires[id] ?? []);
  const onWire = wires.length === 1 && parts.length === 0;
  const standsOn = selection.contact && !onWire ? harness.parts[selection.contact.part] : undefined;
  const [part] = parts.length ? parts : standsOn ? [standsOn] : [];
  const [wire] = wires;
  return (
    <div className="details">
      <datalist id="functions">
        {FUNCTIONS.filter(({ id }) => id !== "unknown").map(({ id, name }) => (
          <option key={id} value={name} />
        ))}
      </datalist>
      {parts.length + wires.length > 1 ? (
        <SeveralDetails parts={parts} wires={wires} />
      ) : part ? (
        <PartDetails key={part.id} part={part} contact={selection.contact?.contact ?? null} />
      ) : wire ? (
        <WireDetails key={wire.id} wire={wire} />
      ) : (
        <HarnessDetails />
      )}
    </div>
  );
}
