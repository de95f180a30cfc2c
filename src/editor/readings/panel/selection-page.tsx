import type { Readings } from "../../../electrical/operate/readings.ts";
import { useEditor } from "../../state/use-editor.ts";
import { Assumptions } from "./assumptions.tsx";
import { Basis } from "./basis.tsx";
import { Budgets } from "./budget.tsx";
import { ContactTable } from "./contact-table.tsx";
import { FigureGroups } from "./figure-rows.tsx";
import { figuresOf, idsOf, type Subject, staterOf, subjectOf, titleOfSubject } from "./selection-model.ts";
import { Warnings } from "./warnings.tsx";

/** The figures of what is selected, and what they rest on. */
export function SelectionPage({ readings }: { readonly readings: Readings }) {
  const selection = useEditor((state) => state.selection);
  const harness = useEditor((state) => state.history.present);
  const subject = subjectOf(harness, selection);
  const of = staterOf(subject);
  const groups = figuresOf(readings, subject);
  return (
    <>
      <h2>{titleOfSubject(harness, subject)}</h2>
      {groups.length === 0 && <p className="figures-quiet">{EMPTY[subject.kind]}</p>}
      <FigureGroups groups={groups} />
      <Budgets readings={readings} subject={subject} />
      {subject.kind === "part" && <ContactTable readings={readings} part={subject.part} />}
      {subject.kind === "harness" && <Warnings readings={readings} />}
      {of && <Basis of={of} />}
      <Assumptions readings={readings} about={idsOf(readings, subject)} />
    </>
  );
}

const EMPTY: Readonly<Record<Subject["kind"], string>> = {
  wire: "This wire is not in the readings yet.",
  part: "It has no figures of its own in this state; its contacts have.",
  several: "Select one wire, part or contact for its figures.",
  harness: "Draw a part, and what flows through it is told here.",
};
