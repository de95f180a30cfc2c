import { sayColour } from "../../catalogue/colours.ts";
import { METRIC_SIZES_mm2 } from "../../catalogue/conductors.ts";
import { digits } from "../../electrical/figure.ts";
import { BLADES } from "../../electrical/fuse/blade.ts";
import { formFor } from "../../electrical/operate/read-parts.ts";
import { group } from "../../graph/edits/edit.ts";
import type { Context } from "../context.ts";
import { type Fix, fixWith } from "../rule.ts";
import { bears, saySize } from "./bears.ts";
import type { Stretch } from "./stretches.ts";
import { allowed_A, type Thin } from "./thin-wires.ts";

/** The wires of each stretch together. */
export function byGuard(thin: readonly Thin[]): readonly (readonly Thin[])[] {
  const groups = new Map<Stretch, Thin[]>();
  for (const one of thin) {
    const known = groups.get(one.stretch);
    if (known) known.push(one);
    else groups.set(one.stretch, [one]);
  }
  return [...groups.values()];
}

/** "W3 (red, 0.5 mm²) bears 11 A by thin-wall vehicle cable, maker's sheet". */
export function sayThin({ wire, bears: { amps, book } }: Thin): string {
  const colour = wire.colour ? `${sayColour(wire.colour)}, ` : "";
  return `${wire.designation} (${colour}${saySize(wire)}) bears ${digits(amps, 3)} A by ${book}`;
}

/** The largest rating that the thinnest wire allows; none where no standard one is small enough. */
export function smallerFuse(context: Context, { guard }: Stretch, worst: Thin): readonly Fix[] {
  if (guard.kind !== "fuse") return [];
  const { fuse } = guard;
  const most_A = allowed_A(context, guard, worst.bears.amps);
  const blade = BLADES[formFor(fuse)].findLast((one) => one.rating_A <= most_A + 1e-9);
  if (!blade) return [];
  return [
    fixWith(`Rate ${fuse.designation} at ${blade.rating_A} A`, () => ({
      kind: "change-part",
      part: fuse.id,
      changes: { rating_A: blade.rating_A },
    })),
  ];
}

/** Each wire in the least size that the fuse allows. */
export function thickerWires(context: Context, thin: readonly Thin[]): readonly Fix[] {
  const grown = thin.flatMap(({ wire, rating_A, stretch }) => {
    const area_mm2 = METRIC_SIZES_mm2.find((area) => {
      const { material, insulation, runs } = wire;
      const found = bears(context.harness, { area_mm2: area, material, insulation, runs });
      return found && allowed_A(context, stretch.guard, found.amps) >= rating_A;
    });
    return area_mm2 === undefined ? [] : [{ wire, area_mm2 }];
  });
  if (grown.length !== thin.length) return [];
  const [first] = grown;
  const label =
    grown.length === 1
      ? `Make ${first!.wire.designation} of ${digits(first!.area_mm2)} mm²`
      : `Make ${grown.length} wires of thicker cable`;
  return [
    fixWith(label, () =>
      group(
        label.charAt(0).toLowerCase() + label.slice(1),
        grown.map(({ wire, area_mm2 }) => ({ kind: "change-wire", wire: wire.id, changes: { area_mm2 } })),
      ),
    ),
  ];
}
