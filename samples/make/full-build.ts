import { applyAll } from "../../src/graph/edits/apply.ts";
import { copyFragment, insertFragment } from "../../src/graph/edits/copy.ts";
import type { Harness, Load, PartId, WaiverId, WireId } from "../../src/graph/harness.ts";
import { makeCavity } from "../../src/graph/make.ts";
import { check } from "../../src/rules/check.ts";
import { waiverFor } from "../../src/rules/waivers.ts";
import { Build } from "../../tests/build.ts";
import { reversingCamera } from "./camera.ts";
import { amplifiedSound } from "./sound.ts";
import { trailerAdapter } from "./trailer.ts";
import { workLamps } from "./work-lamps.ts";
import { finish, rowsOf, titleBlock, withRun } from "./workshop.ts";

/** One circuit of the library's own fuse board: what it feeds, how many, what each draws, who switches it. */
type BoardCircuit = {
  readonly name: string;
  readonly count: number;
  readonly current_A: number;
  readonly fuse_A: number;
  readonly type: Load["type"];
  readonly colour: string;
  readonly operatedBy?: "hand" | "door" | "other";
};

const BOARD: readonly BoardCircuit[] = [
  { name: "reading lamps, left", count: 8, current_A: 0.4, fuse_A: 5, type: "lamp", colour: "YE" },
  { name: "reading lamps, right", count: 8, current_A: 0.4, fuse_A: 5, type: "lamp", colour: "YE/BK" },
  { name: "aisle lamps", count: 9, current_A: 0.35, fuse_A: 5, type: "lamp", colour: "YE/BU" },
  { name: "shelf lamps, left", count: 10, current_A: 0.2, fuse_A: 3, type: "lamp", colour: "YE/GN" },
  { name: "shelf lamps, right", count: 10, current_A: 0.2, fuse_A: 3, type: "lamp", colour: "YE/RD" },
  {
    name: "step lamps",
    count: 3,
    current_A: 0.3,
    fuse_A: 2,
    type: "lamp",
    colour: "YE/VT",
    operatedBy: "door",
  },
  { name: "picture-book corner", count: 6, current_A: 0.25, fuse_A: 3, type: "lamp", colour: "YE/GY" },
  { name: "issue desk", count: 4, current_A: 1, fuse_A: 5, type: "other", colour: "OG" },
  { name: "charging places, left", count: 4, current_A: 2, fuse_A: 10, type: "other", colour: "OG/BK" },
  { name: "charging places, right", count: 4, current_A: 2, fuse_A: 10, type: "other", colour: "OG/BU" },
  { name: "ventilators", count: 3, current_A: 2.5, fuse_A: 10, type: "motor", colour: "BU/RD" },
  {
    name: "heater",
    count: 1,
    current_A: 8,
    fuse_A: 15,
    type: "heater",
    colour: "RD/WH",
    operatedBy: "other",
  },
  { name: "awning", count: 1, current_A: 6, fuse_A: 10, type: "motor", colour: "BU/YE" },
  { name: "window display", count: 6, current_A: 0.3, fuse_A: 3, type: "lamp", colour: "YE/PK" },
  { name: "call sounder", count: 1, current_A: 0.5, fuse_A: 2, type: "sounder", colour: "VT/YE" },
  { name: "catalogue screens", count: 3, current_A: 1.5, fuse_A: 7.5, type: "other", colour: "OG/GN" },
];

/** Everything aboard: the library's board on the house battery, sound, camera, work lamps, trailer. */
export function fullBuild(): Harness {
  const build = new Build(amplifiedSound());
  build
    .part("fuse", "F10", {
      name: "board",
      rating_A: 100,
      form: "bolt-down",
      note: "0.15 m from the battery's plus.",
    })
    .part("splice", "XJ100", { name: "board, plus", method: "terminal-block", cover: "housing" })
    .wire("G1.+", "F10.1", "RD", { area_mm2: 25, length_m: 0.15 })
    .wire("F10.2", "XJ100.1", "RD", { area_mm2: 25, length_m: 1.2 });
  const through = BOARD.map((_, index) => makeCavity(String(index + 1), { text: BOARD[index]!.name }));
  for (const [designation, gender] of [
    ["X20", "plug"],
    ["X21", "receptacle"],
  ] as const) {
    build.part("connector", designation, {
      name: "board to body",
      belongsTo: { side: "equipment", module: null },
      gender,
      shell: "body 16",
      // Mated, the two are looked at in one direction: their faces are the same.
      view: gender === "plug" ? "wire-side" : "mating-face",
      rows: rowsOf(8, 8),
      cavities: through,
    });
  }
  build.mate("X20", "X21");
  for (const [index, circuit] of BOARD.entries()) addCircuit(build, circuit, index);
  addRouter(build);
  let harness = finish(build, {
    title: titleBlock("W-100", "Wren, the whole build", {
      supplementaryTitle: "as delivered",
      revision: "C",
    }),
    length_m: 1.5,
    area_mm2: 1.5,
  });
  harness = withRun(
    harness,
    { designation: "B3", from: "fuse board", to: "body", length_m: 0.8, zone: "cabin", covering: "braid" },
    (wire) => wire.note === "board",
  );
  for (const piece of [reversingCamera(), workLamps(), trailerAdapter()]) harness = together(harness, piece);
  return waived(harness);
}

function addCircuit(build: Build, circuit: BoardCircuit, index: number): void {
  const { name, count, current_A, fuse_A, type, colour, operatedBy = "hand" } = circuit;
  const fuse = `F${11 + index}`;
  const number = index + 1;
  const area_mm2 = fuse_A > 5 ? 2.5 : 1;
  build
    .part("fuse", fuse, { name, rating_A: fuse_A, form: "regular" })
    .part("switch", `S${10 + index}`, { name, operatedBy, rating_A: 20 })
    // More wires than a crimp holds go to a block.
    .part("splice", `XJ${101 + index}`, {
      name,
      ...(count > 2
        ? { method: "terminal-block", cover: "housing" }
        : { method: "crimped-butt", cover: "adhesive-sleeve" }),
    })
    .part("splice", `XJ${201 + index}`, {
      name: `${name}, ground`,
      method: "terminal-block",
      cover: "housing",
    })
    .part("ground", `XE${10 + index}`, { where: `body rib ${number}, ${name}`, surface: "bare-metal" })
    .wire("XJ100.2", `${fuse}.1`, "RD", { area_mm2: 4, length_m: 0.1, note: "board" })
    .wire(`${fuse}.2`, `X20.${number}`, colour, { area_mm2, length_m: 0.8, note: "board" })
    .wire(`X21.${number}`, `S${10 + index}.1`, colour, { area_mm2, length_m: 2 })
    .wire(`S${10 + index}.2`, `XJ${101 + index}.1`, colour, { area_mm2, length_m: 1 })
    .wire(`XJ${201 + index}.1`, `XE${10 + index}`, "BK", { area_mm2, length_m: 0.4 });
  for (let i = 0; i < count; i++) {
    const load = `E${100 + index * 12 + i}`;
    build
      .part("load", load, {
        name: `${name} ${i + 1}`,
        type,
        function: "switched-feed",
        current_A,
        polarised: type === "lamp",
      })
      .wire(`XJ${101 + index}.2`, `${load}.+`, colour, { area_mm2, length_m: 0.6 + 0.5 * i })
      .wire(`${load}.−`, `XJ${201 + index}.2`, "BK", { area_mm2, length_m: 0.6 + 0.5 * i });
  }
}

/** It stays awake on purpose: that is what the waiver is for. */
function addRouter(build: Build): void {
  build
    .module("A3", {
      name: "router of the reading room",
      role: "other",
      outputs: "none",
      wakes: "by-lead",
      rows: { "+B": "constant-feed 0.5 0.8A", "+S": "switched-feed 0.5 0.1A", "−": "ground 0.5" },
    })
    .part("fuse", "F40", { name: "router", rating_A: 2, form: "mini" })
    .part("splice", "XJ300", { method: "crimped-butt", cover: "adhesive-sleeve" })
    .wire("XJ100.2", "F40.1", "RD", { area_mm2: 1, length_m: 0.1 })
    .wire("F40.2", "XJ300.1", "RD/GY")
    .wire("XJ300.2", "A3.+B", "RD/GY")
    .wire("XJ300.2", "A3.+S", "RD/GY")
    .wire("A3.−", "XE10", "BK");
}

/** Puts a finished piece beside what is there, under new designations, as a paste does. */
function together(harness: Harness, piece: Harness): Harness {
  const parts = new Set(Object.keys(piece.parts) as PartId[]);
  const wires = new Set(Object.keys(piece.wires) as WireId[]);
  const pasted = insertFragment(harness, copyFragment(piece, parts, wires), 0, 0);
  if (!("edit" in pasted)) throw new Error(pasted.why);
  const result = applyAll(harness, [pasted.edit]);
  if (!result.ok) throw new Error(result.why);
  return result.harness;
}

function waived(harness: Harness): Harness {
  const awake = check(harness).find((finding) => finding.rule === "both-feeds-one-kind");
  if (!awake) throw new Error("the router that never sleeps was not found");
  const reason = "The router serves the reading room with the key out; the house battery charges overnight.";
  const waiver = waiverFor(awake, reason, "workshop", "2026-03-02", "v:1" as WaiverId);
  return { ...harness, waivers: { ...harness.waivers, [waiver.id]: waiver } };
}
