import type { Splice } from "../../graph/harness.ts";

/** A way of making a joint, with the cover that goes with it. */
export type JointKind = {
  readonly id: string;
  /** As a person chooses it. */
  readonly name: string;
  readonly method: Splice["method"];
  readonly cover: Splice["cover"];
};

/** The joints that are offered, the customary ones first (common practice, no source). */
export const JOINT_KINDS: readonly JointKind[] = [
  kind("solder-and-sleeve", "soldered, sleeve with adhesive", "adhesive-sleeve"),
  kind("crimped-butt", "crimped butt, sleeve with adhesive", "adhesive-sleeve"),
  kind("bullet-pair", "bullet pair, can be parted", "housing"),
  kind("terminal-block", "terminal block", "housing"),
  kind("tap", "tap", "housing"),
  kind("twist-on-nut", "twist-on nut", "housing"),
  kind("unknown", "not settled yet", "unknown"),
];

export const USUAL_JOINT = "solder-and-sleeve";

function kind(method: Splice["method"], name: string, cover: Splice["cover"]): JointKind {
  return { id: method, name, method, cover };
}

/** The joint of that id; one that is not offered is not settled yet. */
export function jointKind(id: string): JointKind {
  return JOINT_KINDS.find((one) => one.id === id) ?? JOINT_KINDS[JOINT_KINDS.length - 1]!;
}
