import { showOnCanvas } from "../canvas/show.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";
import { shownWhy } from "./shown-why.ts";

/** The ways that show how a finding comes about, step by step; each step is found on the drawing. */
export function WhySteps() {
  const editor = useEditorStore();
  const why = useEditor(shownWhy);
  return why?.ways.map(({ title, steps }) => (
    <section key={title} className="why-way">
      <h2>{title}</h2>
      <ol>
        {steps.map(({ words, at }) => (
          <li key={words}>
            <button type="button" className="button quiet-button" onClick={() => showOnCanvas(editor, at)}>
              {words}
            </button>
          </li>
        ))}
      </ol>
    </section>
  ));
}
