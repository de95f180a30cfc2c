import { type Build, build, type Rows } from "../build.ts";

/** A vehicle's feeds and ground, and a receiver that wants them; nothing is joined yet. */
export function feeds(vehicle: Rows = {}, unit: Rows = {}): Build {
  return build()
    .vehicle("X1", {
      A4: "constant-feed RD 1.5 fuse:15",
      A7: "switched-feed YE 0.75 fuse:10",
      A8: "ground BN 1.5",
      ...vehicle,
    })
    .unit("X2", {
      "1": "constant-feed YE 1.5",
      "2": "switched-feed RD 0.75",
      "3": "ground BK 1.5",
      ...unit,
    });
}

/** The same, joined as it should be. */
export function joined(vehicle: Rows = {}, unit: Rows = {}): Build {
  return feeds(vehicle, unit)
    .path("X1.A4", "XJ1", "X2.1")
    .path("X1.A7", "XJ2", "X2.2")
    .path("X1.A8", "XJ3", "X2.3");
}

const CHANNELS = ["front-left", "front-right", "rear-left", "rear-right"] as const;

/** Two charts with the given count of speaker pairs: X3.1, X3.2 at the vehicle, X4.1, X4.2 at the unit, … */
export function speakers(count: 1 | 2 | 4): Build {
  const rows = Object.fromEntries(
    CHANNELS.slice(0, count).flatMap((channel, index) => [
      [String(2 * index + 1), `speaker-${channel}-plus WH`],
      [String(2 * index + 2), `speaker-${channel}-minus WH/BK`],
    ]),
  );
  return build().vehicle("X3", rows).unit("X4", rows);
}

/** Joins unit and vehicle contact by contact: `[1, 2]` means X4.1 to X3.2, each by way of a joint. */
export function across(harness: Build, pairs: readonly (readonly [number, number])[]): Build {
  for (const [index, [unit, vehicle]] of pairs.entries())
    harness.path(`X4.${unit}`, `XJ${index + 1}`, `X3.${vehicle}`);
  return harness;
}
