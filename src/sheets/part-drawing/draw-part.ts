import type { Harness } from "../../graph/harness.ts";
import type { Traced } from "../../graph/trace.ts";
import type { Primitive } from "../../layout/drawing.ts";
import { facesLeft } from "../../layout/geometry/shape.ts";
import type { PlacedPart } from "../../layout/scene.ts";
import { drawGround } from "./ground.ts";
import { drawHousing } from "./housing.ts";
import { drawCap, drawSplice } from "./joint.ts";
import { drawOneSided } from "./one-sided.ts";
import { drawRelay } from "./relay.ts";
import { drawTwoEnded } from "./two-ended.ts";

export type PartContext = {
  /** Read for what a part names of another: the module of a receptacle, a mate. */
  readonly harness: Harness;
  readonly traced?: Traced;
};

/**
 * A part as it is drawn on screen and paper, relative to its top left corner. Everything lies inside the part's
 * outline; texts that are too long for it end in an ellipsis.
 */
export function drawPart(
  placed: Pick<PlacedPart, "part" | "shape" | "turned">,
  context: PartContext,
): readonly Primitive[] {
  const { part, shape, turned } = placed;
  switch (part.kind) {
    case "connector":
    case "module":
      return drawHousing(part, shape, facesLeft(part, turned), context.harness);
    case "splice":
      return drawSplice(part, shape, turned);
    case "cap":
      return drawCap(part, shape, facesLeft(part, turned));
    case "ground":
      return drawGround(part, shape, facesLeft(part, turned));
    case "supply":
    case "load":
    case "speaker":
      return drawOneSided(part, shape, facesLeft(part, turned));
    case "fuse":
    case "switch":
    case "diode":
    case "resistor":
    case "capacitor":
      return drawTwoEnded(part, shape, turned);
    case "relay":
      return drawRelay(part, shape, turned);
  }
}
