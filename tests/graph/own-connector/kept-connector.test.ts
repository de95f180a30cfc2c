import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Connector, PartId } from "../../../src/graph/harness.ts";
import { makeCavity, makeColour, makePart } from "../../../src/graph/make.ts";
import {
  KEPT_CONNECTOR_VERSION,
  keepConnector,
  keptCavities,
} from "../../../src/graph/own-connector/kept-connector.ts";
import { parseConnector, serialiseConnector } from "../../../src/graph/own-connector/parse-connector.ts";
import { connector as connectorShape } from "../../../src/graph/schema/parts.ts";

const plug: Connector = makePart("connector", "p:9" as PartId, "X7", {
  name: "radio plug of the van Wren",
  note: "behind the shelf",
  belongsTo: { side: "vehicle", module: "p:3" as PartId },
  gender: "receptacle",
  shell: "Thistledown 4",
  keying: "grey",
  view: "mating-face",
  rows: [
    [2, 1],
    [0, 3],
  ],
  cavities: [
    makeCavity("1", {
      function: "constant-feed",
      text: "B+ radio",
      direction: "gives",
      lead: { colour: makeColour("RD", "BU"), area_mm2: 1.5 },
      current_A: 10,
      fuse_A: 15,
      gives: "pulsed",
    }),
    makeCavity("2", { function: "ground", direction: "gives", use: "spare" }),
    makeCavity("3", { function: "not-used", direction: "none", use: "plugged" }),
  ],
  chart: { title: "Workshop sheet 12", edition: "B", date: "2026-02-03", measured: true },
  matedWith: "p:4" as PartId,
  cover: "whole",
});
const kept = keepConnector(plug, "Wren, radio");

describe("keeping", () => {
  test("keeps what the connector is in any job", () => {
    expect(kept).toMatchObject({
      name: "Wren, radio",
      side: "vehicle",
      gender: "receptacle",
      shell: "Thistledown 4",
      keying: "grey",
      view: "mating-face",
      rows: plug.rows,
      chart: plug.chart,
      note: plug.note,
    });
    expect(kept.cavities[0]).toEqual(plug.cavities[0]);
  });

  test("leaves behind what belongs to the job alone", () => {
    for (const key of ["id", "designation", "matedWith", "belongsTo", "cover"])
      expect(kept).not.toHaveProperty(key);
    expect(kept.cavities.map((cavity) => cavity.use)).toEqual(["expected", "expected", "expected"]);
    expect(serialiseConnector(kept)).not.toMatch(/p:\d/);
  });

  test("on the other side what gave takes, and the far side's lead and fuse are not known", () => {
    expect(keptCavities(kept, "vehicle")).toBe(kept.cavities);
    const [feed] = keptCavities(kept, "equipment");
    expect(feed).toMatchObject({
      label: "1",
      text: "B+ radio",
      function: "constant-feed",
      direction: "takes",
      lead: null,
      current_A: 10,
      fuse_A: "unknown",
      gives: "unknown",
    });
  });
});

describe("the file", () => {
  test("gives back what was written", () => {
    expect(parseConnector(serialiseConnector(kept))).toEqual({ ok: true, connector: kept, notes: [] });
  });

  test("any names, texts and labels survive, markup and formulas as plain text", () => {
    const words = fc
      .string({ unit: "binary", minLength: 1, maxLength: 60 })
      .filter((text) => text.isWellFormed());
    fc.assert(
      fc.property(words, words, words, (name, label, text) => {
        const one = keepConnector({ ...plug, rows: [[1]], cavities: [makeCavity(label, { text })] }, name);
        const read = parseConnector(serialiseConnector(one));
        expect(read).toMatchObject({ ok: true, connector: one });
        if (!read.ok) return;
        const again = makePart("connector", "p:1" as PartId, "X1", { cavities: read.connector.cavities });
        expect(connectorShape.safeParse(again).success).toBe(true);
      }),
      { seed: 11, numRuns: 100 },
    );
  });

  test("keeps fields that it does not know, and says that the file is newer", () => {
    const newer = {
      ...JSON.parse(serialiseConnector(kept)),
      formatVersion: KEPT_CONNECTOR_VERSION + 1,
      torque_Nm: 3,
    };
    const read = parseConnector(JSON.stringify(newer));
    expect(read).toMatchObject({ ok: true, connector: { torque_Nm: 3 } });
    expect(read.ok && read.notes[0]).toContain(`format version ${KEPT_CONNECTOR_VERSION + 1}`);
    expect(read.ok && serialiseConnector(read.connector)).toContain("torque_Nm");
  });

  test("one of version 1 is brought up: how its cavities give and act is not stated", () => {
    const raw = { ...JSON.parse(serialiseConnector(kept)), formatVersion: 1 };
    for (const cavity of raw.cavities) for (const key of ["gives", "actsOn"]) delete cavity[key];
    const read = parseConnector(JSON.stringify(raw));
    expect(read).toMatchObject({ ok: true, connector: { formatVersion: KEPT_CONNECTOR_VERSION }, notes: [] });
    if (!read.ok) return;
    expect(read.connector.cavities).toEqual(
      kept.cavities.map((cavity) => ({ ...cavity, gives: "unknown", actsOn: "unknown" })),
    );
    const broken = parseConnector(JSON.stringify({ ...raw, cavities: "none" }));
    expect(broken).toMatchObject({ ok: false, problems: [{ where: "cavities" }] });
  });

  const changed = (change: (raw: Record<string, unknown>) => void) => {
    const raw = JSON.parse(serialiseConnector(kept));
    change(raw);
    return JSON.stringify(raw, null, 2);
  };

  test.each([
    ["another kind of file", '{"format":"pigtail-harness"}', "not-a-connector", ""],
    ["no file of ours", "[1, 2]", "not-a-connector", ""],
    ["nothing", "  ", "not-json", ""],
    ["half a file", serialiseConnector(kept).slice(0, 200), "not-json", ""],
    ["binary junk", "\u0000\u0001\ufffd", "not-json", ""],
    ["a repeated key", '{"format":"pigtail-connector","name":"a","name":"b"}', "repeated-key", "name"],
    ["a prototype", '{"format":"pigtail-connector","__proto__":{}}', "forbidden-key", "__proto__"],
    ["brackets without end", "[".repeat(100_000), "too-deep", ""],
    ["four million characters", " ".repeat(4_000_001), "too-large", ""],
    [
      "no name",
      changed((raw) => {
        raw.name = "";
      }),
      "wrong-value",
      "name",
    ],
    [
      "no side",
      changed((raw) => {
        delete raw.side;
      }),
      "missing-field",
      "side",
    ],
    [
      "a colour nobody has",
      changed((raw) => {
        (raw.cavities as { lead: { colour: { base: string } } }[])[0]!.lead.colour.base = "<b>";
      }),
      "wrong-value",
      "cavities[0].lead.colour.base",
    ],
    [
      "a face with a cavity too many",
      changed((raw) => {
        raw.rows = [[1, 2, 3, 4]];
      }),
      "dangling-reference",
      "rows[0][3]",
    ],
    [
      "a face with a cavity twice",
      changed((raw) => {
        raw.rows = [
          [1, 2],
          [3, 2],
        ];
      }),
      "dangling-reference",
      "rows[1][1]",
    ],
  ])("%s is refused, and the place is named", (_what, text, code, where) => {
    const read = parseConnector(text);
    expect(read).toMatchObject({ ok: false, problems: [{ code, where }] });
    if (!read.ok && where !== "") expect(read.problems[0]!.line).toBeGreaterThan(0);
  });

  test("nonsense in every cavity ends at a hundred problems", () => {
    const raw = { ...kept, cavities: Array.from({ length: 2000 }, () => ({ label: 7 })) };
    const read = parseConnector(JSON.stringify(raw));
    expect(!read.ok && read.problems.length).toBe(100);
  });
});
