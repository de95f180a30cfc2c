import { describe, expect, test } from "vitest";
import { functionOf } from "../../src/catalogue/functions.ts";
import { cavitiesOf, ISO_10487_A, ISO_10487_B, ISO_10487_C } from "../../src/catalogue/pinouts.ts";
import type { PartId } from "../../src/graph/harness.ts";
import { makePart } from "../../src/graph/make.ts";
import { check } from "../../src/rules/check.ts";
import { Build, build } from "../build.ts";

// Source: encyclopaedia articles "Connectors for car audio" and "ISO 10487"; pinoutguide.com,
// "36 (20+8+8) pin Head Unit / Car Stereo ISO connector". Directions as seen from the receiver.
describe("block A", () => {
  test.each([
    ["A1", "speed", "takes"],
    ["A2", "mute", "takes"],
    ["A4", "constant-feed", "takes"],
    ["A5", "antenna-power", "gives"],
    ["A6", "illumination", "takes"],
    ["A7", "switched-feed", "takes"],
    ["A8", "ground", "takes"],
  ])("%s is %s, which the receiver %s", (cavity, name, direction) => {
    const found = ISO_10487_A.rows.find((item) => item.cavity === cavity);
    expect(found).toMatchObject({ function: name, direction, confidence: "several" });
  });

  test("A3 is said to differ between sources", () => {
    expect(ISO_10487_A.rows.find((item) => item.cavity === "A3")?.confidence).toBe("disputed");
  });
});

// Source: the same articles and a parts retailer's sheet for an ISO radio lead.
test.each([
  ["B1", "speaker-rear-right-plus"],
  ["B2", "speaker-rear-right-minus"],
  ["B3", "speaker-front-right-plus"],
  ["B4", "speaker-front-right-minus"],
  ["B5", "speaker-front-left-plus"],
  ["B6", "speaker-front-left-minus"],
  ["B7", "speaker-rear-left-plus"],
  ["B8", "speaker-rear-left-minus"],
])("block B: %s is %s", (cavity, name) => {
  expect(ISO_10487_B.rows.find((item) => item.cavity === cavity)?.function).toBe(name);
});

// Source: encyclopaedia article "Connectors for car audio": two rows, 1 3 5 7 above 2 4 6 8, from the wire side.
test("blocks A and B have their odd cavities above the even ones, seen from the wire side", () => {
  for (const { face } of [ISO_10487_A, ISO_10487_B]) {
    expect(face).toEqual({
      view: "wire-side",
      rows: [
        [1, 3, 5, 7],
        [2, 4, 6, 8],
      ],
    });
  }
});

// Source: the same article: C1 has cavities 1 to 6, C2 7 to 12, C3 13 to 20, numbered through.
test("block C has twenty cavities, numbered through", () => {
  expect(ISO_10487_C.rows.map((item) => item.cavity)).toEqual(
    Array.from({ length: 20 }, (_, index) => `C${index + 1}`),
  );
});

test("every function of the tables is in the vocabulary", () => {
  for (const pinout of [ISO_10487_A, ISO_10487_B, ISO_10487_C]) {
    for (const item of pinout.rows) expect(functionOf(item.function).id).toBe(item.function);
  }
});

/** A vehicle's blocks and a receiver's, every cavity wired to its like but for the given exchanges. */
function wired(exchanged: Readonly<Record<string, string>> = {}): Build {
  const rows = [...ISO_10487_A.rows, ...ISO_10487_B.rows];
  const harness = build();
  let { parts } = harness.harness;
  for (const [name, side] of [
    ["X1", "vehicle"],
    ["X2", "equipment"],
  ] as const) {
    const cavities = [ISO_10487_A, ISO_10487_B].flatMap((pinout) => cavitiesOf(pinout, side));
    const part = makePart("connector", `p:${name}` as PartId, name, {
      cavities,
      belongsTo: { side, module: null },
    });
    parts = { ...parts, [part.id]: part };
  }
  const made = new Build({ ...harness.harness, parts });
  for (const { cavity, function: name } of rows) {
    if (name !== "not-used") made.wire(`X1.${exchanged[cavity] ?? cavity}`, `X2.${cavity}`);
  }
  return made;
}

test("a vehicle's blocks joined cavity to cavity with a receiver's have no finding", () => {
  expect(check(wired().harness).map(({ message }) => message)).toEqual([]);
});

// Source: encyclopaedia article "ISO 10487": A4 and A7 are exchanged on some vehicles.
test("the exchange of A4 and A7 that some vehicles are built with is found", () => {
  expect(check(wired({ A4: "A7", A7: "A4" }).harness).map(({ rule }) => rule)).toEqual(["feeds-swapped"]);
});
