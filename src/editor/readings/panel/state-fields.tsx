import { conditionsOf, KEY_POSITIONS, type KeyPosition } from "../../../electrical/operate/key-state.ts";
import { useEditor } from "../../state/use-editor.ts";
import { useReadings } from "../use-readings.ts";
import { Disclosure } from "./disclosure.tsx";

/** Key position and conditions, for who has no drawing beside the panel. */
export function StateFields() {
  const harness = useEditor((state) => state.history.present);
  const state = useReadings((one) => one.state);
  const setKey = useReadings((one) => one.setKey);
  const toggle = useReadings((one) => one.toggleCondition);
  return (
    <Disclosure name="Change the state">
      <div className="field-row">
        <label htmlFor="figures-key">Key</label>
        <select
          id="figures-key"
          value={state.key}
          onChange={(event) => setKey(event.target.value as KeyPosition)}
        >
          {KEY_POSITIONS.map((key) => (
            <option key={key}>{key}</option>
          ))}
        </select>
      </div>
      {conditionsOf(harness).map((condition) => (
        <label key={condition} className="flag-row">
          <input
            type="checkbox"
            checked={state.conditions.includes(condition)}
            onChange={() => toggle(condition)}
          />
          {condition.replaceAll("-", " ")}
        </label>
      ))}
    </Disclosure>
  );
}
