import { nameContact } from "../../catalogue/describe.ts";
import type { ContactKey } from "../../graph/contacts.ts";
import { type Edit, group } from "../../graph/edits/edit.ts";
import type { Fuse, PartId, WireId } from "../../graph/harness.ts";
import { digits, isKnown } from "../figure.ts";
import { blade } from "../fuse/blade.ts";
import { CONTINUOUS_SHARE, chooseFuse, type FuseChoice, type FuseRule } from "../fuse/choose.ts";
import { type Coordination, coordinate } from "../fuse/coordination.ts";
import { nodesOf } from "../solve/circuit.ts";
import { FRAME } from "./built.ts";
import type { Design } from "./design.ts";
import { aroundNodes, into } from "./path.ts";
import { bladeOf, formFor } from "./read-parts.ts";
import type { Readings } from "./readings.ts";
import { shortAt } from "./short.ts";
import { amperesOf, sizeFor } from "./size-wires.ts";

export type FuseSizing = {
  readonly fuse: PartId;
  readonly load_A: number;
  readonly stated_A: number | "unknown";
  /** The wires from here to the next fuse or load; the weakest first. */
  readonly wires: readonly WireId[];
  readonly weakest: { readonly wire: WireId; readonly ampacity_A: number } | null;
  /** `null` where no wire stands behind it, or nothing says what one may carry. */
  readonly choice: FuseChoice | null;
  /** Wires that must grow before a rating fits, and to what size. */
  readonly grow: readonly { readonly wire: WireId; readonly area_mm2: number }[];
  readonly why: string;
};

/** The rule that a fuse is chosen by where the settings name none. */
const USUAL_RULE: FuseRule["id"] = "at-most-ampacity";

/** A rating for each fuse, from its load and the weakest wire behind it. */
export function sizeFuses(design: Design): readonly FuseSizing[] {
  const fuses = Object.values(design.harness.parts).filter((part) => part.kind === "fuse");
  return fuses.map((part) => sizeFuse(design, part.id));
}

/** Forms whose standard ratings are in no table here. */
const NO_TABLE: ReadonlySet<Fuse["form"]> = new Set(["glass", "bolt-down", "breaker"]);

export function sizeFuse(design: Design, id: PartId): FuseSizing {
  const { harness } = design;
  const part = harness.parts[id]!;
  const most = design.fuses.get(id);
  const readings = most?.readings ?? design.readings[0]!;
  const load_A = most?.amps ?? 0;
  const wires = behindFuse(readings, id);
  const known = wires.flatMap((wire) => {
    const ampacity_A = amperesOf(design, wire);
    return ampacity_A === null ? [] : [{ wire, ampacity_A }];
  });
  known.sort((a, b) => a.ampacity_A - b.ampacity_A);
  const weakest = known[0] ?? null;
  const stated_A = part.kind === "fuse" ? part.rating_A : "unknown";
  const base = { fuse: id, load_A, stated_A, wires: known.map(({ wire }) => wire), weakest };
  if (!weakest)
    return { ...base, choice: null, grow: [], why: `${part.designation}: no wire stands behind it.` };
  if (part.kind === "fuse" && NO_TABLE.has(part.form)) {
    const needed_A = load_A / CONTINUOUS_SHARE;
    const words = `${digits(load_A, 3)} A / ${CONTINUOUS_SHARE} = ${digits(needed_A, 3)} A, and the weakest wire carries ${digits(weakest.ampacity_A, 3)} A`;
    return {
      ...base,
      choice: null,
      grow: [],
      why: `${part.designation}: no table of ${part.form} fuses is at hand; its load asks for ${words}`,
    };
  }
  const { fuseRule } = harness.settings.electrical;
  const name = harness.wires[weakest.wire]!.designation;
  const choice = chooseFuse({
    load_A,
    weakest: { name, ampacity_A: weakest.ampacity_A },
    form: formFor(part),
    rule: fuseRule === "unknown" ? USUAL_RULE : fuseRule,
  });
  const needed_A = !choice.ok && choice.grow === "wire" ? choice.neededAmpacity_A : null;
  const grow =
    needed_A === null
      ? []
      : known
          .filter(({ ampacity_A }) => ampacity_A <= needed_A)
          .flatMap(({ wire }) => {
            const size = sizeFor(design, wire, needed_A);
            return size ? [{ wire, area_mm2: size.area_mm2 }] : [];
          });
  return {
    ...base,
    choice,
    grow,
    why: `${part.designation}: ${choice.ok ? choice.rating.formula : choice.why}`,
  };
}

/** The ratings, and the wires that must grow for them, as one ordinary edit; `null` where nothing changes. */
export function fuseEdit(sizings: readonly FuseSizing[]): Edit | null {
  const grown = new Map<WireId, number>();
  const edits: Edit[] = [];
  for (const { fuse, choice, grow, stated_A } of sizings) {
    for (const { wire, area_mm2 } of grow) grown.set(wire, Math.max(area_mm2, grown.get(wire) ?? 0));
    if (choice?.ok && stated_A !== choice.blade.rating_A) {
      // A rating that carries the load and that the wire allows is a person's choice to keep.
      const kept =
        typeof stated_A === "number" && stated_A >= choice.blade.rating_A && stated_A <= choice.most_A;
      if (!kept)
        edits.push({ kind: "change-part", part: fuse, changes: { rating_A: choice.blade.rating_A } });
    }
  }
  for (const [wire, area_mm2] of grown) edits.push({ kind: "change-wire", wire, changes: { area_mm2 } });
  return edits.length === 0 ? null : group("size fuses", edits);
}

/** Parts that current passes on its way from a fuse to the next one. */
const PASSES = new Set(["wire", "mate", "joint", "switch", "make", "rest", "diode", "resistor"]);

/** The wires that a fuse protects: on its load's side up to the next fuse, load, box or ground. */
export function behindFuse(readings: Readings, fuse: PartId): readonly WireId[] {
  const { solved } = readings;
  const { built } = solved;
  const element = built.owners.id.findIndex((id, at) => id === fuse && built.owners.role[at] === "fuse");
  if (element < 0) return [];
  const [first, second] = nodesOf(built.circuit.elements[element]!);
  return spread(readings, loadSide(readings, element, first, second));
}

/** The side that current leaves by; with no current, the one that no source is met on first. */
function loadSide(readings: Readings, element: number, first: number, second: number): number {
  const brought = into(readings.solved, element, second);
  if (Math.abs(brought) > 1e-9) return brought > 0 ? second : first;
  return meetsSource(readings, second, element) && !meetsSource(readings, first, element) ? first : second;
}

function meetsSource(readings: Readings, start: number, without: number): boolean {
  const { owners } = readings.solved.built;
  let found = false;
  visit(readings, start, without, (element) => {
    const role = owners.role[element]!;
    if (role === "battery" || role === "feed") found = true;
    return role === "fuse" || PASSES.has(role);
  });
  return found;
}

function spread(readings: Readings, start: number): readonly WireId[] {
  const { owners } = readings.solved.built;
  const wires: WireId[] = [];
  visit(readings, start, -1, (element) => {
    const role = owners.role[element]!;
    if (role === "wire") wires.push(owners.id[element] as WireId);
    return PASSES.has(role);
  });
  return wires;
}

/** Walks from a node over every element that `through` lets it pass; the frame ends it. */
function visit(
  readings: Readings,
  start: number,
  without: number,
  through: (element: number) => boolean,
): void {
  const around = aroundNodes(readings.solved);
  const { elements } = readings.solved.built.circuit;
  const seen = new Set([start]);
  const met = new Set([without]);
  const queue = [start];
  for (let at = 0; at < queue.length; at++) {
    const node = queue[at]!;
    if (node === FRAME) continue;
    for (let index = around.begins[node]!; index < around.begins[node + 1]!; index++) {
      const element = around.elements[index]!;
      if (met.has(element)) continue;
      met.add(element);
      if (!through(element)) continue;
      const [first, second] = nodesOf(elements[element]!);
      const other = first === node ? second : first;
      if (seen.has(other)) continue;
      seen.add(other);
      queue.push(other);
    }
  }
}

export type Branch = {
  readonly upper: PartId | ContactKey;
  readonly lower: PartId;
  /** `null` where one of the two has no table of times. */
  readonly coordination: Coordination | null;
  readonly why: string;
};

/** Each fuse against the next one towards the supply: which of the two opens. */
export function coordinateFuses(design: Design): readonly Branch[] {
  const { harness } = design;
  const found = new Map<string, Branch>();
  for (const { path, readings } of design.paths.values()) {
    const fuses = path.steps.filter(({ role, side }) => role === "fuse" && side === "supply");
    const giver = readings.solved.built.givers.find(({ key }) => key === path.source);
    for (const [index, step] of fuses.entries()) {
      const lower = step.part!;
      const above = fuses[index - 1]?.part ?? null;
      const behind = index === 0 && giver?.limitedBy === "fuse" ? giver : null;
      const upper = above ?? behind?.key ?? null;
      if (upper === null || found.has(`${upper} ${lower}`)) continue;
      const upperBlade = above ? bladeOf(harness.parts[above]) : blade("regular", behind!.limit_A!);
      const upperName = above
        ? harness.parts[above]!.designation
        : `the fuse behind ${nameContact(harness, behind!.key)}`;
      found.set(`${upper} ${lower}`, branch(readings, upper, upperName, upperBlade, lower));
    }
  }
  return [...found.values()];
}

function branch(
  readings: Readings,
  upper: PartId | ContactKey,
  upperName: string,
  upperBlade: ReturnType<typeof bladeOf>,
  lower: PartId,
): Branch {
  const { harness, built } = readings.solved;
  const part = harness.parts[lower]!;
  const lowerBlade = bladeOf(part);
  const names = `${upperName} and ${part.designation}`;
  if (!upperBlade || !lowerBlade)
    return {
      upper,
      lower,
      coordination: null,
      why: `${names}: one of them is no standard blade, so no table of its times is at hand.`,
    };
  const element = built.owners.id.findIndex((id, at) => id === lower && built.owners.role[at] === "fuse");
  const [first, second] = nodesOf(built.circuit.elements[element]!);
  const key = built.keyOf[loadSide(readings, element, first, second)];
  const current = key ? shortAt(readings, key)?.current : undefined;
  if (!current || !isKnown(current))
    return { upper, lower, coordination: null, why: `${names}: nothing flows behind ${part.designation}.` };
  const coordination = coordinate(upperBlade, lowerBlade, current.value);
  return { upper, lower, coordination, why: `${names}: ${coordination.why}.` };
}
