import { contactKey } from "../../graph/contacts.ts";
import { apply } from "../../graph/edits/apply.ts";
import { type Edit, group as editGroup, type Refused, refused } from "../../graph/edits/edit.ts";
import { join as joinContacts } from "../../graph/edits/join.ts";
import { capSpares } from "../../graph/edits/lead.ts";
import type { Connector, ContactRef, Harness, JobSide, PartId } from "../../graph/harness.ts";
import { faceRows, makePart, Names } from "../../graph/make.ts";
import { cavityOf } from "./cavities.ts";
import { mendedCavities } from "./change-cavities.ts";
import { jointKind } from "./joints.ts";
import { type Housing, type ReadBack, readBack } from "./read-back.ts";
import {
  type Group,
  groupOf,
  type LeadRef,
  leadOf,
  otherSide,
  type Review,
  runsThrough,
  SIDES,
  type SideName,
  stateOf,
} from "./review.ts";

/** A connector that the review makes. */
export type NewEnd = {
  readonly part: null;
  readonly side: JobSide;
  readonly designation: string;
  readonly name: string;
  readonly view: Connector["view"];
  readonly form: Connector["form"];
  readonly shell: string | null;
  /** The face as contact numbers, or into how many rows the cavities are set out. */
  readonly rows: Connector["rows"] | number;
  readonly chart: Connector["chart"];
};

/** What stands at one end of the job: a connector to be made, or one of the harness. */
export type JobEnd = NewEnd | { readonly part: PartId };
export type JobEnds = Readonly<Record<SideName, JobEnd>>;

export type Accepted = {
  readonly ok: true;
  readonly edit: Edit;
  readonly parts: Readonly<Record<SideName, PartId>>;
};

/**
 * What was decided, as one edit: connectors with their cavities, leads, joints and caps as ordinary parts and
 * wires. What the harness has already and the review left as it was is not touched. New parts have no places:
 * they are left to the arrangement.
 */
export function toEdit(harness: Harness, review: Review, ends: JobEnds): Accepted | Refused {
  const maker = new Maker(harness);
  const parts = { left: "" as PartId, right: "" as PartId };
  const before = readBack(
    harness,
    housingOf(harness, review, ends, "left"),
    housingOf(harness, review, ends, "right"),
  );
  for (const side of SIDES) {
    const made = putEnd(maker, review, ends[side], side);
    if (!made.ok) return made;
    parts[side] = made.part;
  }
  if (parts.left === parts.right)
    return refused("both charts are the same connector; choose another for one side");
  const at = contactsByName(review, parts);
  const kept = clearAway(maker, review, before, at);
  for (const group of review.groups) {
    const old = kept.get(groupId(group));
    if (old) keepJoint(maker, review, before, old, group);
    else makeJoint(maker, review, group, at);
  }
  capLeads(maker, review, before, at);
  const [left, right] = SIDES.map((side) => maker.harness.parts[parts[side]]?.designation ?? "");
  if (maker.refusal) return maker.refusal;
  if (maker.edits.length === 0) return refused("the harness has all of this already");
  return { ok: true, parts, edit: editGroup(`join ${left} and ${right} by their charts`, maker.edits) };
}

/** Collects edits and the harness that they make; the first refusal ends it. */
class Maker {
  readonly edits: Edit[] = [];
  refusal: Refused | null = null;

  constructor(public harness: Harness) {}

  make(edit: Edit | Refused): boolean {
    if (this.refusal) return false;
    const result = "ok" in edit ? edit : apply(this.harness, edit);
    if (!result.ok) {
      this.refusal = result;
      return false;
    }
    this.harness = result.harness;
    this.edits.push(edit as Edit);
    return true;
  }
}

function housingOf(harness: Harness, review: Review, ends: JobEnds, side: SideName): Housing | null {
  const { part: id } = ends[side];
  const part = id === null ? undefined : harness.parts[id];
  if (part?.kind !== "connector") return null;
  const { leads } = review.charts[side];
  return { part, names: part.cavities.map((cavity, index) => leads[index]?.name ?? cavity.label) };
}

function putEnd(
  maker: Maker,
  review: Review,
  end: JobEnd,
  side: SideName,
): { readonly ok: true; readonly part: PartId } | Refused {
  const { leads } = review.charts[side];
  const partners = (name: string) => {
    const group = groupOf(review, { side, lead: name });
    const across = otherSide(side);
    return group ? group[across].flatMap((lead) => leadOf(review, { side: across, lead }) ?? []) : [];
  };
  if (end.part !== null) {
    const part = maker.harness.parts[end.part];
    if (part?.kind !== "connector") return refused("one of the two connectors is no longer there");
    const changes = mendedCavities(part, review, side, partners);
    if (changes) maker.make({ kind: "change-part", part: part.id, changes });
    return maker.refusal ?? { ok: true, part: part.id };
  }
  if (leads.length === 0) return refused("a chart without rows makes no connector");
  const designation = end.designation.trim();
  if (designation === "") return refused("a connector needs a designation, like X1");
  if (Object.values(maker.harness.parts).some((part) => part.designation === designation))
    return refused(`another part is called ${designation}`);
  const missing = new Set(review.proposal.missing.filter((one) => one.side === side).map((one) => one.lead));
  const cavities = leads.map((lead) => {
    const cavity = cavityOf(lead, end.side, partners(lead.name));
    // What is left apart need not be joined; a lead that something needs stays expected, and the check says so.
    const isApart = stateOf(review, { side, lead: lead.name }) === "apart" && !missing.has(lead.name);
    return isApart ? { ...cavity, use: "optional" as const } : cavity;
  });
  const rowCount = typeof end.rows === "number" ? Math.max(end.rows, Math.ceil(leads.length / 200)) : 0;
  const part = makePart("connector", new Names(maker.harness).part(), designation, {
    name: end.name.trim(),
    belongsTo: { side: end.side, module: null },
    view: end.view,
    form: end.form,
    shell: end.shell,
    chart: end.chart,
    cavities,
    rows: typeof end.rows === "number" ? faceRows(leads.length, Math.min(rowCount, leads.length)) : end.rows,
  });
  maker.make({ kind: "add-part", part, place: null });
  return maker.refusal ?? { ok: true, part: part.id };
}

type Contacts = (ref: LeadRef) => ContactRef | null;

function contactsByName(review: Review, parts: Readonly<Record<SideName, PartId>>): Contacts {
  const numbers = new Map<string, number>();
  for (const side of SIDES) {
    for (const [index, { name }] of review.charts[side].leads.entries()) {
      numbers.set(`${side}:${name}`, index + 1);
    }
  }
  return ({ side, lead }) => {
    const contact = numbers.get(`${side}:${lead}`);
    return contact === undefined ? null : { part: parts[side], contact };
  };
}

const groupId = (group: Group) => JSON.stringify([[...group.left].sort(), [...group.right].sort()]);

/**
 * Takes away what the harness has and the review has not: joints that were taken apart or changed, caps that
 * were taken off. A lead whose cap gives way to a joint is kept, for the joint takes it.
 * @returns the joints that stay, by what they join
 */
function clearAway(maker: Maker, review: Review, before: ReadBack, at: Contacts): ReadonlyMap<string, Group> {
  const wanted = new Map(review.groups.map((group) => [groupId(group), group]));
  const kept = new Map<string, Group>();
  for (const [group, copper] of before.copper) {
    const now = wanted.get(groupId(group));
    const needsJoint = now?.joint && copper.splices.length === 0;
    if (now && !needsJoint) {
      kept.set(groupId(group), group);
      continue;
    }
    if (!copper.shared) {
      maker.make({ kind: "remove", parts: copper.splices, wires: copper.wires });
      continue;
    }
    const leads = new Set(SIDES.flatMap((side) => group[side].map((lead) => keyAt(at, { side, lead }))));
    const wires = copper.wires.filter((id) =>
      maker.harness.wires[id]?.ends.some(
        (end) => end !== "loose" && leads.has(contactKey(end.part, end.contact)),
      ),
    );
    maker.make({ kind: "remove", parts: [], wires });
  }
  for (const side of SIDES) {
    for (const [lead, fate] of Object.entries(before.fates[side])) {
      const ref = { side, lead };
      const now = stateOf(review, ref);
      if (fate !== "capped" || now === "capped" || now === "joined") continue;
      const contact = at(ref);
      if (!contact) continue;
      const wires = Object.values(maker.harness.wires).filter((wire) =>
        wire.ends.some(
          (end) => end !== "loose" && end.part === contact.part && end.contact === contact.contact,
        ),
      );
      const caps = wires.flatMap((wire) =>
        wire.ends.flatMap((end) =>
          end !== "loose" && maker.harness.parts[end.part]?.kind === "cap" ? [end.part] : [],
        ),
      );
      maker.make({ kind: "remove", parts: caps, wires: wires.map((wire) => wire.id) });
      maker.make({
        kind: "change-cavity",
        ...contact,
        changes: { use: now === "apart" ? "optional" : "expected" },
      });
    }
  }
  return kept;
}

function keyAt(at: Contacts, ref: LeadRef): string {
  const contact = at(ref);
  return contact ? contactKey(contact.part, contact.contact) : "";
}

/** A joint that the harness has: only how it is made may be another now. */
function keepJoint(maker: Maker, review: Review, before: ReadBack, old: Group, now: Group): void {
  if (now.joint === old.joint) return;
  const { method, cover } = jointKind(now.joint ?? review.joint);
  for (const part of before.copper.get(old)?.splices ?? []) {
    maker.make({ kind: "change-part", part, changes: { method, cover } });
  }
}

/**
 * A new joint. Two leads of which at most one has a colour of its own are one lead run through, as on the
 * bench; all others meet in a splice, the left's leads on its one side and the right's on the other.
 */
function makeJoint(maker: Maker, review: Review, group: Group, at: Contacts): void {
  const refs = SIDES.flatMap((side) => group[side].map((lead): LeadRef => ({ side, lead })));
  const contacts = refs.map(at);
  if (contacts.some((one) => one === null)) return;
  if (runsThrough(review, group)) {
    maker.make(joinContacts(maker.harness, contacts[0]!, contacts[1]!));
    return;
  }
  const names = new Names(maker.harness);
  const { method, cover } = jointKind(group.joint ?? review.joint);
  const splice = makePart("splice", names.part(), names.designation("splice"), { method, cover });
  if (!maker.make({ kind: "add-part", part: splice, place: null })) return;
  for (const [index, ref] of refs.entries()) {
    const far: ContactRef = { part: splice.id, contact: ref.side === "left" ? 1 : 2 };
    maker.make(joinContacts(maker.harness, contacts[index]!, far));
  }
}

function capLeads(maker: Maker, review: Review, before: ReadBack, at: Contacts): void {
  const targets = SIDES.flatMap((side) =>
    review.charts[side].leads.flatMap(({ name }) => {
      const ref = { side, lead: name };
      const isNew = stateOf(review, ref) === "capped" && before.fates[side][name] !== "capped";
      const contact = isNew ? at(ref) : null;
      return contact ? [contact] : [];
    }),
  );
  if (targets.length > 0) maker.make(capSpares(maker.harness, targets));
}
