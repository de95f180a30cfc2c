import type { Harness } from "../../src/graph/harness.ts";
import { Build } from "../../tests/build.ts";
import { finish, titleBlock, withCable } from "./workshop.ts";

/**
 * From the van's 13-pin socket to the exhibition trailer's old 7-pin plug. Pins, colours and sizes are those of
 * ISO 11446 and ISO 1724 as published tables give them; the standards themselves were not read.
 */
export function trailerAdapter(): Harness {
  const build = new Build()
    .vehicle(
      "X1",
      {
        "1": "indicator-left YE 1.5 fuse:10",
        "2": "fog-rear BU 1.5 fuse:10",
        "3": "ground-lamps WH 2.5",
        "4": "indicator-right GN 1.5 fuse:10",
        "5": "tail-right BN 1.5 fuse:7.5",
        "6": "stop-lamp RD 1.5 fuse:15",
        "7": "tail-left BK 1.5 fuse:7.5",
        "8": "reverse plugged",
        "9": "constant-feed plugged",
        "10": "ignition-feed plugged",
        "11": "ground-switched plugged",
        "12": "not-used plugged",
        "13": "ground-constant plugged",
      },
      {
        name: "13-pin plug, into the van's socket",
        shell: "ISO 11446",
        gender: "plug",
        rows: [
          [1, 2, 3, 4],
          [5, 6, 7, 8],
          [9, 10, 11, 12, 13],
        ],
        chart: { title: "ISO 11446, usual filling", edition: "2012", date: "", measured: false },
        note: "Pins 8 to 13 carry no lead: the trailer has nothing for them. Pin 12 is left open, so the van does not take it for a 13-pin trailer.",
      },
    )
    .unit(
      "X2",
      {
        "1": "indicator-left YE 1.5 1.75A",
        "2": "fog-rear BU 1.5 1.75A",
        "3": "ground-lamps WH 2.5",
        "4": "indicator-right GN 1.5 1.75A",
        "5": "tail-right BN 1.5 0.9A",
        "6": "stop-lamp RD 1.5 3.5A",
        "7": "tail-left BK 1.5 0.9A",
      },
      {
        name: "7-pin socket, for the trailer's plug",
        shell: "ISO 1724",
        gender: "receptacle",
        rows: [
          [1, 2, 3],
          [4, 5, 6, 7],
        ],
        chart: { title: "ISO 1724, usual filling", edition: "2003", date: "", measured: false },
        note: "The number-plate lamp of the trailer hangs on pin 7 alone: it must not bridge 5 and 7.",
      },
    );
  for (let pin = 1; pin <= 7; pin++) build.wire(`X1.${pin}`, `X2.${pin}`);
  const harness = finish(build, {
    title: titleBlock("T-003", "13-to-7 adapter", {
      supplementaryTitle: "van to exhibition trailer",
      vehicle: "exhibition trailer",
    }),
    length_m: 0.35,
    area_mm2: 1.5,
  });
  return withCable(
    harness,
    "multicore",
    [1, 2, 3, 4, 5, 6, 7].map((number) => `W${number}`),
  );
}
