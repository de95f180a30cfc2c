import { useEffect, useLayoutEffect, useRef } from "react";
import { useStore } from "zustand";
import type { Scene } from "../../layout/scene.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { canvasOf } from "./canvas-store.ts";
import type { Sight } from "./sight.ts";
import { useShownTheme } from "./use-shown-theme.ts";
import { WirePainter } from "./wire-painter.ts";

/** All wires, under the parts. */
export function WireLayer({ scene, sight }: { readonly scene: Scene; readonly sight: Sight }) {
  const element = useRef<HTMLCanvasElement>(null);
  const painter = useRef<WirePainter | null>(null);
  const theme = useShownTheme();
  const canvas = canvasOf(useEditorStore());
  const harness = useEditor((state) => state.history.present);
  const taken = useStore(canvas, (state) => state.taken);
  const faded = useStore(canvas, (state) => state.faded);
  useLayoutEffect(() => {
    if (!element.current) return;
    const made = new WirePainter(element.current);
    painter.current = made;
    const deaf = sight.listen((view, page) => made.look(view, page));
    let gone = false;
    void document.fonts.load('11px "Source Sans 3"').then(() => gone || made.refresh());
    return () => {
      gone = true;
      deaf();
      made.stop();
      painter.current = null;
    };
  }, [sight]);
  useLayoutEffect(() => {
    painter.current?.show(scene, harness, theme, taken, faded);
    // A drag begins or ends: what leaves this layer, or comes back to it, does so in the frame it is drawn elsewhere.
    painter.current?.flush();
  }, [scene, harness, theme, taken, faded]);
  useEffect(() => {
    const again = () => painter.current?.refresh();
    const media = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    media.addEventListener("change", again);
    return () => media.removeEventListener("change", again);
  }, []);
  return <canvas ref={element} className="wire-layer" />;
}
