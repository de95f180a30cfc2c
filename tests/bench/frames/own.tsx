import { createRoot } from "react-dom/client";
import "../../../src/editor/typeface.css";
import "../../../src/editor/theme.css";
import { Canvas } from "../../../src/editor/canvas/canvas.tsx";
import { canvasOf } from "../../../src/editor/canvas/canvas-store.ts";
import { createEditor } from "../../../src/editor/state/store.ts";
import { EditorContext } from "../../../src/editor/state/use-editor.ts";
import { atLifeSize, buildOf, countAsked } from "./harness.ts";

/** Our canvas alone, with a harness of as many wires as the address asks for. */
const editor = createEditor(buildOf(countAsked()));
createRoot(document.getElementById("page")!).render(
  <EditorContext value={editor}>
    <Canvas />
  </EditorContext>,
);
if (atLifeSize()) {
  setTimeout(() => {
    const { view } = canvasOf(editor);
    view?.zoomTo(1);
    setTimeout(() => view?.centreOn({ x: 640, y: 400 }), 400);
  }, 400);
}
