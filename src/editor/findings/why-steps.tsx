import type { Finding } from "../../rules/rule.ts";
import { showOnCanvas } from "../canvas/show.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";

/** The ways that show how a finding comes about, step by step; each step is found on the drawing. */
export function WhySteps({ finding }: { readonly finding: Finding }) {
  const editor = useEditorStore();
  const book = useEditor((state) => state.book);
  const { harness, traced } = useEditor((state) => state.derived);
  if (!book) return null;
  return book.whyOf(harness, traced, finding).ways.map(({ title, steps }) => (
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
