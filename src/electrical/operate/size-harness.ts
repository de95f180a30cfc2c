import { applyAll } from "../../graph/edits/apply.ts";
import { type Edit, group } from "../../graph/edits/edit.ts";
import type { Harness } from "../../graph/harness.ts";
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
 * Sizes every wire and fuse of a harness for all that it has to bear.
 * @param shrink also makes wires thinner that are thicker than they need be
 */
export function sizeHarness(
  harness: Harness,
  traced: Pick<Traced, "wiresAt">,
  ask: Ask = {},
  shrink = false,
): HarnessSizing {
  const design = designOf(harness, traced, ask);
  const wires = sizeWires(design);
  const fuses = sizeFuses(design);
  const edits: Edit[] = [];
  let current = harness;
  let now = { design, wires, fuses };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const found = [sizingEdit(current, now.wires, shrink && round === 0), fuseEdit(now.fuses)];
    const made = found.flatMap((edit) => edit ?? []);
    const applied = made.length === 0 ? null : applyAll(current, made);
    if (!applied?.ok) break;
    edits.push(...made.flatMap((edit) => (edit.kind === "group" ? edit.edits : [edit])));
    current = applied.harness;
    const next = designOf(current, trace(current), ask);
    now = { design: next, wires: sizeWires(next), fuses: sizeFuses(next) };
  }
  return {
    design,
    wires,
    fuses,
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
