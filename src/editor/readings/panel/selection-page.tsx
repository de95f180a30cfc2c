import type { Readings } from "../../../electrical/operate/readings.ts";
import { contactKey, keyOfEnd } from "../../../graph/contacts.ts";
import { useEditor } from "../../state/use-editor.ts";
import { Assumptions } from "./assumptions.tsx";
import { Basis } from "./basis.tsx";
import { Budgets } from "./budget.tsx";
import { ChannelsOf } from "./channel.tsx";
import { ContactTable } from "./contact-table.tsx";
import { Disclosure } from "./disclosure.tsx";
import { FigureGroups } from "./figure-rows.tsx";
import { figuresOf, idsOf, type Subject, staterOf, subjectOf, titleOfSubject } from "./selection-model.ts";
import { ShortAt } from "./short-circuit.tsx";
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
      {subject.kind === "part" && subject.part.kind === "speaker" && <ChannelsOf speaker={subject.part} />}
      <Budgets readings={readings} subject={subject} />
      {subject.kind === "part" && <ContactTable readings={readings} part={subject.part} />}
      {subject.kind === "harness" && <Warnings readings={readings} />}
      <Shorts readings={readings} subject={subject} />
      {of && <Basis of={of} />}
      <Assumptions readings={readings} about={idsOf(readings, subject)} />
    </>
  );
}

/** For a wire either end, for a contact itself. */
function Shorts(props: { readonly readings: Readings; readonly subject: Subject }) {
  const { readings, subject } = props;
  const contacts =
    subject.kind === "wire"
      ? subject.wire.ends.flatMap((end) => keyOfEnd(end) ?? [])
      : subject.kind === "part" && subject.contact
        ? [contactKey(subject.contact.part, subject.contact.contact)]
        : [];
  if (contacts.length === 0) return null;
  return (
    <Disclosure name="If it touched the frame">
      {contacts.map((contact) => (
        <ShortAt key={contact} readings={readings} contact={contact} />
      ))}
    </Disclosure>
  );
}

const EMPTY: Readonly<Record<Subject["kind"], string>> = {
  wire: "This wire is not in the readings yet.",
  part: "It has no figures of its own in this state; its contacts have.",
  several: "Select one wire, part or contact for its figures.",
  harness: "Draw a part, and what flows through it is told here.",
};
