import { lazy, Suspense } from "react";
import type { Scene } from "../../layout/scene.ts";
import type { Sight } from "../canvas/sight.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { readingsOf } from "./readings-store.ts";
import { useReadings } from "./use-readings.ts";
import "./readings-place.css";

const KeyBar = lazy(() => import("./key-bar.tsx"));
const Layers = lazy(() => import("./readings-layers.tsx"));

/** Below the drawing: the bar, or the way to it. */
export function ReadingsBar() {
  const on = useReadings((state) => state.on);
  const store = readingsOf(useEditorStore());
  const drawn = useEditor((state) => state.derived.scene.wires.size > 0);
  if (on) {
    return (
      <Suspense fallback={null}>
        <KeyBar />
      </Suspense>
    );
  }
  if (!drawn) return null;
  return (
    <button
      type="button"
      className="button small-button readings-opener"
      title="Volts, amperes, load and drop on the drawing (V)"
      onClick={() => store.getState().turn(true)}
    >
      Readings
    </button>
  );
}

/** In the drawing itself: nothing, until readings are on. */
export function ReadingsOnDrawing(props: { readonly scene: Scene; readonly sight: Sight }) {
  const on = useReadings((state) => state.on);
  return on ? (
    <Suspense fallback={null}>
      <Layers {...props} />
    </Suspense>
  ) : null;
}
