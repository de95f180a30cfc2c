import { useLayoutEffect, useMemo, useRef } from "react";
import { useStore } from "zustand";
import type { Readings } from "../../electrical/operate/readings.ts";
import type { WireId } from "../../graph/harness.ts";
import type { Scene } from "../../layout/scene.ts";
import { canvasOf } from "../canvas/canvas-store.ts";
import { selectAbout } from "../canvas/show.ts";
import type { Sight } from "../canvas/sight.ts";
import { useShownTheme } from "../canvas/use-shown-theme.ts";
import { SeverityMark } from "../findings/severity.tsx";
import { useEditorStore } from "../state/use-editor.ts";
import { standingOf } from "./ink-model.ts";
import { BandPainter, FigurePainter, type Picture } from "./readings-painter.ts";
import { NO_AMPS } from "./say-readings.ts";
import { type WarningTag, warningTags } from "./tags-model.ts";
import { useReadings } from "./use-readings.ts";
import "./overlay.css";

/** What a harness shows in the state of the key, laid over its drawing. */
export default function ReadingsLayers(props: { readonly scene: Scene; readonly sight: Sight }) {
  const { scene, sight } = props;
  const readings = useReadings((state) => state.readings);
  const overlay = useReadings((state) => state.overlay);
  const theme = useShownTheme();
  const lifted = useStore(canvasOf(useEditorStore()), (state) => state.lifted);
  const picture = useMemo(
    () => readings && { scene, readings, overlay, theme, lifted },
    [scene, readings, overlay, theme, lifted],
  );
  useFading(readings, scene);
  if (!picture) return null;
  return (
    <>
      {overlay !== "volts" && (
        <Layer picture={picture} sight={sight} painter={BandPainter} className="readings-bands" />
      )}
      <Layer picture={picture} sight={sight} painter={FigurePainter} className="readings-figures" />
      {overlay === "amps" && <Flow picture={picture} />}
      <Warnings scene={scene} warnings={picture.readings.warnings} />
    </>
  );
}

/** Tells the layer of wires which of them step back. */
function useFading(readings: Readings | null, scene: Scene): void {
  const canvas = canvasOf(useEditorStore());
  useLayoutEffect(() => {
    if (!readings) return;
    const wires = new Set<WireId>();
    const floating = new Set<WireId>();
    for (const { wire } of scene.wires.values()) {
      const standing = standingOf(readings, wire);
      if (standing === "floating") floating.add(wire.id);
      if (standing === "floating" || standing === "dead") wires.add(wire.id);
    }
    const { faded } = canvas.getState();
    // The same wires as before are not painted again.
    if (faded && sameSet(faded.wires, wires) && sameSet(faded.floating, floating)) return;
    canvas.setState({ faded: { wires, floating } });
  }, [canvas, readings, scene]);
  useLayoutEffect(() => () => canvas.setState({ faded: null }), [canvas]);
}

function sameSet<T>(a: ReadonlySet<T>, b: ReadonlySet<T>): boolean {
  if (a.size !== b.size) return false;
  for (const one of a) if (!b.has(one)) return false;
  return true;
}

type PainterClass = new (canvas: HTMLCanvasElement) => BandPainter | FigurePainter;

function Layer(props: {
  readonly picture: Picture;
  readonly sight: Sight;
  readonly painter: PainterClass;
  readonly className: string;
}) {
  const { picture, sight, painter: Painter, className } = props;
  const element = useRef<HTMLCanvasElement>(null);
  const painter = useRef<BandPainter | FigurePainter | null>(null);
  useLayoutEffect(() => {
    if (!element.current) return;
    const made = new Painter(element.current);
    painter.current = made;
    const deaf = sight.listen((view, page) => made.look(view, page));
    return () => {
      deaf();
      made.stop();
      painter.current = null;
    };
  }, [sight, Painter]);
  useLayoutEffect(() => painter.current?.show(picture), [picture]);
  return <canvas ref={element} className={`readings-layer ${className}`} />;
}

/** In the circuit that is traced the current is seen to run. Where motion is not wanted it is a row of marks. */
function Flow({ picture: { scene, readings, lifted } }: { readonly picture: Picture }) {
  let onward = "";
  let back = "";
  for (const id of lifted?.wires ?? []) {
    const placed = scene.wires.get(id);
    const amps = readings.wires.get(id)?.amps ?? 0;
    if (!placed || Math.abs(amps) < NO_AMPS) continue;
    const { path } = placed;
    let line = `M${path[0]} ${path[1]}`;
    for (let i = 2; i + 1 < path.length; i += 2) line += `L${path[i]} ${path[i + 1]}`;
    if (amps > 0) onward += line;
    else back += line;
  }
  if (onward === "" && back === "") return null;
  return (
    <svg className="readings-flow" width="1" height="1" aria-hidden="true">
      <path d={onward} className="flow-edge" />
      <path d={onward} />
      <path d={back} className="flow-back flow-edge" />
      <path d={back} className="flow-back" />
    </svg>
  );
}

/** Beside each thing that is wrong in this state: a shape and a word. */
function Warnings(props: { readonly scene: Scene; readonly warnings: Parameters<typeof warningTags>[1] }) {
  const { scene, warnings } = props;
  const canvas = canvasOf(useEditorStore());
  const region = useStore(canvas, (state) => state.region);
  const far = useStore(canvas, (state) => state.far);
  const tags = useMemo(() => warningTags(scene, warnings), [scene, warnings]);
  return tags
    .filter(
      ({ x, y }) =>
        x >= region.x && y >= region.y && x <= region.x + region.width && y <= region.y + region.height,
    )
    .map((tag) => <Tag key={tag.key} tag={tag} far={far} />);
}

function Tag({ tag, far }: { readonly tag: WarningTag; readonly far: boolean }) {
  const editor = useEditorStore();
  const { about, severity, word, words, x, y } = tag;
  return (
    <button
      type="button"
      tabIndex={-1}
      className={`reading-tag reading-tag-${severity} ${far ? "reading-tag-far" : ""}`}
      style={{ translate: `${x}px ${y}px` }}
      aria-label={`Reading, ${word}: ${words}`}
      title={words}
      onClick={() => selectAbout(editor, [about])}
    >
      <SeverityMark severity={severity} size={14} />
      {(!far || severity !== "weak") && <span aria-hidden="true">{word}</span>}
    </button>
  );
}
