import { applyAll } from "../../graph/edits/apply.ts";
import { type Edit, group } from "../../graph/edits/edit.ts";
import type { Harness, WireId } from "../../graph/harness.ts";
import { type Traced, trace } from "../../graph/trace.ts";
import type { Ask } from "./circuit-of.ts";
import { type Design, designOf } from "./design.ts";
import { type Branch, coordinateFuses, type FuseSizing, fuseEdit, sizeFuses } from "./protect.ts";
import { sizeWires, sizingEdit, type WireSizing } from "./size-wires.ts";

export type HarnessSizing = {
  readonly design: Design;
  /** As it stands: what each wire needs, whether it has it, and why. */
  readonly wires: readonly WireSizing[];
  readonly fuses: readonly FuseSizing[];
  readonly branches: readonly Branch[];
  /** Everything that is too thin or wrongly fused put right, as one edit; `null` where nothing is. */
  readonly edit: Edit | null;
  /** What no standard size or rating cures, in words. */
  readonly unmet: readonly string[];
};

/** A thicker wire changes what flows, and a fuse that asks for it may change it again: rounds until it rests. */
const MOST_ROUNDS = 4;

/**
 * Sizes every wire and fuse of a harness for all that it has to bear. Fuses come first: what they lose is off the budget
 * of the wires, and a fuse may ask for more wire than its load does.
 * @param shrink also makes wires thinner that are thicker than they need be
 */
export function sizeHarness(
  harness: Harness,
  traced: Pick<Traced, "wiresAt">,
  ask: Ask = {},
  shrink = false,
): HarnessSizing {
  const design = designOf(harness, traced, ask);
  const first = sizeOnce(design, ask);
  const edits: Edit[] = [];
  let current = harness;
  let now = first;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const made = [fuseEdit(now.fuses), sizingEdit(current, now.wires, shrink && round === 0)].flatMap(
      (edit) => edit ?? [],
    );
    const applied = made.length === 0 ? null : applyAll(current, made);
    if (!applied?.ok) break;
    edits.push(...made.flatMap((edit) => (edit.kind === "group" ? edit.edits : [edit])));
    current = applied.harness;
    now = sizeOnce(designOf(current, trace(current), ask), ask);
  }
  return {
    design,
    wires: first.wires,
    fuses: first.fuses,
    branches: coordinateFuses(design),
    edit: edits.length === 0 ? null : group("size wires and fuses", lastOfEach(edits)),
    unmet: [
      ...now.wires.flatMap(({ wire, sized }) =>
        sized.ok ? [] : [`${harness.wires[wire]!.designation}: ${sized.why}.`],
      ),
      ...now.fuses.flatMap(({ choice, why }) => (choice && !choice.ok ? [`${why}.`] : [])),
    ],
  };
}

type Sizings = Pick<HarnessSizing, "wires" | "fuses">;

/** Fuses as the harness stands; wires as they must be once the fuses are right. */
function sizeOnce(design: Design, ask: Ask): Sizings {
  const { harness } = design;
  const fuses = sizeFuses(design);
  const least = new Map<WireId, number>();
  for (const { grow } of fuses)
    for (const { wire, area_mm2 } of grow) least.set(wire, Math.max(area_mm2, least.get(wire) ?? 0));
  const edit = fuseEdit(fuses);
  const ratings = edit?.kind === "group" ? edit.edits.filter(({ kind }) => kind === "change-part") : [];
  const rated = ratings.length === 0 ? null : applyAll(harness, ratings);
  const fused = rated?.ok ? designOf(rated.harness, trace(rated.harness), ask) : design;
  return { wires: sizeWires(fused, undefined, least), fuses };
}

/** Of several changes of one thing the last one counts. */
function lastOfEach(edits: readonly Edit[]): readonly Edit[] {
  const last = new Map<string, Edit>();
  for (const edit of edits) {
    const key =
      edit.kind === "change-wire" ? edit.wire : edit.kind === "change-part" ? edit.part : String(last.size);
    last.set(key, edit);
  }
  return [...last.values()];
}
