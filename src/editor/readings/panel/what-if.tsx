import { useId, useState } from "react";
import type { Readings } from "../../../electrical/operate/readings.ts";
import { useEditor } from "../../state/use-editor.ts";
import { AS_IT_IS } from "../readings-store.ts";
import { useReadings } from "../use-readings.ts";
import { fullDraws } from "../what-if.ts";
import { Disclosure } from "./disclosure.tsx";
import { readWhatIf, type Slider, sayWhatIf, slidersOf } from "./what-if-model.ts";

/** Sliders that ask what would be at other volts, in other air, with the amplifiers at full. */
export function WhatIfs({ readings }: { readonly readings: Readings }) {
  const whatIf = useReadings((state) => state.whatIf);
  const setWhatIf = useReadings((state) => state.setWhatIf);
  const harness = useEditor((state) => state.history.present);
  const asked = sayWhatIf(whatIf);
  const canBeFull = fullDraws(harness).size > 0;
  return (
    <Disclosure name={asked ? `What if: ${asked}` : "What if…"}>
      <fieldset className="what-if">
        <legend className="said-only">What if</legend>
        {slidersOf(readings, whatIf).map((slider) => (
          <SliderRow
            key={slider.key}
            slider={slider}
            onValue={(value) => setWhatIf({ [slider.key]: value })}
          />
        ))}
        <label className="flag-row">
          <input
            type="checkbox"
            checked={whatIf.amplifiersAtFull}
            disabled={!canBeFull}
            onChange={(event) => setWhatIf({ amplifiersAtFull: event.target.checked })}
          />
          Amplifiers at full
        </label>
        {!canBeFull && (
          <p className="figures-quiet">
            For that, state an amplifier's power of a channel: select its box, then "What they rest on".
          </p>
        )}
        <button
          type="button"
          className="button"
          disabled={asked === null}
          onClick={() => setWhatIf(AS_IT_IS)}
        >
          Back to how it is
        </button>
      </fieldset>
    </Disclosure>
  );
}

function SliderRow(props: { readonly slider: Slider; readonly onValue: (value: number | null) => void }) {
  const { slider, onValue } = props;
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [why, setWhy] = useState("");
  const take = () => {
    if (draft === null) return;
    const read = readWhatIf(slider, draft);
    if (!read.ok) return setWhy(read.why);
    setWhy("");
    setDraft(null);
    onValue(read.value);
  };
  return (
    <div className="what-if-row">
      <label htmlFor={id}>{slider.name}</label>
      <input
        id={id}
        type="range"
        min={slider.least}
        max={slider.most}
        step={slider.step}
        value={slider.value}
        aria-valuetext={`${slider.value} ${slider.unit}`}
        onChange={(event) => {
          setDraft(null);
          setWhy("");
          onValue(Number(event.target.value));
        }}
      />
      <input
        type="text"
        inputMode="decimal"
        aria-label={`${slider.name}, ${slider.unit}`}
        aria-invalid={why !== ""}
        aria-describedby={why ? `${id}-why` : undefined}
        value={draft ?? String(slider.value)}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === "Enter") take();
          if (event.key === "Escape" && draft !== null) {
            event.stopPropagation();
            setDraft(null);
            setWhy("");
          }
        }}
      />
      <span>{slider.unit}</span>
      <p id={`${id}-why`} className="field-why" role="alert">
        {why}
      </p>
    </div>
  );
}
