import { useId, useState } from "react";
import { isKnown } from "../../../electrical/figure.ts";
import type { About } from "../../../rules/rule.ts";
import { useEditorStore } from "../../state/use-editor.ts";
import { type FigureGroup, type FigureLine, sayAnswer } from "./figure-line.ts";
import { showThing } from "./show.ts";

/** Groups of figures, each of which can be asked why. */
export function FigureGroups({ groups }: { readonly groups: readonly FigureGroup[] }) {
  return groups.map((group) => (
    <section key={group.heading} className="figures-group">
      <h3>{group.heading}</h3>
      <FigureRows lines={group.lines} />
    </section>
  ));
}

export function FigureRows({ lines }: { readonly lines: readonly FigureLine[] }) {
  return (
    <ul className="figures-rows">
      {lines.map((line) => (
        <FigureRow key={line.id} line={line} />
      ))}
    </ul>
  );
}

function FigureRow({ line }: { readonly line: FigureLine }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const { answer, name, remark, about } = line;
  return (
    <li className="figure">
      <p className="figure-line">
        <span className="figure-name">{name}</span>
        <strong className={isKnown(answer) ? "figure-value" : "figure-value figure-unknown"}>
          {sayAnswer(answer)}
        </strong>
        <button
          type="button"
          className="button quiet-button small-button figure-why"
          aria-label={`Why: ${name}`}
          aria-expanded={open}
          aria-controls={id}
          onClick={() => setOpen(!open)}
        >
          why
        </button>
      </p>
      {remark && (
        <p className="figure-remark">{about ? <ShowLink about={about}>{remark}</ShowLink> : remark}</p>
      )}
      <div id={id} hidden={!open} className="figure-because">
        {open && <Because line={line} />}
      </div>
    </li>
  );
}

/** The formula with its numbers, the table, the source and the doubt. */
export function Because({ line }: { readonly line: Pick<FigureLine, "answer"> }) {
  const { answer } = line;
  if (!isKnown(answer)) {
    return (
      <dl>
        <dt>Missing</dt>
        <dd>{answer.unknown}</dd>
      </dl>
    );
  }
  return (
    <dl>
      <dt>Formula</dt>
      <dd className="figure-formula">{answer.formula}</dd>
      {answer.table && (
        <>
          <dt>Table</dt>
          <dd>{answer.table}</dd>
        </>
      )}
      <dt>Source</dt>
      <dd>{answer.source}</dd>
      <dt>Doubt</dt>
      <dd>{answer.doubt ?? "nothing is known against it"}</dd>
    </dl>
  );
}

/** The name of a thing: pressed, it is selected and shown on the drawing. */
export function ShowLink(props: {
  readonly about: readonly About[];
  readonly children: string;
  readonly label?: string;
}) {
  const editor = useEditorStore();
  return (
    <button
      type="button"
      className="figures-link"
      aria-label={props.label ?? `Show ${props.children} on the drawing`}
      onClick={() => showThing(editor, props.about)}
    >
      {props.children}
    </button>
  );
}
