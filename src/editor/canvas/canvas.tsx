import { type RefObject, useCallback, useEffect, useLayoutEffect, useMemo, useRef } from "react";
import {
  type NodeTypes,
  ReactFlow,
  type ReactFlowInstance,
  ReactFlowProvider,
  ViewportPortal,
} from "reactflow";
import "reactflow/dist/base.css";
import { useStore } from "zustand";
import type { Scene } from "../../layout/scene.ts";
import { PreviewBar } from "../findings/preview-bar.tsx";
import { ReadingsBar, ReadingsOnDrawing } from "../readings/readings-place.tsx";
import { desk } from "../shell/preferences.ts";
import { useNarrow } from "../shell/use-narrow.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import "./canvas.css";
import "./over-canvas.css";
import "./pointing.css";
import { pressKey } from "./canvas-keys.ts";
import { canvasOf, IDLE } from "./canvas-store.ts";
import { pasteText } from "./clipboard.ts";
import { FindingMarks } from "./finding-marks.tsx";
import { Hand } from "./hand.ts";
import { Marked } from "./marked.tsx";
import { Minimap } from "./minimap.tsx";
import { nodesOf, type PartNodeType } from "./nodes-model.ts";
import { OverParts, UnderParts } from "./overlay.tsx";
import { PartNode } from "./part-node.tsx";
import { Popups } from "./popups.tsx";
import { arrangeIfUnplaced, warmArranger } from "./run-arrange.ts";
import { Sight } from "./sight.ts";
import { circuitMeant, liftedBy } from "./trace-model.ts";
import { usePointer } from "./use-pointer.ts";
import { LEAST_ZOOM, MOST_ZOOM } from "./view-model.ts";
import { WireLayer } from "./wire-layer.tsx";

const NODE_TYPES: NodeTypes = { part: PartNode };
const NO_EDGES: [] = [];
const PAN_BUTTONS = [0, 1];
const NO_ATTRIBUTION = { hideAttribution: true };
const HELP_ID = "canvas-help";

/** The drawing: parts as nodes of React Flow, everything else in layers of our own in its viewport. */
export function Canvas() {
  return (
    <ReactFlowProvider>
      <div className="canvas-and-bar">
        <Sheet />
        <ReadingsBar />
      </div>
    </ReactFlowProvider>
  );
}

function Sheet() {
  const editor = useEditorStore();
  const canvas = canvasOf(editor);
  const root = useRef<HTMLDivElement>(null);
  const settled = useEditor((state) => state.derived.scene);
  const draft = useStore(canvas, (state) => state.draft);
  const scene = draft ?? settled;
  const before = useRef<PartNodeType[]>([]);
  const nodes = useMemo(() => {
    before.current = nodesOf(scene, before.current);
    return before.current;
  }, [scene]);
  const sight = useMemo(() => new Sight(canvas, () => editor.getState().derived.scene), [canvas, editor]);
  const hand = useMemo(() => new Hand(editor, sight), [editor, sight]);
  const narrow = useNarrow();
  const minimap = useStore(desk, (state) => state.minimap);
  useTracing(root);
  useDocuments(sight);
  useGrowth(sight, settled);
  usePointer(root, hand);

  useLayoutEffect(() => {
    const element = root.current;
    if (!element) return;
    sight.root = element;
    canvas.view = sight;
    const measure = () => sight.resize({ width: element.clientWidth, height: element.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => {
      observer.disconnect();
      canvas.view = null;
      canvas.setState(IDLE);
    };
  }, [canvas, sight]);

  const onInit = useCallback(
    (flow: ReactFlowInstance<PartNodeType>) => {
      sight.attach(flow);
      sight.fit();
    },
    [sight],
  );
  return (
    <div className="canvas">
      <ReactFlow
        ref={root}
        className="canvas-flow"
        tabIndex={0}
        aria-label="Drawing"
        aria-describedby={HELP_ID}
        nodes={nodes}
        edges={NO_EDGES}
        nodeTypes={NODE_TYPES}
        onInit={onInit}
        onMove={(_event, view) => sight.moved(view)}
        onMoveStart={() => root.current?.classList.add("panning")}
        onMoveEnd={() => root.current?.classList.remove("panning")}
        onKeyDown={(event) => {
          if (
            event.target !== event.currentTarget &&
            !(event.target as HTMLElement).closest(".react-flow__renderer")
          )
            return;
          if (pressKey(editor, hand, sight, event.nativeEvent)) event.preventDefault();
        }}
        onPaste={(event) => {
          event.preventDefault();
          void pasteText(editor, event.clipboardData.getData("text/plain"));
        }}
        panOnDrag={PAN_BUTTONS}
        panActivationKeyCode="Space"
        selectionKeyCode={null}
        multiSelectionKeyCode={null}
        deleteKeyCode={null}
        zoomOnDoubleClick={false}
        minZoom={LEAST_ZOOM}
        maxZoom={MOST_ZOOM}
        nodesDraggable={false}
        nodesConnectable={false}
        nodesFocusable={false}
        elementsSelectable={false}
        onlyRenderVisibleElements
        disableKeyboardA11y
        proOptions={NO_ATTRIBUTION}
      >
        <ViewportPortal>
          <WireLayer scene={settled} sight={sight} />
          {!draft && <Marked scene={settled} />}
          <UnderParts scene={scene} />
          {!draft && <ReadingsOnDrawing scene={settled} sight={sight} />}
          <OverParts scene={scene} />
          {!draft && <FindingMarks scene={settled} />}
        </ViewportPortal>
      </ReactFlow>
      {!narrow && minimap && <Minimap scene={settled} sight={sight} />}
      <PreviewBar />
      <Popups sight={sight} />
      <p id={HELP_ID} hidden>
        Arrows go from part to part, Enter goes in to its contacts. From a contact, right or W follows its
        wire, J draws a lead, F2 edits the text, Shift F10 opens the menu. Escape goes one level up.
      </p>
      <Said />
    </div>
  );
}

/** Every move of the keyboard, said. */
function Said() {
  const said = useStore(canvasOf(useEditorStore()), (state) => state.said);
  return (
    <p className="said" aria-live="polite">
      {said}
    </p>
  );
}

/** Keeps what is lifted in step with what is pointed at or selected. */
function useTracing(root: RefObject<HTMLDivElement | null>): void {
  const editor = useEditorStore();
  const canvas = canvasOf(editor);
  const traced = useEditor((state) => state.derived.traced);
  const pointed = useEditor((state) => state.pointed);
  const selection = useEditor((state) => state.selection);
  const circuit = circuitMeant(traced, pointed, selection);
  useEffect(() => {
    const lifted = liftedBy(circuit);
    canvas.setState({ lifted });
    root.current?.classList.toggle("tracing", lifted !== null);
  }, [circuit, canvas, root]);
}

/** Follows what is added to the drawing. */
function useGrowth(sight: Sight, scene: Scene): void {
  const before = useRef(scene);
  useEffect(() => {
    const was = before.current;
    before.current = scene;
    if (was !== scene) sight.grown(was, scene);
  }, [scene, sight]);
}

/** Shows the whole of each document that is opened, and arranges one that has no places yet. */
function useDocuments(sight: Sight): void {
  const editor = useEditorStore();
  const key = useEditor((state) => state.documentKey);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key is the document's, and another one is the cause
  useEffect(() => {
    sight.fit();
    arrangeIfUnplaced(editor);
    const idle = setTimeout(warmArranger, 3000);
    return () => clearTimeout(idle);
  }, [key, editor, sight]);
}
