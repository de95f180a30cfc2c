import { findContact } from "../../src/catalogue/describe.ts";
import { sameEnd } from "../../src/graph/contacts.ts";
import { applyAll } from "../../src/graph/edits/apply.ts";
import type { Edit } from "../../src/graph/edits/edit.ts";
import { exchange } from "../../src/graph/edits/lead.ts";
import type { ContactRef, Harness, PartId } from "../../src/graph/harness.ts";
import { Build } from "../../tests/build.ts";
import { BLOCK_FACE, finish, titleBlock, withRun } from "./workshop.ts";

const WREN_CHART = {
  title: "Wren, chassis book, sheet 12",
  edition: "3",
  date: "2019-05-01",
  measured: true,
};
const RECEIVER_CHART = {
  title: "receiver, leaflet in the box",
  edition: "1",
  date: "2025-11-10",
  measured: false,
};

/** Every joint of the adapter: the vehicle's cavity and the receiver's. */
const JOINTS: readonly (readonly [string, string])[] = [
  ["X1.A1", "X3.1"],
  ["X1.A4", "X3.12"],
  ["X1.A5", "X3.13"],
  ["X1.A6", "X3.11"],
  ["X1.A7", "X3.14"],
  ["X1.A8", "X3.15"],
  ["X2.B1", "X3.7"],
  ["X2.B2", "X3.8"],
  ["X2.B3", "X3.3"],
  ["X2.B4", "X3.4"],
  ["X2.B5", "X3.5"],
  ["X2.B6", "X3.6"],
  ["X2.B7", "X3.9"],
  ["X2.B8", "X3.10"],
];

/** Red and yellow stand for different things on the two charts: these leads carry markers in words. */
const TRAPS: readonly (readonly [string, string])[] = [
  ["X1.A4", "constant"],
  ["X2.B5", "front left +"],
  ["X3.12", "constant"],
  ["X3.14", "switched"],
];

/**
 * The vehicle's two blocks to the receiver's plug. The blocks' cavities follow the usual filling of ISO 10487
 * blocks A and B; the receiver's leads have the usual aftermarket colours; the van's own are ours.
 */
export function receiverAdapter(): Harness {
  const build = new Build()
    .vehicle(
      "X1",
      {
        A1: "speed WH/BU 0.5",
        A2: "mute spare",
        A3: "not-used plugged",
        A4: "constant-feed RD 1.5 fuse:15",
        A5: "antenna-power BU 0.5 0.15A",
        A6: "illumination GY/RD 0.5 fuse:5",
        A7: "switched-feed RD/BK 0.75 fuse:10",
        A8: "ground BN 1.5",
      },
      {
        name: "block A, power",
        shell: "ISO 10487 A",
        gender: "receptacle",
        rows: BLOCK_FACE,
        chart: WREN_CHART,
        note: "Fuse 23 in the board under the dash, 15 A, protects A4; fuse 7, 10 A, protects A7. Read with a meter before the plug was trusted: in this van A4 is the constant one.",
      },
    )
    .vehicle(
      "X2",
      {
        B1: "speaker-rear-right-plus VT 0.75",
        B2: "speaker-rear-right-minus VT/BN 0.75",
        B3: "speaker-front-right-plus GY 0.75",
        B4: "speaker-front-right-minus GY/BN 0.75",
        B5: "speaker-front-left-plus YE 0.75",
        B6: "speaker-front-left-minus YE/BN 0.75",
        B7: "speaker-rear-left-plus GN 0.75",
        B8: "speaker-rear-left-minus GN/BN 0.75",
      },
      {
        name: "block B, loudspeakers",
        shell: "ISO 10487 B",
        gender: "receptacle",
        rows: BLOCK_FACE,
        chart: WREN_CHART,
      },
    )
    .unit(
      "X3",
      {
        "1": "speed PK 0.5",
        "2": "mute BN 0.5 spare",
        "3": "speaker-front-right-plus GY 0.75",
        "4": "speaker-front-right-minus GY/BK 0.75",
        "5": "speaker-front-left-plus WH 0.75",
        "6": "speaker-front-left-minus WH/BK 0.75",
        "7": "speaker-rear-right-plus VT 0.75",
        "8": "speaker-rear-right-minus VT/BK 0.75",
        "9": "speaker-rear-left-plus GN 0.75",
        "10": "speaker-rear-left-minus GN/BK 0.75",
        "11": "illumination OG/WH 0.5 0.02A",
        "12": "constant-feed YE 1.5 4A",
        "13": "antenna-power BU 0.5 0.3A",
        "14": "switched-feed RD 0.75 0.1A",
        "15": "ground BK 1.5",
        "16": "amplifier-turn-on BU/WH 0.5 0.3A spare",
      },
      {
        name: "receiver",
        shell: "receiver 16",
        gender: "plug",
        rows: [
          [1, 2, 3, 4, 5, 6, 7, 8],
          [9, 10, 11, 12, 13, 14, 15, 16],
        ],
        chart: RECEIVER_CHART,
      },
    );
  for (const [index, [vehicle, receiver]] of JOINTS.entries()) {
    const feed = vehicle === "X1.A4" || vehicle === "X1.A7";
    // The two feeds part at a bullet pair each, so that they can be crossed over in a van that has them exchanged.
    build.part("splice", `XJ${index + 1}`, {
      method: feed ? "bullet-pair" : "solder-and-sleeve",
      cover: feed ? "housing" : "adhesive-sleeve",
    });
    build.path(vehicle, `XJ${index + 1}`, receiver);
  }
  for (const [contact, words] of TRAPS) {
    const at = build.at(contact);
    const wire = Object.values(build.harness.wires).find(({ ends }) => ends.some((end) => sameEnd(end, at)));
    build.change(wire!.designation, { label: `${wire!.designation} ${words}` });
  }
  build.part("cap", "XC1", { method: "sleeve-folded-back" }).wire("X3.2", "XC1");
  build.part("cap", "XC2", { method: "sleeve-folded-back" }).wire("X3.16", "XC2");
  const harness = finish(build, {
    title: titleBlock("W-014", "Receiver adapter", {
      supplementaryTitle: "blocks A and B to the receiver's plug",
    }),
    length_m: 0.15,
    area_mm2: 0.75,
  });
  return withRun(
    harness,
    {
      designation: "B1",
      from: "radio bay",
      to: "receiver",
      length_m: 0.3,
      zone: "cabin",
      covering: "cloth-tape",
      note: "Tied back from the steering column; nothing of it near the airbag's yellow plugs.",
    },
    () => true,
  );
}

/** The adapter with its faults planted by the edits that a person on a bad day would make. */
export function faultyReceiverAdapter(): Harness {
  let harness = receiverAdapter();
  const at = (name: string): ContactRef => {
    const found = findContact(harness, name);
    if (!found) throw new Error(`there is no contact ${name}`);
    return found;
  };
  const plant = (...edits: readonly ReturnType<typeof exchange>[]) => {
    for (const edit of edits) {
      if (!("kind" in edit)) throw new Error(edit.why);
      const result = applyAll(harness, [edit]);
      if (!result.ok) throw new Error(result.why);
      harness = result.harness;
    }
  };
  const part = (name: string) => `p:${name}` as PartId;
  const cutAt = (name: string): Edit => ({ kind: "remove", parts: [part(name)], wires: [] });
  const joint = (vehicle: string) => `XJ${JOINTS.findIndex(([from]) => from === vehicle) + 1}`;

  // Speed: the joint was never made, both leads hang. Illumination: the same, and the van's half is live by night.
  plant(cutAt(joint("X1.A1")), cutAt(joint("X1.A6")));
  // Constant and switched, front left's two leads, and the two rear channels change places at their joints.
  plant(exchange(harness, at(`${joint("X1.A4")}.2`), at(`${joint("X1.A7")}.2`)));
  plant(exchange(harness, at(`${joint("X2.B5")}.2`), at(`${joint("X2.B6")}.2`)));
  plant(exchange(harness, at(`${joint("X2.B1")}.2`), at(`${joint("X2.B7")}.2`)));
  plant(exchange(harness, at(`${joint("X2.B2")}.2`), at(`${joint("X2.B8")}.2`)));
  // The mute lead lost its sleeve, and the receiver's speed lead was pushed under the turn-on lead's cap.
  plant(cutAt("XC1"));
  const speed = Object.values(harness.wires).find((wire) =>
    wire.ends.some((end) => sameEnd(end, at("X3.1"))),
  )!;
  plant({ kind: "change-wire", wire: speed.id, changes: { ends: [at("X3.1"), at("XC2")] } });
  plant({
    kind: "change-title-block",
    changes: {
      documentNumber: "TML-W-014-X",
      supplementaryTitle: "wired on a bad day",
      status: "under-test",
    },
  });
  return harness;
}
