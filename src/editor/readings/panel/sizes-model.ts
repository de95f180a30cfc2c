import { writeSize } from "../../../catalogue/conductors.ts";
import { digits } from "../../../electrical/figure.ts";
import { blade, type FuseColour } from "../../../electrical/fuse/blade.ts";
import { nameLoad } from "../../../electrical/operate/drop.ts";
import type { Branch, FuseSizing } from "../../../electrical/operate/protect.ts";
import { fuseEdit } from "../../../electrical/operate/protect.ts";
import { formFor } from "../../../electrical/operate/read-parts.ts";
import { type HarnessSizing, sizeHarness } from "../../../electrical/operate/size-harness.ts";
import { sizingEdit, type WireSizing, wiresOnPath } from "../../../electrical/operate/size-wires.ts";
import { type ContactKey, refOfKey } from "../../../graph/contacts.ts";
import { type Edit, group } from "../../../graph/edits/edit.ts";
import type { Harness, PartId, WireId } from "../../../graph/harness.ts";
import { trace } from "../../../graph/trace.ts";
import type { About } from "../../../rules/rule.ts";

export type WireRow = {
  readonly wire: WireId;
  readonly name: string;
  readonly now: string;
  /** "none does" where no size meets both demands. */
  readonly proposed: string;
  readonly changes: boolean;
  readonly decided: string;
  readonly why: string;
  /** Takes this one alone; `null` where it may stay as it is. */
  readonly edit: Edit | null;
};

export type FuseRow = {
  readonly fuse: PartId;
  readonly name: string;
  readonly now: string;
  readonly proposed: { readonly rating: string; readonly colour: FuseColour | null } | null;
  readonly changes: boolean;
  readonly why: string;
  /** "W4 to 6 mm²": what must grow before a rating fits. */
  readonly grow: readonly string[];
  readonly edit: Edit | null;
};

export type BranchRow = {
  readonly id: string;
  readonly words: string;
  readonly verdict: string;
  readonly source: string | null;
  readonly doubt: string | null;
  readonly about: readonly About[];
};

/** One way that may be sized by itself. */
export type PathChoice = {
  readonly load: ContactKey;
  readonly name: string;
  readonly part: PartId;
  readonly wires: readonly WireId[];
};

export type SizesView = {
  readonly wires: readonly WireRow[];
  readonly fuses: readonly FuseRow[];
  readonly paths: readonly PathChoice[];
  readonly unmet: readonly string[];
  readonly edit: Edit | null;
};

/** What every wire and fuse needs, ready to be drawn. Plain data, so that a worker can send it. */
export function sizesView(harness: Harness, shrink: boolean): SizesView {
  const sizing = sizeHarness(harness, trace(harness), {}, shrink);
  const final = finalSizes(sizing.edit);
  return {
    wires: sizing.wires.map((one) => wireRow(harness, one, final, shrink)),
    fuses: sizing.fuses.map((one) => fuseRow(harness, one)),
    paths: pathChoices(harness, sizing),
    unmet: sizing.unmet,
    edit: sizing.edit,
  };
}

/** Where the whole is taken, each wire's size after all rounds. */
function finalSizes(edit: Edit | null): ReadonlyMap<WireId, number> {
  const edits = edit?.kind === "group" ? edit.edits : [];
  return new Map(
    edits.flatMap((one): [WireId, number][] =>
      one.kind === "change-wire" && typeof one.changes.area_mm2 === "number"
        ? [[one.wire, one.changes.area_mm2]]
        : [],
    ),
  );
}

const DECIDED: Readonly<Record<"ampacity" | "drop" | "both" | "thinnest", string>> = {
  ampacity: "ampacity",
  drop: "drop",
  both: "ampacity and drop",
  thinnest: "the thinnest in use",
};

function wireRow(
  harness: Harness,
  sizing: WireSizing,
  final: ReadonlyMap<WireId, number>,
  shrink: boolean,
): WireRow {
  const { sized, wire, why } = sizing;
  const { sizes } = harness.settings;
  const last_mm2 = final.get(wire);
  const own_mm2 = sized.ok ? sized.size.area_mm2 : null;
  const shown_mm2 = last_mm2 ?? own_mm2;
  const further =
    last_mm2 !== undefined && own_mm2 !== null && last_mm2 > own_mm2 * 1.001
      ? `; ${writeSize(last_mm2, sizes)} for its fuse, or as the others grow with it`
      : "";
  return {
    wire,
    name: harness.wires[wire]!.designation,
    now: sizing.stated_mm2 === "unknown" ? "not stated" : writeSize(sizing.stated_mm2, sizes),
    proposed: shown_mm2 === null ? "none does" : writeSize(shown_mm2, sizes),
    changes: last_mm2 !== undefined,
    decided: further
      ? "its fuse"
      : sized.ok
        ? DECIDED[sized.decidedBy]
        : `no size meets the ${DECIDED[sized.fails]}`,
    why: `${why}${further}`,
    edit: sizingEdit(harness, [sizing], shrink),
  };
}

function fuseRow(harness: Harness, sizing: FuseSizing): FuseRow {
  const part = harness.parts[sizing.fuse]!;
  const { choice, stated_A, grow } = sizing;
  const edit = fuseEdit([sizing]);
  const changesRating =
    edit?.kind === "group" &&
    edit.edits.some((one) => one.kind === "change-part" && one.part === sizing.fuse);
  const kept_A = !changesRating && typeof stated_A === "number" ? stated_A : null;
  const rating_A = choice?.ok ? (kept_A ?? choice.blade.rating_A) : null;
  const found = rating_A === null ? null : blade(formFor(part), rating_A);
  return {
    fuse: sizing.fuse,
    name: part.designation,
    now: stated_A === "unknown" ? "not stated" : `${digits(stated_A)} A`,
    proposed: rating_A === null ? null : { rating: `${digits(rating_A)} A`, colour: found?.colour ?? null },
    changes: edit !== null,
    why: sizing.why.replace(`${part.designation}: `, ""),
    grow: grow.map(
      ({ wire, area_mm2 }) =>
        `${harness.wires[wire]!.designation} to ${writeSize(area_mm2, harness.settings.sizes)}`,
    ),
    edit,
  };
}

export function branchRow(harness: Harness, { upper, lower, coordination, why }: Branch): BranchRow {
  const above = upper.includes("#") ? refOfKey(upper as ContactKey).part : (upper as PartId);
  return {
    id: `${upper} ${lower}`,
    words: why,
    verdict: coordination?.verdict ?? "not known",
    source: coordination?.source ?? null,
    doubt: coordination?.doubt ?? null,
    about: [above, lower].flatMap((part) => (harness.parts[part] ? [{ part }] : [])),
  };
}

function pathChoices(harness: Harness, { design, wires }: HarnessSizing): readonly PathChoice[] {
  const sized = new Set(wires.map(({ wire }) => wire));
  return [...design.paths].flatMap(([load, { path }]): PathChoice[] => {
    const on = [...new Set(wiresOnPath(path))].filter((wire) => sized.has(wire));
    if (on.length === 0) return [];
    return [{ load, name: nameLoad(harness, load), part: refOfKey(load).part, wires: on }];
  });
}

/** What is to be sized: everything, one wire, or the way of one load. */
export type Scope =
  | { readonly kind: "whole" }
  | { readonly kind: "wire"; readonly wire: WireId }
  | { readonly kind: "path"; readonly load: ContactKey };

export type ScopeChoice = { readonly id: string; readonly name: string; readonly scope: Scope };

/** What one may choose to size, by what is selected: the whole harness comes first. */
export function scopesFor(
  harness: Harness,
  view: SizesView,
  selection: { readonly parts: ReadonlySet<PartId>; readonly wires: ReadonlySet<WireId> },
): readonly ScopeChoice[] {
  const choices: ScopeChoice[] = [{ id: "whole", name: "The whole harness", scope: { kind: "whole" } }];
  for (const wire of selection.wires) {
    const name = harness.wires[wire]?.designation;
    if (name && view.wires.some((row) => row.wire === wire))
      choices.push({ id: wire, name: `${name} alone`, scope: { kind: "wire", wire } });
  }
  const near = view.paths.filter(
    ({ part, wires }) => selection.parts.has(part) || wires.some((wire) => selection.wires.has(wire)),
  );
  for (const { load, name } of near.slice(0, 12))
    choices.push({ id: load, name: `The way to ${name} and back`, scope: { kind: "path", load } });
  return choices;
}

export type Scoped = Pick<SizesView, "wires" | "fuses"> & { readonly edit: Edit | null };

/** The rows of a scope, and the one edit that takes all of them. */
export function withinScope(view: SizesView, scope: Scope): Scoped {
  if (scope.kind === "whole") return view;
  const ids =
    scope.kind === "wire"
      ? new Set([scope.wire])
      : new Set(view.paths.find(({ load }) => load === scope.load)?.wires);
  const wires = view.wires.filter(({ wire }) => ids.has(wire));
  const edits = wires.flatMap(({ edit }) => (edit?.kind === "group" ? edit.edits : []));
  const name = edits.length === 1 ? "size 1 wire" : `size ${edits.length} wires`;
  return { wires, fuses: [], edit: edits.length === 0 ? null : group(name, edits) };
}

/** What an edit of sizes would change, a line each: "W8: 2.5 mm² → 4 mm²". */
export function previewOf(harness: Harness, edit: Edit): readonly string[] {
  const { sizes } = harness.settings;
  const said = (value: unknown, say: (known: number) => string) =>
    typeof value === "number" ? say(value) : "not stated";
  const edits = edit.kind === "group" ? edit.edits : [edit];
  return edits.flatMap((one): string[] => {
    if (one.kind === "change-wire") {
      const wire = harness.wires[one.wire];
      const area = (value: unknown) => said(value, (known) => writeSize(known, sizes));
      return wire ? [`${wire.designation}: ${area(wire.area_mm2)} → ${area(one.changes.area_mm2)}`] : [];
    }
    if (one.kind !== "change-part") return [];
    const part = harness.parts[one.part];
    const rating = (value: unknown) => said(value, (known) => `${digits(known)} A`);
    if (part?.kind !== "fuse") return [];
    return [`${part.designation}: ${rating(part.rating_A)} → ${rating(one.changes.rating_A)}`];
  });
}
