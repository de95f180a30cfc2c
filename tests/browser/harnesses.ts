import type { Harness, PartId, Place } from "../../src/graph/harness.ts";
import { makePlace } from "../../src/graph/make.ts";
import { build } from "../build.ts";

/** Puts every part in its place, so that a test need not wait for an arrangement: plugs outside, joints between. */
export function placed(harness: Harness): Harness {
  const places: Record<PartId, Place> = {};
  const rows = { vehicle: 0, equipment: 0, between: 0 };
  for (const part of Object.values(harness.parts)) {
    const column = part.kind === "connector" ? part.belongsTo.side : "between";
    const x = { vehicle: 0, between: 420, equipment: 720 }[column];
    places[part.id] = makePlace(x, rows[column], true);
    rows[column] += column === "between" ? 64 : 480;
  }
  return { ...harness, layout: { places, paths: {} } };
}

const VAN = {
  1: "constant-feed RD fuse:15",
  2: "switched-feed YE fuse:10",
  3: "ground BK",
  4: "illumination OG",
} as const;

const RECEIVER = {
  1: "switched-feed RD",
  2: "constant-feed YE",
  3: "ground BK",
  4: "illumination OG/WH",
} as const;

/** The van's plug and a receiver's, nothing joined. */
export function twoPlugs(): Harness {
  return placed(
    build().vehicle("X1", VAN, { name: "van" }).unit("X2", RECEIVER, { name: "receiver" }).harness,
  );
}

/** The same, each lead joined to its like. */
export function joinedPlugs(): Harness {
  return placed(
    build(twoPlugs())
      .path("X1.1", "XJ1", "X2.2")
      .path("X1.2", "XJ2", "X2.1")
      .path("X1.3", "XJ3", "X2.3")
      .path("X1.4", "XJ4", "X2.4").harness,
  );
}

/** The two plugs under one another, as they fit a phone held upright. */
export function stackedPlugs(): Harness {
  const harness = twoPlugs();
  const [top, below] = Object.keys(harness.parts) as PartId[];
  const places = { [top!]: makePlace(0, 0, true), [below!]: makePlace(40, 260, true) };
  return { ...harness, layout: { places, paths: {} } };
}
