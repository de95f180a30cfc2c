import { useId, useMemo, useState } from "react";
import { useNarrow } from "../shell/use-narrow.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import {
  conditionsShown,
  KEY_NAMES,
  nameCondition,
  OVERLAY_NAMES,
  switchesShown,
  wordsOfState,
  wordsOfSum,
} from "./key-bar-model.ts";
import { Legend } from "./legend.tsx";
import { readingsOf } from "./readings-store.ts";
import { useReadings } from "./use-readings.ts";
import "./key-bar.css";

/** In what state the harness is looked at, and what is shown of it. On a phone it is one line until it is opened. */
export default function KeyBar() {
  const narrow = useNarrow();
  const [open, setOpen] = useState(false);
  const controls = useId();
  const store = readingsOf(useEditorStore());
  const folded = narrow && !open;
  return (
    <section className="key-bar" aria-label="Readings">
      <div className="key-bar-line">
        <StateWords />
        {narrow && (
          <button
            type="button"
            className="button"
            aria-expanded={open}
            aria-controls={controls}
            onClick={() => setOpen(!open)}
          >
            {open ? "Less" : "Change"}
          </button>
        )}
        <button
          type="button"
          className="button quiet-button key-bar-close"
          aria-label="Hide readings"
          title="Hide readings (V)"
          onClick={() => store.getState().turn(false)}
        >
          <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
            <path d="M2 2 10 10M10 2 2 10" stroke="currentColor" strokeWidth="1.5" />
          </svg>
        </button>
      </div>
      <div id={controls} className="key-bar-controls" hidden={folded}>
        {!folded && <Controls />}
      </div>
    </section>
  );
}

function StateWords() {
  const harness = useEditor((state) => state.history.present);
  const state = useReadings((one) => one.state);
  const readings = useReadings((one) => one.readings);
  const busy = useReadings((one) => one.busy);
  const problem = useReadings((one) => one.problem);
  const sum = useMemo(() => (readings ? wordsOfSum(readings) : ""), [readings]);
  return (
    <p className="key-bar-words" role="status">
      <strong>{wordsOfState(state, harness)}.</strong> {problem ?? (busy ? "Working it out…" : sum)}
    </p>
  );
}

function Controls() {
  const harness = useEditor((state) => state.history.present);
  const store = readingsOf(useEditorStore());
  const { key, conditions, closed } = useReadings((one) => one.state);
  const overlay = useReadings((one) => one.overlay);
  const offered = useMemo(() => conditionsShown(harness), [harness]);
  const switches = useMemo(() => switchesShown(harness), [harness]);
  const act = store.getState();
  return (
    <>
      <OneOf legend="Key" choices={KEY_NAMES} chosen={key} choose={act.setKey} />
      <OneOf legend="Show" choices={OVERLAY_NAMES} chosen={overlay} choose={act.show} />
      {(offered.length > 0 || switches.length > 0) && (
        <fieldset className="key-bar-toggles">
          <legend>With</legend>
          {offered.map((condition) => (
            <label key={condition}>
              <input
                type="checkbox"
                checked={conditions.includes(condition)}
                onChange={() => act.toggleCondition(condition)}
              />
              {nameCondition(condition)}
            </label>
          ))}
          {switches.map(({ id, designation }) => (
            <label key={id}>
              <input
                type="checkbox"
                checked={closed?.includes(id) ?? false}
                onChange={() => act.toggleSwitch(id)}
              />
              {designation} closed
            </label>
          ))}
        </fieldset>
      )}
      <Legend overlay={overlay} />
    </>
  );
}

function OneOf<T extends string>(props: {
  readonly legend: string;
  readonly choices: readonly (readonly [T, string])[];
  readonly chosen: T;
  readonly choose: (value: T) => void;
}) {
  const { legend, choices, chosen, choose } = props;
  const name = useId();
  return (
    <fieldset className="key-bar-one-of">
      <legend>{legend}</legend>
      {choices.map(([value, words]) => (
        <label key={value}>
          <input
            type="radio"
            name={name}
            value={value}
            checked={value === chosen}
            onChange={() => choose(value)}
          />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}
